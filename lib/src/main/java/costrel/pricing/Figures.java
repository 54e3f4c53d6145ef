package costrel.pricing;

import costrel.cost.Container;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The checks that the records of this package make, the digits it works with, and how figures stand in messages. */
final class Figures {
    /** For quotients that have no end: 34 digits, far past any penny. */
    static final MathContext SHOWN = MathContext.DECIMAL128;

    /** For sums of many products of quotients, so that 34 of their digits are right. */
    static final MathContext WORKING = new MathContext(50, RoundingMode.HALF_EVEN);

    private static final BigDecimal L_PER_HL = BigDecimal.valueOf(100);

    private Figures() {}

    static String named(String what, String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(what + ": expected a name, found none");
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

    /** A part of the whole that may be nothing and may not be everything. */
    static BigDecimal underOne(String what, BigDecimal share) {
        if (share.compareTo(BigDecimal.ONE) >= 0) {
            throw new IllegalArgumentException(
                    what + ": expected under 100 %, found " + plain(share.movePointRight(2)) + " %");
        }
        return share;
    }

    static void same(String what, CurrencyUnit expected, CurrencyUnit found) {
        if (!expected.equals(found)) {
            throw new IllegalArgumentException(what + ": expected " + expected + ", found " + found);
        }
    }

    /** Money rounded to its smallest coin, halves up. */
    static Money rounded(CurrencyUnit currency, BigDecimal amount) {
        return Money.of(currency, amount, RoundingMode.HALF_UP);
    }

    static BigDecimal hl(BigDecimal pints) {
        return pints.multiply(Container.PINT_L).divide(L_PER_HL);
    }

    static BigDecimal pints(BigDecimal hl) {
        return hl.multiply(L_PER_HL).divide(Container.PINT_L, SHOWN);
    }

    static BigDecimal sum(List<BigDecimal> values) {
        return values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    static String text(Money money) {
        return money.getAmount().toPlainString() + " " + money.getCurrencyUnit();
    }

    /** Money of many digits for a message, to a hundredth of the smallest coin. */
    static String text(CurrencyUnit currency, BigDecimal amount) {
        return plain(amount.setScale(currency.getDecimalPlaces() + 2, RoundingMode.HALF_UP)) + " " + currency;
    }

    static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
