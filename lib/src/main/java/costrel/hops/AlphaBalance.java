package costrel.hops;

import java.util.List;

/**
 * The arithmetic of alpha acid and oil: what a weight of hops brings, what weight brings so much, and how lots stand for one
 * another. All of it is conservation of mass.
 *
 * <p>Alpha acids that meet here must be of one method and one moisture basis; see {@link AlphaMethodFactors} and
 * {@link HopAnalysis#alphaAsIs}.
 */
public final class AlphaBalance {

    /**
     * Most alpha acid that hot wort holds in solution, mg/L at 100 °C and pH 5: J. S. Hough et al. 1982, quoted by M. L. Hall,
     * Zymurgy 1997. A single addition above it dissolves only in part.
     */
    public static final double DISSOLVES_MG_PER_L = 250;

    /**
     * Dry-hop rate, g/hL, from which dry hops should no longer be taken as bringing no bitterness: one pound in a US beer
     * barrel (Hopsteiner in Brauwelt; J. P. Maye, Brauwelt International 2018). The former prints it as 0.381 kg/hL, which is
     * 1.4 % low.
     */
    public static final double DRY_HOP_CAUTION_G_PER_HL = 387;

    private static final double MG_PER_KG = 1e6;
    private static final double MOST = 1e12;

    private AlphaBalance() {}

    /**
     * A weight of hops with its alpha acid.
     *
     * @param massKg kilograms, 0 or more
     * @param alpha alpha acid, mass fraction, 0 to under 1
     */
    public record Parcel(double massKg, double alpha) {
        public Parcel {
            massKg = Limits.within("weight of hops", massKg, 0, MOST, " kg");
            alpha = Limits.shareUnderOne("alpha acid", alpha);
        }
    }

    /**
     * Bitterness of an addition: 10⁶ · m · α · U / V. One EBU is taken as 1 mg/L of iso-alpha acid.
     *
     * @param massKg weight of hops, kg, 0 or more
     * @param alpha alpha acid, mass fraction, 0 to under 1
     * @param utilisation share of the alpha acid that is found in the litres as iso-alpha acid, 0 or more
     * @param litres what it is found in, over 0
     * @return EBU
     * @throws IllegalArgumentException outside those ranges
     */
    public static double ebu(double massKg, double alpha, double utilisation, double litres) {
        return alphaMgPerL(massKg, alpha, litres) * Limits.within("utilisation", utilisation, 0, 10, "");
    }

    /**
     * Weight of hops for a bitterness.
     *
     * @param ebu bitterness, EBU, 0 or more
     * @param alpha alpha acid, mass fraction, over 0 and under 1
     * @param utilisation share of the alpha acid that is found in the litres as iso-alpha acid, over 0
     * @param litres what it is found in, over 0
     * @return kg
     * @throws IllegalArgumentException outside those ranges: no weight of hops without alpha acid or utilisation is enough
     */
    public static double massKg(double ebu, double alpha, double utilisation, double litres) {
        return Limits.within("bitterness", ebu, 0, MOST, " EBU")
                * Limits.over("volume", litres, 0, MOST, " L")
                / (MG_PER_KG
                        * someAlpha("alpha acid of bittering hops", alpha)
                        * Limits.over("utilisation of bittering hops", utilisation, 0, 10, ""));
    }

    /**
     * Alpha acid added to each litre, to be held against {@link #DISSOLVES_MG_PER_L}.
     *
     * @param massKg weight of hops, kg, 0 or more
     * @param alpha alpha acid, mass fraction, 0 to under 1
     * @param litres what it goes into, over 0
     * @return mg/L
     * @throws IllegalArgumentException outside those ranges
     */
    public static double alphaMgPerL(double massKg, double alpha, double litres) {
        return MG_PER_KG
                * Limits.within("weight of hops", massKg, 0, MOST, " kg")
                * Limits.shareUnderOne("alpha acid", alpha)
                / Limits.over("volume", litres, 0, MOST, " L");
    }

