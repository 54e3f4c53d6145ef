package costrel.repl;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.function.Supplier;

/**
 * What anything typed must come to: an answer or a fault in words, within a second. The second is one of the processor's time in the
 * calling thread, so that a busy machine makes no difference.
 */
final class Answered {

    private static final long LONGEST_NANOS = 1_000_000_000;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private Answered() {}

    /**
     * Works on an input; whatever is thrown, and more than a second, is a failure.
     *
     * @param work the work
     * @param input tells the input, for the failure's text
     */
    static void within(Runnable work, Supplier<String> input) {
        long began = THREADS.getCurrentThreadCpuTime();
        try {
            work.run();
        } catch (RuntimeException | Error e) {
            throw new AssertionError("from " + input.get(), e);
        }
        long took = THREADS.getCurrentThreadCpuTime() - began;
        if (took > LONGEST_NANOS) {
            throw new AssertionError(took / 1_000_000 + " ms of the processor's time for " + input.get());
        }
    }
}
