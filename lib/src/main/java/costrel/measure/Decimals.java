package costrel.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/** Plain decimal text to double and back, without a locale. */
final class Decimals {

    private static final String SPACES = " \t\u00a0\u2009\u202f";
    private static final char MINUS_SIGN = '\u2212';
    private static final char FRACTION_SLASH = '\u2044';
    private static final String NO_COMMA = "write decimals with a point and thousands without a mark, no comma";
    private static final double LONGEST_WHOLE = 1e15;
    private static final String VULGAR = "¼½¾⅛⅜⅝⅞";
    private static final double[] VULGAR_VALUES = {0.25, 0.5, 0.75, 0.125, 0.375, 0.625, 0.875};

    private Decimals() {}

    /** Where a number that starts here ends: after "25", "-1.040", "½", "1½"; {@code from} if none starts here. */
    static int end(String text, int from) {
        int whole = from < text.length() && isSign(text.charAt(from)) ? from + 1 : from;
        int at = digits(text, whole);
        if (at < text.length() && isVulgar(text.charAt(at))) {
            return at + 1;
        }
        if (at == whole) {
            return from;
        }
        if (at < text.length() && text.charAt(at) == '.') {
            int decimals = digits(text, at + 1);
            return decimals > at + 1 ? decimals : from;
        }
        return at;
    }

    /** The number from {@code from} to the {@link #end} of it, times 10 to a power, rounded once. */
    static double parse(String text, int from, int end, int powerOfTen) {
        boolean negative = text.charAt(from) == '-' || text.charAt(from) == MINUS_SIGN;
        int start = isSign(text.charAt(from)) ? from + 1 : from;
        int vulgar = VULGAR.indexOf(text.charAt(end - 1));
        double value;
        if (vulgar >= 0) {
            double whole = start == end - 1 ? 0 : Double.parseDouble(text.substring(start, end - 1));
            value = shifted(whole + VULGAR_VALUES[vulgar], powerOfTen);
        } else {
            String digits = text.substring(start, end);
            value = Double.parseDouble(powerOfTen == 0 ? digits : digits + "e" + powerOfTen);
        }
        return negative ? -value : value;
    }

    /** The shortest plain decimal that reads back as the same double. */
    static BigDecimal shortest(double value) {
        if (value == Math.rint(value) && Math.abs(value) < LONGEST_WHOLE) {
            return BigDecimal.valueOf((long) value);
        }
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 15; digits < 17; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (rounded.doubleValue() == value) {
                return rounded.stripTrailingZeros();
            }
        }
        return exact.round(new MathContext(17, RoundingMode.HALF_EVEN));
    }

    /** A value times a power of ten, as if written in decimals and the point moved. */
    static double shifted(double value, int powerOfTen) {
        return shortest(value).scaleByPowerOfTen(powerOfTen).doubleValue();
    }

    /** Why no number could be read here. */
    static String noNumber(String text, int at) {
        if (text.indexOf(',') >= 0) {
            return NO_COMMA;
        }
        if (at == text.length()) {
            return "nothing there";
        }
        if (text.charAt(at) == '.') {
            return "write a digit before the point, such as 0.5";
        }
        if (isDigit(text.charAt(at))) {
            return "write a digit after the point, or no point";
        }
        return Character.isDigit(text.codePointAt(at)) ? "write digits from 0 to 9" : "no number at the start";
    }

    /** Why what follows a number is no unit but more of a number, if it is that. */
    static Optional<String> brokenNumber(String text, int at) {
        char first = text.charAt(at);
        if (text.indexOf(',') >= 0) {
            return Optional.of(NO_COMMA);
        }
        if (first == '/' || first == FRACTION_SLASH) {
            return Optional.of("write a fraction as a decimal such as 0.5, or as ½");
        }
        if ((first == 'e' || first == 'E') && at + 1 < text.length() && startsNumber(text.charAt(at + 1))) {
            return Optional.of("write the number out, without an exponent");
        }
        if (first == '.' || isVulgar(first) || Character.isDigit(text.codePointAt(at))) {
            return Optional.of("write one number such as 1.5, in digits from 0 to 9");
        }
        return Optional.empty();
    }

    /** Where the run of spaces that starts here ends; no-break and narrow spaces count, line breaks don't. */
    static int skipSpaces(String text, int from) {
        int at = from;
        while (at < text.length() && SPACES.indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return at;
    }

    /** The same words with one ordinary space between them. */
    static String singleSpaced(String words) {
        StringBuilder single = new StringBuilder();
        int at = 0;
        while (at < words.length()) {
            int next = skipSpaces(words, at);
            single.append(next > at ? ' ' : words.charAt(at));
            at = Math.max(next, at + 1);
        }
        return single.toString();
    }

    static boolean startsNumber(char c) {
        return isDigit(c) || isSign(c) || isVulgar(c);
    }

    static boolean isSign(char c) {
        return c == '-' || c == '+' || c == MINUS_SIGN;
    }

    private static boolean isVulgar(char c) {
        return VULGAR.indexOf(c) >= 0;
    }

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static int digits(String text, int from) {
        int at = from;
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
        return at;
    }
}
