package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ConsoleTest {

    private static final String END = System.lineSeparator();

    @Test
    void the_version_is_the_one_the_build_gave() {
        assertTrue(Version.read().matches("\\d+\\.\\d+\\.\\d+"), Version.read());
        assertEquals(new Streams.Run(0, "Costrel " + Version.read() + END, ""), Streams.run("", "--version"));
    }

    @Test
    void the_help_names_every_option_and_exit_code_and_says_that_nothing_is_fenced_in() {
        Streams.Run run = Streams.run("", "--help");
        assertEquals(0, run.code());
        assertEquals("", run.err());
        for (String said : List.of(
                "-e, --evaluate=EXPRESSION",
                "--plain",
                "-h, --help",
                "-V, --version",
                "0: done; 1: done, but with findings that need a person; 2: wrong\ninput; 3: failure",
                "nothing fences it in",
                "are data and are never\nexecuted",
                "COSTREL_STATE",
                "NO_COLOR",
                "Ctrl-C")) {
            assertTrue(run.out().replace("\r", "").contains(said), said + " in\n" + run.out());
        }
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    }

    @Test
    void an_expression_gives_its_answer_on_standard_output_and_nothing_else() {
        assertEquals(new Streams.Run(0, "180" + END, ""), Streams.run("", "-e", "5 * 36"));
        assertEquals(new Streams.Run(0, "180" + END, ""), Streams.run("", "-e", "barrels = 5", "-e", "barrels * 36"));
        assertEquals(new Streams.Run(0, "", ""), Streams.run("", "-e", ""));
    }

    @Test
    void a_fault_in_an_expression_goes_to_the_error_stream_and_stops() {
        Streams.Run run = Streams.run("", "-e", "1", "-e", "gallons(5)", "-e", "3");
        assertEquals(Console.WRONG_INPUT, run.code());
        assertEquals("1" + END, run.out());
        assertEquals("'gallons()' isn't known\n  gallons(5)\n  ^" + END, run.err());
    }

    @Test
    void the_exit_code_tells_wrong_input_from_failure() {
        assertEquals(0, Streams.run("", "-e", "1 + 1").code());
        assertEquals(2, Streams.run("", "-e", "1 +").code());
        assertEquals(
                2,
                Streams.run("", "-e", "throw new IllegalArgumentException(\"too much\")")
                        .code());
        assertEquals(2, Streams.run("", "-e", "LocalDate.parse(\"2026-02-30\")").code());
        assertEquals(
                3,
                Streams.run("", "-e", "throw new IllegalStateException(\"broken\")")
                        .code());
        assertEquals(3, Streams.run("", "-e", "1 / 0").code());
        assertEquals(2, Streams.run("1 +\n").code());
        assertEquals(3, Streams.run("1 / 0\nbarels\n1\n").code());
    }

    @Test
    void findings_that_need_a_person_give_an_exit_code_of_their_own() {
        Rendering rendering = new Rendering(List.of(new Rendering.Kind<>(
                Witness.Findings.class,
                Witness.Findings::text,
                found -> !found.text().isEmpty())));
        String full = "new costrel.repl.Witness.Findings(\"mash tun full\")";
        String none = "new costrel.repl.Witness.Findings(\"\")";
        assertEquals(new Streams.Run(1, "mash tun full" + END, ""), Streams.run("", rendering, "-e", full));
        assertEquals(1, Streams.run(full + "\n", rendering).code());
        assertEquals(
                1,
                Streams.run("", rendering, "-e", "List.of(" + none + ", " + full + ")")
                        .code());
        assertEquals(0, Streams.run("", rendering, "-e", none).code());
        assertEquals(2, Streams.run("", rendering, "-e", full, "-e", "barels").code());
    }

    @Test
    void a_command_line_that_makes_no_sense_is_wrong_input(@TempDir Path folder) throws IOException {
        String file =
                Files.writeString(folder.resolve("prices.csv"), "item,price\n").toString();
        assertEquals(
                new Streams.Run(2, "", "costrel: brewery folder: expected a folder, found '" + file + "'" + END),
                Streams.run("", file));
        assertEquals(
                new Streams.Run(
                        2, "", "costrel: brewery folder: expected one, found a and b (scripts end in .jsh)" + END),
                Streams.run("", "a", "b"));
        Streams.Run unknown = Streams.run("", "--colour");
        assertEquals(2, unknown.code());
        assertTrue(unknown.err().contains("'--colour'") && unknown.err().contains("--help"), unknown.err());
        Streams.Run letters = Streams.run("", "-e", "\"\uFFFD5\"");
        assertEquals(2, letters.code());
        assertTrue(letters.err().contains("LC_ALL=C.UTF-8"), letters.err());
    }

    @Test
    void the_folder_named_is_the_one_that_is_open(@TempDir Path folder) {
        assertEquals(
                new Streams.Run(0, folder.toAbsolutePath() + END, ""),
                Streams.run("", folder.toString(), "-e", "folder()"));
    }

    @Test
    void scripts_run_in_order_and_leave_their_names_to_the_expressions(@TempDir Path folder) throws IOException {
        String first = write(folder, "first.jsh", "barrels = 5\n");
        // As an editor on Windows saves it, and a chain of calls over two lines.
        String second =
                write(folder, "second.jsh", "\uFEFFgallons = barrels * 36\r\nList.of(gallons)\r\n  .get(0)\r\n");
        assertEquals(
                new Streams.Run(0, "180" + END + "1440" + END, ""),
                Streams.run("", first, second, "-e", "gallons * 8"));
    }

    @Test
    void a_fault_in_a_script_names_file_and_line_and_stops(@TempDir Path folder) throws IOException {
        String first = write(folder, "first.jsh", "// a remark\nbarrels = 5\n\nbarels * 36\n\"not reached\"\n");
        String second = write(folder, "second.jsh", "\"not reached\"\n");
        assertEquals(
                new Streams.Run(2, "", first + ":4: 'barels' isn't known; nearest: barrels\n  barels * 36\n  ^" + END),
                Streams.run("", first, second));

        String running =
                write(folder, "running.jsh", "for (int i = 1; i >= 0; i--) {\n  int half = 1;\n  half = 1 / i;\n}\n");
        assertEquals(new Streams.Run(3, "", running + ":3: division by nought" + END), Streams.run("", running));

        String open = write(folder, "open.jsh", "1\nList.of(\n");
        assertEquals(
                new Streams.Run(2, "1" + END, open + ":2: the input ends too early\n  List.of(\n          ^" + END),
                Streams.run("", open));
    }

    @Test
    void a_script_that_cannot_be_read_is_wrong_input(@TempDir Path folder) throws IOException {
        String missing = folder.resolve("missing.jsh").toString();
        assertEquals(
                new Streams.Run(2, "", "costrel: script: expected a file, found none at " + missing + END),
                Streams.run("", missing));
        Path latin = folder.resolve("latin.jsh");
        Files.write(latin, "\"£5\"".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(
                new Streams.Run(2, "", "costrel: " + latin + ": expected UTF-8 text, found bytes that are none" + END),
                Streams.run("", latin.toString()));
        Path directory = Files.createDirectory(folder.resolve("folder.jsh"));
        assertEquals(
                new Streams.Run(2, "", "costrel: script: expected a file, found a folder at " + directory + END),
                Streams.run("", directory.toString()));
    }

    @Test
    void without_a_terminal_there_is_no_prompt_and_no_echo_and_a_fault_names_its_line() {
        Streams.Run run = Streams.run("barrels = 5\nbarrels *\n  36\nbarels\n\"£\" + barrels\n");
        assertEquals("180" + END + "£5" + END, run.out());
        assertEquals("input:4: 'barels' isn't known; nearest: barrels\n  barels\n  ^" + END, run.err());
        assertEquals(2, run.code());
    }

    @Test
    void an_input_that_breaks_off_is_a_fault() {
        Streams.Run run = Streams.run("1\nList.of(");
        assertEquals("1" + END, run.out());
        assertEquals("input:2: the input ends too early\n  List.of(\n          ^" + END, run.err());
        assertEquals(2, run.code());
    }

    private static String write(Path folder, String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }
}
