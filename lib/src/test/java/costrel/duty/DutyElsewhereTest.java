package costrel.duty;

import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.assertSays;
import static costrel.cost.Given.assertSilent;
import static costrel.cost.Given.cell;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static costrel.cost.Given.holding;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.cost.Given;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DutyElsewhereTest {
    private static final Optional<YearVolume> UNKNOWN = Optional.empty();

    private static DutyInput run(
            Container container, int count, String plato, Optional<String> strength, Optional<YearVolume> year) {
        return new DutyInput(
                container,
                count,
                Gravity.ofPlato(Double.parseDouble(plato)),
                Gravity.ofDegrees(10),
                strength.map(Given::dec),
                day("2026-11-10"),
                day("2026-11-25"),
                day("2026-11-25"),
                ProductionYears.unknown(),
                true,
                Optional.empty(),
                year);
    }

    private static DutyFigure hectolitre(String country, String plato, String strength, Optional<YearVolume> year) {
        return Duty.of(
                run(holding("100", false, false), 1, plato, Optional.of(strength), year), DutyTables.shipped(country));
    }

    private static Optional<YearVolume> year(String annualHl, String alreadyHl) {
        return Optional.of(new YearVolume(dec(annualHl), dec(alreadyHl)));
    }

    static List<Map<String, String>> published() {
        return ReferenceTable.read("duty/duty_elsewhere.csv");
    }

    @ParameterizedTest
    @MethodSource("published")
    void duty_is_as_the_law_of_the_country_has_it(Map<String, String> row) {
        DutyFigure found = Duty.of(
                run(
                        holding(cell(row, "litres"), false, false),
                        Integer.parseInt(cell(row, "count")),
                        cell(row, "plato"),
                        Optional.of(cell(row, "strength")),
                        UNKNOWN),
                DutyTables.shipped(cell(row, "country")));

        assertFigure(cell(row, "unrounded"), found.unrounded());
        assertFigure(cell(row, "duty"), found.duty().getAmount());
    }

    static List<Map<String, String>> barrels() {
        return ReferenceTable.read("duty/us_barrels.csv");
    }

    /** 27 CFR 25.156(a) and 25.158. */
    @ParameterizedTest
    @MethodSource("barrels")
    void kegs_and_cases_are_as_many_barrels_as_the_regulation_says(Map<String, String> row) {
        DutySchedule us = DutyTables.shipped("United States");
        DutyBasis basis = us.basis();
        DutySchedule lineByLine = DutyTables.schedule(
                us.country(),
                us.currency(),
                us.rates(),
                new DutyBasis(
                        basis.unit(),
                        basis.strength(),
                        basis.reducedRate(),
                        basis.perVolume(),
                        basis.container(),
                        Optional.empty(),
                        basis.duty(),
                        basis.source()));
        BigDecimal litres = dec(cell(row, "litres"));
        Container container = new Container(
                "package",
                ContainerKind.valueOf(cell(row, "kind").toUpperCase(Locale.ROOT)),
                litres,
                litres,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                false,
                false,
                List.of(),
                List.of());

        DutyFigure found = Duty.of(
                run(container, Integer.parseInt(cell(row, "count")), "12", Optional.of("5"), UNKNOWN), lineByLine);

        assertFigure(cell(row, "barrels"), found.volume());
    }

    /** 26 USC 5051 and 27 CFR 25.156(c): 42.608 barrels are 42.61, at 3.50 they are 149.135. */
    @Test
    void a_small_american_brewer_pays_three_fifty_on_the_rounded_sum() {
        DutyFigure found = Duty.of(
                run(holding("50", false, false), 100, "12", Optional.of("5"), year("10000", "500")),
                DutyTables.shipped("United States"));

        assertFigure("42.61", found.volume());
        assertFigure("149.14", found.duty().getAmount());
    }

    @Test
    void the_barrel_that_passes_sixty_thousand_pays_sixteen() {
        // 60,000 barrels are 70,408.6591824 hL; ten barrels before it, 42.61 are released.
        BigDecimal already = dec("59990").multiply(dec("1.17347765304"));
        DutyFigure found = Duty.of(
                run(
                        holding("50", false, false),
                        100,
                        "12",
                        Optional.of("5"),
                        Optional.of(new YearVolume(dec("100000"), already))),
                DutyTables.shipped("United States"));

        // 10 × 3.50 + 32.61 × 16.
        assertEquals(2, found.slices().size());
        assertFigure("556.76", found.duty().getAmount());
        assertTrue(found.explanation().text().contains("the first 60,000 barrels"));
    }

    @Test
    void a_large_american_brewer_pays_sixteen_and_beyond_six_million_eighteen() {
        DutySchedule us = DutyTables.shipped("United States");
        Container keg = holding("50", false, false);

        assertFigure(
                "681.76",
                Duty.of(run(keg, 100, "12", Optional.of("5"), year("8000000", "0")), us)
                        .duty()
                        .getAmount());
        assertFigure(
                "766.98",
                Duty.of(run(keg, 100, "12", Optional.of("5"), year("8000000", "7500000")), us)
                        .duty()
                        .getAmount());
    }

    @Test
    void an_irish_microbrewery_pays_half_up_to_its_thirty_thousandth_hectolitre() {
        assertFigure(
                "56.375",
                hectolitre("Ireland", "12", "5.0", year("20000", "100")).unrounded());
        // Half a hectolitre at half the rate, half at the whole.
        assertFigure(
                "84.5625",
                hectolitre("Ireland", "12", "5.0", year("40000", "29999.5")).unrounded());
        assertFigure(
                "112.75",
                hectolitre("Ireland", "12", "5.0", year("40000", "30000")).unrounded());
        assertFigure(
                "56.375", hectolitre("Ireland", "12", "5.0", year("75000", "0")).unrounded());
        assertFigure(
                "112.75",
                hectolitre("Ireland", "12", "5.0", year("75000.01", "0")).unrounded());
    }

    @Test
    void where_the_year_is_not_known_the_full_rate_is_taken_and_told() {
        assertSays(
                "the full rate of Ireland was taken",
                hectolitre("Ireland", "12", "5.0", UNKNOWN).findings());
        assertSilent(
                "the full rate of Ireland was taken",
                hectolitre("Ireland", "12", "5.0", year("20000", "0")).findings());
    }

    @Test
    void a_german_scale_that_was_not_checked_is_asked_for() {
        assertSays(
                "supply the rates in force on 2026-11-25",
                hectolitre("Germany", "12", "5.0", year("5000", "0")).findings());
        assertRefused(
                "the duty tables of Germany begin 2026-01-01",
                () -> DutyTables.shipped("Germany").rate(day("2025-12-31"), dec("5"), false));
    }

    /** Biersteuergesetz 2009 § 2 as amended in 2011: 56.0, 67.2 and 78.4 % at 5,000, 10,000 and 20,000 hL. */
    @Test
    void a_scale_that_is_supplied_cuts_rate_and_amount_as_the_law_says() {
        DutySchedule germany = DutyTables.shipped("Germany");
        List<DutyRate> rates = new ArrayList<>(germany.rates());
        rates.add(scale("5000", "0.560"));
        rates.add(scale("10000", "0.672"));
        rates.add(scale("20000", "0.784"));
        DutySchedule small = DutyTables.schedule("Germany", germany.currency(), rates, germany.basis());

        assertFigure("5.28", onTwelve(small, "5000"));
        assertFigure("6.34", onTwelve(small, "5001"));
        assertFigure("6.34", onTwelve(small, "10000"));
        assertFigure("7.40", onTwelve(small, "20000"));
        assertFigure("9.44", onTwelve(small, "20001"));
    }

    private static DutyRate scale(String upToHl, String share) {
        return new DutyRate(
                day("2026-01-01"),
                Optional.empty(),
                BigDecimal.ZERO,
                Optional.empty(),
                DraughtRule.ANY,
                dec("0.787"),
                Optional.of(new YearTier(Optional.of(dec(upToHl)), BigDecimal.ZERO, Optional.empty(), dec(share))),
                "the scale of 2011");
    }

    private static BigDecimal onTwelve(DutySchedule schedule, String annualHl) {
        return Duty.of(run(holding("100", false, false), 1, "12", Optional.of("5"), year(annualHl, "0")), schedule)
                .duty()
                .getAmount();
    }

    /** Adding a country is adding its rows: nothing in the library knows this one. */
    @Test
    void a_country_that_the_library_does_not_have_is_two_tables() {
        DutySchedule nowhere =
                DutyTables.country("Nowhere", "duty/duty_nowhere_basis.csv", "duty/duty_nowhere_rates.csv");
        Container keg = holding("50", false, true);
        Container bottle = holding("0.5", false, false);

        // 4.9 % is 4 %: 2 × 0.5 hL × 4 × 19 = 76; 100 bottles of half a litre 0.5 × 4 × 21 = 42, at a quarter 5.25, cut
        // to
        // 5.2: 10.4, up to whole francs.
        assertFigure(
                "76",
                Duty.of(run(keg, 2, "12", Optional.of("4.9"), UNKNOWN), nowhere)
                        .duty()
                        .getAmount());
        assertFigure(
                "42",
                Duty.of(run(bottle, 100, "12", Optional.of("4.9"), UNKNOWN), nowhere)
                        .duty()
                        .getAmount());
        assertFigure(
                "11",
                Duty.of(run(bottle, 100, "12", Optional.of("4.9"), year("900", "0")), nowhere)
                        .duty()
                        .getAmount());
        assertFigure(
                "10",
                Duty.of(run(keg, 1, "12", Optional.of("2.9"), UNKNOWN), nowhere)
                        .duty()
                        .getAmount());
        assertRefused("know no rates for that day", () -> nowhere.rate(day("2027-01-01"), dec("5"), false));
    }

    @Test
    void duty_never_falls_when_there_is_more_beer() {
        long seed = Long.getLong("seed", 5051L);
        Random random = new Random(seed);
        for (String country : List.of("Germany", "Ireland", "United States")) {
            DutySchedule schedule = DutyTables.shipped(country);
            for (int i = 0; i < 50; i++) {
                String litres = String.valueOf(1 + random.nextInt(200));
                int count = 1 + random.nextInt(400);
                Optional<YearVolume> year = year("40000", String.valueOf(29_900 + random.nextInt(100)));
                Container container = holding(litres, false, false);
                BigDecimal some = Duty.of(run(container, count, "12", Optional.of("5"), year), schedule)
                        .unrounded();
                BigDecimal more = Duty.of(run(container, count + 1, "12", Optional.of("5"), year), schedule)
                        .unrounded();
                assertTrue(more.compareTo(some) >= 0, country + ", seed " + seed + ", case " + i);
            }
        }
    }

    @Test
    void tables_that_say_two_things_at_once_are_refused() {
        DutySchedule germany = DutyTables.shipped("Germany");
        List<DutyRate> twice = List.of(germany.rates().get(0), scale("5000", "0.5"), scale("5000", "0.6"));
        assertRefused(
                "two rates that both apply",
                () -> DutyTables.schedule("Germany", germany.currency(), twice, germany.basis()));
        assertRefused("expected down, up or half up", () -> new DutyRounding(2, RoundingMode.FLOOR));
        assertRefused("such as down to 2", () -> DutyRounding.parse("to 2"));
        assertRefused("share of the rate", () -> scale("5000", "1.1"));
        assertRefused("expected no more than the 10 hL made", () -> year("10", "11"));
        assertRefused("expected one decimal, as on the label", () -> hectolitre("Ireland", "12", "2.85", UNKNOWN));
    }

    @Test
    void for_want_of_a_label_the_expected_strength_is_taken_and_told() {
        DutyFigure found = Duty.of(
                run(holding("100", false, false), 1, "12", Optional.empty(), UNKNOWN), DutyTables.shipped("Ireland"));

        assertSays("no strength is declared", found.findings());
        assertEquals(found.expected().strength(), found.multiplier());
    }

    /** By the litre of pure alcohol too a country rounds as its own table says, and not as the British do. */
    @Test
    void another_country_by_the_litre_of_pure_alcohol_keeps_its_own_roundings() {
        DutyBasis basis = new DutyBasis(
                DutyUnit.PURE_ALCOHOL,
                Optional.of(DutyRounding.parse("half up to 1")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                DutyRounding.parse("up to 2"),
                "invented");
        DutyRate rate = new DutyRate(
                day("2026-01-01"),
                Optional.empty(),
                BigDecimal.ZERO,
                Optional.empty(),
                DraughtRule.ANY,
                dec("20.01"),
                "invented");
        DutySchedule schedule = DutyTables.schedule("Elsewhere", CurrencyUnit.EUR, List.of(rate), basis);

        // 4.96 % is 5.0 %: 0.333 hL hold 1.665 L of pure alcohol; at 20.01 they bear 33.31665.
        assertFigure(
                "33.32",
                Duty.of(run(holding("33.3", false, false), 1, "12", Optional.of("4.96"), UNKNOWN), schedule)
                        .duty()
                        .getAmount());
        assertRefused(
                "expected tiers by the beer of a year in place of bands",
                () -> new DutySchedule(
                        "Elsewhere",
                        CurrencyUnit.EUR,
                        List.of(rate),
                        Given.uk().bands(),
                        List.of(Given.factors()),
                        basis));
    }
}
