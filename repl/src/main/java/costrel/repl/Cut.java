package costrel.repl;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * A text cut into the pieces that are evaluated one by one. The end of a line ends a piece if what stands there is whole,
 * so that no semicolons are needed, unless the next line can only be a continuation.
 *
 * @param pieces the whole pieces, in order
 * @param unfinished whether something is left at the end that needs further lines
 */
record Cut(List<Piece> pieces, boolean unfinished) {

    private static final Pattern CONTINUES = Pattern.compile("\\s*+(?:\\.\\D|(?:else|catch|finally)\\b)");

    /**
     * Cuts a text.
     *
     * @param analysis knows when an input is whole
     * @param source the text, its lines ended by line feeds
     */
    static Cut of(SourceCodeAnalysis analysis, String source) {
        List<Piece> pieces = new ArrayList<>();
        int from = 0;
        OpenBrackets open = new OpenBrackets(source, from);
        for (int to = lineEnd(source, 0); ; to = lineEnd(source, to + 1)) {
            boolean last = to == source.length();
            if (!last
                    && CONTINUES.matcher(source).region(to + 1, source.length()).lookingAt()) {
                continue;
            }
            open.upTo(to);
            if (source.length() > Roomy.SHORT && open.anything()) {
                if (last) {
                    return new Cut(List.copyOf(pieces), true);
                }
                continue;
            }
            Cut input = ofInput(analysis, source, from, to);
            if (last || !input.unfinished()) {
                pieces.addAll(input.pieces());
                from = to + 1;
                open = new OpenBrackets(source, from);
            }
            if (last) {
                return new Cut(List.copyOf(pieces), input.unfinished());
            }
        }
    }

    private static int lineEnd(String source, int from) {
        int end = source.indexOf('\n', from);
        return end < 0 ? source.length() : end;
    }

    private static Cut ofInput(SourceCodeAnalysis analysis, String source, int from, int to) {
        List<Piece> pieces = new ArrayList<>();
        String rest = source.substring(from, to);
        while (true) {
            int start = to - rest.length();
            CompletionInfo info = analysis.analyzeCompletion(rest);
            Completeness completeness = info.completeness();
            if (completeness == Completeness.EMPTY) {
                return new Cut(pieces, false);
            }
            if (completeness == Completeness.DEFINITELY_INCOMPLETE
                    || completeness == Completeness.CONSIDERED_INCOMPLETE) {
                return new Cut(pieces, true);
            }
            if (!completeness.isComplete() || info.source() == null) {
                pieces.add(new Piece(source, start, rest));
                return new Cut(pieces, false);
            }
            pieces.add(new Piece(source, start, info.source()));
            if (info.remaining().isBlank()) {
                return new Cut(pieces, false);
            }
            rest = info.remaining();
        }
    }
}
