package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.function.Executable;

/** A refusal has to say what was wrong. */
final class Refusal {
    private Refusal() {}

    static void says(String words, Executable attempt) {
        String message = String.valueOf(
                assertThrows(IllegalArgumentException.class, attempt).getMessage());
        assertTrue(message.contains(words), () -> "expected a message with \"" + words + "\", found: " + message);
    }
}
