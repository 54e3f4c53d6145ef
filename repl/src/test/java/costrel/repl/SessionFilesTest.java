package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Plays every {@code sessions/*.session} at a terminal and through a pipe.
 *
 * <p>A session file is what the screen shows. Lines that begin with a prompt are typed; the others are printed. One that
 * begins with {@code "! "} is a fault or a note: through a pipe it goes to the error stream. Lines that begin with
 * {@code #} are for the reader. A file whose first line ends in "over Lanternfold" is played with that brewery open, as
 * users have it; a line {@code …} in it stands for any number of lines, {@code #.##} for a figure of two decimals, and gaps
 * of several blanks may be of any width: prices of the sample may move, and the figures are checked elsewhere.
 */
final class SessionFilesTest {

    private static final String ASIDE = "! ";
    private static final String ANY_LINES = "…";
    private static final Pattern OPEN = Pattern.compile("#(?:\\.#+)?| {2,}");

    /**
     * A session file.
     *
     * @param typed the lines that are typed
     * @param screen what the screen shows in the end
     * @param answers the lines that are answers
     * @param asides the lines that are faults or notes
     * @param brewery whether Lanternfold is open
     */
    private record Script(
            List<String> typed, List<String> screen, List<String> answers, List<String> asides, boolean brewery) {

        static Script of(Path file) throws IOException {
            List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
            Script script = new Script(
                    new ArrayList<>(),
                    new ArrayList<>(),
                    new ArrayList<>(),
                    new ArrayList<>(),
                    lines.get(0).endsWith(" over Lanternfold."));
            for (String line : lines) {
                if (line.startsWith("#")) {
                    continue;
                }
                if (line.startsWith(Prompt.FIRST) || line.startsWith(Prompt.FURTHER)) {
                    script.typed.add(line.substring(Prompt.FIRST.length()));
                    script.screen.add(line);
                } else if (line.startsWith(ASIDE)) {
                    script.screen.add(line.substring(ASIDE.length()));
                    script.asides.add(line.substring(ASIDE.length()).strip().replaceFirst("^(\\^|line \\d+:) ", ""));
                } else {
                    script.screen.add(line);
                    script.answers.add(line);
                }
            }
            return script;
        }

        Rendering rendering() {
            return brewery ? Sheets.rendering() : new Rendering(List.of());
        }

        String[] arguments() {
            return brewery ? new String[] {WordsTest.LANTERNFOLD.toString()} : new String[0];
        }

        String input() {
            return typed.stream().map(line -> line + "\n").collect(Collectors.joining());
        }
    }

    @TestFactory
    Stream<DynamicTest> a_session_at_a_terminal_shows_what_its_file_shows() throws Exception {
        return files().stream()
                .map(file -> dynamicTest(name(file), () -> {
                    Script script = Script.of(file);
                    assertShown(script.screen(), screen(script));
                }));
    }

    @TestFactory
    Stream<DynamicTest> a_session_through_a_pipe_gives_the_same_answers_and_nothing_else() throws Exception {
        return files().stream()
                .map(file -> dynamicTest(name(file), () -> {
                    Script script = Script.of(file);
                    Streams.Run run = Streams.run(script.input(), script.rendering(), script.arguments());
                    assertShown(script.answers(), run.out().replace("\r", "").stripTrailing());
                    for (String aside : script.asides()) {
                        assertTrue(run.err().contains(aside), () -> "expected " + aside + "\nin\n" + run.err());
                    }
                    assertEquals(script.asides().isEmpty(), run.err().isEmpty(), run.err());
                }));
    }

    @TestFactory
    Stream<DynamicTest> nothing_that_is_printed_shows_a_trace_or_a_class_of_ours() throws Exception {
        return files().stream()
                .map(file -> dynamicTest(name(file), () -> {
                    Script script = Script.of(file);
                    String shown = lines(script.answers()) + lines(script.asides());
                    for (String inside : List.of("costrel.", "jdk.", "java.", "REPL", "Exception", "Error", "\tat ")) {
                        assertFalse(shown.contains(inside), inside);
                    }
                }));
    }

    private static void assertShown(List<String> expected, String shown) {
        if (!expected.contains(ANY_LINES)) {
            assertEquals(String.join("\n", expected).stripTrailing(), shown);
            return;
        }
        String pattern = expected.stream().map(SessionFilesTest::pattern).collect(Collectors.joining());
        assertTrue((shown + "\n").matches(pattern), () -> String.join("\n", expected) + "\nexpected, found\n" + shown);
    }

    private static String pattern(String line) {
        if (line.equals(ANY_LINES)) {
            return "(?:[^\n]*\n)*?";
        }
        StringBuilder pattern = new StringBuilder();
        Matcher open = OPEN.matcher(line);
        int from = 0;
        while (open.find()) {
            pattern.append(Pattern.quote(line.substring(from, open.start())));
            int decimals = open.group().length() - 2;
            pattern.append(
                    open.group().startsWith(" ")
                            ? " {2,}"
                            : "-?\\d+" + (decimals > 0 ? "\\.\\d{" + decimals + "}" : ""));
            from = open.end();
        }
        return pattern + Pattern.quote(line.substring(from) + "\n");
    }

    private static String screen(Script script) throws IOException {
        String input = script.input();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Surroundings around = Streams.surroundings(
                "",
                new ByteArrayOutputStream(),
                new ByteArrayOutputStream(),
                Map.of("NO_COLOR", "1"),
                "",
                Optional.of(() -> Streams.terminal(
                        "dumb", new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), out)));
        assertEquals(Console.DONE, new Console(around, script.rendering()).run(script.arguments()));
        String shown = Streams.text(out);
        // The keys are heard before the console begins; its own screen begins with the first prompt.
        String own = shown.substring(shown.indexOf(Prompt.FIRST)).stripTrailing();
        String end = Prompt.FIRST.strip();
        assertTrue(own.endsWith("\n" + end), own);
        return own.substring(0, own.length() - end.length() - 1);
    }

    private static String lines(List<String> lines) {
        return lines.stream().map(line -> line + System.lineSeparator()).collect(Collectors.joining());
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static List<Path> files() throws IOException, URISyntaxException {
        URL folder = Objects.requireNonNull(SessionFilesTest.class.getResource("sessions"));
        try (Stream<Path> files = Files.list(Path.of(folder.toURI()))) {
            List<Path> sessions = files.filter(file -> file.toString().endsWith(".session"))
                    .sorted()
                    .toList();
            assertFalse(sessions.isEmpty());
            return sessions;
        }
    }
}
