package costrel.buying;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * What a supplier charges for bringing an order, beside the prices, without value added tax.
 *
 * @param supplier who brings it
 * @param amount the charge, more than 0: for the order, or for each pallet that is begun
 * @param currency what it is in
 * @param pallet how much of the goods goes on a pallet, such as 1000 kg; empty where the charge is for the order
 * @param validFrom the first day it applies
 * @param validUntil the last day it applies, that day included; empty where no end is known
 * @param origin where the row stands
 */
public record Carriage(
        String supplier,
        BigDecimal amount,
        CurrencyUnit currency,
        Optional<Pack> pallet,
        LocalDate validFrom,
        Optional<LocalDate> validUntil,
        String origin) {

    public Carriage {
        supplier = Figures.named(origin + ": carriage: supplier", supplier);
        Figures.overZero(origin + ": carriage of " + supplier, amount, "");
        Figures.ordered(origin + ": carriage of " + supplier, validFrom, validUntil);
    }

    /**
     * Whether the charge is made on a day.
     *
     * @param day the day, both ends included
     * @return true when it is
     */
    public boolean holdsOn(LocalDate day) {
        return Figures.holds(validFrom, validUntil, day);
    }
}
