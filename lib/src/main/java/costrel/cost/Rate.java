package costrel.cost;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * A cost that isn't bought by the pack: energy, labour, overhead, and what spent grain brings in.
 *
 * @param item what it is called
 * @param group what it pays for
 * @param amount money per unit of the basis, 0 or more; a credit too is a positive amount
 * @param currency what the amount is in
 * @param basis what it is charged by
 * @param fixed whether it is there however much is brewed; else it varies with output
 * @param validFrom the first day it applies
 * @param validUntil the last day it applies, that day included; empty where no end is known
 * @param origin where the row stands, such as "rates.csv:4"
 */
public record Rate(
        String item,
        RateGroup group,
        BigDecimal amount,
        CurrencyUnit currency,
        RateBasis basis,
        boolean fixed,
        LocalDate validFrom,
        Optional<LocalDate> validUntil,
        String origin) {

    public Rate {
        item = Figures.named("rate: item", item);
        Figures.zeroOrMore("rate of " + item, amount, "");
        Figures.ordered("rate of " + item, validFrom, validUntil);
    }

    /**
     * Whether the rate applies on a day.
     *
     * @param day the day, both ends of the validity included
     * @return true when it does
     */
    public boolean holdsOn(LocalDate day) {
        return Figures.holds(validFrom, validUntil, day);
    }
}
