package costrel.cost;

/** The parts of a cost sheet, in the order of its lines. */
public enum CostGroup {
    /** Malts and adjuncts that are mashed. */
    MASHED_GOODS(BillGroup.MASHED_GOODS.label()),
    /** Copper sugars. */
    SUGARS(BillGroup.SUGARS.label()),
    /** Hop lots, by first use. */
    HOPS(BillGroup.HOPS.label()),
    /** Yeast. */
    YEAST(BillGroup.YEAST.label()),
    /** Salts and acids for the liquor. */
    LIQUOR_TREATMENT(BillGroup.LIQUOR_TREATMENT.label()),
    /** Finings, yeast food and the like. */
    PROCESS_AIDS(BillGroup.PROCESS_AIDS.label()),
    /** Sugar put into the container for condition. */
    PRIMINGS(BillGroup.PRIMINGS.label()),
    /** Fuel and power. */
    ENERGY(RateGroup.ENERGY.label()),
    /** Water charges. */
    LIQUOR(RateGroup.LIQUOR.label()),
    /** Discharge to sewer. */
    EFFLUENT(RateGroup.EFFLUENT.label()),
    /** Detergent and the work of cleaning. */
    CLEANING(RateGroup.CLEANING.label()),
    /** Wages. */
    LABOUR(RateGroup.LABOUR.label()),
    /** Rent, insurance, depreciation and the like. */
    OVERHEAD(RateGroup.OVERHEAD.label()),
    /** Bringing beer to customers. */
    DELIVERY(RateGroup.DELIVERY.label()),
    /** Beer that is lost: its value stands beside, and 0 in the sum, since the good beer already carries it. */
    LOSSES("losses"),
    /** What by-products bring in, below 0. */
    CREDIT(RateGroup.CREDIT.label()),
    /** Containers and what goes with them. */
    PACKAGING(RateGroup.PACKAGING.label()),
    /** Duty. */
    DUTY("duty");

    private final String label;

    CostGroup(String label) {
        this.label = label;
    }

    /**
     * The words used on sheets.
     *
     * @return the label
     */
    public String label() {
        return label;
    }

    static CostGroup of(BillGroup group) {
        return valueOf(group.name());
    }

    static CostGroup of(RateGroup group) {
        return valueOf(group.name());
    }
}
