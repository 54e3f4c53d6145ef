package costrel.hops;

/**
 * The convention {@code tinseth}: utilisation by gravity and minutes of boil, fitted to measured beers.
 *
 * <pre>
 * U = 1.65 · 0.000125^(SG − 1) · (1 − e^(−0.04 t)) / 4.15
 * </pre>
 *
 * <p>SG is the mean of copper up and cast. First wort and mash hops count as boiled from the start, hops in the hot stand,
 * the hopback and the cask count nothing. As published it speaks of finished beer.
 *
 * <p>Source: G. Tinseth, article on hop utilisation, The Hop Page. The constants are fits to whole hops in small boils,
 * with no term for the hop rate; 4.15 is where a brewery adjusts it, which a plant does by its bitterness correction.
 */
public record Tinseth() implements Utilisation {

    /** Gravities and times up to which figures of this convention are in use: common practice, no source. */
    private static final double LEAST_SG = 1.030;

    private static final double MOST_SG = 1.110;
    private static final double MOST_MINUTES = 120;

    /** Gravities come from sums; a wort of 1.030 isn't outside for the last digit of a double. */
    private static final double SG_NOISE = 1e-9;

    /**
     * The equation.
     *
     * @param sg relative density 20/20 °C of the boiling wort, 0.990 to 1.400
     * @param minutes minutes of boil, 0 to 600
     * @return utilisation on finished beer, 0 to 1
     * @throws IllegalArgumentException outside those ranges
     */
    public static double utilisation(double sg, double minutes) {
        Limits.within("relative density", sg, 0.990, 1.400, "");
        Limits.within("boil", minutes, 0, 600, " min");
        return 1.65 * Math.pow(0.000125, sg - 1) * -Math.expm1(-0.04 * minutes) / 4.15;
    }

    @Override
    public String name() {
        return "tinseth";
    }

    @Override
    public String speaksOf() {
        return "finished beer";
    }

    @Override
    public UtilisationFigure of(HopUse use, BoilContext boil) {
        if (use.isDryHop()) {
            return UtilisationFigure.NONE;
        }
        if (use instanceof HopUse.HotStand || use instanceof HopUse.Hopback) {
            return new UtilisationFigure(0, false, "hops added after the boil count nothing by this convention");
        }
        double sg = boil.meanSg();
        double minutes = boil.boiledMinutes(use);
        Remarks remarks = new Remarks();
        remarks.addBoiledFromTheStart(use);
        remarks.addIf(
                sg < LEAST_SG - SG_NOISE || sg > MOST_SG + SG_NOISE,
                "wort of " + Limits.rounded(sg, 4) + " is outside 1.030 to 1.110: expect a larger error");
        remarks.addIf(
                minutes > MOST_MINUTES,
                "boil of " + Limits.rounded(minutes, 1) + " min is over 120 min: expect a larger error");
        return new UtilisationFigure(utilisation(sg, minutes), false, remarks.text());
    }
}
