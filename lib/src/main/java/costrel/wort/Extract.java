package costrel.wort;

/**
 * An amount of extract in litre-degrees: litres at 20 °C times excess degrees of gravity.
 *
 * @param litreDegrees L°, 0 or more
 */
public record Extract(double litreDegrees) {
    public Extract {
        litreDegrees = Limits.atLeast("extract", litreDegrees, 0, " L°");
    }

    /**
     * The extract of so many litre-degrees.
     *
     * @param litreDegrees L°, 0 or more
     * @return the extract
     * @throws IllegalArgumentException when outside that range
     */
    public static Extract of(double litreDegrees) {
        return new Extract(litreDegrees);
    }

    /**
     * The extract in a volume of wort.
     *
     * @param volumeL litres at 20 °C, 0 or more
     * @param gravity gravity of the wort, not lighter than water
     * @return litres times excess degrees
     * @throws IllegalArgumentException when the volume is negative or the gravity is below that of water
     */
    public static Extract from(double volumeL, Gravity gravity) {
        return new Extract(Limits.atLeast("volume", volumeL, 0, " L") * gravity.excessDegrees());
    }

    /**
     * Reads {@code 1200 L°}; the unit must be there.
     *
     * @param text the extract as written, with a decimal point
     * @return the extract
     * @throws IllegalArgumentException when the text is anything else or the figure is out of range
     */
    public static Extract parse(String text) {
        String expected = "an extract such as 1200 L°";
        ScaleText.Reading reading = ScaleText.read("extract", text, expected);
        if (!reading.scale().equals("L°")) {
            throw ScaleText.refused("extract", text, expected);
        }
        return new Extract(reading.number().doubleValue());
    }

    /**
     * The figure with its unit, in at most 6 decimals.
     *
     * @return the text, which {@link #parse} reads
     */
    @Override
    public String toString() {
        return ScaleText.places(litreDegrees, 0, 6) + " L°";
    }
}
