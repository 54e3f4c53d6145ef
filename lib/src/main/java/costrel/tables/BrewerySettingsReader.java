package costrel.tables;

import costrel.cost.CostBasis;
import costrel.duty.YearVolume;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.joda.money.CurrencyUnit;

/**
 * Reads brewery.csv: property, value. Name, currency, country and VAT are stated; cost basis, claim relief, normal loss, unsold, beer
 * made in the year, beer released so far and exchange rate age may be.
 */
public final class BrewerySettingsReader {

    private static final Columns COLUMNS = Columns.required("property", "value");
    private static final String VAT = "VAT";
    private static final String BASIS = "cost basis";
    private static final String RELIEF = "claim relief";
    private static final String NORMAL_LOSS = "normal loss";
    private static final String UNSOLD = "unsold";
    private static final String YEAR = "beer made in the year";
    private static final String RELEASED = "beer released so far";
    private static final String RATE_AGE = "exchange rate age";

    private static final CellKind<String> PROPERTY = CellKind.word(
            "a property of a brewery",
            List.of("name", "currency", "country", VAT, BASIS, RELIEF, NORMAL_LOSS, UNSOLD, YEAR, RELEASED, RATE_AGE));
    private static final CellKind<CostBasis> BASES = CellKind.oneOf(CostBasis.values(), CostBasis::label);
    private static final CellKind<Integer> WHOLE_DAYS = CellKind.of("whole days such as 30 d", text -> {
        double days = Cells.DAYS.read(text);
        if (days != Math.rint(days) || days > Integer.MAX_VALUE) {
            throw new IllegalArgumentException(text);
        }
        return (int) days;
    });

    private BrewerySettingsReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @return the settings, or what is wrong
     */
    public static Loaded<BrewerySettings> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            Properties brewery = new Properties(table, "property", "value", table.headerLine());
            for (CsvRow row : table) {
                row.need("property", PROPERTY).ifPresent(property -> brewery.put(row, property));
            }
            if (!table.readable()) {
                return table.refused("none", "rows of settings");
            }
            Optional<String> name = brewery.need("name", CellKind.TEXT);
            Optional<CurrencyUnit> currency = brewery.need("currency", Exact.CURRENCY);
            Optional<String> country = brewery.need("country", CellKind.TEXT);
            Optional<BigDecimal> vat = brewery.need(VAT, Exact.PERCENT);
            Optional<CostSettings> costing = costing(brewery);
            Optional<BrewerySettings> settings = brewery.build(() -> new BrewerySettings(
                    name.orElseThrow(),
                    currency.orElseThrow(),
                    country.orElseThrow(),
                    vat.orElseThrow().movePointLeft(2),
                    costing.orElseThrow()));
            return table.loaded(settings::orElseThrow);
        }
    }

    private static Optional<CostSettings> costing(Properties brewery) {
        Optional<CostBasis> basis = brewery.may(BASIS, BASES);
        Optional<Boolean> relief = brewery.may(RELIEF, Cells.YES_NO);
        Optional<BigDecimal> normalLoss = share(brewery, NORMAL_LOSS);
        Optional<BigDecimal> unsold = share(brewery, UNSOLD);
        OptionalDouble made = brewery.mayFigure(YEAR, Cells.LITRES);
        OptionalDouble released = brewery.mayFigure(RELEASED, Cells.LITRES);
        Optional<Integer> age = brewery.may(RATE_AGE, WHOLE_DAYS);
        if (made.isEmpty() && brewery.has(RELEASED)) {
            brewery.problem(RELEASED, brewery.shown(RELEASED), "a row '" + YEAR + "' with it");
        }
        Optional<YearVolume> year = made.isEmpty()
                ? Optional.empty()
                : brewery.build(() -> new YearVolume(hectolitres(made.getAsDouble()), hectolitres(released.orElse(0))));
        return brewery.build(() -> new CostSettings(
                basis.orElse(CostSettings.USUAL.basis()),
                relief.orElse(CostSettings.USUAL.claimRelief()),
                normalLoss,
                unsold.orElse(CostSettings.USUAL.unsoldShare()),
                year,
                age.map(OptionalInt::of).orElseGet(OptionalInt::empty)));
    }

    private static Optional<BigDecimal> share(Properties brewery, String property) {
        return brewery.may(property, Exact.PERCENT).map(percent -> percent.movePointLeft(2));
    }

    private static BigDecimal hectolitres(double litres) {
        return BigDecimal.valueOf(litres).movePointLeft(2);
    }
}
