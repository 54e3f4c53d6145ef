package costrel.cost;

import costrel.packaging.PackagingRun;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/**
 * The gyle's cost shared over the container types that were filled, by what the plan gives each. The share of a type of
 * which not one was filled goes where its beer went: to the next smaller type that was filled.
 */
final class GyleShares {

    /**
     * What one container type bears.
     *
     * @param part the share of the gyle
     * @param money the share of its cost
     */
    record Share(BigDecimal part, Money money) {}

    private GyleShares() {}

    static Map<PackagingRun.Filled, Share> of(PackagingRun run, Money gyleCost) {
        Map<PackagingRun.Filled, BigDecimal> parts = parts(run);
        List<PackagingRun.Filled> inPlanOrder =
                run.filled().stream().filter(parts::containsKey).toList();
        Map<PackagingRun.Filled, Share> shares = new LinkedHashMap<>();
        Money left = gyleCost;
        for (int i = 0; i < inPlanOrder.size(); i++) {
            PackagingRun.Filled filled = inPlanOrder.get(i);
            BigDecimal part = parts.getOrDefault(filled, BigDecimal.ZERO);
            boolean last = i == inPlanOrder.size() - 1;
            Money money = last ? left : gyleCost.multipliedBy(part, RoundingMode.HALF_UP);
            left = left.minus(money);
            shares.put(filled, new Share(part, money));
        }
        return shares;
    }

    private static Map<PackagingRun.Filled, BigDecimal> parts(PackagingRun run) {
        List<PackagingRun.Filled> largestFirst = new ArrayList<>(run.filled());
        largestFirst.sort(Comparator.comparing((PackagingRun.Filled filled) ->
                        filled.plan().container().nominalL())
                .reversed());
        Map<PackagingRun.Filled, BigDecimal> parts = new HashMap<>();
        BigDecimal unfilled = BigDecimal.ZERO;
        PackagingRun.Filled smallest = largestFirst.get(0);
        for (PackagingRun.Filled filled : largestFirst) {
            BigDecimal part = unfilled.add(BigDecimal.valueOf(filled.plan().share()));
            if (filled.count() > 0) {
                parts.put(filled, part);
                smallest = filled;
                unfilled = BigDecimal.ZERO;
            } else {
                unfilled = part;
            }
        }
        parts.merge(smallest, unfilled, BigDecimal::add);
        return parts;
    }
}
