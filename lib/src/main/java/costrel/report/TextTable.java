package costrel.report;

import java.util.ArrayList;
import java.util.List;

/** A table for a plain terminal: words to the left, figures aligned on their decimal point, units in the header, totals ruled off. */
public final class TextTable {

    private static final String GAP = "  ";

    private final List<String> headers;
    private final List<Boolean> figures;
    private final List<Row> rows = new ArrayList<>();

    private record Row(List<String> cells, boolean ruled) {}

    private TextTable(List<String> headers, List<Boolean> figures) {
        this.headers = headers;
        this.figures = figures;
    }

    /**
     * A table with the given columns. A header that starts with '#' is a column of figures; the mark isn't printed.
     *
     * @param headers one for each column, with the unit where it has one
     * @return an empty table
     */
    public static TextTable of(String... headers) {
        List<String> names = new ArrayList<>();
        List<Boolean> figures = new ArrayList<>();
        for (String header : headers) {
            figures.add(header.startsWith("#"));
            names.add(header.startsWith("#") ? header.substring(1) : header);
        }
        return new TextTable(names, figures);
    }

    /**
     * Adds a row.
     *
     * @param cells one for each column; missing ones at the end are blank
     * @return this table
     */
    public TextTable row(String... cells) {
        rows.add(new Row(padded(cells), false));
        return this;
    }

    /**
     * Adds a row under a rule, for a total.
     *
     * @param cells one for each column; missing ones at the end are blank
     * @return this table
     */
    public TextTable total(String... cells) {
        rows.add(new Row(padded(cells), true));
        return this;
    }

    private List<String> padded(String... cells) {
        if (cells.length > headers.size()) {
            throw new IllegalArgumentException(
                    "table row: expected at most " + headers.size() + " cells, found " + cells.length);
        }
        List<String> all = new ArrayList<>(List.of(cells));
        while (all.size() < headers.size()) {
            all.add("");
        }
        return all;
    }

    /**
     * The table as lines of text, each ending with a line feed, without blanks at the ends of lines.
     *
     * @param indent blanks before every line
     * @return the text
     */
    public String text(int indent) {
        int columns = headers.size();
        int[] whole = new int[columns];
        int[] width = new int[columns];
        for (int c = 0; c < columns; c++) {
            int fraction = 0;
            for (Row row : rows) {
                String cell = row.cells().get(c);
                whole[c] = Math.max(whole[c], wholePart(cell));
                fraction = Math.max(fraction, cell.length() - wholePart(cell));
                width[c] = Math.max(width[c], cell.length());
            }
            width[c] = Math.max(headers.get(c).length(), figures.get(c) ? whole[c] + fraction : width[c]);
            whole[c] = width[c] - fraction;
        }
        StringBuilder text = new StringBuilder();
        line(text, indent, headers, width, whole, true);
        for (Row row : rows) {
            if (row.ruled()) {
                List<String> rule = new ArrayList<>();
                for (int c = 0; c < columns; c++) {
                    rule.add(row.cells().get(c).isEmpty() || !figures.get(c) ? "" : "-".repeat(width[c]));
                }
                line(text, indent, rule, width, width, true);
            }
            line(text, indent, row.cells(), width, whole, false);
        }
        return text.toString();
    }

    private void line(StringBuilder text, int indent, List<String> cells, int[] width, int[] whole, boolean plain) {
        StringBuilder line = new StringBuilder(" ".repeat(indent));
        for (int c = 0; c < cells.size(); c++) {
            String cell = cells.get(c);
            int before = 0;
            if (figures.get(c)) {
                before = plain ? width[c] - cell.length() : Math.max(0, whole[c] - wholePart(cell));
            }
            line.append(" ".repeat(before)).append(cell);
            line.append(" ".repeat(Math.max(0, width[c] - before - cell.length())))
                    .append(GAP);
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }

    /** Characters before the decimal point of the figure that starts the cell, or all of it. */
    private static int wholePart(String cell) {
        int point = cell.indexOf('.');
        return point < 0 ? cell.length() : point;
    }

    @Override
    public String toString() {
        return text(0);
    }
}
