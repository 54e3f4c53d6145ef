package costrel.pricing;

import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.dec;
import static costrel.pricing.Given.GBP;
import static costrel.pricing.Given.assertNear;
import static costrel.pricing.Given.bitter;
import static costrel.pricing.Given.keg;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.cost.CostOptions;
import costrel.cost.CostSheet;
import costrel.figures.Figures;
import costrel.packaging.Container;
import costrel.packaging.PackagingShare;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cost against strength, and against loss. */
class StrengthAndLossTest {
    private static final BigDecimal LAST_DIGIT = dec("1e-25");

    private static List<StrengthStep.Row> table(String... strengths) {
        return StrengthStep.table(
                List.of(strengths).stream().map(costrel.cost.Given::dec).toList(),
                strength -> bitter().at(strength.toPlainString()).sheet());
    }

    private static List<String> strengths(List<StrengthStep.Row> rows) {
        return rows.stream().map(row -> row.strength().toPlainString()).toList();
    }

    /** The bands of Finance (No. 2) Act 2023 Sch. 7 begin at 1.3, 3.5 and 8.5 %. */
    @Test
    void the_steps_of_duty_stand_in_the_table_with_both_their_sides() {
        List<StrengthStep.Row> rows = table("3.0", "4.0", "9.0");
        assertEquals(List.of("3.0", "3.4", "3.5", "4.0", "8.4", "8.5", "9.0"), strengths(rows));
        assertEquals(
                List.of("3.5", "8.5"),
                rows.stream()
                        .filter(row -> row.stepPerPint().isPresent())
                        .map(row -> row.strength().toPlainString())
                        .toList());
    }

    /** Duty is strength × litres × rate: at an even rate a tenth of a per cent costs the same everywhere in a band. */
    @Test
    void at_a_step_a_tenth_costs_far_more_than_a_tenth_beside_it() {
        List<StrengthStep.Row> rows = table("3.3", "3.4", "3.5", "3.6");
        BigDecimal beside = rows.get(1).costPerPint().subtract(rows.get(0).costPerPint());
        BigDecimal step = rows.get(2).stepPerPint().orElseThrow();
        assertTrue(step.compareTo(beside.multiply(BigDecimal.TEN)) > 0, step + " against " + beside);
        for (StrengthStep.Row row : rows) {
            assertNear(rows.get(0).costPerPintExDuty(), row.costPerPintExDuty(), LAST_DIGIT, "cost without duty");
        }
    }

    @Test
    void a_table_inside_a_band_has_no_step() {
        List<StrengthStep.Row> rows = table("5.0", "4.0", "4.0");
        assertEquals(List.of("4.0", "5.0"), strengths(rows));
        assertTrue(rows.stream().allMatch(row -> row.stepPerPint().isEmpty()));
        assertRefused("one or more", StrengthAndLossTest::table);
    }

    /** The worth of a point against a gyle that really loses that point: 1,600 L collected, 16 L more of it lost. */
    @Test
    void a_point_of_loss_in_the_tank_is_worth_what_a_gyle_that_loses_it_costs_more() {
        Given.Gyle gyle = new Given.Gyle(
                1600,
                1536,
                "4.2",
                14,
                bitter().bill(),
                bitter().prices(),
                bitter().rates(),
                // A container of 1 L, so that litres count and not whole containers: 96 % and 95 % of 1600 L fill them.
                List.of(new PackagingShare(litre(), 1, 0)),
                List.of(),
                dec("420"));
        CostSheet now = gyle.sheet();
        CostSheet more = gyle.racking(1520).sheet();
        CostSheet less = gyle.racking(1552).sheet();
        LossWorth tank = LossWorth.of(now).get(0);
        assertEquals("FV, tank and dry hops", tank.lostIn());
        assertFigure("0.04", tank.lossShare());
        // Duty is cut to the penny once a sheet.
        BigDecimal aPenny = dec("0.01").divide(dec("2500"));
        assertNear(
                more.unroundedPerPint().subtract(now.unroundedPerPint()), tank.onePointMorePerPint(), aPenny, "more");
        assertNear(
                now.unroundedPerPint().subtract(less.unroundedPerPint()),
                tank.onePointLessPerPint().orElseThrow(),
                aPenny,
                "less");
    }

    private static Container litre() {
        Container keg = keg();
        return new Container(
                "litre",
                keg.kind(),
                BigDecimal.ONE,
                BigDecimal.ONE,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                false,
                false,
                List.of(),
                List.of());
    }

    /** 1 hL is 100 / 0.56826125 pints (Weights and Measures Act 1985 Sch. 1). */
    @Test
    void the_worth_of_a_point_grows_with_the_beer_of_the_year() {
        LossWorth worth = LossWorth.of(bitter().sheet()).get(0);
        assertNear(
                worth.onePointMorePerPint().multiply(dec("100000")).divide(Container.PINT_L, Figures.SHOWN),
                worth.onePointMoreOn(dec("1000")),
                LAST_DIGIT,
                "1,000 hL");
        assertTrue(worth.onePointLessOn(dec("1000")).orElseThrow().compareTo(worth.onePointMoreOn(dec("1000"))) < 0);
        assertFigure("0", worth.onePointMoreOn(BigDecimal.ZERO));
        assertRefused("0 hL or more", () -> worth.onePointMoreOn(dec("-1")));
    }

    @Test
    void every_step_of_the_chain_has_its_worth_and_sediment_carries_duty_and_packaging_too() {
        List<LossWorth> rows = LossWorth.of(bitter().sheet());
        assertEquals(
                List.of("FV, tank and dry hops", "filling", "left after the smallest container", "sediment"),
                rows.stream().map(LossWorth::lostIn).toList());
        assertTrue(rows.get(2).onePointLessPerPint().isEmpty());
        assertTrue(rows.get(3).onePointMorePerPint().compareTo(rows.get(1).onePointMorePerPint()) > 0);
    }

    @Test
    void a_point_that_is_never_sold_is_worth_what_costing_it_anew_says() {
        CostSheet now = bitter().sheet(CostOptions.in(GBP).withUnsold(dec("0.03")));
        CostSheet more = bitter().sheet(CostOptions.in(GBP).withUnsold(dec("0.04")));
        List<LossWorth> rows = LossWorth.of(now);
        LossWorth unsold = rows.get(4);
        assertEquals("returned, given away or out of date", unsold.lostIn());
        assertFigure("0.03", unsold.lossShare());
        assertNear(
                more.unroundedPerPintSold().subtract(now.unroundedPerPintSold()),
                unsold.onePointMorePerPint(),
                LAST_DIGIT,
                "more");
        // All beer that is sold bears what is not: earlier points weigh 1 / 0.97 of what they did.
        assertNear(
                LossWorth.of(bitter().sheet()).get(0).onePointMorePerPint(),
                rows.get(0).onePointMorePerPint().multiply(dec("0.97")),
                LAST_DIGIT,
                "tank");
    }
}
