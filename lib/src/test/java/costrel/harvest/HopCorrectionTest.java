package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.harvest.HopCorrection.Gyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class HopCorrectionTest {

    /** Sums of squares lose some digits to one another. */
    private static final double CLOSED_FORM = 1e-9;

    /** t is printed to three decimals. */
    private static final double T_PRINTED = 0.0005;

    private static final long USUAL_SEED = 19080301;

    /** Student's t that 2.5 % exceed, by degrees of freedom: Fisher and Yates, Statistical Tables, table III. */
    private static final Map<Integer, Double> T =
            Map.of(1, 12.706, 2, 4.303, 3, 3.182, 4, 2.776, 5, 2.571, 9, 2.262, 10, 2.228, 20, 2.086, 30, 2.042);

    @Test
    void lines_through_the_origin_have_their_certified_figures() {
        // National Institute of Standards and Technology, Statistical Reference Datasets, NoInt1 and NoInt2: certified
        // slope,
        // its standard deviation and the residual standard deviation. x runs from 60 to 70, y from 130 to 140.
        List<Gyle> first = new ArrayList<>();
        for (int x = 60; x <= 70; x++) {
            first.add(new Gyle(x, x + 70));
        }
        certified(first, 2.07438016528926, 0.0165289256198347, 3.56753034006338);
        certified(
                List.of(new Gyle(4, 3), new Gyle(5, 4), new Gyle(6, 4)),
                0.727272727272727,
                0.0420827318078432,
                0.369274472937998);
    }

    private static void certified(List<Gyle> gyles, double slope, double slopeDeviation, double residual) {
        HopCorrection found = HopCorrection.fit(gyles);
        assertEquals(slope, found.factor(), CLOSED_FORM);
        assertEquals(residual, found.residualEbu(), CLOSED_FORM);
        double t = t(gyles.size() - 1);
        assertEquals(slope + t * slopeDeviation, found.high(), T_PRINTED * slopeDeviation);
        assertEquals(slope - t * slopeDeviation, found.low(), T_PRINTED * slopeDeviation);
    }

    @Test
    void factor_and_interval_follow_the_closed_form() {
        long seed = Long.getLong("seed", USUAL_SEED);
        Random random = new Random(seed);
        for (int degrees : T.keySet()) {
            List<Gyle> gyles = gyles(random, degrees + 1, 0.85, 2);
            double xx = 0;
            double xy = 0;
            for (Gyle gyle : gyles) {
                xx += gyle.calculatedEbu() * gyle.calculatedEbu();
                xy += gyle.calculatedEbu() * gyle.laboratoryEbu();
            }
            double slope = xy / xx;
            double squares = 0;
            for (Gyle gyle : gyles) {
                double off = gyle.laboratoryEbu() - slope * gyle.calculatedEbu();
                squares += off * off;
            }
            double residual = Math.sqrt(squares / degrees);
            double error = residual / Math.sqrt(xx);
            HopCorrection found = HopCorrection.fit(gyles);
            String fault = "-Dseed=" + seed + ", " + degrees + " degrees of freedom";
            assertEquals(slope, found.factor(), CLOSED_FORM, fault);
            assertEquals(residual, found.residualEbu(), CLOSED_FORM * 1000, fault);
            assertEquals(t(degrees), (found.high() - found.factor()) / error, T_PRINTED * 1.01, fault);
            assertEquals(t(degrees), (found.factor() - found.low()) / error, T_PRINTED * 1.01, fault);
            assertEquals(degrees + 1, found.gyles(), fault);
        }
    }

    @Test
    void nineteen_intervals_in_twenty_hold_the_true_factor() {
        long seed = Long.getLong("seed", USUAL_SEED);
        Random random = new Random(seed);
        int tries = 4000;
        int held = 0;
        for (int i = 0; i < tries; i++) {
            HopCorrection found = HopCorrection.fit(gyles(random, 3 + i % 8, 0.9, 1.5));
            held += found.low() <= 0.9 && 0.9 <= found.high() ? 1 : 0;
        }
        // four standard deviations of a binomial with p = 0.95
        double width = 4 * Math.sqrt(0.95 * 0.05 / tries);
        assertEquals(0.95, (double) held / tries, width, "-Dseed=" + seed);
    }

    @Test
    void a_laboratory_that_reads_a_tenth_higher_has_a_factor_a_tenth_higher() {
        List<Gyle> gyles = gyles(new Random(USUAL_SEED), 8, 0.9, 2);
        HopCorrection found = HopCorrection.fit(gyles);
        HopCorrection higher = HopCorrection.fit(gyles.stream()
                .map(gyle -> new Gyle(gyle.calculatedEbu(), 1.1 * gyle.laboratoryEbu()))
                .toList());
        assertEquals(1.1 * found.factor(), higher.factor(), CLOSED_FORM);
        assertEquals(1.1 * found.low(), higher.low(), CLOSED_FORM);
        assertEquals(1.1 * found.high(), higher.high(), CLOSED_FORM);
        List<Gyle> backwards = new ArrayList<>(gyles);
        Collections.reverse(backwards);
        assertEquals(found.low(), HopCorrection.fit(backwards).low(), CLOSED_FORM);
    }

    @Test
    void gyles_that_agree_leave_nothing_over() {
        HopCorrection found = HopCorrection.fit(List.of(new Gyle(20, 16), new Gyle(30, 24), new Gyle(40, 32)));
        assertEquals(0.8, found.factor(), CLOSED_FORM);
        // what the cancelling of sums of squares may leave of figures as large as 40
        assertEquals(0, found.residualEbu(), 1e-5);
        assertEquals(0.8, found.low(), 1e-5);
        assertEquals(0.8, found.high(), 1e-5);
    }

    @Test
    void the_text_says_how_many_gyles_and_how_sure() {
        // NoInt2 as above; its interval, 0.72727 ± 4.303 × 0.04208, is 0.546 to 0.908
        HopCorrection found = HopCorrection.fit(List.of(new Gyle(4, 3), new Gyle(5, 4), new Gyle(6, 4)));
        assertTrue(found.text().contains("× 0.727: 3 gyles, 95 % interval 0.546 to 0.908"), found.text());
        assertTrue(!found.text().contains("don't show"), found.text());
        // two gyles 0.9 and 1.1 of what was calculated say nothing against 1
        String unsure =
                HopCorrection.fit(List.of(new Gyle(30, 27), new Gyle(30, 33))).text();
        assertTrue(unsure.contains("don't show that a correction is needed"), unsure);
    }

    @Test
    void too_few_gyles_and_figures_that_cannot_be_are_refused() {
        refused("2 gyles or more with laboratory EBU, found 0", () -> HopCorrection.fit(List.of()));
        refused("found 1", () -> HopCorrection.fit(List.of(new Gyle(30, 28))));
        for (double wrong : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1e200}) {
            refused("calculated bitterness: expected more than 0 EBU", () -> new Gyle(wrong, 30));
            refused("laboratory bitterness: expected more than 0 EBU", () -> new Gyle(30, wrong));
        }
        refused("interval", () -> new HopCorrection(1, 1.1, 1.2, 3, 1));
        refused("interval", () -> new HopCorrection(1, Double.NaN, 1.2, 3, 1));
        refused("bitterness correction", () -> new HopCorrection(0, -1, 1, 3, 1));
        refused("bitterness left over", () -> new HopCorrection(1, 0.9, 1.1, 3, -1));
        refused("found 1", () -> new HopCorrection(1, 0.9, 1.1, 1, 1));
    }

    private static double t(int degrees) {
        Double t = T.get(degrees);
        if (t == null) {
            throw new AssertionError("expected degrees of freedom of the table, found " + degrees);
        }
        return t;
    }

    /** Gyles about a true factor, with a laboratory's normal scatter. */
    private static List<Gyle> gyles(Random random, int count, double factor, double scatterEbu) {
        List<Gyle> gyles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double calculated = 20 + random.nextDouble() * 30;
            gyles.add(new Gyle(calculated, factor * calculated + scatterEbu * random.nextGaussian()));
        }
        return gyles;
    }

    private static void refused(String words, Executable attempt) {
        String message = String.valueOf(
                assertThrows(IllegalArgumentException.class, attempt).getMessage());
        assertTrue(message.contains(words), () -> "expected a message with '" + words + "', found: " + message);
    }
}
