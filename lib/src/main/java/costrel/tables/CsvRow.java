package costrel.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A row while it is read: cells by column name. A cell that is wrong becomes a problem of the table and gives nothing. */
final class CsvRow {

    private final CsvTable table;
    private final Cell[] cells;
    private final long line;
    private final boolean damaged;
    private final boolean controls;
    private final int filled;
    private boolean sound = true;

    /**
     * A row of which its reader knows only where it ends.
     *
     * @param cells its cells, which are its own from now on
     */
    CsvRow(CsvTable table, Cell[] cells, long lastLine) {
        long lineBreaks = 0;
        boolean anyDamage = false;
        boolean anyControl = false;
        int upTo = 0;
        for (int i = 0; i < cells.length; i++) {
            Cell cell = cells[i];
            lineBreaks += cell.lineBreaks();
            anyDamage |= cell.isDamaged();
            anyControl |= cell.hasControlCharacter();
            upTo = cell.isBlank() ? upTo : i + 1;
        }
        this.table = table;
        this.cells = cells;
        this.line = lastLine - lineBreaks;
        this.damaged = anyDamage;
        this.controls = anyControl;
        this.filled = upTo;
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

    /** A column of the row's table. */
    <T> CsvColumn<T> column(String name, CellKind<T> kind) {
        return table.column(name, kind);
    }

    /**
     * A cell that must be filled.
     *
     * @return the value; empty where it was wrong, which is then a problem already
     */
    <T> Optional<T> need(CsvColumn<T> column) {
        if (column.missing()) {
            sound = false;
            return Optional.empty();
        }
        Cell cell = at(column.position());
        if (cell == null || cell.isBlank()) {
            boolean shortRow = column.position() >= cells.length;
            problem(
                    column.name(),
                    shortRow ? "a row that ends after " + cells(cells.length) : "nothing",
                    column.kind().expected());
            return Optional.empty();
        }
        return parse(column, cell);
    }

    <T> Optional<T> need(String column, CellKind<T> kind) {
        return need(table.column(column, kind));
    }

    /**
     * A cell that may be blank.
     *
     * @return the value; empty where it was blank, or wrong, which is then a problem already
     */
    <T> Optional<T> may(CsvColumn<T> column) {
        Cell cell = at(column.position());
        return cell == null || cell.isBlank() ? Optional.empty() : parse(column, cell);
    }

    <T> Optional<T> may(String column, CellKind<T> kind) {
        return may(table.column(column, kind));
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
        return text(table.position(column));
    }

    /** The same of a column that was looked up before. */
    String cell(CsvColumn<?> column) {
        return text(column.position());
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
        return filled == 0;
    }

    /** A spreadsheet may quote a comment; it is one all the same. */
    boolean isComment() {
        return text(0).startsWith("#");
    }

    boolean showsDamage() {
        return damaged;
    }

    List<String> cellsUpToLastFilled() {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < filled; i++) {
            texts.add(text(i));
        }
        return texts;
    }

    /**
     * Refuses a row with something beyond the last column, and text that is none. A row may end early, since spreadsheets
     * leave out blank cells at the end; a cell that must be there is then missed where it is asked for.
     */
    void checkShape() {
        int width = table.width();
        if (filled > width) {
            problem("", cells(filled), cells(width) + ", as many as there are columns; a comma in a cell needs quotes");
        }
        if (!damaged && !controls && !table.hasEmptyHeading()) {
            return;
        }
        for (int i = 0; i < filled; i++) {
            Cell cell = cells[i];
            if (cell.isDamaged()) {
                problem(table.heading(i), TableProblem.quoted(cell.raw()), "text saved as UTF-8");
            } else if (cell.hasControlCharacter()) {
                problem(table.heading(i), TableProblem.quoted(cell.raw()), "text without control characters");
            } else if (i < width && table.heading(i).isEmpty() && !cell.isBlank()) {
                problem("", TableProblem.quoted(cell.raw()), "nothing below an empty heading");
            }
        }
    }

    private <T> Optional<T> parse(CsvColumn<T> column, Cell cell) {
        if (cell.isDamaged()) {
            return Optional.empty();
        }
        try {
            return cell.read(column.kind());
        } catch (IllegalArgumentException e) {
            sound = false;
            table.problems().add(column.kind().refusal(file(), line, column.name(), cell.text(), e));
            return Optional.empty();
        }
    }

    private static String cells(int count) {
        return count == 1 ? "1 cell" : count + " cells";
    }

    /** The cell at a place; none before the first and after the last. */
    private @Nullable Cell at(int position) {
        return position >= 0 && position < cells.length ? cells[position] : null;
    }

    private String text(int position) {
        Cell cell = at(position);
        return cell == null ? "" : cell.text();
    }

    private static OptionalDouble figure(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
