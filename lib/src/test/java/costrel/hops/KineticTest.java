package costrel.hops;

import static costrel.hops.HopCases.boil;
import static costrel.hops.HopCases.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.wort.TemperatureCourse;
import costrel.wort.TemperatureCourse.Hold;
import costrel.wort.TemperatureCourse.Linear;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Expected yields are those of isomerisation_yields.csv and hot_stand.csv, where their source stands. */
class KineticTest {
    private static final double SIX_PLACES = 0.5e-6 + 1e-12;
    private static final double LONG_STAND_ISO = 0.158523;
    private static final Kinetic KINETIC = new Kinetic(OptionalDouble.of(1));
    private static final BoilContext COOLING_STAND = boil(TemperatureCourse.of(new Linear(100, 80, 30)));
    private static final BoilContext NO_STAND = boil(TemperatureCourse.of());

    @Test
    void copper_hops_boil_and_then_stand() {
        assertEquals(0.531645, share(new HopUse.Copper(60), COOLING_STAND), SIX_PLACES);
        assertEquals(0.475893, share(new HopUse.Copper(60), NO_STAND), SIX_PLACES);
    }

    @Test
    void the_boil_has_its_own_temperature() {
        BoilContext underPressure = new BoilContext(60, 105, 40, 44, TemperatureCourse.of(), 0, 95, 1);
        assertEquals(0.508100, share(new HopUse.Copper(45), underPressure), SIX_PLACES);
    }

    @Test
    void hops_at_the_end_of_the_boil_are_hops_of_the_whole_stand() {
        assertEquals(LONG_STAND_ISO, share(new HopUse.Copper(0), COOLING_STAND), SIX_PLACES);
        assertEquals(LONG_STAND_ISO, share(new HopUse.HotStand(Double.POSITIVE_INFINITY), COOLING_STAND), SIX_PLACES);
        assertEquals(LONG_STAND_ISO, share(new HopUse.HotStand(30), COOLING_STAND), SIX_PLACES);
        assertEquals(0, share(new HopUse.Copper(0), NO_STAND));
    }

    @Test
    void hops_in_the_hot_stand_see_its_last_minutes() {
        // 45 min at 95 °C of a stand that began at 100 °C
        BoilContext boil = boil(TemperatureCourse.of(new Hold(100, 15), new Hold(95, 75)));
        assertEquals(0.292200, share(new HopUse.HotStand(45), boil), SIX_PLACES);
        assertEquals(0, share(new HopUse.HotStand(0), boil));
    }

    @Test
    void a_stand_that_is_too_short_is_counted_whole_and_that_is_said() {
        UtilisationFigure figure = KINETIC.of(new HopUse.HotStand(45), COOLING_STAND);
        assertEquals(LONG_STAND_ISO, figure.share(), SIX_PLACES);
        assertTrue(figure.remark().contains("45 min") && figure.remark().contains("30 min"), figure.remark());
    }

    @Test
    void the_hopback_has_its_own_contact() {
        BoilContext boil = new BoilContext(60, 100, 40, 44, COOLING_STAND.stand(), 30, 95, 1);
        assertEquals(0.209652, share(new HopUse.Hopback(), boil), SIX_PLACES);
        BoilContext straightThrough = new BoilContext(60, 100, 40, 44, COOLING_STAND.stand(), 0, 95, 1);
        assertEquals(0, share(new HopUse.Hopback(), straightThrough));
    }

    @Test
    void first_wort_and_mash_hops_count_as_boiled_from_the_start() {
        for (HopUse use : new HopUse[] {new HopUse.FirstWort(), new HopUse.Mash()}) {
            UtilisationFigure figure = KINETIC.of(use, NO_STAND);
            assertEquals(0.475893, figure.share(), SIX_PLACES);
            assertTrue(figure.remark().contains("start of the boil"), figure.remark());
        }
    }

    @Test
    void recovery_and_what_stays_behind_take_their_share() {
        Kinetic fitted = new Kinetic(OptionalDouble.of(0.5));
        BoilContext boil = new BoilContext(60, 100, 40, 44, TemperatureCourse.of(), 0, 95, 0.9);
        UtilisationFigure figure = fitted.of(new HopUse.Copper(60), boil);
        assertEquals(0.475893 * 0.5 * 0.9, figure.share(), SIX_PLACES);
        assertFalse(figure.upperBound());
        assertEquals("", figure.remark());
    }

    @Test
    void without_recovery_the_figure_is_an_upper_bound_and_says_so() {
        UtilisationFigure figure = new Kinetic(OptionalDouble.empty()).of(new HopUse.Copper(60), NO_STAND);
        assertEquals(0.475893, figure.share(), SIX_PLACES);
        assertTrue(figure.upperBound());
        assertTrue(figure.remark().contains("upper bound"), figure.remark());
    }

    @Test
    void a_stand_below_the_temperatures_of_the_study_is_remarked_on() {
        String remark = KINETIC.of(new HopUse.Copper(60), COOLING_STAND).remark();
        assertTrue(remark.contains("extrapolated") && remark.contains("90 to 130 °C"), remark);
    }

    @Test
    void dry_hops_count_nothing() {
        assertEquals(UtilisationFigure.NONE, KINETIC.of(new HopUse.DryHopTank(), COOLING_STAND));
        assertEquals(UtilisationFigure.NONE, KINETIC.of(new HopUse.DryHopCask(), COOLING_STAND));
    }

    @Test
    void it_speaks_of_collected_wort() {
        assertEquals("kinetic", KINETIC.name());
        assertEquals("collected wort", KINETIC.speaksOf());
    }

    @Test
    void what_cannot_be_is_refused() {
        refused(() -> KINETIC.of(new HopUse.Copper(61), NO_STAND), "found 61 min");
        refused(() -> new Kinetic(OptionalDouble.of(0)), "recovery", "more than 0 %");
        refused(() -> new Kinetic(OptionalDouble.of(1.2)), "120 %");
        refused(() -> new Kinetic(OptionalDouble.of(Double.NaN)), "NaN");
    }

    private static double share(HopUse use, BoilContext boil) {
        return KINETIC.of(use, boil).share();
    }
}
