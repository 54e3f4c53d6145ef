package costrel.tables;

import costrel.cost.DraughtRule;
import costrel.cost.DutyRate;
import costrel.cost.DutySchedule;
import costrel.cost.ReliefBand;
import costrel.wort.StrengthFactor;
import costrel.wort.StrengthFactorTable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/**
 * Reads the three tables of beer duty. duty-rates.csv: country, valid from, valid until, strength from, strength under, draught,
 * rate. duty-reliefs.csv: country, valid from, valid until, strength from, strength under, draught, over, up to, marginal,
 * cumulative. strength-factors.csv: name, valid from, valid until, difference from, difference to, factor. Each row has a source.
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

    private static final CellKind<DraughtRule> DRAUGHT = CellKind.oneOf(DraughtRule.values(), DraughtRule::label);

    private DutyReader() {}

    /** A rate or a band with what the whole country must agree on. */
    private record OfCountry<T>(String country, CurrencyUnit currency, T row) {}

    /** Which table a strength factor belongs to. */
    private record TableKey(String name, LocalDate validFrom, Optional<LocalDate> validUntil, String source) {}

    /**
     * Reads the tables of every country in them.
     *
     * @param rates duty-rates.csv
     * @param reliefs duty-reliefs.csv
     * @param factors strength-factors.csv, which serves every country
     * @return the schedule of each country by its name, or what is wrong with any of the files
     */
    public static Loaded<Map<String, DutySchedule>> read(CsvSource rates, CsvSource reliefs, CsvSource factors) {
        Loaded<List<OfCountry<DutyRate>>> readRates = rates(rates);
        Loaded<List<OfCountry<ReliefBand>>> readReliefs = reliefs(reliefs);
        Loaded<List<StrengthFactorTable>> readFactors = factors(factors);
        List<TableProblem> problems = new ArrayList<>(readRates.problems());
        problems.addAll(readReliefs.problems());
        problems.addAll(readFactors.problems());
        if (!problems.isEmpty()) {
            return Loaded.refused(problems);
        }
        Map<String, DutySchedule> schedules = new LinkedHashMap<>();
        Set<String> countries = new HashSet<>();
        for (OfCountry<DutyRate> any : readRates.orThrow()) {
            if (!countries.add(any.country())) {
                continue;
            }
            List<DutyRate> own = of(any, readRates.orThrow());
            List<ReliefBand> bands = of(any, readReliefs.orThrow());
            List<StrengthFactorTable> tables = readFactors.orThrow();
            // Rates alone first, so that a refusal is told of the file that it belongs to.
            schedule(rates, any, own, List.of(), tables, problems)
                    .flatMap(sound -> schedule(reliefs, any, own, bands, tables, problems))
                    .ifPresent(schedule -> schedules.put(any.country(), schedule));
        }
        return problems.isEmpty()
                ? Loaded.of(Collections.unmodifiableMap(schedules), List.of())
                : Loaded.refused(problems);
    }

    private static Optional<DutySchedule> schedule(
            CsvSource file,
            OfCountry<DutyRate> any,
            List<DutyRate> rates,
            List<ReliefBand> bands,
            List<StrengthFactorTable> factors,
            List<TableProblem> problems) {
        try {
            return Optional.of(new DutySchedule(any.country(), any.currency(), rates, bands, factors));
        } catch (IllegalArgumentException e) {
            problems.add(TableProblem.from(file.name(), 0, "", String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }

    private static <T> List<T> of(OfCountry<?> country, List<OfCountry<T>> rows) {
        return rows.stream()
                .filter(row -> row.country().equals(country.country()))
                .map(OfCountry::row)
                .toList();
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
    private static Optional<Exact.Cash> cash(
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
