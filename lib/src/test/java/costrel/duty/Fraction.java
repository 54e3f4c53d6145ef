package costrel.duty;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/** A number as a whole fraction, so that no digit is ever lost; the denominator is over 0. */
record Fraction(BigInteger above, BigInteger below) implements Comparable<Fraction> {
    static final Fraction ZERO = of(0);
    static final Fraction ONE = of(1);

    Fraction {
        if (below.signum() <= 0) {
            throw new IllegalArgumentException("denominator: expected over 0, found " + below);
        }
        BigInteger common = above.gcd(below);
        above = above.divide(common);
        below = below.divide(common);
    }

    static Fraction of(long whole) {
        return new Fraction(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    static Fraction of(BigDecimal decimal) {
        BigInteger digits = decimal.unscaledValue();
        return decimal.scale() >= 0
                ? new Fraction(digits, BigInteger.TEN.pow(decimal.scale()))
                : new Fraction(digits.multiply(BigInteger.TEN.pow(-decimal.scale())), BigInteger.ONE);
    }

    static Fraction of(String decimal) {
        return of(new BigDecimal(decimal));
    }

    Fraction plus(Fraction other) {
        return new Fraction(above.multiply(other.below).add(other.above.multiply(below)), below.multiply(other.below));
    }

    Fraction minus(Fraction other) {
        return plus(new Fraction(other.above.negate(), other.below));
    }

    Fraction times(Fraction other) {
        return new Fraction(above.multiply(other.above), below.multiply(other.below));
    }

    Fraction over(Fraction other) {
        return other.above.signum() > 0
                ? new Fraction(above.multiply(other.below), below.multiply(other.above))
                : new Fraction(above.multiply(other.below).negate(), below.multiply(other.above.negate()));
    }

    Fraction max(Fraction other) {
        return compareTo(other) >= 0 ? this : other;
    }

    Fraction min(Fraction other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** The whole number at or below. */
    BigInteger floor() {
        BigInteger[] parts = above.divideAndRemainder(below);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }

    /** Cut down to so many decimals. */
    Fraction down(int places) {
        Fraction tens = tens(places);
        return new Fraction(times(tens).floor(), BigInteger.ONE).over(tens);
    }

    /** Rounded up to so many decimals. */
    Fraction up(int places) {
        return ZERO.minus(ZERO.minus(this).down(places));
    }

    /** Rounded to so many decimals, halves up; for numbers of 0 or more. */
    Fraction halfUp(int places) {
        return plus(new Fraction(BigInteger.ONE, BigInteger.TWO).over(tens(places)))
                .down(places);
    }

    Fraction rounded(int places, RoundingMode mode) {
        return switch (mode) {
            case DOWN -> down(places);
            case UP -> up(places);
            case HALF_UP -> halfUp(places);
            default -> throw new IllegalArgumentException("rounding: expected down, up or half up, found " + mode);
        };
    }

    private static Fraction tens(int places) {
        return new Fraction(BigInteger.TEN.pow(places), BigInteger.ONE);
    }

    @Override
    public int compareTo(Fraction other) {
        return above.multiply(other.below).compareTo(other.above.multiply(below));
    }

    /** As a decimal, rounded to so many places where it has no end. */
    BigDecimal decimal(int places, RoundingMode mode) {
        return new BigDecimal(above).divide(new BigDecimal(below), places, mode);
    }
}
