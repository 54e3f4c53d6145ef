package costrel.brewery;

import costrel.cost.CostGroup;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.pricing.Comparison;
import costrel.pricing.ComparisonOptions;
import costrel.pricing.CurrencyMove;
import costrel.recipe.Names;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Compares cost sheets of a brewery: hop lots of one variety stand for the same item, so that a new harvest is no new hop, and
 * what is bought in foreign money has its rates of exchange told apart from its price.
 */
public final class WhyItMoved {

    /** What a line of carriage is called, before the goods that it is for. */
    private static final String CARRIAGE = "carriage on ";

    private WhyItMoved() {}

    /**
     * Why a pint of one sheet costs more or less than a pint of another.
     *
     * @param brewery the brewery, whose hop varieties are known
     * @param before the sheet that is compared with
     * @param after the sheet whose cost is to be explained
     * @param currencies foreign currencies that moved, with what is bought in each; none to take those of the price lists
     * @return the comparison
     * @throws IllegalArgumentException if the sheets are in two currencies
     */
    public static Comparison between(Brewery brewery, CostSheet before, CostSheet after, CurrencyMove... currencies) {
        List<CurrencyMove> moves =
                currencies.length > 0 ? List.of(currencies) : ForeignMoney.moves(brewery, before, after);
        return Comparison.between(before, after, new ComparisonOptions(sameAs(brewery, before, after), moves));
    }

    /**
     * Lots of the second sheet with a lot of the same variety on the first. Where the first sheet has several, a lot that is
     * on both stays itself and a new one stands for the first of them.
     */
    private static Map<String, String> sameAs(Brewery brewery, CostSheet before, CostSheet after) {
        List<String> varieties = brewery.catalogue().varieties().keySet().stream()
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
        Map<String, String> first = new HashMap<>();
        Map<String, String> old = new HashMap<>();
        for (CostLine line : hops(before)) {
            old.put(Names.folded(line.item()), line.item());
            variety(varieties, line.item()).ifPresent(variety -> first.putIfAbsent(variety, line.item()));
        }
        Map<String, String> sameAs = new HashMap<>();
        for (CostLine line : hops(after)) {
            if (!old.containsKey(Names.folded(line.item()))) {
                variety(varieties, line.item()).map(first::get).ifPresent(item -> sameAs.put(line.item(), item));
            }
        }
        return sameAs;
    }

    private static List<CostLine> hops(CostSheet sheet) {
        return sheet.gyleLines().stream()
                .filter(line -> line.group() == CostGroup.HOPS)
                .toList();
    }

    private static Optional<String> variety(List<String> varieties, String item) {
        String carriage = item.startsWith(CARRIAGE) ? CARRIAGE : "";
        return varieties.stream()
                .filter(variety ->
                        Names.folded(item.substring(carriage.length())).startsWith(Names.folded(variety)))
                .map(variety -> carriage + variety)
                .findFirst();
    }
}
