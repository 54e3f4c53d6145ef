package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CsvOutTest {

    @Test
    void rows_are_written_by_rfc_4180() {
        // RFC 4180, section 2: CRLF after each row; quotes around commas, quotes and line breaks; a quote is doubled.
        assertEquals(
                "item,note\r\nmalt,\"pale, low\"\r\nhops,\"a \"\"fine\"\" lot\"\r\nyeast,\"two\nlines\"\r\n",
                new CsvOut()
                        .row("item", "note")
                        .row("malt", "pale, low")
                        .row("hops", "a \"fine\" lot")
                        .row("yeast", "two\nlines")
                        .text());
    }

    @Test
    void text_that_a_spreadsheet_would_run_is_guarded() {
        for (String formula :
                List.of("=1+1", "+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "\t=1", "-A1", "=\"x\"", "#note")) {
            assertEquals("'" + formula, cells(new CsvOut().row(formula).text()), () -> "guard before " + formula);
        }
    }

    @Test
    void numbers_are_no_formulas() {
        assertEquals("-3\r\n", new CsvOut().row("-3").text());
        assertEquals(
                "-0.25 %,+2,-1.5 kg,-4 °C\r\n",
                new CsvOut().row("-0.25 %", "+2", "-1.5 kg", "-4 °C").text());
        assertEquals(
                "-12.50,-0.000001,100000000,yes,2026-11-25,-7\r\n",
                new CsvOut()
                        .row(new BigDecimal("-12.50"), -1e-6, 1e8, true, LocalDate.of(2026, 11, 25), -7)
                        .text());
        assertThrows(IllegalArgumentException.class, () -> new CsvOut().row(Double.NaN));
    }

    @Test
    void what_was_guarded_reads_back_as_it_was() {
        for (String name : List.of("=1+1", "'=1", "''-x", "@home", "'plain", "-3", "'-3", "#4", "O'Hara", "-")) {
            String table = new CsvOut()
                    .row("beer", "container", "share")
                    .row("x", name, "100 %")
                    .text();
            Map<String, List<PackagingPlanReader.Planned>> plans =
                    PackagingPlanReader.read(CsvSource.text("t.csv", table)).orThrow();
            assertEquals(Map.of("x", List.of(new PackagingPlanReader.Planned(name, 1))), plans);
        }
    }

    @Test
    void a_file_is_replaced_whole(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("recipe.csv");
        CsvOut.write(file, "one\r\n");
        CsvOut.write(file, "two £\r\n");
        assertEquals("two £\r\n", Files.readString(file));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList(), "nothing is left beside the file");
        }
    }

    @Test
    void what_cannot_be_written_leaves_everything_as_it_was(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("nowhere").resolve("recipe.csv");
        assertThrows(UncheckedIOException.class, () -> CsvOut.write(file, "x"));
        Path taken = Files.createDirectory(folder.resolve("recipe.csv"));
        Files.writeString(taken.resolve("inside"), "kept");
        UncheckedIOException refusal = assertThrows(UncheckedIOException.class, () -> CsvOut.write(taken, "x"));
        assertTrue(String.valueOf(refusal.getMessage()).contains("found a folder"), refusal.getMessage());
        assertEquals("kept", Files.readString(taken.resolve("inside")));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(taken), files.toList());
        }
    }

    @Test
    void a_link_stays_a_link(@TempDir Path folder) throws IOException {
        Path real = Files.writeString(folder.resolve("real.csv"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), real);
        CsvOut.write(link, "new");
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("new", Files.readString(real));
    }

    /** The one cell of a one-cell table, without the quotes that its content may need. */
    private static String cells(String row) {
        String cell = row.substring(0, row.length() - 2);
        return cell.startsWith("\"") ? cell.substring(1, cell.length() - 1).replace("\"\"", "\"") : cell;
    }
}
