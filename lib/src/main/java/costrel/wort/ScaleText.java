package costrel.wort;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Strict text of a figure on a scale: a decimal number with a point, blanks, and the name of the scale. */
final class ScaleText {
    /** Longer text is no figure; the bound keeps a hostile cell from becoming a number of a million digits. */
    private static final int LONGEST = 40;

    private static final Pattern NUMBER_AND_SCALE = Pattern.compile("([+-]?[0-9]+(?:\\.[0-9]+)?) *(.*)");

    private ScaleText() {}

    /** A number as written and what stood behind it; the scale is empty for a bare number. */
    record Reading(BigDecimal number, String scale) {}

    static Reading read(String what, String text, String expected) {
        String trimmed = text.strip();
        if (trimmed.length() <= LONGEST) {
            Matcher matcher = NUMBER_AND_SCALE.matcher(trimmed);
            if (matcher.matches()) {
                return new Reading(new BigDecimal(matcher.group(1)), matcher.group(2));
            }
        }
        throw refused(what, text, expected);
    }

    static IllegalArgumentException refused(String what, String text, String expected) {
        return new IllegalArgumentException(what + ": expected " + expected + ", found '" + shown(text) + "'");
    }

    static String shown(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...";
    }

    /** The shortest plain decimal that reads back to the same double. */
    static String plain(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal shortest = BigDecimal.valueOf(value).stripTrailingZeros();
        return shortest.scale() < 0 ? shortest.setScale(0).toPlainString() : shortest.toPlainString();
    }

    /** A plain decimal with as many places as the value needs between the two numbers of places. */
    static String places(BigDecimal value, int fewest, int most) {
        BigDecimal rounded = value.setScale(most, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.setScale(Math.max(fewest, rounded.scale())).toPlainString();
    }

    static String places(double value, int fewest, int most) {
        return places(BigDecimal.valueOf(value), fewest, most);
    }
}
