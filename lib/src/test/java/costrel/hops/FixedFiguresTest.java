package costrel.hops;

import static costrel.hops.HopCases.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.FixedFigures.Point;
import costrel.wort.TemperatureCourse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** All figures are invented: a plant's own have no source but the plant. */
class FixedFiguresTest {
    private static final double ARITHMETIC = 1e-12;
    private static final BoilContext BOIL = new BoilContext(120, 100, 40, 44, TemperatureCourse.of(), 15, 95, 0.95);
    private static final FixedFigures PLANT = new FixedFigures(
            Map.of("first wort", 0.33, "mash", 0.07, "hot stand", 0.12, "hopback", 0.05),
            List.of(new Point(90, 0.31), new Point(15, 0.16), new Point(60, 0.28)));

    @Test
    void a_stated_time_has_its_figure() {
        assertEquals(0.16, copper(15).share(), ARITHMETIC);
        assertEquals(0.28, copper(60).share(), ARITHMETIC);
        assertEquals(0.31, copper(90).share(), ARITHMETIC);
    }

    @Test
    void between_two_times_the_figure_lies_on_a_straight_line() {
        assertEquals(0.20, copper(30).share(), ARITHMETIC);
        assertEquals(0.295, copper(75).share(), ARITHMETIC);
        assertEquals("", copper(75).remark());
    }

    @Test
    void outside_the_stated_times_the_nearest_is_held_and_that_is_said() {
        assertEquals(0.16, copper(5).share(), ARITHMETIC);
        assertTrue(copper(5).remark().contains("15 min"), copper(5).remark());
        assertEquals(0.31, copper(120).share(), ARITHMETIC);
        assertTrue(copper(120).remark().contains("90 min"), copper(120).remark());
    }

    @Test
    void a_single_figure_holds_everywhere() {
        FixedFigures one = new FixedFigures(Map.of(), List.of(new Point(60, 0.30)));
        assertEquals(0.30, one.of(new HopUse.Copper(60), BOIL).share());
        assertEquals(0.30, one.of(new HopUse.Copper(10), BOIL).share());
    }

    @Test
    void other_uses_have_one_figure_each() {
        assertEquals(0.33, PLANT.of(new HopUse.FirstWort(), BOIL).share());
        assertEquals(0.07, PLANT.of(new HopUse.Mash(), BOIL).share());
        assertEquals(0.12, PLANT.of(new HopUse.HotStand(10), BOIL).share());
        assertEquals(0.05, PLANT.of(new HopUse.Hopback(), BOIL).share());
    }

    @Test
    void dry_hops_count_nothing() {
        assertEquals(UtilisationFigure.NONE, PLANT.of(new HopUse.DryHopTank(), BOIL));
        assertEquals(UtilisationFigure.NONE, PLANT.of(new HopUse.DryHopCask(), BOIL));
    }

    @Test
    void a_use_without_a_figure_is_refused_by_name() {
        FixedFigures bare = new FixedFigures(Map.of(), List.of());
        refused(() -> bare.of(new HopUse.Hopback(), BOIL), "utilisation hopback");
        refused(() -> bare.of(new HopUse.FirstWort(), BOIL), "utilisation first wort");
        refused(() -> bare.of(new HopUse.Copper(90), BOIL), "utilisation copper 90 min");
        assertEquals(UtilisationFigure.NONE, bare.of(new HopUse.DryHopCask(), BOIL));
    }

    @Test
    void what_cannot_be_is_refused() {
        refused(() -> new FixedFigures(Map.of("kettle", 0.3), List.of()), "hot stand", "'kettle'");
        refused(() -> new FixedFigures(Map.of("mash", 1.3), List.of()), "utilisation mash", "130 %");
        refused(() -> new FixedFigures(Map.of("mash", Double.NaN), List.of()), "utilisation mash");
        refused(() -> new FixedFigures(Map.of(), List.of(new Point(60, 0.3), new Point(60, 0.2))), "60 min", "two");
        refused(() -> new Point(60, -0.1), "utilisation copper 60 min", "-10 %");
        refused(() -> new Point(60, -1e-8), "utilisation copper 60 min", "-0.000001 %");
        refused(() -> new Point(-1, 0.1), "time of a copper utilisation");
        refused(() -> PLANT.of(new HopUse.Copper(130), BOIL), "120 min", "found 130 min");
    }

    @Test
    void it_speaks_of_collected_wort() {
        assertEquals("plant", PLANT.name());
        assertEquals("collected wort", PLANT.speaksOf());
    }

    private static UtilisationFigure copper(double minutes) {
        return PLANT.of(new HopUse.Copper(minutes), BOIL);
    }
}
