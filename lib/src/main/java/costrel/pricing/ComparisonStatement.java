package costrel.pricing;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A comparison as printed: before + the effects = after, and each effect is the sum of its lines, to the last digit.
 *
 * @param unit what the figures are in, such as pence per pint
 * @param before the cost before, rounded halves up
 * @param after the cost after, rounded halves up
 * @param rows the effects, rounded by largest remainder
 */
public record ComparisonStatement(String unit, BigDecimal before, BigDecimal after, List<Row> rows) {

    /**
     * An effect as printed.
     *
     * @param effect the effect
     * @param amount what it comes to
     * @param lines what it is made of
     */
    public record Row(Effect effect, BigDecimal amount, List<Line> lines) {
        public Row {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A line of an effect as printed.
     *
     * @param part the part of the cost that it belongs to
     * @param item what it is
     * @param amount what it comes to
     */
    public record Line(String part, String item, BigDecimal amount) {}

    public ComparisonStatement {
        rows = List.copyOf(rows);
    }

    /**
     * How the cost moved.
     *
     * @return after less before, which is the sum of the rows
     */
    public BigDecimal difference() {
        return after.subtract(before);
    }

    static ComparisonStatement of(
            String unit, BigDecimal before, BigDecimal after, List<Comparison.Moved> effects, BigDecimal times) {
        int places = before.scale();
        List<Comparison.Moved> shown =
                effects.stream().filter(moved -> !moved.lines().isEmpty()).toList();
        List<BigDecimal> amounts = LargestRemainder.round(
                shown.stream().map(moved -> moved.perPint().multiply(times)).toList(), after.subtract(before), places);
        return new ComparisonStatement(
                unit,
                before,
                after,
                effects.stream()
                        .map(moved -> {
                            int at = shown.indexOf(moved);
                            return at < 0
                                    ? new Row(moved.effect(), BigDecimal.ZERO.setScale(places), List.of())
                                    : new Row(moved.effect(), amounts.get(at), lines(moved, amounts.get(at), times));
                        })
                        .toList());
    }

    private static List<Line> lines(Comparison.Moved moved, BigDecimal total, BigDecimal times) {
        List<Comparison.Line> lines = moved.lines();
        List<BigDecimal> amounts = LargestRemainder.round(
                lines.stream().map(line -> line.perPint().multiply(times)).toList(), total, total.scale());
        return IntStream.range(0, lines.size())
                .mapToObj(i -> new Line(lines.get(i).part(), lines.get(i).item(), amounts.get(i)))
                .toList();
    }
}
