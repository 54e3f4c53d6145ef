package costrel.brewery;

import costrel.cost.CostSheet;
import costrel.pricing.LossWorth;
import java.util.List;

/**
 * What one point of each loss of a gyle is worth.
 *
 * @param sheet the gyle's cost
 * @param rows a row for each step from the FV to what can be sold
 */
public record LossTable(CostSheet sheet, List<LossWorth> rows) {

    public LossTable {
        rows = List.copyOf(rows);
    }
}
