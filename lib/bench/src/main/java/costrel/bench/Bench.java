package costrel.bench;

import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Runs benchmarks by name; all of them where none is named. */
public final class Bench {

    private static final Map<String, Runnable> ALL = new LinkedHashMap<>();

    static {
        ALL.put("cost", CostBench::report);
        ALL.put("edge", EdgeBench::report);
        ALL.put("risk", RiskBench::report);
        ALL.put("prices", PriceListBench::report);
        ALL.put("harvest", HarvestBench::report);
        ALL.put("weeks", WeeksBench::report);
        ALL.put("growth", GrowthBench::report);
    }

    private Bench() {}

    /**
     * Runs benchmarks and prints a table for each.
     *
     * @param args names of benchmarks
     */
    public static void main(String[] args) {
        List<String> names = args.length == 0 ? List.copyOf(ALL.keySet()) : List.of(args);
        for (String name : names) {
            if (!ALL.containsKey(name)) {
                System.err.println(name + ": expected one of " + String.join(", ", ALL.keySet()));
                System.exit(2);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%s, JDK %s, %d cores, load %.1f%n%n",
                LocalDate.now(),
                Runtime.version(),
                Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        for (String name : names) {
            System.out.println(name);
            Runnable bench = ALL.get(name);
            if (bench != null) {
                bench.run();
            }
        }
    }
}
