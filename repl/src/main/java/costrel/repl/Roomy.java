package costrel.repl;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Work on an input of any length and depth. The engine's parser calls itself for each bracket and each term, so that a long
 * input needs more room for calls than a thread has by itself; past a bound the input is refused before the engine sees it.
 */
final class Roomy {

    /** Characters of a line. */
    static final int LONGEST_LINE = 10_000;

    /** Characters of an input that is waited for over several lines. */
    static final int LONGEST_UNFINISHED = 50_000;

    static final int DEEPEST = 1_000;

    /** An input as a person types it is worked on where it is. */
    static final int SHORT = 2_000;

    private static final long ROOM_BYTES = 256L << 20;

    private static final Fault TOO_DEEP = new Fault(
            Fault.Kind.INPUT, "expected an input of fewer parts within parts, found one too deep to be read", null);

    /** Java's own parser and compiler fail on a few texts that are no Java at all. */
    private static final Fault NOT_UNDERSTOOD = new Fault(Fault.Kind.INPUT, "this can't be understood", null);

    private Roomy() {}

    /** Works on an input, or says why it can't be worked on. */
    static @Nullable Fault run(String source, Supplier<@Nullable Fault> work) {
        Fault refusal = refusal(source);
        if (refusal != null) {
            return refusal;
        }
        try {
            return withRoom(source, work);
        } catch (StackOverflowError e) {
            return TOO_DEEP;
        } catch (InternalError | AssertionError e) {
            return NOT_UNDERSTOOD;
        }
    }

    /** Whether an input may be waited for over further lines; one that is refused anyhow may not. */
    static boolean mayBeWaitedFor(String source) {
        return source.length() <= LONGEST_UNFINISHED && refusal(source) == null;
    }

    /**
     * Works on an input with room for as many calls as it may need.
     *
     * @throws StackOverflowError where that isn't enough
     */
    static <T extends @Nullable Object> T withRoom(String source, Supplier<T> work) {
        return source.length() < SHORT ? work.get() : withRoom(work);
    }

    private static @Nullable Fault refusal(String source) {
        int depth = 0;
        int lineStart = 0;
        for (int i = 0; i <= source.length(); i++) {
            char c = i == source.length() ? '\n' : source.charAt(i);
            if (c == '\n') {
                if (i - lineStart > LONGEST_LINE) {
                    return refused("expected a line of at most 10,000 characters, found one of " + (i - lineStart));
                }
                lineStart = i + 1;
            } else if (c == '(' || c == '[' || c == '{') {
                depth++;
                if (depth > DEEPEST) {
                    return refused("expected at most 1,000 brackets within one another, found more");
                }
            } else if (c == ')' || c == ']' || c == '}') {
                depth = Math.max(0, depth - 1);
            }
        }
        return null;
    }

    private static Fault refused(String message) {
        return new Fault(Fault.Kind.INPUT, message, null);
    }

    private static <T extends @Nullable Object> T withRoom(Supplier<T> work) {
        FutureTask<T> task = new FutureTask<>(work::get);
        Thread roomy = new Thread(null, task, "roomy", ROOM_BYTES);
        roomy.setDaemon(true);
        roomy.start();
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return task.get();
                } catch (InterruptedException e) {
                    interrupted = true;
                } catch (ExecutionException e) {
                    if (e.getCause() instanceof RuntimeException exception) {
                        throw exception;
                    }
                    if (e.getCause() instanceof Error error) {
                        throw error;
                    }
                    throw new IllegalStateException(e.getCause());
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
