package costrel.report;

import costrel.tables.CsvOut;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A sheet as CSV by RFC 4180, for spreadsheets and programs: a section for the sheet, its facts, each table and the
 * remarks, each with column names of its own and a blank line before it. The first cell of a row says which section it
 * belongs to; the first cell of the column names is "table". Text that a spreadsheet would run has an apostrophe before it.
 */
public final class CsvForm {

    /** Sections that are no tables. */
    static final Set<String> OWN_SECTIONS = Set.of("sheet", "facts", "notes");

    private CsvForm() {}

    /**
     * The sheet as CSV.
     *
     * @param sheet the sheet
     * @return rows that end with a carriage return and a line feed
     */
    public static String of(Sheet sheet) {
        CsvOut top = new CsvOut();
        top.row("table", "version", "kind", "title").row("sheet", JsonForm.VERSION, sheet.kind(), sheet.title());
        StringBuilder text = new StringBuilder(top.text());
        if (!sheet.facts().isEmpty()) {
            CsvOut facts = new CsvOut();
            facts.row("table", "key", "label", "value", "unit", "remark");
            sheet.facts()
                    .forEach(fact -> facts.row(
                            "facts", fact.key(), fact.label(), value(fact.value()), fact.unit(), fact.remark()));
            section(text, facts);
        }
        sheet.tables().forEach(table -> section(text, rows(table)));
        if (!sheet.notes().isEmpty()) {
            CsvOut notes = new CsvOut();
            notes.row("table", "kind", "text");
            sheet.notes().forEach(note -> notes.row("notes", note.kind().label(), note.text()));
            section(text, notes);
        }
        return text.toString();
    }

    /** One table: the unit stands behind the key in the column's name. */
    private static CsvOut rows(Table table) {
        CsvOut csv = new CsvOut();
        List<Object> names = new ArrayList<>(List.of("table", "row"));
        for (Column column : table.columns()) {
            names.add(column.unit().isEmpty() ? column.key() : column.key() + " (" + column.unit() + ")");
        }
        csv.row(names.toArray());
        for (Table.Row row : table.rows()) {
            List<Object> cells = new ArrayList<>(List.of(table.key(), row.total() ? "total" : "line"));
            row.cells().forEach(cell -> cells.add(value(cell)));
            csv.row(cells.toArray());
        }
        return csv;
    }

    private static void section(StringBuilder text, CsvOut section) {
        text.append("\r\n").append(section.text());
    }

    private static Object value(Cell cell) {
        return cell.number().isPresent() ? cell.number().get() : cell.text();
    }
}
