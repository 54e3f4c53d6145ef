package costrel.buying;

import costrel.figures.Figures;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * A surcharge or a rebate that a supplier puts on prices: so many per cent of the price, or so much a unit. Below 0 it is
 * a rebate. It is without value added tax and counts when suppliers are compared.
 *
 * @param name what it is called, such as energy surcharge
 * @param supplier whose prices it is on
 * @param item the one item it is on; empty for all that the supplier sells
 * @param percent per cent of the price of a pack, its delivery not included; 0 where it goes by the unit
 * @param perUnit money per unit, 0 where it goes by per cent
 * @param unit what it goes by; items sold by another unit don't bear it; empty where it goes by per cent
 * @param currency what the money is in; empty where it goes by per cent
 * @param validFrom the first day it applies
 * @param validUntil the last day it applies, that day included; empty where no end is known
 * @param origin where the row stands
 */
public record PriceAdjustment(
        String name,
        String supplier,
        Optional<String> item,
        BigDecimal percent,
        BigDecimal perUnit,
        Optional<PackUnit> unit,
        Optional<CurrencyUnit> currency,
        LocalDate validFrom,
        Optional<LocalDate> validUntil,
        String origin) {

    public PriceAdjustment {
        name = Figures.named(origin + ": surcharge or rebate", name);
        supplier = Figures.named(origin + ": " + name + ": supplier", supplier);
        if ((percent.signum() == 0) == (perUnit.signum() == 0)) {
            throw new IllegalArgumentException(
                    origin + ": " + name + ": expected either per cent or an amount per unit, found "
                            + (percent.signum() == 0 ? "neither" : "both"));
        }
        if (percent.compareTo(Figures.HUNDRED.negate()) <= 0) {
            throw new IllegalArgumentException(
                    origin + ": " + name + ": rebate: expected under 100 %, found " + Figures.plain(percent.negate()));
        }
        if ((perUnit.signum() != 0) != (unit.isPresent() && currency.isPresent())) {
            throw new IllegalArgumentException(
                    origin + ": " + name + ": expected a unit and a currency with an amount per unit and only there");
        }
        Figures.ordered(origin + ": " + name, validFrom, validUntil);
    }

    /**
     * So many per cent of the price.
     *
     * @param name what it is called
     * @param supplier whose prices it is on
     * @param item the one item it is on; empty for all
     * @param percent more than -100 and not 0; below 0 a rebate
     * @param validFrom the first day
     * @param validUntil the last day; empty where no end is known
     * @param origin where the row stands
     * @return the adjustment
     */
    public static PriceAdjustment percent(
            String name,
            String supplier,
            Optional<String> item,
            BigDecimal percent,
            LocalDate validFrom,
            Optional<LocalDate> validUntil,
            String origin) {
        return new PriceAdjustment(
                name,
                supplier,
                item,
                percent,
                BigDecimal.ZERO,
                Optional.empty(),
                Optional.empty(),
                validFrom,
                validUntil,
                origin);
    }

    boolean on(PriceRow row, LocalDate day) {
        return Figures.holds(validFrom, validUntil, day)
                && Names.folded(supplier).equals(Names.folded(row.supplier()))
                && (item.isEmpty() || Names.folded(item.get()).equals(Names.folded(row.item())))
                && (unit.isEmpty() || unit.get() == row.pack().unit());
    }

    /** The adjustment in words. */
    String note() {
        boolean rebate = percent.signum() < 0 || perUnit.signum() < 0;
        String amount = percent.signum() != 0
                ? Figures.plain(percent.abs()) + " %"
                : Figures.plain(perUnit.abs()) + " " + currency.orElseThrow() + " per "
                        + unit.orElseThrow().label();
        return name + ": " + (rebate ? "less " : "plus ") + amount + " (" + origin + ")";
    }
}
