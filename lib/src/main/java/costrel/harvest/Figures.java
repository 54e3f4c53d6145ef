package costrel.harvest;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Refuses figures outside their range, and prints figures, without a locale. */
final class Figures {

    private Figures() {}

    /** The figure itself (no negative zero) when it is finite and not negative; {@code unit} brings its own space. */
    static double notNegative(String what, double found, String unit) {
        if (!(found >= 0 && found <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(what + ": expected 0" + unit + " or more, found " + plain(found) + unit);
        }
        return found + 0.0;
    }

    /** The figure itself when it is finite and over 0. */
    static double positive(String what, double found, String unit) {
        if (!(found > 0 && found <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    what + ": expected more than 0" + unit + ", found " + plain(found) + unit);
        }
        return found;
    }

    /** A share over 0 % and up to 100 %. */
    static double shareOverZero(String what, double found) {
        if (!(found > 0 && found <= 1)) {
            throw new IllegalArgumentException(
                    what + ": expected more than 0 % and at most 100 %, found " + asFound(found));
        }
        return found;
    }

    /** A share from 0 % up to, but not including, 100 %. */
    static double shareUnderOne(String what, double found) {
        if (!(found >= 0 && found < 1)) {
            throw new IllegalArgumentException(what + ": expected 0 % to under 100 %, found " + asFound(found));
        }
        return found + 0.0;
    }

    /** The text itself when it isn't blank. */
    static String named(String what, String found) {
        if (found.isBlank()) {
            throw new IllegalArgumentException(what + ": expected a name, found nothing");
        }
        return found;
    }

    /** The shortest plain decimal that reads back to the same figure. */
    static String plain(double figure) {
        if (!Double.isFinite(figure)) {
            return Double.toString(figure);
        }
        BigDecimal shortest = BigDecimal.valueOf(figure).stripTrailingZeros();
        return shortest.setScale(Math.max(0, shortest.scale())).toPlainString();
    }

    /** A share as a percentage with all its digits, as a message shows what was found: 1.1 is 110 %. */
    static String asFound(double share) {
        return (Double.isFinite(share)
                        ? plain(BigDecimal.valueOf(share).movePointRight(2).doubleValue())
                        : plain(share))
                + " %";
    }

    /** A plain decimal with so many places. */
    static String fixed(double figure, int places) {
        if (!Double.isFinite(figure)) {
            return Double.toString(figure);
        }
        return BigDecimal.valueOf(figure)
                .setScale(places, RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    /** Kilograms to 0.01 kg, or to three figures where they are few. */
    static String kg(double kg) {
        return fixed(kg, Math.abs(kg) < 0.1 ? 4 : 2) + " kg";
    }

    /** A share as a percentage to two places. */
    static String percent(double share) {
        return fixed(share * 100, 2) + " %";
    }
}
