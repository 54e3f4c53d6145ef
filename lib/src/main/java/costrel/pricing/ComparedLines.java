package costrel.pricing;

import costrel.cost.CostGroup;
import costrel.cost.CostLine;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** The lines of one sheet, or of one of its containers, by what they are for, lines of the same item taken together. */
final class ComparedLines {

    /** What makes two lines the same; the order is that of sheets and then of names, not that of the lines. */
    record Key(CostGroup group, String folded, String unit) implements Comparable<Key> {
        @Override
        public int compareTo(Key other) {
            int byGroup = group.compareTo(other.group);
            int byName = byGroup != 0 ? byGroup : folded.compareTo(other.folded);
            return byName != 0 ? byName : unit.compareTo(other.unit);
        }
    }

    /**
     * How much of an item is used and what it comes to, before any rounding.
     *
     * @param item as the sheet has it
     * @param amount in the unit, not 0
     * @param value the money, unrounded
     */
    record Used(String item, BigDecimal amount, BigDecimal value) {
        Used with(Used other) {
            return new Used(item, amount.add(other.amount), value.add(other.value));
        }

        BigDecimal unitPrice() {
            return value.divide(amount, Pints.WORKING);
        }
    }

    private final Map<Key, Used> lines = new TreeMap<>();

    ComparedLines(List<CostLine> sheetLines, UnaryOperator<String> names) {
        for (CostLine line : sheetLines) {
            if (line.group() == CostGroup.LOSSES || line.group() == CostGroup.DUTY) {
                continue; // beer that is lost is worth 0 in the sum, and duty has factors of its own
            }
            Key key = new Key(line.group(), ComparisonOptions.folded(names.apply(line.item())), line.unit());
            used(line).ifPresent(used -> lines.merge(key, used, Used::with));
        }
    }

    Map<Key, Used> byKey() {
        return lines;
    }

    private static Optional<Used> used(CostLine line) {
        BigDecimal value = line.unitPrice()
                .map(price -> price.amount().multiply(line.amount()).divide(price.content(), Pints.WORKING))
                .orElse(line.value().getAmount());
        if (line.amount().signum() > 0) {
            return Optional.of(new Used(line.item(), line.amount(), value));
        }
        return value.signum() == 0 ? Optional.empty() : Optional.of(new Used(line.item(), BigDecimal.ONE, value));
    }
}
