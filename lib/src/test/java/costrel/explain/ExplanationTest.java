package costrel.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExplanationTest {

    private static final Explanation ALPHA = Explanation.leaf("alpha acid", "4.5 %");
    private static final Explanation CAST = Explanation.of("cast wort", "4909.8 L", "brew length before FV loss");
    private static final Explanation FUGGLE = Explanation.of(
            "EBU of Fuggle at 90 min", "12.3 EBU", "1000 × g × alpha acid × utilisation / L", ALPHA, CAST);

    @Test
    void the_text_goes_two_spaces_in_for_each_step_down() {
        Explanation beer = Explanation.of("bitterness", "24.6 EBU", "", FUGGLE, Explanation.of("late hops", "", ""));
        assertEquals("""
                bitterness: 24.6 EBU
                  EBU of Fuggle at 90 min: 12.3 EBU (1000 × g × alpha acid × utilisation / L)
                    alpha acid: 4.5 %
                    cast wort: 4909.8 L (brew length before FV loss)
                  late hops
                """, beer.text());
    }

    @Test
    void a_figure_is_found_by_its_label_at_any_depth() {
        Explanation beer = Explanation.of("bitterness", "24.6 EBU", "", FUGGLE);
        assertEquals(Optional.of(beer), beer.find("bitterness"));
        assertEquals(Optional.of(CAST), beer.find("cast wort"));
        assertEquals(Optional.empty(), beer.find("Cast wort"));
    }

    @Test
    void of_two_figures_of_one_name_the_first_to_be_read_is_found() {
        Explanation early = Explanation.of("copper", "", "", Explanation.leaf("alpha acid", "7.9 %"));
        Explanation beer = Explanation.of("bitterness", "24.6 EBU", "", early, ALPHA);
        assertEquals("7.9 %", beer.find("alpha acid").orElseThrow().figure());
    }

    @Test
    void parts_changed_afterwards_do_not_change_the_explanation() {
        List<Explanation> parts = new ArrayList<>(List.of(ALPHA));
        Explanation beer = new Explanation("bitterness", "24.6 EBU", "", parts);
        parts.add(CAST);
        assertEquals(List.of(ALPHA), beer.parts());
        assertThrows(UnsupportedOperationException.class, () -> beer.parts().add(CAST));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t"})
    void a_figure_without_a_name_is_refused(String label) {
        assertThrows(IllegalArgumentException.class, () -> Explanation.leaf(label, "1 L"));
    }

    @Test
    void text_of_more_than_one_line_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> Explanation.leaf("a\nb", "1 L"));
        assertThrows(IllegalArgumentException.class, () -> Explanation.leaf("a", "1\r\nL"));
        assertThrows(IllegalArgumentException.class, () -> Explanation.of("a", "1 L", "b\u0000c"));
    }
}
