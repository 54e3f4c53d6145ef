package costrel.hops;

import static costrel.ReferenceTable.number;
import static costrel.hops.HopCases.between;
import static costrel.hops.HopCases.boil;
import static costrel.hops.HopCases.cases;
import static costrel.hops.HopCases.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.wort.TemperatureCourse;
import costrel.wort.TemperatureCourse.Hold;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TinsethTest {
    private static final double NINE_PLACES = 0.5e-9 + 1e-15;
    private static final double PRINTED = 0.0005;
    private static final BoilContext BOIL = boil(TemperatureCourse.of(new Hold(95, 20)));

    @Test
    void the_printed_cells_come_out() {
        int printed = 0;
        for (Map<String, String> row : ReferenceTable.read("hops/tinseth.csv")) {
            double found = Tinseth.utilisation(number(row, "sg"), number(row, "minutes"));
            assertEquals(number(row, "utilisation"), found, NINE_PLACES, row.toString());
            if (!row.getOrDefault("printed", "").isEmpty()) {
                assertEquals(number(row, "printed"), found, PRINTED, row.toString());
                printed++;
            }
        }
        assertEquals(5, printed);
    }

    @Test
    void ten_points_of_gravity_cost_a_twelfth() {
        // 0.000125^0.010 = 0.914048
        cases(200, random -> {
            double sg = between(random, 1.000, 1.120);
            double minutes = between(random, 1, 120);
            double ratio = Tinseth.utilisation(sg + 0.010, minutes) / Tinseth.utilisation(sg, minutes);
            assertEquals(0.914048, ratio, 1e-6);
        });
    }

    @Test
    void longer_boils_give_more_and_stronger_worts_less() {
        assertEquals(0, Tinseth.utilisation(1.040, 0));
        // 1.65/4.15, which e^(−0.04 t) reaches to ten digits in 600 min
        assertEquals(0.397590361446, Tinseth.utilisation(1.000, 600), 1e-10);
        cases(200, random -> {
            double sg = between(random, 1.000, 1.120);
            double minutes = between(random, 0, 300);
            assertTrue(Tinseth.utilisation(sg, minutes + 1) > Tinseth.utilisation(sg, minutes));
            assertTrue(Tinseth.utilisation(sg + 0.001, minutes + 1) < Tinseth.utilisation(sg, minutes + 1));
        });
    }

    @Test
    void the_gravity_is_the_mean_of_copper_up_and_cast() {
        // Printed for 30 min at 1.040; copper up 1.036 and cast 1.044 have that mean.
        BoilContext boil = new BoilContext(60, 100, 36, 44, TemperatureCourse.of(), 0, 95, 0.9);
        UtilisationFigure figure = new Tinseth().of(new HopUse.Copper(30), boil);
        assertEquals(0.194, figure.share(), PRINTED);
        assertEquals("", figure.remark());
    }

    @Test
    void first_wort_and_mash_hops_count_as_boiled_from_the_start() {
        double fromTheStart = share(new HopUse.Copper(60));
        assertEquals(fromTheStart, share(new HopUse.FirstWort()));
        assertEquals(fromTheStart, share(new HopUse.Mash()));
        assertTrue(remark(new HopUse.FirstWort()).contains("start of the boil"));
        assertTrue(remark(new HopUse.Mash()).contains("a fifth"));
    }

    @Test
    void hops_after_the_boil_count_nothing_and_that_is_said() {
        for (HopUse use : new HopUse[] {new HopUse.HotStand(20), new HopUse.Hopback()}) {
            assertEquals(0, share(use));
            assertTrue(remark(use).contains("count nothing"));
        }
        assertEquals(UtilisationFigure.NONE, new Tinseth().of(new HopUse.DryHopTank(), BOIL));
        assertEquals(UtilisationFigure.NONE, new Tinseth().of(new HopUse.DryHopCask(), BOIL));
    }

    @Test
    void strong_worts_and_long_boils_are_remarked_on() {
        BoilContext strong = new BoilContext(180, 100, 120, 130, TemperatureCourse.of(), 0, 95, 1);
        String remark = new Tinseth().of(new HopUse.Copper(150), strong).remark();
        assertTrue(remark.contains("1.125") && remark.contains("150 min"), remark);
        BoilContext edge = new BoilContext(120, 100, 30, 30, TemperatureCourse.of(), 0, 95, 1);
        assertEquals("", new Tinseth().of(new HopUse.Copper(120), edge).remark());
    }

    @Test
    void hops_cannot_boil_longer_than_the_wort() {
        refused(() -> new Tinseth().of(new HopUse.Copper(75), BOIL), "60 min", "found 75 min");
    }

    @Test
    void it_speaks_of_finished_beer() {
        assertEquals("tinseth", new Tinseth().name());
        assertEquals("finished beer", new Tinseth().speaksOf());
    }

    @Test
    void figures_beyond_sense_are_refused() {
        refused(() -> Tinseth.utilisation(1040, 60), "relative density", "1040");
        refused(() -> Tinseth.utilisation(1.040, Double.NaN), "boil", "NaN");
    }

    private static double share(HopUse use) {
        return new Tinseth().of(use, BOIL).share();
    }

    private static String remark(HopUse use) {
        return new Tinseth().of(use, BOIL).remark();
    }
}
