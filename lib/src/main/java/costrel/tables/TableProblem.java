package costrel.tables;

/**
 * One thing that is wrong with a table: where it stands, what was found there and what was expected.
 *
 * @param file the file as its reader names it, such as "prices-2026.csv"
 * @param line line on which the row starts, counted from 1; 0 where the file as a whole is meant
 * @param column heading of the column; empty where the whole row or file is meant
 * @param found what stands there, in words or quoted as it was written
 * @param expected what would be right, with an example
 */
public record TableProblem(String file, long line, String column, String found, String expected) {

    private static final String EXPECTED = "expected ";
    private static final String FOUND = ", found ";

    /** Longer cells are cut in a message: a cell may be as long as a file. */
    private static final int LONGEST_SHOWN = 60;

    /**
     * A problem told by a message of the form "what: expected this, found that".
     *
     * @param file the file
     * @param line line on which the row starts
     * @param column heading of the column
     * @param message the message; one of another form is kept whole
     * @return the problem
     */
    static TableProblem from(String file, long line, String column, String message) {
        int expected = message.indexOf(EXPECTED);
        int found = message.indexOf(FOUND, Math.max(expected, 0));
        if (expected < 0 || found < 0) {
            return new TableProblem(file, line, column, "", message);
        }
        return new TableProblem(
                file,
                line,
                column,
                message.substring(found + FOUND.length()),
                message.substring(expected + EXPECTED.length(), found));
    }

    /**
     * The problem in one line.
     *
     * @return such as {@code prices-2026.csv:7: price: expected an amount such as £12.50, found '12,50'}
     */
    public String text() {
        return file
                + (line > 0 ? ":" + line : "")
                + (column.isEmpty() ? "" : ": " + column)
                + ": "
                + (found.isEmpty() ? expected : "expected " + expected + ", found " + found);
    }

    /**
     * A cell as a message shows it: quoted, cut where it is long, control characters written out.
     *
     * @param cell the text of the cell
     * @return such as {@code '12,50'}, or {@code nothing} for a blank
     */
    static String quoted(String cell) {
        if (cell.isBlank()) {
            return "nothing";
        }
        int end = Math.min(cell.length(), LONGEST_SHOWN);
        return "'" + writtenOut(cell.substring(0, end)) + (end < cell.length() ? "..." : "") + "'";
    }

    /** A text with what a terminal would obey instead of showing written out in letters. */
    private static String writtenOut(String text) {
        StringBuilder shown = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                shown.append("\\n");
            } else if (c == '\r') {
                shown.append("\\r");
            } else if (c == '\t') {
                shown.append("\\t");
            } else if (Character.isISOControl(c)) {
                shown.append("\\x").append(Character.forDigit(c >> 4, 16)).append(Character.forDigit(c & 15, 16));
            } else if (Character.getType(c) == Character.FORMAT) {
                shown.append("\\u{").append(Integer.toHexString(c)).append('}');
            } else {
                shown.append(c);
            }
        }
        return shown.toString();
    }

    public TableProblem {
        file = writtenOut(file);
    }
}