    /**
     * Weight of a new lot that brings the alpha acid of an old one: m_old · α_old/α_new.
     *
     * @param massOldKg weight of the old lot, kg, 0 or more
     * @param alphaOld its alpha acid, mass fraction, 0 to under 1
     * @param alphaNew alpha acid of the new lot, mass fraction, over 0 and under 1
     * @return kg of the new lot
     * @throws IllegalArgumentException outside those ranges
     */
    public static double massOfNewLotKg(double massOldKg, double alphaOld, double alphaNew) {
        return Limits.within("weight of hops", massOldKg, 0, MOST, " kg")
                * Limits.shareUnderOne("alpha acid of the old lot", alphaOld)
                / someAlpha("alpha acid of the new lot", alphaNew);
    }

    /**
     * Alpha acid of several lots mixed: Σ(m·α)/Σm.
     *
     * @param parcels the lots, at least one with weight
     * @return mass fraction
     * @throws IllegalArgumentException where nothing weighs anything
     */
    public static double blendAlpha(List<Parcel> parcels) {
        double massKg = 0;
        double alphaKg = 0;
        for (Parcel parcel : parcels) {
            massKg += parcel.massKg();
            alphaKg += parcel.massKg() * parcel.alpha();
        }
        return alphaKg / Limits.over("weight of blended hops", massKg, 0, Double.MAX_VALUE, " kg");
    }

    /**
     * Share by mass of a lot in a blend with another that is to reach a target: the lever rule, (t − b)/(a − b).
     *
     * @param alphaA alpha acid of the lot, mass fraction, 0 to under 1
     * @param alphaB alpha acid of the other, mass fraction, 0 to under 1, different from the first
     * @param target alpha acid of the blend, not outside the two
     * @return share of the first lot, 0 to 1
     * @throws IllegalArgumentException where the lots are alike or the target lies outside them
     */
    public static double shareOfLot(double alphaA, double alphaB, double target) {
        Limits.shareUnderOne("alpha acid", alphaA);
        Limits.shareUnderOne("alpha acid", alphaB);
        if (alphaA == alphaB) {
            throw new IllegalArgumentException("blend of two lots: expected different alpha acids, found "
                    + Limits.exactPercent(alphaA) + " in both");
        }
        double least = Math.min(alphaA, alphaB);
        double most = Math.max(alphaA, alphaB);
        if (!(target >= least && target <= most)) {
            throw new IllegalArgumentException("alpha acid of the blend: expected " + Limits.exactPercent(least)
                    + " to " + Limits.exactPercent(most) + ", found " + Limits.exactPercent(target));
        }
        return (target - alphaB) / (alphaA - alphaB);
    }

    /**
     * Hop rate for a dose of oil: mL/hL over mL/100 g, times 100.
     *
     * @param doseMlPerHl oil wanted, mL/hL, 0 or more
     * @param oilMlPer100g oil of the hops, mL/100 g, over 0 to 20
     * @return g/hL
     * @throws IllegalArgumentException outside those ranges
     */
    public static double rateForOilGPerHl(double doseMlPerHl, double oilMlPer100g) {
        return Limits.within("dose of oil", doseMlPerHl, 0, MOST, " mL/hL")
                / Limits.over("oil of the hops", oilMlPer100g, 0, 20, " mL/100 g")
                * 100;
    }

    /**
     * Dose of oil of a hop rate, the inverse of {@link #rateForOilGPerHl}.
     *
     * @param rateGPerHl hop rate, g/hL, 0 or more
     * @param oilMlPer100g oil of the hops, mL/100 g, 0 to 20
     * @return mL/hL
     * @throws IllegalArgumentException outside those ranges
     */
    public static double oilMlPerHl(double rateGPerHl, double oilMlPer100g) {
        return Limits.within("hop rate", rateGPerHl, 0, MOST, " g/hL")
                * Limits.within("oil of the hops", oilMlPer100g, 0, 20, " mL/100 g")
                / 100;
    }

    private static double someAlpha(String what, double alpha) {
        if (!(alpha > 0 && alpha < 1)) {
            throw new IllegalArgumentException(
                    what + ": expected more than 0 % and under 100 %, found " + Limits.exactPercent(alpha));
        }
        return alpha;
    }
}
