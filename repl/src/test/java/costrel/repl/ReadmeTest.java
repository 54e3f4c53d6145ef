package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What README shows is run: the console's lines, the Java program and the commands. */
@Timeout(300)
final class ReadmeTest {

    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w*)\\n(.*?)^```$");
    private static final Pattern JAR = Pattern.compile("java -jar repl/target/costrel\\.jar(.*)$", Pattern.MULTILINE);

    private static List<String> blocks(String kind) throws IOException {
        List<String> blocks = new ArrayList<>();
        Matcher matcher =
                BLOCK.matcher(Files.readString(ROOT.resolve("README.md")).replace("\r", ""));
        while (matcher.find()) {
            if (matcher.group(1).equals(kind)) {
                blocks.add(matcher.group(2));
            }
        }
        assertFalse(blocks.isEmpty(), "README has no block of the kind '" + kind + "'");
        return blocks;
    }

    private static String lanternfold() {
        return ROOT.resolve("samples/lanternfold").toString();
    }

    @Test
    void every_line_for_the_console_gets_an_answer(@TempDir Path written) throws IOException {
        String folder = written.toString().replace('\\', '/');
        for (String shown : blocks("costrel")) {
            String block = shown.replaceAll("\"(\\w+\\.(?:html|pdf|svg|png))\"", "\"" + folder + "/$1\"");
            Streams.Run run = Streams.run(block, Sheets.rendering(), lanternfold(), "--plain");
            assertEquals("", run.err());
            assertEquals(Console.DONE, run.code());
            assertTrue(run.out().lines().count() > block.lines().count(), run.out());
        }
    }

    @Test
    void the_program_runs_as_it_stands() throws IOException {
        for (String block : blocks("java")) {
            String source = block.replace("\"samples/lanternfold\"", "\"" + lanternfold() + "\"");
            Streams.Run run = Streams.run(source, Sheets.rendering(), lanternfold(), "--plain");
            assertEquals("", run.err());
            assertEquals(Console.DONE, run.code());
        }
    }

    @Test
    void every_command_of_the_console_runs_with_its_arguments() throws IOException {
        int commands = 0;
        for (String block : blocks("")) {
            Matcher jar = JAR.matcher(block);
            while (jar.find()) {
                commands++;
                List<String> arguments = new ArrayList<>();
                Matcher word = Pattern.compile("'([^']*)'|(\\S+)").matcher(jar.group(1));
                while (word.find()) {
                    String text = word.group(1) != null ? word.group(1) : word.group(2);
                    arguments.add(
                            text.startsWith("samples/") ? ROOT.resolve(text).toString() : text);
                }
                Streams.Run run = Streams.run("", Sheets.rendering(), arguments.toArray(String[]::new));
                assertEquals("", run.err(), jar.group());
                assertEquals(Console.DONE, run.code(), jar.group());
            }
        }
        assertTrue(commands >= 3, "only " + commands + " commands found");
    }

    @Test
    void the_test_command_is_the_one_that_is_run_on_every_change() throws IOException {
        String check = Files.readString(ROOT.resolve(".ci/run"));
        assertTrue(
                blocks("").stream()
                        .map(String::strip)
                        .anyMatch(block -> block.startsWith("mvn ")
                                && !block.contains("&&")
                                && check.lines().anyMatch(block::equals)),
                "README's test command is not a line of .ci/run");
    }
}
