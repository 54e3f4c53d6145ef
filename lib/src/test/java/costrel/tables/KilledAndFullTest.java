package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Children;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A table is there whole, as it was or as it is to be, whatever becomes of the program or the disk. */
@Timeout(120)
@DisabledOnOs(OS.WINDOWS)
class KilledAndFullTest {

    private static final int KILLS = 12;
    private static final int ROWS = 20_000;

    @TempDir
    private Path folder;

    static final class WritesForEver {
        private WritesForEver() {}

        /** Writes one text after the other to the file named. */
        public static void main(String[] args) {
            String even = table("even");
            String odd = table("odd");
            for (int i = 0; ; i++) {
                CsvOut.write(Path.of(args[0]), i % 2 == 0 ? even : odd);
                System.out.println(i);
            }
        }
    }

    static final class WritesOnce {
        private WritesOnce() {}

        /** Writes to the file named and prints how that ended. */
        public static void main(String[] args) {
            try {
                CsvOut.write(Path.of(args[0]), table("new"));
                System.out.println("written");
            } catch (UncheckedIOException e) {
                System.out.println("refused");
            }
        }
    }

    private static String table(String word) {
        return "item,amount\r\n" + (word + ",25 kg\r\n").repeat(ROWS) + "# whole\r\n";
    }

    @Test
    void whoever_is_killed_while_writing_leaves_the_old_file_or_the_new_one() throws Exception {
        long seed = Long.getLong("seed", 19361030);
        Random random = new Random(seed);
        Path file = folder.resolve("stock.csv");
        Files.writeString(file, table("even"));
        for (int i = 0; i < KILLS; i++) {
            Process writer = Children.start(List.of(), WritesForEver.class, file.toString());
            assertTrue(writer.getInputStream().read() >= 0, "it writes");
            Thread.sleep(random.nextInt(60));
            writer.destroyForcibly();
            assertTrue(writer.waitFor(30, TimeUnit.SECONDS));
            String left = Files.readString(file);
            assertTrue(left.equals(table("even")) || left.equals(table("odd")), "-Dseed=" + seed + " after " + i);
        }
        // What was begun and not ended lies beside it, and is neither read as a table nor in the way of the next.
        CsvOut.write(file, table("odd"));
        assertEquals(table("odd"), Files.readString(file));
        try (Stream<Path> tables = Files.list(folder)) {
            assertEquals(
                    List.of("stock.csv"),
                    tables.map(path -> path.getFileName().toString())
                            .filter(name -> name.endsWith(".csv"))
                            .toList());
        }
    }

    @Test
    void a_disk_that_fills_up_half_way_leaves_the_old_file_and_no_part_of_the_new() throws Exception {
        Path file = Files.writeString(folder.resolve("stock.csv"), "old");
        // No more than 8 blocks, of 512 or 1024 bytes, go into one file: the write breaks off as on a full disk.
        List<String> small = List.of("/bin/sh", "-c", "ulimit -f 8; exec \"$@\"", "sh");
        assertEquals(List.of("refused"), Children.run(small, WritesOnce.class, file.toString()));
        assertEquals("old", Files.readString(file));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(file), left.toList());
        }
        assertEquals(List.of("written"), Children.run(List.of(), WritesOnce.class, file.toString()));
        assertEquals(table("new"), Files.readString(file));
    }

    @Test
    void a_pipe_is_not_written_to_and_a_link_that_leads_nowhere_is_not_replaced() throws Exception {
        Path pipe = folder.resolve("pipe.csv");
        assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), Path.of("link.csv"));
        for (Path file : List.of(pipe, link)) {
            UncheckedIOException refusal = assertThrows(UncheckedIOException.class, () -> CsvOut.write(file, "x"));
            assertTrue(String.valueOf(refusal.getMessage()).contains("expected a file"), refusal.getMessage());
        }
        assertTrue(Files.isSymbolicLink(link));
        assertFalse(Files.isRegularFile(pipe));
    }

    @Test
    void a_table_that_is_cut_short_or_added_to_while_it_is_read_is_not_taken_for_whole() throws IOException {
        String whole = "item,amount\n" + "malt,25 kg\n".repeat(ROWS);
        Columns columns = Columns.required("item", "amount");
        for (boolean cut : new boolean[] {true, false}) {
            Path file = Files.writeString(folder.resolve("stock.csv"), whole);
            try (CsvTable table = CsvTable.open(CsvSource.file(file), columns)) {
                var rows = table.iterator();
                rows.next();
                try (OutputStream out = cut
                        ? Files.newOutputStream(file, StandardOpenOption.TRUNCATE_EXISTING)
                        : Files.newOutputStream(file, StandardOpenOption.APPEND)) {
                    out.write("malt,25 kg\n".getBytes(StandardCharsets.UTF_8));
                }
                while (rows.hasNext()) {
                    rows.next();
                }
                Loaded<String> loaded = table.loaded(() -> "all of it");
                assertFalse(loaded.sound());
                assertTrue(
                        loaded.problems()
                                .get(0)
                                .text()
                                .contains("a file that stays as it is while it is read, found one that was changed"),
                        loaded.problems().toString());
            }
        }
    }

    @Test
    void a_table_that_is_removed_while_it_is_read_is_read_to_its_end() throws IOException {
        Path file = Files.writeString(folder.resolve("stock.csv"), "item,amount\n" + "malt,25 kg\n".repeat(ROWS));
        try (CsvTable table = CsvTable.open(CsvSource.file(file), Columns.required("item", "amount"))) {
            Files.delete(file);
            int rows = 0;
            for (CsvRow row : table) {
                rows += row.cell("item").equals("malt") ? 1 : 0;
            }
            int read = rows;
            assertEquals(ROWS, table.loaded(() -> read).orThrow());
        }
    }
}
