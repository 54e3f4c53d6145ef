package costrel.repl;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.jline.reader.Candidate;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.EOFError;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;
import org.jline.terminal.Terminal;

/** An input as the line editor sees it: whole or not, and the word at the cursor. */
final class TypedInput implements Parser {

    private static final List<String> LEAVING = List.of("exit", "quit");

    private final CompletableFuture<Session> session;
    private volatile boolean accepted;

    TypedInput(CompletableFuture<Session> session) {
        this.session = session;
    }

    /** Whether an input leaves the console. */
    static boolean leaves(String source) {
        return LEAVING.contains(source.strip());
    }

    /** Whether a terminal can't move its cursor. */
    static boolean isPlain(Terminal terminal) {
        return terminal.getType().startsWith(Terminal.TYPE_DUMB);
    }

    /** Begins a new input. */
    void begin() {
        accepted = false;
    }

    /** Whether the input is whole and on its way, so that nothing is to be put behind it any more. */
    boolean accepted() {
        return accepted;
    }

    /** Hands what Tab offers over to the line editor. */
    static void offer(ParsedLine parsed, List<Candidate> candidates) {
        if (parsed instanceof AtCursor typed) {
            int order = 0;
            for (Offers.Offer offer : typed.found.offers()) {
                String figure = offer.figure().isEmpty() ? null : offer.figure();
                candidates.add(new Candidate(offer.typed(), offer.shown(), null, figure, null, null, false, order++));
            }
        }
    }

    @Override
    public ParsedLine parse(String line, int cursor, ParseContext context) {
        if (context == ParseContext.ACCEPT_LINE) {
            if (!leaves(line) && session.join().isUnfinished(line)) {
                throw new EOFError(-1, -1, "unfinished");
            }
            accepted = true;
        }
        return new AtCursor(
                line,
                cursor,
                context == ParseContext.COMPLETE
                        ? Offers.at(session.join(), line, cursor)
                        : new Offers(cursor, List.of()));
    }

    @Override
    public boolean isEscapeChar(char letter) {
        return false;
    }

    private static final class AtCursor implements CompletingParsedLine {

        private final String line;
        private final int cursor;
        private final Offers found;

        AtCursor(String line, int cursor, Offers found) {
            this.line = line;
            this.cursor = cursor;
            this.found = found;
        }

        @Override
        public String word() {
            return line.substring(Math.min(found.anchor(), cursor), cursor);
        }

        @Override
        public int wordCursor() {
            return word().length();
        }

        @Override
        public CharSequence escape(CharSequence candidate, boolean complete) {
            return candidate;
        }

        @Override
        public int rawWordCursor() {
            return wordCursor();
        }

        @Override
        public int rawWordLength() {
            return wordCursor();
        }

        @Override
        public int wordIndex() {
            return 0;
        }

        @Override
        public List<String> words() {
            return List.of(word());
        }

        @Override
        public String line() {
            return line;
        }

        @Override
        public int cursor() {
            return cursor;
        }
    }
}
