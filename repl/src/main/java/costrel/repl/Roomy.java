package costrel.repl;

import java.util.concurrent.atomic.AtomicReference;
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

    private Roomy() {}

    /** Works on an input, or says why it can't be worked on. */
    static @Nullable Fault run(String source, Supplier<@Nullable Fault> work) {
        Fault refusal = refusal(source);
        if (refusal != null) {
            return refusal;
        }
        try {
            return source.length() < SHORT ? work.get() : withRoom(work);
        } catch (StackOverflowError e) {
            return TOO_DEEP;
        }
    }

    /** Whether an input is to be waited for; one that is refused anyhow is not. */
    static boolean unfinished(String source, Supplier<Cut> work) {
        if (source.length() > LONGEST_UNFINISHED || refusal(source) != null) {
            return false;
        }
        return run(source, () -> work.get().unfinished() ? TOO_DEEP : null) != null;
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

    private static @Nullable Fault withRoom(Supplier<@Nullable Fault> work) {
        AtomicReference<@Nullable Fault> found = new AtomicReference<>();
        AtomicReference<@Nullable Throwable> thrown = new AtomicReference<>();
        Thread roomy = new Thread(
                null,
                () -> {
                    try {
                        found.set(work.get());
                    } catch (Throwable e) {
                        thrown.set(e);
                    }
                },
                "roomy",
                ROOM_BYTES);
        roomy.setDaemon(true);
        roomy.start();
        boolean interrupted = false;
        while (roomy.isAlive()) {
            try {
                roomy.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        Throwable failure = thrown.get();
        if (failure instanceof RuntimeException exception) {
            throw exception;
        }
        if (failure instanceof Error error) {
            throw error;
        }
        return found.get();
    }
}
