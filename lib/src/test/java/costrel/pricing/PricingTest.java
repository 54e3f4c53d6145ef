package costrel.pricing;

import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.cell;
import static costrel.cost.Given.dec;
import static costrel.cost.Given.figure;
import static costrel.pricing.Given.GBP;
import static costrel.pricing.Given.SEED;
import static costrel.pricing.Given.assertNear;
import static costrel.pricing.Given.bitter;
import static costrel.pricing.Given.gbp;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.cost.ContainerCost;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Prices of the trade from an unrounded cost. */
class PricingTest {
    /** Room for the 34th digit of a quotient. */
    private static final BigDecimal LAST_DIGIT = dec("1e-28");

    /** A firkin that costs 60, of which 9 fixed and 14 duty; 69 pints and a quarter of a tank-day. */
    private static final UnitCost SIXTY = new UnitCost(
            "Dray Bitter, firkin", GBP, dec("60"), dec("9"), dec("14"), dec("69"), Optional.of(dec("0.25")));

    private static UnitCost costing(BigDecimal cost) {
        return new UnitCost("beer", GBP, cost, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ONE, Optional.empty());
    }

    /** The identities between margin and mark-up, worked by hand: see the table. */
    @Test
    void a_margin_has_its_mark_up_and_a_mark_up_its_margin() {
        for (Map<String, String> row : ReferenceTable.read("pricing/margin_markup.csv")) {
            BigDecimal margin = figure(row, "margin_pct").movePointLeft(2);
            BigDecimal markUp = Pricing.markUpOf(margin);
            assertFigure(cell(row, "markup_pct"), markUp.movePointRight(2).setScale(4, RoundingMode.HALF_UP));
            assertNear(margin, Pricing.marginOf(markUp), LAST_DIGIT, "margin");
        }
    }

    /** Cost 60.00 at 40 % of the price is 100.00: 60 / (1 - 0.4), by hand. */
    @Test
    void sixty_pounds_at_forty_per_cent_is_a_hundred() {
        Price price = Pricing.of(SIXTY).atMargin(dec("0.40"));
        assertEquals(gbp("100.00"), price.net());
        assertFigure("0.4", price.margin());
        assertFigure("0.6667", price.markUp().orElseThrow().setScale(4, RoundingMode.HALF_UP));
        // By hand: 40 / (100 - 14); 100 - 51; 49 / 69; 49 / 0.25.
        assertFigure("0.4651", price.marginExDuty().orElseThrow().setScale(4, RoundingMode.HALF_UP));
        assertFigure("49", price.contribution());
        assertFigure("0.7101", price.contributionPerPint().setScale(4, RoundingMode.HALF_UP));
        assertFigure("196", price.contributionPerTankDay().orElseThrow());
        // 69 pints of 0.56826125 L (Weights and Measures Act 1985 Sch. 1) are 0.3921002625 hL.
        assertFigure("0.3921002625", SIXTY.saleableHl());
        assertFigure("124.97", price.contributionPerHl().setScale(2, RoundingMode.HALF_UP));
    }

    @Test
    void cost_plus_is_the_cost_and_its_mark_up() {
        assertEquals(gbp("90.00"), Pricing.of(SIXTY).atMarkUp(dec("0.5")).net());
        assertEquals(gbp("60.00"), Pricing.of(SIXTY).atMarkUp(BigDecimal.ZERO).net());
    }

    /** 14 + 46 / (1 - 0.6) = 129, by hand. */
    @Test
    void a_margin_without_duty_leaves_the_duty_alone() {
        Price price = Pricing.of(SIXTY).atMarginExDuty(dec("0.6"));
        assertEquals(gbp("129.00"), price.net());
        assertFigure("0.6", price.marginExDuty().orElseThrow());
    }

    /** Variable cost is 51: 51 + 100 × 0.3921002625 = 90.21; 51 + 120 × 0.25 = 81, by hand. */
    @Test
    void a_contribution_is_laid_on_the_variable_cost() {
        assertEquals(
                gbp("90.21"), Pricing.of(SIXTY).atContributionPerHl(dec("100")).net());
        assertEquals(
                gbp("81.00"),
                Pricing.of(SIXTY).atContributionPerTankDay(dec("120")).net());
    }

    @Test
    void a_price_is_rounded_once_halves_up() {
        assertEquals(
                gbp("1.01"),
                Pricing.of(costing(dec("1.005"))).atMarkUp(BigDecimal.ZERO).net());
        assertEquals(
                gbp("1.00"),
                Pricing.of(costing(dec("1.00499"))).atMarkUp(BigDecimal.ZERO).net());
    }

    @Test
    void what_makes_no_sense_is_refused() {
        assertRefused("margin: expected under 1", () -> Pricing.of(SIXTY).atMargin(BigDecimal.ONE));
        assertRefused("margin: expected under 1", () -> Pricing.of(SIXTY).atMargin(dec("40")));
        assertRefused("margin: expected under 1", () -> Pricing.markUpOf(BigDecimal.ONE));
        assertRefused("mark-up: expected over -1", () -> Pricing.marginOf(dec("-1")));
        assertRefused("cost: expected 0", () -> costing(dec("-0.01")));
        assertRefused(
                "days in tank", () -> Pricing.of(costing(BigDecimal.ONE)).atContributionPerTankDay(BigDecimal.ONE));
        assertRefused("expected GBP", () -> Pricing.of(SIXTY).at(Money.parse("EUR 80.00")));
        assertRefused("more than 0", () -> Pricing.of(costing(BigDecimal.ZERO)).at(gbp("0.00")));
    }

