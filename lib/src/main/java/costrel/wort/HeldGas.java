package costrel.wort;

/**
 * The carbon dioxide that a beer is taken to hold when it is racked.
 *
 * @param volumes volumes of CO2, 0 to 10
 * @param how where the figure comes from, in words
 */
public record HeldGas(double volumes, String how) {

    private static final double WARMEST_OF_TABLE = 25;

    public HeldGas {
        volumes = Limits.within("condition held", volumes, 0, 10, " volumes");
    }

    /**
     * A figure that was measured.
     *
     * @param volumes volumes of CO2, 0 to 10
     * @return what is held
     * @throws IllegalArgumentException outside that range
     */
    public static HeldGas measured(double volumes) {
        return new HeldGas(volumes, "measured before racking");
    }

    /**
     * The most a beer can hold in an open or vented vessel: the equilibrium at the warmest it has been since gas stopped
     * rising. Cooling afterwards brings no gas back. Over 25 °C the published table of CO2 in beer is left, and the words say so.
     *
     * @param celsius that temperature, -1 to 40 °C
     * @return what is held, an upper bound
     * @throws IllegalArgumentException outside that range
     */
    public static HeldGas atWarmest(double celsius) {
        Limits.within("warmest temperature of the beer", celsius, -1, 40, " °C");
        double volumes = Condition.volumesFromGramsPerLitre(Condition.equilibriumGramsPerLitreExtrapolated(celsius, 0));
        String how = "at most, in equilibrium at " + ScaleText.places(celsius, 0, 2)
                + " °C, the warmest since gas stopped rising; good to 3 %";
        return new HeldGas(
                volumes, celsius > WARMEST_OF_TABLE ? how + "; over 25 °C, where the published table ends" : how);
    }

    /**
     * The most a beer can hold after a course of temperatures in an open or vented vessel.
     *
     * @param sinceGasStopped the temperature of the beer since gas stopped rising, at least one segment
     * @return what is held at the warmest of it, an upper bound
     * @throws IllegalArgumentException when the course is empty or its warmest lies outside -1 to 40 °C
     */
    public static HeldGas after(TemperatureCourse sinceGasStopped) {
        if (sinceGasStopped.segments().isEmpty()) {
            throw new IllegalArgumentException(
                    "course since gas stopped rising: expected a temperature such as hold 18 °C 2880 min, found none");
        }
        return atWarmest(sinceGasStopped.maxCelsius());
    }
}
