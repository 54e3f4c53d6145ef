package costrel.duty;

import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.assertSays;
import static costrel.cost.Given.assertSilent;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static costrel.cost.Given.holding;
import static costrel.cost.Given.uk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.cost.Given;
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
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** The duty tables' rows and a run of containers at the very limits that their descriptions state; rates are invented. */
class LimitsOfDutyTablesTest {
    private static final LocalDate FIRST = LocalDate.parse("2026-01-01");
    private static final LocalDate LAST = LocalDate.parse("2026-06-30");

    private static DutyRate rate(String from, String under, DraughtRule draught, LocalDate first, LocalDate last) {
        return new DutyRate(
                first, Optional.of(last), dec(from), Optional.of(dec(under)), draught, dec("20"), "invented");
    }

    private static DutyRate tier(String producerUpTo, String over, String upTo, String share) {
        return new DutyRate(
                FIRST,
                Optional.empty(),
                BigDecimal.ZERO,
                Optional.empty(),
                DraughtRule.ANY,
                dec("20"),
                Optional.of(new YearTier(
                        Optional.of(producerUpTo)
                                .filter(text -> !text.isEmpty())
                                .map(Given::dec),
                        dec(over),
                        Optional.of(upTo).filter(text -> !text.isEmpty()).map(Given::dec),
                        dec(share))),
                "invented");
    }

    private static ReliefBand band(String from, String under, boolean draught, String over, String upTo) {
        return new ReliefBand(
                FIRST,
                Optional.of(LAST),
                dec(from),
                dec(under),
                draught,
                dec(over),
                dec(upTo),
                dec("1"),
                BigDecimal.ZERO,
                "invented");
    }

    private static DutySchedule british(List<DutyRate> rates, List<ReliefBand> bands) {
        return new DutySchedule("UK", Given.GBP, rates, bands, List.of(Given.factors()));
    }

    private static DutySchedule abroad(DutyRate... rates) {
        DutyBasis basis = DutyTables.shipped("Ireland").basis();
        return new DutySchedule("Elsewhere", CurrencyUnit.EUR, List.of(rates), List.of(), List.of(), basis);
    }

    @Test
    void a_rate_begins_at_a_strength_and_ends_under_a_higher_one() {
        DutyRate rate = rate("3.5", "8.5", DraughtRule.ANY, FIRST, LAST);

        assertTrue(rate.holds(dec("3.5")) && rate.holds(dec("8.4")));
        assertTrue(!rate.holds(dec("3.4")) && !rate.holds(dec("8.5")));
        assertRefused(
                "duty rate: strength under: expected more than 3.5 %, found 3.5 %",
                () -> rate("3.5", "3.5", DraughtRule.ANY, FIRST, LAST));
        assertRefused(
                "duty rate: strength from: expected 0 % or more, found -1",
                () -> rate("-1", "3.5", DraughtRule.ANY, FIRST, LAST));
        assertRefused("not before 2026-01-01", () -> rate("0", "3.5", DraughtRule.ANY, FIRST, day("2025-12-31")));
    }

    @Test
    void a_rate_that_begins_where_another_ends_stands_beside_it() {
        DutyRate weak = rate("1.2", "3.5", DraughtRule.ANY, FIRST, LAST);

        for (DutyRate other : List.of(
                rate("3.5", "8.5", DraughtRule.ANY, FIRST, LAST),
                rate("0", "1.2", DraughtRule.ANY, FIRST, LAST),
                rate("1.2", "3.5", DraughtRule.ANY, LAST.plusDays(1), day("2026-12-31")))) {
            assertEquals(2, british(List.of(weak, other), List.of()).rates().size());
            assertEquals(2, british(List.of(other, weak), List.of()).rates().size());
        }
        for (DutyRate other : List.of(
                rate("3.4", "8.5", DraughtRule.ANY, FIRST, LAST),
                rate("0", "1.3", DraughtRule.NO, FIRST, LAST),
                rate("1.2", "3.5", DraughtRule.YES, LAST, day("2026-12-31")))) {
            assertRefused("two rates that both apply", () -> british(List.of(weak, other), List.of()));
            assertRefused("two rates that both apply", () -> british(List.of(other, weak), List.of()));
        }
    }

