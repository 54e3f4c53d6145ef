package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.brewery.Brewery;
import costrel.cost.CostSheet;
import costrel.tables.CsvIn;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One-shot answers for other programs: nothing but the answer on the standard output, faults as text on the error stream. */
@Timeout(300)
final class FormsTest {

    private static final String LANTERNFOLD =
            Path.of("../samples/lanternfold").toAbsolutePath().normalize().toString();
    private static final String BITTER =
            "brew(\"Wickgate Bitter\").on(\"Main\").length(\"30 brl\").day(\"2026-11-25\")";

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private static Streams.Run run(String... arguments) {
        List<String> all = new ArrayList<>(List.of(LANTERNFOLD));
        all.addAll(List.of(arguments));
        return Streams.run("", Sheets.rendering(), all.toArray(String[]::new));
    }

    @Test
    void a_cost_sheet_as_json_holds_the_librarys_figures() {
        Streams.Run run = run("--json", "-e", BITTER + ".cost()");
        assertEquals("", run.err());
        assertEquals(Console.DONE, run.code());
        CostSheet cost = Brewery.open(Path.of(LANTERNFOLD))
                .brew("Wickgate Bitter")
                .on("Main")
                .length("30 brl")
                .day(LocalDate.of(2026, 11, 25))
                .cost();
        JsonNode json = JSON.readTree(run.out());
        assertEquals("cost sheet", json.get("kind").asString());
        BigDecimal perPint = null;
        for (JsonNode table : json.get("tables")) {
            if (table.get("key").asString().equals("containers")) {
                perPint = table.get("totals").get(0).get("perPint").decimalValue();
            }
        }
        assertEquals(cost.pencePerPint(), perPint);
    }

    @Test
    void values_and_tables_have_their_json_too() {
        JsonNode amount = JSON.readTree(
                run("--json", "-e", "convert(\"2 oz/brl\", \"g/hL\")").out());
        assertEquals("g/hL", amount.get("facts").get(0).get("unit").asString());
        // 2 oz of 28.349523125 g (Weights and Measures Act 1985) on 163.65924 L
        assertEquals(
                2 * 28.349523125 / 1.6365924,
                amount.get("facts").get(0).get("value").asDouble(),
                0.01);
        JsonNode many = JSON.readTree(run("--json", "-e", "List.of(1, 2.5)").out());
        assertEquals(
                new BigDecimal("2.5"),
                many.get("tables").get(0).get("rows").get(1).get("value").decimalValue());
        JsonNode beers = JSON.readTree(run("--json", "-e", "beers()").out());
        assertEquals("table", beers.get("kind").asString());
        JsonNode tree = JSON.readTree(
                run("--json", "-e", "explain(" + BITTER + ".gyle())").out());
        assertEquals("explanation", tree.get("kind").asString());
    }

    @Test
    void a_question_without_an_answer_leaves_the_standard_output_empty() {
        for (String form : List.of("--json", "--csv", "--html")) {
            Streams.Run wrong = run(form, "-e", "brew(\"Wickgate Biter\")");
            assertEquals("", wrong.out());
            assertTrue(wrong.err().contains("Wickgate Biter"), wrong.err());
            assertEquals(Console.WRONG_INPUT, wrong.code());
            Streams.Run failed = run(form, "-e", "1 / 0");
            assertEquals("", failed.out());
            assertEquals(Console.FAILURE, failed.code());
        }
    }

    @Test
    void a_finding_that_needs_a_person_is_told_by_the_exit_code_in_every_form() {
        String tooLong = "brew(\"Snuffer Strong\").on(\"Main\").length(\"60 brl\").day(\"2026-11-25\").gyle()";
        for (String form : List.of("--json", "--csv", "--html")) {
            Streams.Run run = run(form, "-e", tooLong);
            assertEquals(Console.NEEDS_A_PERSON, run.code(), run.err());
            assertEquals("", run.err());
            assertTrue(run.out().contains("finding"), run.out());
        }
    }

    @Test
    void csv_ends_its_rows_as_rfc_4180_has_it_and_reads_back() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Surroundings around =
                Streams.surroundings("", out, new ByteArrayOutputStream(), Map.of(), "", Optional.empty());
        assertEquals(
                Console.DONE,
                new Console(around, Sheets.rendering()).run(LANTERNFOLD, "--csv", "-e", BITTER + ".gyle()"));
        String csv = out.toString(StandardCharsets.UTF_8);
        assertTrue(csv.endsWith("\r\n") && !csv.endsWith("\n\r\n"), "end of the last row");
        assertEquals(csv.lines().count(), csv.chars().filter(c -> c == '\r').count());
        List<List<String>> rows = CsvIn.rows(csv);
        assertTrue(rows.stream()
                .anyMatch(row -> row.get(0).equals("grist") && row.get(1).equals("total")));
    }

    @Test
    void html_is_one_page() {
        Streams.Run run = run("--html", "-e", BITTER + ".gyle()");
        assertEquals(Console.DONE, run.code(), run.err());
        assertTrue(run.out().startsWith("<!DOCTYPE html>\n<html "), run.out());
        assertTrue(run.out().endsWith("</html>\n"), run.out());
    }

    @Test
    void two_forms_at_once_are_refused() {
        Streams.Run run = run("--json", "--csv", "-e", "plants()");
        assertEquals("", run.out());
        assertEquals(Console.WRONG_INPUT, run.code());
        assertTrue(run.err().contains("found --json and --csv"), run.err());
    }

    @Test
    void an_answer_can_be_had_as_json_and_csv_at_the_prompt() {
        assertEquals(
                run("--json", "-e", "plants()").out(),
                run("-e", "json(plants())").out());
        assertEquals(
                run("--csv", "-e", "plants()").out().replace("\r", ""),
                run("-e", "csv(plants())").out());
    }
}
