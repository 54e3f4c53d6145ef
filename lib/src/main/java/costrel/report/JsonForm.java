package costrel.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * A sheet as JSON, for programs. Its schema, JSON Schema 2020-12, is {@link #schema()}. A number
 * stands with exactly the digits that are printed, its unit beside it or at its column; a blank cell is null.
 */
public final class JsonForm {

    /** Version of the form: a new one where a program that read the old one would fail. */
    public static final String VERSION = "1";

    private static final String SCHEMA = "sheet-1.schema.json";

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private JsonForm() {}

    /**
     * The sheet as JSON.
     *
     * @param sheet the sheet
     * @return one object, indented, that ends with a line feed
     */
    public static String of(Sheet sheet) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(new Indented(), text)) {
            json.writeStartObject();
            json.writeStringProperty("costrel", VERSION);
            json.writeStringProperty("kind", sheet.kind());
            json.writeStringProperty("title", sheet.title());
            json.writeArrayPropertyStart("facts");
            sheet.facts().forEach(fact -> fact(json, fact));
            json.writeEndArray();
            json.writeArrayPropertyStart("tables");
            sheet.tables().forEach(table -> table(json, table));
            json.writeEndArray();
            json.writeArrayPropertyStart("notes");
            for (Block.Note note : sheet.notes()) {
                json.writeStartObject();
                json.writeStringProperty("kind", note.kind().label());
                json.writeStringProperty("text", note.text());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    /**
     * The schema of the form.
     *
     * @return JSON Schema 2020-12
     */
    public static String schema() {
        try (InputStream in = JsonForm.class.getResourceAsStream(SCHEMA)) {
            return new String(Objects.requireNonNull(in, SCHEMA).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void fact(JsonGenerator json, Fact fact) {
        json.writeStartObject();
        json.writeStringProperty("key", fact.key());
        json.writeStringProperty("label", fact.label());
        cell(json, "value", fact.value());
        json.writeStringProperty("unit", fact.unit());
        json.writeStringProperty("remark", fact.remark());
        json.writeEndObject();
    }

    private static void table(JsonGenerator json, Table table) {
        json.writeStartObject();
        json.writeStringProperty("key", table.key());
        json.writeStringProperty("caption", table.caption());
        json.writeArrayPropertyStart("columns");
        for (Column column : table.columns()) {
            json.writeStartObject();
            json.writeStringProperty("key", column.key());
            json.writeStringProperty("heading", column.heading());
            json.writeStringProperty("unit", column.unit());
            json.writeStringProperty("holds", column.figures() ? "numbers" : "words");
            json.writeEndObject();
        }
        json.writeEndArray();
        rows(json, "rows", table, false);
        rows(json, "totals", table, true);
        json.writeEndObject();
    }

    private static void rows(JsonGenerator json, String name, Table table, boolean totals) {
        json.writeArrayPropertyStart(name);
        List<Column> columns = table.columns();
        for (Table.Row row : table.rows()) {
            if (row.total() == totals) {
                json.writeStartObject();
                for (int c = 0; c < columns.size(); c++) {
                    cell(json, columns.get(c).key(), row.cells().get(c));
                }
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }

    private static void cell(JsonGenerator json, String name, Cell cell) {
        json.writeName(name);
        if (cell.number().isPresent()) {
            json.writeNumber(cell.number().get());
        } else if (cell.isBlank()) {
            json.writeNull();
        } else {
            json.writeString(cell.text());
        }
    }

    /** Lines end the same on every machine. */
    private static final class Indented extends ObjectWriteContext.Base {

        @Override
        public tools.jackson.core.PrettyPrinter getPrettyPrinter() {
            DefaultIndenter lines = new DefaultIndenter("  ", "\n");
            return new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    }
}
