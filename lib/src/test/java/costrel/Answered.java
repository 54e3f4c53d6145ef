package costrel;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.function.Supplier;

/**
 * What any input must come to: a value, or a refusal that says why, within a second. The second is one of the processor's time in
 * the calling thread, so that a busy machine makes no difference.
 */
public final class Answered {

    private static final long LONGEST_NANOS = 1_000_000_000;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private Answered() {}

    /**
     * Works on an input; anything but a value or a refusal is a failure.
     *
     * @param work the work
     * @param input tells the input, for the failure's text
     * @return whether a value came of it
     */
    public static boolean byValueOrRefusal(Runnable work, Supplier<String> input) {
        long began = THREADS.getCurrentThreadCpuTime();
        boolean value = true;
        try {
            work.run();
        } catch (RuntimeException | Error e) {
            if (!isRefusal(e)) {
                throw new AssertionError("from " + input.get(), e);
            }
            value = false;
        }
        long took = THREADS.getCurrentThreadCpuTime() - began;
        if (took > LONGEST_NANOS) {
            throw new AssertionError(took / 1_000_000 + " ms of the processor's time for " + input.get());
        }
        return value;
    }

    /** Our own, with words: a subclass from elsewhere, such as that of a number's parser, slipped through by chance. */
    private static boolean isRefusal(Throwable thrown) {
        boolean ours = thrown.getClass() == IllegalArgumentException.class
                || (thrown instanceof RuntimeException
                        && thrown.getClass().getName().startsWith("costrel."));
        return ours && thrown.getMessage() != null && !thrown.getMessage().isBlank();
    }
}
