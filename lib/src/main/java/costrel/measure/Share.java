package costrel.measure;

/**
 * A part of a whole, such as alpha acid of 7.9 % or 12 % of the grist.
 *
 * @param fraction finite; 0.079 for 7.9 %
 */
public record Share(double fraction) {

    private static final String EXPECTED = "a share such as 7.9 %";
    private static final int LONGEST = 400;

    /**
     * A share from its fraction.
     *
     * @param fraction finite; 0.079 for 7.9 %
     * @throws IllegalArgumentException if it is not finite
     */
    public Share {
        if (!Double.isFinite(fraction)) {
            throw new IllegalArgumentException("expected " + EXPECTED + ", found " + fraction);
        }
        fraction = fraction + 0.0;
    }

    /**
     * A share from its fraction.
     *
     * @param fraction finite; 0.079 for 7.9 %
     * @return the share
     * @throws IllegalArgumentException if it is not finite
     */
    public static Share of(double fraction) {
        return new Share(fraction);
    }

    /**
     * A share from its percentage.
     *
     * @param percent finite; 7.9 for 7.9 %
     * @return the share
     * @throws IllegalArgumentException if it is not finite
     */
    public static Share ofPercent(double percent) {
        return new Share(Double.isFinite(percent) ? Decimals.shifted(percent, -2) : percent);
    }

    /**
     * A share that can't be more than the whole or less than nothing.
     *
     * @param fraction 0 to 1
     * @return the share
     * @throws IllegalArgumentException if it is outside
     */
    public static Share ofPart(double fraction) {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw new IllegalArgumentException("expected a share from 0 % to 100 %, found "
                    + (Double.isFinite(fraction) ? of(fraction) : fraction));
        }
        return new Share(fraction);
    }

    /**
     * A share from text such as "7.9 %"; a number without the sign is refused, for it might be a fraction.
     *
     * @param text a number, as in {@link QuantityText}, and a % sign
     * @return the share
     * @throws QuantityTextException if the text is anything else
     */
    public static Share parse(String text) {
        if (text.length() > LONGEST) {
            throw new QuantityTextException(EXPECTED, text, "longer than " + LONGEST + " characters");
        }
        int start = Decimals.skipSpaces(text, 0);
        int end = Decimals.end(text, start);
        if (end == start) {
            throw fault(text, Decimals.noNumber(text, start));
        }
        int sign = Decimals.skipSpaces(text, end);
        if (sign == text.length()) {
            throw fault(text, "no % sign");
        }
        if (text.charAt(sign) != '%' || Decimals.skipSpaces(text, sign + 1) < text.length()) {
            throw fault(text, Decimals.brokenNumber(text, sign).orElse("only a % sign may follow the number"));
        }
        double fraction = Decimals.parse(text, start, end, -2);
        if (!Double.isFinite(fraction)) {
            throw fault(text, "the number is too large");
        }
        return new Share(fraction);
    }

    /**
     * The share as a percentage.
     *
     * @return 7.9 for 7.9 %
     */
    public double percent() {
        return Decimals.shifted(fraction, 2);
    }

    /**
     * The share as {@link #parse} reads it.
     *
     * @return text such as "7.9 %"
     */
    @Override
    public String toString() {
        return Decimals.shortest(fraction).movePointRight(2).toPlainString() + " %";
    }

    private static QuantityTextException fault(String text, String why) {
        return new QuantityTextException(EXPECTED, text.strip(), why);
    }
}
