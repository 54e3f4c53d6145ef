package costrel.wort;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * Condition: the carbon dioxide a beer holds, gains in cask or bottle, and the pressure it makes.
 *
 * <p>What beer holds in equilibrium is c = 10 (p + 1.013) exp(−10.73797 + 2617.25 / T) g/L, p the gauge pressure in bar
 * and T in kelvin. The formula is given from memory of the trade literature, its origin not verified; it reproduces a
 * published one-page table, −1 to 25 °C and 0 to 1 bar, to its last digit. Every figure is good to about 3 %. What is held
 * after fermentation is at most the equilibrium at the warmest temperature since gas stopped rising.
 *
 * <p>A degree of gravity that ferments in a closed container gives 0.985 g/L, half a volume (from the Balling balance,
 * 0.9565 g CO2 to a g of ethanol). Carbon dioxide suffocates and over-primed bottles burst: the plan never replaces a
 * pressure gauge and a measured sample.
 */
public final class Condition {
    /** One volume of gas: 44.0095 g/mol over the molar volume of an ideal gas at 0 °C, 22.41397 L/mol. */
    public static final double GRAMS_PER_LITRE_PER_VOLUME = 1.9635;

    /** What a degree fermented in the closed container gives. */
    public static final double GRAMS_PER_LITRE_PER_DEGREE = 0.985;

    /** The same in volumes. */
    public static final double VOLUMES_PER_DEGREE = 0.50;

    /** Least extract left at racking for cask: T. Goldammer, The Brewers' Handbook, citing Hough et al. (1982). */
    public static final double LEAST_RACKING_PLATO = 0.75;

    /** Most extract left at racking for cask, same source. */
    public static final double MOST_RACKING_PLATO = 2;

    private static final double CAUTION_VOLUMES = 3.0;
    private static final double REFUSED_VOLUMES = 4.0;
    private static final double ATMOSPHERE_BAR = 1.013;
    private static final Set<String> UNITS = Set.of("volumes", "volume", "vols", "vol");

    private Condition() {}

    /**
     * What beer holds in equilibrium, inside the published table.
     *
     * @param celsius temperature in °C, -1 to 25
     * @param gaugeBar pressure over that of the atmosphere in bar, 0 to 1
     * @return grams of CO2 in a litre
     * @throws IllegalArgumentException outside those ranges
     */
    public static double equilibriumGramsPerLitre(double celsius, double gaugeBar) {
        requireTableTemperature(celsius);
        Limits.within("head pressure", gaugeBar, 0, 1, " bar gauge");
        return heldGramsPerLitre(celsius, gaugeBar);
    }

    /**
     * What beer holds in equilibrium where the table does not reach; a result that uses it says so.
     *
     * @param celsius temperature in °C, -5 to 40
     * @param gaugeBar pressure over that of the atmosphere in bar, -1 to 8
     * @return grams of CO2 in a litre
     * @throws IllegalArgumentException outside those ranges
     */
    public static double equilibriumGramsPerLitreExtrapolated(double celsius, double gaugeBar) {
        requireWiderTemperature(celsius);
        Limits.within("head pressure", gaugeBar, -1, 8, " bar gauge");
        return heldGramsPerLitre(celsius, gaugeBar);
    }

    /**
     * Pressure in a closed container at a temperature inside the published table. Over 1 bar the table itself ends and
     * the figure goes on in proportion, as gas laws have it. Below 0 the beer would take up gas rather than give it
     * off.
     *
     * @param volumes volumes of CO2 held, 0 to 10
     * @param celsius temperature in °C, -1 to 25
     * @return bar over that of the atmosphere
     * @throws IllegalArgumentException outside those ranges
     */
    public static double gaugePressureBar(double volumes, double celsius) {
        requireTableTemperature(celsius);
        return pressureBar(volumes, celsius);
    }

    /**
     * Pressure in a closed container kept warmer or colder than the table reaches; a result that uses it says so.
     *
     * @param volumes volumes of CO2 held, 0 to 10
     * @param celsius temperature in °C, -5 to 40
     * @return bar over that of the atmosphere
     * @throws IllegalArgumentException outside those ranges
     */
    public static double gaugePressureBarExtrapolated(double volumes, double celsius) {
        requireWiderTemperature(celsius);
        return pressureBar(volumes, celsius);
    }

