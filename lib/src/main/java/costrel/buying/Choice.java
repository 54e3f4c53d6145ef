package costrel.buying;

import costrel.explain.CostFinding;
import java.util.List;

/**
 * The price chosen for a line, and those that were not.
 *
 * @param row the row that applies
 * @param unitPrice what one unit costs by it, with delivery, surcharges less rebates, in the currency of the sheet
 * @param passedOver the other rows of the item that apply on the day, in file order
 * @param findings what a buyer should know, such as a larger order that costs less in all
 * @param notes what was done to the printed price, in words: surcharges, rebates, tax, rate of exchange
 */
public record Choice(
        PriceRow row,
        UnitPrice unitPrice,
        List<PassedOver> passedOver,
        List<CostFinding> findings,
        List<String> notes) {

    /**
     * A row that was not chosen.
     *
     * @param row the row
     * @param why the reason, in words
     * @param unitPrice what one unit would have cost by it, in the currency of the sheet; in the row's own where that
     *     can't be told
     */
    public record PassedOver(PriceRow row, String why, UnitPrice unitPrice) {}

    public Choice {
        passedOver = List.copyOf(passedOver);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
    }
}
