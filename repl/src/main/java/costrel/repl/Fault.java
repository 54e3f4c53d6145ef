package costrel.repl;

import org.jspecify.annotations.Nullable;

/**
 * Why an input gave no answer.
 *
 * @param kind whose fault it is
 * @param message what is wrong, in one or two lines
 * @param place where, or null if it is nowhere in particular
 */
record Fault(Kind kind, String message, @Nullable Place place) {

    /** Whose fault it is. */
    enum Kind {
        /** The input is wrong and can be put right. */
        INPUT,
        /** Something went wrong that the input doesn't explain. */
        FAILURE,
        /** The user stopped it. */
        STOPPED
    }

    /**
     * A place in an input.
     *
     * @param line the line, counted from 1
     * @param column the column, counted from 0; -1 if only the line is known
     * @param text the whole line
     */
    record Place(int line, int column, String text) {

        /** The place of a character in an input. */
        static Place of(String source, int position) {
            int at = Math.max(0, Math.min(position, source.length()));
            int start = source.lastIndexOf('\n', at - 1) + 1;
            int end = source.indexOf('\n', at);
            int line = 1
                    + (int) source.substring(0, start)
                            .chars()
                            .filter(c -> c == '\n')
                            .count();
            return new Place(line, at - start, source.substring(start, end < 0 ? source.length() : end));
        }

        /** A whole line of an input. */
        static Place ofLine(String source, int line) {
            String[] lines = source.split("\n", -1);
            int index = Math.max(0, Math.min(line, lines.length) - 1);
            return new Place(index + 1, -1, lines[index]);
        }

        /** A line with a caret under the column. Tabs stay tabs, so that the caret stands where the eye expects it. */
        String caret(int indent) {
            StringBuilder under = new StringBuilder(" ".repeat(indent));
            for (int i = 0; i < column; i++) {
                under.append(i < text.length() && text.charAt(i) == '\t' ? '\t' : ' ');
            }
            return under.append('^').toString();
        }
    }

    /**
     * The fault as a file's reader would report it, then the line with a caret.
     *
     * @param file the file's name, or empty to leave file and line out
     * @param firstLine the line of the file on which the input began
     */
    String inFile(String file, int firstLine) {
        StringBuilder text = new StringBuilder();
        if (!file.isEmpty()) {
            text.append(file)
                    .append(':')
                    .append(firstLine + (place == null ? 0 : place.line() - 1))
                    .append(": ");
        }
        text.append(message);
        if (place != null && place.column() >= 0) {
            text.append("\n  ").append(place.text()).append('\n').append(place.caret(2));
        }
        return text.toString();
    }

    /**
     * The fault as it stands under a line that the user has just typed.
     *
     * @param source the input
     * @param promptWidth how far the typed line is indented
     * @param width the terminal's width
     */
    String underPrompt(String source, int promptWidth, int width) {
        if (place == null) {
            return message;
        }
        boolean justAbove =
                !source.strip().contains("\n") && promptWidth + place.text().length() < width;
        if (place.column() < 0) {
            return justAbove ? message : "line " + place.line() + ": " + message;
        }
        if (!justAbove) {
            return "  " + place.text() + "\n" + place.caret(2) + "\n" + message;
        }
        String caret = place.caret(promptWidth);
        boolean fits = !message.contains("\n") && caret.length() + 1 + message.length() < width;
        return caret + (fits ? " " : "\n") + message;
    }
}
