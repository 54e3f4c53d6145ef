package costrel.cost;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * How a sheet is to be made.
 *
 * @param currency what the sheet is in
 * @param purchaseQuantities by item, how much is bought at a time where that is more than the gyle's use: it picks the
 *     price break; in the unit of the bill
 * @param claimRelief whether Small Producer Relief is claimed
 * @param statedDiscount a discount per litre of pure alcohol that the user supplies; empty to work it out
 */
public record CostOptions(
        CurrencyUnit currency,
        Map<String, BigDecimal> purchaseQuantities,
        boolean claimRelief,
        Optional<BigDecimal> statedDiscount) {

    public CostOptions {
        purchaseQuantities = Map.copyOf(purchaseQuantities);
        purchaseQuantities.forEach((item, quantity) -> Figures.overZero(item + ": purchase quantity", quantity, ""));
        statedDiscount.ifPresent(
                discount -> Figures.zeroOrMore("stated discount", discount, " per litre of pure alcohol"));
    }

    /**
     * A sheet in a currency, with quantities as used and relief claimed where it is due.
     *
     * @param currency what the sheet is in
     * @return the options
     */
    public static CostOptions in(CurrencyUnit currency) {
        return new CostOptions(currency, Map.of(), true, Optional.empty());
    }
}
