package costrel.repl;

import costrel.explain.Explanation;
import costrel.report.Block;
import costrel.report.Cell;
import costrel.report.Column;
import costrel.report.Fact;
import costrel.report.Sheet;
import costrel.report.Table;
import costrel.report.TextTable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Answers that have no sheet of their own, as one: a value with its unit, many values, or a tree of figures. */
final class AnswerSheet {

    private static final Pattern FIGURE = Pattern.compile("(-?\\d+(?:\\.\\d+)?)(?: ([^\\d\\s].*))?");

    private AnswerSheet() {}

    /** One value as a fact: a figure with its unit where its text is one, else words; several lines become remarks. */
    static Sheet of(String text) {
        if (text.contains("\n")) {
            List<Block> lines = new ArrayList<>();
            text.lines().filter(line -> !line.isBlank()).forEach(line -> lines.add(Block.Note.how(line.strip())));
            return new Sheet("answer", "", List.of(), lines);
        }
        return new Sheet("answer", "", List.of(), List.of(new Block.Facts(List.of(fact("value", "", text)))));
    }

    private static Fact fact(String key, String label, String text) {
        Matcher figure = FIGURE.matcher(text);
        return figure.matches()
                ? Fact.figure(key, label, figure.group(1), figure.group(2) == null ? "" : figure.group(2))
                : Fact.words(key, label, text);
    }

    /** Many values, one in a row. */
    static Sheet of(Collection<?> many, Function<@Nullable Object, String> text) {
        List<Table.Row> rows = new ArrayList<>();
        boolean figures = true;
        for (Object one : many) {
            Cell cell = one instanceof Number ? Cell.figure(text.apply(one)) : Cell.words(text.apply(one));
            figures &= cell.number().isPresent();
            rows.add(new Table.Row(List.of(cell), false));
        }
        Column column = new Column("value", "value", "", figures && !rows.isEmpty());
        return Sheet.of("answer", "", new Table("values", "values", List.of(column), rows));
    }

    /** A tree of figures, level by level. */
    static Sheet of(Explanation explanation) {
        TextTable table = TextTable.keyed(
                "figures",
                "how the figures came about",
                Column.figures("level", "level", ""),
                Column.words("label", "what"),
                Column.words("figure", "figure"),
                Column.words("how", "how"));
        add(table, explanation, 0);
        return Sheet.of("explanation", explanation.label(), table.table());
    }

    private static void add(TextTable table, Explanation part, int level) {
        table.row(String.valueOf(level), part.label(), part.figure(), part.how());
        part.parts().forEach(one -> add(table, one, level + 1));
    }
}
