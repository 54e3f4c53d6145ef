package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.brewery.Brewery;
import costrel.repl.sheets.SheetFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Answers, sheets and scripts that can't be written: the disk is full, or whoever read them has left. */
@DisabledOnOs(OS.WINDOWS)
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
final class LostOutputTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path scratch = Path.of("");

    static final class WritesOnce {
        private WritesOnce() {}

        /** Writes a sheet and a script to the files named, and says of each what came of it. */
        public static void main(String[] args) {
            Brewery brewery = Brewery.open(WordsTest.LANTERNFOLD);
            tell(() -> SheetFile.write(brewery, args[0], DAY, Optional.empty()));
            tell(() -> SavedScript.write(args[1], lines("new"), WordsTest.LANTERNFOLD, Optional.of(DAY)));
        }

        private static void tell(Runnable writing) {
            try {
                writing.run();
                System.out.println("written");
            } catch (IllegalArgumentException | UncheckedIOException refusal) {
                System.out.println("refused: " + refusal.getMessage());
            }
        }
    }

    private static List<String> lines(String what) {
        return IntStream.range(0, 5_000).mapToObj(i -> "x" + i + " = " + what).toList();
    }

    private static String java(Class<?> main, String... args) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:-UsePerfData",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        command.addAll(List.of(args));
        return String.join(" ", command.stream().map(LostOutputTest::quoted).toList());
    }

    private static String quoted(String word) {
        return "'" + word.replace("'", "'\\''") + "'";
    }

    private Streams.Run shell(String line) throws IOException, InterruptedException {
        Path out = scratch.resolve("out");
        Path err = scratch.resolve("err");
        Process shell = new ProcessBuilder("/bin/sh", "-c", line)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
                .start();
        assertTrue(shell.waitFor(60, TimeUnit.SECONDS), line);
        return new Streams.Run(shell.exitValue(), Files.readString(out), Files.readString(err));
    }

    private String script() throws IOException {
        return Files.writeString(scratch.resolve("sums.jsh"), "1 + 1\n".repeat(20) + "barels\n")
                .toString();
    }

    /** {@code /dev/full} takes nothing, as a disk without room. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void answers_to_a_full_disk_are_a_failure_that_is_told() throws Exception {
        for (String[] asked : List.of(
                new String[] {"-e", "1 + 1"},
                new String[] {"--json", "-e", "1 + 1"},
                new String[] {script()},
                new String[] {"--help"},
                new String[] {"--version"})) {
            Streams.Run run = shell(java(Console.class, asked) + " > /dev/full");
            assertEquals(Console.FAILURE, run.code(), run.err());
            assertTrue(run.err().startsWith("costrel: output: can't be written: "), run.err());
            assertEquals(1, run.err().lines().count(), run.err());
        }
        Streams.Run piped = shell("echo '1 + 1' | " + java(Console.class) + " > /dev/full");
        assertEquals(Console.FAILURE, piped.code(), piped.err());
        assertTrue(piped.err().startsWith("costrel: output: can't be written: "), piped.err());
    }

    @Test
    void a_reader_that_has_enough_is_no_news_and_ends_the_script() throws Exception {
        String mark = quoted(scratch.resolve("code").toString());
        for (String[] asked : List.of(
                new String[] {"-e", "1 + 1", "-e", "Thread.sleep(500)", "-e", "2", "-e", "3", "-e", "barels"},
                new String[] {script()})) {
            Streams.Run run = shell("{ " + java(Console.class, asked) + "; echo $? > " + mark + "; } | head -n 1");
            assertEquals("2\n", run.out());
            assertEquals("", run.err());
        }
        Streams.Run gone = shell("{ sleep 1; echo 1; echo 2; echo 3; } | " + java(Console.class) + " | true");
        assertEquals("", gone.err());
    }

    @Test
    void a_disk_that_fills_up_half_way_leaves_the_old_sheet_and_the_old_script() throws Exception {
        Path sheet = scratch.resolve("prices.html");
        Path script = scratch.resolve("monday.jsh");
        SheetFile.write(Brewery.open(WordsTest.LANTERNFOLD), sheet.toString(), DAY.minusDays(1), Optional.empty());
        SavedScript.write(script.toString(), List.of("x = 1"), WordsTest.LANTERNFOLD, Optional.of(DAY));
        String oldSheet = Files.readString(sheet);
        String oldScript = Files.readString(script);
        // No more than 4 blocks, of 512 or 1024 bytes, go into one file: the write breaks off as on a full disk.
        String write = java(WritesOnce.class, sheet.toString(), script.toString());
        Streams.Run full = shell("ulimit -f 4; " + write);
        assertEquals(
                2,
                full.out().lines().filter(line -> line.startsWith("refused: ")).count(),
                full.out());
        for (String file : List.of("prices.html", "monday.jsh")) {
            assertTrue(full.out().contains(file), full.out());
        }
        assertEquals(oldSheet, Files.readString(sheet));
        assertEquals(oldScript, Files.readString(script));
        try (Stream<Path> left = Files.list(scratch)) {
            assertEquals(4, left.count(), "the two and what the process printed");
        }
        Streams.Run room = shell(write);
        assertEquals("written\nwritten\n", room.out());
        assertFalse(Files.readString(sheet).equals(oldSheet));
        assertFalse(Files.readString(script).equals(oldScript));
    }
}
