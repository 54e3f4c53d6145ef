package costrel.wort;

/**
 * Energy value of beer, from its alcohol (29 kJ, 7 kcal a gram) and its real extract taken wholly as carbohydrate (17
 * kJ, 4 kcal a gram). That is an approximation: some of the extract is protein, which counts the same, and minerals,
 * which count nothing. A declaration on a label has to follow the rules of the market it is sold in.
 *
 * <p>Source of the factors: Regulation (EU) No 1169/2011, Annex XIV.
 *
 * @param kilojoulesPer100mL kJ in 100 mL, unrounded
 * @param kilocaloriesPer100mL kcal in 100 mL, unrounded
 */
public record EnergyValue(double kilojoulesPer100mL, double kilocaloriesPer100mL) {
    /** Density of ethanol at 20 °C in g/mL, OIML R 22. */
    private static final double ETHANOL_G_PER_ML = 0.789239;

    public EnergyValue {
        kilojoulesPer100mL = Limits.atLeast("energy value", kilojoulesPer100mL, 0, " kJ in 100 mL");
        kilocaloriesPer100mL = Limits.atLeast("energy value", kilocaloriesPer100mL, 0, " kcal in 100 mL");
    }

    /**
     * Energy value of a beer.
     *
     * @param abv true strength
     * @param realExtractPlato real extract in g in 100 g, 0 to 100
     * @param pg present gravity
     * @return the energy value
     * @throws IllegalArgumentException when the extract is out of range
     */
    public static EnergyValue of(Strength abv, double realExtractPlato, Gravity pg) {
        double alcoholGrams = abv.percent() * ETHANOL_G_PER_ML;
        double extractGrams =
                Limits.within("real extract", realExtractPlato, 0, 100, " °P") * WortDensity.kgPerLitreAt20(pg);
        return new EnergyValue(29 * alcoholGrams + 17 * extractGrams, 7 * alcoholGrams + 4 * extractGrams);
    }
}
