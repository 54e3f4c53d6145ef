package costrel.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.apache.commons.csv.CSVRecord;

/** A row while it is read: cells by column name. A cell that is wrong becomes a problem of the table and gives nothing. */
final class CsvRow {

    private static final char LAST_CONTROL = 0x1F;

    /** Up to this one the characters after the controls are plain. */
    private static final char LAST_PLAIN = 0x7E;

    private final CsvTable table;
    private final CSVRecord record;
    private final Seen seen;
    private final long line;
    private boolean sound = true;

    /** What one look at every character of a row tells. */
    private record Seen(long lineBreaks, boolean blank, boolean damaged, boolean controls) {
        static Seen in(CSVRecord record) {
            long breaks = 0;
            boolean blank = true;
            boolean damaged = false;
            boolean controls = false;
            for (int i = 0; i < record.size(); i++) {
                String cell = record.get(i);
                for (int k = 0; k < cell.length(); k++) {
                    char c = cell.charAt(k);
                    if (c > LAST_CONTROL && c <= LAST_PLAIN) {
                        blank &= c == ' ';
                        continue;
                    }
                    blank &= CsvRow.blank(c);
                    damaged |= c == GuardedText.REPLACEMENT;
                    controls |= isControl(c);
                    if (c == '\r' || (c == '\n' && (k == 0 || cell.charAt(k - 1) != '\r'))) {
                        breaks++;
                    }
                }
            }
            return new Seen(breaks, blank, damaged, controls);
        }
    }

    private CsvRow(CsvTable table, CSVRecord record, Seen seen, long lastLine) {
        this.table = table;
        this.record = record;
        this.seen = seen;
        this.line = lastLine - seen.lineBreaks();
    }

    /** A row of which the parser knows only where it ends. */
    static CsvRow ending(CsvTable table, CSVRecord record, long lastLine) {
        return new CsvRow(table, record, Seen.in(record), lastLine);
    }

    /** Line on which the row starts. */
    long line() {
        return line;
    }

    /** The file that the row stands in. */
    String file() {
        return table.problems().file();
    }

    /** Whether nothing was wrong with the row so far. */
    boolean sound() {
        return sound;
    }

    /**
     * A cell that must be filled.
     *
     * @return the value; empty where it was wrong, which is then a problem already
     */
    <T> Optional<T> need(String column, CellKind<T> kind) {
        String cell = cell(column);
        if (table.missing(column)) {
            sound = false;
            return Optional.empty();
        }
        if (cell.isEmpty()) {
            boolean shortRow = table.position(column) >= record.size();
            problem(column, shortRow ? "a row that ends after " + cells(record.size()) : "nothing", kind.expected());
            return Optional.empty();
        }
        return parse(column, cell, kind);
    }

    /**
     * A cell that may be blank.
     *
     * @return the value; empty where it was blank, or wrong, which is then a problem already
     */
    <T> Optional<T> may(String column, CellKind<T> kind) {
        String cell = cell(column);
        return cell.isEmpty() ? Optional.empty() : parse(column, cell, kind);
    }

    /** A figure that must be there. */
    OptionalDouble needFigure(String column, CellKind<Double> kind) {
        return figure(need(column, kind));
    }

    /** A figure that may be blank. */
    OptionalDouble mayFigure(String column, CellKind<Double> kind) {
        return figure(may(column, kind));
    }

    /** The text of a cell, stripped; empty where blank or where the file has no such column. */
    String cell(String column) {
        int position = table.position(column);
        return position < 0 ? "" : at(position);
    }

    /** The text of a cell as it was before it was guarded against formulas. */
    String name(String column) {
        String cell = cell(column);
        return CsvOut.isGuarded(cell) ? cell.substring(1) : cell;
    }

    /**
     * Makes a thing of the row, unless something was wrong already. What its record refuses is a problem of this row.
     *
     * @param column the column that a refusal speaks of, unless it names another
     */
    <T> Optional<T> build(String column, Supplier<T> thing) {
        if (!sound) {
            return Optional.empty();
        }
        try {
            return Optional.of(thing.get());
        } catch (IllegalArgumentException e) {
            problem(column, e);
            return Optional.empty();
        }
    }