    @Test
    void draught_beer_and_other_beer_have_each_their_rate() {
        DutyRate draught = rate("1.2", "8.5", DraughtRule.YES, FIRST, LAST);
        DutyRate other = rate("1.2", "8.5", DraughtRule.NO, FIRST, LAST);
        DutySchedule both = british(List.of(draught, other), List.of());

        assertEquals(draught, both.rate(FIRST, dec("4"), true));
        assertEquals(other, both.rate(LAST, dec("4"), false));
        assertRefused("no rate of UK for draught beer of 1.1 %; supply one", () -> both.rate(FIRST, dec("1.1"), true));
    }

    @Test
    void a_band_of_relief_begins_over_a_production_and_ends_with_a_larger_one() {
        ReliefBand band = band("3.5", "8.5", true, "5", "100");

        assertTrue(band.holdsProduction(dec("5.01")) && band.holdsProduction(dec("100")));
        assertTrue(!band.holdsProduction(dec("5")) && !band.holdsProduction(dec("100.01")));
        assertTrue(band.holds(dec("3.5"), true) && !band.holds(dec("8.5"), true) && !band.holds(dec("4"), false));
        assertRefused(
                "relief band: strength under: expected more than 3.5 %, found 3.5 %",
                () -> band("3.5", "3.5", true, "5", "100"));
        assertRefused(
                "relief band: up to: expected more than 5 hL of pure alcohol, found 5",
                () -> band("3.5", "8.5", true, "5", "5"));
        assertRefused("relief band: over: expected 0", () -> band("3.5", "8.5", true, "-1", "5"));
        assertRefused("relief band: strength from: expected 0", () -> band("-1", "8.5", true, "0", "5"));
    }

    @Test
    void bands_that_meet_stand_side_by_side() {
        List<DutyRate> rates = List.of(rate("0", "100", DraughtRule.ANY, FIRST, LAST));
        ReliefBand band = band("3.5", "8.5", true, "5", "100");

        for (ReliefBand other : List.of(
                band("3.5", "8.5", true, "100", "200"),
                band("3.5", "8.5", true, "0", "5"),
                band("3.5", "8.5", false, "5", "100"),
                band("1.2", "3.5", true, "5", "100"))) {
            assertEquals(2, british(rates, List.of(band, other)).bands().size());
            assertEquals(2, british(rates, List.of(other, band)).bands().size());
        }
        for (ReliefBand other : List.of(
                band("3.5", "8.5", true, "99", "200"),
                band("3.5", "8.5", true, "0", "6"),
                band("1.2", "3.6", true, "5", "100"))) {
            assertRefused("two relief bands that both apply", () -> british(rates, List.of(band, other)));
            assertRefused("two relief bands that both apply", () -> british(rates, List.of(other, band)));
        }
    }

    @Test
    void a_tier_of_a_year_ends_over_where_it_begins_and_pays_no_more_than_all() {
        assertRefused("duty tier: up to: expected more than 100, found 100", () -> tier("", "100", "100", "1"));
        assertRefused("share of the rate: expected more than 0, found 0", () -> tier("", "0", "100", "0"));
        assertRefused("expected no more than 1, found 1.01", () -> tier("", "0", "100", "1.01"));
        assertRefused("output of the brewery: expected more than 0", () -> tier("0", "0", "100", "1"));
        assertRefused("duty tier: over: expected 0 or more, found -1", () -> tier("", "-1", "100", "1"));
        YearTier tier = tier("5000", "100", "200", "1").tier().orElseThrow();
        assertTrue(tier.holds(dec("100"), dec("200")));
        assertTrue(!tier.holds(dec("99.9"), dec("200")) && !tier.holds(dec("100"), dec("200.1")));
    }

