package costrel.scaling;

/**
 * Something a person must know about a result: a limit met, a range left, a default used, a caution.
 *
 * @param weight how much it matters
 * @param what what was found, with its figures
 * @param suggestion what would mend it, or empty
 */
public record Finding(Weight weight, String what, String suggestion) {

    /** How much a finding matters. */
    public enum Weight {
        /** Good to know: a default was used, a figure was left out. */
        NOTE("note"),
        /** Safety, law or a doubtful figure: read before acting. */
        CAUTION("caution"),
        /** The gyle can't be brewed as it stands. */
        LIMIT("limit");

        private final String label;

        Weight(String label) {
            this.label = label;
        }

        /**
         * The word used on sheets.
         *
         * @return the label
         */
        public String label() {
            return label;
        }
    }

    static Finding note(String what, String suggestion) {
        return new Finding(Weight.NOTE, what, suggestion);
    }

    static Finding caution(String what, String suggestion) {
        return new Finding(Weight.CAUTION, what, suggestion);
    }

    static Finding limit(String what, String suggestion) {
        return new Finding(Weight.LIMIT, what, suggestion);
    }

    /**
     * The finding in one line.
     *
     * @return weight, what and suggestion
     */
    public String text() {
        return weight.label() + ": " + what + (suggestion.isEmpty() ? "" : "; " + suggestion);
    }
}
