package costrel.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import costrel.tables.CsvIn;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The same sheet in every form: the JSON keeps to its schema, and each form read back holds the figures of the others. */
class FormsTest {

    private static final List<Sheet> SHEETS = LanternfoldSheets.all();

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private static Schema schema() {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(JsonForm.schema());
    }

    @Test
    void every_result_keeps_to_the_schema() {
        Schema schema = schema();
        for (Sheet sheet : SHEETS) {
            assertEquals(List.of(), schema.validate(JsonForm.of(sheet), InputFormat.JSON), sheet.title());
        }
    }

    @Test
    void the_schema_refuses_what_no_sheet_is() {
        Schema schema = schema();
        String sound =
                JsonForm.of(TextTable.of("malt", "#kg").row("pale", "25.5").sheet());
        assertEquals(List.of(), schema.validate(sound, InputFormat.JSON));
        for (String fault : List.of(
                sound.replace("\"1\"", "\"2\""),
                sound.replace("\"malt\" : \"pale\"", "\"malt\" : [\"pale\"]"),
                sound.replace("\"kg\" : 25.5", "\"k g\" : 25.5"),
                sound.replace("\"numbers\"", "\"figures\""),
                sound.replace("\"notes\"", "\"remarks\""))) {
            assertFalse(fault.equals(sound), fault);
            assertFalse(schema.validate(fault, InputFormat.JSON).isEmpty(), fault);
        }
    }

    @Test
    void json_read_back_holds_every_figure_to_its_last_digit() {
        int numbers = 0;
        for (Sheet sheet : SHEETS) {
            JsonNode json = JSON.readTree(JsonForm.of(sheet));
            assertEquals(sheet.kind(), json.get("kind").asString());
            for (int i = 0; i < sheet.facts().size(); i++) {
                numbers += same(
                        sheet.facts().get(i).value(), json.get("facts").get(i).get("value"));
            }
            for (int t = 0; t < sheet.tables().size(); t++) {
                Table table = sheet.tables().get(t);
                JsonNode found = json.get("tables").get(t);
                int row = 0;
                int total = 0;
                for (Table.Row cells : table.rows()) {
                    JsonNode read = cells.total()
                            ? found.get("totals").get(total++)
                            : found.get("rows").get(row++);
                    for (int c = 0; c < table.columns().size(); c++) {
                        numbers += same(
                                cells.cells().get(c),
                                read.get(table.columns().get(c).key()));
                    }
                }
            }
        }
        assertTrue(numbers > 2000, "only " + numbers + " numbers");
    }

    private static int same(Cell cell, JsonNode read) {
        if (cell.number().isPresent()) {
            assertTrue(read.isNumber(), read.toString());
            assertEquals(
                    cell.number().get().toPlainString(), read.decimalValue().toPlainString());
            return 1;
        }
        assertEquals(cell.isBlank(), read.isNull());
        assertEquals(cell.text(), cell.isBlank() ? "" : read.asString());
        return 0;
    }

    @Test
    void csv_read_back_by_the_library_gives_the_same_values() {
        int cells = 0;
        for (Sheet sheet : SHEETS) {
            List<List<String>> rows = CsvIn.rows(CsvForm.of(sheet));
            assertEquals(List.of("sheet", "1", sheet.kind(), sheet.title()), rows.get(1));
            for (Fact fact : sheet.facts()) {
                assertTrue(
                        rows.contains(List.of(
                                "facts",
                                fact.key(),
                                fact.label(),
                                fact.value()
                                        .number()
                                        .map(BigDecimal::toPlainString)
                                        .orElse(fact.value().text()),
                                fact.unit(),
                                fact.remark())),
                        fact.toString());
            }
            for (Table table : sheet.tables()) {
                List<List<String>> own = rows.stream()
                        .filter(row -> row.get(0).equals(table.key()))
                        .toList();
                assertEquals(table.rows().size(), own.size(), table.key());
                for (int r = 0; r < own.size(); r++) {
                    Table.Row row = table.rows().get(r);
                    assertEquals(row.total() ? "total" : "line", own.get(r).get(1));
                    for (int c = 0; c < row.cells().size(); c++) {
                        Cell cell = row.cells().get(c);
                        assertEquals(
                                cell.number().map(BigDecimal::toPlainString).orElse(cell.text()),
                                own.get(r).get(c + 2));
                        cells++;
                    }
                }
            }
            for (Block.Note note : sheet.notes()) {
                assertTrue(rows.contains(List.of("notes", note.kind().label(), note.text())), note.text());
            }
        }
        assertTrue(cells > 4000, "only " + cells + " cells");
    }

