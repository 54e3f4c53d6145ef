package costrel.tables;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Reads brewery.csv: property, value. Properties are name, currency, country and VAT; all four are stated. */
public final class BrewerySettingsReader {

    private static final Columns COLUMNS = Columns.required("property", "value");
    private static final String VAT = "VAT";

    private static final CellKind<String> PROPERTY =
            CellKind.word("a property of a brewery", List.of("name", "currency", "country", VAT));

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
            Optional<BrewerySettings> settings = brewery.build(() -> new BrewerySettings(
                    name.orElseThrow(),
                    currency.orElseThrow(),
                    country.orElseThrow(),
                    vat.orElseThrow().movePointLeft(2)));
            return table.loaded(settings::orElseThrow);
        }
    }
}
