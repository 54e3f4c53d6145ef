package costrel.repl;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Names that a mistyped one may have been meant for. */
final class Nearest {

    private static final int OFFERED = 3;

    private Nearest() {}

    /**
     * The nearest names, by letters missing, too many, wrong or swapped.
     *
     * @param known the names there are
     * @param name the name as typed
     * @return at most three, nearest first
     */
    static List<String> to(String name, Collection<String> known) {
        record Near(String name, int distance) {}
        int limit = name.length() <= 5 ? 1 : name.length() <= 8 ? 2 : 3;
        String typed = name.toLowerCase(Locale.ROOT);
        return known.stream()
                .filter(candidate -> Math.abs(candidate.length() - name.length()) <= limit && !candidate.equals(name))
                .map(candidate -> new Near(candidate, distance(typed, candidate.toLowerCase(Locale.ROOT))))
                .filter(near -> near.distance() <= limit && near.distance() < name.length())
                .sorted(Comparator.comparingInt(Near::distance).thenComparing(Near::name))
                .map(Near::name)
                .distinct()
                .limit(OFFERED)
                .toList();
    }

    /** The least number of letters put in, left out, changed or swapped with their neighbour. */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                boolean same = a.charAt(i - 1) == b.charAt(j - 1);
                d[i][j] = Math.min(d[i - 1][j - 1] + (same ? 0 : 1), Math.min(d[i - 1][j], d[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
