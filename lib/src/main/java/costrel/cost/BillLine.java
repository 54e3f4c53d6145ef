package costrel.cost;

import costrel.buying.PackUnit;
import costrel.figures.Figures;
import costrel.figures.Rounded;
import java.math.BigDecimal;
import java.util.List;

/**
 * One line of a bill of materials: what a gyle takes of one thing, as weighed out.
 *
 * @param group the part of the bill it belongs to
 * @param item what it is, as shown
 * @param priceNames the names to look its price up by, the most particular first: the lot's, then the variety's
 * @param amount how much, 0 or more, in the unit
 * @param unit what the amount is counted in
 * @param remark anything to show beside it, or empty
 */
public record BillLine(
        BillGroup group, String item, List<String> priceNames, double amount, PackUnit unit, String remark) {

    public BillLine {
        item = Figures.named("bill of materials", item);
        priceNames = List.copyOf(priceNames);
        if (priceNames.isEmpty()) {
            throw new IllegalArgumentException(item + ": expected a name to look its price up by, found none");
        }
        amount = Figures.isZeroOrMore(amount)
                ? amount + 0.0
                : Figures.zeroOrMore(item + ": amount", amount, " " + unit.label());
    }

    /**
     * The amount as the decimal that prints it: 12.3 is 12.3 exactly, not the nearest binary fraction.
     *
     * @return the amount in exact decimals
     */
    public BigDecimal exactAmount() {
        return Rounded.decimal(amount);
    }
}