    @Test
    void tiers_that_meet_stand_side_by_side_and_tiers_that_cross_are_refused() {
        DutyRate middle = tier("5000", "100", "200", "0.5");

        for (DutyRate other : List.of(
                tier("5000", "0", "100", "0.4"), tier("5000", "200", "", "0.6"), tier("6000", "100", "200", "0.6"))) {
            assertEquals(2, abroad(middle, other).rates().size());
            assertEquals(2, abroad(other, middle).rates().size());
        }
        for (DutyRate other :
                List.of(tier("5000", "0", "101", "0.4"), tier("5000", "199", "", "0.6"), tier("5000", "0", "", "1"))) {
            assertRefused("two rates that both apply", () -> abroad(middle, other));
            assertRefused("two rates that both apply", () -> abroad(other, middle));
        }
    }

    @Test
    void tables_without_a_rate_or_with_the_parts_of_another_law_are_refused() {
        assertRefused("duty of UK: expected a rate or more, found none", () -> british(List.of(), List.of()));
        assertRefused(
                "duty of UK: expected no tiers by the beer of a year",
                () -> british(List.of(tier("5000", "0", "", "0.5")), List.of()));
        assertRefused("production year: expected one that starts on 1 February, found 2026-02-02", () -> {
            new ProductionYears(Map.of(day("2026-02-02"), BigDecimal.ONE));
        });
        assertRefused("production year: expected one that starts on 1 February, found 2026-03-01", () -> {
            new ProductionYears(Map.of(day("2026-03-01"), BigDecimal.ONE));
        });
        assertRefused("pure alcohol made in the year from 2026-02-01: expected 0 hL or more, found -1", () -> {
            new ProductionYears(Map.of(day("2026-02-01"), dec("-1")));
        });
    }

    @Test
    void no_more_is_released_than_is_made() {
        assertFigure("10", new YearVolume(dec("10"), dec("10")).alreadyHl());
        assertRefused("beer made in the year: expected more than 0 hL", () -> new YearVolume(dec("0"), dec("0")));
        assertRefused("released so far in the year: expected 0 hL or more", () -> new YearVolume(dec("1"), dec("-1")));
    }

    @Test
    void a_rounding_keeps_0_to_9_decimals() {
        assertEquals("down to 0", new DutyRounding(0, RoundingMode.DOWN).label());
        assertEquals("half up to 9", new DutyRounding(9, RoundingMode.HALF_UP).label());
        assertRefused("expected 0 to 9 decimals, found 10", () -> new DutyRounding(10, RoundingMode.UP));
        assertRefused("expected 0 to 9 decimals, found -1", () -> new DutyRounding(-1, RoundingMode.UP));
    }

    private static DutyInput run(int count, String strength, LocalDate brewedOn, LocalDate dutyOn, String discount) {
        return new DutyInput(
                holding("30", false, true),
                count,
                Gravity.ofDegrees(30),
                Gravity.ofDegrees(25),
                Optional.of(dec(strength)),
                brewedOn,
                dutyOn,
                dutyOn,
                ProductionYears.unknown(),
                true,
                Optional.of(dec(discount)));
    }

    @Test
    void a_run_is_a_container_or_more_of_beer_that_was_brewed() {
        assertEquals(1, run(1, "100", LAST, LAST, "0").count());
        assertRefused("expected 1 container or more, found 0", () -> run(0, "4", LAST, LAST, "0"));
        assertRefused("declared strength: expected 0 to 100 %, found 100.1", () -> run(1, "100.1", LAST, LAST, "0"));
        assertRefused("declared strength: expected 0 to 100 %, found -0.1", () -> run(1, "-0.1", LAST, LAST, "0"));
        assertFigure("0", run(1, "0", LAST, LAST, "0").declaredStrength().orElseThrow());
        assertRefused(
                "duty point: expected a day not before the brewing on 2026-06-30, found 2026-06-29",
                () -> run(1, "4", LAST, LAST.minusDays(1), "0"));
        assertRefused("stated discount: expected 0 per litre of pure alcohol", () -> run(1, "4", LAST, LAST, "-1"));
    }

    @Test
    void a_discount_that_is_stated_goes_up_to_the_penny_and_never_makes_duty_a_credit() {
        DutySchedule schedule = british(List.of(rate("0", "100", DraughtRule.ANY, FIRST, LAST)), List.of());

        // 30 L × 4 % = 1.2 L of pure alcohol; 20 less 5.001, up to 5.01, is 14.99: 17.988.
        DutyFigure some = schedule.on(LAST).of(run(1, "4", LAST, LAST, "5.001"));
        assertFigure("5.01", some.relief().discount());
        assertEquals("a discount that the user stated", some.relief().why());
        assertFigure("17.98", some.duty().getAmount());
        assertFigure("0", Duty.of(run(1, "4", LAST, LAST, "20.01"), schedule).unrounded());
    }

