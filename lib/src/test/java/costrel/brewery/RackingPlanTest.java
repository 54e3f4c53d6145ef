package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.explain.Explanation;
import costrel.recipe.UnknownNameException;
import costrel.report.RackingText;
import costrel.scaling.Finding;
import costrel.wort.BottleVerdict;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Beers of the sample brewery at racking. Expected figures follow from its files, molar masses and the table of CO2 in beer. */
class RackingPlanTest {

    private static final Brewery LANTERNFOLD = Brewery.open(Path.of("../samples/lanternfold"));
    private static final String GLASS = "500 mL bottle-conditioned";
    private static final double WORKED = 1e-9;
    private static final double FOUR_FIGURES = 0.0005;

    /** IUPAC molar masses: 1.9635 g of gas to a volume, 0.51428 g from a gram of sucrose. */
    private static final double SUCROSE_GRAMS_PER_VOLUME = 1.9635 / (4 * 44.009 / 342.297);

    private static RackingPlan strong() {
        return LANTERNFOLD.brew("Snuffer Strong").on("Main").length("10 brl").racking();
    }

    private static RackingPlan stout() {
        return LANTERNFOLD.brew("Oatlamp Stout").on("Pilot").length("5 brl").racking();
    }

    /** The plant measured 0.80 volumes; 2.40 wanted in glass is 1.60 short, 1.00 in the firkin 0.20. */
    @Test
    void each_container_has_its_own_wanted_condition_and_dose() {
        RackingSheet sheet =
                strong().wanted(GLASS, "2.4 volumes").sugar("sucrose").sheet();
        RackingSheet.Line firkin = sheet.lines().get(0);
        RackingSheet.Line glass = sheet.lines().get(1);
        assertEquals(0.2, firkin.racking().shortVolumes(), WORKED);
        assertEquals(1.6, glass.racking().shortVolumes(), WORKED);
        RackingSheet.Dose dose = glass.doses().get(0);
        assertEquals(1.6 * SUCROSE_GRAMS_PER_VOLUME, dose.gramsPerLitre(), FOUR_FIGURES);
        assertEquals(dose.gramsPerLitre() / 2, dose.gramsEach(), WORKED);
        assertEquals(dose.gramsEach() * glass.count() / 1000, dose.kgForRun(), WORKED);
        assertEquals(
                40.91481 * 0.2 * SUCROSE_GRAMS_PER_VOLUME, firkin.doses().get(0).gramsEach(), FOUR_FIGURES * 41);
        assertEquals(
                sheet.fg().excessDegrees() + 3.2,
                glass.racking().rackingGravity().excessDegrees(),
                WORKED);
        assertEquals(BottleVerdict.WITHIN, glass.verdict().orElseThrow());
        assertTrue(firkin.verdict().isEmpty());
        assertFalse(sheet.limited());
    }

    /** A degree brings half a volume, so 0.4 degrees are what the firkin lacks and four bring two volumes. */
    @Test
    void what_a_present_gravity_comes_to() {
        double fg = strong().sheet().fg().excessDegrees();
        RackingSheet enough = strong().at((fg + 0.4) + " °").sheet();
        assertEquals(1.0, enough.lines().get(0).comesTo(), WORKED);
        assertEquals(0, enough.lines().get(0).racking().shortVolumes(), 1e-6);
        RackingSheet early = strong().at((fg + 4) + " °").sheet();
        assertEquals(2.8, early.lines().get(0).comesTo(), 1e-6);
        assertTrue(early.lines().get(0).doses().isEmpty());
        says(early, "firkin: comes to 2.80 volumes without primings, 1.00 wanted", Finding.Weight.CAUTION);
        RackingSheet under = strong().at((fg - 0.5) + " °").sheet();
        assertTrue(under.fermentedOut());
        says(under, "under the FG of the recipe", Finding.Weight.NOTE);
    }

    /** The table of CO2 in beer at 20 °C without head pressure, 1.7 g/L as printed to one decimal. */
    @Test
    void the_warmest_temperature_since_gas_stopped_decides_what_is_held() {
        RackingSheet sheet = stout().warmest("18 °C", "20 °C", "12 °C").sheet();
        assertEquals(1.7, sheet.held().volumes() * 1.9635, 0.05);
        assertEquals(
                sheet.held(),
                stout().course("hold 20 °C 2880 min; linear 20 °C to 11 °C 1440 min")
                        .sheet()
                        .held());
        assertEquals(0.9, stout().held("0.9 volumes").sheet().held().volumes());
        double before = Double.MAX_VALUE;
        for (int celsius = 0; celsius <= 30; celsius++) {
            double held = stout().warmest(celsius + " °C").sheet().held().volumes();
            assertTrue(held < before);
            before = held;
        }
    }

    @Test
    void ordinary_glass_is_warned_of_from_3_volumes_and_refused_from_4() {
        RackingSheet.Line within = line(stout().wanted("2.99 volumes"));
        assertEquals(BottleVerdict.WITHIN, within.verdict().orElseThrow());
        RackingSheet warned = stout().wanted("3.0 volumes").sheet();
        says(warned, "3.00 volumes in ordinary glass of no stated rating", Finding.Weight.CAUTION);
        assertFalse(warned.limited());
        assertFalse(warned.lines().get(0).doses().isEmpty());
        RackingSheet refused = stout().wanted("4.0 volumes").sheet();
        says(refused, "bottles may burst and injure", Finding.Weight.LIMIT);
        assertTrue(refused.limited());
        assertTrue(refused.lines().get(0).refused());
        assertTrue(refused.lines().get(0).doses().isEmpty());
        String text = RackingText.of(refused);
        assertFalse(text.contains("Primings to weigh"), text);
        assertTrue(text.contains("refused"), text);
        assertTrue(refused.explanation().find(GLASS).orElseThrow().figure().contains("refused"));
    }

