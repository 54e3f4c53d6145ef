package costrel.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Weighted average, periodic: opening stock and all receipts make one average, at which everything goes out or stays. */
record PeriodicAverage() implements Valuation {

    @Override
    public String label() {
        return "weighted average, periodic";
    }

    @Override
    public String differenceLabel() {
        return "";
    }

    @Override
    public CostFlow flow(List<Movement> movements) {
        BigDecimal received = BigDecimal.ZERO;
        BigDecimal value = BigDecimal.ZERO;
        BigDecimal left = BigDecimal.ZERO;
        for (Movement movement : movements) {
            if (movement instanceof Movement.Receipt receipt) {
                received = received.add(receipt.quantity());
                value = value.add(receipt.cost().getAmount());
                left = left.add(receipt.quantity());
            } else {
                left = left.subtract(movement.quantity());
            }
        }
        List<BigDecimal> issues = new ArrayList<>();
        for (Movement movement : movements) {
            if (movement instanceof Movement.Issue) {
                issues.add(value.multiply(movement.quantity()).divide(received, Carried.CARRIED));
            }
        }
        BigDecimal closing =
                left.signum() == 0 ? BigDecimal.ZERO : value.multiply(left).divide(received, Carried.CARRIED);
        return new CostFlow(issues, closing);
    }
}
