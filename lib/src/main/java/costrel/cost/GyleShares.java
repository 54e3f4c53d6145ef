package costrel.cost;

import costrel.figures.Rounded;
import costrel.packaging.PackagingRun;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import org.joda.money.Money;

/**
 * The gyle's cost shared over the container types that were filled, by what the plan gives each. The share of a type of
 * which not one was filled goes where its beer went: to the next smaller type that was filled.
 */
final class GyleShares {

    /**
     * What one container type bears.
     *
     * @param filled the containers
     * @param part the share of the gyle
     * @param money the share of its cost
     */
    record Share(PackagingRun.Filled filled, BigDecimal part, Money money) {}

    private GyleShares() {}

    /** The shares of the types that were filled, in the plan's order. */
    static List<Share> of(PackagingRun run, Money gyleCost) {
        IdentityHashMap<PackagingRun.Filled, BigDecimal> parts = parts(run);
        List<PackagingRun.Filled> inPlanOrder = new ArrayList<>(run.filled());
        inPlanOrder.removeIf(filled -> !parts.containsKey(filled));
        List<Share> shares = new ArrayList<>();
        Money left = gyleCost;
        for (int i = 0; i < inPlanOrder.size(); i++) {
            PackagingRun.Filled filled = inPlanOrder.get(i);
            BigDecimal part = parts.getOrDefault(filled, BigDecimal.ZERO);
            boolean last = i == inPlanOrder.size() - 1;
            Money money = last ? left : gyleCost.multipliedBy(part, RoundingMode.HALF_UP);
            left = left.minus(money);
            shares.add(new Share(filled, part, money));
        }
        return shares;
    }

    private static IdentityHashMap<PackagingRun.Filled, BigDecimal> parts(PackagingRun run) {
        List<PackagingRun.Filled> largestFirst = new ArrayList<>(run.filled());
        largestFirst.sort(Comparator.comparing((PackagingRun.Filled filled) ->
                        filled.plan().container().nominalL())
                .reversed());
        IdentityHashMap<PackagingRun.Filled, BigDecimal> parts =
                new IdentityHashMap<>(run.filled().size());
        BigDecimal unfilled = BigDecimal.ZERO;
        PackagingRun.Filled smallest = largestFirst.get(0);
        for (PackagingRun.Filled filled : largestFirst) {
            BigDecimal part = unfilled.add(Rounded.decimal(filled.plan().share()));
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
