package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Any bytes as an input at the console, through all that is done with it before and after the engine evaluates it. The first byte says
 * where in the input the cursor stands, or a fault is found.
 */
final class TypedFuzzTest {

    private static final int WIDTH = 80;
    private static Optional<Session> session = Optional.empty();

    @BeforeAll
    static void open() {
        Desk.open(WordsTest.LANTERNFOLD);
        Desk.larder().names(Calls.Kind.BEER, List.of());
        session = Optional.of(Session.start(new Rendering(List.of()), Prelude.read()));
    }

    @AfterAll
    static void close() {
        session.ifPresent(Session::close);
    }

    static Stream<byte[]> typed() {
        return ConsoleLines.all().map(line -> ("@" + line).getBytes(StandardCharsets.UTF_8));
    }

    @MethodSource("typed")
    @FuzzTest(maxDuration = "")
    void whatever_is_typed_is_read(byte[] bytes) {
        if (bytes.length == 0) {
            return;
        }
        String source = new String(Arrays.copyOfRange(bytes, 1, bytes.length), StandardCharsets.UTF_8);
        int at = source.length() * (bytes[0] & 0xff) / 0xff;
        Answered.within(() -> read(session.orElseThrow(), source, at), () -> "'" + source + "' at " + at);
    }

    static Stream<byte[]> lines() {
        return ConsoleLines.all().map(line -> line.getBytes(StandardCharsets.UTF_8));
    }

    @MethodSource("lines")
    @FuzzTest(maxDuration = "")
    void whatever_is_typed_is_whole_or_not(byte[] bytes) {
        String source = new String(bytes, StandardCharsets.UTF_8);
        Session typed = session.orElseThrow();
        Answered.within(
                () -> {
                    if (typed.isUnfinished(source)) {
                        typed.isUnfinished(source + "\n" + source);
                    }
                },
                () -> "'" + source + "'");
    }

    private static void read(Session session, String source, int at) {
        List<String> names = List.of("pale", "bitter", "x");
        BareWords.call(source, names::contains);
        Assignment.of(source)
                .ifPresent(assignment -> assertTrue(source.startsWith(assignment.expression(), assignment.start())));
        Hint.of(source.substring(0, at));
        if (Spot.of(source.substring(0, at))
                .filter(spot -> spot.text().isPresent())
                .isPresent()) {
            Offers offers = Offers.at(session, source, at);
            assertTrue(offers.anchor() <= at);
        }
        for (String name : Nearest.to(source, List.copyOf(Words.all().keySet()))) {
            assertTrue(Words.all().containsKey(name));
        }
        fault(new Piece(source, 0, source), source, at);
        fault(new Piece(source, at, source.substring(at)), source, at / 2);
        String clean = Rendering.clean(source);
        assertTrue(clean.chars().noneMatch(c -> c < ' ' && c != '\n' && c != '\t'), "what steers a terminal");
    }

    private static void fault(Piece piece, String source, int at) {
        int position = Math.min(at, piece.text().length());
        List<Fault> faults = new ArrayList<>();
        Unquoted.notClosed(piece).ifPresent(faults::add);
        Unquoted.betweenBrackets(piece, position).ifPresent(faults::add);
        faults.add(new Fault(
                Fault.Kind.INPUT, Unquoted.expectedAt(piece.text(), position).orElse("wrong"), piece.place(position)));
        faults.add(new Fault(Fault.Kind.INPUT, "wrong", piece.line(at)));
        for (Fault fault : faults) {
            assertTrue(!fault.inFile("a.jsh", 1).isBlank());
            assertTrue(!fault.underPrompt(source, Prompt.FIRST.length(), WIDTH).isBlank());
        }
    }
}
