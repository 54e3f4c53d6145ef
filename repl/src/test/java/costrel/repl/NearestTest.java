package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

final class NearestTest {

    /**
     * F. J. Damerau, "A technique for computer detection and correction of spelling errors", Communications of the ACM 7
     * (1964) 171: one letter wrong, missing, too many, or two neighbours swapped, are one slip each.
     */
    @Test
    void each_of_the_four_slips_counts_once() {
        assertEquals(0, Nearest.distance("barrel", "barrel"));
        assertEquals(1, Nearest.distance("barral", "barrel"));
        assertEquals(1, Nearest.distance("barel", "barrel"));
        assertEquals(1, Nearest.distance("barrrel", "barrel"));
        assertEquals(1, Nearest.distance("barerl", "barrel"));
        assertEquals(6, Nearest.distance("", "barrel"));
    }

    @Test
    void the_nearest_come_first_and_the_far_not_at_all() {
        assertEquals(
                List.of("barrels", "barrel"), Nearest.to("barels", List.of("barrel", "barrels", "firkin", "hopback")));
        assertEquals(List.of("Pin"), Nearest.to("pin", List.of("Pin", "pins2", "kilderkin")));
        assertEquals(List.of(), Nearest.to("x", List.of("y", "z")));
    }
}
