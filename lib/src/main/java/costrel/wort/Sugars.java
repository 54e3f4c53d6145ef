package costrel.wort;

/** The room that copper sugars take up in the wort. */
public final class Sugars {
    /** Litres that a kg of dissolved sugar adds to a wort, from the densities of sucrose solutions near 10 °P. */
    private static final double LITRES_PER_KG_DRY = 0.617;

    /** Litre-degrees of a kg of dry sugar. */
    private static final double DRY_HWE = 386;

    private Sugars() {}

    /**
     * Litres that a sugar adds to the wort it dissolves in: 0.617 L for each kg of its dry part and its water beside.
     * The dry share is taken from its extract, HWE / 386.
     *
     * @param massKg kg of sugar as weighed, 0 or more
     * @param hweLitreDegreesPerKg extract of the sugar as is, 0 to 400 L°/kg
     * @return litres at 20 °C
     * @throws IllegalArgumentException outside those ranges
     */
    public static double litresTakenUp(double massKg, double hweLitreDegreesPerKg) {
        Limits.atLeast("mass of sugar", massKg, 0, " kg");
        double dryShare = Limits.within("extract of the sugar", hweLitreDegreesPerKg, 0, 400, " L°/kg") / DRY_HWE;
        return massKg * (LITRES_PER_KG_DRY * dryShare + (1 - dryShare) / Gravity.WATER_KG_PER_LITRE);
    }
}
