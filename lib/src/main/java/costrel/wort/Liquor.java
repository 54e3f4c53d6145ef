package costrel.wort;

/**
 * Treatment of brewing liquor: what salts add, what acid takes away, and the residual alkalinity that is left.
 *
 * <p>Liquor acids and their fumes burn: dilute acid into water, wear what the safety data sheet asks, and check the
 * treated liquor by measurement before it is used. The strength of an acid is on its data sheet.
 */
public final class Liquor {
    /** Milligrams of CaCO3 in a milli-equivalent: half of 100.086 g/mol. */
    private static final double MG_CACO3_PER_MEQ = 50.043;

    /** Milligrams in a milli-equivalent of calcium, half of 40.078 g/mol. */
    private static final double MG_CALCIUM_PER_MEQ = 20.039;

    /** Milligrams in a milli-equivalent of magnesium, half of 24.305 g/mol. */
    private static final double MG_MAGNESIUM_PER_MEQ = 12.1525;

    private Liquor() {}

    /**
     * What a salt brings of one of its ions: mg/L from 1 g/hL, ten times the share of the ion in the mass of the salt
     * as weighed (with its water of crystals).
     *
     * @param ionGramsPerMole mass of the ion in a mole of the salt, more than 0; twice 35.453 for chloride in
     * CaCl2·2H2O
     * @param saltGramsPerMole mass of a mole of the salt, not less than the ion's
     * @return the factor, 2.328 for calcium in gypsum
     * @throws IllegalArgumentException outside those ranges
     */
    public static double ionFactor(double ionGramsPerMole, double saltGramsPerMole) {
        Limits.above("mass of the ion", ionGramsPerMole, 0, " g/mol");
        Limits.atLeast("mass of the salt", saltGramsPerMole, ionGramsPerMole, " g/mol");
        return 10 * ionGramsPerMole / saltGramsPerMole;
    }

    /**
     * What a dose of salt adds of one of its ions.
     *
     * @param gramsPerHl dose of the salt, 0 or more
     * @param factor mg/L of the ion from 1 g/hL, 0 to 10
     * @return mg of the ion in a litre
     * @throws IllegalArgumentException outside those ranges
     */
    public static double ionAddedMgPerLitre(double gramsPerHl, double factor) {
        return Limits.atLeast("dose of salt", gramsPerHl, 0, " g/hL")
                * Limits.within("ion factor", factor, 0, 10, " mg/L from 1 g/hL");
    }

    /**
     * Acid that takes so much alkalinity out: 100 ΔAlk / (50.043 N).
     *
     * @param alkalinityMgPerLitre alkalinity to take out, as mg/L of CaCO3, 0 or more
     * @param normality equivalents in a litre of the acid, more than 0; sulphuric acid has two to a mole
     * @return mL of acid for a hectolitre of liquor
     * @throws IllegalArgumentException outside those ranges
     */
    public static double acidMlPerHl(double alkalinityMgPerLitre, double normality) {
        Limits.atLeast("alkalinity to take out", alkalinityMgPerLitre, 0, " mg/L as CaCO3");
        Limits.above("normality of the acid", normality, 0, " eq/L");
        return 100 * alkalinityMgPerLitre / (MG_CACO3_PER_MEQ * normality);
    }

    /**
     * Residual alkalinity, alkalinity − (Ca / 3.5 + Mg / 7), all three in one unit of equivalents: all in meq/L, all as
     * mg/L of CaCO3 or all in German degrees. Not for mg/L of the ions; see {@link #residualAlkalinityOfIons}.
     *
     * <p>Source: P. Kolbach (1953).
     *
     * @param alkalinity alkalinity, 0 or more
     * @param calcium calcium hardness in the same unit, 0 or more
     * @param magnesium magnesium hardness in the same unit, 0 or more
     * @return residual alkalinity in that unit; below 0 when the hardness outweighs
     * @throws IllegalArgumentException when a figure is negative
     */
    public static double residualAlkalinity(double alkalinity, double calcium, double magnesium) {
        return Limits.atLeast("alkalinity", alkalinity, 0, "")
                - Limits.atLeast("calcium hardness", calcium, 0, "") / 3.5
                - Limits.atLeast("magnesium hardness", magnesium, 0, "") / 7;
    }

    /**
     * Residual alkalinity from ions as an analysis gives them; the divisors on mg/L are 1.4016 and 1.7000.
     *
     * @param alkalinityMgPerLitre alkalinity as mg/L of CaCO3, 0 or more
     * @param calciumMgPerLitre calcium, mg/L of the ion, 0 or more
     * @param magnesiumMgPerLitre magnesium, mg/L of the ion, 0 or more
     * @return residual alkalinity as mg/L of CaCO3
     * @throws IllegalArgumentException when a figure is negative
     */
    public static double residualAlkalinityOfIons(
            double alkalinityMgPerLitre, double calciumMgPerLitre, double magnesiumMgPerLitre) {
        return residualAlkalinity(
                alkalinityMgPerLitre,
                calciumMgPerLitre / MG_CALCIUM_PER_MEQ * MG_CACO3_PER_MEQ,
                magnesiumMgPerLitre / MG_MAGNESIUM_PER_MEQ * MG_CACO3_PER_MEQ);
    }
}
