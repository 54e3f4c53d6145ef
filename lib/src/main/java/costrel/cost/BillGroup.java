package costrel.cost;

/** The parts of a bill of materials, in the order of the cost sheet. */
public enum BillGroup {
    /** Malts and adjuncts that are mashed. */
    MASHED_GOODS("mashed goods"),
    /** Copper sugars. */
    SUGARS("sugars"),
    /** Hop lots, by first use. */
    HOPS("hops"),
    /** Yeast. */
    YEAST("yeast"),
    /** Salts and acids for the liquor. */
    LIQUOR_TREATMENT("liquor treatment"),
    /** Finings, yeast food and the like. */
    PROCESS_AIDS("process aids"),
    /** Sugar put into the container for condition. */
    PRIMINGS("primings");

    private final String label;

    BillGroup(String label) {
        this.label = label;
    }

    /**
     * The words used on sheets.
     *
     * @return the label
     */
    public String label() {
        return label;
    }
}
