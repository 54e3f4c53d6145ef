package costrel.tables;

import java.io.IOException;

/** The bytes of a table can't be read on from here. */
final class TextFault extends IOException {

    private static final long serialVersionUID = 1L;

    private final long line;
    private final String expected;
    private final String found;

    TextFault(long line, String expected, String found) {
        super("expected " + expected + ", found " + found);
        this.line = line;
        this.expected = expected;
        this.found = found;
    }

    TableProblem in(String file) {
        return new TableProblem(file, line, "", found, expected);
    }
}
