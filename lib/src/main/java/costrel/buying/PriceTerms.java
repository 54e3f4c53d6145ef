package costrel.buying;

import costrel.figures.Figures;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;

/**
 * What makes a printed price what is paid: surcharges and rebates, carriage, rates of exchange.
 *
 * @param adjustments surcharges and rebates, in file order
 * @param carriages charges by the order or the pallet
 * @param exchange rates of exchange
 */
public record PriceTerms(List<PriceAdjustment> adjustments, List<Carriage> carriages, ExchangeRates exchange) {

    public PriceTerms {
        adjustments = List.copyOf(adjustments);
        carriages = List.copyOf(carriages);
    }

    /**
     * Nothing beside the prices.
     *
     * @return the terms of lists that say all
     */
    public static PriceTerms none() {
        return new PriceTerms(List.of(), List.of(), ExchangeRates.none());
    }

    /**
     * What one unit of a row costs and how that came about.
     *
     * @param price money per unit, exact
     * @param notes what was done to the printed price, in words
     */
    record Landed(UnitPrice price, List<String> notes) {}

    /** Whether a row's currency can be turned into the sheet's at all. */
    boolean canTurn(CurrencyUnit from, CurrencyUnit to) {
        return from.equals(to) || !exchange.rates().isEmpty();
    }

    /**
     * Price, surcharges less rebates, delivery and tax of a row, per unit, in a currency.
     *
     * @throws IllegalArgumentException when rebates take the whole price or the table of exchange has a hole
     */
    Landed landed(PriceRow row, LocalDate day, CurrencyUnit currency) {
        List<String> notes = new ArrayList<>();
        BigDecimal percent = Figures.HUNDRED;
        BigDecimal perUnit = BigDecimal.ZERO;
        Map<String, PriceAdjustment> seen = new HashMap<>();
        for (PriceAdjustment adjustment : adjustments) {
            if (!adjustment.on(row, day)) {
                continue;
            }
            PriceAdjustment other = seen.put(Names.folded(adjustment.name()), adjustment);
            if (other != null) {
                throw new IllegalArgumentException("two surcharges or rebates that both apply on " + day + ": "
                        + other.origin() + " and " + adjustment.origin() + ", " + adjustment.name() + " of "
                        + adjustment.supplier() + " on " + row.item()
                        + "; end the earlier one before the later one begins");
            }
            if (adjustment.currency().isPresent()
                    && !adjustment.currency().get().equals(row.currency())) {
                throw new IllegalArgumentException(adjustment.origin() + ": " + adjustment.name() + ": expected an"
                        + " amount in " + row.currency() + " as the price of " + row.origin() + ", found "
                        + adjustment.currency().get());
            }
            percent = percent.add(adjustment.percent());
            perUnit = perUnit.add(adjustment.perUnit());
            notes.add(adjustment.note());
        }
        UnitPrice price = row.landed(percent, perUnit);
        if (price.amount().signum() <= 0) {
            throw new IllegalArgumentException(row.origin() + ": price of " + row.item()
                    + ": expected more than 0 after rebates, found " + Figures.rounded(price.value(), 6) + " "
                    + row.currency() + " per " + price.unit() + "; " + String.join("; ", notes));
        }
        row.vat().map(PriceVat::note).filter(note -> !note.isEmpty()).ifPresent(notes::add);
        if (!row.currency().equals(currency)) {
            ExchangeRate rate = exchange.on(row.currency(), currency, day);
            notes.add("1 " + rate.from() + " = " + Figures.plain(rate.rate()) + " " + rate.to() + " of " + rate.day()
                    + " (" + rate.origin() + ")");
            price = exchange.turned(price, row.currency(), currency, day);
        }
        return new Landed(price, notes);
    }
}
