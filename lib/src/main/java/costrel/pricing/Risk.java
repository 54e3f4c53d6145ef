package costrel.pricing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleConsumer;

/**
 * What next year could do to the cost of a pint: many draws of prices, alpha acid, efficiency, losses and rates of exchange.
 * The cost is a sum of lines, each multiplied by the factors of its drivers: mashed goods go against efficiency, the hops
 * that hold the bitterness against their alpha acid, all of the gyle against the share of the beer that is left. The beer
 * itself, its strength and its containers stay.
 *
 * <p>Drivers go together by a Gaussian copula: the stated correlations are those of the standard normal scores that each
 * driver's value is read off by. Percentiles are those of the sorted draws, with a straight line between two (type 7 of
 * R. J. Hyndman and Y. Fan, "Sample quantiles in statistical packages", The American Statistician 50 (1996), 361–365). What
 * drives the cost is told by Spearman's rank correlation (C. Spearman, "The proof and measurement of association between two
 * things", American Journal of Psychology 15 (1904), 72–101).
 */
public final class Risk {
    private static final int DRAWS_BETWEEN_QUESTIONS = 1024;

    /** The share of the time that goes into drawing; the rest goes into ranks. Only for telling how far it has come. */
    private static final double DRAWING = 0.3;

    /** Lines with the same drivers, taken together. */
    private record Bucket(double perPint, List<Integer> drivers) {}

    private Risk() {}

    /**
     * Draws the cost of a pint.
     *
     * @param cost the cost of a pint, by lines
     * @param plan what is drawn
     * @return what a pint may come to cost
     * @throws IllegalArgumentException when a driver moves no line, or the correlations can't hold together
     * @throws CancellationException when the thread is interrupted
     */
    public static RiskResult of(CostVector cost, RiskPlan plan) {
        return of(cost, plan, share -> {});
    }

    /**
     * Draws the cost of a pint and tells how far it has come.
     *
     * @param cost the cost of a pint, by lines
     * @param plan what is drawn
     * @param shareDone is told now and then, on the thread that draws, which share of the work is done, 0 to 1
     * @return what a pint may come to cost
     * @throws IllegalArgumentException when a driver moves no line, or the correlations can't hold together
     * @throws CancellationException when the thread is interrupted
     */
    public static RiskResult of(CostVector cost, RiskPlan plan, DoubleConsumer shareDone) {
        List<Driver> drivers = plan.drivers();
        Driver.requireUse(drivers, cost);
        double[][] scores = new double[drivers.size()][plan.draws()];
        double[] perPint = draw(buckets(cost, drivers), plan, scores, shareDone);

        List<RiskResult.Influence> influences = influences(drivers, scores, perPint, shareDone);
        double[] sorted = perPint.clone();
        Arrays.sort(sorted);
        double mean = mean(perPint);
        return new RiskResult(
                plan,
                cost.perPint(),
                mean,
                deviation(perPint, mean),
                percentile(sorted, 0.1),
                percentile(sorted, 0.5),
                percentile(sorted, 0.9),
                influences,
                plan.target()
                        .map(target -> OptionalDouble.of(shareUnder(perPint, target)))
                        .orElse(OptionalDouble.empty()));
    }

    private static List<Bucket> buckets(CostVector cost, List<Driver> drivers) {
        Map<List<Integer>, Double> sums = new LinkedHashMap<>();
        for (CostVector.Line line : cost.lines()) {
            List<Integer> moving = new ArrayList<>();
            for (int i = 0; i < drivers.size(); i++) {
                if (drivers.get(i).moves(line)) {
                    moving.add(i);
                }
            }
            sums.merge(moving, line.perPint(), Double::sum);
        }
        List<Bucket> buckets = new ArrayList<>();
        sums.forEach((moving, sum) -> buckets.add(new Bucket(sum, moving)));
        return buckets;
    }

    /** The cost of a pint in each draw; the scores of each driver are kept for their ranks. */
    private static double[] draw(List<Bucket> buckets, RiskPlan plan, double[][] kept, DoubleConsumer shareDone) {
        Driver[] drivers = plan.drivers().toArray(new Driver[0]);
        double[] bases = buckets.stream().mapToDouble(Bucket::perPint).toArray();
        int[][] moving = buckets.stream()
                .map(bucket ->
                        bucket.drivers().stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
        Scores source = new Scores(plan.drivers(), plan.correlations(), plan.seed());
        double[] scores = new double[drivers.length];
        double[] factors = new double[drivers.length];
        double[] perPint = new double[plan.draws()];
        for (int draw = 0; draw < perPint.length; draw++) {
            if (draw % DRAWS_BETWEEN_QUESTIONS == 0) {
                stopWhenAsked();
                shareDone.accept(DRAWING * draw / perPint.length);
            }
            source.draw(scores);
            for (int i = 0; i < drivers.length; i++) {
                kept[i][draw] = scores[i];
                factors[i] = drivers[i].factor(drivers[i].spread().at(scores[i]));
            }
            double sum = 0;
            for (int b = 0; b < bases.length; b++) {
                double product = bases[b];
                for (int driver : moving[b]) {
                    product *= factors[driver];
                }
                sum += product;
            }
            perPint[draw] = sum;
        }
        return perPint;
    }

    private static List<RiskResult.Influence> influences(
            List<Driver> drivers, double[][] scores, double[] perPint, DoubleConsumer shareDone) {
        boolean moves = false;
        for (double cost : perPint) {
            moves |= cost != perPint[0];
        }
        int[] ofCost = moves ? Ranks.of(perPint) : new int[0];
        List<RiskResult.Influence> influences = new ArrayList<>();
        for (int i = 0; i < drivers.size(); i++) {
            stopWhenAsked();
            shareDone.accept(DRAWING + (1 - DRAWING) * i / drivers.size());
            // A driver's value rises with its score, so that both have the same ranks.
            double correlation =
                    moves && !drivers.get(i).spread().isCertain() ? Ranks.correlation(Ranks.of(scores[i]), ofCost) : 0;
            influences.add(new RiskResult.Influence(drivers.get(i).name(), correlation));
        }
        influences.sort(Comparator.comparing((RiskResult.Influence influence) -> -Math.abs(influence.rankCorrelation()))
                .thenComparing(RiskResult.Influence::driver));
        return influences;
    }

    private static void stopWhenAsked() {
        if (Thread.interrupted()) {
            throw new CancellationException("the draws were stopped before they were done");
        }
    }

    private static double mean(double[] values) {
        // About the first value, so that draws that are all alike have exactly that mean.
        double sum = 0;
        for (double value : values) {
            sum += value - values[0];
        }
        return values[0] + sum / values.length;
    }

    private static double deviation(double[] values, double mean) {
        double sum = 0;
        for (double value : values) {
            sum += (value - mean) * (value - mean);
        }
        return Math.sqrt(sum / (values.length - 1));
    }

    private static double percentile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int under = (int) place;
        int over = Math.min(under + 1, sorted.length - 1);
        return sorted[under] + (place - under) * (sorted[over] - sorted[under]);
    }

    private static double shareUnder(double[] perPint, RiskPlan.Target target) {
        double most = target.pricePerPint() * (1 - target.margin());
        int over = 0;
        for (double cost : perPint) {
            if (cost > most) {
                over++;
            }
        }
        return (double) over / perPint.length;
    }
}
