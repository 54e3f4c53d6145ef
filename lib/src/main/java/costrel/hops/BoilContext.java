package costrel.hops;

import costrel.wort.TemperatureCourse;

/**
 * What a utilisation convention may ask about one boil.
 *
 * @param boilMinutes length of the boil, minutes
 * @param boilingCelsius temperature of the boil, °C
 * @param copperUpDegrees gravity of the full copper before the boil, excess degrees
 * @param castDegrees gravity at cast, excess degrees
 * @param stand temperature course from the end of the boil to the cooler
 * @param hopbackMinutes contact time in the hopback, minutes
 * @param hopbackCelsius temperature in the hopback, °C
 * @param collectedShare litres cast and collected over litres in the copper at cast (V_s/V_out)
 */
public record BoilContext(
        double boilMinutes,
        double boilingCelsius,
        double copperUpDegrees,
        double castDegrees,
        TemperatureCourse stand,
        double hopbackMinutes,
        double hopbackCelsius,
        double collectedShare) {}
