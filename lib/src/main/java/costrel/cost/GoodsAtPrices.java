package costrel.cost;

import costrel.buying.Choice;
import costrel.buying.UnitPrice;
import costrel.figures.Figures;
import costrel.figures.Rounded;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * The lines of a bill at settled prices, to be costed over and over at other amounts: for a search, or for what a change
 * of weights would cost. Each line is rounded once to the smallest coin as on a cost sheet, and the total is the sum of its
 * lines.
 */
public final class GoodsAtPrices {
    private final List<UnitPrice> prices;
    private final CurrencyUnit currency;
    private final double[] coinsPerUnit;

    private GoodsAtPrices(List<UnitPrice> prices, CurrencyUnit currency) {
        this.prices = List.copyOf(prices);
        this.currency = currency;
        this.coinsPerUnit = this.prices.stream()
                .mapToDouble(price -> coins(price, currency.getDecimalPlaces()))
                .toArray();
    }

    /**
     * Lines with a price each.
     *
     * @param prices what a unit of each line costs, such as {@link Choice#unitPrice()}
     * @param currency what the prices are in
     * @return the lines
     */
    public static GoodsAtPrices of(List<UnitPrice> prices, CurrencyUnit currency) {
        return new GoodsAtPrices(prices, currency);
    }

    /**
     * What amounts of each line cost together.
     *
     * @param amounts an amount a line, 0 or more, in the unit of its price
     * @return the sum of the lines
     * @throws IllegalArgumentException if there are more or fewer amounts than lines, or one is below 0 or no number
     */
    public Money total(double... amounts) {
        return Money.ofMinor(currency, coins(amounts));
    }

    /**
     * The same in the smallest coins: pence of pounds, cents of euros.
     *
     * @param amounts an amount a line, 0 or more, in the unit of its price
     * @return the sum of the lines
     * @throws IllegalArgumentException if there are more or fewer amounts than lines, or one is below 0 or no number
     */
    public long coins(double... amounts) {
        if (amounts.length != coinsPerUnit.length) {
            throw new IllegalArgumentException(
                    "amounts: expected " + coinsPerUnit.length + ", one a line, found " + amounts.length);
        }
        long sum = 0;
        for (int i = 0; i < amounts.length; i++) {
            double coins = amounts[i] * coinsPerUnit[i];
            sum += amounts[i] >= 0 && Rounded.isCertain(coins) ? Rounded.nearest(coins) : exact(i, amounts[i]);
        }
        return sum;
    }

    private long exact(int line, double amount) {
        Figures.zeroOrMore(
                () -> "amount of line " + (line + 1),
                amount,
                () -> " " + prices.get(line).unit());
        UnitPrice price = prices.get(line);
        return Rounded.exact(price.amount(), BigDecimal.valueOf(amount), price.content(), currency.getDecimalPlaces())
                .unscaledValue()
                .longValueExact();
    }

    /** What a unit costs in the smallest coins, off by a few roundings of a double. */
    private static double coins(UnitPrice price, int decimals) {
        return price.amount().movePointRight(decimals).doubleValue()
                / price.content().doubleValue();
    }
}
