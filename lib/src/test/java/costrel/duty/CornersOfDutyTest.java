package costrel.duty;

import static costrel.cost.Given.A_420;
import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.assertSays;
import static costrel.cost.Given.assertSilent;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static costrel.cost.Given.holding;
import static costrel.cost.Given.made;
import static costrel.cost.Given.uk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.cost.Given;
import costrel.explain.CostFinding;
import costrel.wort.Gravity;
import costrel.wort.StrengthFactorTable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What duty says beside its figure, and its tables where two of them meet. */
class CornersOfDutyTest {
    private static final LocalDate NOVEMBER = LocalDate.parse("2026-11-25");

    /** 1045 to 1011 is 34 × 0.129 = 4.386, cut to 4.3: HMRC Notice 226 para 30.3. */
    private static DutyFigure reaching(boolean conditioned, String declared, ProductionYears made, boolean claimed) {
        return Duty.of(
                new DutyInput(
                        holding("30", conditioned, true),
                        1,
                        Gravity.of(1.045),
                        Gravity.of(1.011),
                        Optional.of(dec(declared)),
                        NOVEMBER,
                        NOVEMBER,
                        NOVEMBER,
                        made,
                        claimed,
                        Optional.empty()),
                uk());
    }

    @Test
    void beer_that_reaches_what_is_declared_is_taken_as_declared() {
        DutyFigure same = reaching(true, "4.39", made(NOVEMBER, A_420), true);

        assertEquals(StrengthRule.DECLARED, same.rule());
        assertFigure("4.3", same.strength());
        assertSilent("is expected to reach", same.findings());
        assertSays(
                "is expected to reach 4.3 %, over the declared 4.2 %; duty on 30 L goes by the expected",
                reaching(true, "4.2", made(NOVEMBER, A_420), true).findings());
        assertSilent(
                "goes by the expected",
                reaching(false, "4.2", made(NOVEMBER, A_420), true).findings());
    }

    @Test
    void the_tree_tells_of_a_discount_only_where_there_is_one() {
        String relieved =
                reaching(true, "4.4", made(NOVEMBER, A_420), true).explanation().text();
        String full = reaching(true, "4.4", made(NOVEMBER, A_420), false)
                .explanation()
                .text();

        assertTrue(relieved.contains("rounded up to the penny") && relieved.contains("4.386 %"), relieved);
        assertFalse(full.contains("rounded up to the penny"), full);
        assertTrue(full.contains("not claimed") && full.contains("declared"), full);
    }

    @Test
    void relief_says_whose_production_it_goes_by() {
        ProductionYears fresh =
                new ProductionYears(Map.of(day("2025-02-01"), BigDecimal.ZERO, day("2026-02-01"), dec("400")));

        assertEquals(
                "by this year's estimate, since nothing was made the year before",
                reaching(true, "4.4", fresh, true).relief().why());
        assertEquals(
                "by the production year before",
                reaching(true, "4.4", made(NOVEMBER, A_420), true).relief().why());
    }

    @Test
    void a_year_of_days_is_kept_and_no_more() {
        DutySchedule uk = uk();
        DutyOnDay first = uk.on(NOVEMBER);
        for (int i = 1; i <= 366; i++) {
            assertSame(uk.on(NOVEMBER.plusDays(i)), uk.on(NOVEMBER.plusDays(i)));
        }
        assertSame(first, uk.on(NOVEMBER));
        uk.on(NOVEMBER.plusDays(367));
        assertNotSame(first, uk.on(NOVEMBER));
        assertEquals("duty of UK", uk.toString());
    }

    private static DutyRate rate(String from, String under, String first, String last) {
        return new DutyRate(
                day(first),
                Optional.of(day(last)),
                dec(from),
                Optional.of(dec(under)),
                DraughtRule.ANY,
                dec("20"),
                "invented");
    }

    @Test
    void the_rate_steps_at_the_strengths_of_the_day() {
        DutySchedule schedule = new DutySchedule(
                "UK",
                Given.GBP,
                List.of(
                        rate("0", "1.2", "2026-01-01", "2026-12-31"),
                        rate("3.5", "8.5", "2026-01-01", "2026-12-31"),
                        rate("2.8", "7.5", "2025-01-01", "2025-12-31")),
                List.of(),
                List.of());

        assertEquals(new TreeSet<>(List.of(dec("1.2"), dec("3.5"), dec("8.5"))), schedule.stepsOn(NOVEMBER));
        assertEquals(new TreeSet<>(List.of(dec("2.8"), dec("7.5"))), schedule.stepsOn(day("2025-06-01")));
    }

