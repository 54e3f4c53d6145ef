package costrel.stock;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** First in, first out: each issue empties the oldest receipts, each at its own cost. */
record FirstInFirstOut() implements Valuation {

    /** A receipt and how much of it is left. */
    private record Layer(Movement.Receipt receipt, BigDecimal left) {
        BigDecimal cost(BigDecimal quantity) {
            BigDecimal cost = receipt.cost().getAmount().multiply(quantity);
            return cost.divide(receipt.quantity(), Carried.CARRIED);
        }
    }

    @Override
    public String label() {
        return "purchase FIFO";
    }

    @Override
    public String differenceLabel() {
        return "";
    }

    @Override
    public CostFlow flow(List<Movement> movements) {
        Deque<Layer> layers = new ArrayDeque<>();
        List<BigDecimal> issues = new ArrayList<>();
        for (Movement movement : movements) {
            if (movement instanceof Movement.Receipt receipt) {
                layers.add(new Layer(receipt, receipt.quantity()));
            } else {
                issues.add(taken(layers, movement.quantity()));
            }
        }
        BigDecimal closing = BigDecimal.ZERO;
        for (Layer layer : layers) {
            closing = closing.add(layer.cost(layer.left()));
        }
        return new CostFlow(issues, closing);
    }

    private static BigDecimal taken(Deque<Layer> layers, BigDecimal quantity) {
        BigDecimal cost = BigDecimal.ZERO;
        BigDecimal wanted = quantity;
        while (wanted.signum() > 0) {
            Layer oldest = layers.removeFirst();
            BigDecimal part = oldest.left().min(wanted);
            cost = cost.add(oldest.cost(part));
            wanted = wanted.subtract(part);
            BigDecimal left = oldest.left().subtract(part);
            if (left.signum() > 0) {
                layers.addFirst(new Layer(oldest.receipt(), left));
            }
        }
        return cost;
    }
}
