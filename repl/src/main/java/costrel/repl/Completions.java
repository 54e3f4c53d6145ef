package costrel.repl;

import java.util.List;
import java.util.Set;
import jdk.jshell.SourceCodeAnalysis;

/**
 * What could stand at a place as Java sees it.
 *
 * @param anchor where the word begins
 * @param words what could stand there, in order
 */
record Completions(int anchor, List<String> words) {

    /** What Java can ask of everything, and no brewer wants to. */
    private static final Set<String> OF_EVERYTHING =
            Set.of("equals(", "getClass()", "hashCode()", "notify()", "notifyAll()", "wait(");

    Completions {
        words = List.copyOf(words);
    }

    /**
     * What could stand at a place in an input, and where the word that it would replace begins; none in a long input, for which the
     * engine may take many seconds.
     */
    static Completions of(SourceCodeAnalysis analysis, String source, int cursor) {
        try {
            return source.length() > Roomy.SHORT
                    ? new Completions(cursor, List.of())
                    : ofShort(analysis, source, cursor);
        } catch (StackOverflowError | InternalError | AssertionError notUnderstood) {
            return new Completions(cursor, List.of());
        }
    }

    private static Completions ofShort(SourceCodeAnalysis analysis, String source, int cursor) {
        int[] anchor = {cursor};
        List<String> words = analysis.completionSuggestions(source, cursor, anchor).stream()
                .map(SourceCodeAnalysis.Suggestion::continuation)
                .filter(word -> !word.startsWith("$") && !OF_EVERYTHING.contains(word))
                .distinct()
                .sorted()
                .toList();
        return new Completions(anchor[0], words);
    }
}
