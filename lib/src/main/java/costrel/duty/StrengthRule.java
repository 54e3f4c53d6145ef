package costrel.duty;

/** Which strength duty is charged on. */
public enum StrengthRule {
    /** Conditioned in its container: what is expected when sold, being greater than what is declared. */
    EXPECTED("expected when sold"),
    /** What labels and papers declare. */
    DECLARED("declared"),
    /** What is expected, for want of a declared strength. */
    EXPECTED_FOR_WANT_OF_DECLARED("expected, none declared");

    private final String label;

    StrengthRule(String label) {
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
