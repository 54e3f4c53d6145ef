package costrel.tables;

import costrel.duty.DraughtRule;
import costrel.duty.DutyRate;
import costrel.duty.DutySchedule;
import costrel.duty.ReliefBand;
import costrel.wort.StrengthFactor;
import costrel.wort.StrengthFactorTable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;

/**
 * Reads the tables of beer duty. duty-rates.csv: country, valid from, valid until, strength from, strength under, draught,
 * rate. duty-reliefs.csv: country, valid from, valid until, strength from, strength under, draught, over, up to, marginal,
 * cumulative. strength-factors.csv: name, valid from, valid until, difference from, difference to, factor.
 * duty-bases.csv and duty-rates-by-volume.csv are for countries that charge by hectolitre and strength or by barrel. Each row has a
 * source.
 */
public final class DutyReader {

    private static final Columns RATES = Columns.required(
                    "country", "valid from", "strength from", "draught", "rate", "source")
            .optional("valid until", "strength under");
    private static final Columns RELIEFS = Columns.required(
                    "country",
                    "valid from",
                    "strength from",
                    "strength under",
                    "draught",
                    "over",
                    "up to",
                    "marginal",
                    "cumulative",
                    "source")
            .optional("valid until");
    private static final Columns FACTORS = Columns.required(
                    "name", "valid from", "difference from", "difference to", "factor", "source")
            .optional("valid until");

    static final CellKind<DraughtRule> DRAUGHT = CellKind.oneOf(DraughtRule.values(), DraughtRule::label);

    private DutyReader() {}

    /** A rate or a band with what the whole country must agree on. */
    record OfCountry<T>(String country, CurrencyUnit currency, T row) {}

    /** Which table a strength factor belongs to. */
    private record TableKey(String name, LocalDate validFrom, Optional<LocalDate> validUntil, String source) {}

    /**
     * Reads the tables of every country in them.
     *
     * @param files the files
     * @return the schedule of each country by its name and by what else it is called, or what is wrong with any of the files
     */
    public static Loaded<Map<String, DutySchedule>> read(DutyFiles files) {
        List<TableProblem> problems = new ArrayList<>();
        DutyRows rows = rows(files, problems);
        return problems.isEmpty() ? rows.schedules(files) : Loaded.refused(problems);
    }

    /**
     * Reads the tables of every country in them and those that a brewery adds. For the days that its rows of a country cover they
     * take the place of the rows of that country in the same table; its strength factors go before the others.
     *
     * @param files the files
     * @param own what the brewery adds
     * @return the schedule of each country by its name and by what else it is called, or what is wrong with any of the files
     */
    public static Loaded<Map<String, DutySchedule>> read(DutyFiles files, DutyFiles own) {
        List<TableProblem> problems = new ArrayList<>();
        DutyRows rows = rows(files, problems);
        DutyRows added = rows(own, problems);
        if (!problems.isEmpty()) {
            return Loaded.refused(problems);
        }
        DutyRows all = rows.with(added, own, problems);
        return problems.isEmpty() ? all.schedules(own) : Loaded.refused(problems);
    }

    private static DutyRows rows(DutyFiles files, List<TableProblem> problems) {
        return new DutyRows(
                rows(files.rates(), DutyReader::rates, problems),
                rows(files.reliefs(), DutyReader::reliefs, problems),
                rows(files.factors(), DutyReader::factors, problems),
                rows(files.bases(), DutyByVolumeReader::bases, problems),
                rows(files.ratesByVolume(), DutyByVolumeReader::rates, problems));
    }

    private static <T> List<T> rows(
            Optional<CsvSource> file, Function<CsvSource, Loaded<List<T>>> reader, List<TableProblem> problems) {
        if (file.isEmpty()) {
            return List.of();
        }
        Loaded<List<T>> loaded = reader.apply(file.get());
        problems.addAll(loaded.problems());
        return loaded.sound() ? loaded.orThrow() : List.of();
    }

