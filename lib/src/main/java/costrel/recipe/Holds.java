package costrel.recipe;

/** What a hop addition keeps when the beer moves or the hops change. */
public enum Holds {
    /** Its bitterness: the weight moves with alpha acid and utilisation. */
    BITTERNESS("bitterness"),
    /** Its weight for each hectolitre. */
    DOSE("dose"),
    /** Its hop oil for each hectolitre. */
    OIL("oil");

    private final String label;

    Holds(String label) {
        this.label = label;
    }

    /**
     * The word used in recipe files.
     *
     * @return the label
     */
    public String label() {
        return label;
    }
}
