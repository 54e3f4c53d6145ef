package costrel.packaging;

import costrel.figures.Figures;
import costrel.figures.Rounded;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What is racked, put into whole containers. The largest are filled first; what doesn't fill one more goes on to the next
 * smaller container of the plan, and what is left after the smallest is lost.
 *
 * @param rackedL the beer racked, litres
 * @param filled each container type of the plan, in the plan's order
 */
public record PackagingRun(BigDecimal rackedL, List<Filled> filled) {

    /**
     * One container type of a run. Litres in: own and carried in. Litres out: full containers and the remainder.
     *
     * @param plan the share that was planned for it
     * @param fillLossL litres of its share lost in filling
     * @param ownL litres of its share after that
     * @param carriedInL litres that larger containers left over
     * @param count full containers
     * @param remainderL litres that don't fill one more
     * @param carriedTo the next smaller container, which takes the remainder; empty where there is none and it is lost
     */
    public record Filled(
            PackagingShare plan,
            BigDecimal fillLossL,
            BigDecimal ownL,
            BigDecimal carriedInL,
            int count,
            BigDecimal remainderL,
            Optional<String> carriedTo) {

        /**
         * Beer in full containers.
         *
         * @return litres
         */
        public BigDecimal packagedL() {
            return plan.container().nominalL().multiply(BigDecimal.valueOf(count));
        }

        /**
         * What can't be sold from them.
         *
         * @return litres
         */
        public BigDecimal sedimentL() {
            return plan.container().sedimentL().multiply(BigDecimal.valueOf(count));
        }
    }

    /** Shares may miss 1 by this much, the rounding of a few doubles. */
    private static final double SHARE_TOLERANCE = 1e-9;

    /** A container that is full but for this part of it is full: litres come from doubles. */
    private static final BigDecimal FULL = new BigDecimal("1e-9");

    /** Nearer to a whole number of containers than this the doubles aren't asked: a thousand times what makes one full. */
    private static final double NEAR = 1e-6;

    /** Up to this many containers a double is right to far less than {@link #NEAR}. */
    private static final double MOST_PLAIN = 1e6;

    public PackagingRun {
        filled = List.copyOf(filled);
    }

    /**
     * Fills containers.
     *
     * @param rackedL the beer racked, litres, more than 0
     * @param plan the container types, with shares that sum to 1 within 1e-9; each type once
     * @return the run
     * @throws IllegalArgumentException when the shares don't sum to 1, a type stands twice or not one container is filled
     */
    public static PackagingRun of(double rackedL, List<PackagingShare> plan) {
        Figures.overZero("racked", rackedL, " L");
        requireWhole(plan);
        BigDecimal racked = Rounded.decimal(rackedL);
        List<PackagingShare> largestFirst = new ArrayList<>(plan);
        largestFirst.sort(Comparator.comparing(PackagingRun::nominalL).reversed());
        BigDecimal[] carriedInL = new BigDecimal[plan.size()];
        Arrays.fill(carriedInL, BigDecimal.ZERO);
        double[] aboutCarriedInL = new double[plan.size()];
        List<Filled> filled = new ArrayList<>();
        for (int i = 0; i < largestFirst.size(); i++) {
            PackagingShare share = largestFirst.get(i);
            BigDecimal shareL = racked.multiply(Rounded.decimal(share.share()));
            BigDecimal lossL = shareL.multiply(Rounded.decimal(share.fillLossShare()));
            BigDecimal ownL = shareL.subtract(lossL);
            BigDecimal thereL = ownL.add(carriedInL[i]);
            double aboutL = rackedL * share.share() * (1 - share.fillLossShare()) + aboutCarriedInL[i];
            int count = full(aboutL, thereL, nominalL(share));
            BigDecimal remainderL = thereL.subtract(nominalL(share).multiply(BigDecimal.valueOf(count)))
                    .max(BigDecimal.ZERO);
            int next = i + 1;
            while (next < largestFirst.size()
                    && nominalL(largestFirst.get(next)).compareTo(nominalL(share)) >= 0) {
                next++;
            }
            Optional<String> carriedTo = Optional.empty();
            if (next < largestFirst.size()) {
                carriedTo = Optional.of(largestFirst.get(next).container().name());
                carriedInL[next] = carriedInL[next].add(remainderL);
                aboutCarriedInL[next] += aboutL - count * nominalL(share).doubleValue();
            }
            filled.add(new Filled(share, lossL, ownL, carriedInL[i], count, remainderL, carriedTo));
        }
        if (!anyFull(filled)) {
            throw new IllegalArgumentException(
                    "packaging: " + Figures.plain(racked) + " L racked fills not one container: " + "expected at least "
                            + Figures.plain(nominalL(largestFirst.get(plan.size() - 1))) + " L");
        }
        filled.sort(Comparator.comparingInt(type -> plan.indexOf(type.plan())));
        return new PackagingRun(racked, filled);
    }

    /** How many are full. Doubles tell it where the beer is a good way from filling one more or one less. */
    private static int full(double aboutL, BigDecimal thereL, BigDecimal eachL) {
        double containers = aboutL / eachL.doubleValue();
        if (containers < MOST_PLAIN && Math.abs(containers - Math.rint(containers)) > NEAR) {
            return (int) containers;
        }
        return thereL.divide(eachL, Figures.SHOWN)
                .add(FULL)
                .setScale(0, RoundingMode.DOWN)
                .intValueExact();
    }

    private static BigDecimal nominalL(PackagingShare share) {
        return share.container().nominalL();
    }

    private static boolean anyFull(List<Filled> filled) {
        for (Filled type : filled) {
            if (type.count() > 0) {
                return true;
            }
        }
        return false;
    }

    private static void requireWhole(List<PackagingShare> plan) {
        double sum = 0;
        for (int i = 0; i < plan.size(); i++) {
            sum += plan.get(i).share();
            String name = plan.get(i).container().name();
            for (int k = 0; k < i; k++) {
                if (Names.same(plan.get(k).container().name(), name)) {
                    throw new IllegalArgumentException(
                            "packaging: expected each container once, found " + name + " twice");
                }
            }
        }
        if (!(Math.abs(sum - 1) <= SHARE_TOLERANCE)) {
            throw new IllegalArgumentException(
                    "packaging: expected shares that sum to 1, found " + Figures.rounded(BigDecimal.valueOf(sum), 9));
        }
    }

    /**
     * Beer in full containers.
     *
     * @return litres
     */
    public BigDecimal packagedL() {
        return sum(Filled::packagedL);
    }

    /**
     * Beer lost in filling.
     *
     * @return litres
     */
    public BigDecimal fillLossL() {
        return sum(Filled::fillLossL);
    }

    /**
     * Beer left after the smallest container, which is lost.
     *
     * @return litres
     */
    public BigDecimal leftL() {
        return sum(type -> type.carriedTo().isEmpty() ? type.remainderL() : BigDecimal.ZERO);
    }

    /**
     * Beer in them that can't be sold.
     *
     * @return litres
     */
    public BigDecimal sedimentL() {
        return sum(Filled::sedimentL);
    }

    private BigDecimal sum(Function<Filled, BigDecimal> ofType) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Filled type : filled) {
            sum = sum.add(ofType.apply(type));
        }
        return sum;
    }
}
