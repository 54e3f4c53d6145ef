package costrel.wort;

import java.math.BigDecimal;

/**
 * How much heavier than water a wort or beer is, on the brewer's scale of excess degrees: G = 1000 (SG - 1), SG the
 * relative density 20/20 °C. A wort of SG 1.040 has 40 degrees.
 *
 * @param excessDegrees the degrees above water, from -10 (a spirituous liquid) to 200
 */
public record Gravity(double excessDegrees) {
    /** Brewers' pounds: a barrel of water is taken as 360 lb, so one pound over it is 1000/360 of a degree. */
    private static final double POUNDS_PER_BARREL_OF_WATER = 360;

    /** Density of water at 20 °C in kg/L, 998.2 kg/m³, as the arithmetic of extract per litre takes it. */
    static final double WATER_KG_PER_LITRE = 0.9982;

    private static final BigDecimal LEAST_SG = new BigDecimal("0.990");
    private static final BigDecimal MOST_SG = new BigDecimal("1.200");
    private static final String EXPECTED = "a gravity such as 1.040, 1040, 40 °, 10 °P or 14.4 lb/brl";

    public Gravity {
        excessDegrees = Limits.within("gravity", excessDegrees, -10, 200, " degrees over water");
    }

    /**
     * The gravity of a relative density, taken as the decimal that was written: 1.040 is 40 degrees exactly.
     *
     * @param sg relative density 20/20 °C, 0.990 to 1.200
     * @return the gravity
     * @throws IllegalArgumentException when the density is outside that range
     */
    public static Gravity of(double sg) {
        if (!(sg >= 0.990 && sg <= 1.200)) {
            throw new IllegalArgumentException(
                    "gravity: expected a relative density of 0.990 to 1.200, found " + ScaleText.plain(sg));
        }
        return ofRelativeDensity(BigDecimal.valueOf(sg));
    }

    /**
     * The gravity of so many excess degrees.
     *
     * @param excessDegrees 40 for a wort of SG 1.040; -10 to 200
     * @return the gravity
     * @throws IllegalArgumentException when outside that range
     */
    public static Gravity ofDegrees(double excessDegrees) {
        return new Gravity(excessDegrees);
    }

    /**
     * The gravity of a wort of so much extract; see {@link PlatoScale}.
     *
     * @param plato extract, g in 100 g of wort, 0 to 40
     * @return the gravity
     * @throws IllegalArgumentException when outside that range
     */
    public static Gravity ofPlato(double plato) {
        return new Gravity(1000 * (PlatoScale.sgFromPlato(plato) - 1));
    }

    /**
     * Reads a gravity. A bare number is a relative density: {@code 1.040}, or {@code 1040} as it is spoken. Excess
     * degrees need their sign, {@code 40 °}, because a bare 40 could be anything and is refused; so is {@code 1040 °}.
     * Extract is {@code 10 °P} or {@code 10 P}; brewers' pounds are {@code 14.4 lb/brl}, 1000/360 of a degree each.
     *
     * @param text the gravity as written, with a decimal point
     * @return the gravity
     * @throws IllegalArgumentException when the text is anything else or the figure is out of range
     */
    public static Gravity parse(String text) {
        ScaleText.Reading reading = ScaleText.read("gravity", text, EXPECTED);
        BigDecimal number = reading.number();
        return switch (reading.scale()) {
            case "" -> ofSpokenDensity(text, number);
            case "°" -> new Gravity(number.doubleValue());
            case "°P", "P" -> ofPlato(number.doubleValue());
            case "lb/brl" -> new Gravity(number.doubleValue() * 1000 / POUNDS_PER_BARREL_OF_WATER);
            default -> throw ScaleText.refused("gravity", text, EXPECTED);
        };
    }

    private static Gravity ofSpokenDensity(String text, BigDecimal number) {
        boolean spoken = number.compareTo(BigDecimal.valueOf(2)) > 0;
        BigDecimal sg = spoken ? number.movePointLeft(3) : number;
        boolean bareOne = !spoken && number.scale() == 0;
        if (bareOne || sg.compareTo(LEAST_SG) < 0 || sg.compareTo(MOST_SG) > 0) {
            throw ScaleText.refused("gravity", text, EXPECTED);
        }
        return ofRelativeDensity(sg);
    }

    private static Gravity ofRelativeDensity(BigDecimal sg) {
        return new Gravity(sg.subtract(BigDecimal.ONE).movePointRight(3).doubleValue());
    }

    /**
     * Relative density 20/20 °C.
     *
     * @return 1.040 for 40 degrees
     */
    public double sg() {
        return (1000 + excessDegrees) / 1000;
    }

    /**
     * Extract by the Plato scale; of a fermented beer this is the apparent extract. See {@link PlatoScale}.
     *
     * @return g of extract in 100 g; 0 for water and anything lighter
     * @throws IllegalArgumentException above SG 1.17874, where the scale ends
     */
    public double plato() {
        return PlatoScale.platoFromSg(sg());
    }

    /**
     * Extract in a litre of wort: 10 · °P · SG · 0.9982.
     *
     * @return grams in a litre at 20 °C
     * @throws IllegalArgumentException above SG 1.17874, where the Plato scale ends
     */
    public double extractGramsPerLitre() {
        return 10 * plato() * sg() * WATER_KG_PER_LITRE;
    }

    /**
     * Brewers' pounds, the excess weight of a 36-gallon barrel of the wort over a barrel of water.
     *
     * @return lb per barrel, 0.36 of the degrees
     */
    public double brewersPounds() {
        return excessDegrees * POUNDS_PER_BARREL_OF_WATER / 1000;
    }

    /**
     * The relative density in four to six decimals, as many as are needed: 1.0400. A gravity that was written in six
     * decimals or fewer reads back equal; a computed one to within half a thousandth of a degree.
     *
     * @return the text, which {@link #parse} reads
     */
    @Override
    public String toString() {
        return ScaleText.places(
                BigDecimal.valueOf(excessDegrees).movePointLeft(3).add(BigDecimal.ONE), 4, 6);
    }
}
