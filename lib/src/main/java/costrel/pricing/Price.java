package costrel.pricing;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A price for one container, and what it leaves. Everything is reckoned from the price as it is charged and from the
 * unrounded cost; nothing here is rounded but the price. Money is without value added tax.
 *
 * @param cost what the container costs
 * @param unrounded the price before it was rounded
 * @param net the price as charged, rounded to the penny, halves up; more than 0
 */
public record Price(UnitCost cost, BigDecimal unrounded, Money net) {

    public Price {
        Figures.same(cost.name() + ": price", cost.currency(), net.getCurrencyUnit());
        Figures.overZero(cost.name() + ": price", net.getAmount(), " " + cost.currency());
    }

    /**
     * Profit after all cost, duty among it.
     *
     * @return money per container, below 0 for a loss
     */
    public BigDecimal profit() {
        return net.getAmount().subtract(cost.cost());
    }

    /**
     * Margin: profit over price, with duty in both.
     *
     * @return a share of the price, under 1
     */
    public BigDecimal margin() {
        return profit().divide(net.getAmount(), Figures.SHOWN);
    }

    /**
     * Margin with duty left out of price and cost: profit over what the brewery keeps of the price.
     *
     * @return a share; empty where the price is no more than the duty
     */
    public Optional<BigDecimal> marginExDuty() {
        BigDecimal kept = net.getAmount().subtract(cost.duty());
        return kept.signum() > 0 ? Optional.of(profit().divide(kept, Figures.SHOWN)) : Optional.empty();
    }

    /**
     * Mark-up: profit over cost, with duty in both.
     *
     * @return a share of the cost; empty where it costs nothing
     */
    public Optional<BigDecimal> markUp() {
        return cost.cost().signum() > 0 ? Optional.of(profit().divide(cost.cost(), Figures.SHOWN)) : Optional.empty();
    }

    /**
     * Contribution: the price less variable cost with duty.
     *
     * @return money per container
     */
    public BigDecimal contribution() {
        return net.getAmount().subtract(cost.variable());
    }

    /**
     * Contribution of a pint.
     *
     * @return money per saleable pint
     */
    public BigDecimal contributionPerPint() {
        return contribution().divide(cost.saleablePints(), Figures.SHOWN);
    }

    /**
     * Contribution of beer that can be sold.
     *
     * @return money per hL
     */
    public BigDecimal contributionPerHl() {
        return contribution().divide(cost.saleableHl(), Figures.SHOWN);
    }

    /**
     * Contribution of a day of one tank.
     *
     * @return money per tank-day; empty where the days are not known or none
     */
    public Optional<BigDecimal> contributionPerTankDay() {
        return cost.tankDays()
                .filter(days -> days.signum() > 0)
                .map(days -> contribution().divide(days, Figures.SHOWN));
    }

    /**
     * The price of a pint.
     *
     * @return money per saleable pint
     */
    public BigDecimal perPint() {
        return net.getAmount().divide(cost.saleablePints(), Figures.SHOWN);
    }

    /**
     * The price of beer that can be sold.
     *
     * @return money per hL
     */
    public BigDecimal perHl() {
        return net.getAmount().divide(cost.saleableHl(), Figures.SHOWN);
    }
}
