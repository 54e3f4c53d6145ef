package costrel.packaging;

/** What beer is sold in. */
public enum ContainerKind {
    /** A cask: the beer is served by pump or by gravity. */
    CASK("cask"),
    /** A keg: the beer is served by gas pressure. */
    KEG("keg"),
    /** A bottle. */
    BOTTLE("bottle"),
    /** A can. */
    CAN("can");

    private final String label;

    ContainerKind(String label) {
        this.label = label;
    }

    /**
     * The word used in tables.
     *
     * @return the label
     */
    public String label() {
        return label;
    }
}
