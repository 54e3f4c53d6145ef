package costrel.hops;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads the words of a closed list back, without regard to case and blanks. */
final class Labels {

    /** Longer text is cut in a message. */
    private static final int LONGEST_SHOWN = 40;

    private Labels() {}

    /** The choice whose label was written; the message of a refusal lists them all. */
    static <T> T parse(String what, T[] choices, Function<T, String> label, String text) {
        String wanted = folded(text);
        for (T choice : choices) {
            if (folded(label.apply(choice)).equals(wanted)) {
                return choice;
            }
        }
        throw new IllegalArgumentException(what + ": expected "
                + Arrays.stream(choices).map(label).collect(Collectors.joining(", ")) + ", found " + shown(text));
    }

    static String folded(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s\\u00a0]+", "");
    }

    private static String shown(String text) {
        if (text.isBlank()) {
            return "nothing";
        }
        return "'" + (text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "...") + "'";
    }
}
