package costrel.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet as a page of HTML that stands alone: no script, nothing fetched, plain tables with captions and headers that are
 * read aloud as such, and a style that prints.
 */
public final class HtmlForm {

    private static final String STYLE = """
            body { font-family: sans-serif; line-height: 1.35; color: #111; background: #fff; margin: 1.5em; }
            h1 { font-size: 1.25em; }
            h2 { font-size: 1.1em; }
            table { border-collapse: collapse; margin: 1em 0; }
            caption { text-align: left; font-weight: bold; padding: 0.2em 0.5em; }
            th, td { padding: 0.15em 0.5em; text-align: left; vertical-align: bottom; }
            thead th { border-bottom: 2px solid #111; }
            tbody th { font-weight: normal; }
            .figure { text-align: right; font-variant-numeric: tabular-nums; white-space: pre; }
            tr.total th, tr.total td { font-weight: bold; border-top: 2px solid #111; }
            dl { margin: 0.5em 0; }
            dt { display: inline; font-weight: bold; }
            dt::after { content: " "; }
            dd { display: inline; margin: 0 1.5em 0 0; }
            @media print {
              @page { size: A4; margin: 12mm; }
              body { margin: 0; font-size: 9pt; }
              tr { break-inside: avoid; }
              thead { display: table-header-group; }
            }
            """;

    /** As wide as a digit and as a decimal point, for figures that have fewer decimals than their neighbours. */
    private static final String DIGIT_SPACE = "\u2007";

    private static final String POINT_SPACE = "\u2008";

    private HtmlForm() {}

    /**
     * The sheet as a page.
     *
     * @param sheet the sheet
     * @return a whole document
     */
    public static String of(Sheet sheet) {
        String title = sheet.title().isEmpty() ? Figures.capital(sheet.kind()) : sheet.title();
        return page(title, "<h1>" + Html.escaped(title) + "</h1>\n" + body(sheet));
    }

    /**
     * Several sheets on one page.
     *
     * @param title the title of the page
     * @param sheets the sheets, in reading order
     * @return a whole document
     */
    public static String of(String title, List<Sheet> sheets) {
        StringBuilder body = new StringBuilder("<h1>" + Html.escaped(title) + "</h1>\n");
        for (Sheet sheet : sheets) {
            String heading = sheet.title().isEmpty() ? Figures.capital(sheet.kind()) : sheet.title();
            body.append("<section>\n<h2>")
                    .append(Html.escaped(heading))
                    .append("</h2>\n")
                    .append(body(sheet))
                    .append("</section>\n");
        }
        return page(title, body.toString());
    }

    /** A document around what stands in its body. */
    static String page(String title, String body) {
        return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en-GB\">\n<head>\n"
                + "<meta charset=\"utf-8\"/>\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
                + "<link rel=\"icon\" href=\"data:,\"/>\n<title>"
                + Html.escaped(title) + "</title>\n<style>\n" + STYLE + "</style>\n</head>\n<body>\n" + body
                + "</body>\n</html>\n";
    }

    private static String body(Sheet sheet) {
        StringBuilder html = new StringBuilder();
        for (Block block : sheet.blocks()) {
            if (block instanceof Table table) {
                table(html, table);
            } else if (block instanceof Block.Facts facts) {
                html.append("<dl>\n");
                facts.facts().forEach(fact -> fact(html, fact));
                html.append("</dl>\n");
            } else if (block instanceof Block.Note note) {
                note(html, note);
            } else if (block instanceof Block.Heading heading && !heading.text().isEmpty()) {
                html.append("<h2>").append(Html.escaped(heading.text())).append("</h2>\n");
            }
        }
        return html.toString();
    }

    private static void fact(StringBuilder html, Fact fact) {
        boolean named = !fact.label().isEmpty();
        html.append("<dt>")
                .append(Html.escaped(named ? fact.label() : fact.unit()))
                .append("</dt><dd data-key=\"")
                .append(Html.escaped(fact.key()))
                .append("\"><data value=\"")
                .append(Html.escaped(value(fact.value())))
                .append("\">")
                .append(Html.escaped(fact.value().text()))
                .append("</data>")
                .append(named && !fact.unit().isEmpty() ? " " + Html.escaped(fact.unit()) : "")
                .append(fact.remark().isEmpty() ? "" : " (" + Html.escaped(fact.remark()) + ")")
                .append("</dd>\n");
    }

    private static void note(StringBuilder html, Block.Note note) {
        String lead = note.lead().isEmpty() && note.kind() != Block.Note.Kind.HOW
                ? note.kind().label()
                : note.lead();
        html.append("<p class=\"")
                .append(note.kind().label().replace(' ', '-'))
                .append("\">")
                .append(lead.isEmpty() ? "" : "<strong>" + Html.escaped(Figures.capital(lead)) + ":</strong> ")
                .append(Html.escaped(note.text()))
                .append("</p>\n");
    }

    private static void table(StringBuilder html, Table table) {
        html.append("<table data-key=\"")
                .append(Html.escaped(table.key()))
                .append("\">\n<caption>")
                .append(Html.escaped(table.caption()))
                .append("</caption>\n<thead>\n<tr>");
        for (Column column : table.columns()) {
            html.append("<th scope=\"col\"")
                    .append(column.figures() ? " class=\"figure\"" : "")
                    .append('>')
                    .append(Html.escaped(column.heading()))
                    .append("</th>");
        }
        html.append("</tr>\n</thead>\n<tbody>\n");
        List<Integer> decimals = decimals(table);
        for (Table.Row row : table.rows()) {
            html.append(row.total() ? "<tr class=\"total\">" : "<tr>");
            for (int c = 0; c < row.cells().size(); c++) {
                cell(html, row.cells().get(c), table.columns().get(c), c == 0, decimals.get(c));
            }
            html.append("</tr>\n");
        }
        html.append("</tbody>\n</table>\n");
    }

    private static void cell(StringBuilder html, Cell cell, Column column, boolean first, int decimals) {
        String element = first ? "th" : "td";
        html.append('<')
                .append(element)
                .append(first ? " scope=\"row\"" : "")
                .append(column.figures() ? " class=\"figure\"" : "")
                .append('>')
                .append(Html.escaped(cell.text()));
        if (cell.number().isPresent()) {
            int fewer = decimals - cell.number().get().scale();
            html.append(fewer > 0 && cell.number().get().scale() == 0 ? POINT_SPACE : "")
                    .append(DIGIT_SPACE.repeat(Math.max(0, fewer)));
        }
        html.append("</").append(element).append('>');
    }

    /** The most decimals in each column. */
    private static List<Integer> decimals(Table table) {
        List<Integer> most = new ArrayList<>();
        for (int c = 0; c < table.columns().size(); c++) {
            int column = c;
            most.add(table.rows().stream()
                    .flatMap(row -> row.cells().get(column).number().stream())
                    .mapToInt(number -> number.scale())
                    .max()
                    .orElse(0));
        }
        return most;
    }

    private static String value(Cell cell) {
        return cell.number().map(number -> number.toPlainString()).orElse(cell.text());
    }
}