    @Test
    void a_page_shows_every_cell_in_its_place() {
        Pattern cell = Pattern.compile("<t([hd])(?: scope=\"row\")?(?: class=\"figure\")?>([^<]*)</t\\1>");
        for (Sheet sheet : SHEETS) {
            List<String> expected = new ArrayList<>();
            sheet.tables()
                    .forEach(table -> table.rows()
                            .forEach(row -> row.cells().forEach(one -> expected.add(Html.escaped(one.text())))));
            List<String> found = new ArrayList<>();
            Matcher matcher = cell.matcher(HtmlForm.of(sheet));
            while (matcher.find()) {
                found.add(matcher.group(2).replaceAll("[\\u2007\\u2008]+$", ""));
            }
            assertEquals(expected, found, sheet.title());
        }
    }

    @Test
    void a_page_runs_nothing_that_stands_in_a_cell() {
        String hostile = "<script>alert('x')</script> & \"quoted\"";
        Sheet sheet = new Sheet(
                "table",
                hostile,
                List.of(),
                List.of(
                        new Block.Heading(hostile),
                        new Block.Facts(List.of(new Fact("key", hostile, Cell.words(hostile), hostile, hostile))),
                        TextTable.of(hostile, "#kg").row(hostile, hostile).table(),
                        new Block.Note(Block.Note.Kind.FINDING, hostile, hostile)));
        String page = HtmlForm.of(sheet);
        assertFalse(page.contains("<script"), page);
        assertFalse(page.contains("alert('"), page);
        assertTrue(page.contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; &quot;quoted&quot;"), page);
    }

    @Test
    void a_spreadsheet_runs_nothing_that_stands_in_a_cell() {
        Sheet sheet = TextTable.of("lot", "#change")
                .row("=HYPERLINK(\"x\")", "-2.50")
                .row("@SUM(A1)", "+0.30")
                .sheet();
        String csv = CsvForm.of(sheet);
        assertTrue(csv.contains("\"'=HYPERLINK(\"\"x\"\")\",-2.50\r\n"), csv);
        assertTrue(csv.contains("'@SUM(A1),0.30\r\n"), csv);
        assertEquals("=HYPERLINK(\"x\")", CsvIn.rows(csv).get(3).get(2));
    }

    @Test
    void every_kind_key_and_column_stands_on_the_page_of_forms() throws IOException {
        String page = Files.readString(Path.of("../samples/FORMS.md"));
        Set<String> missing = new TreeSet<>();
        for (Sheet sheet : SHEETS) {
            int from = page.indexOf("\n### `" + sheet.kind() + "`\n");
            String section = from < 0 ? "" : page.substring(from + 1, end(page, from + 1));
            List<String> keys =
                    new ArrayList<>(sheet.facts().stream().map(Fact::key).toList());
            for (Table table : sheet.tables()) {
                keys.add(table.key());
                table.columns().forEach(column -> keys.add(column.key()));
            }
            for (String key : keys) {
                String general = general(sheet.kind(), key);
                if (!section.contains("`" + general + "`")) {
                    missing.add(sheet.kind() + ": " + key);
                }
            }
        }
        assertEquals(Set.of(), missing);
    }

    /** Keys that go on counting, or that are made of a variety's name, stand on the page once. */
    private static String general(String kind, String key) {
        return kind.equals("hop cover") && key.startsWith("kg")
                ? "kgFuggle"
                : key.replaceFirst("^(container|goal|bound)\\d+$", "$11");
    }

    private static int end(String page, int from) {
        int next = page.indexOf("\n### ", from);
        return next < 0 ? page.length() : next;
    }
}
