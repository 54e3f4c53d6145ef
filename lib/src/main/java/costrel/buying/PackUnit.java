package costrel.buying;

/** What the content of a pack is counted in. Amounts of a bill of materials are in the same units. */
public enum PackUnit {
    /** Kilograms. */
    KILOGRAM("kg"),
    /** Litres. */
    LITRE("L"),
    /** Pieces. */
    EACH("each"),
    /** Kilowatt-hours. */
    KILOWATT_HOUR("kWh"),
    /** Hours. */
    HOUR("h");

    private final String label;

    PackUnit(String label) {
        this.label = label;
    }

    /**
     * The unit as written in price lists and on sheets.
     *
     * @return the symbol
     */
    public String label() {
        return label;
    }
}
