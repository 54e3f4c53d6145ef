package costrel.stock;

import costrel.explain.Explanation;
import costrel.figures.Figures;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * One item of the ledger, valued: opening + receipts = issues + closing + difference, to the penny.
 *
 * @param item what it is
 * @param unit what its quantities are counted in
 * @param valuation the basis of cost
 * @param openingQuantity what was there at first
 * @param opening what that had cost
 * @param receivedQuantity what came in
 * @param received what that cost
 * @param issues each issue with its cost, in the order of their days
 * @param closingQuantity what is left
 * @param closing what that is valued at
 * @param difference what neither went out nor stayed: the variance of a standard cost, the holding loss of replacement,
 *     below 0 where less was paid than they say; 0.00 where the basis is what was paid
 */
public record ItemStock(
        String item,
        String unit,
        Valuation valuation,
        BigDecimal openingQuantity,
        Money opening,
        BigDecimal receivedQuantity,
        Money received,
        List<IssueCost> issues,
        BigDecimal closingQuantity,
        Money closing,
        Money difference) {

    public ItemStock {
        issues = List.copyOf(issues);
    }

    /**
     * What all issues cost.
     *
     * @return the sum of their values
     */
    public Money issued() {
        Money sum = Money.zero(opening.getCurrencyUnit());
        for (IssueCost issue : issues) {
            sum = sum.plus(issue.value());
        }
        return sum;
    }

    /**
     * The closing stock as the opening row of the next ledger.
     *
     * @param day the day the next ledger begins
     * @param origin where the row shall say that it stands
     * @return the row
     * @throws IllegalArgumentException when nothing is left
     */
    public Movement.Receipt carriedOn(LocalDate day, String origin) {
        return new Movement.Receipt(day, item, closingQuantity, unit, closing, true, origin);
    }

    /**
     * How the value came about.
     *
     * @return the tree
     */
    public Explanation explanation() {
        List<Explanation> parts = new ArrayList<>();
        parts.add(Explanation.of("opening", Figures.text(opening), amount(openingQuantity)));
        parts.add(Explanation.of("receipts", Figures.text(received), amount(receivedQuantity)));
        for (IssueCost issue : issues) {
            String residue =
                    issue.residue().isZero() ? "" : ", with " + Figures.text(issue.residue()) + " of roundings";
            parts.add(Explanation.of(
                    "issue of " + issue.issue().day(),
                    Figures.text(issue.value()),
                    amount(issue.issue().quantity()) + ", unrounded " + Carried.shown(issue.unrounded()) + residue
                            + "; " + issue.issue().origin().replaceAll("\\p{Cntrl}+", " ")));
        }
        if (!valuation.differenceLabel().isEmpty()) {
            parts.add(Explanation.leaf(valuation.differenceLabel(), Figures.text(difference)));
        }
        return new Explanation(
                "stock of " + item,
                Figures.text(closing),
                amount(closingQuantity) + " by " + valuation.label() + ": opening + receipts − issues"
                        + (valuation.differenceLabel().isEmpty() ? "" : " − " + valuation.differenceLabel()),
                parts);
    }

    private String amount(BigDecimal quantity) {
        return Figures.plain(quantity) + " " + unit;
    }
}
