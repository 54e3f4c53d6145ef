package costrel.stock;

import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Issues at the set cost of their day, closing stock at the set cost of the ledger's last day. */
record PricedStock(String label, String differenceLabel, List<UnitCost> costs) implements Valuation {

    PricedStock {
        costs = List.copyOf(costs);
        Map<String, UnitCost> seen = new HashMap<>();
        for (UnitCost cost : costs) {
            UnitCost other = seen.put(Names.folded(cost.item()) + "|" + cost.from(), cost);
            if (other != null) {
                throw new IllegalArgumentException(cost.origin() + ": " + cost.item() + ": expected one " + label
                        + " from " + cost.from() + " on, found another in " + other.origin());
            }
        }
    }

    @Override
    public CostFlow flow(List<Movement> movements) {
        List<BigDecimal> issues = new ArrayList<>();
        if (movements.isEmpty()) {
            return new CostFlow(issues, BigDecimal.ZERO);
        }
        String item = movements.get(0).item();
        TreeMap<LocalDate, UnitCost> ofItem = new TreeMap<>();
        for (UnitCost cost : costs) {
            if (Names.folded(cost.item()).equals(Names.folded(item))) {
                ofItem.put(cost.from(), cost);
            }
        }
        BigDecimal left = BigDecimal.ZERO;
        for (Movement movement : movements) {
            if (movement instanceof Movement.Receipt) {
                left = left.add(movement.quantity());
            } else {
                left = left.subtract(movement.quantity());
                issues.add(movement.quantity().multiply(on(ofItem, item, movement.day())));
            }
        }
        LocalDate last = movements.get(movements.size() - 1).day();
        BigDecimal closing = left.signum() == 0 ? BigDecimal.ZERO : left.multiply(on(ofItem, item, last));
        return new CostFlow(issues, closing);
    }

    private BigDecimal on(TreeMap<LocalDate, UnitCost> ofItem, String item, LocalDate day) {
        Map.Entry<LocalDate, UnitCost> newest = ofItem.floorEntry(day);
        if (newest == null) {
            throw new IllegalArgumentException(item + ": no " + label + " holds on " + day
                    + (ofItem.isEmpty() ? "" : ", the first is from " + ofItem.firstKey()) + "; supply one per unit");
        }
        return newest.getValue().cost();
    }
}