    /**
     * Volumes of gas.
     *
     * @param gramsPerLitre grams of CO2 in a litre, 0 or more
     * @return volumes, at 1.9635 g/L each
     * @throws IllegalArgumentException when negative
     */
    public static double volumesFromGramsPerLitre(double gramsPerLitre) {
        return Limits.atLeast("carbon dioxide", gramsPerLitre, 0, " g/L") / GRAMS_PER_LITRE_PER_VOLUME;
    }

    /**
     * Grams of gas.
     *
     * @param volumes volumes of CO2, 0 or more
     * @return grams in a litre
     * @throws IllegalArgumentException when negative
     */
    public static double gramsPerLitreFromVolumes(double volumes) {
        return Limits.atLeast("carbon dioxide", volumes, 0, " volumes") * GRAMS_PER_LITRE_PER_VOLUME;
    }

    /**
     * Racking gravity that brings the beer to the wanted condition: FG + (wanted − held) / 0.50 degrees, never under
     * FG.
     *
     * @param fg gravity at which fermentation ends
     * @param wantedVolumes volumes of CO2 wanted, 0 or more
     * @param heldVolumes volumes the beer holds at racking, 0 or more
     * @return the gravity to rack at
     * @throws IllegalArgumentException when a volume is negative
     */
    public static Gravity racking(Gravity fg, double wantedVolumes, double heldVolumes) {
        Limits.atLeast("wanted condition", wantedVolumes, 0, " volumes");
        Limits.atLeast("condition held", heldVolumes, 0, " volumes");
        double degrees = Math.max(0, (wantedVolumes - heldVolumes) / VOLUMES_PER_DEGREE);
        return new Gravity(fg.excessDegrees() + degrees);
    }

    /**
     * Whether so much condition may go into a glass bottle.
     *
     * @param volumes volumes of CO2 in the bottle, 0 or more
     * @param ratedVolumes volumes the maker rates the bottle for, more than 0; empty for standard glass of no stated
     * rating
     * @return the verdict; over a stated rating, or from 4.0 volumes without one, it is a refusal
     * @throws IllegalArgumentException when a figure is out of range
     */
    public static BottleVerdict bottleVerdict(double volumes, OptionalDouble ratedVolumes) {
        Limits.atLeast("condition in bottle", volumes, 0, " volumes");
        boolean tooMuch;
        if (ratedVolumes.isPresent()) {
            tooMuch = volumes > Limits.above("rating of the bottle", ratedVolumes.getAsDouble(), 0, " volumes");
        } else {
            tooMuch = volumes >= REFUSED_VOLUMES;
        }
        if (tooMuch) {
            return BottleVerdict.REFUSED;
        }
        return volumes >= CAUTION_VOLUMES ? BottleVerdict.CAUTION : BottleVerdict.WITHIN;
    }

    /**
     * Reads a condition such as {@code 2.4 volumes}; the unit must be there.
     *
     * @param what what it is of, for the message
     * @param text the condition as written, with a decimal point
     * @return volumes of CO2, 0 to 10
     * @throws IllegalArgumentException when the text is anything else or the figure is out of range
     */
    public static double parseVolumes(String what, String text) {
        String expected = "a condition such as 2.0 volumes";
        ScaleText.Reading reading = ScaleText.read(what, text, expected);
        if (!UNITS.contains(reading.scale())) {
            throw ScaleText.refused(what, text, expected);
        }
        return Limits.within(what, reading.number().doubleValue(), 0, 10, " volumes");
    }

    private static double pressureBar(double volumes, double celsius) {
        Limits.within("condition", volumes, 0, 10, " volumes");
        return volumes * GRAMS_PER_LITRE_PER_VOLUME / gramsPerLitrePerBar(celsius) - ATMOSPHERE_BAR;
    }

    private static double heldGramsPerLitre(double celsius, double gaugeBar) {
        return (gaugeBar + ATMOSPHERE_BAR) * gramsPerLitrePerBar(celsius);
    }

    private static double gramsPerLitrePerBar(double celsius) {
        return 10 * Math.exp(-10.73797 + 2617.25 / (celsius + 273.15));
    }

    private static void requireTableTemperature(double celsius) {
        Limits.within("temperature of beer", celsius, -1, 25, " °C");
    }

    private static void requireWiderTemperature(double celsius) {
        Limits.within("temperature of beer", celsius, -5, 40, " °C");
    }
}
