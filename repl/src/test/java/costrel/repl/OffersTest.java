package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;

/** What Tab offers over Lanternfold; names and figures are those of its files. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(120)
final class OffersTest {

    private Session session = Session.start(new Rendering(List.of()), "");

    @BeforeAll
    void start() {
        session.close();
        session = Session.start(Sheets.rendering(), Prelude.read());
        Desk.open(WordsTest.LANTERNFOLD);
        Desk.day("2026-11-25");
    }

    @AfterAll
    void end() {
        session.close();
    }

    private List<Offers.Offer> at(String source) {
        return Offers.at(session, source, source.length()).offers();
    }

    private List<String> shown(String source) {
        return at(source).stream().map(Offers.Offer::shown).toList();
    }

    private String figure(String source, String name) {
        return at(source).stream()
                .filter(offer -> offer.shown().equals(name))
                .map(Offers.Offer::figure)
                .findFirst()
                .orElse("not offered");
    }

    @Test
    void beers_are_offered_with_their_gravity_and_bitterness() {
        assertEquals(
                List.of(
                        "Haymoth Golden",
                        "Oatlamp Stout",
                        "Snuffer Strong",
                        "Tallow Mild",
                        "Trimwick Pale",
                        "Wickgate Bitter"),
                shown("brew(\""));
        for (Offers.Offer offer : at("brew(\"Wick")) {
            assertTrue(offer.figure().matches("OG 1\\.\\d{4}, \\d+ EBU"), offer.toString());
        }
        assertEquals(6, at("x = compare(brew(\"Tallow Mild\"), brew(\"").size());
    }

    @Test
    void plants_are_offered_with_their_vessels() {
        // plants.csv: FV 6000 L and copper 7500 L of Main
        assertEquals("FV 6000 L, copper 7500 L", figure("brew(\"Tallow Mild\").on(\"", "Main"));
    }

    @Test
    void lots_are_those_of_the_variety_before_them_with_alpha_and_stock() {
        assertEquals(List.of("FG26-0212", "FG25-0377"), shown("b.lot(\"First Gold\", \""));
        assertEquals(List.of("FG26-0212", "FG25-0377"), shown("b.lot(\"first gold\",\"F"));
        // hop-lots.csv: 55 kg of FG26-0212
        String figure = figure("b.lot(\"First Gold\", \"", "FG26-0212");
        assertTrue(figure.matches("alpha \\d\\.\\d\\d %, 55\\.0 kg"), figure);
        // hop-lots.csv: 150 kg and 6 kg of Challenger
        assertEquals("156.0 kg in store", figure("b.lot(\"", "Challenger"));
    }

    @Test
    void containers_items_gyles_and_lengths_are_offered_with_a_figure() {
        // containers.csv: a firkin of 40.91481 L
        assertEquals("40.91 L", figure("p.at(\"", "firkin"));
        // prices-2026-autumn.csv: the first row of pale ale malt
        assertEquals("£21.45 for 25 kg", figure("risk(b).price(\"", "pale ale malt"));
        assertEquals("a part of the cost sheet", figure("risk(b).price(\"", "mashed goods"));
        assertEquals("on Main", figure("b.length(\"", "30 brl"));
        assertTrue(shown("harvest().gyle(\"").contains("001"));
        assertEquals(List.of("least cost", "oldest first", "steadiest"), shown("harvest().objective(\""));
    }

    @Test
    void what_is_put_in_closes_the_text_or_goes_on_to_the_next() {
        assertEquals("Main\")", at("b.on(\"Ma").get(1).typed());
        assertEquals("First Gold\", \"", at("b.lot(\"Fir").get(3).typed());
        Offers closed = Offers.at(session, "b.on(\"Ma\")", 8);
        assertEquals("Main", closed.offers().get(1).typed());
        assertEquals(6, closed.anchor());
    }

    @Test
    void words_and_names_given_come_before_java_and_java_is_there_all_the_same() {
        assertEquals(List.of("brew(beer)"), shown("bre"));
        assertEquals("brew(\"", at("bre").get(0).typed());
        assertEquals(List.of("range()"), shown("x = ran"));
        session.evaluate("bitterBrew = brew(\"Wickgate Bitter\")", silent());
        assertEquals(List.of("bitterBrew"), shown("compare(bit"));
        assertTrue(shown("Local").contains("LocalDate"));
        assertTrue(shown("bitterBrew.gy").containsAll(List.of("gyle()", "gyles()")));
        assertEquals("the brew sheet", figure("bitterBrew.", "gyle()"));
        assertEquals("on(\"", at("bitterBrew.on").get(0).typed());
        assertTrue(at("help ").stream().anyMatch(offer -> offer.typed().equals("tour")));
        assertEquals(6, at("brew ").size());
        assertEquals(List.of(), at("\"free text and bee"));
    }

    @Test
    void a_spot_knows_call_place_and_the_texts_before() {
        assertEquals(
                Optional.of(new Spot("lot", 1, List.of("First, (Gold)"), Optional.of(24))),
                Spot.of("b.lot(\"First, (Gold)\", \"FG"));
        assertEquals(Optional.of(new Spot("max", 1, List.of(""), Optional.empty())), Spot.of("Math.max(f(1, 2), "));
        assertEquals(Optional.empty(), Spot.of("f(1, 2)"));
        assertEquals(Optional.of(new Spot("", 0, List.of(), Optional.of(1))), Spot.of("\"free"));
        assertEquals(Optional.of(new Spot("f", 0, List.of(), Optional.of(3))), Spot.of("f(\"a\\\"b"));
    }

    @Test
    void the_hint_says_what_is_to_stand_there_or_tells_the_figure() {
        assertEquals("\"beer\"", Hint.of("brew("));
        assertEquals("plant", Hint.of("brew(\"Tallow Mild\").on(\""));
        assertEquals("\"hop lot\"", Hint.of("b.lot(\"First Gold\", "));
        assertEquals("  FV 6000 L, copper 7500 L", Hint.of("b.on(\"Main"));
        assertEquals("  the beers of the brewery", Hint.of("beers"));
        assertEquals("present gravity, such as 1.0115", Hint.of("racking(b).at(\""));
        assertEquals("container", Hint.of("b.pricing().at(\""));
        assertEquals("", Hint.of("b.on(\"Mai"));
        assertEquals("", Hint.of("x = 5"));
    }

    private static Listener silent() {
        return new Listener() {
            @Override
            public void answer(String text, boolean needsAPerson) {}

            @Override
            public void note(String text) {}
        };
    }
}
