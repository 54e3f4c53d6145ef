package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** At the prompt nothing that is typed closes the console and takes the session along. */
class ExitGuardTest {

    private final StringBuilder answers = new StringBuilder();
    private final Listener listener = new Listener() {
        @Override
        public void answer(String text, boolean needsAPerson) {
            answers.append(text).append('\n');
        }

        @Override
        public void note(String text) {
            answers.append(text).append('\n');
        }
    };

    @BeforeEach
    void stay() {
        ExitGuard.stay(true);
    }

    @AfterEach
    void leave() {
        ExitGuard.stay(false);
    }

    @Test
    void whatever_asks_to_leave_is_told_how_and_the_session_lasts() {
        try (Session session = Session.start(new Rendering(List.of()), "")) {
            assertNull(session.evaluate("x = 36.5", listener));
            for (String way : List.of(
                    "System.exit(3)",
                    "Runtime.getRuntime().exit(3)",
                    "Runtime.getRuntime().halt(3)",
                    "List.of(3).forEach(code -> System.exit(code))",
                    "void out() { System.exit(3); } out()")) {
                Fault fault = session.evaluate(way.replace("List.of", "java.util.List.of"), listener);
                assertNotNull(fault, way);
                assertEquals(Fault.Kind.INPUT, fault.kind(), way);
                assertTrue(fault.message().contains("leaving with code 3"), fault.message());
            }
            assertNull(session.evaluate("x", listener));
            assertTrue(answers.toString().contains("36.5"), answers.toString());
        }
    }
}
