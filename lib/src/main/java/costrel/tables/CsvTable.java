package costrel.tables;

import costrel.recipe.Names;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One pass over a CSV file, row by row, which gathers everything that is wrong on the way. Nothing is thrown for a
 * fault of the file: it becomes a problem, and {@link #loaded} refuses the value.
 */
final class CsvTable implements Iterable<CsvRow>, AutoCloseable {

    /** No table of ours has more than a few dozen. */
    private static final int MOST_COLUMNS = 1000;

    private final ProblemList problems;
    private final Columns columns;
    private final List<String> assumed = new ArrayList<>();
    private final Map<String, Integer> positions = new HashMap<>();

    private @Nullable GuardedText text;
    private @Nullable CsvRecords records;
    private boolean ended;
    private List<String> headings = List.of();
    private boolean emptyHeading;
    private long headerLine;

    private CsvTable(String file, Columns columns) {
        this.problems = new ProblemList(file);
        this.columns = columns;
    }

    /**
     * Opens a table and checks its column names.
     *
     * @param source the bytes
     * @param columns what the table has
     * @return the table, at its first row; without rows where the file can't be read
     */
    static CsvTable open(CsvSource source, Columns columns) {
        CsvTable table = new CsvTable(source.name(), columns);
        try {
            GuardedText text = new GuardedText(source.open());
            table.text = text;
            table.records = new CsvRecords(text);
            table.readHeader();
        } catch (IOException e) {
            table.stop(e);
        }
        return table;
    }

    ProblemList problems() {
        return problems;
    }

    /** Names a default that took the place of a blank. */
    void assume(long line, String sentence) {
        assumed.add(problems.file() + (line > 0 ? ":" + line : "") + ": " + sentence);
    }

    /** The line of the column names. */
    long headerLine() {
        return headerLine;
    }

    /**
     * The outcome: the value where nothing was wrong, else the problems.
     *
     * @param value makes the value of a sound file; what it throws about its input is one more problem
     */
    <T> Loaded<T> loaded(Supplier<T> value) {
        if (problems.isEmpty()) {
            try {
                return Loaded.of(value.get(), assumed);
            } catch (IllegalArgumentException e) {
                problems.add(TableProblem.from(problems.file(), 0, "", String.valueOf(e.getMessage())));
            }
        }
        return Loaded.refused(problems.all());
    }

    /** Whether column names were found, so that rows could be read. */
    boolean readable() {
        return !positions.isEmpty();
    }

    /** The outcome of a table that has too little in it; what is wrong otherwise stands alone. */
    <T> Loaded<T> refused(String found, String expected) {
        if (problems.isEmpty()) {
            problems.add(0, "", found, expected);
        }
        return Loaded.refused(problems.all());
    }

    @Override
    public Iterator<CsvRow> iterator() {
        return new Iterator<>() {
            private @Nullable CsvRow next;
            private boolean asked;

            @Override
            public boolean hasNext() {
                if (!asked) {
                    next = advance();
                    asked = true;
                }
                return next != null;
            }

            @Override
            public CsvRow next() {
                CsvRow row = hasNext() ? next : null;
                if (row == null) {
                    throw new NoSuchElementException("the table has no more rows");
                }
                asked = false;
                return row;
            }
        };
    }

    @Override
    public void close() {
        try {
            if (records != null) {
                records.close();
            }
            if (text != null) {
                text.close();
            }
        } catch (IOException e) {
            stop(e);
        }
    }

    /** Where a column stands in a row, or -1 where the file has none of that name. */
    int position(String column) {
        return positions.getOrDefault(column, -1);
    }

    /** A column by its place, for readers of many rows. */
    <T> CsvColumn<T> column(String name, CellKind<T> kind) {
        int position = position(name);
        return new CsvColumn<>(
                name, kind, position, position < 0 && columns.required().contains(name));
    }

    /** Whether a column has no heading, so that nothing may stand in it. */
    boolean hasEmptyHeading() {
        return emptyHeading;
    }

    /** How many columns there are, up to the last with a heading. */
    int width() {
        return headings.size();
    }

    /** The heading of a column as the file has it; empty beyond the last. */
    String heading(int position) {
        return position < headings.size() ? headings.get(position) : "";
    }

    /** The next row with something in it, checked for width and damaged text. */
    private @Nullable CsvRow advance() {
        for (CsvRow row = nextRecord(); row != null; row = nextRecord()) {
            if (row.isBlank() || row.isComment()) {
                continue;
            }
            row.checkShape();
            return row;
        }
        return null;
    }

    private @Nullable CsvRow nextRecord() {
        if (ended || records == null || text == null) {
            return null;
        }
        try {
            Cell[] cells = records.next();
            if (cells == null) {
                damaged(text, Long.MAX_VALUE);
                ended = true;
                return null;
            }
            text.rowRead();
            long end = records.lastLine();
            CsvRow row = new CsvRow(this, cells, end);
            if (!row.showsDamage()) {
                damaged(text, end);
            } else {
                damaged(text, row.line() - 1);
                text.takeDamagedLines(end);
            }
            return row;
        } catch (IOException e) {
            stop(e);
            return null;
        }
    }

    private void damaged(GuardedText from, long upTo) {
        if (!from.hasDamagedLines()) {
            return; // as after nearly every row
        }
        for (long line : from.takeDamagedLines(upTo)) {
            problems.add(line, "", "bytes that are no UTF-8", "text saved as UTF-8");
        }
    }

    /** Nothing more can be read; what was found so far stands. */
    private void stop(IOException fault) {
        ended = true;
        if (text != null) {
            damaged(text, Long.MAX_VALUE);
        }
        String message = String.valueOf(fault.getMessage());
        long line = records == null ? 0 : records.lineOf(fault);
        if (fault instanceof TextFault known) {
            problems.add(known.in(problems.file()));
        } else if (message.contains("EOF")) {
            problems.add(line, "", "the end of the file", "a closing quote");
        } else if (message.contains("Invalid character between encapsulated token and delimiter")) {
            problems.add(
                    line,
                    "",
                    "more text; what follows this line was not read",
                    "a comma or the end of the line after a closing quote");
        } else {
            problems.add(line, "", message, "a file that can be read to its end");
        }
    }

    private void readHeader() {
        CsvRow header = null;
        do {
            header = nextRecord();
        } while (header != null && (header.isBlank() || header.isComment()));
        if (header == null) {
            if (problems.isEmpty()) {
                problems.add(
                        0,
                        "",
                        "an empty file",
                        "a first row with the columns " + String.join(", ", columns.required()));
            }
            return;
        }
        headerLine = header.line();
        headings = header.cellsUpToLastFilled();
        emptyHeading = headings.contains("");
        if (headings.size() > MOST_COLUMNS) {
            refuse(headings.size() + " columns", "at most " + MOST_COLUMNS + " columns");
            return;
        }
        Map<String, String> known = new LinkedHashMap<>();
        columns.known().forEach(name -> known.put(Names.folded(name), name));
        if (headings.stream().noneMatch(heading -> known.containsKey(Names.folded(heading)))) {
            refuseHeader(known);
            return;
        }
        placeColumns(known);
        if (records != null) {
            records.keepCells(headings.size());
        }
    }

    private void placeColumns(Map<String, String> known) {
        for (int i = 0; i < headings.size(); i++) {
            String heading = headings.get(i);
            String name = known.get(Names.folded(heading));
            if (heading.isEmpty()) {
                continue;
            }
            if (name == null) {
                List<String> nearest = Names.nearest(known.values(), heading);
                problems.add(
                        headerLine,
                        heading,
                        "a column that this table does not have",
                        nearest.isEmpty()
                                ? "one of the columns " + String.join(", ", known.values())
                                : "a column such as " + String.join(" or ", nearest));
            } else if (positions.putIfAbsent(name, i) != null) {
                problems.add(headerLine, name, "two", "one column of this name");
            }
        }
        for (String required : columns.required()) {
            if (!positions.containsKey(required)) {
                problems.add(headerLine, required, "none", "a column of this name");
            }
        }
    }

    /** A first row in which no heading is known: often the wrong separator, else no headings at all. */
    private void refuseHeader(Map<String, String> known) {
        String first = String.join(",", headings);
        for (String separator : List.of(";", "\t", "|")) {
            for (String piece : first.split(Pattern.quote(separator), -1)) {
                String bare = piece.strip().replaceAll("^\"|\"$", "");
                if (first.contains(separator) && known.containsKey(Names.folded(bare))) {
                    String shown = separator.equals("\t") ? "tabs" : "'" + separator + "'";
                    refuse("a file separated by " + shown + "; save it with ','", "cells separated by ','");
                    return;
                }
            }
        }
        refuse(
                TableProblem.quoted(String.join(", ", headings)),
                "a first row with the columns " + String.join(", ", columns.required()));
    }

    private void refuse(String found, String expected) {
        problems.add(headerLine, "", found, expected);
        ended = true;
    }
}
