package costrel.pricing;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * How many whole containers pay for the fixed cost, and for a profit on top. The number is rounded up: a third of a
 * container more can't be sold.
 *
 * @param contribution price less variable cost with duty, money per container, more than 0
 * @param fixed fixed cost of the period, 0 or more
 * @param profit profit that is wanted of the period, 0 for break-even
 * @param containers the containers that it takes
 */
public record BreakEven(BigDecimal contribution, BigDecimal fixed, BigDecimal profit, BigInteger containers) {

    public BreakEven {
        Figures.overZero("contribution of a container", contribution, "");
        Figures.zeroOrMore("fixed cost", fixed, "");
        Figures.zeroOrMore("profit wanted", profit, "");
    }

    /**
     * The containers that pay for the fixed cost.
     *
     * @param price price of a container
     * @param variable variable cost of a container, with duty
     * @param fixed fixed cost of the period
     * @return break-even
     * @throws IllegalArgumentException when the price is no more than the variable cost, or a figure is below 0
     */
    public static BreakEven of(BigDecimal price, BigDecimal variable, BigDecimal fixed) {
        return withProfit(price, variable, fixed, BigDecimal.ZERO);
    }

    /**
     * The containers that pay for the fixed cost and a profit.
     *
     * @param price price of a container
     * @param variable variable cost of a container, with duty
     * @param fixed fixed cost of the period
     * @param profit profit that is wanted of the period
     * @return the volume that it takes
     * @throws IllegalArgumentException when the price is no more than the variable cost, or a figure is below 0
     */
    public static BreakEven withProfit(BigDecimal price, BigDecimal variable, BigDecimal fixed, BigDecimal profit) {
        Figures.zeroOrMore("variable cost", variable, "");
        if (price.compareTo(variable) <= 0) {
            throw new IllegalArgumentException("break-even: expected a price over the variable cost of "
                    + Figures.plain(variable) + ", found " + Figures.plain(price)
                    + "; no volume pays for the fixed cost");
        }
        BigDecimal contribution = price.subtract(variable);
        return new BreakEven(contribution, fixed, profit, up(fixed.add(profit), contribution));
    }

    /**
     * The same for a price that was worked out: its contribution is price less variable cost, unrounded.
     *
     * @param price the price
     * @param fixed fixed cost of the period
     * @param profit profit that is wanted of the period, 0 for break-even
     * @return the volume that it takes
     * @throws IllegalArgumentException when the price is no more than the variable cost, or a figure is below 0
     */
    public static BreakEven of(Price price, BigDecimal fixed, BigDecimal profit) {
        return withProfit(price.net().getAmount(), price.cost().variable(), fixed, profit);
    }

    private static BigInteger up(BigDecimal money, BigDecimal contribution) {
        BigDecimal[] parts = money.divideAndRemainder(contribution);
        BigInteger whole = parts[0].setScale(0, RoundingMode.UNNECESSARY).toBigIntegerExact();
        return parts[1].signum() == 0 ? whole : whole.add(BigInteger.ONE);
    }
}
