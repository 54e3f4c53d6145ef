package costrel.repl;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * Cuts a text into pieces. It keeps what it knows: a text to which lines are added is looked at from the first new line on, and the
 * engine, whose look takes long, is asked only where the letters leave it open.
 */
final class Cutter {

    /** Letters of one piece that the engine is shown, over all its lines, before it is asked only at the end of the text. */
    static final int MOST_SHOWN = 1_000_000;

    private static final Pattern CONTINUES = Pattern.compile("\\s*+(?:\\.\\D|(?:else|catch|finally)\\b)");

    private final Function<String, CompletionInfo> engine;
    private final List<Piece> pieces = new ArrayList<>();
    private OpenBrackets open = new OpenBrackets(0);
    private String known = "";
    private int from;
    private int next;
    private int shown;
    private boolean unfinished;

    /**
     * A cutter that has seen nothing yet.
     *
     * @param engine tells whether a text is whole
     */
    Cutter(Function<String, CompletionInfo> engine) {
        this.engine = engine;
    }

    /** Whether a text is what was seen last, found unfinished then, with lines added. */
    boolean wasBegunWith(String source) {
        return unfinished
                && source.length() > known.length()
                && source.charAt(known.length()) == '\n'
                && source.startsWith(known);
    }

    /** Whether so much was shown to the engine that the piece is to be taken as it stands. */
    boolean isTired() {
        return shown > MOST_SHOWN;
    }

    /**
     * Cuts a text.
     *
     * @param source the text, its lines ended by line feeds
     */
    Cut cut(String source) {
        List<Piece> found = new ArrayList<>();
        advance(source, false, found);
        pieces.addAll(found);
        return new Cut(List.copyOf(pieces), unfinished);
    }

    /** Whether a text needs a further line; goes on with one that {@link #wasBegunWith} the lines seen before. */
    boolean isUnfinished(String source) {
        advance(source, true, new ArrayList<>());
        return unfinished;
    }

    private void advance(String source, boolean only, List<Piece> found) {
        for (int to = lineEnd(source, next); ; to = lineEnd(source, next)) {
            boolean last = to == source.length();
            boolean blank = unfinished && source.substring(next, to).isBlank();
            next = to + 1;
            if (!last
                    && CONTINUES.matcher(source).region(to + 1, source.length()).lookingAt()) {
                continue;
            }
            open.upTo(source, to);
            boolean clear = source.length() > Roomy.SHORT && open.isToGoOn();
            if (clear || (blank && (only || !last)) || (isTired() && !last)) {
                unfinished = true;
            } else {
                found.clear();
                unfinished = isUnfinished(source, to, found);
            }
            if (!unfinished) {
                pieces.addAll(found);
                found.clear();
                from = to + 1;
                open = new OpenBrackets(from);
                shown = 0;
            }
            if (last) {
                known = source;
                return;
            }
        }
    }

    private static int lineEnd(String source, int from) {
        int end = source.indexOf('\n', from);
        return end < 0 ? source.length() : end;
    }

    private boolean isUnfinished(String source, int to, List<Piece> found) {
        String rest = source.substring(from, to);
        while (true) {
            int start = to - rest.length();
            shown += rest.length();
            CompletionInfo info;
            try {
                info = engine.apply(rest);
            } catch (InternalError | AssertionError notUnderstood) {
                found.add(new Piece(source, start, rest));
                return false;
            }
            Completeness completeness = info.completeness();
            if (completeness == Completeness.EMPTY) {
                return false;
            }
            if (completeness == Completeness.DEFINITELY_INCOMPLETE
                    || completeness == Completeness.CONSIDERED_INCOMPLETE) {
                return true;
            }
            if (!completeness.isComplete() || info.source() == null) {
                found.add(new Piece(source, start, rest));
                return false;
            }
            found.add(new Piece(source, start, info.source()));
            if (info.remaining().isBlank()) {
                return false;
            }
            rest = info.remaining();
        }
    }
}
