package costrel;

/** How many random cases a test goes through: as many as it says, or fewer where each change of the code is tried against it. */
public final class Cases {
    private Cases() {}

    /**
     * The number to go through.
     *
     * @param usual what the test asks for
     * @return that, or what {@code -Dcases=} says where it is less
     */
    public static int upTo(int usual) {
        return Math.min(usual, Integer.getInteger("cases", usual));
    }
}
