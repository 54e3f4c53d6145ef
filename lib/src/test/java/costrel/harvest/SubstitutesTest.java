package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.harvest.Substitutes.Suggestion;
import costrel.hops.HopVariety;
import costrel.tables.IngredientTables;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SubstitutesTest {

    private static final double SAME = 1e-12;
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final List<HopVariety> TABLE = IngredientTables.varieties();

    @Test
    void a_twin_under_another_name_is_as_near_as_can_be() {
        HopVariety gone = hop("Gone", 0.04, 0.06, 0.05, 0.5, 1.0, 0.25, 0.3);
        Suggestion twin = only(gone, hop("Twin", 0.04, 0.06, 0.05, 0.5, 1.0, 0.25, 0.3));
        assertEquals(1, twin.nearness(), SAME);
        assertEquals(1, twin.kgFactor().orElseThrow(), SAME);
        assertEquals(List.of(), twin.unknown());
    }

    @Test
    void nearness_is_the_mean_of_three_distances() {
        // by hand: alpha 4 to 6 for 9 to 11 %, middles 5 and 10, apart: 0.5; oil 0.8 for 1.0, apart: 0.8;
        // cohumulone 20 to 30 for 24 to 36 %, middles 25 and 30, overlapping: 1 - (1/6)/2
        HopVariety gone = hop("Gone", 0.04, 0.06, 0.05, 0.8, 0.8, 0.20, 0.30);
        Suggestion other = only(gone, hop("Other", 0.09, 0.11, 0.10, 1.0, 1.0, 0.24, 0.36));
        assertEquals((0.5 + 0.8 + 11.0 / 12) / 3, other.nearness(), SAME);
        assertEquals(0.5, other.kgFactor().orElseThrow(), SAME);
        assertTrue(other.reason().contains("alpha acid 9.0 to 11.0 % for 4.0 to 6.0 %;"), other.reason());
        assertTrue(other.reason().contains("oil 1.00 mL/100 g for 0.80 mL/100 g;"), other.reason());
        assertTrue(
                other.reason().contains("cohumulone 24.0 to 36.0 % for 20.0 to 30.0 %, ranges overlap"),
                other.reason());
    }

    @Test
    void ranges_that_overlap_are_nearer_than_the_same_middles_apart() {
        HopVariety wide = hop("Gone", 0.03, 0.07, 0.05, 0.8, 0.8, 0.25, 0.25);
        HopVariety narrow = hop("Gone", 0.05, 0.05, 0.05, 0.8, 0.8, 0.25, 0.25);
        HopVariety other = hop("Other", 0.06, 0.06, 0.06, 0.8, 0.8, 0.25, 0.25);
        assertTrue(only(wide, other).nearness() > only(narrow, other).nearness());
    }

    @Test
    void a_figure_that_is_missing_lowers_nearness_and_is_named() {
        HopVariety gone = hop("Gone", 0.04, 0.06, 0.05, 0.5, 1.0, 0.25, 0.3);
        HopVariety noOil = new HopVariety(
                "No oil", "", some(0.04), some(0.06), some(0.05), NONE, NONE, some(0.25), some(0.3), NONE, "");
        Suggestion suggestion = only(gone, noOil);
        assertEquals(2.0 / 3, suggestion.nearness(), SAME);
        assertEquals(List.of("oil"), suggestion.unknown());
        assertTrue(suggestion.reason().contains("no figure to compare for oil"), suggestion.reason());
        HopVariety nothing = new HopVariety("Nothing", "", NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE, "");
        Suggestion blank = only(gone, nothing);
        assertEquals(0, blank.nearness());
        assertEquals(NONE, blank.kgFactor());
        assertEquals(List.of("alpha acid", "oil", "cohumulone"), blank.unknown());
    }

    @Test
    void a_mean_serves_where_no_range_is_published_and_a_middle_where_no_mean_is() {
        HopVariety gone = new HopVariety("Gone", "", NONE, NONE, some(0.05), NONE, NONE, NONE, NONE, NONE, "");
        HopVariety other = new HopVariety("Other", "", some(0.06), some(0.10), NONE, NONE, NONE, NONE, NONE, NONE, "");
        Suggestion suggestion = only(gone, other);
        assertEquals(0.05 / 0.08, suggestion.kgFactor().orElseThrow(), SAME);
        assertEquals(0.05 / 0.08 / 3, suggestion.nearness(), SAME);
        assertTrue(suggestion.reason().startsWith("alpha acid 6.0 to 10.0 % for 5.0 %"), suggestion.reason());
    }

    @Test
    void hops_without_alpha_acid_are_compared_but_never_weighed_for_it() {
        HopVariety none = hop("None", 0, 0, 0, 0.8, 0.8, 0.25, 0.25);
        HopVariety gone = hop("Gone", 0.04, 0.06, 0.05, 0.8, 0.8, 0.25, 0.25);
        assertEquals(NONE, only(gone, none).kgFactor());
        assertEquals(NONE, only(none, gone).kgFactor());
        assertEquals(2.0 / 3, only(gone, none).nearness(), SAME);
        assertEquals(
                1, only(none, hop("Another", 0, 0, 0, 0.8, 0.8, 0.25, 0.25)).nearness(), SAME);
    }

    @Test
    void the_one_that_is_gone_is_never_suggested_for_itself() {
        for (HopVariety gone : TABLE) {
            List<Suggestion> ranked = Substitutes.rank(gone, TABLE);
            assertEquals(TABLE.size() - 1, ranked.size());
            assertFalse(
                    ranked.stream().anyMatch(suggestion -> suggestion.variety().equals(gone.name())));
        }
        HopVariety lower = hop("east kent GOLDING", 0.05, 0.06, 0.055, 0.85, 0.85, 0.25, 0.25);
        assertFalse(Substitutes.rank(lower, TABLE).stream()
                .anyMatch(suggestion -> suggestion.variety().equals("East Kent Golding")));
    }

    @Test
    void two_varieties_are_as_near_whichever_is_gone() {
        for (HopVariety left : TABLE) {
            double last = 1;
            for (Suggestion suggestion : Substitutes.rank(left, TABLE)) {
                HopVariety right = variety(suggestion.variety());
                Suggestion back = only(right, left);
                assertEquals(suggestion.nearness(), back.nearness(), SAME, left.name() + ", " + right.name());
                assertEquals(suggestion.unknown(), back.unknown());
                assertTrue(suggestion.nearness() >= 0 && suggestion.nearness() <= last, "the nearest come first");
                assertEquals(
                        1, suggestion.kgFactor().orElseThrow() * back.kgFactor().orElseThrow(), SAME);
                assertTrue(suggestion.reason().contains("flavour is not in the tables and not compared"));
                last = suggestion.nearness();
            }
        }
    }

    @Test
    void a_variety_said_to_resemble_another_is_among_the_nearest() {
        // USDA-ARS Corvallis, cultivar description 21197: the US Tettnanger resembles Fuggle
        List<String> ranked = Substitutes.rank(variety("Fuggle"), TABLE).stream()
                .map(Suggestion::variety)
                .toList();
        assertTrue(ranked.subList(0, ranked.size() / 4).contains("Tettnanger (US)"), ranked.toString());
    }

    @Test
    void the_weight_follows_the_published_means() {
        // USDA-ARS Corvallis: Challenger 7.9 %, Target 12.6 % of alpha acid in the mean
        Suggestion target = Substitutes.rank(variety("Challenger"), List.of(variety("Target")))
                .get(0);
        assertEquals(7.9 / 12.6, target.kgFactor().orElseThrow(), SAME);
        assertEquals(List.of("cohumulone"), target.unknown());
    }

    private static Suggestion only(HopVariety gone, HopVariety other) {
        List<Suggestion> ranked = Substitutes.rank(gone, List.of(other));
        assertEquals(1, ranked.size());
        return ranked.get(0);
    }

    private static HopVariety variety(String name) {
        return TABLE.stream()
                .filter(variety -> variety.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static HopVariety hop(
            String name,
            double alphaLow,
            double alphaHigh,
            double alphaMean,
            double oilLow,
            double oilHigh,
            double cohumuloneLow,
            double cohumuloneHigh) {
        return new HopVariety(
                name,
                "",
                some(alphaLow),
                some(alphaHigh),
                some(alphaMean),
                some(oilLow),
                some(oilHigh),
                some(cohumuloneLow),
                some(cohumuloneHigh),
                NONE,
                "");
    }

    private static OptionalDouble some(double figure) {
        return OptionalDouble.of(figure);
    }

    @Test
    void a_flavour_group_that_the_brewery_states_counts_as_a_fourth_figure() {
        // by hand: equal alpha acid alone is 1/3; the same group makes (1 + 1)/4, another (1 + 0)/4
        HopVariety gone = stated("Gone", "earthy");
        List<Suggestion> ranked =
                Substitutes.rank(gone, List.of(stated("A", "citrus"), stated("B", "Earthy"), stated("C", "")));
        assertEquals(
                List.of("B", "C", "A"), ranked.stream().map(Suggestion::variety).toList());
        assertEquals(0.5, ranked.get(0).nearness(), 1e-12);
        assertEquals(1 / 3.0, ranked.get(1).nearness(), 1e-12);
        assertEquals(0.25, ranked.get(2).nearness(), 1e-12);
        assertTrue(ranked.get(0).reason().contains("both earthy as you state them"));
        assertTrue(ranked.get(2).reason().contains("citrus for earthy as you state them"));
    }

    private static HopVariety stated(String name, String character) {
        return new HopVariety(name, "", NONE, NONE, some(0.05), NONE, NONE, NONE, NONE, NONE, "", character);
    }
}
