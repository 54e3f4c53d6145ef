package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Input that no person types: without end, too long, too deep. Each is answered or refused, and the session goes on. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
final class HardInputTest {

    private static final String END = System.lineSeparator();
    private static final long LONGEST_MILLIS = 25_000;

    private static Streams.Run run(String input) {
        long began = System.nanoTime();
        Streams.Run run = Streams.run(input);
        long took = (System.nanoTime() - began) / 1_000_000;
        assertTrue(took < LONGEST_MILLIS, took + " ms");
        return run;
    }

    private static void goesOnAfter(String input) {
        Streams.Run run = run("barrels = 5\n" + input + "\nbarrels * 36\n");
        assertTrue(run.out().endsWith("180" + END), () -> cut(run.out()) + "\n" + cut(run.err()));
        assertTrue(run.err().lines().allMatch(line -> line.length() < 25_000), () -> cut(run.err()));
        assertTrue(!run.err().contains("the console failed"), () -> cut(run.err()));
    }

    private static String cut(String text) {
        return text.length() < 500 ? text : text.substring(0, 500) + "…";
    }

    @Test
    void brackets_within_brackets_and_very_many_terms() {
        goesOnAfter("(".repeat(900) + "1" + ")".repeat(900));
        goesOnAfter("(".repeat(4_000) + "1" + ")".repeat(4_000));
        goesOnAfter("~".repeat(9_000) + "1\n1" + "+1".repeat(4_000));
    }

    @Test
    void lines_longer_than_anybody_types() {
        goesOnAfter("\"" + "a".repeat(1_000_000) + "\".length()\n" + "x".repeat(1_000_000) + "\n" + "x".repeat(9_000));
        Streams.Run endless = run("barrels = 5\n" + "x".repeat(3_000_000));
        assertEquals(Console.FAILURE, endless.code());
        assertTrue(endless.err().contains("expected lines of at most 2,000,000 characters"), () -> cut(endless.err()));
    }

    @Test
    void signs_that_are_no_java() {
        goesOnAfter("#".repeat(9_000) + "\n" + "\\".repeat(9_000) + "\n\u0000\u0001\u001b[2J\u202e'");
    }

    /** Java's parser stops with an error of its own at these. */
    @Test
    void signs_that_the_engine_itself_fails_on() {
        goesOnAfter("$h@" + "?".repeat(40) + "\u0000\u007f@\u0000\u007f\\lo");
    }

    @Test
    void a_method_of_thousands_of_lines() {
        goesOnAfter("int large() { int a = 0;\n" + "a += 1;\n".repeat(1_000) + " return a; }");
    }

    @Test
    void a_bracket_that_is_never_closed_before_thousands_of_lines() {
        StringBuilder input = new StringBuilder("barrels = 5\nint open() {\n");
        for (int i = 0; i < 800; i++) {
            input.append("int a").append(i).append(" = ").append(i).append(";\n");
        }
        Streams.Run run = run(input.toString());
        assertEquals("", run.out());
        assertTrue(run.err().contains("the input ends too early"), () -> cut(run.err()));
        assertEquals(Console.WRONG_INPUT, run.code());
    }

    @Test
    void a_method_that_calls_itself_without_end() {
        goesOnAfter("int down(int n) { return down(n + 1); }\ndown(0)");
        goesOnAfter("record Round(Object[] in) { public String toString() { return in[0].toString(); } }\n"
                + "it = new Object[1]; it[0] = new Round(it); it[0].toString()");
    }

    @Test
    void a_list_that_holds_itself() {
        goesOnAfter("loop = new ArrayList<Object>(); loop.add(loop); loop");
        goesOnAfter("Object[] self = new Object[1]; self[0] = self; self");
        goesOnAfter("link = new HashMap<Object, Object>(); link.put(1, link); link");
    }

    @Test
    void an_answer_of_many_megabytes_is_cut_or_printed_and_the_next_is_right() {
        goesOnAfter("\"a\".repeat(5_000_000)");
        goesOnAfter("IntStream.range(0, 300_000).boxed().toList()");
    }

    @Test
    void what_steers_a_terminal_or_turns_its_direction_is_shown_as_a_sign() {
        String steering = "\u001b]0;x\u0007\u009b2J\u202e\u2066\u200f\u200e\u061c\b\u007f";
        Streams.Run run = run("\"" + steering + "\"\nbrew(\"" + steering + "\")\n" + steering + "\n");
        for (String text : List.of(run.out(), run.err())) {
            assertTrue(
                    text.chars()
                            .noneMatch(
                                    c -> c != '\n' && c != '\r' && steering.indexOf(c) >= 0 && !(c >= ' ' && c < 127)),
                    text);
        }
    }
}
