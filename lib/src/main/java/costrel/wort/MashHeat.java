package costrel.wort;

/**
 * Strike heat and initial heat of an infusion mash, with the heat that dry malt gives off as it slakes.
 *
 * <pre>
 * I = (S·Tg + R·T) / (S + R) + Sc        S specific heat of malt against water, R liquor to grist, Sc slaking heat
 * </pre>
 *
 * <p>Source: table and formula of the <em>Brewing Room Book</em> 1984/85 (Pauls and Whites), in the reprint in which
 * every row of the slaking heat agrees in °C and °F. Its printed sum for 3 %, grist 30 °C, liquor 60 °C, 3.0 hL/100 kg
 * is wrong (65.9 °C printed, 58.57 °C right). Heat lost to the vessel is the plant's own allowance. Good to about half
 * a degree.
 *
 * <p>Hot liquor scalds: the figures are for setting the liquor, and the thermometer in the mash has the last word.
 */
public final class MashHeat {
    private static final double[] MOISTURE_PERCENT = {0, 1, 2, 3, 4, 6, 8};
    private static final double[] SPECIFIC_HEAT = {0.38, 0.38, 0.39, 0.40, 0.40, 0.41, 0.42};
    private static final double[] SLAKING_HEAT_K = {3.1, 2.6, 2.3, 2.1, 1.7, 1.3, 1.1};

    private MashHeat() {}

    /**
     * Specific heat of malt relative to water, joined linearly between the rows of the table.
     *
     * @param moistureFraction moisture of the grist as a fraction by mass, 0 to 0.08
     * @return the ratio, 0.38 to 0.42
     * @throws IllegalArgumentException outside that range
     */
    public static double specificHeat(double moistureFraction) {
        return between(SPECIFIC_HEAT, moistureFraction);
    }

    /**
     * What slaking adds to the heat of the mash, joined linearly between the rows of the table.
     *
     * @param moistureFraction moisture of the grist as a fraction by mass, 0 to 0.08
     * @return kelvin, 3.1 down to 1.1
     * @throws IllegalArgumentException outside that range
     */
    public static double slakingHeatK(double moistureFraction) {
        return between(SLAKING_HEAT_K, moistureFraction);
    }

    /**
     * Heat of the mash when liquor and grist have come together.
     *
     * @param strikeC heat of the liquor in °C, 0 to 150
     * @param gristC heat of the grist in °C, -30 to 100
     * @param liquorToGrist litres of liquor at 20 °C for a kg of grist, more than 0
     * @param moistureFraction moisture of the grist as a fraction by mass, 0 to 0.08
     * @return initial heat in °C
     * @throws IllegalArgumentException outside those ranges
     */
    public static double initialHeat(double strikeC, double gristC, double liquorToGrist, double moistureFraction) {
        Limits.within("strike heat", strikeC, 0, 150, " °C");
        requireGristHeat(gristC);
        requireRatio(liquorToGrist);
        double s = specificHeat(moistureFraction);
        return (s * gristC + liquorToGrist * strikeC) / (s + liquorToGrist) + slakingHeatK(moistureFraction);
    }

    /**
     * Heat of the liquor that a wanted initial heat needs, with the plant's allowance on top. It may come out over 100
     * °C, which no liquor tank can give: that is a finding for whoever plans the mash, not an error here.
     *
     * @param initialC wanted heat of the mash in °C, 0 to 100
     * @param gristC heat of the grist in °C, -30 to 100
     * @param liquorToGrist litres of liquor at 20 °C for a kg of grist, more than 0
     * @param moistureFraction moisture of the grist as a fraction by mass, 0 to 0.08
     * @param heatAllowanceK kelvin added for what the mash tun takes up, 0 or more
     * @return strike heat in °C
     * @throws IllegalArgumentException outside those ranges
     */
    public static double strikeHeat(
            double initialC, double gristC, double liquorToGrist, double moistureFraction, double heatAllowanceK) {
        Limits.within("initial heat", initialC, 0, 100, " °C");
        requireGristHeat(gristC);
        requireRatio(liquorToGrist);
        Limits.atLeast("heat allowance", heatAllowanceK, 0, " K");
        double s = specificHeat(moistureFraction);
        double mixed = initialC - slakingHeatK(moistureFraction);
        return mixed + s / liquorToGrist * (mixed - gristC) + heatAllowanceK;
    }

    private static void requireGristHeat(double gristC) {
        Limits.within("heat of the grist", gristC, -30, 100, " °C");
    }

    private static void requireRatio(double liquorToGrist) {
        Limits.above("liquor to grist", liquorToGrist, 0, " L/kg");
    }

    private static double between(double[] column, double moistureFraction) {
        if (!(moistureFraction >= 0 && moistureFraction <= 0.08)) {
            throw new IllegalArgumentException("moisture of the grist: expected a fraction of 0 to 0.08 (8 %), found "
                    + ScaleText.plain(moistureFraction));
        }
        double percent = 100 * moistureFraction;
        int row = 1;
        while (row < MOISTURE_PERCENT.length - 1 && percent > MOISTURE_PERCENT[row]) {
            row++;
        }
        double share = (percent - MOISTURE_PERCENT[row - 1]) / (MOISTURE_PERCENT[row] - MOISTURE_PERCENT[row - 1]);
        return column[row - 1] + share * (column[row] - column[row - 1]);
    }
}
