package costrel.hops;

/** The moisture that an alpha-acid figure refers to. */
public enum MoistureBasis {
    /** The hops as delivered. */
    AS_IS("as is"),
    /** Dry matter. */
    DRY("dry"),
    /** Hops at ten per cent of moisture, as crop reports state it. */
    TEN_PERCENT("at 10 %");

    private final String label;

    MoistureBasis(String label) {
        this.label = label;
    }

    /**
     * The words used in tables.
     *
     * @return the label, such as "as is"
     */
    public String label() {
        return label;
    }

    /**
     * Reads a label back, without regard to case and blanks.
     *
     * @param text a label
     * @return the basis
     * @throws IllegalArgumentException for any other text; the message lists the labels
     */
    public static MoistureBasis parse(String text) {
        return Labels.parse("basis of the alpha acid", values(), MoistureBasis::label, text);
    }
}
