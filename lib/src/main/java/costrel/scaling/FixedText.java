package costrel.scaling;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures of findings with so many decimals, halves up, written without a format to be read each time. */
final class FixedText {
    private static final long[] PARTS = {1, 10, 100, 1000};
    private static final double MOST = 1e9;
    private static final double NEAR = 1e-4;

    private FixedText() {}

    /** A figure with up to three decimals: 78.25 with one is 78.3. */
    static String of(double value, int places) {
        double parts = value * PARTS[places];
        double over = parts - Math.floor(parts);
        if (!(value >= 0 && parts < MOST && Math.abs(over - 0.5) > NEAR)) {
            return BigDecimal.valueOf(value)
                    .setScale(places, RoundingMode.HALF_UP)
                    .toPlainString();
        }
        long whole = (long) Math.floor(parts + 0.5);
        if (places == 0) {
            return Long.toString(whole);
        }
        return whole / PARTS[places] + "." + padded(Long.toString(whole % PARTS[places]), places);
    }

    /** Brought to a width with zeros before it. */
    static String padded(String figure, int width) {
        return "0".repeat(Math.max(0, width - figure.length())) + figure;
    }
}
