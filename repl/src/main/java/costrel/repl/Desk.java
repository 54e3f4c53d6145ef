package costrel.repl;

import costrel.brewery.Brewery;
import costrel.tables.Loaded;
import costrel.tables.TableProblem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What lies on the desk: the brewery folder that the console was opened on. Its methods are the words that the console
 * knows from the start. What is typed reaches it as plain Java, so it is held for the whole process.
 */
public final class Desk {

    private static volatile @Nullable Path folder;
    private static volatile @Nullable Brewery brewery;
    private static volatile @Nullable LocalDate day;
    private static volatile FolderStamp stamp = FolderStamp.NONE;
    private static volatile @Nullable Larder larder;
    private static volatile double shareDone = Double.NaN;
    private static volatile int width;
    private static volatile int tourStep;

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
        stamp = FolderStamp.NONE;
        tourStep = 0;
    }

    /** The brewery of the folder, read when it is first asked for. */
    static synchronized Brewery brewery() {
        Brewery read = brewery;
        if (read == null) {
            stamp = FolderStamp.of(folder());
            read = Brewery.open(folder());
            brewery = read;
        }
        return read;
    }

    /** Reads the folder again; where it has faults, what was read before stays. Returns what came of it. */
    static synchronized String reload() {
        FolderStamp now = FolderStamp.of(folder());
        Loaded<Brewery> read = Brewery.load(folder());
        stamp = now;
        if (!read.sound()) {
            String faults = read.problems().stream().map(TableProblem::text).collect(Collectors.joining("\n"));
            throw new IllegalArgumentException((brewery == null
                            ? ""
                            : "what was read before stays, for the new has "
                                    + (read.problems().size() == 1
                                            ? "a fault"
                                            : read.problems().size() + " faults") + ":\n")
                    + faults);
        }
        brewery = read.orThrow();
        return read.orThrow().name() + " read again: "
                + read.orThrow().recipes().size() + " beers, "
                + read.orThrow().plants().size() + " plants, "
                + read.orThrow().catalogue().hopLots().size() + " hop lots";
    }

    /** The names that the brewery knows on the day. */
    static Larder larder() {
        Brewery read = brewery();
        LocalDate on = day();
        Larder known = larder;
        if (known == null || !known.isOf(read, on)) {
            known = new Larder(read, on);
            larder = known;
        }
        return known;
    }

    /** The same, if the folder has been read; empty if it would have to be read first. */
    static Optional<Larder> larderAtHand() {
        return brewery == null ? Optional.empty() : Optional.of(larder());
    }

    /** Names of files that have changed since the folder was read, or since this was last asked. */
    static synchronized List<String> changedFiles() {
        if (brewery == null) {
            return List.of();
        }
        FolderStamp now = FolderStamp.of(folder());
        List<String> changed = now.differsFrom(stamp);
        stamp = now;
        return changed;
    }

    /** Which part of a long piece of work is done; not a number where that can't be told. */
    static double shareDone() {
        return shareDone;
    }

    /** Says which part of a long piece of work is done. */
    static void shareDone(double share) {
        shareDone = share;
    }

    /** Columns of the screen; 0 where there is none. */
    static int width() {
        return width;
    }

    /** Says how wide the screen is. */
    static void width(int columns) {
        width = columns;
    }

    /** The next step of the tour, from 1, and after the last the first again. */
    static synchronized int nextTourStep(int steps) {
        return tourStep(tourStep % steps + 1);
    }

    /** Goes to a step of the tour. */
    static synchronized int tourStep(int step) {
        tourStep = step;
        return step;
    }

    /** The day, if one was set. */
    static Optional<LocalDate> daySet() {
        return Optional.ofNullable(day);
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
