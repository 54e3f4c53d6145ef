package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Any bytes as input at the console, evaluated, and Tab pressed behind it. The console takes any Java, so that what could reach a file,
 * a thread or another program is left out, and loops, whose length is the user's own; the folder that is open is a copy.
 */
final class EvaluatedFuzzTest {

    private static final int INPUTS_OF_A_SESSION = 500;
    private static final int LONGEST = 300;
    private static final int MOST_INSTRUCTIONS = 5;

    private static final Pattern LEFT_OUT = Pattern.compile(
            "(?i)file|delete|exit|halt|exec|thread|class|sleep|wait|load|write|process|system|runtime|repeat|\\\\u"
                    + "|\\b(?:new|import|package|for|while|do|null|save|sheet|harvest|cover|risk|range|tour|path"
                    + "|java|javax|jdk|sun|com|org|costrel)\\b");
    private static final Pattern TEXTS = Pattern.compile("\"[^\"\\\\\n]*\"");
    private static final Pattern TYPES = Pattern.compile("\\b\\p{Lu}\\w*");
    private static final List<String> KNOWN_TYPES =
            List.of("List", "Map", "Math", "String", "Integer", "Double", "Cask");

    /** Faults of the input that Java itself finds only when it runs. */
    private static final Pattern OWN_FAULT =
            Pattern.compile("(?s)division by nought|this calls itself without end|expected a place from .*|"
                    + "a thing of one kind was taken for a thing of another");

    @TempDir
    private static Path folder = Path.of("");

    private static Optional<Session> session = Optional.empty();
    private static int inputs;

    @BeforeAll
    static void open() throws IOException {
        try (Stream<Path> files = Files.walk(WordsTest.LANTERNFOLD)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = folder.resolve(WordsTest.LANTERNFOLD.relativize(file).toString());
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
            }
        }
        Desk.open(folder);
        begin();
        ConsoleLines.all()
                .filter(line -> !isLeftOut(line))
                .forEach(line -> type(line, new ByteArrayOutputStream(), new ByteArrayOutputStream()));
    }

    @AfterAll
    static void close() {
        session.ifPresent(Session::close);
    }

    private static void begin() {
        session.ifPresent(Session::close);
        session = Optional.of(Session.start(Sheets.rendering(), Prelude.read()));
        Desk.larder().names(Calls.Kind.BEER, List.of());
        inputs = 0;
    }

    static Stream<byte[]> typed() {
        return ConsoleLines.all().map(line -> line.getBytes(StandardCharsets.UTF_8));
    }

    @MethodSource("typed")
    @FuzzTest(maxDuration = "")
    void whatever_is_typed_is_answered_or_told_in_words(byte[] bytes) {
        String source = new String(bytes, StandardCharsets.UTF_8);
        if (source.length() > LONGEST || isLeftOut(source)) {
            return;
        }
        if (inputs++ > INPUTS_OF_A_SESSION || Desk.daySet().isPresent()) {
            Desk.open(folder);
            begin();
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Answered.within(
                () -> Offers.at(session.orElseThrow(), source, source.length()), () -> "Tab in '" + source + "'");
        Answered.within(() -> type(source, out, err), () -> "'" + source + "'");
        String said = err.toString(StandardCharsets.UTF_8);
        assertTrue(said.lines().noneMatch(line -> line.startsWith("\tat ") || line.contains("Exception")), said);
    }

    private static boolean isLeftOut(String source) {
        String code = TEXTS.matcher(source).replaceAll("\"\"");
        return LEFT_OUT.matcher(source).find()
                || TYPES.matcher(code).results().anyMatch(type -> !KNOWN_TYPES.contains(type.group()))
                || source.chars().filter(c -> c == '\n' || c == ';').count() >= MOST_INSTRUCTIONS;
    }

    private static void type(String source, ByteArrayOutputStream out, ByteArrayOutputStream err) {
        PlainMode mode = new PlainMode(
                session.orElseThrow(),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        try {
            Fault fault = mode.run(new BufferedReader(new StringReader(source)), "input");
            if (fault != null && fault.kind() != Fault.Kind.INPUT) {
                assertTrue(OWN_FAULT.matcher(fault.message()).matches(), fault.message());
                assertEquals(Fault.Kind.FAILURE, fault.kind());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
