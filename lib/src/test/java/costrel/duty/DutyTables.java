package costrel.duty;

import static costrel.cost.Given.cell;
import static costrel.cost.Given.day;
import static costrel.cost.Given.figure;

import costrel.ReferenceTable;
import costrel.cost.Given;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Countries with duty by volume, out of tables. */
public final class DutyTables {
    static final String BASES = "ingredient-tables/duty-bases.csv";
    static final String RATES = "ingredient-tables/duty-rates-by-volume.csv";

    private DutyTables() {}

    static Optional<String> filled(Map<String, String> row, String column) {
        return Optional.of(cell(row, column)).filter(text -> !text.isEmpty());
    }

    static Optional<BigDecimal> number(Map<String, String> row, String column) {
        return filled(row, column).map(text -> figure(row, column));
    }

    static Optional<DutyRounding> rounding(Map<String, String> row, String column) {
        return filled(row, column).map(DutyRounding::parse);
    }

    /** A country out of its two tables. */
    static DutySchedule country(String country, String bases, String rates) {
        DutyBasis basis = ReferenceTable.read(bases).stream()
                .filter(row -> cell(row, "country").equals(country))
                .map(row -> new DutyBasis(
                        Arrays.stream(DutyUnit.values())
                                .filter(unit -> unit.label().equals(cell(row, "charged by")))
                                .findFirst()
                                .orElseThrow(),
                        rounding(row, "strength"),
                        rounding(row, "reduced rate"),
                        rounding(row, "per volume"),
                        rounding(row, "container"),
                        rounding(row, "run"),
                        DutyRounding.parse(cell(row, "duty")),
                        cell(row, "source")))
                .findFirst()
                .orElseThrow();
        List<Map<String, String>> rows = ReferenceTable.read(rates).stream()
                .filter(row -> cell(row, "country").equals(country))
                .toList();
        return schedule(
                country,
                CurrencyUnit.of(cell(rows.get(0), "rate").split(" ", 2)[1]),
                rows.stream().map(DutyTables::rate).toList(),
                basis);
    }

    private static DutyRate rate(Map<String, String> row) {
        return new DutyRate(
                day(cell(row, "valid from")),
                filled(row, "valid until").map(Given::day),
                figure(row, "strength from"),
                number(row, "strength under"),
                DraughtRule.valueOf(cell(row, "draught").toUpperCase(Locale.ROOT)),
                figure(row, "rate"),
                filled(row, "over")
                        .map(any -> new YearTier(
                                number(row, "producer up to"),
                                figure(row, "over"),
                                number(row, "up to"),
                                number(row, "share")
                                        .map(percent -> percent.movePointLeft(2))
                                        .orElse(BigDecimal.ONE))),
                cell(row, "source"));
    }

    static DutySchedule schedule(String country, CurrencyUnit currency, List<DutyRate> rates, DutyBasis basis) {
        return new DutySchedule(country, currency, rates, List.of(), List.of(Given.factors()), basis);
    }

    /** A country as the tables ship. */
    public static DutySchedule shipped(String country) {
        return country(country, BASES, RATES);
    }
}
