package costrel.cost;

import costrel.recipe.Names;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Looks for quantity breaks that make a larger order dearer by the unit. */
final class PriceBreaks {

    private PriceBreaks() {}

    static List<CostFinding> outOfOrder(PriceList prices) {
        List<CostFinding> findings = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (PriceRow row : prices.rows()) {
            if (seen.add(Names.folded(row.item()))) {
                findings.addAll(ofItem(prices.rowsOf(row.item())));
            }
        }
        return findings;
    }

    private static List<CostFinding> ofItem(List<PriceRow> rows) {
        List<CostFinding> findings = new ArrayList<>();
        Map<String, List<PriceRow>> bySupplier = new HashMap<>();
        for (PriceRow row : rows) {
            if (row.contractQuantity().isPresent()) {
                continue;
            }
            List<PriceRow> before = bySupplier.computeIfAbsent(
                    Names.folded(row.supplier()) + "|" + row.currency() + "|"
                            + row.pack().unit(),
                    key -> new ArrayList<>());
            for (PriceRow other : before) {
                boolean otherIsLess = other.minimumQuantity().compareTo(row.minimumQuantity()) < 0;
                PriceRow less = otherIsLess ? other : row;
                PriceRow more = otherIsLess ? row : other;
                if (less.minimumQuantity().compareTo(more.minimumQuantity()) < 0
                        && (less.holdsOn(more.validFrom()) || more.holdsOn(less.validFrom()))
                        && more.landed().compareTo(less.landed()) > 0) {
                    findings.add(new CostFinding(
                            more.item() + " from " + more.supplier() + ": the price for "
                                    + Figures.plain(more.minimumQuantity()) + " "
                                    + more.pack().unit().label() + " or more (" + more.origin()
                                    + ") is dearer than that for less (" + less.origin() + ")",
                            "check the price list"));
                }
            }
            before.add(row);
        }
        return findings;
    }
}
