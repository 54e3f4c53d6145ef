package costrel.bench;

import costrel.measure.Amounts;
import costrel.measure.Units;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import tech.units.indriya.quantity.Quantities;

/** A volume in barrels in at the edge, and a volume in litres out of it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class EdgeBench {
    private Quantity<Volume> barrels = Quantities.getQuantity(20.5, Units.UK_BARREL);
    private double litres = 3354.77;

    static void report() {
        Map<String, Double> nanos = Timer.nanos(EdgeBench.class);
        Report report = new Report();
        pair(report, nanos, "barrels in, as litres", "in", "Indriya: to(LITRE).getValue()");
        pair(report, nanos, "litres out, as pints", "out", "Indriya: to(PINT).getValue()");
        pair(report, nanos, "in and out again", "both", "Indriya: the same two conversions");
        report.print();
    }

    private static void pair(Report report, Map<String, Double> nanos, String what, String name, String against) {
        double ours = nanos.getOrDefault(name, Double.NaN);
        double theirs = nanos.getOrDefault(name + "_by_Indriya", Double.NaN);
        String figure = Report.time(ours) + " : " + Report.time(theirs) + " = " + Report.times(theirs / ours);
        report.atLeast(what, against, figure + " faster", theirs / ours, 30, " × faster");
    }

    /**
     * Ours in.
     *
     * @return litres
     */
    @Benchmark
    public double in() {
        return Amounts.litres(barrels);
    }

    /**
     * Indriya's in.
     *
     * @return litres
     */
    @Benchmark
    public double in_by_Indriya() {
        return barrels.to(Units.LITRE).getValue().doubleValue();
    }

    /**
     * Ours out.
     *
     * @return pints
     */
    @Benchmark
    public double out() {
        return Amounts.value(Amounts.ofLitres(litres), Units.IMPERIAL_PINT);
    }

    /**
     * Indriya's out.
     *
     * @return pints
     */
    @Benchmark
    public double out_by_Indriya() {
        return Quantities.getQuantity(litres, Units.LITRE)
                .to(Units.IMPERIAL_PINT)
                .getValue()
                .doubleValue();
    }

    /**
     * Ours in and out.
     *
     * @return pints
     */
    @Benchmark
    public double both() {
        return Amounts.value(Amounts.ofLitres(Amounts.litres(barrels)), Units.IMPERIAL_PINT);
    }

    /**
     * Indriya's in and out.
     *
     * @return pints
     */
    @Benchmark
    public double both_by_Indriya() {
        double in = barrels.to(Units.LITRE).getValue().doubleValue();
        return Quantities.getQuantity(in, Units.LITRE)
                .to(Units.IMPERIAL_PINT)
                .getValue()
                .doubleValue();
    }
}
