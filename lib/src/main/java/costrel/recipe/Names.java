package costrel.recipe;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds things by the names people write: exactly, else without regard to case and spaces; the nearest are offered. */
public final class Names {

    private static final Pattern GAPS = Pattern.compile("[\\s\\u00a0_-]+");

    private Names() {}

    /**
     * Looks a name up.
     *
     * @param <T> what is looked up
     * @param things the things by their exact names
     * @param name the name as written
     * @return the thing, or empty where no name matches
     */
    public static <T> Optional<T> find(Map<String, T> things, String name) {
        T exact = things.get(name);
        if (exact != null) {
            return Optional.of(exact);
        }
        String wanted = folded(name);
        return things.entrySet().stream()
                .filter(entry -> folded(entry.getKey()).equals(wanted))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /**
     * Looks a name up and refuses an unknown one, offering the nearest.
     *
     * @param <T> what is looked up
     * @param what the kind of thing, for the message, such as "plant"
     * @param things the things by their exact names
     * @param name the name as written
     * @return the thing
     * @throws UnknownNameException if no name matches
     */
    public static <T> T require(String what, Map<String, T> things, String name) {
        return find(things, name)
                .orElseThrow(() -> new UnknownNameException(what, name, nearest(things.keySet(), name)));
    }

    /**
     * The known names nearest to a wrong one.
     *
     * @param known all names
     * @param name the name as written
     * @return at most three, nearest first; empty where nothing is near
     */
    public static List<String> nearest(Collection<String> known, String name) {
        String wanted = folded(name);
        int limit = Math.max(2, wanted.length() / 2);
        record Near(String name, int distance) {}
        List<Near> near = new ArrayList<>();
        for (String candidate : known) {
            int distance = away(candidate, wanted);
            if (distance <= limit) {
                near.add(new Near(candidate, distance));
            }
        }
        near.sort(Comparator.comparingInt(Near::distance).thenComparing(Near::name));
        return near.stream().limit(3).map(Near::name).toList();
    }

    /** How far a known name is from what was written, by the whole of it or by the nearest of its words. */
    private static int away(String candidate, String wanted) {
        String whole = folded(candidate);
        if (whole.contains(wanted) || (wanted.length() > 2 && wanted.contains(whole))) {
            return 1;
        }
        int nearest = distance(whole, wanted);
        for (String word : candidate.split("\\s+", -1)) {
            if (word.length() > 2) {
                nearest = Math.min(nearest, distance(folded(word), wanted) + 1);
            }
        }
        return nearest;
    }

    /**
     * A name without case and spaces, as names are compared.
     *
     * @param name any name
     * @return the folded name
     */
    public static String folded(String name) {
        return isPlain(name) ? foldedPlain(name) : foldedAny(name);
    }

    /**
     * Whether two names are one without regard to case and spaces.
     *
     * @param name any name
     * @param other another
     * @return true where both fold to the same
     */
    public static boolean same(String name, String other) {
        if (name.equals(other)) {
            return true;
        }
        int i = 0;
        int k = 0;
        while (true) { // letter by letter, without writing either folded
            while (i < name.length() && isGap(name.charAt(i))) {
                i++;
            }
            while (k < other.length() && isGap(other.charAt(k))) {
                k++;
            }
            if (i == name.length() && k == other.length()) {
                return true;
            }
            char one = i == name.length() ? ' ' : name.charAt(i++);
            char two = k == other.length() ? ' ' : other.charAt(k++);
            if (!isPlain(one) || !isPlain(two)) {
                return folded(name).equals(folded(other));
            }
            if (small(one) != small(two)) {
                return false;
            }
        }
    }

    private static boolean isPlain(char c) {
        return c >= ' ' && c <= '~';
    }

    private static boolean isGap(char c) {
        return c == ' ' || c == '_' || c == '-';
    }

    private static char small(char c) {
        return c >= 'A' && c <= 'Z' ? (char) (c + ('a' - 'A')) : c;
    }

    /** Whether a name has letters, digits, marks and spaces of ASCII only, as nearly every name has. */
    private static boolean isPlain(String name) {
        for (int i = 0; i < name.length(); i++) {
            if (!isPlain(name.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    /** The same without a pattern: names are folded at every look-up. A name that is folded already stays as it is. */
    private static String foldedPlain(String name) {
        int kept = 0;
        boolean asItIs = true;
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            boolean gap = isGap(c);
            kept += gap ? 0 : 1;
            asItIs &= !gap && !(c >= 'A' && c <= 'Z');
        }
        if (asItIs) {
            return name;
        }
        char[] folded = new char[kept];
        int place = 0;
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (!isGap(c)) {
                folded[place++] = small(c);
            }
        }
        return new String(folded);
    }

    private static String foldedAny(String name) {
        return GAPS.matcher(name.strip().toLowerCase(Locale.ROOT)).replaceAll("");
    }

    private static int distance(String a, String b) {
        int[] previous = new int[b.length() + 1];
        int[] current = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            previous[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            current[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                current[j] = Math.min(change, Math.min(previous[j], current[j - 1]) + 1);
            }
            int[] swap = previous;
            previous = current;
            current = swap;
        }
        return previous[b.length()];
    }
}
