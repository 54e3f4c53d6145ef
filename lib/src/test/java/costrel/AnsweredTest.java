package costrel;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import org.junit.jupiter.api.Test;

/** What the searches for bad input hold every answer to can fail. */
class AnsweredTest {

    private static boolean answered(Runnable work) {
        return Answered.byValueOrRefusal(work, () -> "an input");
    }

    @Test
    void a_value_and_a_refusal_in_words_pass() {
        assertTrue(answered(() -> {}));
        assertFalse(answered(() -> {
            throw new IllegalArgumentException("expected a mass, found 'x'");
        }));
    }

    @Test
    void any_other_fault_fails_and_so_does_a_refusal_without_words() {
        for (RuntimeException fault : new RuntimeException[] {
            new NullPointerException("x"), new NumberFormatException("x"), new IllegalArgumentException()
        }) {
            assertThrows(
                    AssertionError.class,
                    () -> answered(() -> {
                        throw fault;
                    }));
        }
    }

    @Test
    void an_answer_that_takes_over_a_second_of_the_processor_fails() {
        assertThrows(
                AssertionError.class,
                () -> answered(() -> {
                    long sum = 1;
                    long until = System.nanoTime() + 60_000_000_000L;
                    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
                    long began = threads.getCurrentThreadCpuTime();
                    while (threads.getCurrentThreadCpuTime() - began < 1_100_000_000L && System.nanoTime() < until) {
                        sum *= 31;
                    }
                    assertTrue(sum != 0);
                }));
    }
}
