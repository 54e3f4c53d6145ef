package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.recipe.Names;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Sessions that are saved and run again, and folders that change while they are open. */
@Timeout(120)
final class KeepingTest {

    @TempDir
    private Path scratch = Path.of("");

    private Path brewery() throws IOException {
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

    private static Streams.Run run(String input, Path folder, String... more) {
        String[] args =
                Stream.concat(Stream.of(folder.toString()), Stream.of(more)).toArray(String[]::new);
        return Streams.run(input, Sheets.rendering(), args);
    }

    private static double sedimentOfAPin() {
        return Names.require("container", Desk.brewery().containers(), "pin")
                .sedimentL()
                .doubleValue();
    }

    @Test
    void a_saved_session_runs_again_and_gives_the_same_answers() throws IOException {
        Path script = scratch.resolve("monday.jsh");
        String typed = """
                day 2026-11-25
                b = brew("Wickgate Bitter").on("Main").length("30 brl");
                barels
                help
                wrong = 3
                undo
                int twice(int n) {
                  return 2 * n;
                }
                twice(21); 1 / 0
                b.gyle().og()
                save %s
                """.formatted(script);
        Streams.Run first = run(typed, WordsTest.LANTERNFOLD, "--plain");
        assertTrue(first.out().contains("5 lines saved as " + script), first.out() + first.err());
        String saved = Files.readString(script);
        for (String absent : List.of("barels", "help", "undo", "save", "1 / 0", "wrong")) {
            assertFalse(saved.contains(absent), saved);
        }
        Streams.Run again = run("", WordsTest.LANTERNFOLD, script.toString());
        assertEquals(new Streams.Run(0, again.out(), ""), again);
        List<String> answers = again.out().lines().toList();
        assertEquals(List.of("2026-11-25", "42"), answers.subList(0, 2));
        assertTrue(first.out().contains(answers.get(2)), answers.toString());
        try (Stream<Path> left = Files.list(scratch)) {
            assertEquals(List.of(script), left.toList());
        }
    }

    @Test
    void a_script_is_saved_over_one_that_was_saved_here_and_over_no_other_file() throws IOException {
        Path script = scratch.resolve("monday.jsh");
        String save = "save(\"" + script + "\")\n";
        assertEquals(0, run("1\n" + save + "2\n" + save, scratch, "--plain").code());
        assertTrue(Files.readString(script).endsWith("1\n2\n"), Files.readString(script));
        Path other = Files.writeString(scratch.resolve("other.jsh"), "// mine\n");
        Streams.Run refused = run("1\nsave(\"" + other + "\")\nsave(\"notes.txt\")\n", scratch, "--plain");
        assertEquals(Console.WRONG_INPUT, refused.code());
        assertTrue(refused.err().contains("expected a new name or a script saved here before"), refused.err());
        assertTrue(refused.err().contains("expected a name that ends in .jsh"), refused.err());
        assertEquals("// mine\n", Files.readString(other));
        assertTrue(run(save, scratch, "--plain").err().contains("expected a line that was answered"));
    }

    @Test
    void reload_takes_a_changed_file_in_and_names_what_still_holds_the_old() throws IOException {
        Path brewery = brewery();
        Path containers = brewery.resolve("containers.csv");
        String before = Files.readString(containers);
        Desk.open(brewery);
        assertEquals(List.of(), Desk.changedFiles());
        Desk.brewery();
        assertEquals(List.of(), Desk.changedFiles());
        Files.writeString(containers, before.replace("20.457405 L,20.46 L,0.9 L", "20.457405 L,20.46 L,0.75 L"));
        assertEquals(List.of("containers.csv"), Desk.changedFiles());
        assertEquals(List.of(), Desk.changedFiles());
        assertEquals(0.9, sedimentOfAPin());
        assertTrue(Desk.reload().startsWith("Lanternfold read again: 6 beers"));
        assertEquals(0.75, sedimentOfAPin());
    }

    @Test
    void a_reload_with_faults_keeps_what_was_read_and_tells_them() throws IOException {
        Path brewery = brewery();
        Path lots = brewery.resolve("hop-lots.csv");
        String script = """
                b = brew("Tallow Mild")
                five = 5
                Files.writeString(Path.of("%s"), Files.readString(Path.of("%s")).replace("7.6 %%", "much"));
                reload
                beers()
                """.formatted(lots, lots);
        Streams.Run run = run(script, brewery, "--plain");
        assertTrue(run.err().contains("input:4: what was read before stays, for the new has"), run.err());
        assertTrue(
                run.err().contains("\nhop-lots.csv:5: alpha: expected a share such as 7.9 %, found 'much'"), run.err());
        assertTrue(run.out().contains("Tallow Mild"), run.out());
        assertEquals(Console.WRONG_INPUT, run.code());
        Files.writeString(lots, Files.readString(lots).replace("much", "7.6 %"));
        Streams.Run mended = run("b = brew(\"Tallow Mild\")\nfive = 5\nreload\n", brewery, "--plain");
        assertTrue(
                mended.out().contains("\nb holds the figures from before; to have the new ones make it again"),
                mended.out());
    }
}
