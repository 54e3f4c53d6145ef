package costrel.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.HashMap;
import java.util.Map;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Times benchmarks. The figure is the fastest of several short iterations, ours and the peer's alike: other work on the machine can
 * only make one slower.
 */
final class Timer {
    private static final int FORKS = Integer.getInteger("bench.forks", 2);
    private static final int ITERATIONS = Integer.getInteger("bench.iterations", 6);
    private static final int MILLIS = Integer.getInteger("bench.millis", 300);

    private static final long WARM_NANOS = 8_000_000_000L;
    private static final long MEASURED_NANOS = 2_000_000_000L;
    private static final long RUN_NANOS = 20_000_000L;

    private Timer() {}

    /** A job that may fail as it likes. */
    @FunctionalInterface
    interface Job<T> {
        T run() throws Exception;
    }

    /** What a job gave and how long it took at its fastest. */
    record Timed<T>(T result, double nanos) {}

    /** Nanoseconds of each benchmark of a class, by method name, or by name and parameter where it has one. */
    static Map<String, Double> nanos(Class<?> benchmarks) {
        Map<String, Double> nanos = new HashMap<>();
        try {
            for (RunResult result : new Runner(new OptionsBuilder()
                            .include("^" + benchmarks.getName().replace(".", "\\.") + "\\.")
                            .forks(FORKS)
                            .jvmArgsAppend("-Xms256m", "-Xmx256m", "-XX:+UseSerialGC")
                            .warmupIterations(6)
                            .warmupTime(TimeValue.milliseconds(3L * MILLIS))
                            .measurementIterations(ITERATIONS)
                            .measurementTime(TimeValue.milliseconds(MILLIS))
                            .verbosity(VerboseMode.SILENT)
                            .shouldFailOnError(true)
                            .build())
                    .run()) {
                String parameters = String.join(
                        ",",
                        result.getParams().getParamsKeys().stream()
                                .map(key -> result.getParams().getParam(key))
                                .toList());
                String label = result.getPrimaryResult().getLabel();
                nanos.put(
                        parameters.isEmpty() ? label : label + " " + parameters,
                        result.getAggregatedResult()
                                .getPrimaryResult()
                                .getStatistics()
                                .getMin());
            }
        } catch (RunnerException e) {
            throw new IllegalStateException(e);
        }
        return nanos;
    }

    /**
     * Nanoseconds of processor time that a job takes when warm, the least of many short runs. On a machine that others use too it says
     * what the job itself needs; time that goes by on the clock says how many others wait.
     */
    static double processorNanos(Job<?> job) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long warmUntil = threads.getCurrentThreadCpuTime() + WARM_NANOS;
        double least = Double.MAX_VALUE;
        long doneAt = warmUntil + MEASURED_NANOS;
        for (long now = 0; now < doneAt; now = threads.getCurrentThreadCpuTime()) {
            long start = threads.getCurrentThreadCpuTime();
            long runs = 0;
            long spent = 0;
            while (spent < RUN_NANOS) {
                once(job);
                runs++;
                spent = threads.getCurrentThreadCpuTime() - start;
            }
            least = start < warmUntil ? least : Math.min(least, (double) spent / runs);
        }
        return least;
    }

    /** Runs a job some times and keeps the fastest. */
    static <T> Timed<T> fastest(int times, Job<T> job) {
        Timed<T> best = once(job);
        for (int i = 1; i < times; i++) {
            Timed<T> next = once(job);
            best = next.nanos() < best.nanos() ? next : best;
        }
        return best;
    }

    private static <T> Timed<T> once(Job<T> job) {
        long start = System.nanoTime();
        try {
            T result = job.run();
            return new Timed<>(result, System.nanoTime() - start);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}
