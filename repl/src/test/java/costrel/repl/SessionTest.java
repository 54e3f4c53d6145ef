package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.Thread.UncaughtExceptionHandler;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(60)
final class SessionTest implements Listener {

    private final List<String> answers = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private Session session = Session.start(new Rendering(List.of()), "");

    @BeforeAll
    void start() {
        session.close();
        session = Session.start(new Rendering(List.of()), Prelude.read());
    }

    @AfterAll
    void end() {
        session.close();
    }

    @Override
    public void answer(String text, boolean needsAPerson) {
        answers.add(text);
    }

    @Override
    public void note(String text) {
        notes.add(text);
    }

    private List<String> answersTo(String source) {
        answers.clear();
        notes.clear();
        Fault fault = session.evaluate(source, this);
        assertNull(fault, () -> String.valueOf(fault));
        return List.copyOf(answers);
    }

    private Fault faultOf(String source) {
        Fault fault = session.evaluate(source, this);
        assertNotNull(fault, source);
        return fault;
    }

    @Test
    void an_input_works_on_the_very_objects_of_the_host() {
        answersTo("costrel.repl.Witness.leave(costrel.repl.Witness.class)");
        assertEquals(List.of(Witness.class), Witness.takeLeft());
    }

    @Test
    void a_stop_from_another_thread_ends_a_loop_and_a_sleep() {
        for (String endless : List.of("while (true) {}", "Thread.sleep(100_000)", "halted = 1 + endless()")) {
            answersTo("int endless() { while (true) {} }");
            CompletableFuture<Fault> fault = CompletableFuture.supplyAsync(() -> faultOf(endless));
            while (!fault.isDone()) {
                pause(100);
                session.stop();
            }
            assertEquals(Fault.Kind.STOPPED, fault.join().kind(), endless);
            assertEquals("stopped", fault.join().message());
        }
        assertEquals("'halted' isn't known", faultOf("halted").message());
        assertEquals(List.of("2"), answersTo("1 + 1"));
    }

    @Test
    void a_stop_ends_the_printing_of_an_answer() {
        answersTo("class Slow { public String toString() { while (true) {} } }");
        CompletableFuture<Fault> fault = CompletableFuture.supplyAsync(() -> faultOf("new Slow()"));
        while (!fault.isDone()) {
            pause(100);
            session.stop();
        }
        assertEquals(Fault.Kind.STOPPED, fault.join().kind());
    }

    @Test
    void a_stop_between_two_inputs_does_no_harm_to_the_next() {
        session.stop();
        assertEquals(List.of("2"), answersTo("1 + 1"));
    }

    @Test
    void the_host_keeps_its_own_handler_for_what_nobody_catches() {
        UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
        answersTo("1 + 1");
        faultOf("1 / 0");
        assertSame(before, Thread.getDefaultUncaughtExceptionHandler());
    }

    @Test
    void the_latest_two_hundred_unnamed_results_are_kept_and_those_in_use() {
        try (Session fresh = Session.start(new Rendering(List.of()), "")) {
            assertNull(fresh.evaluate("\"first\"; \"second\"; String used() { return $2; }", this));
            assertEquals(List.of("first", "second"), List.of(shown(fresh, "$2"), shown(fresh, "$3")));
            for (int i = 0; i < 201; i++) {
                assertNull(fresh.evaluate("1 + 1", this));
            }
            assertEquals("first", shown(fresh, "used()"));
            Fault gone = fresh.evaluate("$3", this);
            assertNotNull(gone);
            assertTrue(gone.message().startsWith("'$3' isn't known"), gone.message());
        }
    }

    private String shown(Session fresh, String source) {
        answers.clear();
        assertNull(fresh.evaluate(source, this));
        return answers.get(0);
    }

    @Test
    void a_result_that_is_let_go_of_is_not_kept_in_memory() throws InterruptedException {
        answersTo("big = costrel.repl.Witness.large()");
        assertFalse(Witness.largeGoes(3));
        answersTo("big = null");
        assertTrue(Witness.largeGoes(50));
        answersTo("big = costrel.repl.Witness.large()");
        assertFalse(Witness.largeGoes(3));
        answersTo("String big = \"of another kind\";");
        assertTrue(Witness.largeGoes(50));
    }

    @Test
    void a_kind_of_value_that_cannot_be_written_down_is_kept_under_a_name_all_the_same() {
        answersTo("mixed = List.of(1, \"pin\")");
        assertEquals(List.of("1", "pin"), List.of(answersTo("mixed").get(0).split("\n")));
        answersTo("plant = new Object() { int barrels = 30; }");
        assertEquals(List.of("30"), answersTo("plant.barrels"));
    }

    @Test
    void completions_know_variables_and_what_can_be_asked_of_them() {
        answersTo("brewLength = \"30 brl\"");
        Completions name = session.completions("1 + brewL", 9);
        assertEquals(4, name.anchor());
        assertEquals(List.of("brewLength"), name.words());
        Completions asked = session.completions("copy = brewLength.isB", 21);
        assertEquals(18, asked.anchor());
        assertEquals(List.of("isBlank()"), asked.words());
        assertFalse(session.completions("brewLength.", 11).words().contains("notifyAll()"));
        assertEquals(List.of("folder()"), session.completions("fold", 4).words());
    }

    @Test
    void an_input_is_unfinished_until_every_bracket_and_remark_is_closed() {
        for (String open : List.of("List.of(", "int f() {", "/* ", "a = 1\nfor (;;) {", "5 +", "\"\"\"\n")) {
            assertTrue(session.isUnfinished(open), open);
        }
        for (String whole : List.of("", "List.of()", "int f() {}", "// (", "a = 1\nb = 2", "\"(", ")", "5 + )")) {
            assertFalse(session.isUnfinished(whole), whole);
        }
    }

    @Test
    void a_prelude_with_a_fault_is_refused_with_its_line() {
        IllegalStateException refused = assertThrows(
                IllegalStateException.class,
                () -> Session.start(new Rendering(List.of()), "import java.util.*;\nimport static no.such.Thing.*;\n"));
        assertTrue(String.valueOf(refused.getMessage()).startsWith("prelude:2: "), refused.getMessage());
    }

    private static void pause(int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
