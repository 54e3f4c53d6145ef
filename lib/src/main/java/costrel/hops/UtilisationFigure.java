package costrel.hops;

/**
 * A utilisation with what must be said about it.
 *
 * @param share mass of iso-alpha acid in the collected wort over mass of alpha acid added, 0 to 1
 * @param upperBound whether the figure is only an upper bound and unfit for weighing out
 * @param remark what a reader must know (a held end point, a range left), or empty
 */
public record UtilisationFigure(double share, boolean upperBound, String remark) {

    public UtilisationFigure {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("utilisation: expected 0 to 1, found " + share);
        }
    }
}
