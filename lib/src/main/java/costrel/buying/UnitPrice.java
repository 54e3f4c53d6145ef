package costrel.buying;

import costrel.figures.Figures;
import costrel.figures.Rounded;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * An exact price per unit: money over content. It is kept as the pair because a third of a penny has no end in
 * decimals, and a line must be rounded once only.
 *
 * @param amount the money, in the currency's whole units; below 0 for a credit
 * @param content how many units it buys, more than 0
 * @param unit the unit, such as kg or hL
 */
public record UnitPrice(BigDecimal amount, BigDecimal content, String unit) implements Comparable<UnitPrice> {

    public UnitPrice {
        if (content.signum() <= 0) { // no supplier of words: every line of a sheet has such a price
            Figures.overZero("unit price: content", content, " " + unit);
        }
    }

    /**
     * What a quantity costs, rounded once, halves up.
     *
     * @param quantity in the unit of this price
     * @param decimals the decimals of the currency
     * @return the money
     */
    public BigDecimal times(BigDecimal quantity, int decimals) {
        return Rounded.quotient(amount, quantity, content, decimals);
    }

    /**
     * The price of one unit, to 34 digits where it has no end.
     *
     * @return money per unit
     */
    public BigDecimal value() {
        return amount.divide(content, Figures.SHOWN);
    }

    @Override
    public int compareTo(UnitPrice other) {
        return amount.multiply(other.content).compareTo(other.amount.multiply(content));
    }

    /**
     * Equal where one unit costs the same, in the same unit: £25 for 50 kg is £0.50 for 1 kg.
     *
     * @param other anything
     * @return whether it is the same price per unit
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof UnitPrice price && unit.equals(price.unit) && compareTo(price) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(value().doubleValue()) * 31 + unit.hashCode();
    }
}
