package costrel.wort;

/**
 * Density of water, and what it makes of volumes measured hot: wort shrinks as water does, to within 0.01 %.
 *
 * <p>Source: G. S. Kell, <em>J. Chem. Eng. Data</em> 20, 97 (1975), as printed by F. E. Jones and G. L. Harris,
 * <em>J. Res. NIST</em> 97, 335 (1992), equation 1, with the denominator 16.879850e-3; a reprint that has
 * 16.897850e-3 is a misprint. Air-free water at one atmosphere, 0 to 150 °C.
 */
public final class WaterDensity {
    private static final double AT_20_KG_PER_M3 = kell(20);

    private WaterDensity() {}

    /**
     * Density of water.
     *
     * @param celsius temperature in °C, 0 to 150
     * @return kg in a cubic metre
     * @throws IllegalArgumentException outside that range
     */
    public static double kgPerCubicMetre(double celsius) {
        return kell(Limits.within("temperature of water", celsius, 0, 150, " °C"));
    }

    /**
     * What a hot volume shrinks to: the ratio of its volume at 20 °C to its volume hot, 0.9601 at 100 °C.
     *
     * @param celsius temperature in °C, 0 to 150
     * @return litres at 20 °C from one litre hot
     * @throws IllegalArgumentException outside that range
     */
    public static double contraction(double celsius) {
        return kgPerCubicMetre(celsius) / AT_20_KG_PER_M3;
    }

    /**
     * The volume at 20 °C of what was measured hot.
     *
     * @param volumeHotL litres as dipped or metered, 0 or more
     * @param celsius temperature in °C, 0 to 150
     * @return litres at 20 °C
     * @throws IllegalArgumentException when the volume is negative or the temperature outside the range
     */
    public static double volumeAt20(double volumeHotL, double celsius) {
        return Limits.atLeast("volume", volumeHotL, 0, " L") * contraction(celsius);
    }

    /**
     * The volume hot of what is given at 20 °C: the dip a brewer would read.
     *
     * @param volume20L litres at 20 °C, 0 or more
     * @param celsius temperature in °C, 0 to 150
     * @return litres at that temperature
     * @throws IllegalArgumentException when the volume is negative or the temperature outside the range
     */
    public static double volumeAt(double volume20L, double celsius) {
        return Limits.atLeast("volume", volume20L, 0, " L") / contraction(celsius);
    }

    private static double kell(double t) {
        double numerator = 999.83952
                + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
        return numerator / (1 + 16.879850e-3 * t);
    }
}
