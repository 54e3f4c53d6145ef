package costrel.stock;

import java.util.List;

/**
 * A basis of cost: which part of what was paid for stock goes out with each issue, and which part stays. IAS 2.25 lets
 * accounts be kept by first-in, first-out or by weighted average, one of them for all stock of similar nature and use;
 * standard cost where it comes close to cost (IAS 2.21). Replacement is for pricing, not for accounts.
 */
public sealed interface Valuation permits FirstInFirstOut, MovingAverage, PeriodicAverage, PricedStock {

    /** Purchase FIFO: what came in first goes out first (IAS 2.25, 2.27). */
    Valuation FIFO = new FirstInFirstOut();

    /** Weighted average, perpetual: the average of what is there at the moment of each issue (IAS 2.27). */
    Valuation AVERAGE_PERPETUAL = new MovingAverage();

    /** Weighted average, periodic: one average of the opening stock and all receipts of the ledger (IAS 2.27). */
    Valuation AVERAGE_PERIODIC = new PeriodicAverage();

    /**
     * Standard cost: issues and closing stock at set costs. What was paid above or below them is a purchase price
     * variance, which is no cost of stock.
     *
     * @param costs the set costs with the day each begins, one item or more
     * @return the basis
     * @throws IllegalArgumentException when two costs of an item begin on one day
     */
    static Valuation standardCost(List<UnitCost> costs) {
        return new PricedStock("standard cost", "purchase price variance", costs);
    }

    /**
     * Replacement: issues and closing stock at what they would cost on the day. What was paid above or below that is a
     * holding loss or gain. For pricing; accounts are kept at cost.
     *
     * @param costs the prices of the day, one item or more
     * @return the basis
     * @throws IllegalArgumentException when two prices of an item begin on one day
     */
    static Valuation replacement(List<UnitCost> costs) {
        return new PricedStock("replacement", "holding loss or gain", costs);
    }

    /**
     * What the basis is called.
     *
     * @return such as "purchase FIFO"
     */
    String label();

    /**
     * What the difference between what came in and what went out or stayed is called.
     *
     * @return such as "purchase price variance"; empty for a basis that leaves none
     */
    String differenceLabel();

    /**
     * Parts the cost of one item.
     *
     * @param movements the movements of one item in the order of their days, never taking out more than is there
     * @return the unrounded cost of each issue and of what is left
     * @throws IllegalArgumentException when the basis has no cost for the item on a day
     */
    CostFlow flow(List<Movement> movements);
}
