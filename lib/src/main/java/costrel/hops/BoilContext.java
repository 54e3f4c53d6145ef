package costrel.hops;

import costrel.wort.TemperatureCourse;

/**
 * What a utilisation convention may ask about one boil.
 *
 * @param boilMinutes length of the boil, minutes, 0 to 600
 * @param boilingCelsius temperature of the boil, °C, 80 to 120
 * @param copperUpDegrees gravity of the full copper before the boil, excess degrees, −10 to 400
 * @param castDegrees gravity at cast, excess degrees, −10 to 400
 * @param stand temperature course from the end of the boil to the cooler
 * @param hopbackMinutes contact time in the hopback, minutes, 0 to 600
 * @param hopbackCelsius temperature in the hopback, °C, 0 to 120
 * @param collectedShare litres cast and collected over litres in the copper at cast (V_s/V_out), over 0 and at most 1
 */
public record BoilContext(
        double boilMinutes,
        double boilingCelsius,
        double copperUpDegrees,
        double castDegrees,
        TemperatureCourse stand,
        double hopbackMinutes,
        double hopbackCelsius,
        double collectedShare) {

    /** Sums of minutes carry rounding; hops that are early by less than this went in at the start of the boil. */
    private static final double MINUTE_NOISE = 1e-9;

    public BoilContext {
        boilMinutes = Limits.within("boil", boilMinutes, 0, 600, " min");
        boilingCelsius = Limits.within("boiling temperature", boilingCelsius, 80, 120, " °C");
        copperUpDegrees = Limits.within("copper-up gravity", copperUpDegrees, -10, 400, " °");
        castDegrees = Limits.within("gravity at cast", castDegrees, -10, 400, " °");
        hopbackMinutes = Limits.within("hopback contact", hopbackMinutes, 0, 600, " min");
        hopbackCelsius = Limits.within("hopback temperature", hopbackCelsius, 0, 120, " °C");
        collectedShare = Limits.shareOverZero("collected share of the cast wort", collectedShare);
    }

    /**
     * The relative density that stands for the whole boil.
     *
     * @return mean of copper up and cast, 1.040 for 40 degrees
     */
    public double meanSg() {
        return 1 + (copperUpDegrees + castDegrees) / 2000;
    }

    /**
     * How long the hops of a use boil: a copper addition from its time to cast, first wort and mash hops the whole boil,
     * others not at all.
     *
     * @param use where the hops go in
     * @return minutes
     * @throws IllegalArgumentException for a copper addition that is due before the boil begins
     */
    public double boiledMinutes(HopUse use) {
        if (use instanceof HopUse.Copper copper) {
            if (copper.minutesBeforeCast() > boilMinutes + MINUTE_NOISE) {
                throw new IllegalArgumentException("copper addition: expected 0 to " + Limits.plain(boilMinutes)
                        + " min before cast, the length of the boil, found "
                        + Limits.plain(copper.minutesBeforeCast()) + " min");
            }
            return Math.min(copper.minutesBeforeCast(), boilMinutes);
        }
        return use instanceof HopUse.FirstWort || use instanceof HopUse.Mash ? boilMinutes : 0;
    }
}
