package costrel.tables;

import costrel.duty.DraughtRule;
import costrel.duty.DutyBasis;
import costrel.duty.DutyRate;
import costrel.duty.DutyRounding;
import costrel.duty.DutyUnit;
import costrel.duty.YearTier;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * Reads the tables of countries that charge duty by hectolitre and strength or by barrel. duty-bases.csv: country, charged by,
 * strength, reduced rate, per volume, container, run, duty, also called. duty-rates-by-volume.csv: country, valid from, valid
 * until, strength from, strength under, draught, rate, producer up to, over, up to, share.
 */
final class DutyByVolumeReader {

    private static final Columns BASES = Columns.required("country", "charged by", "duty", "source")
            .optional("strength", "reduced rate", "per volume", "container", "run", "also called");
    private static final Columns RATES = Columns.required(
                    "country", "valid from", "strength from", "draught", "rate", "source")
            .optional("valid until", "strength under", "producer up to", "over", "up to", "share");

    private static final CellKind<DutyUnit> UNIT = CellKind.oneOf(DutyUnit.values(), DutyUnit::label);
    private static final CellKind<DutyRounding> ROUNDING =
            CellKind.of("a rounding such as down to 2 or half up to 5", DutyByVolumeReader::rounding);
    private static final CellKind<Yearly> YEARLY =
            CellKind.of("a volume of a year such as 75000 hL or 60000 US barrel", DutyByVolumeReader::yearly);

    private DutyByVolumeReader() {}

    /** A volume of a year with its unit. */
    private record Yearly(BigDecimal volume, DutyUnit unit) {}

    /**
     * What a country charges by.
     *
     * @param line the line of its row
     * @param country what it is called
     * @param alsoCalled what else it is called
     * @param basis what it charges by and where it rounds
     */
    record Basis(long line, String country, List<String> alsoCalled, DutyBasis basis) {}

    /**
     * A rate with what the whole country must agree on.
     *
     * @param line the line of its row
     * @param country the country
     * @param currency what the rate is in
     * @param rate the rate
     * @param volumes what the volumes of its tier are counted in; empty for a rate without a tier
     */
    record Rate(long line, String country, CurrencyUnit currency, DutyRate rate, Optional<DutyUnit> volumes) {}

    static Loaded<List<Basis>> bases(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, BASES)) {
            List<Basis> bases = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                Optional<String> country = row.need("country", CellKind.TEXT);
                country.ifPresent(name -> row.once(seen, "country", Names.folded(name)));
                Optional<DutyUnit> unit = row.need("charged by", UNIT);
                Optional<DutyRounding> strength = row.may("strength", ROUNDING);
                Optional<DutyRounding> reduced = row.may("reduced rate", ROUNDING);
                Optional<DutyRounding> perVolume = row.may("per volume", ROUNDING);
                Optional<DutyRounding> container = row.may("container", ROUNDING);
                Optional<DutyRounding> run = row.may("run", ROUNDING);
                Optional<DutyRounding> duty = row.need("duty", ROUNDING);
                List<String> alsoCalled = row.may("also called", Cells.LIST).orElse(List.of());
                Optional<String> law = row.need("source", CellKind.TEXT);
                row.build(
                                "charged by",
                                () -> new Basis(
                                        row.line(),
                                        country.orElseThrow(),
                                        alsoCalled,
                                        new DutyBasis(
                                                unit.orElseThrow(),
                                                strength,
                                                reduced,
                                                perVolume,
                                                container,
                                                run,
                                                duty.orElseThrow(),
                                                law.orElseThrow())))
                        .ifPresent(bases::add);
            }
            return table.loaded(() -> List.copyOf(bases));
        }
    }

    static Loaded<List<Rate>> rates(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, RATES)) {
            List<Rate> rates = new ArrayList<>();
            Map<String, CurrencyUnit> currencies = new LinkedHashMap<>();
            for (CsvRow row : table) {
                rate(row, currencies).ifPresent(rates::add);
            }
            return table.loaded(() -> List.copyOf(rates));
        }
    }

    private static Optional<Rate> rate(CsvRow row, Map<String, CurrencyUnit> currencies) {
        Optional<String> country = row.need("country", CellKind.TEXT);
        Optional<LocalDate> from = row.need("valid from", Cells.DATE);
        Optional<LocalDate> until = MoneyCells.until(row, from);
        Optional<BigDecimal> strengthFrom = row.need("strength from", Exact.PERCENT);
        Optional<BigDecimal> strengthUnder = row.may("strength under", Exact.PERCENT);
        Optional<DraughtRule> draught = row.need("draught", DutyReader.DRAUGHT);
        Optional<Exact.Cash> cash = DutyReader.cash(row, "rate", country, currencies);
        Optional<Yearly> producer = row.may("producer up to", YEARLY);
        Optional<Yearly> over = row.may("over", YEARLY);
        Optional<Yearly> upTo = row.may("up to", YEARLY);
        Optional<BigDecimal> share = row.may("share", Exact.PERCENT);
        if (row.cell("over").isEmpty() && (producer.isPresent() || upTo.isPresent() || share.isPresent())) {
            row.problem("over", "nothing", "the volume of the year that the rate starts over, such as 0 hL");
        }
        List<DutyUnit> units = new ArrayList<>();
        for (Optional<Yearly> volume : List.of(producer, over, upTo)) {
            volume.map(Yearly::unit).ifPresent(units::add);
        }
        if (units.stream().distinct().count() > 1) {
            row.problem("over", TableProblem.quoted(row.cell("over")), "volumes of one unit in a row");
        }
        Optional<String> law = row.need("source", CellKind.TEXT);
        return row.build(
                "rate",
                () -> new Rate(
                        row.line(),
                        country.orElseThrow(),
                        cash.orElseThrow().currency().orElseThrow(),
                        new DutyRate(
                                from.orElseThrow(),
                                until,
                                strengthFrom.orElseThrow(),
                                strengthUnder,
                                draught.orElseThrow(),
                                cash.orElseThrow().amount(),
                                over.map(start -> new YearTier(
                                        producer.map(Yearly::volume),
                                        start.volume(),
                                        upTo.map(Yearly::volume),
                                        share.map(percent -> percent.movePointLeft(2))
                                                .orElse(BigDecimal.ONE))),
                                law.orElseThrow()),
                        over.map(Yearly::unit)));
    }

    private static DutyRounding rounding(String text) {
        try {
            return DutyRounding.parse(text);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    private static Yearly yearly(String text) {
        String barrel = DutyUnit.US_BARREL.volumeUnit();
        BigDecimal volume = Cells.before(text, DutyUnit.HL_PERCENT.volumeUnit(), barrel);
        if (volume.signum() < 0) {
            throw new IllegalArgumentException(text);
        }
        return new Yearly(volume, text.endsWith(barrel) ? DutyUnit.US_BARREL : DutyUnit.HL_PERCENT);
    }
}
