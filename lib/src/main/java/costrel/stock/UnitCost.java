package costrel.stock;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * What one unit of an item is set to cost from a day on.
 *
 * @param item the item
 * @param from the first day; it holds until the next cost of the item begins
 * @param cost money per unit of the ledger, 0 or more, in the ledger's currency
 * @param origin where the row stands
 */
public record UnitCost(String item, LocalDate from, BigDecimal cost, String origin) {

    public UnitCost {
        item = Figures.named("unit cost: item", item);
        Figures.zeroOrMore("unit cost of " + item, cost, "");
    }
}
