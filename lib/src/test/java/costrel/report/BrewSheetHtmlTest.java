package costrel.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.brewery.Brew;
import costrel.brewery.Brewery;
import costrel.cost.CostSheet;
import costrel.scaling.Gyle;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BrewSheetHtmlTest {

    /** Half of the last digit printed. */
    private static final double HUNDREDTH = 0.005 + 1e-9;

    private static final double WHOLE = 0.5 + 1e-9;
    private static final double GRAVITY = 0.05 + 1e-9;

    private static final Brewery LANTERNFOLD = Brewery.open(Path.of("../samples/lanternfold"));
    private static final Optional<BoilClock> CAST_AT_NINE = Optional.of(BoilClock.parse("cast 09:00"));

    private static Brew brew(String beer) {
        return LANTERNFOLD.brew(beer).on("Main").length("24 brl").day("2026-11-25");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Tallow Mild",
                "Wickgate Bitter",
                "Haymoth Golden",
                "Oatlamp Stout",
                "Snuffer Strong",
                "Trimwick Pale"
            })
    void the_figures_on_the_sheet_are_those_of_the_gyle(String beer) {
        Brew brew = brew(beer);
        Gyle gyle = brew.gyle();
        Page page = new Page(BrewSheetHtml.of(brew, CAST_AT_NINE));
        page.wellFormed();
        assertEquals(beer, page.figure("beer"));
        for (int i = 0; i < gyle.grist().size(); i++) {
            assertEquals(gyle.grist().get(i).weighedKg(), page.number("grist." + i + ".kg"), HUNDREDTH);
        }
        for (int i = 0; i < gyle.hops().size(); i++) {
            Gyle.Hop hop = gyle.hops().get(i);
            assertEquals(hop.weighedKg(), page.number("hop." + i + ".kg"), HUNDREDTH);
            assertEquals(hop.hop().lot(), page.figure("hop." + i + ".lot"));
        }
        assertEquals(gyle.collectedL(), page.number("expect.collected.l"), WHOLE);
        assertEquals(gyle.beer().rackedL(), page.number("expect.racked.l"), WHOLE);
        assertEquals(gyle.og().excessDegrees(), (page.number("expect.collected.gravity") - 1) * 1000, GRAVITY);
        assertEquals(
                gyle.beer().rackingGravity().orElseThrow().excessDegrees(),
                (page.number("expect.racked.gravity") - 1) * 1000,
                GRAVITY);
        assertEquals(gyle.liquor().orElseThrow().mashL(), page.number("liquor.mash"), WHOLE);
        assertEquals(gyle.liquor().orElseThrow().spargeL(), page.number("liquor.sparge"), WHOLE);
        CostSheet cost = brew.cost();
        for (int i = 0; i < cost.containers().size(); i++) {
            assertEquals(cost.containers().get(i).count(), (int) page.number("fill." + i + ".count"));
        }
        assertEquals(String.join(", ", cost.allergens()), page.figure("allergens"));
        assertEquals(
                gyle.findings().size(),
                page.figures().getOrDefault("finding", List.of()).size());
        assertTrue(page.boxes() > 20, "boxes to write in");
        assertFalse(page.html().replace("xmlns=\"http:", "").contains("http:"), "another file is asked for");
    }

    /** Haymoth Golden boils 70 min, has an addition at 10 min, and cools for 12 + 30 min of which the Cascade has 30. */
    @Test
    void additions_stand_at_their_time_of_the_clock() {
        Page cast = new Page(BrewSheetHtml.of(brew("Haymoth Golden"), CAST_AT_NINE));
        assertEquals("07:50", cast.figure("boil.clock"));
        assertEquals("08:50", cast.figure("hop.1.clock"));
        assertEquals("09:00", cast.figure("cast.clock"));
        assertEquals("09:12", cast.figure("hop.2.clock"));
        assertFalse(cast.figures().containsKey("hop.0.clock"), "first wort goes in before the boil");
        Page boil = new Page(BrewSheetHtml.of(brew("Haymoth Golden"), Optional.of(BoilClock.parse("boil 23:20"))));
        assertEquals("23:20", boil.figure("boil.clock"));
        assertEquals("00:20 next day", boil.figure("hop.1.clock"));
    }

    @Test
    void without_a_clock_there_are_boxes_for_the_times() {
        Page page = new Page(BrewSheetHtml.of(brew("Haymoth Golden"), Optional.empty()));
        assertFalse(page.figures().containsKey("boil.clock"));
        assertTrue(page.html().contains("aria-label=\"time of the boil starts, to be written in\""), page.html());
    }

    /** 24 brl are 3927.82 L: 88.0 cm at 3000 L and 128.5 cm at 4500 L give 113.1 cm. Beyond the table the cell is blank. */
    @Test
    void the_dip_to_expect_is_read_off_the_plants_own_table() {
        Page page = new Page(BrewSheetHtml.of(brew("Haymoth Golden"), Optional.empty()));
        assertEquals("113.1", page.figure("expect.collected.dip"));
        Page large = new Page(
                BrewSheetHtml.of(brew("Haymoth Golden").length("35 brl").insist(), Optional.empty()));
        assertEquals("", large.figure("expect.collected.dip"));
        assertTrue(large.html().contains("read your own"), large.html());
    }

    /** Nine days of tank time from 25 November. */
    @Test
    void a_tank_time_gives_the_day_to_rack() {
        Page page = new Page(BrewSheetHtml.of(brew("Haymoth Golden"), Optional.empty()));
        assertEquals("2026-11-25", page.figure("brewed"));
        assertEquals("2026-12-04", page.figure("racked"));
    }

    @Test
    void the_dangers_of_the_day_are_named_and_bottles_where_there_are_any() {
        String stout = BrewSheetHtml.of(brew("Oatlamp Stout"), Optional.empty());
        for (String word : List.of("scald", "Caustic", "Carbon dioxide", "Bottles burst")) {
            assertTrue(stout.contains(word), word);
        }
        assertFalse(BrewSheetHtml.of(brew("Tallow Mild"), Optional.empty()).contains("Bottles burst"));
    }

    @ParameterizedTest
    @CsvSource({"noon", "25:00", "'boil at 9'", "''"})
    void a_clock_that_is_none_is_refused(String text) {
        IllegalArgumentException told = assertThrows(IllegalArgumentException.class, () -> BoilClock.parse(text));
        assertTrue(
                String.valueOf(told.getMessage()).startsWith("clock: expected a time of the boil or the cast"),
                told.toString());
    }

    /** What HTML 5 and XML 1.0 call for in text and attributes; controls and turned writing show as unreadable. */
    @Test
    void a_name_can_not_write_into_the_page() {
        assertEquals("&lt;b&gt; &amp; &quot;x&quot; &#39;y&#39;", Html.escaped("<b> & \"x\" 'y'"));
        assertEquals("a\uFFFDb\uFFFDc\uFFFD", Html.escaped("a\u0007b\u202Ec\uFFFF"));
    }

    @Test
    void a_picture_that_is_none_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> Picture.ofSvg("p", "t", "d", "<p>hello</p>"));
        assertThrows(
                IllegalArgumentException.class, () -> Picture.ofSvg("p", "t", "d", "<svg><script>x</script></svg>"));
        assertThrows(IllegalArgumentException.class, () -> Picture.ofPng("p", "t", "d", "\" onerror=\"x"));
        assertThrows(IllegalArgumentException.class, () -> Picture.ofSvg("p", "t", "", "<svg></svg>"));
    }
}
