package costrel.recipe;

/** A calculation met a blank where the published table is silent. The message names what to supply. */
public final class MissingFigureException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * Names the blank.
     *
     * @param item the material, lot or container
     * @param figure the figure that is missing
     * @param example what a fitting entry would look like
     */
    public MissingFigureException(String item, String figure, String example) {
        super(figure + " of " + item + ": the table has no figure; supply one, such as " + example
                + ", in the brewery's own table");
    }
}
