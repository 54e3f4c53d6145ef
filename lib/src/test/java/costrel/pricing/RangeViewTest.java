package costrel.pricing;

import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.dec;
import static costrel.pricing.Given.GBP;
import static costrel.pricing.Given.SEED;
import static costrel.pricing.Given.assertNear;
import static costrel.pricing.Given.gbp;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** A range of beers in one table; figures by hand. */
class RangeViewTest {
    private static final BigDecimal LAST_DIGIT = dec("1e-28");

    /** Pints that make half a hectolitre: 50 / 0.56826125 (Weights and Measures Act 1985 Sch. 1). */
    private static final BigDecimal HALF_HL = dec("50").divide(dec("0.56826125"), Figures.SHOWN);

    private static RangeView.Sold sold(
            String name, String variable, String price, Optional<String> tankDays, int containers) {
        UnitCost cost = new UnitCost(
                name,
                GBP,
                dec(variable),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                HALF_HL,
                tankDays.map(costrel.cost.Given::dec));
        return new RangeView.Sold(Pricing.of(cost).at(gbp(price)), containers);
    }

    /** Bitter leaves 40 of a half hectolitre and of half a tank-day, stout 45 of one and a half: one wins by each. */
    @Test
    void the_beer_that_earns_most_by_the_hectolitre_need_not_earn_its_tank() {
        RangeView view = RangeView.of(List.of(
                sold("bitter", "60", "100.00", Optional.of("0.5"), 30),
                sold("stout", "75", "120.00", Optional.of("1.5"), 10)));
        RangeView.Row bitter = view.rows().get(0);
        RangeView.Row stout = view.rows().get(1);
        assertNear(dec("80"), bitter.sold().price().contributionPerHl(), LAST_DIGIT, "bitter per hL");
        assertNear(dec("90"), stout.sold().price().contributionPerHl(), LAST_DIGIT, "stout per hL");
        assertFigure("80", bitter.sold().price().contributionPerTankDay().orElseThrow());
        assertFigure("30", stout.sold().price().contributionPerTankDay().orElseThrow());
        assertEquals(2, bitter.rankPerHl());
        assertEquals(1, stout.rankPerHl());
        assertEquals(OptionalInt.of(1), bitter.rankPerTankDay());
        assertEquals(OptionalInt.of(2), stout.rankPerTankDay());
        assertNear(dec("0.75"), bitter.mixShare(), LAST_DIGIT, "mix");
        assertEquals(gbp("3000.00"), bitter.revenue());
        assertEquals(gbp("1800.00"), bitter.variableCost());
        assertEquals(gbp("1200.00"), bitter.contribution());
        RangeView.Total total = view.total();
        assertEquals(40, total.containers());
        assertEquals(gbp("4200.00"), total.revenue());
        assertEquals(gbp("2550.00"), total.variableCost());
        assertEquals(gbp("1650.00"), total.contribution());
        assertEquals(gbp("-350.00"), total.profitAfter(gbp("2000.00")));
        // 40 half hectolitres are 20 hL, 30 halves and 10 one-and-a-halves are 30 tank-days.
        assertNear(dec("20"), total.hl(), LAST_DIGIT, "hL");
        assertNear(dec("82.5"), total.contributionPerHl().orElseThrow(), LAST_DIGIT, "per hL");
        assertFigure("55", total.contributionPerTankDay().orElseThrow());
    }

    @Test
    void equals_share_a_place_and_a_beer_without_tank_days_has_none() {
        RangeView view = RangeView.of(List.of(
                sold("mild", "60", "90.00", Optional.of("1"), 1),
                sold("bitter", "60", "100.00", Optional.of("1"), 1),
                sold("stout", "60", "100.00", Optional.empty(), 1)));
        assertEquals(
                List.of(3, 1, 1),
                view.rows().stream().map(RangeView.Row::rankPerHl).toList());
        assertEquals(
                List.of(OptionalInt.of(2), OptionalInt.of(1), OptionalInt.empty()),
                view.rows().stream().map(RangeView.Row::rankPerTankDay).toList());
        assertTrue(view.total().tankDays().isEmpty());
        assertTrue(view.total().contributionPerTankDay().isEmpty());
    }

    @Test
    void a_range_of_which_nothing_is_sold_has_no_means() {
        RangeView view = RangeView.of(List.of(sold("mild", "60", "90.00", Optional.of("1"), 0)));
        assertFigure("0", view.rows().get(0).mixShare());
        assertEquals(gbp("0.00"), view.total().contribution());
        assertTrue(view.total().contributionPerHl().isEmpty());
        assertTrue(view.total().contributionPerTankDay().isEmpty());
    }

    @Test
    void rows_and_totals_add_up_to_the_penny() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            List<RangeView.Sold> range = new ArrayList<>();
            for (int k = 0; k < 1 + random.nextInt(12); k++) {
                range.add(sold(
                        "beer " + k,
                        BigDecimal.valueOf(random.nextInt(6_000_000), 5).toPlainString(),
                        BigDecimal.valueOf(6000 + random.nextInt(9000), 2).toPlainString(),
                        Optional.of("0.4"),
                        random.nextInt(500)));
            }
            RangeView view = RangeView.of(range);
            String which = "seed " + SEED + ", case " + i;
            Money revenue = Money.zero(GBP);
            Money contribution = Money.zero(GBP);
            BigDecimal mix = BigDecimal.ZERO;
            for (RangeView.Row row : view.rows()) {
                assertEquals(row.revenue(), row.variableCost().plus(row.contribution()), which);
                revenue = revenue.plus(row.revenue());
                contribution = contribution.plus(row.contribution());
                mix = mix.add(row.mixShare());
            }
            assertEquals(view.total().revenue(), revenue, which);
            assertEquals(view.total().contribution(), contribution, which);
            assertEquals(revenue, view.total().variableCost().plus(view.total().contribution()), which);
            if (view.total().containers() > 0) {
                assertNear(BigDecimal.ONE, mix, LAST_DIGIT, which);
            }
        }
    }

    @Test
    void a_range_without_sense_is_refused() {
        RangeView.Sold mild = sold("mild", "60", "90.00", Optional.of("1"), 1);
        UnitCost euros =
                new UnitCost("stout", CurrencyUnit.EUR, dec("60"), dec("0"), dec("0"), HALF_HL, Optional.empty());
        RangeView.Sold stout = new RangeView.Sold(Pricing.of(euros).at(Money.parse("EUR 100.00")), 1);
        assertRefused("a beer or more", () -> RangeView.of(List.of()));
        assertRefused("once, found mild twice", () -> RangeView.of(List.of(mild, mild)));
        assertRefused("expected GBP, found EUR", () -> RangeView.of(List.of(mild, stout)));
        assertRefused("0 containers or more", () -> new RangeView.Sold(mild.price(), -1));
        assertRefused("fixed cost", () -> RangeView.of(List.of(mild)).total().profitAfter(gbp("-1.00")));
    }
}
