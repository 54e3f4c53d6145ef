package costrel.pricing;

/** Why one cost differs from another, in the order of a comparison. */
public enum Effect {
    /** Dearer or cheaper units of what is used, with other suppliers among it. */
    PRICE("price"),
    /** More or less of something for each litre collected or filled: recipe, lots, efficiency, length, days in tank. */
    USAGE("usage"),
    /** More of the beer in dear containers, or less. */
    MIX("mix"),
    /** More or less beer lost from the fermenting vessel to what can be sold. */
    YIELD("yield"),
    /** Strength, rate of duty, small producer's discount, litres charged. */
    DUTY("duty"),
    /** Dearer or cheaper foreign money, where rates are given. */
    EXCHANGE_RATE("exchange rate"),
    /** What the two sheets' lines were rounded by. */
    ROUNDING("rounding of lines");

    private final String label;

    Effect(String label) {
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
}
