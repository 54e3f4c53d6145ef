package costrel.repl;

import org.jspecify.annotations.Nullable;

/** Hands a value from the console over to the engine, whose way in is text. */
public final class Kept {

    private static @Nullable Object value;

    private Kept() {}

    static synchronized void put(@Nullable Object kept) {
        value = kept;
    }

    /**
     * Takes the value out.
     *
     * @return what was put in
     */
    public static synchronized @Nullable Object take() {
        Object kept = value;
        value = null;
        return kept;
    }
}
