package costrel.repl;

/** Takes what a session has to say while it evaluates an input. */
interface Listener {

    /**
     * Takes an answer.
     *
     * @param text the answer as it is printed
     * @param needsAPerson whether it holds findings that a person must decide on
     */
    void answer(String text, boolean needsAPerson);

    /**
     * Takes a note that is not an answer, such as that a variable was lost.
     *
     * @param text the note
     */
    void note(String text);

    /** Whether there is nobody left to answer, so that the rest need not be evaluated. */
    default boolean hasGone() {
        return false;
    }
}
