package costrel.wort;

/**
 * Bitterness in European units, milligrams of bitter substance to the litre.
 *
 * @param ebu EBU, 0 or more
 */
public record Bitterness(double ebu) {
    public Bitterness {
        ebu = Limits.atLeast("bitterness", ebu, 0, " EBU");
    }

    /**
     * The bitterness of so many European units.
     *
     * @param ebu EBU, 0 or more
     * @return the bitterness
     * @throws IllegalArgumentException when outside that range
     */
    public static Bitterness of(double ebu) {
        return new Bitterness(ebu);
    }

    /**
     * Reads {@code 28 EBU}; the unit must be there.
     *
     * @param text the bitterness as written, with a decimal point
     * @return the bitterness
     * @throws IllegalArgumentException when the text is anything else or the figure is out of range
     */
    public static Bitterness parse(String text) {
        String expected = "a bitterness such as 28 EBU";
        ScaleText.Reading reading = ScaleText.read("bitterness", text, expected);
        if (!reading.scale().equals("EBU")) {
            throw ScaleText.refused("bitterness", text, expected);
        }
        return new Bitterness(reading.number().doubleValue());
    }

    /**
     * The figure with its unit, in at most 6 decimals.
     *
     * @return the text, which {@link #parse} reads
     */
    @Override
    public String toString() {
        return ScaleText.places(ebu, 0, 6) + " EBU";
    }
}
