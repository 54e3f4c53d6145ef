package costrel.pricing;

import costrel.figures.Figures;
import java.math.BigDecimal;
import org.joda.money.Money;

/**
 * Prices a container from its unrounded cost, rounding the price once, halves up. A price whose unrounded figure is under
 * the variable cost is refused unless that is asked for. Shares are fractions: 40 % is 0.40. Money is without value added
 * tax, and duty is in the cost. An aid to pricing; confirm duty with the authority and margins with an accountant.
 *
 * @param cost what the container costs
 * @param mayBeUnderVariableCost whether a price may be under variable cost
 */
public record Pricing(UnitCost cost, boolean mayBeUnderVariableCost) {

    /**
     * Prices for a container, none under its variable cost.
     *
     * @param cost what the container costs
     * @return its prices
     */
    public static Pricing of(UnitCost cost) {
        return new Pricing(cost, false);
    }

    /**
     * The same, with leave to sell under variable cost.
     *
     * @return its prices
     */
    public Pricing evenUnderVariableCost() {
        return new Pricing(cost, true);
    }

    /**
     * Cost and a mark-up: cost × (1 + mark-up).
     *
     * @param markUp the mark-up as a share of the cost, 0.5 for 50 %
     * @return the price
     * @throws IllegalArgumentException when the price is not over 0, or under variable cost without leave
     */
    public Price atMarkUp(BigDecimal markUp) {
        return unrounded(cost.cost().multiply(BigDecimal.ONE.add(markUp)));
    }

    /**
     * A margin on the price, duty in price and cost: cost / (1 − margin).
     *
     * @param margin the margin as a share of the price, under 1
     * @return the price
     * @throws IllegalArgumentException when the margin is 1 or more, or the price not over 0 or under variable cost
     *     without leave
     */
    public Price atMargin(BigDecimal margin) {
        return unrounded(cost.cost().divide(keptOf("margin", margin), Figures.SHOWN));
    }

    /**
     * A margin on what the brewery keeps when duty is paid: duty + (cost − duty) / (1 − margin).
     *
     * @param margin the margin as a share of the price less duty, under 1
     * @return the price
     * @throws IllegalArgumentException when the margin is 1 or more, or the price not over 0 or under variable cost
     *     without leave
     */
    public Price atMarginExDuty(BigDecimal margin) {
        BigDecimal exDuty = cost.cost().subtract(cost.duty());
        return unrounded(cost.duty().add(exDuty.divide(keptOf("margin without duty", margin), Figures.SHOWN)));
    }

    /**
     * A contribution for each hectolitre that can be sold.
     *
     * @param perHl the contribution, money per hL
     * @return the price
     * @throws IllegalArgumentException when the price is not over 0, or under variable cost without leave
     */
    public Price atContributionPerHl(BigDecimal perHl) {
        return unrounded(cost.variable().add(perHl.multiply(cost.saleableHl())));
    }

    /**
     * A contribution for each day of one tank.
     *
     * @param perTankDay the contribution, money per tank-day
     * @return the price
     * @throws IllegalArgumentException when the days in tank are not known, or the price is not over 0, or under variable
     *     cost without leave
     */
    public Price atContributionPerTankDay(BigDecimal perTankDay) {
        BigDecimal days = cost.tankDays()
                .orElseThrow(() -> new IllegalArgumentException(
                        cost.name() + ": contribution per tank-day: expected the days in tank, found none"));
        return unrounded(cost.variable().add(perTankDay.multiply(days)));
    }

    /**
     * A price that is given.
     *
     * @param net the price of a container
     * @return what it leaves
     * @throws IllegalArgumentException when the price is not over 0, in another currency, or under variable cost without
     *     leave
     */
    public Price at(Money net) {
        Figures.same(cost.name() + ": price", cost.currency(), net.getCurrencyUnit());
        return unrounded(net.getAmount());
    }

    /**
     * The mark-up that is the same price as a margin: margin / (1 − margin).
     *
     * @param margin a share of the price, under 1
     * @return a share of the cost
     * @throws IllegalArgumentException when the margin is 1 or more
     */
    public static BigDecimal markUpOf(BigDecimal margin) {
        return margin.divide(keptOf("margin", margin), Figures.SHOWN);
    }

    /**
     * The margin that is the same price as a mark-up: mark-up / (1 + mark-up).
     *
     * @param markUp a share of the cost, over −1
     * @return a share of the price
     * @throws IllegalArgumentException when the mark-up is −1 or less
     */
    public static BigDecimal marginOf(BigDecimal markUp) {
        if (markUp.compareTo(BigDecimal.ONE.negate()) <= 0) {
            throw new IllegalArgumentException("mark-up: expected over -1 (-100 %), found " + Figures.plain(markUp));
        }
        return markUp.divide(BigDecimal.ONE.add(markUp), Figures.SHOWN);
    }

    /**
     * What a container may cost at a price and a margin: price × (1 − margin).
     *
     * @param net the price
     * @param margin the margin as a share of the price, under 1
     * @return the cost, exact
     * @throws IllegalArgumentException when the margin is 1 or more
     */
    public static BigDecimal costAt(Money net, BigDecimal margin) {
        return net.getAmount().multiply(keptOf("margin", margin));
    }

    private static BigDecimal keptOf(String what, BigDecimal margin) {
        return BigDecimal.ONE.subtract(Figures.underOne(what, margin));
    }

    Price unrounded(BigDecimal price) {
        if (!mayBeUnderVariableCost && price.compareTo(cost.variable()) < 0) {
            throw new IllegalArgumentException(cost.name() + ": price: expected no less than the variable cost of "
                    + Figures.text(cost.currency(), cost.variable()) + ", found "
                    + Figures.text(cost.currency(), price)
                    + "; each one sold would lose money. Ask for it expressly if it is meant");
        }
        return new Price(cost, price, Figures.rounded(cost.currency(), price));
    }
}
