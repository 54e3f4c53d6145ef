package costrel.wort;

/** Refuses figures outside their range, in words that say what, what was expected and what was found. */
final class Limits {
    private Limits() {}

    /** The figure itself (no negative zero) when it lies in the closed range; {@code unit} brings its own space. */
    static double within(String what, double found, double least, double most, String unit) {
        if (!(found >= least && found <= most)) {
            throw new IllegalArgumentException(what + ": expected " + ScaleText.plain(least) + " to "
                    + ScaleText.plain(most) + unit + ", found " + ScaleText.plain(found));
        }
        return found + 0.0;
    }

    /** The figure itself when it is finite and not less than the bound. */
    static double atLeast(String what, double found, double least, String unit) {
        if (!(found >= least && found <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    what + ": expected " + ScaleText.plain(least) + unit + " or more, found " + ScaleText.plain(found));
        }
        return found + 0.0;
    }

    /** The figure itself when it is finite and greater than the bound. */
    static double above(String what, double found, double bound, String unit) {
        if (!(found > bound && found <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(what + ": expected more than " + ScaleText.plain(bound) + unit
                    + ", found " + ScaleText.plain(found));
        }
        return found;
    }
}
