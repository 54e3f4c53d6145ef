package costrel.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Money rounded once to the smallest coin, halves away from 0. Doubles do it where they can't be wrong: they are off by far less
 * than what is left between the figure and the nearest half. Elsewhere exact decimals do it.
 */
public final class Rounded {
    /** Up to this many digits a decimal is turned into the double next to it at once. */
    private static final int PLAIN_DIGITS = 15;

    /** Under this many coins six roundings of a double, 2^-53 each, make less than a hundredth of {@link #NEAR}. */
    private static final double MOST = 1e11;

    /** Nearer to a half than this the doubles aren't asked. */
    private static final double NEAR = 0.01;

    /** Within these a double is written without an exponent. */
    private static final double LEAST_PLAIN = 0.001;

    private static final double MOST_PLAIN = 1e7;

    private static final double[] COINS = {1, 10, 100, 1000, 10_000};

    private Rounded() {}

    /** Amount times quantity over content, to so many decimals. */
    public static BigDecimal quotient(BigDecimal amount, BigDecimal quantity, BigDecimal content, int decimals) {
        if (isPlain(amount) && isPlain(quantity) && isPlain(content) && decimals >= 0 && decimals < COINS.length) {
            double coins = amount.doubleValue() * quantity.doubleValue() / content.doubleValue() * COINS[decimals];
            if (isCertain(coins)) {
                return BigDecimal.valueOf(nearest(coins), decimals);
            }
        }
        return exact(amount, quantity, content, decimals);
    }

    public static BigDecimal exact(BigDecimal amount, BigDecimal quantity, BigDecimal content, int decimals) {
        return amount.multiply(quantity).divide(content, decimals, RoundingMode.HALF_UP);
    }

    /** The shortest decimal of a double, as {@link BigDecimal#valueOf(double)}; what is weighed has few digits and is read at once. */
    public static BigDecimal decimal(double amount) {
        if (amount >= LEAST_PLAIN && amount < MOST_PLAIN) {
            for (int places = 1; places < COINS.length; places++) {
                double parts = Math.rint(amount * COINS[places]);
                if (parts / COINS[places] == amount) {
                    return BigDecimal.valueOf((long) parts, places);
                }
            }
        }
        return BigDecimal.valueOf(amount);
    }

    /**
     * One over the other: exact where it ends, else to 34 digits. Where it ends few digits are asked for, since of many the
     * noughts would have to be taken off again one by one.
     */
    public static BigDecimal ratio(BigDecimal value, BigDecimal of) {
        if (value.scale() == 0 && of.scale() == 0 && isPlain(value) && isPlain(of) && of.signum() > 0) {
            long rest = of.longValue();
            rest /= gcd(Math.abs(value.longValue()), rest);
            while (rest % 2 == 0) {
                rest /= 2;
            }
            while (rest % 5 == 0) {
                rest /= 5;
            }
            if (rest == 1) {
                return value.divide(of);
            }
        }
        return value.divide(of, Figures.SHOWN);
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    private static boolean isPlain(BigDecimal value) {
        return value.scale() >= 0 && value.scale() <= PLAIN_DIGITS && value.precision() <= PLAIN_DIGITS;
    }

    /** Whether a number of coins, itself off by a few roundings, can be rounded only one way. */
    public static boolean isCertain(double coins) {
        return Math.abs(coins) < MOST && Math.abs(coins - Math.floor(coins) - 0.5) > NEAR;
    }

    public static long nearest(double coins) {
        return (long) Math.floor(coins + 0.5);
    }
}
