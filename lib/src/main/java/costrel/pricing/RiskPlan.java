package costrel.pricing;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is drawn: the drivers, how they go together, how often, and the seed that makes it come out the same again.
 *
 * @param drivers what may come out otherwise, each name once
 * @param correlations how they go together; pairs that aren't named don't
 * @param target a price and the margin that it is to leave; empty to leave that out
 * @param draws how many, 100 to 1,000,000
 * @param seed any number; the same seed, drivers in the same order and draws give the same result
 */
public record RiskPlan(
        List<Driver> drivers, List<Correlation> correlations, Optional<Target> target, int draws, long seed) {

    private static final int FEWEST = 100;
    private static final int MOST = 1_000_000;

    /**
     * How two drivers go together.
     *
     * @param first the name of one driver
     * @param second the name of another
     * @param coefficient the correlation of their standard normal scores, −1 to 1
     */
    public record Correlation(String first, String second, double coefficient) {
        public Correlation {
            if (!(coefficient >= -1 && coefficient <= 1)) {
                throw new IllegalArgumentException(
                        "correlation of " + first + " and " + second + ": expected -1 to 1, found " + coefficient);
            }
            if (first.equals(second)) {
                throw new IllegalArgumentException("correlation of " + first + ": expected two drivers, found one");
            }
        }
    }

    /**
     * A price that is kept whatever happens, and the margin it is to leave.
     *
     * @param pricePerPint the price, money per saleable pint without value added tax, more than 0
     * @param margin the least margin, a share of the price, under 1
     */
    public record Target(double pricePerPint, double margin) {
        public Target {
            if (!(pricePerPint > 0 && pricePerPint < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("price: expected more than 0, found " + pricePerPint);
            }
            if (!(margin < 1 && margin > Double.NEGATIVE_INFINITY)) {
                throw new IllegalArgumentException("margin: expected under 1 (100 %), found " + margin);
            }
        }

        /**
         * The price of a container, and the margin it is to leave.
         *
         * @param price the price
         * @param margin the least margin, a share of the price, under 1
         * @return the target by the pint
         */
        public static Target of(Price price, double margin) {
            return new Target(price.perPint().doubleValue(), margin);
        }
    }

    public RiskPlan {
        drivers = List.copyOf(drivers);
        correlations = List.copyOf(correlations);
        if (draws < FEWEST || draws > MOST) {
            throw new IllegalArgumentException("draws: expected 100 to 1,000,000, found " + draws);
        }
        Set<String> names = new HashSet<>();
        for (Driver driver : drivers) {
            if (!names.add(driver.name())) {
                throw new IllegalArgumentException(
                        "drivers: expected each name once, found " + driver.name() + " twice");
            }
        }
        Set<Set<String>> pairs = new HashSet<>();
        for (Correlation correlation : correlations) {
            for (String name : List.of(correlation.first(), correlation.second())) {
                if (!names.contains(name)) {
                    throw new IllegalArgumentException("correlation: expected a driver of the plan, found " + name);
                }
            }
            if (!pairs.add(Set.of(correlation.first(), correlation.second()))) {
                throw new IllegalArgumentException("correlation of " + correlation.first() + " and "
                        + correlation.second() + ": expected one, found more");
            }
        }
    }
}
