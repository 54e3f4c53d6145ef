package costrel.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Weighted average, perpetual: every receipt makes a new average, every issue goes out at the average of the moment. */
record MovingAverage() implements Valuation {

    @Override
    public String label() {
        return "weighted average, perpetual";
    }

    @Override
    public String differenceLabel() {
        return "";
    }

    @Override
    public CostFlow flow(List<Movement> movements) {
        BigDecimal quantity = BigDecimal.ZERO;
        BigDecimal value = BigDecimal.ZERO;
        List<BigDecimal> issues = new ArrayList<>();
        for (Movement movement : movements) {
            if (movement instanceof Movement.Receipt receipt) {
                quantity = quantity.add(receipt.quantity());
                value = value.add(receipt.cost().getAmount());
            } else {
                BigDecimal cost = movement.quantity().compareTo(quantity) == 0
                        ? value
                        : value.multiply(movement.quantity()).divide(quantity, Carried.CARRIED);
                issues.add(cost);
                quantity = quantity.subtract(movement.quantity());
                value = value.subtract(cost, Carried.CARRIED);
            }
        }
        return new CostFlow(issues, value);
    }
}
