package costrel.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A sheet as text: words to the left, figures by their decimal points, totals ruled off. */
public final class TextForm {

    /** Where sentences are folded. */
    static final int WIDTH = 110;

    /** No place is too narrow for this. */
    private static final int NARROWEST = 40;

    private static final int INDENT = 2;
    private static final String GAP = "  ";

    private TextForm() {}

    /**
     * The sheet as text, each table as wide as it is.
     *
     * @param sheet the sheet
     * @return lines of text
     */
    public static String of(Sheet sheet) {
        return title(sheet, WIDTH) + of(sheet.blocks(), WIDTH, Integer.MAX_VALUE);
    }

    /**
     * The sheet as text that fits a width: sentences are folded, and a table that is wider is cut between its columns into
     * parts that stand under each other, each with the first column before it.
     *
     * @param sheet the sheet
     * @param width characters in a line; under 40, 40 are taken
     * @return lines of text; only a table whose first and another column together are wider is wider
     */
    public static String of(Sheet sheet, int width) {
        int room = Math.max(NARROWEST, width);
        return title(sheet, Math.min(WIDTH, room)) + of(sheet.blocks(), Math.min(WIDTH, room), room);
    }

    /** Blocks without a title, as part of another text. */
    static String of(List<? extends Block> blocks) {
        return of(blocks, WIDTH, Integer.MAX_VALUE);
    }

    private static String title(Sheet sheet, int width) {
        return sheet.title().isEmpty() ? "" : Figures.folded(sheet.title(), 0, width);
    }

    private static String of(List<? extends Block> blocks, int fold, int width) {
        StringBuilder text = new StringBuilder();
        for (Block block : blocks) {
            if (block instanceof Table table) {
                text.append(table(table, INDENT, width));
            } else if (block instanceof Block.Facts facts) {
                text.append(facts(facts, width));
            } else if (block instanceof Block.Note note) {
                text.append(Figures.folded(note.printed(), INDENT, fold));
            } else if (block instanceof Block.Heading heading) {
                text.append('\n').append(heading.text().isEmpty() ? "" : heading.text() + "\n");
            }
        }
        return text.toString();
    }

    private static String facts(Block.Facts facts, int width) {
        String line = facts.facts().stream().map(Fact::printed).collect(Collectors.joining("   "));
        return INDENT + line.length() <= width
                ? " ".repeat(INDENT) + line + "\n"
                : Figures.folded(line.replace("   ", "; "), INDENT, width);
    }

    /** A table, cut into parts where it is wider than the width; each part repeats the columns that name the rows. */
    static String table(Table table, int indent, int width) {
        Layout layout = new Layout(table);
        StringBuilder text = new StringBuilder();
        int names = names(table, layout, (width - indent) / 2);
        int from = 0;
        while (from < table.columns().size() || from == 0) {
            List<Integer> columns = new ArrayList<>();
            int used = indent;
            for (int named = 0; from > 0 && named < names && named < from; named++) {
                columns.add(named);
                used += layout.width[named] + GAP.length();
            }
            int first = columns.size();
            while (from < table.columns().size() && (columns.size() == first || used + layout.width[from] <= width)) {
                used += layout.width[from] + GAP.length();
                columns.add(from++);
            }
            part(text, table, layout, columns, indent);
            from = Math.max(from, 1);
        }
        return text.toString();
    }

    /** How many columns from the first on it takes to tell the rows apart, as far as there is room for them: one or more. */
    private static int names(Table table, Layout layout, int room) {
        int names = 1;
        int used = layout.width.length == 0 ? 0 : layout.width[0] + GAP.length();
        while (names < table.columns().size()
                && !table.columns().get(names).figures()
                && used + layout.width[names] + GAP.length() <= room
                && !toldApart(table, names)) {
            used += layout.width[names] + GAP.length();
            names++;
        }
        return names;
    }

    private static boolean toldApart(Table table, int names) {
        Set<List<String>> seen = new HashSet<>();
        return table.rows().stream()
                .filter(row -> !row.total())
                .allMatch(row -> seen.add(
                        row.cells().subList(0, names).stream().map(Cell::text).toList()));
    }

    /** Room for each column. */
    private static final class Layout {

        private final int[] width;
        private final int[] whole;

        Layout(Table table) {
            int columns = table.columns().size();
            width = new int[columns];
            whole = new int[columns];
            for (int c = 0; c < columns; c++) {
                int fraction = 0;
                int widest = 0;
                int before = 0;
                for (Table.Row row : table.rows()) {
                    String cell = row.cells().get(c).text();
                    before = Math.max(before, wholePart(cell));
                    fraction = Math.max(fraction, length(cell) - wholePart(cell));
                    widest = Math.max(widest, length(cell));
                }
                boolean figures = table.columns().get(c).figures();
                width[c] = Math.max(length(table.columns().get(c).heading()), figures ? before + fraction : widest);
                whole[c] = width[c] - fraction;
            }
        }
    }

    private static void part(StringBuilder text, Table table, Layout layout, List<Integer> columns, int indent) {
        List<String> headings = table.columns().stream().map(Column::heading).toList();
        line(text, table, layout, columns, indent, headings, false);
        for (Table.Row row : table.rows()) {
            List<String> cells = row.cells().stream().map(Cell::text).toList();
            if (row.total()) {
                List<String> rule = new ArrayList<>();
                for (int c = 0; c < cells.size(); c++) {
                    boolean ruled =
                            table.columns().get(c).figures() && !cells.get(c).isEmpty();
                    rule.add(ruled ? "-".repeat(layout.width[c]) : "");
                }
                line(text, table, layout, columns, indent, rule, false);
            }
            line(text, table, layout, columns, indent, cells, true);
        }
    }

    private static void line(
            StringBuilder text,
            Table table,
            Layout layout,
            List<Integer> columns,
            int indent,
            List<String> cells,
            boolean byPoint) {
        StringBuilder line = new StringBuilder(" ".repeat(indent));
        for (int c : columns) {
            String cell = cells.get(c);
            int before = 0;
            if (table.columns().get(c).figures()) {
                before = byPoint ? Math.max(0, layout.whole[c] - wholePart(cell)) : layout.width[c] - length(cell);
            }
            line.append(" ".repeat(before)).append(cell);
            line.append(" ".repeat(Math.max(0, layout.width[c] - before - length(cell))))
                    .append(GAP);
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }

    /** Characters before the decimal point of the figure that starts the cell, or all of it. */
    private static int wholePart(String cell) {
        int point = cell.indexOf('.');
        return point < 0 ? length(cell) : cell.codePointCount(0, point);
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
