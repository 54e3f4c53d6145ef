package costrel.duty;

/** Which beer a rate of duty is for. */
public enum DraughtRule {
    /** Draught or not. */
    ANY("any"),
    /** Draught only. */
    YES("yes"),
    /** Not draught. */
    NO("no");

    private final String label;

    DraughtRule(String label) {
        this.label = label;
    }

    /**
     * The word used in tables.
     *
     * @return the label
     */
    public String label() {
        return label;
    }

    boolean covers(boolean draught) {
        return this == ANY || (this == YES) == draught;
    }
}
