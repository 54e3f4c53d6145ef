package costrel.wort;

/**
 * Density of wort, taken as a solution of sucrose of the same extract.
 *
 * <p>Source: the ICUMSA polynomial (SPS-4, from the work of the Physikalisch-Technische Bundesanstalt) as given by
 * Bubnik, Kadlec, Urban and Bruhns, <em>Sugar Technologists Manual</em> (Bartens, 1995), p. 164, 0 to 100 °C. It agrees
 * with the CRC Handbook at 20 °C within 0.00007 g/cm³ up to 30 % and within 0.0005 at 80 %, where it is refused
 * further.
 */
public final class WortDensity {
    /** Row i holds the coefficients of w, w², … that go with ((t - 20)/100) to the power i. */
    private static final double[][] SUCROSE = {
        {385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890},
        {-46.2720, -7.1720, 1.1597, 5.1126, 17.5254},
        {59.7712, 7.2491, 12.3630, -35.4791},
        {-47.2207, -21.6977, 27.6301},
        {18.3184, 12.3081}
    };

    private WortDensity() {}

    /**
     * True density of a wort.
     *
     * @param plato extract, g in 100 g, 0 to 80
     * @param celsius temperature in °C, 0 to 100
     * @return kg in a cubic metre
     * @throws IllegalArgumentException outside those ranges
     */
    public static double kgPerCubicMetre(double plato, double celsius) {
        double share = Limits.within("extract", plato, 0, 80, " °P") / 100;
        double hundreds = (Limits.within("temperature of wort", celsius, 0, 100, " °C") - 20) / 100;
        double density = 0;
        for (int i = SUCROSE.length - 1; i >= 0; i--) {
            double row = 0;
            for (int k = SUCROSE[i].length - 1; k >= 0; k--) {
                row = (row + SUCROSE[i][k]) * share;
            }
            density = density * hundreds + row;
        }
        return water(celsius) + density;
    }

    /**
     * Density of a wort at 20 °C from its gravity, 0.9982 · SG.
     *
     * @param gravity gravity 20/20 °C
     * @return kg in a litre
     */
    public static double kgPerLitreAt20(Gravity gravity) {
        return Gravity.WATER_KG_PER_LITRE * gravity.sg();
    }

    /** The water term that belongs to the polynomial; it is not quite Kell's. */
    private static double water(double t) {
        double numerator = 999.83952
                + t * (16.952577 + t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 - t * 281.03006e-12))));
        return numerator / (1 + 16.887236e-3 * t);
    }
}
