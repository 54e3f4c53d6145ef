package costrel.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints what was measured as a table: what, against what, the figure, the aim, and whether it is met. */
final class Report {
    private static final String ROW = "%-46s | %-44s | %-44s | %-22s | %s%n";

    private final List<String[]> rows = new ArrayList<>();

    /** A figure that must not be over its aim. */
    void atMost(String what, String against, String figure, double value, double aim, String unit) {
        add(what, against, figure, "<= " + plain(aim) + unit, value <= aim);
    }

    /** A figure that must not be under its aim. */
    void atLeast(String what, String against, String figure, double value, double aim, String unit) {
        add(what, against, figure, ">= " + plain(aim) + unit, value >= aim);
    }

    /** A figure without an aim. */
    void note(String what, String against, String figure) {
        rows.add(new String[] {what, against, figure, "-", ""});
    }

    private void add(String what, String against, String figure, String aim, boolean met) {
        rows.add(new String[] {what, against, figure, aim, met ? "met" : "NOT MET"});
    }

    void print() {
        System.out.printf(Locale.ROOT, ROW, "what", "against", "figure", "aim", "");
        for (String[] row : rows) {
            System.out.printf(Locale.ROOT, ROW, (Object[]) row);
        }
        System.out.println();
        rows.clear();
    }

    static String plain(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%,d", (long) value)
                : String.format(Locale.ROOT, "%s", value);
    }

    /** A time in the unit that it reads best in. */
    static String time(double nanos) {
        if (nanos < 1e3) {
            return String.format(Locale.ROOT, "%.1f ns", nanos);
        }
        if (nanos < 1e6) {
            return String.format(Locale.ROOT, "%.1f µs", nanos / 1e3);
        }
        return nanos < 1e9
                ? String.format(Locale.ROOT, "%.1f ms", nanos / 1e6)
                : String.format(Locale.ROOT, "%.2f s", nanos / 1e9);
    }

    static String times(double ratio) {
        return String.format(Locale.ROOT, ratio < 10 ? "%.2f ×" : "%.0f ×", ratio);
    }
}
