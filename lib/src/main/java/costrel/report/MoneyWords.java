package costrel.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Money as sheets print it: the sign in the header, the figure in the cell, and the smallest coin by its name. */
final class MoneyWords {

    private static final String TO_CONFIRM =
            "estimates for pricing, no duty return and no tax advice; confirm duty, reliefs and VAT"
                    + " with the authority and prices with an accountant";

    /** To be said under every sheet that a price may be taken from. */
    static final String CARE = "take care: " + TO_CONFIRM;

    private static final Map<String, String> SIGNS = Map.of("GBP", "£", "EUR", "€");
    private static final Map<String, String> COINS = Map.of("GBP", "pence", "EUR", "cents", "USD", "cents");

    private MoneyWords() {}

    /** £ for pounds, € for euros, else the three letters. */
    static String sign(CurrencyUnit currency) {
        return SIGNS.getOrDefault(currency.getCode(), currency.getCode());
    }

    /** pence for pounds, cents for euros and dollars, else the smallest coin in figures. */
    static String coins(CurrencyUnit currency) {
        return COINS.getOrDefault(
                currency.getCode(),
                currency.getDecimalPlaces() > 0
                        ? BigDecimal.ONE
                                        .movePointLeft(currency.getDecimalPlaces())
                                        .toPlainString() + " " + currency.getCode()
                        : currency.getCode());
    }

    /** A column of money: the sign behind the heading, the code of the currency as the unit. */
    static Column column(String key, String heading, CurrencyUnit currency) {
        return Column.figures(key, (heading + " " + sign(currency)).strip(), currency.getCode());
    }

    /** A column of money by something, such as a hectolitre: £ a hL. */
    static Column columnBy(String key, CurrencyUnit currency, String by) {
        return Column.figures(key, sign(currency) + " a " + by, currency.getCode() + "/" + by);
    }

    /** A column of the smallest coin by the pint: pence a pint. */
    static Column perPint(String key, String heading, CurrencyUnit currency) {
        return Column.figures(key, heading, coins(currency) + "/pint");
    }

    static Column perPint(String key, CurrencyUnit currency) {
        return perPint(key, coins(currency) + " a pint", currency);
    }

    /** What is to be said under every sheet that a price may be taken from. */
    static Block.Note care() {
        return new Block.Note(Block.Note.Kind.TAKE_CARE, "take care", TO_CONFIRM);
    }

    /** Money to the smallest coin, halves up, without its sign. */
    static String figure(CurrencyUnit currency, BigDecimal amount) {
        return amount.setScale(currency.getDecimalPlaces(), RoundingMode.HALF_UP)
                .toPlainString();
    }

    static String figure(Money money) {
        return money.getAmount().toPlainString();
    }

    /** An amount inside a sentence: £95.00, 95.00 USD. */
    static String said(Money money) {
        CurrencyUnit currency = money.getCurrencyUnit();
        String sign = SIGNS.get(currency.getCode());
        return sign == null
                ? figure(money) + " " + currency.getCode()
                : (money.isNegative() ? "-" : "") + sign + figure(money.abs());
    }

    static String said(CurrencyUnit currency, BigDecimal amount) {
        return said(Money.of(currency, amount, RoundingMode.HALF_UP));
    }

    /** Money by the pint in the smallest coin, to two decimals, halves up. */
    static String coinsOf(CurrencyUnit currency, BigDecimal amount) {
        return amount.movePointRight(currency.getDecimalPlaces())
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** A share as per cent to one decimal, without its sign. */
    static String percent(BigDecimal share) {
        return share.movePointRight(2).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    /** A share as it was stated: 5 %, 12.5 %. */
    static String stated(BigDecimal share) {
        BigDecimal percent = share.movePointRight(2).stripTrailingZeros();
        return (percent.scale() < 0 ? percent.setScale(0) : percent).toPlainString() + " %";
    }
}
