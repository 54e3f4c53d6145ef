package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import costrel.Children;
import costrel.tables.CsvOut;
import costrel.tables.Loaded;
import costrel.tables.TableProblem;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Folders in which something other than a sound file stands where a table is looked for. Each is a fault with its name. */
@Timeout(120)
@DisabledOnOs(OS.WINDOWS)
class FaultyDiskTest {

    private static final Duration LONGEST = Duration.ofSeconds(5);
    private static final long TWO_GIGABYTES = 1L << 31;

    @TempDir
    private Path folder;

    static final class Opens {
        private Opens() {}

        /** Opens the folder named and prints what is wrong with it. */
        public static void main(String[] args) {
            Brewery.load(Path.of(args[0])).problems().forEach(problem -> System.out.println(problem.text()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"brewery.csv", "prices-2026-spring.csv", "hop-lots.csv", "recipes/tallow-mild.csv"})
    void a_folder_a_pipe_or_a_loop_in_place_of_a_table_is_a_fault(String table) throws Exception {
        copySample();
        Path file = folder.resolve(table);
        Files.delete(file);
        Files.createDirectory(file);
        assertRefused(table + ": expected a CSV file, found a folder");
        Files.delete(file);
        assertEquals(0, new ProcessBuilder("mkfifo", file.toString()).start().waitFor());
        assertRefused(table + ": expected a CSV file, found something that is neither a file nor a folder");
        Files.delete(file);
        Files.createSymbolicLink(file, file.getFileName());
        assertRefused(table + ": expected a CSV file, found a link that leads nowhere");
        Files.delete(file);
        Files.createSymbolicLink(file, Path.of("gone.csv"));
        assertRefused(table + ": expected a CSV file, found a link that leads nowhere");
    }

    @Test
    void no_recipes_is_not_what_a_file_or_a_loop_in_place_of_their_folder_means() throws IOException {
        copySample();
        Files.move(folder.resolve("recipes"), folder.resolve("elsewhere"));
        Files.writeString(folder.resolve("recipes"), "x");
        assertRefused("recipes: expected a folder that can be read, found a file");
        Files.delete(folder.resolve("recipes"));
        Files.createSymbolicLink(folder.resolve("recipes"), Path.of("recipes"));
        assertRefused("recipes: expected a folder that can be read, found a link that leads to none");
        Files.delete(folder.resolve("recipes"));
        Files.createSymbolicLink(folder.resolve("recipes"), Path.of("elsewhere"));
        Loaded<Brewery> linked = Brewery.load(folder);
        assertTrue(linked.sound(), linked.problems().toString());
        assertEquals(6, linked.orThrow().recipes().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"brewery.csv", "stock.csv", "recipes/tallow-mild.csv"})
    void two_gigabytes_are_refused_before_they_are_read(String table) throws IOException {
        copySample();
        try (RandomAccessFile file = new RandomAccessFile(folder.resolve(table).toFile(), "rw")) {
            file.setLength(TWO_GIGABYTES);
        }
        assertRefused(table + ": expected a file of at most 1,000,000,000 bytes, found one of " + TWO_GIGABYTES);
    }

    @Test
    void what_may_not_be_read_is_a_fault_and_not_a_gap() throws Exception {
        List<String> without = Children.withoutPrivileges();
        assumeTrue(!without.isEmpty() || !System.getProperty("user.name").equals("root"));
        copySample();
        forbid("hop-lots.csv");
        forbid("recipes/tallow-mild.csv");
        assertTrue(
                opened(without)
                        .containsAll(
                                List.of(
                                        "hop-lots.csv: expected a CSV file that may be read, found one without permission to read it",
                                        "recipes/tallow-mild.csv: expected a CSV file that may be read, found one without permission to read it")),
                () -> "both are told");
        forbid("recipes");
        assertTrue(opened(without)
                .contains("recipes: expected a folder that can be read, found one without permission to read it"));
        forbid("");
        List<String> shut = opened(without);
        assertFalse(shut.isEmpty());
        assertTrue(shut.stream().allMatch(line -> line.contains("expected")), shut.toString());
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        Files.setPosixFilePermissions(folder.resolve("recipes"), PosixFilePermissions.fromString("rwx------"));
    }

    @Test
    void a_name_of_a_file_can_not_steer_a_terminal_or_make_up_a_line() throws IOException {
        copySample();
        Files.writeString(folder.resolve("prices\u001b[2J\nbrewery.csv: all is well\u202e.csv"), "item\nx\n");
        List<TableProblem> problems = Brewery.load(folder).problems();
        assertFalse(problems.isEmpty());
        for (TableProblem problem : problems) {
            assertTrue(
                    problem.text().chars().noneMatch(c -> Character.isISOControl(c) || c == '\u202e'), problem.text());
        }
    }

    @Test
    void a_folder_is_read_from_before_or_from_after_a_change_and_never_from_both() throws Exception {
        copySample();
        Path malt = folder.resolve("malt-lots.csv");
        Path settings = folder.resolve("brewery.csv");
        String before = Files.readString(settings);
        String after = before.replace("Lanternfold", "Lanternfell");
        String lots = Files.readString(malt);
        AtomicBoolean over = new AtomicBoolean();
        Thread writer = new Thread(() -> {
            for (int i = 0; !over.get(); i++) {
                CsvOut.write(settings, i % 2 == 0 ? after : before);
                CsvOut.write(malt, i % 2 == 0 ? lots + "# after\r\n" : lots);
                pause(i % 7);
            }
        });
        writer.start();
        int sound = 0;
        try {
            for (int i = 0; i < 30; i++) {
                Loaded<Brewery> loaded = Brewery.load(folder);
                if (loaded.sound()) {
                    sound++;
                } else {
                    for (TableProblem problem : loaded.problems()) {
                        assertTrue(problem.text().contains("that stays as it is while"), problem.text());
                    }
                }
            }
        } finally {
            over.set(true);
            writer.join();
        }
        assertTrue(sound < 30, "the writer was too slow to be met");
        assertTrue(Brewery.load(folder).sound());
    }

    private static void pause(int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void forbid(String file) throws IOException {
        Files.setPosixFilePermissions(folder.resolve(file), PosixFilePermissions.fromString("---------"));
    }

    private List<String> opened(List<String> under) throws IOException, InterruptedException {
        return Children.run(under, Opens.class, folder.toString());
    }

    private void assertRefused(String text) {
        List<String> told = assertTimeoutPreemptively(
                LONGEST,
                () -> Brewery.load(folder).problems().stream()
                        .map(TableProblem::text)
                        .toList());
        assertTrue(told.contains(text), () -> text + "\nis not in\n" + String.join("\n", told));
    }

    private void copySample() throws IOException {
        try (Stream<Path> files = Files.walk(LanternfoldTest.FOLDER)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy =
                        folder.resolve(LanternfoldTest.FOLDER.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
    }
}
