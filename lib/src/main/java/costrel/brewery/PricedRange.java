package costrel.brewery;

import costrel.cost.ContainerCost;
import costrel.cost.CostSheet;
import costrel.measure.Amounts;
import costrel.pricing.ListPrice;
import costrel.pricing.Pricing;
import costrel.pricing.RangeView;
import costrel.pricing.UnitCost;
import costrel.recipe.Names;
import costrel.scaling.Gyle;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The range of list-prices.csv: every beer costed on its plant on one day, at the prices it is sold for.
 *
 * @param day the day whose prices, hops and duty it goes by
 * @param view the beers and containers side by side
 * @param remarks what stands in the way of one of its gyles, in words
 */
public record PricedRange(LocalDate day, RangeView view, List<String> remarks) {

    public PricedRange {
        remarks = List.copyOf(remarks);
    }

    /**
     * Costs and prices the range of a brewery. A price under variable cost is shown and not refused: it is one that is
     * charged.
     *
     * @param brewery the brewery
     * @param day the day to cost by
     * @return the range
     * @throws IllegalArgumentException if list-prices.csv is empty, a beer isn't filled into a container that is priced, or
     *     a figure is missing
     */
    public static PricedRange of(Brewery brewery, LocalDate day) {
        if (brewery.listPrices().isEmpty()) {
            throw new IllegalArgumentException(
                    "range: expected a beer and container or more in list-prices.csv, found none");
        }
        Map<String, CostSheet> sheets = new LinkedHashMap<>();
        Set<String> remarks = new LinkedHashSet<>();
        List<RangeView.Sold> range = new ArrayList<>();
        for (ListPrice line : brewery.listPrices()) {
            Brew brew = brewery.brew(line.beer())
                    .on(line.plant())
                    .length(Amounts.ofLitres(line.litres()))
                    .day(day);
            String key = Names.folded(line.beer()) + "|" + Names.folded(line.plant()) + "|" + line.litres();
            CostSheet sheet = sheets.get(key);
            if (sheet == null) {
                Gyle gyle = brew.gyle();
                if (gyle.limited()) {
                    remarks.add(gyle.beerName() + ": a gyle of that length doesn't fit "
                            + gyle.plant().name() + "; see its brew sheet");
                }
                sheet = brew.costOf(gyle);
                sheets.put(key, sheet);
            }
            ContainerCost container = Terms.container(sheet, line.container());
            range.add(new RangeView.Sold(
                    Pricing.of(UnitCost.of(sheet, container))
                            .evenUnderVariableCost()
                            .at(line.price()),
                    line.sold()));
        }
        return new PricedRange(day, RangeView.of(range), List.copyOf(remarks));
    }
}
