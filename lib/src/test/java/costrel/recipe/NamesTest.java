package costrel.recipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
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

    @Test
    void two_names_are_one_where_both_fold_to_the_same() {
        long seed = Long.getLong("seed", 11L);
        Random random = new Random(seed);
        String letters = "aAbB _-\u00a0\t\u00e9\u00c9";
        for (int n = 0; n < 20_000; n++) {
            String name = random(random, letters);
            String other = random.nextInt(3) == 0 ? random(random, letters) : respelt(random, name);
            boolean expected = Names.folded(name).equals(Names.folded(other));
            assertEquals(expected, Names.same(name, other), () -> "'" + name + "' and '" + other + "', -Dseed=" + seed);
        }
    }

    private static String random(Random random, String letters) {
        StringBuilder name = new StringBuilder();
        for (int i = random.nextInt(6); i > 0; i--) {
            name.append(letters.charAt(random.nextInt(letters.length())));
        }
        return name.toString();
    }

    /** The name with other gaps and capitals, and now and then a letter more. */
    private static String respelt(Random random, String name) {
        StringBuilder other = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            other.append(random.nextBoolean() ? Character.toUpperCase(c) : Character.toLowerCase(c));
            other.append(random.nextInt(4) == 0 ? " " : random.nextInt(12) == 0 ? "b" : "");
        }
        return other.toString();
    }
}