    @Test
    void a_price_under_variable_cost_must_be_asked_for() {
        assertRefused("variable cost of 51 GBP", () -> Pricing.of(SIXTY).at(gbp("50.99")));
        assertRefused("variable cost", () -> Pricing.of(SIXTY).atMarkUp(dec("-0.2")));
        assertRefused("variable cost", () -> Pricing.of(SIXTY).atContributionPerHl(dec("-1")));
        assertFigure("0", Pricing.of(SIXTY).at(gbp("51.00")).contribution());
        Price loss = Pricing.of(SIXTY).evenUnderVariableCost().at(gbp("50.00"));
        assertFigure("-1", loss.contribution());
        assertFigure("-0.2", loss.margin());
    }

    @Test
    void the_cost_that_a_price_allows_gives_the_price_again() {
        Random random = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            Money price = Money.ofMinor(GBP, 1 + random.nextInt(100_000));
            BigDecimal margin = BigDecimal.valueOf(random.nextInt(9999), 4);
            UnitCost cost = costing(Pricing.costAt(price, margin));
            String which = "seed " + SEED + ", case " + i + ": " + price + " at " + margin;
            assertEquals(price, Pricing.of(cost).atMargin(margin).net(), which);
            assertEquals(
                    price, Pricing.of(cost).atMarkUp(Pricing.markUpOf(margin)).net(), which);
        }
    }

    @Test
    void margin_and_mark_up_undo_each_other() {
        Random random = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            BigDecimal margin = BigDecimal.valueOf(random.nextInt(1_999_999) - 1_000_000, 6);
            assertNear(margin, Pricing.marginOf(Pricing.markUpOf(margin)), LAST_DIGIT, "seed " + SEED + ", case " + i);
        }
    }

    /** The containers of a sheet bear, between them, all of its fixed and all of its variable cost. */
    @Test
    void the_containers_of_a_sheet_share_out_its_fixed_and_variable_cost_and_its_tank_days() {
        CostSheet sheet = bitter().sheet();
        BigDecimal cost = BigDecimal.ZERO;
        BigDecimal fixed = BigDecimal.ZERO;
        BigDecimal days = BigDecimal.ZERO;
        for (ContainerCost container : sheet.containers()) {
            UnitCost unit = UnitCost.of(sheet, container);
            BigDecimal count = BigDecimal.valueOf(container.count());
            cost = cost.add(unit.cost().multiply(count));
            fixed = fixed.add(unit.fixed().multiply(count));
            days = days.add(unit.tankDays().orElseThrow().multiply(count));
            assertNear(container.duty().duty().getAmount(), unit.duty().multiply(count), LAST_DIGIT, unit.name());
        }
        BigDecimal fixedLines = sheet.lines().stream()
                .filter(CostLine::fixed)
                .map(line -> line.value().getAmount())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        // 14 days at 9.00 are the only fixed line.
        assertFigure("126", fixedLines);
        assertNear(sheet.total().getAmount(), cost, LAST_DIGIT, "cost");
        assertNear(fixedLines, fixed, LAST_DIGIT, "fixed");
        assertNear(dec("14"), days, LAST_DIGIT, "tank-days");
    }

    /** By hand: 10 % off 100.00 is 90.00, 25 % off is 75.00; 90 - 51 = 39, 75 - 51 = 24. */
    @Test
    void a_ladder_shows_what_each_step_leaves() {
        DiscountLadder ladder = DiscountLadder.of(
                Pricing.of(SIXTY),
                gbp("100.00"),
                List.of(
                        new DiscountLadder.Step(1, BigDecimal.ZERO),
                        new DiscountLadder.Step(10, dec("0.10")),
                        new DiscountLadder.Step(50, dec("0.25"))));
        assertEquals(
                List.of(gbp("100.00"), gbp("90.00"), gbp("75.00")),
                ladder.rungs().stream().map(rung -> rung.price().net()).toList());
        assertFigure("39", ladder.rungs().get(1).price().contribution());
        assertFigure("24", ladder.rungs().get(2).price().contribution());
        assertFigure("0.2", ladder.rungs().get(2).price().margin());
        assertEquals(gbp("100.00"), ladder.netFor(9));
        assertEquals(gbp("90.00"), ladder.netFor(10));
        assertEquals(gbp("75.00"), ladder.netFor(5000));
    }

    @Test
    void a_ladder_out_of_order_or_under_variable_cost_is_refused() {
        DiscountLadder.Step ten = new DiscountLadder.Step(10, dec("0.10"));
        DiscountLadder.Step half = new DiscountLadder.Step(20, dec("0.50"));
        Money list = gbp("100.00");
        Pricing pricing = Pricing.of(SIXTY);
        assertRefused("orders that rise", () -> DiscountLadder.of(pricing, list, List.of(half, ten)));
        assertRefused("orders that rise", () -> DiscountLadder.of(pricing, list, List.of(ten, ten)));
        assertRefused(
                "more than 0.1 from 30",
                () -> DiscountLadder.of(pricing, list, List.of(ten, new DiscountLadder.Step(30, dec("0.05")))));
        assertRefused("variable cost", () -> DiscountLadder.of(pricing, list, List.of(ten, half)));
        assertTrue(DiscountLadder.of(pricing.evenUnderVariableCost(), list, List.of(ten, half))
                        .rungs()
                        .get(1)
                        .price()
                        .contribution()
                        .signum()
                < 0);
        assertRefused("a step or more", () -> DiscountLadder.of(pricing, list, List.of()));
        assertRefused("under 1", () -> new DiscountLadder.Step(1, BigDecimal.ONE));
        assertRefused("1 container", () -> new DiscountLadder.Step(0, BigDecimal.ZERO));
    }
}
