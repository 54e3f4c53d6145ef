package costrel.hops;

/** The laboratory method behind an alpha-acid figure. Figures of two methods never meet in one ratio without a factor. */
public enum AlphaMethod {
    /** Lead conductance value, Analytica-EBC 7.4. */
    LEAD_CONDUCTANCE("EBC 7.4"),
    /** High-performance liquid chromatography, Analytica-EBC 7.7. */
    HPLC("EBC 7.7"),
    /** Spectrophotometry, ASBC Hops-6. */
    SPECTROPHOTOMETRY("ASBC Hops-6"),
    /** The certificate doesn't say. */
    UNSTATED("unstated");

    private final String label;

    AlphaMethod(String label) {
        this.label = label;
    }

    /**
     * The number of the method as certificates print it.
     *
     * @return the label, such as "EBC 7.4"
     */
    public String label() {
        return label;
    }

    /**
     * Reads a label back, without regard to case and blanks.
     *
     * @param text a label
     * @return the method
     * @throws IllegalArgumentException for any other text; the message lists the labels
     */
    public static AlphaMethod parse(String text) {
        return Labels.parse("method of the alpha acid", values(), AlphaMethod::label, text);
    }
}
