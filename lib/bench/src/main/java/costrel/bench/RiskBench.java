package costrel.bench;

import costrel.cost.CostGroup;
import costrel.pricing.CostVector;
import costrel.pricing.Driver;
import costrel.pricing.Risk;
import costrel.pricing.RiskPlan;
import costrel.pricing.RiskResult;
import costrel.pricing.Spread;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.hipparchus.random.Well19937c;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * What may move the cost of a pint of a 30-line beer, drawn 100,000 times; against a loop over doubles by hand that draws as often
 * from the same generator and sorts what it drew for its percentiles; the study tells besides how each driver ranks.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class RiskBench {
    private static final int DRAWS = 100_000;
    private static final double MALT = 0.1;
    private static final double HOPS = 0.2;
    private static final double BASE_EFFICIENCY = 0.9;
    private static final double EFFICIENCY = 0.02;

    private final CostVector cost;
    private final RiskPlan plan = new RiskPlan(
            List.of(
                    Driver.prices(CostGroup.MASHED_GOODS, 1, new Spread.Lognormal(1, MALT)),
                    Driver.prices(CostGroup.HOPS, 1, new Spread.Lognormal(1, HOPS)),
                    Driver.efficiency(BASE_EFFICIENCY, new Spread.Normal(BASE_EFFICIENCY, EFFICIENCY))),
            List.of(),
            Optional.empty(),
            DRAWS,
            7);

    /** Costs the beer. */
    public RiskBench() {
        Beer beer = new Beer(1, 30);
        cost = CostVector.of(beer.cost(beer.scale()));
    }

    static void report() {
        Map<String, Double> nanos = Timer.nanos(RiskBench.class);
        double study = nanos.getOrDefault("study", Double.NaN);
        double whole = nanos.getOrDefault("study_by_hand", Double.NaN);
        RiskBench bench = new RiskBench();
        double perSecond = DRAWS / Timer.processorNanos(bench::study) * 1e9;
        Report report = new Report();
        report.atMost(
                "risk, 100,000 draws of a 30-line beer",
                "loop by hand, drawn and sorted, not ranked",
                Report.time(study) + " : " + Report.time(whole) + " = " + Report.times(study / whole),
                study / whole,
                2,
                " ×");
        report.atLeast(
                "draws a second of processor time, study whole",
                "-",
                String.format(Locale.ROOT, "%,.0f", perSecond),
                perSecond,
                1e6,
                "");
        report.print();
    }

    /**
     * The library's study.
     *
     * @return what came of it
     */
    @Benchmark
    public RiskResult study() {
        return Risk.of(cost, plan);
    }

    /**
     * The same by hand.
     *
     * @return mean and percentiles
     */
    @Benchmark
    public double[] study_by_hand() {
        double[] perPint =
                cost.lines().stream().mapToDouble(CostVector.Line::perPint).toArray();
        int[] kind = cost.lines().stream()
                .mapToInt(line -> line.group() == CostGroup.MASHED_GOODS ? 1 : line.group() == CostGroup.HOPS ? 2 : 0)
                .toArray();
        Well19937c random = new Well19937c(7);
        double[][] scores = new double[3][DRAWS];
        double[] drawn = new double[DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            for (double[] score : scores) {
                score[draw] = random.nextGaussian();
            }
            double mashed = Math.exp(MALT * scores[0][draw])
                    * BASE_EFFICIENCY
                    / (BASE_EFFICIENCY + EFFICIENCY * scores[2][draw]);
            double hops = Math.exp(HOPS * scores[1][draw]);
            double sum = 0;
            for (int i = 0; i < perPint.length; i++) {
                sum += perPint[i] * (kind[i] == 1 ? mashed : kind[i] == 2 ? hops : 1);
            }
            drawn[draw] = sum;
        }
        double[] sorted = drawn.clone();
        Arrays.sort(sorted);
        return new double[] {
            Arrays.stream(drawn).average().orElseThrow(), sorted[DRAWS / 10], sorted[DRAWS / 2], sorted[DRAWS * 9 / 10]
        };
    }
}
