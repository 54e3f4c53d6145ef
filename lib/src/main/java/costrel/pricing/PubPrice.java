package costrel.pricing;

import costrel.figures.Figures;
import java.math.BigDecimal;
import org.joda.money.Money;

/**
 * The pub's side of a price: what a container costs it, what it charges for a pint, and the gross profit between the two.
 * The gross profit is a share of the pump price without value added tax. It hangs on the pints that are really sold from
 * the container, so these are an input: a firkin fills 72 pint glasses, its beer with the sediment left behind does not.
 *
 * @param container what the pub pays for a container, without value added tax
 * @param saleablePints pints that it sells from one, more than 0
 * @param vat the rate of value added tax, 0.20 for 20 %; confirm which applies
 * @param unroundedPump the pump price before it was rounded, with value added tax
 * @param pump the pump price of a pint, with value added tax
 */
public record PubPrice(
        Money container, BigDecimal saleablePints, BigDecimal vat, BigDecimal unroundedPump, Money pump) {

    public PubPrice {
        Figures.zeroOrMore("price of a container", container.getAmount(), "");
        Figures.overZero("saleable pints", saleablePints, "");
        Figures.zeroOrMore("value added tax", vat, "");
        Figures.same("pump price", container.getCurrencyUnit(), pump.getCurrencyUnit());
        Figures.overZero("pump price", pump.getAmount(), "");
    }

    /**
     * The pump price at a gross profit: container price / pints / (1 − gross profit) × (1 + value added tax), rounded to
     * the penny, halves up.
     *
     * @param container what the pub pays for a container, without value added tax
     * @param saleablePints pints that it sells from one
     * @param grossProfit the gross profit as a share of the price without value added tax, under 1
     * @param vat the rate of value added tax, 0.20 for 20 %
     * @return the pub's price
     * @throws IllegalArgumentException when the gross profit is 1 or more, or a figure is below 0
     */
    public static PubPrice atGrossProfit(
            Money container, BigDecimal saleablePints, BigDecimal grossProfit, BigDecimal vat) {
        Figures.overZero("saleable pints", saleablePints, "");
        BigDecimal kept = BigDecimal.ONE.subtract(Figures.underOne("gross profit", grossProfit));
        BigDecimal unrounded = container
                .getAmount()
                .multiply(BigDecimal.ONE.add(vat))
                .divide(saleablePints.multiply(kept), Figures.SHOWN);
        return new PubPrice(
                container, saleablePints, vat, unrounded, Figures.rounded(container.getCurrencyUnit(), unrounded));
    }

    /**
     * What a pump price leaves.
     *
     * @param container what the pub pays for a container, without value added tax
     * @param saleablePints pints that it sells from one
     * @param pump the pump price of a pint, with value added tax
     * @param vat the rate of value added tax, 0.20 for 20 %
     * @return the pub's price
     * @throws IllegalArgumentException when a figure is below 0 or a currency another
     */
    public static PubPrice atPumpPrice(Money container, BigDecimal saleablePints, Money pump, BigDecimal vat) {
        return new PubPrice(container, saleablePints, vat, pump.getAmount(), pump);
    }

    /**
     * The most a pub can pay for a container at a pump price and a gross profit.
     *
     * @param pump the pump price of a pint, with value added tax
     * @param saleablePints pints that it sells from a container
     * @param grossProfit the gross profit that it asks for, under 1
     * @param vat the rate of value added tax, 0.20 for 20 %
     * @return the price of a container without value added tax, rounded to the penny, halves up
     * @throws IllegalArgumentException when the gross profit is 1 or more, or a figure is below 0
     */
    public static Money containerPriceFor(
            Money pump, BigDecimal saleablePints, BigDecimal grossProfit, BigDecimal vat) {
        Figures.overZero("saleable pints", saleablePints, "");
        Figures.zeroOrMore("value added tax", vat, "");
        BigDecimal kept = BigDecimal.ONE.subtract(Figures.underOne("gross profit", grossProfit));
        return Figures.rounded(
                pump.getCurrencyUnit(),
                pump.getAmount().multiply(kept).multiply(saleablePints).divide(BigDecimal.ONE.add(vat), Figures.SHOWN));
    }

    /**
     * The pump price without value added tax.
     *
     * @return money per pint, unrounded
     */
    public BigDecimal netPerPint() {
        return pump.getAmount().divide(BigDecimal.ONE.add(vat), Figures.SHOWN);
    }

    /**
     * The value added tax in the pump price.
     *
     * @return money per pint, unrounded
     */
    public BigDecimal vatPerPint() {
        return pump.getAmount().multiply(vat).divide(BigDecimal.ONE.add(vat), Figures.SHOWN);
    }

    /**
     * What a pint costs the pub.
     *
     * @return money per pint without value added tax, unrounded
     */
    public BigDecimal costPerPint() {
        return container.getAmount().divide(saleablePints, Figures.SHOWN);
    }

    /**
     * What a pint leaves the pub.
     *
     * @return money per pint without value added tax, unrounded; below 0 for a loss
     */
    public BigDecimal grossProfitPerPint() {
        return netPerPint().subtract(costPerPint());
    }

    /**
     * The gross profit.
     *
     * @return a share of the pump price without value added tax, unrounded
     */
    public BigDecimal grossProfit() {
        return grossProfitPerPint().divide(netPerPint(), Figures.SHOWN);
    }

    /**
     * The same pump price where another number of pints is sold from the container: what careless cellar work, or a pint
     * count that forgets the sediment, does to the gross profit.
     *
     * @param pints pints sold from one container
     * @return the pub's price with those
     */
    public PubPrice sold(BigDecimal pints) {
        return new PubPrice(container, pints, vat, unroundedPump, pump);
    }
}
