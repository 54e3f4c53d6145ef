package costrel.repl;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What lies on the desk: the brewery folder that the console was opened on. Its methods are the words that the console
 * knows from the start. What is typed reaches it as plain Java, so it is held for the whole process.
 */
public final class Desk {

    private static volatile @Nullable Path folder;

    private Desk() {}

    /**
     * Opens a brewery folder in place of the one before.
     *
     * @param opened the folder
     */
    static void open(Path opened) {
        folder = opened;
    }

    /**
     * The brewery folder that is open.
     *
     * @return the folder
     * @throws IllegalArgumentException if none is open
     */
    public static Path folder() {
        Path opened = folder;
        if (opened == null) {
            throw new IllegalArgumentException("brewery folder: expected one to be open, found none");
        }
        return opened;
    }
}
