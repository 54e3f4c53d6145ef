package costrel.wort;

/**
 * Whether so much condition may go into a glass bottle. The bounds are a judgement for standard glass, not a legal
 * limit: no published limit for filled bottles was found, and the bursting pressures of new glass are no filling
 * pressures.
 */
public enum BottleVerdict {
    /** Below the caution. */
    WITHIN("within the usual condition of bottled beer"),
    /** From 3.0 volumes: only with glass that its maker rates for it. */
    CAUTION("3.0 volumes or more: a bottle kept warm may burst; use glass its maker rates for this condition"),
    /** Over the stated rating, or from 4.0 volumes in standard glass. */
    REFUSED("more condition than the glass is good for: bottles may burst and injure");

    private final String words;

    BottleVerdict(String words) {
        this.words = words;
    }

    /**
     * The verdict in words.
     *
     * @return a line to print beside the figure
     */
    public String words() {
        return words;
    }
}
