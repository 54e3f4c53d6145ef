package costrel.report;

import costrel.harvest.HarvestPlan;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * A harvest plan by the month: what each lot gives from the first gyle to the last.
 *
 * @param months every month from the first gyle to the last, with those between that brew nothing
 * @param lots the lots that are used, in the order of the plan
 */
public record HopMonths(List<YearMonth> months, List<Lot> lots) {

    /**
     * A lot over the months.
     *
     * @param lot the lot
     * @param variety its variety
     * @param kg weight as weighed out, one for each month
     */
    public record Lot(String lot, String variety, List<Double> kg) {
        public Lot {
            kg = List.copyOf(kg);
        }

        /**
         * All of it.
         *
         * @return kg over all months
         */
        public double totalKg() {
            return kg.stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    public HopMonths {
        months = List.copyOf(months);
        lots = List.copyOf(lots);
    }

    /**
     * Sums a plan up.
     *
     * @param plan the plan
     * @return the weights by lot and month; nothing where there is no plan
     */
    public static HopMonths of(HarvestPlan plan) {
        TreeMap<YearMonth, Integer> used = new TreeMap<>();
        plan.allocations().forEach(line -> used.put(YearMonth.from(line.day()), 0));
        List<YearMonth> months = new ArrayList<>();
        if (!used.isEmpty()) {
            for (YearMonth month = used.firstKey(); !month.isAfter(used.lastKey()); month = month.plusMonths(1)) {
                months.add(month);
            }
        }
        List<Lot> lots = new ArrayList<>();
        for (HarvestPlan.LotUse lot : plan.lots()) {
            List<Double> kg = months.stream()
                    .map(month -> plan.allocations().stream()
                            .filter(line -> line.lot().equals(lot.lot()))
                            .filter(line -> YearMonth.from(line.day()).equals(month))
                            .mapToDouble(HarvestPlan.Allocation::weighedKg)
                            .sum())
                    .toList();
            if (kg.stream().anyMatch(weight -> weight > 0)) {
                lots.add(new Lot(lot.lot(), lot.variety(), kg));
            }
        }
        return new HopMonths(months, lots);
    }
}
