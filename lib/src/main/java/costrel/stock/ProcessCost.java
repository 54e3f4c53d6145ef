package costrel.stock;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.Money;

/**
 * What a batch carries and what is an expense. By-products are taken off at net realisable value (IAS 2.14). The normal
 * loss is carried by the good output; an abnormal loss is valued at the same unit cost and expensed (IAS 2.16(a) keeps
 * abnormal waste out of stock; its valuation is common practice of process costing). More output than normal lowers the
 * unit cost: stock never stands above what was spent.
 *
 * @param inputs all that went in, 0 or more
 * @param byProducts what by-products bring in after the cost of selling them, 0 or more and no more than the inputs
 * @param startHl what went in, hL, more than 0
 * @param normalLossShare the share of it that is normally lost, 0 to less than 1
 * @param goodHl what came out good, hL, 0 or more and no more than went in
 */
public record ProcessCost(
        Money inputs, Money byProducts, BigDecimal startHl, BigDecimal normalLossShare, BigDecimal goodHl) {

    public ProcessCost {
        Figures.zeroOrMore("batch: inputs", inputs);
        Figures.zeroOrMore("batch: by-products", byProducts);
        Figures.same("batch: by-products", inputs.getCurrencyUnit(), byProducts.getCurrencyUnit());
        if (byProducts.isGreaterThan(inputs)) {
            throw new IllegalArgumentException("batch: by-products: expected no more than the inputs of "
                    + Figures.text(inputs) + ", found " + Figures.text(byProducts));
        }
        Figures.overZero("batch: start", startHl, " hL");
        Figures.zeroOrMore("batch: normal loss", normalLossShare, "");
        if (normalLossShare.compareTo(BigDecimal.ONE) >= 0) {
            throw new IllegalArgumentException(
                    "batch: normal loss: expected a share under 1, found " + Figures.plain(normalLossShare));
        }
        Figures.zeroOrMore("batch: good output", goodHl, " hL");
        if (goodHl.compareTo(startHl) > 0) {
            throw new IllegalArgumentException("batch: good output: expected no more than the " + Figures.plain(startHl)
                    + " hL that went in, found " + Figures.plain(goodHl));
        }
    }

    /**
     * The inputs less what by-products bring in.
     *
     * @return the net cost
     */
    public Money net() {
        return inputs.minus(byProducts);
    }

    /**
     * What normally comes out.
     *
     * @return hL
     */
    public BigDecimal normalHl() {
        return startHl.multiply(BigDecimal.ONE.subtract(normalLossShare));
    }

    /**
     * The net cost of a hectolitre: over the normal output, or over the good output where that is more.
     *
     * @return money per hL, to 60 digits
     */
    public BigDecimal unitCost() {
        return net().getAmount().divide(normalHl().max(goodHl), Carried.CARRIED);
    }

    /**
     * What is lost beyond the normal.
     *
     * @return hL, 0 where the output is normal or better
     */
    public BigDecimal abnormalLossHl() {
        return normalHl().subtract(goodHl).max(BigDecimal.ZERO);
    }

    /**
     * The abnormal loss at unit cost, which is an expense of the period and no cost of the beer.
     *
     * @return to the penny, halves up
     */
    public Money expensed() {
        BigDecimal exact = net().getAmount().multiply(abnormalLossHl());
        return Money.of(
                inputs.getCurrencyUnit(),
                exact.divide(normalHl().max(goodHl), inputs.getScale(), RoundingMode.HALF_UP));
    }

    /**
     * What the good output carries.
     *
     * @return the net cost less what is expensed
     */
    public Money carried() {
        return net().minus(expensed());
    }
}
