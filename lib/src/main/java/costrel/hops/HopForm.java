package costrel.hops;

/** The form in which a hop lot is sold and used. It decides how much wort the spent hops hold. */
public enum HopForm {
    /** Whole dried cones, pressed in a bale or pocket. */
    LEAF("leaf"),
    /** Pellets of type 90. */
    T90("T90"),
    /** Lupulin-enriched pellets of type 45. */
    T45("T45"),
    /** Extract taken with carbon dioxide, used in the copper. */
    CO2_EXTRACT("CO2 extract"),
    /** Isomerised extract, added after fermentation. */
    ISOMERISED_EXTRACT("isomerised extract");

    private final String label;

    HopForm(String label) {
        this.label = label;
    }

    /**
     * The word used in tables and on sheets.
     *
     * @return the label, such as "leaf" or "T90"
     */
    public String label() {
        return label;
    }

    /**
     * Reads a label back, without regard to case and blanks.
     *
     * @param text a label
     * @return the form
     * @throws IllegalArgumentException for any other text; the message lists the labels
     */
    public static HopForm parse(String text) {
        return Labels.parse("form of hops", values(), HopForm::label, text);
    }
}
