package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Lines that are cut up without the parser, held against Commons CSV, which here reads the whole text. */
class CsvRecordsTest {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setCommentMarker('#')
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .get();

    /** Pieces of which texts are put together, the usual ones more often. */
    private static final List<String> PIECES = List.of(
            ",",
            ",",
            ",",
            ",",
            "\n",
            "\n",
            "\r\n",
            "\r\n",
            "malt",
            "25 kg",
            "£12.50",
            "é",
            "\"",
            "\"\"",
            "\"a,b\"",
            "\"a\nb\"",
            " ",
            "\t",
            "#",
            "\u00a0",
            "\u2003",
            "\u000b",
            "\u001c",
            "\uD83C\uDF7A",
            "€",
            "'=1",
            ";",
            "");

    private static final String PRICE_HEADING =
            "item,supplier,pack,price,currency,valid from,valid until,minimum quantity,delivery,VAT,price with VAT,VAT recoverable\n";

    @Test
    void lines_are_cut_as_commons_csv_cuts_them() {
        long seed = Long.getLong("seed", 18800401);
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            boolean alsoReturns = random.nextInt(4) == 0;
            boolean quotes = random.nextInt(3) > 0;
            for (int k = random.nextInt(60); k > 0; k--) {
                String piece = PIECES.get(random.nextInt(PIECES.size()));
                text.append(quotes || piece.indexOf('"') < 0 ? piece : "q");
                text.append(alsoReturns && random.nextInt(8) == 0 ? "\r" : "");
            }
            int number = i;
            List<String> expected = whole(text.toString());
            for (int width : new int[] {0, 2, 100}) {
                assertEquals(
                        expected,
                        ours(text.toString(), width),
                        () -> "-Dseed=" + seed + ", case " + number + ": " + text);
            }
        }
    }

    @Test
    void a_row_reads_alike_wherever_the_edge_of_the_buffer_falls() {
        String rows = "malt, £1 ,\"a\nb\"\r\n\r\n# note\r\nhops,é€,\r\n";
        for (int length = 8150; length < 8200; length++) {
            for (int before : new int[] {0, 8192}) {
                String text = "x".repeat(before + length) + "\n" + rows.repeat(3);
                assertEquals(whole(text), ours(text, 3));
            }
        }
    }

    @Test
    void more_texts_than_are_kept_come_out_as_they_went_in() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 120_000; i++) {
            text.append("lot ").append(i).append(",£").append(i % 7).append('\n');
        }
        assertEquals(whole(text.toString()), ours(text.toString(), 2));
    }

    @Test
    void texts_that_share_a_hash_are_told_apart() {
        // Aa and BB have one hash in Java, and so have all texts that are put together of them.
        StringBuilder text = new StringBuilder();
        for (int round = 0; round < 2; round++) {
            for (int i = 0; i < 4096; i++) {
                for (int bit = 0; bit < 12; bit++) {
                    text.append((i >> bit & 1) == 0 ? "Aa" : "BB");
                }
                text.append('\n');
            }
        }
        assertEquals(whole(text.toString()), ours(text.toString(), 1));
    }

    @Test
    void an_open_quote_far_down_is_told_by_the_line_it_begins_on() {
        String text = "item,amount\n" + "malt,25 kg\n".repeat(1500) + "\"hops\",\"5 kg\n" + "malt,25 kg\n".repeat(1500);
        try (CsvTable table = CsvTable.open(CsvSource.text("t.csv", text), Columns.required("item", "amount"))) {
            int rows = 0;
            for (CsvRow row : table) {
                rows += row.line() > 0 ? 1 : 0;
            }
            assertEquals(1500, rows);
            assertEquals(
                    List.of("t.csv:1502: expected a closing quote, found the end of the file"),
                    table.loaded(() -> "").problems().stream()
                            .map(TableProblem::text)
                            .toList());
        }
    }

    /** The same list twice, once with every cell in quotes, which Commons CSV reads from end to end. */
    @Test
    void a_price_list_in_quotes_gives_the_same_rows_and_the_same_faults() {
        long seed = Long.getLong("seed", 18720612);
        Random random = new Random(seed);
        int sound = 0;
        for (int i = 0; i < 400; i++) {
            String plain = prices(random, i % 2 == 0 ? 0 : 40);
            StringBuilder quoted = new StringBuilder();
            for (String line : plain.split("\n", -1)) {
                quoted.append(line.isEmpty() ? "" : "\"" + line.replace(",", "\",\"") + "\"")
                        .append('\n');
            }
            Loaded<?> asIs = PriceReader.read(CsvSource.text("p.csv", plain));
            Loaded<?> inQuotes = PriceReader.read(CsvSource.text("p.csv", quoted.toString()));
            int number = i;
            assertEquals(
                    inQuotes.problems(), asIs.problems(), () -> "-Dseed=" + seed + ", case " + number + ": " + plain);
            if (asIs.sound()) {
                sound++;
                assertEquals(inQuotes.orThrow(), asIs.orThrow());
            }
        }
        assertTrue(sound > 0);
        assertFalse(sound == 400);
    }

    private static String prices(Random random, int oneFaultIn) {
        List<List<String>> good = List.of(
                List.of("Pale malt", "Crystal malt", "Hops", "pale-malt"),
                List.of("Ash", "Beech & Co", "Élan"),
                List.of("25 kg", "1 t", "20 L", "1000 each"),
                List.of("£12.50", "£7", "18.20 GBP", "€3.10", "£1.20/kg"),
                List.of("", "GBP", "EUR"),
                List.of("2026-01-05", "2026-02-02", "2027-03-01"),
                List.of("", "2026-02-01", "2028-12-31"),
                List.of("", "100 kg", "20 L"),
                List.of("", "£1.25", "€2"),
                List.of("", "20 %", "5 %"),
                List.of("", "yes", "no"),
                List.of("", "yes", "no"));
        List<String> bad = List.of("", "12,50", "-£1", "\u0007", "2026-02-30", "x", "kg", "1e9 kg", "200 %", "\uFFFD");
        StringBuilder text = new StringBuilder(PRICE_HEADING);
        for (int i = random.nextInt(12); i >= 0; i--) {
            List<String> cells = new ArrayList<>();
            for (int k = 0; k < good.size(); k++) {
                // A sound list has one price of an item, so that nothing overlaps, and all by the kilogram in pounds.
                List<String> choice = good.get(k);
                String usual = k == 0 ? "item " + i : k == 5 ? choice.get(0) : oneFaultIn == 0 && k > 1 ? sure(k) : "";
                cells.add(
                        oneFaultIn > 0 && random.nextInt(oneFaultIn) == 0
                                ? bad.get(random.nextInt(bad.size()))
                                : usual.isEmpty() ? choice.get(random.nextInt(choice.size())) : usual);
            }
            text.append(String.join(",", cells)).append('\n');
            text.append(random.nextInt(6) == 0 ? "\n" : "");
        }
        return text.toString();
    }

    private static String sure(int column) {
        return List.of(
                        "",
                        "",
                        "25 kg",
                        "£12.50",
                        "GBP",
                        "2026-01-05",
                        "2026-02-01",
                        "100 kg",
                        "£1.25",
                        "20 %",
                        "no",
                        "no")
                .get(column);
    }

    private static List<String> ours(String text, int width) {
        List<String> rows = new ArrayList<>();
        GuardedText guarded = new GuardedText(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        try (CsvRecords records = new CsvRecords(guarded)) {
            records.keepCells(width);
            for (Cell[] cells = records.next(); cells != null; cells = records.next()) {
                StringBuilder row = new StringBuilder().append(records.lastLine());
                for (Cell cell : cells) {
                    row.append(" [").append(cell.raw()).append(']');
                }
                rows.add(row.toString());
            }
        } catch (IOException e) {
            rows.add("a fault");
        }
        return rows;
    }

    private static List<String> whole(String text) {
        List<String> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.builder()
                .setReader(new StringReader(text))
                .setFormat(FORMAT)
                .get()) {
            for (CSVRecord record : parser) {
                StringBuilder row = new StringBuilder().append(parser.getCurrentLineNumber());
                record.forEach(cell -> row.append(" [").append(cell).append(']'));
                rows.add(row.toString());
            }
        } catch (IOException | UncheckedIOException e) {
            rows.add("a fault");
        }
        return rows;
    }
}
