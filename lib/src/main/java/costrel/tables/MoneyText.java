package costrel.tables;

import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Money that a person writes beside a table: £95.00, £95, 95.00 GBP. Its currency is never guessed. */
public final class MoneyText {

    private MoneyText() {}

    /**
     * Reads an amount of money.
     *
     * @param what what it is, for the message, such as "price"
     * @param text the amount with its currency
     * @param currency the currency it must be in
     * @return the amount, exactly
     * @throws IllegalArgumentException if it is none, in another currency, or finer than the smallest coin
     */
    public static Money parse(String what, String text, CurrencyUnit currency) {
        Exact.Cash cash;
        try {
            cash = Exact.CASH.read(text.strip());
        } catch (IllegalArgumentException e) {
            throw refusal(what, text, currency, e);
        }
        BigDecimal amount = cash.amount().stripTrailingZeros();
        if (cash.per().isPresent()
                || amount.scale() > currency.getDecimalPlaces()
                || !cash.currency().map(currency::equals).orElse(false)) {
            throw refusal(what, text, currency, new IllegalArgumentException(text));
        }
        return Money.of(currency, amount);
    }

    private static IllegalArgumentException refusal(
            String what, String text, CurrencyUnit currency, IllegalArgumentException cause) {
        String example = currency.equals(CurrencyUnit.GBP) ? "£95.00 or 95.00 GBP" : "95.00 " + currency;
        return new IllegalArgumentException(
                what + ": expected an amount in " + currency + " such as " + example + ", found '" + text + "'", cause);
    }
}
