package costrel.measure;

/** Text that doesn't read as an amount: what was expected, what stood there, and why it was refused. */
public final class QuantityTextException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;
    private static final int LONGEST_TEXT = 60;
    private static final int LONGEST_REASON = 200;

    /** What would have been right. */
    private final String expected;

    /** What stood there, fit to be shown. */
    private final String found;

    /** The reason. */
    private final String why;

    QuantityTextException(String expected, String text, String why) {
        super("expected " + expected + ", found '" + shown(text, LONGEST_TEXT) + "' (" + shown(why, LONGEST_REASON)
                + ")");
        this.expected = expected;
        this.found = shown(text, LONGEST_TEXT);
        this.why = shown(why, LONGEST_REASON);
    }

    /**
     * What would have been right.
     *
     * @return words such as "a mass such as 25 kg"
     */
    public String expected() {
        return expected;
    }

    /**
     * The text that was refused, cut short where it is long, control characters taken out.
     *
     * @return one line without quotes
     */
    public String found() {
        return found;
    }

    /**
     * Why it was refused.
     *
     * @return words such as "L is a volume"
     */
    public String why() {
        return why;
    }

    private static String shown(String text, int longest) {
        StringBuilder shown = new StringBuilder();
        text.codePoints()
                .limit(longest)
                .forEach(c -> shown.appendCodePoint(
                        Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? ' ' : c));
        return text.codePointCount(0, text.length()) > longest ? shown + "…" : shown.toString();
    }
}