    private static Loaded<List<OfCountry<DutyRate>>> rates(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, RATES)) {
            List<OfCountry<DutyRate>> rates = new ArrayList<>();
            Map<String, CurrencyUnit> currencies = new LinkedHashMap<>();
            for (CsvRow row : table) {
                Optional<String> country = row.need("country", CellKind.TEXT);
                Optional<LocalDate> from = row.need("valid from", Cells.DATE);
                Optional<LocalDate> until = MoneyCells.until(row, from);
                Optional<BigDecimal> strengthFrom = row.need("strength from", Exact.PERCENT);
                Optional<BigDecimal> strengthUnder = row.may("strength under", Exact.PERCENT);
                Optional<DraughtRule> draught = row.need("draught", DRAUGHT);
                Optional<Exact.Cash> rate = cash(row, "rate", country, currencies);
                Optional<String> act = row.need("source", CellKind.TEXT);
                row.build(
                                "rate",
                                () -> new OfCountry<>(
                                        country.orElseThrow(),
                                        rate.orElseThrow().currency().orElseThrow(),
                                        new DutyRate(
                                                from.orElseThrow(),
                                                until,
                                                strengthFrom.orElseThrow(),
                                                strengthUnder,
                                                draught.orElseThrow(),
                                                rate.orElseThrow().amount(),
                                                act.orElseThrow())))
                        .ifPresent(rates::add);
            }
            return table.loaded(() -> List.copyOf(rates));
        }
    }

    private static Loaded<List<OfCountry<ReliefBand>>> reliefs(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, RELIEFS)) {
            List<OfCountry<ReliefBand>> bands = new ArrayList<>();
            Map<String, CurrencyUnit> currencies = new LinkedHashMap<>();
            for (CsvRow row : table) {
                Optional<String> country = row.need("country", CellKind.TEXT);
                Optional<LocalDate> from = row.need("valid from", Cells.DATE);
                Optional<LocalDate> until = MoneyCells.until(row, from);
                Optional<BigDecimal> strengthFrom = row.need("strength from", Exact.PERCENT);
                Optional<BigDecimal> strengthUnder = row.need("strength under", Exact.PERCENT);
                Optional<Boolean> draught = row.need("draught", Cells.YES_NO);
                Optional<BigDecimal> over = row.need("over", Exact.HECTOLITRES);
                Optional<BigDecimal> upTo = row.need("up to", Exact.HECTOLITRES);
                Optional<Exact.Cash> marginal = cash(row, "marginal", country, currencies);
                Optional<Exact.Cash> cumulative = cash(row, "cumulative", country, currencies);
                Optional<String> act = row.need("source", CellKind.TEXT);
                row.build(
                                "marginal",
                                () -> new OfCountry<>(
                                        country.orElseThrow(),
                                        marginal.orElseThrow().currency().orElseThrow(),
                                        new ReliefBand(
                                                from.orElseThrow(),
                                                until,
                                                strengthFrom.orElseThrow(),
                                                strengthUnder.orElseThrow(),
                                                draught.orElseThrow(),
                                                over.orElseThrow(),
                                                upTo.orElseThrow(),
                                                marginal.orElseThrow().amount(),
                                                cumulative.orElseThrow().amount(),
                                                act.orElseThrow())))
                        .ifPresent(bands::add);
            }
            return table.loaded(() -> List.copyOf(bands));
        }
    }

    private static Loaded<List<StrengthFactorTable>> factors(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, FACTORS)) {
            Map<TableKey, List<StrengthFactor>> rows = new LinkedHashMap<>();
            for (CsvRow row : table) {
                Optional<String> name = row.need("name", CellKind.TEXT);
                Optional<LocalDate> from = row.need("valid from", Cells.DATE);
                Optional<LocalDate> until = MoneyCells.until(row, from);
                OptionalDouble least = row.needFigure("difference from", Cells.DEGREES);
                OptionalDouble most = row.needFigure("difference to", Cells.DEGREES);
                OptionalDouble factor = row.needFigure("factor", Cells.NUMBER);
                Optional<String> printed = row.need("source", CellKind.TEXT);
                row.build(
                                "factor",
                                () -> new StrengthFactor(least.orElseThrow(), most.orElseThrow(), factor.orElseThrow()))
                        .ifPresent(band -> rows.computeIfAbsent(
                                        new TableKey(
                                                name.orElseThrow(), from.orElseThrow(), until, printed.orElseThrow()),
                                        key -> new ArrayList<>())
                                .add(band));
            }
            return table.loaded(() -> {
                List<StrengthFactorTable> tables = new ArrayList<>();
                rows.forEach((key, bands) -> tables.add(
                        new StrengthFactorTable(key.name(), key.validFrom(), key.validUntil(), bands, key.source())));
                return List.copyOf(tables);
            });
        }
    }

    /** Money of a duty table: a plain amount in the one currency of its country. */
    static Optional<Exact.Cash> cash(
            CsvRow row, String column, Optional<String> country, Map<String, CurrencyUnit> currencies) {
        Optional<Exact.Cash> cash = row.need(column, Exact.CASH);
        if (cash.isEmpty()) {
            return cash;
        }
        Optional<CurrencyUnit> currency = cash.get().currency();
        if (currency.isEmpty() || cash.get().per().isPresent()) {
            row.problem(column, TableProblem.quoted(row.cell(column)), "an amount with its currency such as 9.96 GBP");
            return Optional.empty();
        }
        if (country.isPresent()) {
            CurrencyUnit before = currencies.putIfAbsent(country.get(), currency.get());
            if (before != null && !before.equals(currency.get())) {
                row.problem(
                        column,
                        TableProblem.quoted(row.cell(column)),
                        "an amount in " + before + " as in the rows before");
            }
        }
        return cash;
    }
}