    @Test
    void beer_with_too_much_left_to_ferment_is_refused_whatever_is_wanted() {
        RackingSheet sheet = stout().at("1.018").sheet();
        assertTrue(sheet.lines().get(0).refused());
        says(sheet, "let it ferment on", Finding.Weight.LIMIT);
    }

    @Test
    void a_stated_rating_takes_the_place_of_the_refusal() {
        RackingPlan rated = stout().rating(GLASS, "4.5 volumes");
        assertEquals(
                BottleVerdict.CAUTION,
                line(rated.wanted("4.2 volumes")).verdict().orElseThrow());
        assertTrue(line(rated.wanted("4.6 volumes")).refused());
        assertTrue(
                line(stout().rating(GLASS, "2.5 volumes").wanted("2.6 volumes")).refused());
        assertThrows(IllegalArgumentException.class, () -> strong().rating("firkin", "4.5 volumes"));
    }

    /** 8 g/L of dextrose monohydrate give 8 · 0.44415 / 1.9635 = 1.81 volumes by molar masses. */
    @Test
    void primings_of_the_recipe_are_held_against_what_is_wanted() {
        RackingSheet sheet = stout().sheet();
        double statedGramsPerLitre = sheet.gyle().intent().additions().stream()
                .filter(addition -> addition.primingHwe() > 0)
                .mapToDouble(addition -> addition.perHl() * 10)
                .sum();
        assertEquals(statedGramsPerLitre * 2 * 44.009 / 198.171 / 1.9635, sheet.recipeVolumes(), FOUR_FIGURES);
        assertEquals(
                sheet.held().volumes() + sheet.recipeVolumes(), line(stout()).withRecipe(), WORKED);
        says(
                stout().wanted("1.5 volumes").sheet(),
                "primings of the recipe bring it to at most",
                Finding.Weight.CAUTION);
        says(stout().wanted("3.5 volumes").sheet(), "primings of the recipe bring it to at most", Finding.Weight.NOTE);
    }

    @Test
    void nothing_is_primed_for_a_bottle_that_gains_no_condition() {
        RackingPlan bitter =
                LANTERNFOLD.brew("Wickgate Bitter").on("Main").length("30 brl").racking();
        RackingSheet.Line bottle = bitter.sheet().lines().get(1);
        assertEquals("500 mL bottle", bottle.container().name());
        assertTrue(bottle.doses().isEmpty());
        assertEquals(0.8, bottle.comesTo(), WORKED);
        assertThrows(
                IllegalArgumentException.class,
                () -> bitter.wanted("500 mL bottle", "2.4 volumes").sheet());
        says(bitter.at("1.0115").sheet(), "not there for it", Finding.Weight.CAUTION);
        says(bitter.sheet(), "dry hops can free sugar", Finding.Weight.CAUTION);
    }

    @Test
    void the_danger_is_said_in_words_on_every_sheet_that_primes() {
        for (RackingPlan plan : List.of(stout(), strong(), stout().at("1.0115"), stout().wanted("4.2 volumes"))) {
            String text = RackingText.of(plan).replaceAll("\\s+", " ");
            assertTrue(text.contains("over-primed bottles burst"), text);
            assertTrue(text.contains("let fermentation finish"), text);
            assertTrue(text.contains("weigh primings"), text);
            assertTrue(text.contains("protect eyes and hands"), text);
        }
        assertTrue(RackingText.of(strong()).replaceAll("\\s+", " ").contains("carbon dioxide suffocates"));
    }

    @Test
    void a_sheet_can_be_followed_to_its_figures() {
        Explanation all = strong().sugar("sucrose").sheet().explanation();
        assertEquals("0.800 volumes", all.find("condition held").orElseThrow().figure());
        assertEquals("1.000 volumes", all.find("firkin").orElseThrow().figure());
        assertEquals("0.200 volumes", all.find("short").orElseThrow().figure());
        // 0.2 · 3.8180 g/L
        assertEquals("0.76 g/L", all.find("primings of sucrose").orElseThrow().figure());
    }

    @Test
    void what_cannot_be_is_refused_in_words() {
        assertThrows(UnknownNameException.class, () -> stout().sugar("sucrse"));
        assertThrows(UnknownNameException.class, () -> stout().sugar("lactose monohydrate"));
        assertThrows(UnknownNameException.class, () -> stout().wanted("firkin", "1.1 volumes"));
        refuses("wanted condition: expected a condition such as 2.0 volumes", () -> stout().wanted("2.4"));
        refuses("present gravity: expected at most the original gravity", () -> stout().at("1.060"));
        refuses("warmest temperature: expected one", () -> stout().warmest());
        refuses("expected -1 to 40 °C", () -> stout().warmest("50 °C"));
    }

    private static void refuses(String words, org.junit.jupiter.api.function.Executable call) {
        String message = String.valueOf(
                assertThrows(IllegalArgumentException.class, call).getMessage());
        assertTrue(message.contains(words), message);
    }

    private static RackingSheet.Line line(RackingPlan plan) {
        return plan.sheet().lines().get(0);
    }

    private static void says(RackingSheet sheet, String words, Finding.Weight weight) {
        assertTrue(
                sheet.findings().stream()
                        .anyMatch(finding ->
                                finding.weight() == weight && finding.text().contains(words)),
                () -> sheet.findings().toString());
    }
}
