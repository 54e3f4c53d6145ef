package costrel.repl;

import costrel.brewery.Brewery;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;

/**
 * What lies on the desk: the brewery folder that the console was opened on. Its methods are the words that the console
 * knows from the start. What is typed reaches it as plain Java, so it is held for the whole process.
 */
public final class Desk {

    private static volatile @Nullable Path folder;
    private static volatile @Nullable Brewery brewery;
    private static volatile @Nullable LocalDate day;

    private Desk() {}

    /**
     * Opens a brewery folder in place of the one before.
     *
     * @param opened the folder
     */
    static void open(Path opened) {
        folder = opened;
        brewery = null;
        day = null;
    }

    /** The brewery of the folder, read when it is first asked for. */
    static synchronized Brewery brewery() {
        Brewery read = brewery;
        if (read == null) {
            read = Brewery.open(folder());
            brewery = read;
        }
        return read;
    }

    /** The day that is brewed and priced for: today, unless another was set. */
    static LocalDate day() {
        LocalDate set = day;
        return set == null ? LocalDate.now(ZoneId.systemDefault()) : set;
    }

    /** Sets the day that is brewed and priced for. */
    static LocalDate day(String text) {
        try {
            LocalDate set = LocalDate.parse(text.strip());
            day = set;
            return set;
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    "day: expected a date, year first, such as 2026-11-25, found '" + text + "'", e);
        }
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
