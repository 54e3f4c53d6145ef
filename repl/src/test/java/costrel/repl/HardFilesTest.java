package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.brewery.Brewery;
import costrel.repl.sheets.SheetFile;
import costrel.tables.CsvOut;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The console's own files where the disk is not as hoped, and where it is killed. */
@DisabledOnOs(OS.WINDOWS)
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
final class HardFilesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final int KILLS = 10;

    @TempDir
    private Path scratch = Path.of("");

    static final class WritesForEver {
        private WritesForEver() {}

        /** Writes a sheet and a script, over and over, to the files named. */
        public static void main(String[] args) {
            Brewery brewery = Brewery.open(WordsTest.LANTERNFOLD);
            for (int i = 0; ; i++) {
                SheetFile.write(brewery, args[0], DAY.plusDays(i % 2), Optional.empty());
                SavedScript.write(args[1], lines(i % 2), WordsTest.LANTERNFOLD, Optional.of(DAY));
                System.out.println(i);
            }
        }
    }

    private static List<String> lines(int which) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < 5_000; i++) {
            lines.add("x" + i + " = " + which);
        }
        return lines;
    }

    private void pipe(Path path) throws IOException, InterruptedException {
        assertEquals(0, new ProcessBuilder("mkfifo", path.toString()).start().waitFor());
    }

    private static void sparse(Path path) throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "rw")) {
            file.setLength(1L << 31);
        }
    }

    @Test
    void whoever_is_killed_while_writing_leaves_a_whole_sheet_and_a_whole_script() throws Exception {
        long seed = Long.getLong("seed", 19140415);
        Random random = new Random(seed);
        Path sheet = scratch.resolve("prices.html");
        Path script = scratch.resolve("monday.jsh");
        Brewery brewery = Brewery.open(WordsTest.LANTERNFOLD);
        List<String> sheets = new ArrayList<>();
        List<String> scripts = new ArrayList<>();
        for (int which = 0; which < 2; which++) {
            SheetFile.write(brewery, sheet.toString(), DAY.plusDays(which), Optional.empty());
            sheets.add(Files.readString(sheet));
            SavedScript.write(script.toString(), lines(which), WordsTest.LANTERNFOLD, Optional.of(DAY));
            scripts.add(Files.readString(script));
        }
        assertEquals(2, scripts.stream().distinct().count());
        for (int i = 0; i < KILLS; i++) {
            Process writer = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path"),
                            WritesForEver.class.getName(),
                            sheet.toString(),
                            script.toString())
                    .redirectErrorStream(true)
                    .start();
            assertTrue(Character.isDigit(writer.getInputStream().read()), "it writes");
            Thread.sleep(random.nextInt(80));
            writer.destroyForcibly();
            assertTrue(writer.waitFor(30, TimeUnit.SECONDS));
            assertTrue(sheets.contains(Files.readString(sheet)), "-Dseed=" + seed + " sheet after " + i);
            assertTrue(scripts.contains(Files.readString(script)), "-Dseed=" + seed + " script after " + i);
        }
    }

    @Test
    void a_pipe_a_loop_and_a_folder_are_no_scripts_to_save_over() throws Exception {
        Path pipe = scratch.resolve("pipe.jsh");
        pipe(pipe);
        Path loop = Files.createSymbolicLink(scratch.resolve("loop.jsh"), Path.of("loop.jsh"));
        Path inner = Files.createDirectory(scratch.resolve("inner.jsh"));
        for (Path file : List.of(pipe, loop, inner)) {
            IllegalArgumentException refusal = assertThrows(
                    IllegalArgumentException.class,
                    () -> SavedScript.write(file.toString(), lines(1), scratch, Optional.empty()));
            assertTrue(String.valueOf(refusal.getMessage()).contains("expected a new name"), refusal.getMessage());
        }
        assertTrue(Files.isSymbolicLink(loop));
    }

    @Test
    void a_pipe_a_loop_and_two_gigabytes_are_no_scripts_to_run() throws Exception {
        Path pipe = scratch.resolve("pipe.jsh");
        pipe(pipe);
        Path loop = Files.createSymbolicLink(scratch.resolve("loop.jsh"), Path.of("loop.jsh"));
        Path large = scratch.resolve("large.jsh");
        sparse(large);
        for (Path file : List.of(pipe, loop, large)) {
            Streams.Run run = Streams.run("", file.toString());
            assertEquals(Console.WRONG_INPUT, run.code());
            assertTrue(run.err().contains("expected a"), run.err());
        }
    }

    @Test
    void a_history_that_is_a_pipe_or_too_large_is_not_read() throws Exception {
        Path pipe = Files.createDirectory(scratch.resolve("pipe"));
        pipe(pipe.resolve("history"));
        assertEquals(Optional.empty(), State.history(pipe));
        Path large = Files.createDirectory(scratch.resolve("large"));
        sparse(large.resolve("history"));
        assertEquals(Optional.of(large.resolve("history")), State.history(large));
        assertTrue(Files.exists(large.resolve("history-unreadable")));
    }

    @Test
    void a_sheet_is_written_where_it_is_meant_and_nowhere_else() throws Exception {
        Brewery brewery = Brewery.open(WordsTest.LANTERNFOLD);
        Path in = Files.createDirectory(scratch.resolve("in"));
        Path outside = Files.writeString(scratch.resolve("outside.html"), "mine");
        Path link = Files.createSymbolicLink(in.resolve("link.html"), outside);
        Path gone = Files.createSymbolicLink(in.resolve("gone.html"), scratch.resolve("new.html"));
        Path pipe = in.resolve("pipe.html");
        pipe(pipe);
        for (Path file : List.of(link, gone, pipe)) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> SheetFile.write(brewery, file.toString(), DAY, Optional.empty()));
        }
        String hostile = in.resolve("a\u202e\u001b[2Jb.html").toString();
        SheetFile.write(brewery, hostile, DAY, Optional.empty());
        assertEquals("mine", Files.readString(outside));
        assertFalse(Files.exists(scratch.resolve("new.html")));
        try (Stream<Path> files = Files.list(in)) {
            assertEquals(4, files.count());
        }
    }

    @Test
    void names_of_beers_with_paths_in_them_lead_nowhere() throws IOException {
        Path brewery = copy();
        Path file = brewery.resolve("recipes/tallow-mild.csv");
        for (Path table : List.of(
                file,
                brewery.resolve("packaging-plans.csv"),
                brewery.resolve("brewing-plan.csv"),
                brewery.resolve("list-prices.csv"))) {
            Files.writeString(table, Files.readString(table).replace("Tallow Mild", "../../\u202eout/Mild"));
        }
        Path sheet = scratch.resolve("mild.html");
        Streams.Run run = Streams.run(
                "",
                Sheets.rendering(),
                brewery.toString(),
                "-e",
                "sheet(brew(\"../../\u202eout/Mild\").on(\"Main\").day(\"2026-11-25\"), \"" + sheet + "\")");
        assertEquals(Console.DONE, run.code(), run.err());
        assertFalse(run.out().contains("\u202e"), run.out());
        try (Stream<Path> files = Files.list(scratch)) {
            assertEquals(List.of(brewery, sheet), files.sorted().toList());
        }
    }

    @Test
    void whoever_reads_while_the_folder_is_read_again_sees_the_old_or_the_new() throws Exception {
        Path brewery = copy();
        Path settings = brewery.resolve("brewery.csv");
        String before = Files.readString(settings);
        Desk.open(brewery);
        Desk.brewery();
        AtomicBoolean over = new AtomicBoolean();
        ExecutorService threads = Executors.newFixedThreadPool(8);
        List<Future<Integer>> readers = new ArrayList<>();
        try {
            for (int i = 0; i < 8; i++) {
                readers.add(threads.submit(() -> {
                    int read = 0;
                    while (!over.get() || read == 0) {
                        Brewery now = Desk.brewery();
                        assertTrue(List.of("Lanternfold", "Lanternfell").contains(now.name()), now.name());
                        assertEquals(6, now.recipes().size());
                        assertFalse(
                                Desk.larder().names(Calls.Kind.BEER, List.of()).isEmpty());
                        read++;
                    }
                    return read;
                }));
            }
            for (int i = 0; i < 10; i++) {
                CsvOut.write(settings, i % 2 == 0 ? before.replace("Lanternfold", "Lanternfell") : before);
                assertTrue(Desk.reload().contains(i % 2 == 0 ? "Lanternfell" : "Lanternfold"));
            }
            over.set(true);
            for (Future<Integer> reader : readers) {
                assertTrue(reader.get(30, TimeUnit.SECONDS) > 0);
            }
        } finally {
            over.set(true);
            threads.shutdownNow();
        }
    }

    private Path copy() throws IOException {
        Path copy = Files.createDirectories(scratch.resolve("brewery"));
        try (Stream<Path> files = Files.walk(WordsTest.LANTERNFOLD)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = copy.resolve(WordsTest.LANTERNFOLD.relativize(file).toString());
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
            }
        }
        return copy;
    }
}
