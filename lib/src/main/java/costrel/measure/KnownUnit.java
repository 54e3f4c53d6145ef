package costrel.measure;

import java.math.BigInteger;
import javax.measure.Quantity;
import javax.measure.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * A unit of the table, with its exact factor to the unit that calculations use: (value + offset) × numerator /
 * denominator.
 *
 * <p>Both whole numbers are below 2<sup>53</sup>, so that 20 brl is 3273.1848 L to the last digit and not 20 × a rounded
 * 163.65924.
 *
 * @param <Q> the quantity
 * @param unit the unit
 * @param kind its kind
 * @param symbol what is printed
 * @param plural what is printed for any number but 1
 * @param code the code of UN/ECE Recommendation 20, empty where none is known
 * @param offset 0 but for Fahrenheit
 * @param numerator of the factor
 * @param denominator of the factor
 */
record KnownUnit<Q extends Quantity<Q>>(
        Unit<Q> unit,
        Kind<Q> kind,
        String symbol,
        String plural,
        String code,
        double offset,
        long numerator,
        long denominator) {

    private static final long EXACT_IN_DOUBLE = 1L << 53;

    /** A unit whose factor is taken from its definition, once. */
    static <Q extends Quantity<Q>> KnownUnit<Q> of(
            Unit<Q> unit, Kind<Q> kind, String symbol, String plural, String code) {
        if (unit.equals(Units.FAHRENHEIT)) {
            return new KnownUnit<>(unit, kind, symbol, plural, code, -32, 5, 9);
        }
        Number factor = unit.getConverterTo(kind.canonical()).convert((Number) 1L);
        if (factor instanceof RationalNumber ratio) {
            long numerator = exact(ratio.getDividend());
            long denominator = exact(ratio.getDivisor());
            return new KnownUnit<>(unit, kind, symbol, plural, code, 0, numerator, denominator);
        }
        return new KnownUnit<>(unit, kind, symbol, plural, code, 0, exact(new BigInteger(factor.toString())), 1);
    }

    private static long exact(BigInteger value) {
        long exact = value.longValueExact();
        if (exact > EXACT_IN_DOUBLE) {
            throw new ArithmeticException("factor: expected at most 2^53, found " + value);
        }
        return exact;
    }

    /** A value in this unit as a value in the kind's canonical unit. */
    double toCanonical(double value) {
        if (numerator == denominator && offset == 0) {
            return value;
        }
        return (value + offset) * numerator / denominator;
    }

    /** A value in this unit as a value in another of the same kind. */
    double to(KnownUnit<?> other, double value) {
        if (numerator == other.numerator && denominator == other.denominator && offset == other.offset) {
            return value;
        }
        // Reduced crosswise first: from brl to pt this leaves 288 / 1, which is exact.
        long across = gcd(numerator, other.numerator);
        long down = gcd(denominator, other.denominator);
        long above = numerator / across;
        long otherBelow = other.denominator / down;
        long below = denominator / down;
        long otherAbove = other.numerator / across;
        return (value + offset) * ((double) above * otherBelow) / ((double) below * otherAbove) - other.offset;
    }

    /** A printed number with the unit after it. */
    String after(String number) {
        return number + " " + (number.equals("1") ? symbol : plural);
    }

    private static long gcd(long a, long b) {
        long x = a;
        long y = b;
        while (y != 0) {
            long rest = x % y;
            x = y;
            y = rest;
        }
        return x;
    }
}
