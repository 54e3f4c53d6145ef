package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.HopForm;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class DryHopNotesTest {

    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    @Test
    void pellets_hold_what_the_published_trial_lost() {
        // Totally Natural Solutions, trial of 2019: 2 % of the beer at 250 g/hL, 14 % at 2000 g/hL (the lower bound, 7
        // L/kg)
        String light = text(HopForm.T90, 250);
        assertTrue(light.contains("about 2.0 L of each hL"), light);
        String heavy = text(HopForm.T90, 2000);
        assertTrue(heavy.contains("of each hL, 14.0 to 28.0"), heavy);
        // BarthHaas: up to 14 L/kg
        assertTrue(heavy.contains("published 7 to 14"), heavy);
    }

    @Test
    void leaf_hops_have_no_published_figure_in_beer() {
        String leaf = text(HopForm.LEAF, 20);
        assertTrue(leaf.contains("no figure is published"), leaf);
        assertFalse(leaf.contains("pellets hold"), leaf);
    }

    @Test
    void rates_of_british_cask_beer_are_those_in_ounces_to_the_barrel() {
        // Murphy & Son, Hop Requirements: usually 0.5 to 2, in all 0.5 to 8 oz/brl. An ounce is 28.349523125 g, a
        // barrel 36
        // imperial gallons of 4.54609 L.
        double ounce = 28.349523125 / (36 * 4.54609 / 100);
        assertTrue(text(HopForm.LEAF, 0.25 * ounce).contains("is under the usual 9 to 35 g/hL"));
        // within what is usual there is nothing to say
        assertFalse(text(HopForm.LEAF, ounce).contains("the usual"));
        assertFalse(text(HopForm.LEAF, 2 * ounce).contains("the usual"));
        assertTrue(
                text(HopForm.LEAF, 4 * ounce).contains("is over the usual 9 to 35 g/hL of British cask beer, though"));
        assertTrue(text(HopForm.LEAF, 8 * ounce).contains("though up to 140 g/hL"));
        assertTrue(text(HopForm.LEAF, 9 * ounce).contains("and over the 140 g/hL"));
    }

    @Test
    void flavour_is_there_after_three_weeks() {
        // Murphy & Son, Hop Requirements: the most flavour by about 21 days
        assertTrue(text(HopForm.LEAF, 20, UNKNOWN, OptionalDouble.of(7)).contains("at 7 days there is more to come"));
        assertTrue(text(HopForm.LEAF, 20, UNKNOWN, OptionalDouble.of(1)).contains("at 1 day there is"));
        assertTrue(text(HopForm.LEAF, 20, UNKNOWN, OptionalDouble.of(21)).contains("at 21 days it is there"));
        assertFalse(text(HopForm.LEAF, 20).contains("contact"), "contact unknown");
    }

    @Test
    void enzymes_are_a_caution_and_never_a_figure_of_this_beer() {
        // Kirkpatrick & Shellhammer 2018: 10 g/L is 1000 g/hL, 20 °C, 1 °P in 5 days, about 2 in 40
        String note = enzymes(notes(HopForm.T90, 20, OptionalDouble.of(12), UNKNOWN));
        for (String words : List.of(
                "caution", "1000 g/hL and 20 °C", "1 °P in 5 days", "2 in 40", "not scaled to 20 g/hL and 12 °C")) {
            assertTrue(note.contains(words), note);
        }
        // the danger and the duty of whoever packs it
        assertTrue(note.contains("bottles") && note.contains("authority"), note);
        // the figures are the trial's own at any dose
        String other = enzymes(notes(HopForm.T90, 40, OptionalDouble.of(12), UNKNOWN));
        assertEquals(note, other.replace("to 40 g/hL", "to 20 g/hL"));
    }

    @Test
    void bitterness_is_spoken_of_from_a_pound_in_an_american_barrel() {
        // Hopsteiner in Brauwelt; Maye 2018: a pound, 453.59237 g, in a US beer barrel of 31 gallons of 3.785411784 L
        double pound = 453.59237 / (31 * 3.785411784 / 100);
        assertFalse(text(HopForm.T90, pound - 1).contains("move the bitterness"));
        assertTrue(text(HopForm.T90, pound + 1).contains("move the bitterness"));
    }

    @Test
    void extracts_hold_nothing_back() {
        for (HopForm form : List.of(HopForm.CO2_EXTRACT, HopForm.ISOMERISED_EXTRACT)) {
            List<String> notes = notes(form, 20, UNKNOWN, UNKNOWN);
            assertEquals(1, notes.size());
            assertTrue(notes.get(0).contains("holds no beer back"), notes.toString());
        }
    }

    @Test
    void every_note_names_its_source_and_no_hops_need_none() {
        for (HopForm form : HopForm.values()) {
            assertEquals(List.of(), notes(form, 0, UNKNOWN, UNKNOWN));
            for (String note : notes(form, 500, OptionalDouble.of(12), OptionalDouble.of(30))) {
                assertTrue(note.matches("(?s).+ \\([A-Za-z][^()]+\\)"), note);
            }
        }
    }

    @Test
    void figures_that_cannot_be_are_refused() {
        refused("dose of dry hops", () -> notes(HopForm.LEAF, -1, UNKNOWN, UNKNOWN));
        refused("dose of dry hops", () -> notes(HopForm.LEAF, Double.NaN, UNKNOWN, UNKNOWN));
        refused("contact of dry hops", () -> notes(HopForm.LEAF, 20, UNKNOWN, OptionalDouble.of(-1)));
        refused("-10 to 40 °C, found 66 °C", () -> notes(HopForm.LEAF, 20, OptionalDouble.of(66), UNKNOWN));
        refused("-10 to 40 °C", () -> notes(HopForm.LEAF, 20, OptionalDouble.of(Double.NaN), UNKNOWN));
    }

    private static String enzymes(List<String> notes) {
        return notes.stream()
                .filter(note ->
                        note.contains("(Kirkpatrick & Shellhammer, Journal of Agricultural and Food Chemistry, 2018)"))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> notes(HopForm form, double gramsPerHl, OptionalDouble celsius, OptionalDouble days) {
        return DryHopNotes.of(form, gramsPerHl, celsius, days);
    }

    private static String text(HopForm form, double gramsPerHl) {
        return text(form, gramsPerHl, UNKNOWN, UNKNOWN);
    }

    private static String text(HopForm form, double gramsPerHl, OptionalDouble celsius, OptionalDouble days) {
        return String.join("\n", notes(form, gramsPerHl, celsius, days));
    }

    private static void refused(String words, Executable attempt) {
        String message = String.valueOf(
                assertThrows(IllegalArgumentException.class, attempt).getMessage());
        assertTrue(message.contains(words), () -> "expected a message with '" + words + "', found: " + message);
    }
}
