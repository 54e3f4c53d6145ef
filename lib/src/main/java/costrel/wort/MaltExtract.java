package costrel.wort;

/**
 * The extract of malts, adjuncts and sugars in the units that analyses and old brewing books give it in.
 *
 * <p>Sources: 3.86 L°/kg for each per cent is the solution divisor behind the 1907 laboratory figures of R. D. Bailey,
 * <em>The Brewers Analyst</em>, and close to M. P. Manning's 386.5 (BrewingTechniques 2(1), 1994); it holds within 0.6
 * % from 1.020 to 1.080. A quarter of malt is 336 lb and its extract is in brewers' pounds on a barrel of 360 lb (Hough
 * et al., <em>Malting and Brewing Science</em>, units of measurement).
 */
public final class MaltExtract {
    private static final double LITRE_DEGREES_PER_PERCENT = 3.86;

    /** A pound over 360 lb in a barrel of 163.65924 L is 1000/360 degrees; a quarter is 336 lb of 0.45359237 kg. */
    private static final double LITRE_DEGREES_PER_KG_PER_POUND_PER_QUARTER =
            1000.0 / 360 * 163.65924 / (336 * 0.45359237);

    private static final double LEAST_BASE_MALT = 79;
    private static final double MOST_BASE_MALT = 83;

    private MaltExtract() {}

    /**
     * Litre-degrees from per cent of extract, both on the same moisture basis.
     *
     * @param percent g of extract from 100 g, 0 to 105
     * @return L°/kg
     * @throws IllegalArgumentException outside that range
     */
    public static double litreDegreesPerKgFromPercent(double percent) {
        return Limits.within("extract", percent, 0, 105, " %") * LITRE_DEGREES_PER_PERCENT;
    }

    /**
     * Per cent of extract from litre-degrees, both on the same moisture basis.
     *
     * @param litreDegreesPerKg L°/kg, 0 to 405
     * @return g of extract from 100 g
     * @throws IllegalArgumentException outside that range
     */
    public static double percentFromLitreDegreesPerKg(double litreDegreesPerKg) {
        return requireHwe(litreDegreesPerKg) / LITRE_DEGREES_PER_PERCENT;
    }

    /**
     * Litre-degrees from brewers' pounds in a quarter. Against figures by way of per cent allow 0.3 %: the barrel of
     * 360 lb is nominal.
     *
     * @param poundsPerQuarter brewers' pounds from 336 lb, 0 to 135
     * @return L°/kg
     * @throws IllegalArgumentException outside that range
     */
    public static double litreDegreesPerKgFromPoundsPerQuarter(double poundsPerQuarter) {
        return Limits.within("extract", poundsPerQuarter, 0, 135, " lb in a quarter")
                * LITRE_DEGREES_PER_KG_PER_POUND_PER_QUARTER;
    }

    /**
     * Brewers' pounds in a quarter from litre-degrees.
     *
     * @param litreDegreesPerKg L°/kg, 0 to 405
     * @return brewers' pounds from 336 lb
     * @throws IllegalArgumentException outside that range
     */
    public static double poundsPerQuarterFromLitreDegreesPerKg(double litreDegreesPerKg) {
        return requireHwe(litreDegreesPerKg) / LITRE_DEGREES_PER_KG_PER_POUND_PER_QUARTER;
    }

    /**
     * Extract of a base malt by the Institute of Brewing method (dry, 0.7 mm grind) from the EBC figure (dry, fine
     * grind): (EBC − 1.705) / 0.2586. The rule fails for coloured malts by 10 to 27 L°/kg, so it is refused outside 79
     * to 83 %, the band in which published specifications of pale, lager and wheat malts lie; amber and crystal malts
     * lie below it.
     *
     * <p>Source: technical note of a UK maltster (Crisp) on working out a grist from EBC extract.
     *
     * @param ebcPercentDry EBC extract, per cent dry, 79 to 83
     * @return L°/kg dry
     * @throws IllegalArgumentException outside that band
     */
    public static double baseMaltHweFromEbcPercent(double ebcPercentDry) {
        if (!(ebcPercentDry >= LEAST_BASE_MALT && ebcPercentDry <= MOST_BASE_MALT)) {
            throw new IllegalArgumentException("EBC extract: expected 79 to 83 % dry, where base malts lie, found "
                    + ScaleText.plain(ebcPercentDry) + "; supply the hot water extract of the material");
        }
        return (ebcPercentDry - 1.705) / 0.2586;
    }

    /**
     * A figure on dry malt as it is for the malt as delivered: times (1 − moisture). The unit stays what it was.
     *
     * @param dry extract on dry basis, 0 or more
     * @param moistureFraction moisture as a fraction by mass, 0 up to but not including 1
     * @return extract as is
     * @throws IllegalArgumentException outside those ranges
     */
    public static double asIsFromDry(double dry, double moistureFraction) {
        return Limits.atLeast("extract on dry basis", dry, 0, "") * (1 - requireMoisture(moistureFraction));
    }

    /**
     * A figure on malt as delivered as it is for dry malt: divided by (1 − moisture).
     *
     * @param asIs extract as is, 0 or more
     * @param moistureFraction moisture as a fraction by mass, 0 up to but not including 1
     * @return extract on dry basis
     * @throws IllegalArgumentException outside those ranges
     */
    public static double dryFromAsIs(double asIs, double moistureFraction) {
        return Limits.atLeast("extract as is", asIs, 0, "") / (1 - requireMoisture(moistureFraction));
    }

    private static double requireHwe(double litreDegreesPerKg) {
        return Limits.within("extract", litreDegreesPerKg, 0, 405, " L°/kg");
    }

    private static double requireMoisture(double moistureFraction) {
        if (!(moistureFraction >= 0 && moistureFraction < 1)) {
            throw new IllegalArgumentException(
                    "moisture: expected a fraction of 0 up to less than 1 (0.04 is 4 %), found "
                            + ScaleText.plain(moistureFraction));
        }
        return moistureFraction;
    }
}
