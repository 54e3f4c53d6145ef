package costrel.cost;

import java.util.List;

/**
 * The price chosen for a line, and those that were not.
 *
 * @param row the row that applies
 * @param unitPrice what one unit costs by it, its own delivery included
 * @param passedOver the other rows of the item that apply on the day, in file order
 * @param findings what a buyer should know, such as a larger order that costs less in all
 */
public record Choice(PriceRow row, UnitPrice unitPrice, List<PassedOver> passedOver, List<CostFinding> findings) {

    /**
     * A row that was not chosen.
     *
     * @param row the row
     * @param why the reason, in words
     */
    public record PassedOver(PriceRow row, String why) {}

    public Choice {
        passedOver = List.copyOf(passedOver);
        findings = List.copyOf(findings);
    }
}