    void problem(String column, String found, String expected) {
        sound = false;
        table.problems().add(line, column, found, expected);
    }

    void problem(String column, IllegalArgumentException refusal) {
        sound = false;
        String message = String.valueOf(refusal.getMessage());
        int colon = message.indexOf(':');
        String named =
                colon > 0 && table.position(message.substring(0, colon)) >= 0 ? message.substring(0, colon) : column;
        table.problems().add(TableProblem.from(file(), line, named, message));
    }

    /**
     * Refuses a second row of the same key.
     *
     * @param seen line on which each key was first met
     * @param column the column that holds the key
     * @param key the key as it is compared
     */
    void once(Map<String, Long> seen, String column, String key) {
        Long first = seen.putIfAbsent(key, line);
        if (first != null) {
            problem(column, TableProblem.quoted(cell(column)) + " again, after line " + first, "one row for each");
        }
    }

    boolean isBlank() {
        return seen.blank();
    }

    /** A spreadsheet may quote a comment; it is one all the same. */
    boolean isComment() {
        return record.size() > 0 && stripped(record.get(0)).startsWith("#");
    }

    boolean showsDamage() {
        return seen.damaged();
    }

    List<String> cellsUpToLastFilled() {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < filled(); i++) {
            cells.add(at(i));
        }
        return cells;
    }

    /**
     * Refuses a row with something beyond the last column, and text that is none. A row may end early, since spreadsheets
     * leave out blank cells at the end; a cell that must be there is then missed where it is asked for.
     */
    void checkShape() {
        int width = table.width();
        int filled = filled();
        if (filled > width) {
            problem("", cells(filled), cells(width) + ", as many as there are columns; a comma in a cell needs quotes");
        }
        if (!seen.damaged() && !seen.controls() && !table.hasEmptyHeading()) {
            return;
        }
        for (int i = 0; i < filled; i++) {
            String cell = record.get(i);
            if (cell.indexOf(GuardedText.REPLACEMENT) >= 0) {
                problem(table.heading(i), TableProblem.quoted(cell), "text saved as UTF-8");
            } else if (hasControlCharacter(cell)) {
                problem(table.heading(i), TableProblem.quoted(cell), "text without control characters");
            } else if (i < width && table.heading(i).isEmpty() && !at(i).isEmpty()) {
                problem("", TableProblem.quoted(cell), "nothing below an empty heading");
            }
        }
    }

    private <T> Optional<T> parse(String column, String cell, CellKind<T> kind) {
        if (seen.damaged() && cell.indexOf(GuardedText.REPLACEMENT) >= 0) {
            return Optional.empty();
        }
        try {
            return Optional.of(table.parsed(column, kind, cell));
        } catch (IllegalArgumentException e) {
            sound = false;
            table.problems().add(kind.refusal(file(), line, column, cell, e));
            return Optional.empty();
        }
    }

    private static String cells(int count) {
        return count == 1 ? "1 cell" : count + " cells";
    }

    private int filled() {
        int filled = record.size();
        while (filled > 0 && stripped(record.get(filled - 1)).isEmpty()) {
            filled--;
        }
        return filled;
    }

    private String at(int position) {
        return position < record.size() ? stripped(record.get(position)) : "";
    }

    private static OptionalDouble figure(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    /** Blanks at the ends go, those that no keyboard shows too. */
    private static String stripped(String cell) {
        int start = 0;
        int end = cell.length();
        while (start < end && blank(cell.charAt(start))) {
            start++;
        }
        while (end > start && blank(cell.charAt(end - 1))) {
            end--;
        }
        return cell.substring(start, end);
    }

    private static boolean blank(char c) {
        return Character.isWhitespace(c) || c == '\u00a0' || c == '\u202f' || c == '\ufeff';
    }

    private static boolean hasControlCharacter(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            if (isControl(cell.charAt(i))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isControl(char c) {
        return Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r';
    }
}
