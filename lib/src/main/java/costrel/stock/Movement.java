package costrel.stock;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.joda.money.Money;

/** One row of a stock ledger: what came in, or what went out. */
public sealed interface Movement {

    /**
     * When it moved.
     *
     * @return the day
     */
    LocalDate day();

    /**
     * What moved, such as a material, a hop lot or a container part.
     *
     * @return its name
     */
    String item();

    /**
     * How much moved.
     *
     * @return more than 0, in the unit
     */
    BigDecimal quantity();

    /**
     * What the quantity is counted in.
     *
     * @return such as "kg"; the same for every movement of the item
     */
    String unit();

    /**
     * Where the row stands.
     *
     * @return such as "stock.csv:7"
     */
    String origin();

    /**
     * Goods that came in, or that were there when the ledger begins.
     *
     * @param day when they came in
     * @param item what they are
     * @param quantity how much, more than 0
     * @param unit what the quantity is counted in
     * @param cost what all of it cost brought to the store, 0 or more: purchase price, import duty, tax that can't be
     *     recovered and carriage, less discounts and rebates (IAS 2.11)
     * @param opening whether they were there when the ledger begins; such rows stand before all others of the item
     * @param origin where the row stands
     */
    record Receipt(
            LocalDate day, String item, BigDecimal quantity, String unit, Money cost, boolean opening, String origin)
            implements Movement {

        public Receipt {
            item = Figures.named(origin + ": item", item);
            unit = Figures.named(origin + ": " + item + ": unit", unit);
            Figures.overZero(origin + ": " + item + ": received", quantity, " " + unit);
            if (cost.isNegative()) {
                throw new IllegalArgumentException(
                        origin + ": " + item + ": cost: expected 0 or more, found " + Figures.text(cost));
            }
        }
    }

    /**
     * Goods that were used or sold.
     *
     * @param day when they went out
     * @param item what they are
     * @param quantity how much, more than 0
     * @param unit what the quantity is counted in
     * @param origin where the row stands, or the gyle that took them
     */
    record Issue(LocalDate day, String item, BigDecimal quantity, String unit, String origin) implements Movement {

        public Issue {
            item = Figures.named(origin + ": item", item);
            unit = Figures.named(origin + ": " + item + ": unit", unit);
            Figures.overZero(origin + ": " + item + ": issued", quantity, " " + unit);
        }
    }
}
