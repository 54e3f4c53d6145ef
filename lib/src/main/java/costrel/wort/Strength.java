package costrel.wort;

/**
 * Alcoholic strength by volume at 20 °C.
 *
 * @param percent litres of ethanol in 100 litres at 20 °C, 0 to 100
 */
public record Strength(double percent) {
    public Strength {
        percent = Limits.within("strength", percent, 0, 100, " % vol");
    }

    /**
     * The strength of so many per cent by volume.
     *
     * @param percent litres of ethanol in 100 litres at 20 °C, 0 to 100
     * @return the strength
     * @throws IllegalArgumentException when outside that range
     */
    public static Strength of(double percent) {
        return new Strength(percent);
    }

    /**
     * Reads {@code 4.2 %}, {@code 4.2 % ABV}, {@code 4.2 % vol}; the unit must be there.
     *
     * @param text the strength as written, with a decimal point
     * @return the strength
     * @throws IllegalArgumentException when the text is anything else or the figure is out of range
     */
    public static Strength parse(String text) {
        String expected = "a strength such as 4.2 % vol";
        ScaleText.Reading reading = ScaleText.read("strength", text, expected);
        if (!reading.scale().equals("%")
                && !reading.scale().equals("% ABV")
                && !reading.scale().equals("% vol")) {
            throw ScaleText.refused("strength", text, expected);
        }
        return new Strength(reading.number().doubleValue());
    }

    /**
     * The figure with its unit, in at most 6 decimals.
     *
     * @return the text, which {@link #parse} reads
     */
    @Override
    public String toString() {
        return ScaleText.places(percent, 1, 6) + " % vol";
    }
}
