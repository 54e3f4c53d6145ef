package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScaleRecordsTest {
    private static final List<String> NO_FIGURES = List.of(
            "",
            "24",
            "EBC",
            "24 ebc",
            "24 °L",
            "1,5 EBC",
            "1e3 EBC",
            "NaN EBC",
            "24 EBC x",
            "24.",
            ".5 EBC",
            "2 4 EBC");

    @Test
    void figures_are_read_with_their_unit() {
        assertEquals(Strength.of(4.2), Strength.parse("4.2 %"));
        assertEquals(Strength.of(4.2), Strength.parse("4.2 % ABV"));
        assertEquals(Strength.of(4.2), Strength.parse("4.2% vol"));
        assertEquals(Colour.of(24), Colour.parse("24 EBC"));
        assertEquals(Bitterness.of(28.5), Bitterness.parse(" 28.5 EBU "));
        assertEquals(Extract.of(1200), Extract.parse("1200 L°"));
    }

    @Test
    void a_bare_figure_or_another_scale_is_refused() {
        for (String text : NO_FIGURES) {
            Refusal.says("expected a strength such as 4.2 % vol", () -> Strength.parse(text));
            Refusal.says("expected a colour such as 24 EBC", () -> Colour.parse(text));
            Refusal.says("expected a bitterness such as 28 EBU", () -> Bitterness.parse(text));
            Refusal.says("expected an extract such as 1200 L°", () -> Extract.parse(text));
        }
        Refusal.says("colour: expected a colour such as 24 EBC, found '12 °P'", () -> Colour.parse("12 °P"));
        Refusal.says("expected a strength", () -> Strength.parse("4.2 % w/w"));
    }

    @Test
    void negative_and_boundless_figures_are_refused() {
        for (double wrong : new double[] {-0.1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            Refusal.says("strength: expected 0 to 100 % vol", () -> Strength.of(wrong));
            Refusal.says("colour: expected 0 EBC or more", () -> Colour.of(wrong));
            Refusal.says("bitterness: expected 0 EBU or more", () -> Bitterness.of(wrong));
            Refusal.says("extract: expected 0 L° or more", () -> Extract.of(wrong));
        }
        Refusal.says("strength: expected 0 to 100 % vol, found 101", () -> Strength.parse("101 %"));
        Refusal.says("colour: expected 0 EBC or more, found -3", () -> Colour.parse("-3 EBC"));
    }

    @Test
    void a_negative_zero_is_nought() {
        assertEquals(Strength.of(0), Strength.of(-0.0));
        assertEquals(Extract.of(0), Extract.of(-0.0));
    }

    @Test
    void figures_print_in_few_places() {
        assertEquals("4.0 % vol", Strength.of(4).toString());
        assertEquals("4.25 % vol", Strength.of(4.25).toString());
        assertEquals("24 EBC", Colour.of(24).toString());
        assertEquals("28.5 EBU", Bitterness.of(28.5).toString());
        assertEquals("1200000 L°", Extract.of(1.2e6).toString());
    }

    @Test
    void figures_read_back_what_they_printed() {
        Seeded.cases(1000, random -> {
            double figure = BigDecimal.valueOf(random.nextInt(100_000_000), 6).doubleValue();
            assertEquals(Strength.of(figure), Strength.parse(Strength.of(figure).toString()));
            assertEquals(Colour.of(figure), Colour.parse(Colour.of(figure).toString()));
            assertEquals(
                    Bitterness.of(figure),
                    Bitterness.parse(Bitterness.of(figure).toString()));
            assertEquals(Extract.of(figure), Extract.parse(Extract.of(figure).toString()));
        });
    }

    @Test
    void extract_is_litres_times_degrees() {
        // Oxford Companion to Beer, "Liter degrees per kilogram": 500 L at 1.056 from 100 kg is 280 L°/kg;
        // 1 kg at 300 L°/kg gives 10 L at 1.030.
        assertEquals(28000, Extract.from(500, Gravity.of(1.056)).litreDegrees(), 1e-9);
        assertEquals(300, Extract.from(10, Gravity.of(1.030)).litreDegrees(), 1e-9);
        Refusal.says("volume: expected 0 L or more", () -> Extract.from(-1, Gravity.of(1.030)));
        Refusal.says("extract: expected 0 L° or more", () -> Extract.from(1, Gravity.of(0.998)));
    }
}
