package costrel.stock;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The checks that the records of this package make, its one rounding, and how figures stand in messages. */
final class Checks {

    /** For values that are carried on: far more digits than any ledger needs. */
    static final MathContext CARRIED = new MathContext(60, RoundingMode.HALF_EVEN);

    /** Where the digits that {@link #CARRIED} cut off are gone for good, so that an exact half penny is still a half. */
    private static final int NOISE_PLACES = 30;

    private Checks() {}

    /** To the penny, halves up. */
    static Money money(CurrencyUnit currency, BigDecimal unrounded) {
        return Money.of(currency, unrounded.setScale(NOISE_PLACES, RoundingMode.HALF_UP), RoundingMode.HALF_UP);
    }

    static String named(String what, String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(what + ": expected a name, found none");
        }
        if (name.strip().chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException(
                    what + ": expected a single line, found '" + name.strip().replaceAll("\\p{Cntrl}+", " ") + "'");
        }
        return name.strip();
    }

    static BigDecimal overZero(String what, BigDecimal value, String unit) {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException(what + ": expected more than 0" + unit + ", found " + plain(value));
        }
        return value;
    }

    static BigDecimal zeroOrMore(String what, BigDecimal value, String unit) {
        if (value.signum() < 0) {
            throw new IllegalArgumentException(what + ": expected 0" + unit + " or more, found " + plain(value));
        }
        return value;
    }

    static Money zeroOrMore(String what, Money value) {
        if (value.isNegative()) {
            throw new IllegalArgumentException(what + ": expected 0 or more, found " + text(value));
        }
        return value;
    }

    static void sameCurrency(String what, Money first, Money other) {
        if (!first.getCurrencyUnit().equals(other.getCurrencyUnit())) {
            throw new IllegalArgumentException(
                    what + ": expected " + first.getCurrencyUnit() + ", found " + other.getCurrencyUnit());
        }
    }

    static String text(Money money) {
        return money.getAmount().toPlainString() + " " + money.getCurrencyUnit();
    }

    static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    /** A decimal for reading: six places, halves up, without idle zeros. */
    static String shown(BigDecimal value) {
        return plain(value.setScale(6, RoundingMode.HALF_UP));
    }
}
