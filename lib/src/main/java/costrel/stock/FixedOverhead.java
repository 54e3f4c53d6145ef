package costrel.stock;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.Money;

/**
 * Fixed production overhead over output, at normal capacity (IAS 2.13): low output does not make a hectolitre dearer, the
 * part that it leaves is an expense; output above the normal lowers the rate, so that no more is carried than was spent.
 *
 * @param fixed the fixed overhead of the period, 0 or more
 * @param normalHl the output of a normal period, hL, more than 0
 * @param actualHl the output of this period, hL, 0 or more
 */
public record FixedOverhead(Money fixed, BigDecimal normalHl, BigDecimal actualHl) {

    public FixedOverhead {
        Figures.zeroOrMore("fixed overhead", fixed);
        Figures.overZero("fixed overhead: normal output", normalHl, " hL");
        Figures.zeroOrMore("fixed overhead: actual output", actualHl, " hL");
    }

    /**
     * What a hectolitre bears: the overhead over the normal output, or over the actual one where that is more.
     *
     * @return money per hL, to 60 digits
     */
    public BigDecimal perHl() {
        return fixed.getAmount().divide(normalHl.max(actualHl), Carried.CARRIED);
    }

    /**
     * What the output of the period bears.
     *
     * @return to the penny, halves up
     */
    public Money absorbed() {
        BigDecimal exact = fixed.getAmount().multiply(actualHl);
        return Money.of(
                fixed.getCurrencyUnit(), exact.divide(normalHl.max(actualHl), fixed.getScale(), RoundingMode.HALF_UP));
    }

    /**
     * What no output bears: an expense of the period.
     *
     * @return the fixed overhead less what is absorbed
     */
    public Money expensed() {
        return fixed.minus(absorbed());
    }
}