    @Test
    void strength_factors_are_those_of_the_day() {
        StrengthFactorTable later = Given.factors();
        DutySchedule schedule = new DutySchedule(
                "UK", Given.GBP, List.of(rate("0", "100", "2020-01-01", "2026-12-31")), List.of(), List.of(later));
        LocalDate before = later.validFrom().minusDays(1);
        DutyInput input = new DutyInput(
                holding("30", false, true),
                1,
                Gravity.ofDegrees(30),
                Gravity.ofDegrees(25),
                Optional.of(dec("4")),
                before,
                before,
                before,
                ProductionYears.unknown(),
                false,
                Optional.empty());

        assertRefused("no table of strength factors holds on that day", () -> Duty.of(input, schedule));
        assertRefused(
                "relief band: valid until: expected a day not before 2026-01-02",
                () -> new ReliefBand(
                        day("2026-01-02"),
                        Optional.of(day("2026-01-01")),
                        dec("0"),
                        dec("8.5"),
                        true,
                        dec("0"),
                        dec("5"),
                        dec("0"),
                        dec("0"),
                        "invented"));
    }

    private static DutyFigure irish(String dutyOn, String costedOn, boolean claimed, String alreadyHl, int count) {
        return Duty.of(
                new DutyInput(
                        holding("100", false, false),
                        count,
                        Gravity.ofPlato(12),
                        Gravity.ofDegrees(10),
                        Optional.of(dec("5.0")),
                        NOVEMBER,
                        day(dutyOn),
                        day(costedOn),
                        ProductionYears.unknown(),
                        claimed,
                        Optional.empty(),
                        Optional.of(new YearVolume(dec("40000"), dec(alreadyHl)))),
                DutyTables.shipped("Ireland"));
    }

    /** Ireland halves 22.55 per cent of a hectolitre up to the 30,000th of the year: 112.75 and 56.375 a hectolitre. */
    @Test
    void half_the_irish_rate_is_for_who_claims_it_and_ends_at_the_thirty_thousandth_hectolitre() {
        DutyFigure claimed = irish("2026-11-25", "2026-11-25", true, "0", 1);
        DutyFigure unclaimed = irish("2026-11-25", "2026-11-25", false, "0", 1);

        assertEquals("a rate for small breweries applies", claimed.relief().why());
        assertFigure("112.75", unclaimed.unrounded());
        assertEquals("none", unclaimed.relief().why());
        assertEquals(
                1, irish("2026-11-25", "2026-11-25", true, "29999", 1).slices().size());
        assertEquals(
                2, irish("2026-11-25", "2026-11-25", true, "29999", 2).slices().size());
        DutyFigure beyond = irish("2026-11-25", "2026-11-25", true, "30000", 1);
        assertEquals(1, beyond.slices().size());
        assertFigure("112.75", beyond.unrounded());
    }

    private static DutyFigure german() {
        return Duty.of(
                new DutyInput(
                        holding("100", false, false),
                        1,
                        Gravity.ofPlato(12),
                        Gravity.ofDegrees(10),
                        Optional.of(dec("5.0")),
                        NOVEMBER,
                        NOVEMBER,
                        NOVEMBER,
                        ProductionYears.unknown(),
                        false,
                        Optional.empty()),
                DutyTables.shipped("Germany"));
    }

    @Test
    void a_country_with_one_rate_does_not_ask_what_a_brewery_makes_in_the_year() {
        assertEquals(List.of(), german().findings());
    }

    private static List<String> cautions(DutyFigure duty) {
        return duty.cautions().stream().map(CostFinding::what).toList();
    }

    @Test
    void duty_of_another_country_is_an_estimate_by_rates_that_may_change() {
        List<String> later = cautions(irish("2026-11-26", "2026-11-25", true, "0", 1));

        assertTrue(later.get(0).startsWith("duty of Ireland by the rates from "), later.toString());
        assertTrue(later.get(1).startsWith("rates are known up to the set of "), later.toString());
        assertEquals("duty of Ireland is an estimate", later.get(2));
        assertEquals(
                List.of("duty of Germany by the rates from 2026-01-01, by hL and °P", "duty of Germany is an estimate"),
                cautions(german()));
    }
}
