package costrel.tables;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a CSV text as cells. A line without a quote is its commas and what stands between them, and is cut up here, without
 * an object for each cell; a line with one goes to Commons CSV, together with those that its quotes hold. Both give the same rows.
 */
final class CsvRecords implements AutoCloseable {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setCommentMarker('#')
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .get();

    /** The parser's message writes the number in the digits of the machine's country, in groups as it is usual there. */
    private static final Pattern START_LINE = Pattern.compile("startline ([^)]+)\\)");

    private static final Pattern GROUPING = Pattern.compile("\\P{Nd}+");

    private final CsvLines lines;
    private final Fed fed = new Fed();
    private final CSVParser parser;
    private final Iterator<CSVRecord> records;
    private final Cell empty = new Cell("");

    private ColumnCells[] columns = {};
    private long linesBefore;
    private long lastLine;

    CsvRecords(GuardedText text) throws IOException {
        this.lines = new CsvLines(text);
        this.parser = CSVParser.builder().setReader(fed).setFormat(FORMAT).get();
        this.records = parser.iterator();
    }

    /** From here on the cells of so many columns are kept, to be found again. */
    void keepCells(int width) {
        columns = new ColumnCells[width];
        for (int i = 0; i < width; i++) {
            columns[i] = new ColumnCells();
        }
    }

    /** The cells of the next row; none at the end. Empty lines and comments are passed over. */
    Cell @Nullable [] next() throws IOException {
        while (!fed.readsAhead && lines.next()) {
            if (lines.isQuoted()) {
                fed.give();
                return parsed();
            }
            if (lines.length() > 0 && lines.chars()[lines.start()] != '#') {
                lastLine = lines.number();
                return cut();
            }
        }
        return fed.readsAhead ? parsed() : null;
    }

    /** The line on which the row ends that was read last. */
    long lastLine() {
        return lastLine;
    }

    /** The line that a fault speaks of: of the parser that of its message or the one it has come to, else the one being read. */
    long lineOf(IOException fault) {
        if (!(fault instanceof CSVException)) {
            return lines.numberUnderWay();
        }
        Matcher start = START_LINE.matcher(String.valueOf(fault.getMessage()));
        return linesBefore
                + (start.find()
                        ? Long.parseLong(GROUPING.matcher(start.group(1)).replaceAll(""))
                        : parser.getCurrentLineNumber());
    }

    @Override
    public void close() throws IOException {
        parser.close();
    }

    /** The line as cells, without blanks around them, as the parser leaves them out too. */
    private Cell[] cut() {
        char[] line = lines.chars();
        Cell[] cells = new Cell[lines.commaCount() + 1];
        int from = lines.start();
        for (int i = 0; i < cells.length; i++) {
            int comma = lines.start() + (i < lines.commaCount() ? lines.comma(i) : lines.length());
            int to = comma;
            while (from < to && Character.isWhitespace(line[from])) {
                from++;
            }
            while (to > from && Character.isWhitespace(line[to - 1])) {
                to--;
            }
            cells[i] = from == to ? empty : cell(i, line, from, to);
            from = comma + 1;
        }
        return cells;
    }

    private Cell cell(int column, char[] chars, int from, int to) {
        return column < columns.length
                ? columns[column].of(chars, from, to)
                : new Cell(new String(chars, from, to - from));
    }

    /** The row that the parser makes of what it is fed. */
    private Cell @Nullable [] parsed() throws IOException {
        try {
            if (!records.hasNext()) {
                return null;
            }
            CSVRecord row = records.next();
            lastLine = linesBefore + parser.getCurrentLineNumber();
            Cell[] cells = new Cell[row.size()];
            for (int i = 0; i < cells.length; i++) {
                char[] chars = row.get(i).toCharArray();
                cells[i] = cell(i, chars, 0, chars.length);
            }
            return cells;
        } catch (UncheckedIOException e) {
            throw e.getCause() == null ? new IOException(e) : e.getCause();
        }
    }

    /** What the parser reads: a line at a time, and only when it has need of it, so that the lines after its row stay ours. */
    private final class Fed extends Reader {
        private int left;

        /** A carriage return may be half of a line's end, so that the parser looks at the next line too; it then reads all the rest. */
        private boolean readsAhead;

        /** Gives out the line that was read last. */
        void give() {
            linesBefore = lines.number() - 1 - parser.getCurrentLineNumber();
            take();
        }

        private void take() {
            left = lines.lengthWithEnd();
            readsAhead |= lines.endsInReturn();
        }

        @Override
        public int read(char[] target, int offset, int most) throws IOException {
            if (left == 0) {
                if (!lines.next()) {
                    return -1;
                }
                take();
            }
            int count = Math.min(left, most);
            System.arraycopy(lines.chars(), lines.start() + lines.lengthWithEnd() - left, target, offset, count);
            left -= count;
            return count;
        }

        @Override
        public void close() {
            // the bytes are closed by whoever opened them
        }
    }
}
