package costrel.wort;

/**
 * How much of the extract has fermented, as a share. "Apparent" is what the hydrometer says in the presence of alcohol;
 * "real" takes the alcohol out. On degrees of gravity and on °P the apparent share differs a little (75.0 against
 * 74.4 % for 1040 to 1010), so each has its name.
 */
public final class Attenuation {
    /** Past this a figure is a slip of the pen, such as 75 for 0.75; some beers do end below the gravity of water. */
    private static final double MOST_SHARE = 1.2;

    /** 1.0665 / (2.0665 · 100) of the Balling balance, as printed for ASBC method Beer-6. */
    private static final double BEER_6 = 0.005161;

    private Attenuation() {}

    /**
     * Apparent attenuation on degrees, (OG − PG) / OG in excess degrees, as a British brewery reckons.
     *
     * @param og original gravity, above that of water
     * @param pg present gravity, not above the original
     * @return the share, 0.75 for 1040 to 1010
     * @throws IllegalArgumentException when the present gravity is above the original or the original is water
     */
    public static double apparent(Gravity og, Gravity pg) {
        requireWort(og);
        requireFermented(og, pg);
        return (og.excessDegrees() - pg.excessDegrees()) / og.excessDegrees();
    }

    /**
     * The final gravity at an apparent attenuation on degrees, OG · (1 − A).
     *
     * @param og original gravity, above that of water
     * @param apparentShare apparent attenuation as a share, 0 to 1.2
     * @return the final gravity
     * @throws IllegalArgumentException when the share is out of range or the original gravity is water
     */
    public static Gravity fgFrom(Gravity og, double apparentShare) {
        requireWort(og);
        if (!(apparentShare >= 0 && apparentShare <= MOST_SHARE)) {
            throw new IllegalArgumentException(
                    "apparent attenuation: expected a share of 0 to 1.2 (0.75 is 75 %), found "
                            + ScaleText.plain(apparentShare));
        }
        return new Gravity(og.excessDegrees() * (1 - apparentShare));
    }

    /**
     * Apparent attenuation on °P, (OE − AE) / OE.
     *
     * @param og original gravity, above that of water
     * @param pg present gravity, not above the original; anything lighter than water counts 0 °P
     * @return the share, 0.744 for 1040 to 1010
     * @throws IllegalArgumentException when the present gravity is above the original or the original is water
     */
    public static double apparentOnPlato(Gravity og, Gravity pg) {
        requireFermented(og, pg);
        double original = requireExtract(og.plato());
        return (original - pg.plato()) / original;
    }

    /**
     * Real degree of fermentation in its simple form, (OE − RE) / OE.
     *
     * @param originalExtractPlato original extract in °P, more than 0
     * @param realExtractPlato real extract in °P, 0 up to the original
     * @return the share
     * @throws IllegalArgumentException outside those ranges
     */
    public static double realSimple(double originalExtractPlato, double realExtractPlato) {
        double original = requireExtract(originalExtractPlato);
        Limits.within("real extract", realExtractPlato, 0, original, " °P");
        return (original - realExtractPlato) / original;
    }

    /**
     * Real degree of fermentation by ASBC method Beer-6, (OE − RE) / OE / (1 − 0.005161 RE): it allows for beer
     * weighing less than the wort it came from.
     *
     * <p>Source: A. Speers, <em>Brewing Calculations</em> (ASBC), for the constant and its purpose; the layout agrees
     * with the Balling balance to 0.01 %.
     *
     * @param originalExtractPlato original extract in °P, more than 0
     * @param realExtractPlato real extract in °P, 0 up to the original
     * @return the share
     * @throws IllegalArgumentException outside those ranges
     */
    public static double realAsbc(double originalExtractPlato, double realExtractPlato) {
        return realSimple(originalExtractPlato, realExtractPlato) / (1 - BEER_6 * realExtractPlato);
    }

    static void requireFermented(Gravity og, Gravity pg) {
        if (!(pg.excessDegrees() <= og.excessDegrees())) {
            throw new IllegalArgumentException(
                    "present gravity: expected no more than the original gravity of " + og + ", found " + pg);
        }
    }

    private static void requireWort(Gravity og) {
        if (!(og.excessDegrees() > 0)) {
            throw new IllegalArgumentException("original gravity: expected more than that of water, found " + og);
        }
    }

    private static double requireExtract(double originalExtractPlato) {
        if (!(originalExtractPlato > 0 && originalExtractPlato <= 100)) {
            throw new IllegalArgumentException("original extract: expected more than 0 and at most 100 °P, found "
                    + ScaleText.plain(originalExtractPlato));
        }
        return originalExtractPlato;
    }
}
