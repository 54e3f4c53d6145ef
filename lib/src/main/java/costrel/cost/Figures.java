package costrel.cost;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/** The checks that every record of this package makes, and how its figures are written in messages. */
final class Figures {
    /** For quotients that have no end: 34 digits, far past any penny. Never used for a figure that enters a sum. */
    static final MathContext SHOWN = MathContext.DECIMAL128;

    static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private Figures() {}

    static String named(String what, String name) {
        return named(() -> what, name);
    }

    /** The same where the words must be put together first: only where they are needed. */
    static String named(Supplier<String> what, String name) {
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

    static BigDecimal overZero(String what, BigDecimal value, String unit) {
        return overZero(() -> what, value, () -> unit);
    }

    static BigDecimal overZero(Supplier<String> what, BigDecimal value, Supplier<String> unit) {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException(
                    what.get() + ": expected more than 0" + unit.get() + ", found " + plain(value));
        }
        return value;
    }

    static BigDecimal zeroOrMore(String what, BigDecimal value, String unit) {
        return zeroOrMore(() -> what, value, () -> unit);
    }

    static BigDecimal zeroOrMore(Supplier<String> what, BigDecimal value, Supplier<String> unit) {
        if (value.signum() < 0) {
            throw new IllegalArgumentException(
                    what.get() + ": expected 0" + unit.get() + " or more, found " + plain(value));
        }
        return value;
    }

    static double zeroOrMore(String what, double value, String unit) {
        return zeroOrMore(() -> what, value, () -> unit);
    }

    static double zeroOrMore(Supplier<String> what, double value, Supplier<String> unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what.get() + ": expected 0" + unit.get() + " or more, found " + value);
        }
        return value + 0.0;
    }

    static double overZero(String what, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + ": expected more than 0" + unit + ", found " + value);
        }
        return value;
    }

    static void ordered(String what, LocalDate from, Optional<LocalDate> until) {
        ordered(() -> what, from, until);
    }

    static void ordered(Supplier<String> what, LocalDate from, Optional<LocalDate> until) {
        if (until.isPresent() && until.get().isBefore(from)) {
            throw new IllegalArgumentException(
                    what.get() + ": valid until: expected a day not before " + from + ", found " + until.get());
        }
    }

    static boolean holds(LocalDate from, Optional<LocalDate> until, LocalDate day) {
        return !day.isBefore(from) && (until.isEmpty() || !day.isAfter(until.get()));
    }

    static String span(LocalDate from, Optional<LocalDate> until) {
        return from + (until.isPresent() ? " to " + until.get() : " on");
    }

    /** Money as price lists write it: 12.40 GBP. */
    static String text(Money money) {
        return money.getAmount().toPlainString() + " " + money.getCurrencyUnit();
    }

    /** A decimal cut to so many places for reading, halves up, without idle zeros. */
    static String rounded(BigDecimal value, int places) {
        return plain(value.setScale(places, RoundingMode.HALF_UP));
    }

    /** A decimal without exponent and without idle zeros. */
    static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
