package costrel.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The difference of two products shared over their factors by the Shapley value: each factor bears its own difference times
 * a mean of the products of all other factors, over every order in which factors could have changed. Nothing is left over,
 * no factor comes first, and the shares change sign when before and after change places. With two factors the mean is
 * that of Bennet's indicator, half the one and half the other.
 *
 * <p>Sources: L. S. Shapley, "A value for n-person games", Annals of Mathematics Studies 28 (1953), 307–317; J. W. Sun,
 * "Changes in energy consumption and energy intensity: a complete decomposition model", Energy Economics 20 (1998), 85–100;
 * T. L. Bennet, "The theory of measurement of changes in cost of living", Journal of the Royal Statistical Society 83
 * (1920), 455–462.
 */
final class ShapleyProduct {

    private ShapleyProduct() {}

    /**
     * The mean of the products of all other factors, for each factor.
     *
     * @param before the factors before
     * @param after the factors after, as many
     * @return for each factor what its difference is to be multiplied by; 0 for a factor that didn't change
     */
    static List<BigDecimal> weights(List<BigDecimal> before, List<BigDecimal> after) {
        // A factor that stays is a player without influence: it multiplies every share alike.
        BigDecimal common = BigDecimal.ONE;
        List<Integer> changed = new ArrayList<>();
        for (int i = 0; i < before.size(); i++) {
            if (before.get(i).compareTo(after.get(i)) == 0) {
                common = common.multiply(before.get(i), Pints.WORKING);
            } else {
                changed.add(i);
            }
        }
        List<BigDecimal> weights = new ArrayList<>();
        for (int i = 0; i < before.size(); i++) {
            weights.add(
                    changed.contains(i)
                            ? weight(i, changed, before, after).multiply(common, Pints.WORKING)
                            : BigDecimal.ZERO);
        }
        return weights;
    }

    /**
     * Σ over s of s! (n − 1 − s)! / n! × the coefficient of tˢ in Π (before + after · t): that coefficient is the sum of the
     * products in which s of the other factors have changed.
     */
    private static BigDecimal weight(
            int factor, List<Integer> changed, List<BigDecimal> before, List<BigDecimal> after) {
        List<BigDecimal> sums = List.of(BigDecimal.ONE);
        for (int other : changed) {
            if (other != factor) {
                sums = times(sums, before.get(other), after.get(other));
            }
        }
        int players = changed.size();
        BigDecimal weight = BigDecimal.ZERO;
        for (int s = 0; s < players; s++) {
            BigDecimal orders = factorial(s).multiply(factorial(players - 1 - s));
            weight = weight.add(sums.get(s).multiply(orders, Pints.WORKING), Pints.WORKING);
        }
        return weight.divide(factorial(players), Pints.WORKING);
    }

    private static List<BigDecimal> times(List<BigDecimal> sums, BigDecimal before, BigDecimal after) {
        List<BigDecimal> product = new ArrayList<>();
        for (int s = 0; s <= sums.size(); s++) {
            BigDecimal stays = s < sums.size() ? sums.get(s).multiply(before, Pints.WORKING) : BigDecimal.ZERO;
            BigDecimal changes = s > 0 ? sums.get(s - 1).multiply(after, Pints.WORKING) : BigDecimal.ZERO;
            product.add(stays.add(changes, Pints.WORKING));
        }
        return product;
    }

    private static BigDecimal factorial(int n) {
        BigDecimal product = BigDecimal.ONE;
        for (int i = 2; i <= n; i++) {
            product = product.multiply(BigDecimal.valueOf(i));
        }
        return product;
    }
}