    @Test
    void tables_looked_up_for_a_day_are_for_that_day() {
        DutyOnDay first = british(List.of(rate("0", "100", DraughtRule.ANY, FIRST, LAST)), List.of())
                .on(FIRST);

        assertRefused(
                "duty point: expected 2026-01-01, found 2026-06-30", () -> first.of(run(1, "4", LAST, LAST, "0")));
    }

    @Test
    void beer_without_a_table_of_strength_factors_is_refused() {
        DutySchedule bare = new DutySchedule(
                "UK", Given.GBP, List.of(rate("0", "100", DraughtRule.ANY, FIRST, LAST)), List.of(), List.of());

        assertRefused(
                "no table of strength factors holds on that day", () -> Duty.of(run(1, "4", LAST, LAST, "0"), bare));
    }

    @Test
    void more_than_a_year_of_days_is_looked_up_alike() {
        DutySchedule schedule = uk();
        for (int i = 0; i < 800; i++) {
            // Finance Act 2026: 19.45 for draught beer of 3.5 to under 8.5 %, from 2026-02-01.
            assertFigure(
                    "19.45",
                    schedule.rate(day("2026-02-01").plusDays(i), dec("4.2"), true)
                            .ratePerLpa());
        }
        assertThrows(IllegalArgumentException.class, () -> schedule.rate(day("2023-07-31"), dec("4"), true));
    }

    private static Container cask(String undrinkableL) {
        return new Container(
                "firkin",
                ContainerKind.CASK,
                dec("40.91481"),
                dec("40.91"),
                dec("1.7"),
                dec(undrinkableL),
                true,
                true,
                List.of(),
                List.of());
    }

    private static DutyFigure on(Container container, String costedOn, String dutyOn) {
        return Duty.of(
                new DutyInput(
                        container,
                        2,
                        Gravity.ofDegrees(30),
                        Gravity.ofDegrees(25),
                        Optional.of(dec("4.5")),
                        day("2026-02-01"),
                        day(dutyOn),
                        day(costedOn),
                        Given.made(day("2026-02-01"), Given.A_420),
                        true,
                        Optional.empty()),
                uk());
    }

    @Test
    void sediment_that_duty_is_left_off_is_cautioned() {
        assertSays(
                "duty is left off 0.9 L of sediment",
                on(cask("0.9"), "2026-03-01", "2026-03-01").cautions());
        assertSilent("of sediment", on(cask("0"), "2026-03-01", "2026-03-01").cautions());
        // 2 × (40.91 − 0.9)
        assertFigure("80.02", on(cask("0.9"), "2026-03-01", "2026-03-01").dutiableL());
    }

    @Test
    void rates_a_year_old_or_for_a_day_to_come_are_cautioned() {
        String caution = "rates are known up to the set of 2026-02-01";

        assertSilent(caution, on(cask("0"), "2027-01-31", "2027-01-31").cautions());
        assertSays(caution, on(cask("0"), "2027-02-01", "2027-02-01").cautions());
        assertSays(caution, on(cask("0"), "2026-03-01", "2026-03-02").cautions());
    }

    @Test
    void a_label_short_of_what_a_container_holds_by_more_than_its_rounding_is_told() {
        List<String> told = new ArrayList<>();
        for (String labelL : List.of("40.91", "40.90981", "40.9098")) {
            Container cask = new Container(
                    "firkin",
                    ContainerKind.CASK,
                    dec("40.91481"),
                    dec(labelL),
                    BigDecimal.ZERO,
                    BigDecimal.ZERO,
                    true,
                    true,
                    List.of(),
                    List.of());
            on(cask, "2026-03-01", "2026-03-01").findings().stream()
                    .filter(finding -> finding.text().contains("its label says"))
                    .forEach(finding -> told.add(labelL));
        }
        assertEquals(List.of("40.9098"), told);
    }
}
