package costrel.cost;

/** What a rate pays for, in the order of the cost sheet. */
public enum RateGroup {
    /** Fuel and power. */
    ENERGY("energy"),
    /** Water charges. */
    LIQUOR("liquor"),
    /** Discharge to sewer. */
    EFFLUENT("effluent"),
    /** Detergent and the work of cleaning. */
    CLEANING("cleaning"),
    /** Wages. */
    LABOUR("labour"),
    /** Rent, insurance, depreciation and the like, at the brewery's normal output. */
    OVERHEAD("overhead"),
    /** Bringing beer to customers. */
    DELIVERY("delivery"),
    /** Washing, hire and wear of containers. */
    PACKAGING("packaging"),
    /** What by-products bring in, entered as a positive amount and taken off the cost. */
    CREDIT("credit");

    private final String label;

    RateGroup(String label) {
        this.label = label;
    }

    /**
     * The word used in tables and on sheets.
     *
     * @return the label
     */
    public String label() {
        return label;
    }
}
