package costrel.scaling;

import costrel.hops.BoilContext;
import costrel.hops.UtilisationFigure;
import costrel.plant.MashEfficiency;
import costrel.plant.Plant;
import costrel.wort.TemperatureCourse;

/**
 * One brewing from collected wort back to the full copper. What the hops hold depends on how many there are, and how many there
 * are depends on the gravities: a fixed point in the litres in the copper at cast, V_out.
 */
final class BrewSolver {

    private static final double CLOSE_ENOUGH = 1e-12;
    private static final int MOST_ROUNDS = 100;

    private BrewSolver() {}

    /** Finds the grist that a volume in the copper at cast needs, or the gravity that a known grist gives. */
    interface GristRule {
        /**
         * Solves the grist.
         *
         * @param outL litres in the copper at cast, 20 °C
         * @param castL litres cast and collected, 20 °C
         * @return the grist
         */
        GristState at(double outL, double castL);
    }

    /** Finds the weight of every hop addition in a boil. */
    interface HopRule {
        /**
         * Solves the hops.
         *
         * @param boil the boil
         * @return the hops
         */
        HopState at(BoilContext boil);
    }

    /**
     * Grist and gravity.
     *
     * @param castDegrees gravity at cast, G_s
     * @param mashLitreDegrees litre-degrees in the copper from mashed goods
     * @param startSugarLitreDegrees litre-degrees of sugars that go in at the start of the boil
     * @param mashedKg weights of the mashed goods
     * @param sugarKg weights of the copper sugars
     */
    @SuppressWarnings("ArrayRecordComponent") // lives inside one solve and is never compared
    record GristState(
            double castDegrees,
            double mashLitreDegrees,
            double startSugarLitreDegrees,
            double[] mashedKg,
            double[] sugarKg) {}

    /**
     * Hops.
     *
     * @param kg weight of each addition
     * @param ebu bitterness of each addition
     * @param figures utilisation of each addition, before the plant's correction
     * @param heldL litres of wort that the spent hops hold
     * @param unmet bitterness that no addition could bring, EBU (negative: more than wanted)
     */
    @SuppressWarnings("ArrayRecordComponent") // lives inside one solve and is never compared
    record HopState(double[] kg, double[] ebu, UtilisationFigure[] figures, double heldL, double unmet) {}

    /**
     * A solved brewing.
     *
     * @param collectedL B
     * @param castL V_s
     * @param outL V_out
     * @param upL V_up
     * @param copperUpDegrees G_up
     * @param grist grist and gravity at cast
     * @param hops hops
     * @param boil the boil
     */
    record BrewState(
            double collectedL,
            double castL,
            double outL,
            double upL,
            double copperUpDegrees,
            GristState grist,
            HopState hops,
            BoilContext boil) {}

    static BrewState solve(
            Plant plant,
            double boilMinutes,
            TemperatureCourse stand,
            double collectedL,
            double castShare,
            GristRule gristRule,
            HopRule hopRule) {
        double castL = castShare * collectedL;
        double fixedL = castL + plant.hopback().deadL() + plant.copper().leftL();
        double evaporatedL = plant.copper().evaporationLPerHour() * boilMinutes / 60;
        double outL = fixedL;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            GristState grist = gristRule.at(outL, castL);
            double upL = outL + evaporatedL;
            double upDegrees = (grist.mashLitreDegrees() + grist.startSugarLitreDegrees()) / upL;
            BoilContext boil = new BoilContext(
                    boilMinutes,
                    plant.copper().boilingCelsius(),
                    upDegrees,
                    grist.castDegrees(),
                    stand,
                    plant.hopback().contactMinutes(),
                    plant.hopback().contactCelsius(),
                    castL / outL);
            HopState hops = hopRule.at(boil);
            double next = fixedL + hops.heldL();
            if (Math.abs(next - outL) <= CLOSE_ENOUGH * next) {
                return new BrewState(collectedL, castL, outL, upL, upDegrees, grist, hops, boil);
            }
            outL = next;
        }
        throw new ArithmeticException("the wort held by the hops did not settle in " + MOST_ROUNDS
                + " rounds; expected hop weights that a copper can hold");
    }

    /**
     * Mash efficiency at a cast gravity.
     *
     * @param efficiency the plant's
     * @param castDegrees gravity at cast
     * @return the share
     * @throws IllegalArgumentException if it leaves 0 to 1, or is still stated by a reference gyle
     */
    static double efficiencyAt(MashEfficiency efficiency, double castDegrees) {
        if (efficiency instanceof MashEfficiency.Constant constant) {
            return constant.share();
        }
        if (efficiency instanceof MashEfficiency.Linear linear) {
            double share = linear.share() - linear.slope() * (castDegrees - linear.referenceDegrees());
            if (!(share > 0 && share < 1)) {
                throw new IllegalArgumentException("mash efficiency at " + Math.round(castDegrees)
                        + " degrees: expected over 0 % and under 100 %, found " + Math.round(share * 1000) / 10.0
                        + " %");
            }
            return share;
        }
        throw new IllegalArgumentException("mash efficiency: expected a figure, found an extract efficiency ("
                + efficiency.text() + ") that has not been read on its reference gyle yet");
    }
}
