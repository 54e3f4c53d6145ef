package costrel.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A table while it is being filled, row by row, with figures as they are printed. */
public final class TextTable {

    private final String key;
    private final String caption;
    private final List<Column> columns;
    private final List<Table.Row> rows = new ArrayList<>();

    private TextTable(String key, String caption, List<Column> columns) {
        this.key = key;
        this.caption = caption;
        this.columns = columns;
    }

    /**
     * A table with the given columns. A header that starts with '#' is a column of figures; the mark isn't printed. The
     * keys for programs are made of the headers.
     *
     * @param headers one for each column, with the unit where it has one
     * @return an empty table
     */
    public static TextTable of(String... headers) {
        List<Column> columns = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (String header : headers) {
            boolean figures = header.startsWith("#");
            String heading = figures ? header.substring(1) : header;
            String name = Column.keyOf(heading);
            String own = name;
            for (int i = 2; !keys.add(own); i++) {
                own = name + i;
            }
            columns.add(new Column(own, heading, "", figures));
        }
        String first = columns.isEmpty() ? "" : columns.get(0).heading();
        return new TextTable(Column.keyOf(first), first, columns);
    }

    /**
     * A table with the given columns.
     *
     * @param key its name for programs
     * @param caption its name for people, where it stands alone
     * @param columns its columns
     * @return an empty table
     */
    public static TextTable keyed(String key, String caption, Column... columns) {
        return new TextTable(key, caption, List.of(columns));
    }

    /**
     * Adds a row.
     *
     * @param cells one for each column, figures as they are printed; missing ones at the end are blank
     * @return this table
     */
    public TextTable row(String... cells) {
        rows.add(new Table.Row(padded(cells), false));
        return this;
    }

    /**
     * Adds a row under a rule, for a total.
     *
     * @param cells one for each column, figures as they are printed; missing ones at the end are blank
     * @return this table
     */
    public TextTable total(String... cells) {
        rows.add(new Table.Row(padded(cells), true));
        return this;
    }

    private List<Cell> padded(String... cells) {
        if (cells.length > columns.size()) {
            throw new IllegalArgumentException(
                    "table row: expected at most " + columns.size() + " cells, found " + cells.length);
        }
        List<Cell> all = new ArrayList<>();
        for (int c = 0; c < columns.size(); c++) {
            String cell = c < cells.length ? cells[c] : "";
            all.add(columns.get(c).figures() ? Cell.figure(cell) : Cell.words(cell));
        }
        return all;
    }

    /**
     * The table as it is now.
     *
     * @return the table
     */
    public Table table() {
        return new Table(key, caption, columns, rows);
    }

    /**
     * The table as a sheet of its own.
     *
     * @return a sheet of the kind "table"
     */
    public Sheet sheet() {
        return Sheet.of("table", "", table());
    }

    /**
     * The table as lines of text, each ending with a line feed, without blanks at the ends of lines.
     *
     * @param indent blanks before every line
     * @return the text
     */
    public String text(int indent) {
        return TextForm.table(table(), indent, Integer.MAX_VALUE);
    }

    /**
     * The table as lines of text that fit a width: one that is wider is cut between its columns into parts that stand under
     * each other, each with the first column before it.
     *
     * @param indent blanks before every line
     * @param width characters in a line
     * @return the text
     */
    public String text(int indent, int width) {
        return TextForm.table(table(), indent, width);
    }

    @Override
    public String toString() {
        return text(0);
    }
}
