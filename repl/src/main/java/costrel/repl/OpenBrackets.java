package costrel.repl;

/**
 * Which brackets, remarks and texts are open at a place, seen from the letters alone. It is far quicker than the engine's own
 * look, which would be taken again and again at each line of a long input.
 */
final class OpenBrackets {

    private enum Within {
        CODE,
        REMARK,
        BLOCK
    }

    private final String source;
    private int at;
    private int depth;
    private Within within = Within.CODE;

    OpenBrackets(String source, int from) {
        this.source = source;
        this.at = from;
    }

    /** Whether something is open that a later line must close. */
    boolean anything() {
        return depth > 0 || within != Within.CODE;
    }

    /** Looks on to the end of a line. */
    void upTo(int end) {
        while (at < end) {
            switch (within) {
                case REMARK -> closeAt("*/", end);
                case BLOCK -> closeAt("\"\"\"", end);
                default -> code(end);
            }
        }
    }

    private void closeAt(String closing, int end) {
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

    private void code(int end) {
        char c = source.charAt(at);
        if (source.startsWith("//", at)) {
            at = lineEnd(end);
        } else if (source.startsWith("/*", at)) {
            within = Within.REMARK;
            at += 2;
        } else if (source.startsWith("\"\"\"", at)) {
            within = Within.BLOCK;
            at += 3;
        } else if (c == '"' || c == '\'') {
            text(c, lineEnd(end));
        } else {
            if (c == '(' || c == '[' || c == '{') {
                depth++;
            } else if (c == ')' || c == ']' || c == '}') {
                depth = Math.max(0, depth - 1);
            }
            at++;
        }
        at = Math.min(at, end);
    }

    private void text(char quote, int end) {
        at++;
        while (at < end && source.charAt(at) != quote) {
            at += source.charAt(at) == '\\' ? 2 : 1;
        }
        at++;
    }

    private int lineEnd(int end) {
        int next = source.indexOf('\n', at);
        return next < 0 ? end : Math.min(next, end);
    }
}
