package costrel.wort;

/**
 * Colour of a wort or beer on the EBC scale, 25 times the absorbance at 430 nm in 1 cm.
 *
 * @param ebc EBC units, 0 or more
 */
public record Colour(double ebc) {
    public Colour {
        ebc = Limits.atLeast("colour", ebc, 0, " EBC");
    }

    /**
     * The colour of so many EBC units.
     *
     * @param ebc EBC units, 0 or more
     * @return the colour
     * @throws IllegalArgumentException when outside that range
     */
    public static Colour of(double ebc) {
        return new Colour(ebc);
    }

    /**
     * Reads {@code 24 EBC}; the unit must be there.
     *
     * @param text the colour as written, with a decimal point
     * @return the colour
     * @throws IllegalArgumentException when the text is anything else or the figure is out of range
     */
    public static Colour parse(String text) {
        String expected = "a colour such as 24 EBC";
        ScaleText.Reading reading = ScaleText.read("colour", text, expected);
        if (!reading.scale().equals("EBC")) {
            throw ScaleText.refused("colour", text, expected);
        }
        return new Colour(reading.number().doubleValue());
    }

    /**
     * The figure with its unit, in at most 6 decimals.
     *
     * @return the text, which {@link #parse} reads
     */
    @Override
    public String toString() {
        return ScaleText.places(ebc, 0, 6) + " EBC";
    }
}
