package costrel.buying;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * One row of a supplier's price list. Prices are without value added tax unless the row says otherwise.
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
 * @param vat value added tax on the price and the delivery; empty where they are without it and it can be recovered
 * @param contractQuantity what is left to draw under a contract at this price, in the pack's unit; it is drawn before
 *     anything is bought at another price; empty for a price that isn't contracted
 * @param place where the row stands
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
        Optional<PriceVat> vat,
        Optional<BigDecimal> contractQuantity,
        Origin place) {

    public PriceRow {
        item = Figures.named("price: item", item);
        String named = item;
        supplier = Figures.named(() -> "price of " + named + ": supplier", supplier);
        // A million of these are made at once: words are put together for a row that is refused, and nothing for the
        // others.
        if (price.signum() <= 0) {
            Figures.overZero("price of " + item, price, "");
        }
        if (validUntil.isPresent()) {
            Figures.ordered(() -> "price of " + named, validFrom, validUntil);
        }
        if (minimumQuantity.signum() < 0) {
            Figures.zeroOrMore(
                    "price of " + item + ": minimum quantity",
                    minimumQuantity,
                    " " + pack.unit().label());
        }
        if (deliveryPerPack.signum() < 0) {
            Figures.zeroOrMore("price of " + item + ": delivery", deliveryPerPack, "");
        }
        if (contractQuantity.isPresent()) {
            Figures.overZero(
                    () -> "price of " + named + ": contract quantity",
                    contractQuantity.get(),
                    () -> " " + pack.unit().label());
        }
    }

    /**
     * A row without value added tax and without a contract.
     *
     * @param item what is bought
     * @param supplier who sells it
     * @param pack what one price buys
     * @param price what one pack costs, more than 0
     * @param currency what the price and the delivery are in
     * @param validFrom the first day the price applies
     * @param validUntil the last day it applies; empty where no end is known
     * @param minimumQuantity the least order it applies to, in the pack's unit
     * @param deliveryPerPack what the supplier adds for bringing one pack
     * @param origin where the row stands
     */
    public PriceRow(
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
        this(
                item,
                supplier,
                pack,
                price,
                currency,
                validFrom,
                validUntil,
                minimumQuantity,
                deliveryPerPack,
                Optional.empty(),
                Optional.empty(),
                Origin.of(origin));
    }

    /**
     * A row with its place in words.
     *
     * @param item what is bought
     * @param supplier who sells it
     * @param pack what one price buys
     * @param price what one pack costs, more than 0
     * @param currency what the price and the delivery are in
     * @param validFrom the first day the price applies
     * @param validUntil the last day it applies; empty where no end is known
     * @param minimumQuantity the least order it applies to, in the pack's unit
     * @param deliveryPerPack what the supplier adds for bringing one pack
     * @param vat value added tax on the price and the delivery; empty where they are without it
     * @param contractQuantity what is left to draw under a contract; empty for a price that isn't contracted
     * @param origin where the row stands, such as "prices-2026.csv:7"
     */
    public PriceRow(
            String item,
            String supplier,
            Pack pack,
            BigDecimal price,
            CurrencyUnit currency,
            LocalDate validFrom,
            Optional<LocalDate> validUntil,
            BigDecimal minimumQuantity,
            BigDecimal deliveryPerPack,
            Optional<PriceVat> vat,
            Optional<BigDecimal> contractQuantity,
            String origin) {
        this(
                item,
                supplier,
                pack,
                price,
                currency,
                validFrom,
                validUntil,
                minimumQuantity,
                deliveryPerPack,
                vat,
                contractQuantity,
                Origin.of(origin));
    }

    /**
     * Where the row stands, in words.
     *
     * @return such as "prices-2026.csv:7"
     */
    public String origin() {
        return place.text();
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
     * What one unit costs brought to the brewery, without surcharges and rebates.
     *
     * @return price and delivery of a pack over its content, with only such tax as can't be recovered
     */
    public UnitPrice landed() {
        return landed(Figures.HUNDRED, BigDecimal.ZERO);
    }

    /** The same with the price at so many per cent, and so much more a unit, which is without tax. */
    UnitPrice landed(BigDecimal percent, BigDecimal perUnit) {
        BigDecimal including =
                vat.filter(PriceVat::included).map(PriceVat::factor).orElse(BigDecimal.ONE);
        BigDecimal kept =
                vat.filter(tax -> !tax.recoverable()).map(PriceVat::factor).orElse(BigDecimal.ONE);
        BigDecimal content = pack.content().multiply(including);
        BigDecimal amount = price.multiply(percent)
                .movePointLeft(2)
                .add(deliveryPerPack)
                .add(perUnit.multiply(content))
                .multiply(kept);
        return new UnitPrice(amount, content, pack.unit().label());
    }
}
