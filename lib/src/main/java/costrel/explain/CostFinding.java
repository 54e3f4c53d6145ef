package costrel.explain;

/**
 * Something a person must know about a cost.
 *
 * @param what what was found, with its figures
 * @param suggestion what would mend it, or empty
 */
public record CostFinding(String what, String suggestion) {

    /**
     * The finding in one line.
     *
     * @return what and suggestion
     */
    public String text() {
        return suggestion.isEmpty() ? what : what + "; " + suggestion;
    }
}
