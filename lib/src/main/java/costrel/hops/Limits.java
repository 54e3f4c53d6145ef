package costrel.hops;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/** Refuses figures outside their range, in words that say what, what was expected and what was found. */
final class Limits {

    private Limits() {}

    /** The figure itself, without a negative zero, when it lies in the closed range; {@code unit} brings its own space. */
    static double within(String what, double found, double least, double most, String unit) {
        if (!(found >= least && found <= most)) {
            throw new IllegalArgumentException(what + ": expected " + plain(least) + " to " + plain(most) + unit
                    + ", found " + plain(found) + unit);
        }
        return found + 0.0;
    }

    /** The same for a figure that may be missing. */
    static OptionalDouble within(String what, OptionalDouble found, double least, double most, String unit) {
        return found.isEmpty() ? found : OptionalDouble.of(within(what, found.getAsDouble(), least, most, unit));
    }

    /** The figure itself when it is over the bound and at most the other. */
    static double over(String what, double found, double bound, double most, String unit) {
        if (!(found > bound && found <= most)) {
            throw new IllegalArgumentException(what + ": expected more than " + plain(bound) + " and at most "
                    + plain(most) + unit + ", found " + plain(found) + unit);
        }
        return found;
    }

    /** A share from 0 % to 100 %. */
    static double share(String what, double found) {
        if (!(found >= 0 && found <= 1)) {
            throw new IllegalArgumentException(what + ": expected 0 % to 100 %, found " + exactPercent(found));
        }
        return found + 0.0;
    }

    /** A share over 0 % and up to 100 %. */
    static double shareOverZero(String what, double found) {
        if (!(found > 0 && found <= 1)) {
            throw new IllegalArgumentException(
                    what + ": expected more than 0 % and at most 100 %, found " + exactPercent(found));
        }
        return found;
    }

    /** A share from 0 % up to, but not including, 100 %. */
    static double shareUnderOne(String what, double found) {
        if (!(found >= 0 && found < 1)) {
            throw new IllegalArgumentException(what + ": expected 0 % to under 100 %, found " + exactPercent(found));
        }
        return found + 0.0;
    }

    /** The shortest plain decimal that reads back to the same figure. */
    static String plain(double figure) {
        if (!Double.isFinite(figure)) {
            return Double.toString(figure);
        }
        BigDecimal shortest = BigDecimal.valueOf(figure).stripTrailingZeros();
        return shortest.setScale(Math.max(0, shortest.scale())).toPlainString();
    }

    /** A plain decimal cut to so many places, without zeros at the end. */
    static String rounded(double figure, int places) {
        if (!Double.isFinite(figure)) {
            return Double.toString(figure);
        }
        BigDecimal cut = BigDecimal.valueOf(figure)
                .setScale(places, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return cut.setScale(Math.max(0, cut.scale())).toPlainString();
    }

    /** A share as a percentage with all the decimals that tell it from its neighbours. */
    static String exactPercent(double share) {
        return rounded(share * 100, 9) + " %";
    }

    /** A share as a percentage of at most two decimals. */
    static String percent(double share) {
        return rounded(share * 100, 2) + " %";
    }
}
