package costrel.cost;

/**
 * What the goods of a gyle are costed at. The first is for pricing; accounts are kept by one of the others (IAS 2.21, 2.25).
 */
public enum CostBasis {
    /** What they cost to buy by the price lists of the day. */
    REPLACEMENT("replacement"),
    /** What was paid for the oldest in store: first in, first out. */
    FIFO("FIFO"),
    /** The average of what is in store on the day. */
    AVERAGE("weighted average"),
    /** One average of the opening stock and all receipts of the ledger up to the day. */
    PERIODIC_AVERAGE("periodic average"),
    /** Set costs. */
    STANDARD("standard cost");

    private final String label;

    CostBasis(String label) {
        this.label = label;
    }

    /**
     * What it is called.
     *
     * @return such as "weighted average"
     */
    public String label() {
        return label;
    }
}
