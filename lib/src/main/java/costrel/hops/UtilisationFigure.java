package costrel.hops;

/**
 * A utilisation with what must be said about it.
 *
 * @param share mass of iso-alpha acid found over mass of alpha acid added, 0 to 1; found where the convention speaks of,
 *     which {@link Utilisation#speaksOf} tells
 * @param upperBound whether the figure is only an upper bound and unfit for weighing out
 * @param remark what a reader must know (a held end point, a range left), or empty
 */
public record UtilisationFigure(double share, boolean upperBound, String remark) {

    /** Nothing at all and nothing to be said: dry hops. */
    public static final UtilisationFigure NONE = new UtilisationFigure(0, false, "");

    public UtilisationFigure {
        share = Limits.share("utilisation", share);
    }
}
