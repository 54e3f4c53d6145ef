package costrel.scaling;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A balance that must close: what comes in equals what goes out.
 *
 * @param name such as "extract"
 * @param unit unit of every amount
 * @param in what comes in
 * @param out what goes out
 */
public record Ledger(String name, String unit, List<Line> in, List<Line> out) {

    /** Relative difference between the two sides at which a result is refused. */
    public static final double CLOSES_WITHIN = 1e-9;

    /**
     * One line of a ledger.
     *
     * @param label what it is
     * @param amount in the ledger's unit, at 20 °C where it is a volume
     * @param hotAmount what a dip reads hot; empty where cold
     * @param celsius temperature of the hot dip; empty where cold
     */
    public record Line(String label, double amount, OptionalDouble hotAmount, OptionalDouble celsius) {

        /**
         * A cold line.
         *
         * @param label what it is
         * @param amount in the ledger's unit
         * @return the line
         */
        static Line of(String label, double amount) {
            return new Line(label, amount, OptionalDouble.empty(), OptionalDouble.empty());
        }

        static Line hot(String label, double amount, double hotAmount, double celsius) {
            return new Line(label, amount, OptionalDouble.of(hotAmount), OptionalDouble.of(celsius));
        }
    }

    public Ledger {
        in = List.copyOf(in);
        out = List.copyOf(out);
        double ins = sum(in);
        double outs = sum(out);
        if (!(Math.abs(ins - outs) <= CLOSES_WITHIN * Math.max(1, Math.abs(ins)))) {
            throw new ArithmeticException(String.format(
                    Locale.ROOT, "%s ledger does not close: %.9f %s in, %.9f %s out", name, ins, unit, outs, unit));
        }
    }

    /**
     * What comes in, in all.
     *
     * @return sum of the lines in
     */
    public double total() {
        return sum(in);
    }

    /**
     * A line by its label.
     *
     * @param label the label
     * @return the amount
     * @throws IllegalArgumentException if no line is called so
     */
    public double amount(String label) {
        for (Line line : in) {
            if (line.label().equals(label)) {
                return line.amount();
            }
        }
        for (Line line : out) {
            if (line.label().equals(label)) {
                return line.amount();
            }
        }
        throw new IllegalArgumentException(name + " ledger: no line is called '" + label + "'");
    }

    private static double sum(List<Line> lines) {
        double sum = 0;
        for (Line line : lines) {
            sum += line.amount();
        }
        return sum;
    }
}
