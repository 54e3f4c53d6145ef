package costrel.repl;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Where the cursor stands in an input: between the brackets of which call, at which place, behind which texts.
 *
 * @param call the name before the bracket, blank for a text that stands in none
 * @param place how many commas stand between the bracket and the cursor
 * @param before the texts at the places before, blank where something else stands
 * @param text where the text begins in which the cursor stands; empty if it stands in none
 */
record Spot(String call, int place, List<String> before, Optional<Integer> text) {

    /** A bracket that is open. */
    private static final class Open {
        private final String call;
        private final List<String> texts = new ArrayList<>(List.of(""));

        Open(String call) {
            this.call = call;
        }
    }

    /**
     * Reads an input up to the cursor.
     *
     * @param source the input up to the cursor
     * @return the spot, or empty where neither a call nor a text is open
     */
    static Optional<Spot> of(String source) {
        Deque<Open> open = new ArrayDeque<>();
        int textFrom = -1;
        for (int i = 0; i < source.length(); i++) {
            char c = source.charAt(i);
            if (textFrom >= 0) {
                if (c == '\\') {
                    i++;
                } else if (c == '"') {
                    noteText(open, source.substring(textFrom, i));
                    textFrom = -1;
                } else if (c == '\n') {
                    textFrom = -1;
                }
            } else if (c == '"') {
                textFrom = i + 1;
            } else if (c == '(' || c == '{' || c == '[') {
                open.push(new Open(c == '(' ? nameBefore(source, i) : ""));
            } else if ((c == ')' || c == '}' || c == ']') && !open.isEmpty()) {
                open.pop();
            } else if (c == ',' && !open.isEmpty()) {
                open.getFirst().texts.add("");
            }
        }
        Open inner = open.peek();
        if (inner == null || inner.call.isEmpty()) {
            return textFrom < 0 ? Optional.empty() : Optional.of(new Spot("", 0, List.of(), Optional.of(textFrom)));
        }
        int place = inner.texts.size() - 1;
        return Optional.of(new Spot(
                inner.call,
                place,
                List.copyOf(inner.texts.subList(0, place)),
                textFrom < 0 ? Optional.empty() : Optional.of(textFrom)));
    }

    private static void noteText(Deque<Open> open, String text) {
        if (!open.isEmpty()) {
            List<String> texts = open.getFirst().texts;
            texts.set(texts.size() - 1, text);
        }
    }

    private static String nameBefore(String source, int bracket) {
        int from = bracket;
        while (from > 0 && Character.isJavaIdentifierPart(source.charAt(from - 1))) {
            from--;
        }
        return Calls.known(source.substring(0, from), source.substring(from, bracket));
    }
}
