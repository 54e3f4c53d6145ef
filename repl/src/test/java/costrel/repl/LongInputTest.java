package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import jdk.jshell.JShell;
import jdk.jshell.SourceCodeAnalysis;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** How often the engine is asked about a long input, and how soon Tab and the hints answer in one. */
final class LongInputTest {

    private static final JShell SHELL =
            JShell.builder().executionEngine("local").build();
    private static final SourceCodeAnalysis ANALYSIS = SHELL.sourceCodeAnalysis();
    private static Optional<Session> session = Optional.empty();

    @BeforeAll
    static void open() {
        session = Optional.of(Session.start(new Rendering(List.of()), Prelude.read()));
    }

    @AfterAll
    static void close() {
        session.ifPresent(Session::close);
        SHELL.close();
    }

    /** What the engine was shown while an input came line by line, and the lines after which it was not waited for. */
    private record Shown(long letters, int times, List<Integer> whole) {}

    private static Shown lineByLine(String input) {
        long[] letters = {0};
        int[] times = {0};
        GrowingInput growing = new GrowingInput(text -> {
            letters[0] += text.length();
            times[0]++;
            return ANALYSIS.analyzeCompletion(text);
        });
        List<Integer> whole = new ArrayList<>();
        int line = 0;
        int start = 0;
        for (int end = input.indexOf('\n'); end >= 0; end = input.indexOf('\n', end + 1)) {
            line++;
            if (!growing.isUnfinished(input.substring(start, end))) {
                whole.add(line);
                start = end + 1;
            }
        }
        return new Shown(letters[0], times[0], whole);
    }

    @Test
    void a_method_of_thousands_of_lines_is_shown_to_the_engine_only_while_it_is_short() {
        Shown shown = lineByLine("int large() { int a = 0;\n" + "a += 1;\n".repeat(5_500) + " return a; }\n");
        assertEquals(List.of(5_502), shown.whole());
        assertTrue(shown.times() < 300, "times " + shown.times());
        assertTrue(shown.letters() < 400_000, "letters " + shown.letters());
    }

    @Test
    void a_sum_over_thousands_of_lines_is_shown_to_the_engine_only_while_it_is_short() {
        Shown shown = lineByLine("x = 1 +\n" + "1 +\n".repeat(5_000) + "1\n");
        assertEquals(List.of(5_002), shown.whole());
        assertTrue(shown.letters() < 700_000, "letters " + shown.letters());
    }

    @Test
    void blank_lines_are_not_shown_at_all() {
        Shown shown = lineByLine("int f() {\n" + "\n".repeat(1_500) + "return 1; }\n");
        assertEquals(List.of(1_502), shown.whole());
        assertEquals(2, shown.times());
    }

    @Test
    void what_only_the_engine_can_tell_is_asked_until_it_has_cost_too_much() {
        Shown shown = lineByLine("if (true)\n".repeat(1_000));
        assertEquals(2, shown.whole().size(), "not waited for any more");
        assertTrue(shown.letters() < 3L * (Cutter.MOST_SHOWN + Roomy.LONGEST_LINE), "letters " + shown.letters());
        Shown few = lineByLine("if (true)\n".repeat(100) + "x = 1;\n");
        assertEquals(List.of(101), few.whole());
    }

    @Test
    void an_input_that_comes_line_by_line_is_whole_where_it_is_when_it_comes_at_once() {
        for (String input : List.of(
                "int f() {\n  // }\n  return \"}\".length();\n}\n",
                "x = \"\"\"\n  a }\n  \"\"\"\n",
                "y = 1 /* +\n*/ + 2\n",
                "z = List.of(\n1,\n\n2\n)\n",
                "i = 1\n",
                "int g() { int i = 0;\n i++\n; return i; }\n")) {
            int lines = (int) input.lines().count();
            assertEquals(List.of(lines), lineByLine(input).whole(), input);
            Cut cut = Cut.of(ANALYSIS, input.stripTrailing());
            assertFalse(cut.unfinished(), input);
            assertEquals(1, cut.pieces().size(), input);
            // The same in an input so long that the letters decide.
            String after = "/*" + "x".repeat(Roomy.SHORT) + "*/ " + input;
            assertEquals(List.of(lines), lineByLine(after).whole(), input);
        }
    }

    @Test
    void tab_and_hints_answer_at_once_whatever_the_length_of_the_line() {
        Desk.open(WordsTest.LANTERNFOLD);
        Desk.larder().names(Calls.Kind.BEER, List.of());
        Session typed = session.orElseThrow();
        Offers.at(typed, "1.", 2);
        for (String line : List.of(
                "(".repeat(900) + "1",
                "(".repeat(9_000),
                "a.".repeat(1_000),
                "a.".repeat(4_900),
                "~".repeat(9_000) + "1.",
                "1" + "+1".repeat(4_900) + ".",
                "\"" + "a".repeat(9_990) + "\".",
                "x".repeat(9_999),
                "brew(\"" + "a".repeat(9_990),
                "lot(\"Goldings\", \"" + "a".repeat(9_900),
                "brew(" + ",".repeat(9_900) + "\"",
                "help " + "a ".repeat(4_900),
                "help a" + " ".repeat(9_900) + "(",
                "save a" + " ".repeat(9_900) + "\"",
                "List.of(1,".repeat(900) + "1.",
                "x->".repeat(3_000))) {
            String about = line.substring(0, 12) + "… of " + line.length();
            Answered.within(() -> Offers.at(typed, line, line.length()), () -> "Tab in " + about);
            Answered.within(() -> Hint.of(line), () -> "hint in " + about);
            Answered.within(() -> typed.isUnfinished(line), () -> "Enter after " + about);
        }
    }

    @Test
    void a_script_goes_on_after_a_line_that_saves_it() {
        assertEquals(Optional.of("save(\"monday.jsh\")"), BareWords.call(" save monday.jsh ; ", name -> false));
        assertEquals(Optional.empty(), BareWords.call("save monday.jsh\nbeers", name -> false));
    }
}
