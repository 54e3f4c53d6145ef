package costrel.wort;

import java.util.List;

/**
 * Liquoring back, blending and boiling down.
 *
 * <p>The plain rule keeps litres times degrees, V₁·G₁ = V₂·G₂; it is the rule of the trade and was the law's (Alcoholic
 * Liquor Duties Act 1979, section 38). Extract by weight is what is truly kept, so the exact methods go by mass, with
 * density from the Plato scale. The plain rule reads low by 0.02° when 45 is let down to 42 and by 0.18° when 80 is let
 * down to 40. Volumes are at 20 °C.
 */
public final class Dilution {
    private Dilution() {}

    /**
     * So many litres at a gravity.
     *
     * @param volumeL litres at 20 °C, 0 or more
     * @param gravity its gravity; water is 0 degrees
     */
    public record Portion(double volumeL, Gravity gravity) {
        public Portion {
            volumeL = Limits.atLeast("volume", volumeL, 0, " L");
        }

        /**
         * Litres times excess degrees.
         *
         * @return litre-degrees, below 0 for beer lighter than water
         */
        public double litreDegrees() {
            return volumeL * gravity.excessDegrees();
        }

        private double massKg() {
            return volumeL * WortDensity.kgPerLitreAt20(gravity);
        }

        private double extractKg() {
            return massKg() * gravity.plato() / 100;
        }
    }

    /**
     * Liquor that lets a wort down, by the plain rule: V (G₁/G₂ − 1).
     *
     * @param wort what is there
     * @param to wanted gravity, above that of water and not above the wort's
     * @return litres of liquor to add
     * @throws IllegalArgumentException when the wanted gravity is out of that range
     */
    public static double liquorToAdd(Portion wort, Gravity to) {
        requireLower(wort, to);
        return wort.volumeL() * (wort.gravity().excessDegrees() / to.excessDegrees() - 1);
    }

    /**
     * Liquor that lets a wort down, by mass of extract.
     *
     * @param wort what is there, up to SG 1.17874
     * @param to wanted gravity, above that of water and not above the wort's
     * @return litres of liquor to add
     * @throws IllegalArgumentException when the wanted gravity is out of that range
     */
    public static double liquorToAddExact(Portion wort, Gravity to) {
        requireWort(wort);
        requireLower(wort, to);
        double wanted = Limits.above("extract after liquoring back", to.plato(), 0, " °P");
        double addedKg = wort.massKg() * (wort.gravity().plato() / wanted - 1);
        return addedKg / Gravity.WATER_KG_PER_LITRE;
    }

    /**
     * The blend by the plain rule: volumes add, and so do litre-degrees.
     *
     * @param portions what goes together, one or more with some volume
     * @return the blend
     * @throws IllegalArgumentException when there is nothing to blend
     */
    public static Portion blend(List<Portion> portions) {
        double volumeL = 0;
        double litreDegrees = 0;
        for (Portion portion : portions) {
            volumeL += portion.volumeL();
            litreDegrees += portion.litreDegrees();
        }
        requireVolume(volumeL);
        return new Portion(volumeL, new Gravity(litreDegrees / volumeL));
    }

    /**
     * The blend of worts by mass: masses add, and so do kilograms of extract; the volume follows from the density.
     *
     * @param portions worts or liquor from water to SG 1.17874, one or more with some volume
     * @return the blend
     * @throws IllegalArgumentException when there is nothing to blend, or a portion is lighter than water
     */
    public static Portion blendExact(List<Portion> portions) {
        double massKg = 0;
        double extractKg = 0;
        for (Portion portion : portions) {
            requireWort(portion);
            massKg += portion.massKg();
            extractKg += portion.extractKg();
        }
        requireVolume(massKg);
        return ofMass(massKg, extractKg);
    }

    /**
     * What is left of a wort when a share of its volume has boiled away, by the plain rule: V (1 − e), G / (1 − e).
     *
     * @param wort what was there
     * @param share share of the volume that goes, 0 up to but not including 1
     * @return what is left
     * @throws IllegalArgumentException when the share is out of range, or the gravity comes out above SG 1.2
     */
    public static Portion evaporate(Portion wort, double share) {
        requireShare(share);
        return new Portion(
                wort.volumeL() * (1 - share), new Gravity(wort.gravity().excessDegrees() / (1 - share)));
    }

    /**
     * What is left of a wort when so many litres of water have boiled away, by mass.
     *
     * @param wort what was there, from water to SG 1.17874
     * @param waterL litres of water at 20 °C that went, less than the water in the wort
     * @return what is left
     * @throws IllegalArgumentException when more goes than there is, or 40 °P is passed
     */
    public static Portion evaporateExact(Portion wort, double waterL) {
        requireWort(wort);
        double mostL = (wort.massKg() - wort.extractKg()) / Gravity.WATER_KG_PER_LITRE;
        if (!(waterL >= 0 && waterL < mostL)) {
            throw new IllegalArgumentException("evaporation: expected 0 up to less than the "
                    + ScaleText.places(mostL, 0, 1) + " L of water in the wort, found " + ScaleText.plain(waterL));
        }
        double waterKg = waterL * Gravity.WATER_KG_PER_LITRE;
        return ofMass(wort.massKg() - waterKg, wort.extractKg());
    }

    /**
     * The share of the volume that has gone.
     *
     * @param beforeL litres before, at 20 °C, more than 0
     * @param afterL litres after, at 20 °C, more than 0 and not above those before
     * @return the share, 0.08 for 5500 L boiled down to 5060 L
     * @throws IllegalArgumentException outside those ranges
     */
    public static double evaporationShare(double beforeL, double afterL) {
        Limits.above("volume before the boil", beforeL, 0, " L");
        if (!(afterL > 0 && afterL <= beforeL)) {
            throw new IllegalArgumentException("volume after the boil: expected more than 0 and at most "
                    + ScaleText.plain(beforeL) + " L, found " + ScaleText.plain(afterL));
        }
        return (beforeL - afterL) / beforeL;
    }

    private static Portion ofMass(double massKg, double extractKg) {
        Gravity gravity = Gravity.ofPlato(100 * extractKg / massKg);
        return new Portion(massKg / WortDensity.kgPerLitreAt20(gravity), gravity);
    }

    private static void requireLower(Portion wort, Gravity to) {
        if (!(to.excessDegrees() > 0 && to.excessDegrees() <= wort.gravity().excessDegrees())) {
            throw new IllegalArgumentException(
                    "gravity after liquoring back: expected more than that of water and at most " + wort.gravity()
                            + ", found " + to);
        }
    }

    private static void requireWort(Portion portion) {
        double sg = portion.gravity().sg();
        if (!(sg >= 1 && sg <= PlatoScale.MOST_SG)) {
            throw new IllegalArgumentException("reckoning by mass: expected wort or liquor of SG 1 to "
                    + PlatoScale.MOST_SG + ", found " + portion.gravity());
        }
    }

    private static void requireVolume(double total) {
        if (!(total > 0)) {
            throw new IllegalArgumentException("blend: expected more than 0 L in all, found nothing");
        }
    }

    private static void requireShare(double share) {
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException(
                    "evaporation: expected a share of the volume of 0 up to less than 1, found "
                            + ScaleText.plain(share));
        }
    }
}
