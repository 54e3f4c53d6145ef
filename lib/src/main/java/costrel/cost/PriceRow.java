package costrel.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * One row of a supplier's price list. Prices are without value added tax.
 *
 * @param item what is bought: a material, a hop lot, a container part
 * @param supplier who sells it
 * @param pack what one price buys
 * @param price what one pack costs, more than 0, in any number of decimals
 * @param currency what the price and the delivery are in
 * @param validFrom the first day the price applies
 * @param validUntil the last day it applies, that day included; empty where no end is known
 * @param minimumQuantity the least order it applies to, in the pack's unit, 0 where there is none
 * @param deliveryPerPack what the supplier adds for bringing one pack, 0 where nothing
 * @param origin where the row stands, such as "prices-2026.csv:7"
 */
public record PriceRow(
        String item,
        String supplier,
        Pack pack,
        BigDecimal price,
        CurrencyUnit currency,
        LocalDate validFrom,
        Optional<LocalDate> validUntil,
        BigDecimal minimumQuantity,
        BigDecimal deliveryPerPack,
        String origin) {

    public PriceRow {
        item = Figures.named("price: item", item);
        supplier = Figures.named("price of " + item + ": supplier", supplier);
        Figures.overZero("price of " + item, price, "");
        Figures.ordered("price of " + item, validFrom, validUntil);
        Figures.zeroOrMore(
                "price of " + item + ": minimum quantity",
                minimumQuantity,
                " " + pack.unit().label());
        Figures.zeroOrMore("price of " + item + ": delivery", deliveryPerPack, "");
    }

    /**
     * Whether the price applies on a day.
     *
     * @param day the day, both ends of the validity included
     * @return true when it does
     */
    public boolean holdsOn(LocalDate day) {
        return Figures.holds(validFrom, validUntil, day);
    }

    /**
     * What one unit costs brought to the brewery.
     *
     * @return price and delivery of a pack over its content
     */
    public UnitPrice landed() {
        return new UnitPrice(
                price.add(deliveryPerPack), pack.content(), pack.unit().label());
    }
}
