package costrel.recipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class NamesTest {

    private static final Map<String, Integer> PLANTS = Map.of("Main", 1, "Pilot", 2);

    @Test
    void names_match_exactly_then_without_regard_to_case_and_spaces() {
        assertEquals(1, Names.require("plant", PLANTS, "Main"));
        assertEquals(2, Names.require("plant", PLANTS, " pilot "));
        assertEquals(3, Names.require("malt", Map.of("pale ale malt", 3), "Pale-Ale Malt"));
    }

    @Test
    void an_unknown_name_is_told_the_nearest() {
        UnknownNameException refused =
                assertThrows(UnknownNameException.class, () -> Names.require("plant", PLANTS, "Mian"));
        assertEquals(List.of("Main"), refused.nearest());
        assertTrue(String.valueOf(refused.getMessage()).contains("'Mian'"), String.valueOf(refused.getMessage()));
    }

    @Test
    void a_word_of_a_longer_name_is_near_enough() {
        assertEquals(List.of("Wickgate Bitter"), Names.nearest(List.of("Wickgate Bitter", "Tallow Mild"), "Wickgte"));
        assertEquals(List.of(), Names.nearest(List.of("Wickgate Bitter", "Tallow Mild"), "zzzzzzzz"));
    }
}
