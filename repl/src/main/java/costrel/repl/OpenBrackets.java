package costrel.repl;

/**
 * Which brackets, remarks and texts are open at a place, seen from the letters alone. It is far quicker than the engine's own
 * look. A text that grows is looked at only where it has grown.
 */
final class OpenBrackets {

    private enum Within {
        CODE,
        REMARK,
        BLOCK
    }

    /** No instruction ends on these, but for the last two, which may stand twice. */
    private static final String GOES_ON = "/%&|^=<?:,+-";

    private int at;
    private char last;
    private char lastButOne;
    private int depth;
    private Within within = Within.CODE;

    /** Nothing is open yet. */
    OpenBrackets(int from) {
        this.at = from;
    }

    /** Whether something is open that a later line must close. */
    boolean anything() {
        return depth > 0 || within != Within.CODE;
    }

    /** Whether a later line must come: something is open, or what was typed last wants something behind it. */
    boolean isToGoOn() {
        boolean counts = (last == '+' || last == '-') && last == lastButOne;
        return anything() || (GOES_ON.indexOf(last) >= 0 && !counts);
    }

    /** Looks on to the end of a line of a text that begins as it did before. */
    void upTo(String source, int end) {
        while (at < end) {
            switch (within) {
                case REMARK -> closeAt(source, "*/", end);
                case BLOCK -> closeAt(source, "\"\"\"", end);
                default -> code(source, end);
            }
        }
    }

    private void closeAt(String source, String closing, int end) {
        if (within == Within.BLOCK && source.charAt(at) == '\\') {
            at += 2;
        } else if (source.startsWith(closing, at)) {
            at += closing.length();
            within = Within.CODE;
        } else {
            at++;
        }
        at = Math.min(at, end);
    }

    private void code(String source, int end) {
        char c = source.charAt(at);
        if (source.startsWith("//", at)) {
            at = lineEnd(source, end);
        } else if (source.startsWith("/*", at)) {
            within = Within.REMARK;
            at += 2;
        } else if (source.startsWith("\"\"\"", at)) {
            within = Within.BLOCK;
            last = c;
            at += 3;
        } else if (c == '"' || c == '\'') {
            last = c;
            text(source, c, lineEnd(source, end));
        } else {
            if (c == '(' || c == '[' || c == '{') {
                depth++;
            } else if (c == ')' || c == ']' || c == '}') {
                depth = Math.max(0, depth - 1);
            }
            if (!Character.isWhitespace(c)) {
                lastButOne = last;
                last = c;
            }
            at++;
        }
        at = Math.min(at, end);
    }

    private void text(String source, char quote, int end) {
        at++;
        while (at < end && source.charAt(at) != quote) {
            at += source.charAt(at) == '\\' ? 2 : 1;
        }
        at++;
    }

    private int lineEnd(String source, int end) {
        int next = source.indexOf('\n', at);
        return next < 0 ? end : Math.min(next, end);
    }
}
