package costrel.harvest;

/** What the best plan is. Every plan meets the requirements; this chooses among those that do. */
public enum Objective {
    /**
     * The hops cost least. A pack that has to be used up once open is paid for whole. Where a bitterness has a tolerance the
     * cheapest plan goes to its low end, and a remark says so.
     */
    LEAST_COST("least cost"),
    /**
     * As many kilograms of the oldest crop year as can be used, then of the next, and so on; last, as few kilograms of all
     * hops as will do, packs that have to be used up counted whole.
     */
    OLDEST_FIRST("oldest first"),
    /**
     * The same blend all year: the largest change of any lot's share of an addition from one gyle of a beer to the next is
     * made least, then the sum of all such changes. Packs are counted afterwards. Where a tolerance or the alpha acid of the
     * late hops moves what the bittering has to bring, the best can't always be proved; the goals then say what is.
     */
    STEADIEST("steadiest");

    private final String label;

    Objective(String label) {
        this.label = label;
    }

    /**
     * The words used in tables and answers.
     *
     * @return the label, such as "least cost"
     */
    public String label() {
        return label;
    }
}
