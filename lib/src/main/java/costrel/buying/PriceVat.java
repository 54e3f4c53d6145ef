package costrel.buying;

import costrel.figures.Figures;
import java.math.BigDecimal;

/**
 * Value added tax on a row of a price list. Tax that can be recovered is no cost; tax that can't is (IAS 2.11).
 *
 * @param percent the rate, 0 or more
 * @param included whether the printed price and delivery hold it already
 * @param recoverable whether the brewery gets it back; ask an accountant
 */
public record PriceVat(BigDecimal percent, boolean included, boolean recoverable) {

    public PriceVat {
        Figures.zeroOrMore("value added tax", percent, " %");
    }

    /** What a price without the tax is multiplied by to hold it. */
    BigDecimal factor() {
        return Figures.HUNDRED.add(percent).movePointLeft(2);
    }

    /** What is done with the tax, in words; empty where nothing is. */
    String note() {
        if (included == !recoverable) {
            return included ? "with " + Figures.plain(percent) + " % of tax that can't be recovered" : "";
        }
        return included
                ? Figures.plain(percent) + " % of recoverable tax taken out of the price"
                : Figures.plain(percent) + " % of tax that can't be recovered added";
    }
}
