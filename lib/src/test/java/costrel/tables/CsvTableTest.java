package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.LongUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CsvTableTest {

    private static final Columns COLUMNS = Columns.required("item", "amount").optional("time");
    private static final long HUNDRED_MB = 100_000_000;

    /** What may be taken in before a file without end is refused: the bound on a row and a buffer or two. */
    private static final long MOST_READ = GuardedText.LONGEST_ROW + 100_000;

    @Test
    void a_plain_table_is_read() {
        assertEquals(List.of("2 malt 25.0", "3 hops 5.0"), rows("item,amount\nmalt,25 kg\nhops,5 kg\n"));
    }

    @Test
    void columns_come_in_any_order_and_case_and_spacing() {
        assertEquals(List.of("2 malt 25.0"), rows("Source, AMOUNT ,note, Item\na book,25 kg,old stock,malt\n"));
    }

    @Test
    void a_byte_order_mark_is_no_part_of_the_first_heading() {
        assertEquals(List.of("2 malt 25.0"), rows("\uFEFFitem,amount\nmalt,25 kg\n"));
    }

    @Test
    void every_kind_of_line_end_is_read_and_counted_alike() {
        String table = "# bought\nitem,amount\n\nmalt,\"25\n kg\"\n# more\n\nhops,5 kg";
        String[] faults = {"4: amount", "8 hops 5.0"};
        for (String end : List.of("\n", "\r\n", "\r")) {
            String text = table.replace("\n", end);
            List<String> problems = problems(text);
            assertEquals(1, problems.size(), () -> end.length() + ": " + problems);
            assertTrue(problems.get(0).startsWith("t.csv:" + faults[0]), problems.get(0));
            assertEquals(
                    faults[1],
                    rows(text.replace("\"25" + end + " kg\"", "\"25 kg\"" + end))
                            .get(1));
        }
    }

    @Test
    void a_quoted_line_break_is_kept_and_the_row_has_the_line_on_which_it_starts() {
        String text =
                "item,amount,note\nmalt,25 kg,\"two\r\n\r\nlines\"\nhops,5 kg,\"a \"\"fine\"\" lot, dry\"\nyeast,1 kg,\n";
        assertEquals(List.of("2 malt 25.0", "5 hops 5.0", "6 yeast 1.0"), rows(text));
    }

    @Test
    void what_a_spreadsheet_writes_back_still_reads() {
        String saved = """
                "# prices of spring, as sent",,,,
                "item","amount","time",,
                ,,,,
                "malt","25 kg",,,
                "# a quoted comment","with a cell",,,
                "hops","5 kg"
                ,,,,
                ,,,,
                """;
        assertEquals(List.of("4 malt 25.0", "6 hops 5.0"), rows("\uFEFF" + saved.replace("\n", "\r\n")));
    }

    @Test
    void blanks_around_cells_go_and_no_break_spaces_too() {
        assertEquals(
                List.of("2 malt 25.0", "3 hops 5.0"),
                rows("item,amount\n  malt\u00a0, \"25 kg\" \n\thops ,5\u00a0kg\n"));
    }

    @Test
    void an_apostrophe_set_against_formulas_is_taken_off() {
        assertEquals(List.of("2 =malt 25.0", "3 'odd 1.0"), rows("item,amount\n'=malt,25 kg\n'odd,1 kg\n"));
    }

    @Test
    void only_column_names_make_an_empty_table() {
        assertEquals(List.of(), rows("item,amount\n"));
        assertEquals(List.of(), rows("item,amount"));
    }

    @Test
    void a_folder_and_a_missing_file_are_problems(@TempDir Path folder) {
        assertEquals(
                List.of("prices.csv: expected a CSV file, found no file of that name"),
                problems(CsvSource.file(folder.resolve("prices.csv"))));
        assertEquals(
                List.of("prices: expected a CSV file, found a folder"), problems(CsvSource.file(folder, "prices")));
    }

    @Test
    void a_file_on_disk_is_read(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("stock.csv"), "item,amount\nmalt,25 kg\n");
        try (CsvTable table = CsvTable.open(CsvSource.file(file), COLUMNS)) {
            assertEquals("malt", table.iterator().next().cell("item"));
        }
    }

    @Test
    void a_reading_that_breaks_off_is_a_problem() {
        InputStream breaking = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("the disk is gone");
            }

            @Override
            public int read(byte[] target, int offset, int length) throws IOException {
                return read();
            }
        };
        InputStream head = bytes("item,amount\nmalt,25 kg\n");
        assertEquals(
                List.of("t.csv:2: expected a file that can be read to its end, found the disk is gone"),
                problems(CsvSource.stream("t.csv", new SequenceInputStream(head, breaking))));
    }

    @Test
    void a_hundred_megabytes_in_one_line_are_refused_early() {
        Endless line = new Endless(at -> 'a');
        assertEquals(
                List.of("t.csv:2: expected a line of at most 1,000,000 characters, found a longer one"),
                problems(line.after("item,amount\n")));
        assertTrue(line.read < MOST_READ, () -> "read " + line.read);
        Endless commas = new Endless(at -> ',');
        assertEquals(1, problems(commas.after("item,amount\n")).size());
        assertTrue(commas.read < MOST_READ, () -> "read " + commas.read);
        Endless header = new Endless(at -> 'a');
        assertEquals(
                List.of("t.csv:1: expected a line of at most 1,000,000 characters, found a longer one"),
                problems(header.after("")));
        Endless comment = new Endless(at -> '#');
        assertEquals(1, problems(comment.after("")).size());
        assertTrue(comment.read < MOST_READ, () -> "read " + comment.read);
    }

    @Test
    void a_hundred_megabytes_after_an_open_quote_are_refused_early() {
        Endless quoted = new Endless(at -> at == 0 ? '"' : at % 80 == 0 ? '\n' : 'a');
        List<String> problems = problems(quoted.after("item,amount\n"));
        assertEquals(1, problems.size());
        assertTrue(
                problems.get(0)
                        .endsWith("expected a row of at most 4,000,000 characters, found one that goes on here;"
                                + " a quote may be left open"),
                problems.get(0));
        assertTrue(quoted.read < MOST_READ, () -> "read " + quoted.read);
    }

    @Test
    void a_table_of_a_hundred_thousand_columns_is_refused() {
        StringBuilder heading = new StringBuilder("item,amount");
        for (int i = 0; i < 100_000; i++) {
            heading.append(",c").append(i);
        }
        assertEquals(
                List.of("t.csv:1: expected at most 1000 columns, found 100002 columns"), problems(heading.toString()));
    }

    @Test
    void long_tables_are_read_row_by_row() {
        long rows = 300_000;
        byte[] row = "malt,25 kg\n".getBytes(StandardCharsets.UTF_8);
        Endless many = new Endless(rows * row.length, at -> row[(int) (at % row.length)]);
        long count = 0;
        try (CsvTable table = CsvTable.open(many.after("item,amount\n"), COLUMNS)) {
            for (CsvRow each : table) {
                count += each.need("amount", Cells.KILOGRAMS).isPresent() ? 1 : 0;
            }
        }
        assertEquals(rows, count);
    }

    @Test
    void a_table_full_of_faults_keeps_no_more_than_a_person_can_read() {
        StringBuilder text = new StringBuilder("item,amount\n");
        int faults = ProblemList.MOST_KEPT + 7;
        for (int i = 0; i < faults; i++) {
            text.append("malt,heavy\n");
        }
        List<String> problems = problems(text.toString());
        assertEquals(ProblemList.MOST_KEPT + 1, problems.size());
        assertEquals(
                "t.csv: expected no problems, found 7 more that are not listed", problems.get(problems.size() - 1));
    }

    @Test
    void bytes_outside_utf_8_are_found_wherever_they_stand() {
        byte[] cut = {'m', (byte) 0xE2, (byte) 0x82};
        assertEquals(
                List.of(
                        "t.csv:2: item: expected text saved as UTF-8, found 'm\uFFFD'",
                        "t.csv:2: amount: expected a mass such as 25 kg, found a row that ends after 1 cell"),
                problems(CsvSource.stream(
                        "t.csv", new SequenceInputStream(bytes("item,amount\n"), new ByteArrayInputStream(cut)))));
        // A pound sign of Windows-1252 on the edge of the reading buffer, behind a comment of just that length.
        for (int length = 8170; length < 8200; length++) {
            byte[] edge = ("#" + "x".repeat(length) + "\nitem,amount\nmalt,£1\n").getBytes(StandardCharsets.ISO_8859_1);
            assertEquals(
                    List.of("t.csv:3: amount: expected text saved as UTF-8, found '\uFFFD1'"),
                    problems(CsvSource.stream("t.csv", new ByteArrayInputStream(edge))));
        }
    }

    @Test
    void no_bytes_at_all_break_the_reading() {
        long seed = Long.getLong("seed", 19790405);
        Random random = new Random(seed);
        String alphabet = "item,amount\n\r\"';#\t \0£é=-+@0123456789kg%/|\uFEFF";
        for (int i = 0; i < 3000; i++) {
            int shape = i % 3;
            byte[] noise = new byte[random.nextInt(300)];
            random.nextBytes(noise);
            StringBuilder words = new StringBuilder(shape == 1 ? "item,amount\n" : "");
            for (int k = 0; k < noise.length; k++) {
                words.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            byte[] content = shape == 0 ? noise : words.toString().getBytes(StandardCharsets.UTF_8);
            int number = i;
            List<String> problems = problems(CsvSource.stream("t.csv", new ByteArrayInputStream(content)));
            assertTrue(
                    problems.stream().allMatch(text -> text.startsWith("t.csv") && text.indexOf('\n') < 0),
                    () -> "-Dseed=" + seed + ", case " + number + ": " + problems);
        }
    }

    private static List<String> rows(String text) {
        List<String> rows = new ArrayList<>();
        try (CsvTable table = CsvTable.open(CsvSource.text("t.csv", text), COLUMNS)) {
            for (CsvRow row : table) {
                String item = row.need("item", CellKind.TEXT).orElse("?");
                rows.add(row.line() + " " + item + " "
                        + row.needFigure("amount", Cells.KILOGRAMS).orElse(Double.NaN));
            }
            return table.loaded(() -> rows).orThrow();
        }
    }

    private static List<String> problems(String text) {
        return problems(CsvSource.text("t.csv", text));
    }

    private static List<String> problems(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            for (CsvRow row : table) {
                row.need("item", CellKind.TEXT);
                row.need("amount", Cells.KILOGRAMS);
            }
            return table.loaded(() -> "").problems().stream()
                    .map(TableProblem::text)
                    .toList();
        }
    }

    private static InputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Bytes that are made as they are read, a hundred megabytes unless another number is given. */
    private static final class Endless extends InputStream {
        private final long length;
        private final LongUnaryOperator byteAt;
        private long read;

        Endless(LongUnaryOperator byteAt) {
            this(HUNDRED_MB, byteAt);
        }

        Endless(long length, LongUnaryOperator byteAt) {
            this.length = length;
            this.byteAt = byteAt;
        }

        CsvSource after(String head) {
            return CsvSource.stream("t.csv", new SequenceInputStream(bytes(head), this));
        }

        @Override
        public int read() {
            return read == length ? -1 : (int) byteAt.applyAsLong(read++);
        }

        @Override
        public int read(byte[] target, int offset, int wanted) {
            int count = (int) Math.min(wanted, length - read);
            if (count == 0 && wanted > 0) {
                return -1;
            }
            for (int i = 0; i < count; i++) {
                target[offset + i] = (byte) byteAt.applyAsLong(read++);
            }
            return count;
        }
    }
}
