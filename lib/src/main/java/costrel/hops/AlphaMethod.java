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
}
