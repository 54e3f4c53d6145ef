package costrel.tables;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;

/**
 * CSV text by RFC 4180, written row by row. A text cell that a spreadsheet would run as a formula gets an apostrophe
 * before it, which the readers of this package take off again; a plain number, negative or not, is left alone.
 */
public final class CsvOut {

    /** Characters with which a formula starts, and the one that would make a row a comment. */
    private static final String RUNS = "=+-@\t\r\n#";

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?( ?[\\p{L}%°][\\p{L}%°/ ]*)?");

    private static final int MOST_TRIES = 100;

    private final StringBuilder text = new StringBuilder();

    /** Starts an empty table. */
    public CsvOut() {}

    /**
     * Adds a row. Numbers are written in full without exponent, truth values as yes and no, anything else as its text.
     *
     * @param cells the cells; a blank one is ""
     * @return this
     * @throws IllegalArgumentException if a number isn't finite
     */
    public CsvOut row(Object... cells) {
        try {
            for (int i = 0; i < cells.length; i++) {
                CSVFormat.RFC4180.print(written(cells[i]), text, i == 0);
            }
            CSVFormat.RFC4180.println(text);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The table so far.
     *
     * @return rows that end with a carriage return and a line feed
     */
    public String text() {
        return text.toString();
    }

    /**
     * Writes text to a file as UTF-8, whole or not at all: into a new file beside it, which then takes its place.
     *
     * @param file where to; a file that is there is replaced
     * @param text the text
     * @throws UncheckedIOException if it can't be written; the old file is then still there
     */
    public static void write(Path file, String text) {
        try {
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file)) {
                throw new IOException("expected a file, found " + (Files.isDirectory(file) ? "a folder" : "none"));
            }
            Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
            Path beside = newFileBeside(target, text);
            try {
                move(beside, target);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("could not write " + file + ": " + e.getMessage(), e);
        }
    }

    /** Whether an apostrophe before a cell was set by this class. */
    static boolean isGuarded(String cell) {
        return cell.startsWith("'") && startsFormula(cell);
    }

    static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("number in a table: expected a finite one, found " + value);
        }
        BigDecimal exact = BigDecimal.valueOf(value + 0.0);
        return number(exact);
    }

    static String number(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    private static String written(Object cell) {
        if (cell instanceof Double || cell instanceof Float) {
            return number(((Number) cell).doubleValue());
        }
        if (cell instanceof BigDecimal exact) {
            return exact.toPlainString();
        }
        if (cell instanceof Boolean truth) {
            return truth ? "yes" : "no";
        }
        String text = cell.toString();
        return !(cell instanceof Number)
                        && startsFormula(text)
                        && !NUMBER.matcher(text).matches()
                ? "'" + text
                : text;
    }

    /** Whether text starts with a character of a formula, behind any apostrophes. */
    private static boolean startsFormula(String text) {
        int first = 0;
        while (first < text.length() && text.charAt(first) == '\'') {
            first++;
        }
        return first < text.length() && RUNS.indexOf(text.charAt(first)) >= 0;
    }

    private static Path newFileBeside(Path target, String text) throws IOException {
        Path name = target.getFileName();
        if (name == null) {
            throw new IOException("expected a file, found a folder");
        }
        for (int i = 0; ; i++) {
            Path beside = target.resolveSibling("." + name + "." + i + ".new");
            try {
                Files.write(
                        beside,
                        text.getBytes(StandardCharsets.UTF_8),
                        StandardOpenOption.CREATE_NEW,
                        StandardOpenOption.WRITE);
                return beside;
            } catch (FileAlreadyExistsException e) {
                if (i == MOST_TRIES) {
                    throw e;
                }
            } catch (IOException e) {
                Files.deleteIfExists(beside);
                throw e;
            }
        }
    }

    private static void move(Path from, Path to) throws IOException {
        if (Files.isDirectory(to)) {
            throw new IOException("expected a file, found a folder");
        }
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
