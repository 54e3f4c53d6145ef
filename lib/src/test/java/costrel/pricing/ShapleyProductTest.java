package costrel.pricing;

import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.dec;
import static costrel.pricing.Given.SEED;
import static costrel.pricing.Given.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A difference shared out, and rounded so that it still adds up. */
class ShapleyProductTest {
    private static final BigDecimal LAST_DIGIT = dec("1e-30");

    private static List<BigDecimal> effects(List<BigDecimal> before, List<BigDecimal> after) {
        List<BigDecimal> weights = ShapleyProduct.weights(before, after);
        List<BigDecimal> effects = new ArrayList<>();
        for (int i = 0; i < weights.size(); i++) {
            effects.add(weights.get(i).multiply(after.get(i).subtract(before.get(i))));
        }
        return effects;
    }

    private static BigDecimal product(List<BigDecimal> factors) {
        return factors.stream().reduce(BigDecimal.ONE, BigDecimal::multiply);
    }

    private static List<BigDecimal> random(Random random, int n) {
        List<BigDecimal> factors = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            factors.add(BigDecimal.valueOf(random.nextInt(4000) - 500, 3));
        }
        return factors;
    }

    /** Bennet (1920): price 2 to 3, quantity 10 to 12. 1 × (10 + 12) / 2 = 11 and 2 × (2 + 3) / 2 = 5, by hand. */
    @Test
    void price_and_quantity_are_weighted_with_the_mean_of_both_as_bennet_does() {
        List<BigDecimal> effects = effects(List.of(dec("2"), dec("10")), List.of(dec("3"), dec("12")));
        assertFigure("11", effects.get(0));
        assertFigure("5", effects.get(1));
    }

    /** Sun (1998), the complete decomposition for three factors: Δx·y·z + ½·Δx·(y·Δz + z·Δy) + ⅓·Δx·Δy·Δz. */
    @Test
    void three_factors_are_shared_as_sun_does() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            List<BigDecimal> before = random(random, 3);
            List<BigDecimal> after = random(random, 3);
            BigDecimal y = before.get(1);
            BigDecimal z = before.get(2);
            BigDecimal dx = after.get(0).subtract(before.get(0));
            BigDecimal dy = after.get(1).subtract(y);
            BigDecimal dz = after.get(2).subtract(z);
            BigDecimal expected = dx.multiply(y)
                    .multiply(z)
                    .add(dx.multiply(y.multiply(dz).add(z.multiply(dy))).divide(dec("2")))
                    .add(dx.multiply(dy).multiply(dz).divide(dec("3"), Pints.WORKING));
            assertNear(expected, effects(before, after).get(0), LAST_DIGIT, "seed " + SEED + ", case " + i);
        }
    }

    /** Shapley (1953): the mean over every order in which the factors can change, one after another. */
    @Test
    void a_share_is_the_mean_over_all_orders_of_change() {
        Random random = new Random(SEED);
        for (int i = 0; i < 50; i++) {
            int n = 1 + random.nextInt(5);
            List<BigDecimal> before = random(random, n);
            List<BigDecimal> after = random(random, n);
            List<BigDecimal> sums = new ArrayList<>(Collections.nCopies(n, BigDecimal.ZERO));
            List<List<Integer>> orders = orders(n);
            for (List<Integer> order : orders) {
                List<BigDecimal> now = new ArrayList<>(before);
                for (int factor : order) {
                    BigDecimal was = product(now);
                    now.set(factor, after.get(factor));
                    sums.set(factor, sums.get(factor).add(product(now).subtract(was)));
                }
            }
            List<BigDecimal> found = effects(before, after);
            for (int factor = 0; factor < n; factor++) {
                assertNear(
                        sums.get(factor).divide(BigDecimal.valueOf(orders.size()), Pints.WORKING),
                        found.get(factor),
                        LAST_DIGIT,
                        "seed " + SEED + ", case " + i + ", factor " + factor);
            }
        }
    }

    private static List<List<Integer>> orders(int n) {
        if (n == 0) {
            return List.of(List.of());
        }
        List<List<Integer>> orders = new ArrayList<>();
        for (List<Integer> shorter : orders(n - 1)) {
            for (int at = 0; at <= shorter.size(); at++) {
                List<Integer> order = new ArrayList<>(shorter);
                order.add(at, n - 1);
                orders.add(order);
            }
        }
        return orders;
    }

    /** Three thirds of 1.00 are 0.34, 0.33 and 0.33: the largest remainder, the earlier one at a tie, by hand. */
    @Test
    void a_penny_that_is_missing_goes_to_the_one_that_lost_most() {
        BigDecimal third = BigDecimal.ONE.divide(dec("3"), Pints.WORKING);
        assertEquals(
                List.of(dec("0.34"), dec("0.33"), dec("0.33")),
                LargestRemainder.round(List.of(third, third, third), dec("1.00"), 2));
        assertEquals(
                List.of(dec("0.12"), dec("-0.05"), dec("0.03")),
                LargestRemainder.round(List.of(dec("0.118"), dec("-0.049"), dec("0.031")), dec("0.10"), 2));
    }

    @Test
    void rounded_figures_sum_to_the_total_and_none_is_a_penny_off() {
        Random random = new Random(SEED);
        for (int i = 0; i < 500; i++) {
            List<BigDecimal> exact = new ArrayList<>();
            for (int k = 0; k < 1 + random.nextInt(9); k++) {
                exact.add(BigDecimal.valueOf(random.nextInt(2_000_001) - 1_000_000, 5));
            }
            BigDecimal total = Pints.sum(exact).setScale(2, RoundingMode.HALF_UP);
            String which = "seed " + SEED + ", case " + i + ": " + exact;
            List<BigDecimal> rounded = LargestRemainder.round(exact, total, 2);
            assertEquals(0, total.compareTo(Pints.sum(rounded)), which);
            for (int k = 0; k < exact.size(); k++) {
                assertTrue(exact.get(k).subtract(rounded.get(k)).abs().compareTo(dec("0.01")) <= 0, which);
            }
            List<BigDecimal> mirrored = LargestRemainder.round(
                    exact.stream().map(BigDecimal::negate).toList(), total.negate(), 2);
            assertEquals(rounded, mirrored.stream().map(BigDecimal::negate).toList(), which);
        }
    }
}
