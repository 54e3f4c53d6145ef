package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class RootsTest {
    @Test
    void a_crossing_is_found_where_it_is_known() {
        assertEquals(Math.sqrt(2), Roots.between("root", 0, 2, 1e-14, x -> x * x - 2), 1e-13);
        assertEquals(Math.log(5), Roots.between("root", 10, -10, 1e-14, x -> Math.exp(x) - 5), 1e-13);
        assertEquals(1, Roots.between("root", 0, 100, 1e-12, x -> Math.pow(x - 1, 9)), 0.02);
    }

    @Test
    void the_ends_of_the_bracket_count() {
        assertEquals(0, Roots.between("root", 0, 2, 1e-12, x -> x));
        assertEquals(2, Roots.between("root", 0, 2, 1e-12, x -> x - 2));
    }

    @Test
    void any_cubic_that_rises_is_solved() {
        Seeded.cases(1000, random -> {
            double root = Seeded.between(random, -5, 5);
            double slope = Seeded.between(random, 0.01, 100);
            double found = Roots.between("root", -6, 7, 1e-13, x -> Math.pow(x - root, 3) + slope * (x - root));
            assertEquals(root, found, 1e-12);
        });
    }

    @Test
    void without_a_crossing_there_is_no_answer() {
        Throwable none =
                assertThrows(ArithmeticException.class, () -> Roots.between("gravity", 0, 2, 1e-12, x -> x + 1));
        assertEquals("gravity: no solution between 0 and 2", none.getMessage());
        Throwable nan =
                assertThrows(ArithmeticException.class, () -> Roots.between("gravity", 0, 2, 1e-12, x -> Double.NaN));
        assertEquals("gravity: no solution between 0 and 2", nan.getMessage());
    }
}
