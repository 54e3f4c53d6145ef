package costrel.figures;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The checks that records with names, shares and money make, and how figures stand in messages. */
public final class Figures {
    /** For quotients that have no end: 34 digits, far past any penny. Never used for a figure that enters a sum. */
    public static final MathContext SHOWN = MathContext.DECIMAL128;

    public static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private Figures() {}

    public static String named(String what, String name) {
        return isPlain(name) ? name : named(() -> what, name);
    }

    /** A name as most are: neither empty nor with anything but letters and signs of ASCII, and no space at either end. */
    private static boolean isPlain(String name) {
        int last = name.length() - 1;
        if (last < 0 || name.charAt(0) == ' ' || name.charAt(last) == ' ') {
            return false;
        }
        for (int i = 0; i <= last; i++) {
            char c = name.charAt(i);
            if (c < ' ' || c > '~') {
                return false;
            }
        }
        return true;
    }

    /** The same where the words must be put together first: only where they are needed. */
    public static String named(Supplier<String> what, String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(what.get() + ": expected a name, found none");
        }
        String stripped = name.strip();
        for (int i = 0; i < stripped.length(); i++) {
            if (Character.isISOControl(stripped.charAt(i))) {
                throw new IllegalArgumentException(what.get() + ": expected a single line, found '"
                        + stripped.replaceAll("\\p{Cntrl}+", " ") + "'");
            }
        }
        return stripped;
    }

    public static BigDecimal overZero(String what, BigDecimal value, String unit) {
        return overZero(() -> what, value, () -> unit);
    }

    public static BigDecimal overZero(Supplier<String> what, BigDecimal value, Supplier<String> unit) {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException(
                    what.get() + ": expected more than 0" + unit.get() + ", found " + plain(value));
        }
        return value;
    }

    public static BigDecimal zeroOrMore(String what, BigDecimal value, String unit) {
        return zeroOrMore(() -> what, value, () -> unit);
    }

    public static BigDecimal zeroOrMore(Supplier<String> what, BigDecimal value, Supplier<String> unit) {
        if (value.signum() < 0) {
            throw new IllegalArgumentException(
                    what.get() + ": expected 0" + unit.get() + " or more, found " + plain(value));
        }
        return value;
    }

    public static double zeroOrMore(String what, double value, String unit) {
        return zeroOrMore(() -> what, value, () -> unit);
    }

    public static double zeroOrMore(Supplier<String> what, double value, Supplier<String> unit) {
        if (!isZeroOrMore(value)) {
            throw new IllegalArgumentException(what.get() + ": expected 0" + unit.get() + " or more, found " + value);
        }
        return value + 0.0;
    }

    /** Where even a supplier of words is too much, for records of which there are many. */
    public static boolean isZeroOrMore(double value) {
        return value >= 0 && value < Double.POSITIVE_INFINITY;
    }

    public static double overZero(String what, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + ": expected more than 0" + unit + ", found " + value);
        }
        return value;
    }

    public static Money zeroOrMore(String what, Money value) {
        if (value.isNegative()) {
            throw new IllegalArgumentException(what + ": expected 0 or more, found " + text(value));
        }
        return value;
    }

    /** A part of the whole that may be nothing and may not be everything. */
    public static BigDecimal underOne(String what, BigDecimal share) {
        if (share.compareTo(BigDecimal.ONE) >= 0) {
            throw new IllegalArgumentException(
                    what + ": expected under 100 %, found " + plain(share.movePointRight(2)) + " %");
        }
        return share;
    }

    public static void same(String what, CurrencyUnit expected, CurrencyUnit found) {
        if (!expected.equals(found)) {
            throw new IllegalArgumentException(what + ": expected " + expected + ", found " + found);
        }
    }

    public static void ordered(String what, LocalDate from, Optional<LocalDate> until) {
        ordered(() -> what, from, until);
    }

    public static void ordered(Supplier<String> what, LocalDate from, Optional<LocalDate> until) {
        if (until.isPresent() && until.get().isBefore(from)) {
            throw new IllegalArgumentException(
                    what.get() + ": valid until: expected a day not before " + from + ", found " + until.get());
        }
    }

    public static boolean holds(LocalDate from, Optional<LocalDate> until, LocalDate day) {
        return !day.isBefore(from) && (until.isEmpty() || !day.isAfter(until.get()));
    }

    public static String span(LocalDate from, Optional<LocalDate> until) {
        return from + (until.isPresent() ? " to " + until.get() : " on");
    }

    /** Money as price lists write it: 12.40 GBP. */
    public static String text(Money money) {
        return money.getAmount().toPlainString() + " " + money.getCurrencyUnit();
    }

    /** Money of many digits for a message, to a hundredth of the smallest coin. */
    public static String text(CurrencyUnit currency, BigDecimal amount) {
        return rounded(amount, currency.getDecimalPlaces() + 2) + " " + currency;
    }

    /** Money rounded to its smallest coin, halves up. */
    public static Money rounded(CurrencyUnit currency, BigDecimal amount) {
        return Money.of(currency, amount, RoundingMode.HALF_UP);
    }

    /** A decimal cut to so many places for reading, halves up, without idle zeros. */
    public static String rounded(BigDecimal value, int places) {
        return plain(value.setScale(places, RoundingMode.HALF_UP));
    }

    /** A decimal without exponent and without idle zeros. */
    public static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
