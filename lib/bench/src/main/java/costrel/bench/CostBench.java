package costrel.bench;

import costrel.buying.UnitPrice;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.cost.GoodsAtPrices;
import costrel.scaling.Gyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A beer of 30 lines scaled to a plant and costed, ledgers and lines kept. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class CostBench {
    private static final int LINES = 30;
    private static final int KERNEL_LINES = 12;

    private final Beer beer = new Beer(1, LINES);
    private final Gyle gyle = beer.scale();
    private final CostSheet sheet = beer.cost(gyle);

    /** What one writes who needs no more than this sum. */
    private record Line(String item, double kg, double poundsPerKg) {}

    private final double[] kg = new double[KERNEL_LINES];
    private final Line[] lines = new Line[KERNEL_LINES];
    private final GoodsAtPrices goods;

    /** Twelve lines of the sheet, as the kernel and as one would write them by hand. */
    public CostBench() {
        List<UnitPrice> prices = new ArrayList<>();
        for (int i = 0; i < KERNEL_LINES; i++) {
            CostLine line = sheet.gyleLines().get(i);
            UnitPrice price = line.unitPrice().orElseThrow();
            prices.add(price);
            kg[i] = line.amount().doubleValue();
            lines[i] = new Line(line.item(), kg[i], price.value().doubleValue());
        }
        goods = GoodsAtPrices.of(prices, sheet.total().getCurrencyUnit());
    }

    static void report() {
        Map<String, Double> nanos = Timer.nanos(CostBench.class);
        Report report = new Report();
        double kernel = nanos.getOrDefault("kernel", Double.NaN);
        double byHand = nanos.getOrDefault("kernel_by_hand", Double.NaN);
        report.atMost(
                "inner kernel: cost of a 12-line recipe",
                "records and doubles by hand",
                Report.time(kernel) + " : " + Report.time(byHand) + " = " + Report.times(kernel / byHand),
                kernel / byHand,
                2,
                " ×");
        double clock = nanos.getOrDefault("scaled_and_costed", Double.NaN);
        CostBench bench = new CostBench();
        double own = Timer.processorNanos(bench::scaled_and_costed);
        report.atMost("Scaler + Coster, 30 lines, sheet whole", "-", Report.time(clock), clock / 1e3, 20, " µs");
        report.note("the same, processor time", "in the process that ran other jobs before", Report.time(own));
        report.note("of it, Scaler", "-", Report.time(nanos.getOrDefault("scaled", Double.NaN)));
        report.note("of it, Coster", "-", Report.time(nanos.getOrDefault("costed", Double.NaN)));
        report.note("explanations, only when asked for", "-", Report.time(nanos.getOrDefault("explained", Double.NaN)));
        report.print();
    }

    /**
     * The kernel, each line to the penny that exact decimals give.
     *
     * @return pence
     */
    @Benchmark
    public long kernel() {
        return goods.coins(kg);
    }

    /**
     * The same sum by hand; a half penny may go either way.
     *
     * @return pence
     */
    @Benchmark
    public long kernel_by_hand() {
        long sum = 0;
        for (Line line : lines) {
            sum += Math.round(line.kg() * line.poundsPerKg() * 100);
        }
        return sum;
    }

    /**
     * Both jobs.
     *
     * @return the sheet
     */
    @Benchmark
    public CostSheet scaled_and_costed() {
        return beer.cost(beer.scale());
    }

    /**
     * The first job alone.
     *
     * @return the gyle
     */
    @Benchmark
    public Gyle scaled() {
        return beer.scale();
    }

    /**
     * The second job alone.
     *
     * @return the sheet
     */
    @Benchmark
    public CostSheet costed() {
        return beer.cost(gyle);
    }

    /**
     * What the jobs leave until it is asked for.
     *
     * @return the trees
     */
    @Benchmark
    public Object[] explained() {
        return new Object[] {gyle.explanation(), sheet.explanation()};
    }
}
