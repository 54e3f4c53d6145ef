package costrel.repl;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The nearest type that can be written down. What Java works out for {@code List.of(1, "pin")} is a list of things that are
 * several kinds at once, joined by {@code &}, and can't be written: a list of anything, {@code List<?>}, can.
 */
final class WritableType {

    private WritableType() {}

    /**
     * The nearest type that can be written down.
     *
     * @param type a type as the engine prints it
     * @return the same, or a wider one without {@code &}
     */
    static String of(String type) {
        String first = split(type, '&').get(0);
        int open = first.indexOf('<');
        int close = closing(first, open);
        if (open <= 0 || close < 0) {
            return first;
        }
        String arguments = split(first.substring(open + 1, close), ',').stream()
                .map(String::strip)
                .map(argument -> split(argument, '&').size() > 1 ? "?" : of(argument))
                .collect(Collectors.joining(", "));
        String rest = first.substring(close + 1);
        return first.substring(0, open) + "<" + arguments + ">" + of(rest);
    }

    /** The parts of a type between separators that stand in no angle brackets. */
    private static List<String> split(String type, char separator) {
        List<String> parts = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i < type.length(); i++) {
            char c = type.charAt(i);
            depth += c == '<' ? 1 : c == '>' ? -1 : 0;
            if (c == separator && depth == 0) {
                parts.add(type.substring(start, i));
                start = i + 1;
            }
        }
        parts.add(type.substring(start));
        return parts;
    }

    private static int closing(String type, int open) {
        int depth = 0;
        for (int i = Math.max(0, open); i < type.length(); i++) {
            depth += type.charAt(i) == '<' ? 1 : type.charAt(i) == '>' ? -1 : 0;
            if (depth == 0) {
                return i;
            }
        }
        return -1;
    }
}
