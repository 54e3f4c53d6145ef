package costrel.cost;

import costrel.duty.YearVolume;
import costrel.figures.Figures;
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
 * @param claimRelief whether Small Producer Relief, or what another country has for small breweries, is claimed
 * @param statedDiscount a discount per litre of pure alcohol that the user supplies; empty to work it out
 * @param orders by item, the name of the order it comes with, for carriage; all other items of a supplier are one order
 * @param stock the store that the gyle draws from and its basis of cost; empty to cost by the price lists of the day
 * @param yearVolume beer of the brewery in the year, for countries where duty goes by it; empty where not known
 * @param containerCharges loss of containers and fees by weight
 * @param normalLossShare the share of what is collected that normally doesn't reach the racking, 0 to less than 1: what is
 *     lost beyond it is expensed and not in the pint; empty to let the beer that is sold carry all losses
 * @param unsoldShare the share of what can be sold that never is: returned, given away, out of date; 0 to less than 1
 */
public record CostOptions(
        CurrencyUnit currency,
        Map<String, BigDecimal> purchaseQuantities,
        boolean claimRelief,
        Optional<BigDecimal> statedDiscount,
        Map<String, String> orders,
        Optional<StockBasis> stock,
        Optional<YearVolume> yearVolume,
        ContainerCharges containerCharges,
        Optional<BigDecimal> normalLossShare,
        BigDecimal unsoldShare) {

    public CostOptions {
        purchaseQuantities = Map.copyOf(purchaseQuantities);
        purchaseQuantities.forEach((item, quantity) -> Figures.overZero(item + ": purchase quantity", quantity, ""));
        statedDiscount.ifPresent(
                discount -> Figures.zeroOrMore("stated discount", discount, " per litre of pure alcohol"));
        orders = Map.copyOf(orders);
        normalLossShare.ifPresent(share -> underOne("normal loss", share));
        underOne("unsold", unsoldShare);
    }

    private static void underOne(String what, BigDecimal share) {
        if (Figures.zeroOrMore(what, share, "").compareTo(BigDecimal.ONE) >= 0) {
            throw new IllegalArgumentException(what + ": expected a share under 1, found " + Figures.plain(share));
        }
    }

    /**
     * A sheet by the price lists of the day, each supplier's goods in one order.
     *
     * @param currency what the sheet is in
     * @param purchaseQuantities by item, how much is bought at a time
     * @param claimRelief whether relief is claimed
     * @param statedDiscount a discount that the user supplies; empty to work it out
     */
    public CostOptions(
            CurrencyUnit currency,
            Map<String, BigDecimal> purchaseQuantities,
            boolean claimRelief,
            Optional<BigDecimal> statedDiscount) {
        this(
                currency,
                purchaseQuantities,
                claimRelief,
                statedDiscount,
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                ContainerCharges.none(),
                Optional.empty(),
                BigDecimal.ZERO);
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

    /**
     * The same, costed by what materials cost in store.
     *
     * @param basis the store and its basis of cost
     * @return the options with it
     */
    public CostOptions with(StockBasis basis) {
        return new CostOptions(
                currency,
                purchaseQuantities,
                claimRelief,
                statedDiscount,
                orders,
                Optional.of(basis),
                yearVolume,
                containerCharges,
                normalLossShare,
                unsoldShare);
    }

    /**
     * The same with the beer of the year.
     *
     * @param volume the volumes
     * @return the options with it
     */
    public CostOptions with(YearVolume volume) {
        return new CostOptions(
                currency,
                purchaseQuantities,
                claimRelief,
                statedDiscount,
                orders,
                stock,
                Optional.of(volume),
                containerCharges,
                normalLossShare,
                unsoldShare);
    }

    /**
     * The same with loss of containers and fees by weight.
     *
     * @param charges the charges
     * @return the options with it
     */
    public CostOptions with(ContainerCharges charges) {
        return new CostOptions(
                currency,
                purchaseQuantities,
                claimRelief,
                statedDiscount,
                orders,
                stock,
                yearVolume,
                charges,
                normalLossShare,
                unsoldShare);
    }

    /**
     * The same with goods in named orders.
     *
     * @param ordersByItem by item, the name of its order
     * @return the options with it
     */
    public CostOptions withOrders(Map<String, String> ordersByItem) {
        return new CostOptions(
                currency,
                purchaseQuantities,
                claimRelief,
                statedDiscount,
                ordersByItem,
                stock,
                yearVolume,
                containerCharges,
                normalLossShare,
                unsoldShare);
    }

    /**
     * The same with the losses beyond the normal expensed (IAS 2.16).
     *
     * @param share the share of what is collected that normally doesn't reach the racking
     * @return the options with it
     */
    public CostOptions withNormalLoss(BigDecimal share) {
        return new CostOptions(
                currency,
                purchaseQuantities,
                claimRelief,
                statedDiscount,
                orders,
                stock,
                yearVolume,
                containerCharges,
                Optional.of(share),
                unsoldShare);
    }

    /**
     * The same with beer that can be sold and never is.
     *
     * @param share the share of what can be sold
     * @return the options with it
     */
    public CostOptions withUnsold(BigDecimal share) {
        return new CostOptions(
                currency,
                purchaseQuantities,
                claimRelief,
                statedDiscount,
                orders,
                stock,
                yearVolume,
                containerCharges,
                normalLossShare,
                share);
    }
}
