package costrel.pricing;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/**
 * How a foreign currency moved between two cost sheets, and what is bought in it.
 *
 * @param currency the foreign currency
 * @param before what one unit of it cost on the day of the first sheet, in the sheet's currency, more than 0
 * @param after what it cost on the day of the second, more than 0
 * @param items the items that are priced in it, as the sheets name them
 */
public record CurrencyMove(CurrencyUnit currency, BigDecimal before, BigDecimal after, Set<String> items) {

    public CurrencyMove {
        Figures.overZero(currency + ": rate before", before, "");
        Figures.overZero(currency + ": rate after", after, "");
        items = Set.copyOf(items);
        if (items.isEmpty()) {
            throw new IllegalArgumentException(
                    currency + ": expected an item or more that is priced in it, found none");
        }
    }
}
