package costrel.duty;

import static costrel.cost.Given.A_420;
import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.assertSays;
import static costrel.cost.Given.assertSilent;
import static costrel.cost.Given.cell;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static costrel.cost.Given.declared;
import static costrel.cost.Given.holding;
import static costrel.cost.Given.made;
import static costrel.cost.Given.uk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Cases;
import costrel.ReferenceTable;
import costrel.cost.Given;
import costrel.explain.CostFinding;
import costrel.figures.Figures;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DutyTest {
    private static final LocalDate NOVEMBER = day("2026-11-25");
    private static final ProductionYears NOT_SMALL = made(NOVEMBER, dec("5000"));

    static List<Map<String, String>> statute() {
        return ReferenceTable.read("duty/uk_duty.csv");
    }

    /** Finance (No. 2) Act 2023 ss.45 to 59 and Schs. 7 to 9, Finance Act 2025 s.63, Finance Act 2026 s.89. */
    @ParameterizedTest
    @MethodSource("statute")
    void duty_is_as_the_acts_have_it(Map<String, String> row) {
        LocalDate day = day(cell(row, "duty point"));
        Container container = new Container(
                cell(row, "what"),
                ContainerKind.CASK,
                dec(cell(row, "label L")),
                dec(cell(row, "label L")),
                BigDecimal.ZERO,
                dec(cell(row, "undrinkable L")),
                true,
                cell(row, "draught").equals("yes"),
                List.of(),
                List.of());

        DutyFigure figure = Duty.of(
                declared(
                        container,
                        Integer.parseInt(cell(row, "count")),
                        cell(row, "strength given"),
                        day,
                        made(day, dec(cell(row, "production hL")))),
                uk());

        assertFigure(cell(row, "strength for duty"), figure.strength());
        assertFigure(cell(row, "pure alcohol L"), figure.pureAlcoholL());
        assertFigure(cell(row, "full rate"), figure.rate().ratePerLpa());
        assertFigure(cell(row, "discount"), figure.relief().discount());
        assertFigure(cell(row, "payable rate"), figure.payableRate());
        assertFigure(cell(row, "duty unrounded"), figure.unrounded());
        assertFigure(cell(row, "duty"), figure.duty().getAmount());
        assertEquals(
                cell(row, "band over hL"),
                figure.relief().band().map(band -> Figures.plain(band.overHl())).orElse(""));
        if (figure.relief().band().isPresent()) {
            assertFigure(
                    cell(row, "discount unrounded"),
                    figure.relief().unroundedDiscount().setScale(8, RoundingMode.HALF_UP));
        }
    }

    static List<Map<String, String>> edges() {
        return ReferenceTable.read("duty/uk_relief_edges.csv");
    }

    /** Finance Act 2025 s.63(4) and Finance Act 2026 s.89(4), at both ends of every band and in its middle. */
    @ParameterizedTest
    @MethodSource("edges")
    void relief_is_right_at_the_edges_of_every_band(Map<String, String> row) {
        LocalDate day = day(cell(row, "duty point"));

        ReliefFigure relief = Duty.of(
                        declared(
                                holding("30", false, cell(row, "draught").equals("yes")),
                                1,
                                cell(row, "strength"),
                                day,
                                made(day, dec(cell(row, "production hL")))),
                        uk())
                .relief();

        assertFigure(cell(row, "band over hL"), relief.band().orElseThrow().overHl());
        assertFigure(cell(row, "discount"), relief.discount());
    }

    /** The unrounded discount of 4,500 hL is -0.0028: up to the penny it is nothing, never a surcharge. */
    @Test
    void the_end_of_the_taper_gives_nothing_and_takes_nothing() {
        ReliefFigure relief = Duty.of(
                        declared(holding("30", false, false), 1, "4.2", NOVEMBER, made(NOVEMBER, dec("4500"))), uk())
                .relief();

        assertTrue(relief.unroundedDiscount().signum() < 0, "unrounded");
        assertEquals(0, relief.discount().signum(), "discount");
    }

    @Test
    void a_taper_that_runs_far_under_nothing_is_no_surcharge() {
        ReliefBand steep = new ReliefBand(
                day("2026-02-01"),
                Optional.empty(),
                dec("3.5"),
                dec("8.5"),
                true,
                BigDecimal.ZERO,
                dec("100"),
                dec("-5"),
                BigDecimal.TEN,
                "invented");

        assertFigure("0", SmallProducerRelief.discount(steep, dec("50"), 2));
        assertFigure("5", SmallProducerRelief.discount(steep, dec("1"), 2));
    }

    /** HMRC, UK Trade Tariff news story "Alcohol Duty rate changes" for 1 August 2023: 2,000 L at 5 %. */
    @Test
    void the_published_example_of_2023_comes_out_with_its_own_discount() {
        DutyInput without = declared(holding("2000", false, false), 1, "5", day("2023-08-01"), NOT_SMALL);
        DutyInput with = new DutyInput(
                without.container(),
                1,
                without.og(),
                without.pg(),
                without.declaredStrength(),
                without.brewedOn(),
                without.dutyOn(),
                without.costedOn(),
                ProductionYears.unknown(),
                true,
                Optional.of(dec("4.89")));

        assertEquals(
                Money.parse("GBP 2101.00"), Duty.of(notClaimed(without), uk()).duty());
        assertFigure("16.12", Duty.of(with, uk()).payableRate());
        assertEquals(Money.parse("GBP 1612.00"), Duty.of(with, uk()).duty());
    }

    private static DutyInput notClaimed(DutyInput input) {
        return new DutyInput(
                input.container(),
                input.count(),
                input.og(),
                input.pg(),
                input.declaredStrength(),
                input.brewedOn(),
                input.dutyOn(),
                input.costedOn(),
                input.production(),
                false,
                Optional.empty());
    }

    /** HMRC internal manual HMEXSH5020, at an old rate: 150 cases of 24 × 33 cl at 5 %; 706.266 is printed as 706.26. */
    @Test
    void duty_is_cut_down_to_the_penny_as_the_manual_prints_it() {
        DutySchedule old = new DutySchedule(
                "UK",
                Given.GBP,
                List.of(new DutyRate(
                        day("2020-01-01"),
                        Optional.empty(),
                        BigDecimal.ZERO,
                        Optional.empty(),
                        DraughtRule.ANY,
                        dec("11.89"),
                        "an old rate")),
                List.of(),
                List.of(Given.factors()));

        DutyFigure figure = Duty.of(declared(holding("0.33", false, false), 150 * 24, "5", NOVEMBER, NOT_SMALL), old);

        assertFigure("59.4", figure.pureAlcoholL());
        assertEquals(Money.parse("GBP 706.26"), figure.duty());
    }

    static List<Map<String, String>> pints() {
        return ReferenceTable.read("duty/uk_duty_per_pint.csv");
    }

    @ParameterizedTest
    @MethodSource("pints")
    void a_pint_bears_the_unrounded_duty(Map<String, String> row) {
        DutyInput input = declared(
                holding("30", false, cell(row, "draught").equals("yes")),
                7,
                cell(row, "strength"),
                day(cell(row, "duty point")),
                made(NOVEMBER, dec(cell(row, "production hL"))));

        assertFigure(cell(row, "pence"), pence(Duty.of(input, uk())));
        assertFigure(cell(row, "pence at full rate"), pence(Duty.of(notClaimed(input), uk())));
    }

    private static BigDecimal pence(DutyFigure figure) {
        return figure.unroundedPerSaleablePint().movePointRight(2).setScale(2, RoundingMode.HALF_UP);
    }

    @Test
    void a_hundred_casks_are_rounded_once_and_not_a_hundred_times() {
        // 100 × 19.7947764 (the first row of the statute's cases) is 1979.47764; 100 × 19.79 would be 1979.00.
        Container cask = new Container(
                "firkin",
                ContainerKind.CASK,
                dec("40.91481"),
                dec("40.91"),
                BigDecimal.ZERO,
                dec("1.70"),
                true,
                true,
                List.of(),
                List.of());

        DutyFigure figure = Duty.of(declared(cask, 100, "4.2", NOVEMBER, made(NOVEMBER, A_420)), uk());

        assertEquals(Money.parse("GBP 1979.47"), figure.duty());
        assertFigure("19.7947764", figure.unroundedPerContainer());
    }

    /** Alcoholic products technical guide s.11 (7.59 is 7.5) and the rates of Finance Act 2026 s.89. */
    @ParameterizedTest
    @CsvSource({
        "1.2, no, 1.2, 0.00",
        "1.29, yes, 1.2, 0.00",
        "1.3, no, 1.3, 9.96",
        "3.49, no, 3.4, 9.96",
        "3.49, yes, 3.4, 8.58",
        "3.5, no, 3.5, 22.58",
        "3.5, yes, 3.5, 19.45",
        "7.59, no, 7.5, 22.58",
        "8.49, yes, 8.4, 19.45",
        "8.5, yes, 8.5, 30.62",
        "22.09, no, 22.0, 30.62",
        "22.1, no, 22.1, 33.99"
    })
    void the_strength_is_cut_before_the_band_is_looked_up(String given, String draught, String cut, String rate) {
        DutyFigure figure =
                Duty.of(declared(holding("30", false, draught.equals("yes")), 1, given, NOVEMBER, NOT_SMALL), uk());

        assertFigure(cut, figure.strength());
        assertFigure(rate, figure.rate().ratePerLpa());
    }

    @Test
    void relief_ends_under_eight_and_a_half_per_cent() {
        ProductionYears small = made(NOVEMBER, A_420);

        assertFigure("7.43", discount("8.49", small));
        assertFigure("0", discount("8.5", small));
        assertFigure("0", discount("1.2", small));
    }

    private static BigDecimal discount(String strength, ProductionYears production) {
        return Duty.of(declared(holding("30", false, true), 1, strength, NOVEMBER, production), uk())
                .relief()
                .discount();
    }

    @Test
    void rates_follow_the_day_of_the_duty_point_with_both_ends_included() {
        assertFigure("19.08", rateOn("2025-01-31"));
        assertFigure("18.76", rateOn("2025-02-01"));
        assertFigure("18.76", rateOn("2026-01-31"));
        assertFigure("19.45", rateOn("2026-02-01"));
    }

    private static BigDecimal rateOn(String day) {
        return Duty.of(
                        notClaimed(declared(holding("30", false, true), 1, "4.2", day(day), ProductionYears.unknown())),
                        uk())
                .rate()
                .ratePerLpa();
    }

    @Test
    void a_duty_point_outside_the_tables_is_refused() {
        assertRefused("the duty tables of UK begin 2023-08-01", () -> uk().rate(day("2023-07-31"), dec("4.2"), true));

        List<DutyRate> closed = Given.rates("UK").stream()
                .filter(rate -> rate.validUntil().isPresent())
                .toList();
        DutySchedule old = new DutySchedule("UK", Given.GBP, closed, List.of(), List.of(Given.factors()));
        assertRefused("the newest set is of 2025-02-01", () -> old.rate(day("2026-02-01"), dec("4.2"), true));
        assertFigure("18.76", old.rate(day("2026-01-31"), dec("4.2"), true).ratePerLpa());
    }

    @Test
    void relief_of_2023_and_2024_is_refused_for_want_of_a_table() {
        LocalDate day = day("2024-06-01");
        DutyInput input = declared(holding("30", false, true), 1, "4.2", day, made(day, A_420));

        assertRefused("supply the table", () -> Duty.of(input, uk()));
        assertFigure("19.08", Duty.of(notClaimed(input), uk()).payableRate());
    }

    @Test
    void conditioned_beer_pays_on_what_it_reaches_where_that_is_more_than_declared() {
        // 1045 to 1011 is 34 × 0.129 = 4.386, cut to 4.3: HMRC Notice 226 para 30.3.
        assertStrength("4.3", StrengthRule.EXPECTED, true, Optional.of("4.0"));
        assertStrength("4.5", StrengthRule.DECLARED, true, Optional.of("4.5"));
        assertStrength("4.0", StrengthRule.DECLARED, false, Optional.of("4.0"));
        assertStrength("4.3", StrengthRule.EXPECTED_FOR_WANT_OF_DECLARED, false, Optional.empty());

        assertSays("over the declared 4 %", reaching(true, Optional.of("4.0")).findings());
        assertSays("over the declared 4 %", reaching(false, Optional.of("4.0")).findings());
        assertSilent("over the declared", reaching(true, Optional.of("4.5")).findings());
        assertSays("no strength is declared", reaching(true, Optional.empty()).findings());
    }

    private static void assertStrength(
            String expected, StrengthRule rule, boolean conditioned, Optional<String> declared) {
        DutyFigure figure = reaching(conditioned, declared);
        assertFigure(expected, figure.strength());
        assertEquals(rule, figure.rule());
        assertFigure("4.386", figure.expected().unroundedStrength());
    }

    private static DutyFigure reaching(boolean conditioned, Optional<String> declared) {
        return Duty.of(
                new DutyInput(
                        holding("40.91", conditioned, true),
                        1,
                        Gravity.of(1.045),
                        Gravity.of(1.011),
                        declared.map(BigDecimal::new),
                        NOVEMBER,
                        NOVEMBER,
                        NOVEMBER,
                        NOT_SMALL,
                        true,
                        Optional.empty()),
                uk());
    }

    /** s.54(1), s.59: relief goes by the year of brewing, the rate by the duty point; January and February part them. */
    @Test
    void beer_of_january_released_in_february_takes_the_older_production_and_the_newer_rate() {
        ProductionYears years = new ProductionYears(Map.of(day("2024-02-01"), dec("100"), day("2025-02-01"), A_420));
        DutyInput input = new DutyInput(
                holding("30", false, true),
                1,
                Gravity.of(1.030),
                Gravity.of(1.025),
                Optional.of(dec("5.0")),
                day("2026-01-31"),
                day("2026-02-01"),
                day("2026-02-01"),
                years,
                true,
                Optional.empty());

        DutyFigure figure = Duty.of(input, uk());

        assertEquals(Optional.of(day("2024-02-01")), figure.relief().productionYear());
        assertFigure("100", figure.relief().productionHl().orElseThrow());
        assertFigure("19.45", figure.rate().ratePerLpa());
        // (89.02 + 9.89 × 95) / 100 = 10.2857: Finance Act 2026 s.89(4).
        assertFigure("10.29", figure.relief().discount());
    }

    @Test
    void a_new_brewery_goes_by_its_estimate_and_nothing_at_all_is_refused() {
        LocalDate thisYear = day("2026-02-01");
        LocalDate lastYear = day("2025-02-01");
        ProductionYears estimated = new ProductionYears(Map.of(lastYear, BigDecimal.ZERO, thisYear, dec("4")));
        ProductionYears nothing = new ProductionYears(Map.of(lastYear, BigDecimal.ZERO));

        ReliefFigure relief = Duty.of(declared(holding("30", false, true), 1, "3.4", NOVEMBER, estimated), uk())
                .relief();

        assertEquals(Optional.of(thisYear), relief.productionYear());
        assertFigure("8.58", relief.discount());
        assertRefused(
                "supply this year's estimate",
                () -> Duty.of(declared(holding("30", false, true), 1, "3.4", NOVEMBER, nothing), uk()));
    }

    @Test
    void no_relief_is_given_where_production_is_unknown_or_too_large() {
        DutyFigure unknown =
                Duty.of(declared(holding("30", false, true), 1, "4.2", NOVEMBER, ProductionYears.unknown()), uk());
        DutyFigure large =
                Duty.of(declared(holding("30", false, true), 1, "4.2", NOVEMBER, made(NOVEMBER, dec("4500.01"))), uk());
        DutyFigure growing = Duty.of(
                declared(
                        holding("30", false, true),
                        1,
                        "4.2",
                        NOVEMBER,
                        new ProductionYears(Map.of(day("2025-02-01"), dec("4000"), day("2026-02-01"), dec("4600")))),
                uk());

        for (DutyFigure figure : List.of(unknown, large, growing)) {
            assertFigure("19.45", figure.payableRate());
        }
        assertSays("production year from 2025-02-01 is not known", unknown.findings());
        assertSays("4500.01 hL is over the 4500 hL", large.findings());
        assertSays("4600 hL is over the 4500 hL", growing.findings());
    }

    @Test
    void cautions_name_the_rate_set_the_production_and_the_draught_claim() {
        List<CostFinding> cautions = Duty.of(
                        declared(holding("30", false, true), 1, "4.2", NOVEMBER, made(NOVEMBER, A_420)), uk())
                .cautions();

        assertSays("rates in force from 2026-02-01", cautions);
        assertSays("Finance Act 2026", cautions);
        assertSays("420 hL of pure alcohol in the production year from 2025-02-01", cautions);
        assertSays("costed as draught", cautions);
        assertSilent("a Budget may change them", cautions);
        assertSilent("within 0.1 of", cautions);
    }

    @Test
    void a_duty_point_yet_to_come_warns_that_rates_may_change() {
        DutyInput today = declared(holding("30", false, true), 1, "4.2", NOVEMBER, NOT_SMALL);
        DutyInput later = new DutyInput(
                today.container(),
                1,
                today.og(),
                today.pg(),
                today.declaredStrength(),
                NOVEMBER,
                day("2027-02-01"),
                NOVEMBER,
                NOT_SMALL,
                true,
                Optional.empty());

        assertSays("a Budget may change them", Duty.of(later, uk()).cautions());
        assertSays(
                "a Budget may change them",
                Duty.of(
                                declared(
                                        holding("30", false, true),
                                        1,
                                        "4.2",
                                        day("2027-03-01"),
                                        made(day("2027-03-01"), A_420)),
                                uk())
                        .cautions());
    }

    @ParameterizedTest
    @CsvSource({"3.4, 3.5", "3.5, 3.5", "3.6, 3.5", "8.4, 8.5", "8.6, 8.5"})
    void a_strength_near_a_step_of_the_rate_is_cautioned(String strength, String step) {
        assertSays(
                "within 0.1 of " + step + " %",
                Duty.of(declared(holding("30", false, true), 1, strength, NOVEMBER, NOT_SMALL), uk())
                        .cautions());
    }

    @Test
    void two_rates_for_one_beer_are_refused() {
        List<DutyRate> twice = new ArrayList<>(Given.rates("UK"));
        twice.add(new DutyRate(
                day("2026-06-01"),
                Optional.empty(),
                dec("4"),
                Optional.of(dec("5")),
                DraughtRule.YES,
                dec("1"),
                "invented"));

        assertRefused(
                "two rates that both apply", () -> new DutySchedule("UK", Given.GBP, twice, List.of(), List.of()));
    }

    @Test
    void an_overlapping_relief_band_is_refused() {
        List<ReliefBand> twice = new ArrayList<>(Given.bands("UK"));
        twice.add(new ReliefBand(
                day("2026-06-01"),
                Optional.empty(),
                dec("3.5"),
                dec("8.5"),
                true,
                dec("400"),
                dec("500"),
                dec("1"),
                dec("1"),
                "invented"));

        assertRefused(
                "two relief bands that both apply",
                () -> new DutySchedule("UK", Given.GBP, Given.rates("UK"), twice, List.of()));
    }

    @Test
    void another_country_is_further_rows_only() {
        DutySchedule elsewhere = new DutySchedule(
                "Elsewhere",
                CurrencyUnit.EUR,
                List.of(new DutyRate(
                        day("2020-01-01"),
                        Optional.empty(),
                        BigDecimal.ZERO,
                        Optional.empty(),
                        DraughtRule.ANY,
                        dec("22.50"),
                        "invented")),
                List.of(),
                List.of(Given.factors()));

        DutyFigure figure = Duty.of(declared(holding("30", false, true), 2, "5.0", NOVEMBER, NOT_SMALL), elsewhere);

        assertEquals(Money.parse("EUR 67.50"), figure.duty()); // 60 L × 5 % × 22.50
        assertEquals("the duty tables of Elsewhere hold none", figure.relief().why());
    }

    @Test
    void duty_grows_with_volume_and_with_strength_inside_a_band() {
        long seed = Long.getLong("seed", 20260201L);
        Random random = new Random(seed);
        DutySchedule uk = uk();
        for (int i = 0; i < Cases.upTo(500); i++) {
            BigDecimal a = BigDecimal.valueOf(1 + random.nextInt(450000), 2);
            boolean draught = random.nextBoolean();
            BigDecimal litres = BigDecimal.valueOf(2000 + random.nextInt(20000), 2);
            BigDecimal strength = BigDecimal.valueOf(35 + random.nextInt(49), 1);
            Money duty = duty(litres, strength, draught, a, uk);
            String which = "seed " + seed + ", case " + i + ": " + litres + " L at " + strength + " %, A " + a;
            assertTrue(
                    !duty(litres.add(BigDecimal.ONE), strength, draught, a, uk).isLessThan(duty), which);
            if (strength.compareTo(dec("8.4")) < 0) {
                assertTrue(
                        !duty(litres, strength.add(dec("0.1")), draught, a, uk).isLessThan(duty), which);
            }
            assertTrue(!duty.isNegative(), which);
        }
    }

    private static Money duty(BigDecimal litres, BigDecimal strength, boolean draught, BigDecimal a, DutySchedule uk) {
        return Duty.of(
                        declared(
                                holding(litres.toPlainString(), false, draught),
                                3,
                                strength.toPlainString(),
                                NOVEMBER,
                                made(NOVEMBER, a)),
                        uk)
                .duty();
    }

    @Test
    void the_duty_can_be_followed_to_its_act() {
        DutyFigure figure =
                Duty.of(declared(holding("30", false, true), 1, "4.2", NOVEMBER, made(NOVEMBER, A_420)), uk());

        assertEquals(
                "19.45 per L of pure alcohol",
                figure.explanation().find("full rate").orElseThrow().figure());
        assertEquals(
                "12.02 per L of pure alcohol",
                figure.explanation().find("payable rate").orElseThrow().figure());
        assertTrue(figure.explanation().text().contains("Finance Act 2026 (c. 11) s.89(4)"));
    }
}
