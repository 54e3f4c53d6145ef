package costrel.wort;

/**
 * Extract by weight (degrees Plato, in practice degrees Brix of sucrose) against relative density 20/20 °C.
 *
 * <p>Up to 25 °P the cubic fitted to the tables of the American Society of Brewing Chemists is used; it stays within
 * 0.003 °P of NBS Circular C440, Table 114, from 0 to 20 °P. From 26 °P the cubic fitted to that table itself takes
 * over (within 0.002 °P of its even degrees), to its limit at SG 1.17874. Between the two the one passes into the other
 * in a straight line of SG, so the scale has no step and rises throughout. The way back from extract to density is the
 * numerical inverse of the same function: a separately fitted inverse would let a round trip drift.
 *
 * <p>The cubic crosses zero at SG 1.0000117 instead of 1. Everything up to there, and everything lighter than water,
 * is 0 °P; and 0 °P is water, SG 1.
 *
 * <p>Sources: both cubics as cited for degrees Plato and degrees Brix in the literature on the Brix scale; Bates et
 * al., <em>Polarimetry, Saccharimetry and the Sugars</em>, NBS Circular C440 (1942), Table 114, apparent specific
 * gravity 20/20 °C.
 */
public final class PlatoScale {
    /** The relative density at which the published validity ends, 40 °P in NBS C440 Table 114. */
    public static final double MOST_SG = 1.17874;

    private static final double LEAST_SG = 0.9;
    private static final double TOLERANCE_SG = 1e-14;

    /** Where the first cubic reads 25 °P and the second 26 °P. */
    private static final double SG_AT_25 = Roots.between("25 °P", 1.1, 1.12, TOLERANCE_SG, sg -> asbc(sg) - 25);

    private static final double SG_AT_26 = Roots.between("26 °P", 1.1, 1.12, TOLERANCE_SG, sg -> nbs(sg) - 26);

    private PlatoScale() {}

    /**
     * Extract of a wort of the given relative density.
     *
     * @param sg relative density 20/20 °C, 0.9 to 1.17874
     * @return g of extract in 100 g; 0 for water and anything lighter
     * @throws IllegalArgumentException outside that range
     */
    public static double platoFromSg(double sg) {
        Limits.within("relative density for the Plato scale", sg, LEAST_SG, MOST_SG, "");
        return sg <= 1.00001 ? 0 : Math.max(0, scale(sg));
    }

    /**
     * Relative density of a wort of the given extract.
     *
     * @param plato g of extract in 100 g, 0 to 40
     * @return relative density 20/20 °C; exactly 1 at 0 °P
     * @throws IllegalArgumentException outside that range
     */
    public static double sgFromPlato(double plato) {
        Limits.within("extract", plato, 0, 40, " °P");
        return plato == 0 ? 1 : sgOf(plato);
    }

    /** The relative density without the ranges and without the step at water, for use inside other solutions. */
    static double sgOf(double plato) {
        return Roots.between("°P to SG", 0.99, MOST_SG, TOLERANCE_SG, sg -> scale(sg) - plato);
    }

    /** The scale without the clamp at water. */
    static double scale(double sg) {
        if (sg <= SG_AT_25) {
            return asbc(sg);
        }
        if (sg >= SG_AT_26) {
            return nbs(sg);
        }
        double share = (sg - SG_AT_25) / (SG_AT_26 - SG_AT_25);
        return (1 - share) * asbc(sg) + share * nbs(sg);
    }

    /** ASBC cubic. */
    private static double asbc(double sg) {
        return -616.868 + sg * (1111.14 + sg * (-630.272 + sg * 135.997));
    }

    /** NBS cubic, published limit SG 1.17874. */
    private static double nbs(double sg) {
        return -669.5622 + sg * (1262.7794 + sg * (-775.6821 + sg * 182.4601));
    }
}
