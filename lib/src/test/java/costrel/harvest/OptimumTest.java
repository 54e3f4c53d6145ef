package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import costrel.hops.HopForm;
import costrel.recipe.Holds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The planner against exhaustive search: a linear program has its best answer in a corner, and these are small enough to visit
 * every corner. The rows are written down here afresh from the rules of the trade.
 */
class OptimumTest {

    private static final long SEED = Long.getLong("seed", 20261125L);
    private static final int CASES = 600;
    private static final double EQUAL = 1e-6;

    @Test
    void the_least_cost_is_that_of_the_best_corner() {
        int feasible = 0;
        for (int i = 0; i < CASES; i++) {
            long seed = SEED + i;
            Case trial = new Case(new Random(seed));
            OptionalDouble best = trial.bestCorner();
            HarvestPlan plan = HarvestPlanner.plan(trial.gyles, trial.lots, trial.rules, Objective.LEAST_COST);
            String at = "repeat with -Dseed=" + seed;
            assertEquals(
                    best.isPresent() ? HarvestPlan.Status.OPTIMAL : HarvestPlan.Status.INFEASIBLE, plan.status(), at);
            if (best.isPresent()) {
                feasible++;
                double cost = plan.cost().orElseThrow();
                assertEquals(best.getAsDouble(), cost, EQUAL * Math.max(1, best.getAsDouble()), at);
                trial.assertHolds(plan, at);
            } else {
                assertTrue(!plan.shortfalls().isEmpty(), at);
            }
        }
        assertTrue(feasible > CASES / 4 && feasible < CASES, feasible + " of " + CASES + " have a plan");
    }

    /** A small harvest, and the same as rows a·x ≤ b and a·x = b. */
    private static final class Case {
        private final List<PlanGyle> gyles = new ArrayList<>();
        private final List<PlanLot> lots = new ArrayList<>();
        private final PlanRules rules;
        private final List<double[]> most = new ArrayList<>();
        private final List<double[]> equal = new ArrayList<>();
        private final double[] price;
        private final int columns;

        Case(Random random) {
            int lotCount = 2 + random.nextInt(2);
            int additions = lotCount == 2 ? 1 + random.nextInt(2) : 1;
            int gyleCount = lotCount * additions <= 3 ? 1 + random.nextInt(2) : 1;
            columns = lotCount * additions * gyleCount;
            double share = random.nextBoolean() ? 1 : 0.5 + random.nextDouble() * 0.4;
            rules = new PlanRules(share, Double.POSITIVE_INFINITY, 1, 0, AlphaMethodFactors.NONE);
            double[] alpha = new double[lotCount];
            double[] stock = new double[lotCount];
            boolean[] leaf = new boolean[lotCount];
            price = new double[columns];
            for (int l = 0; l < lotCount; l++) {
                alpha[l] = 0.03 + random.nextDouble() * 0.09;
                stock[l] = random.nextInt(6) == 0 ? 0 : random.nextDouble() * 12;
                leaf[l] = random.nextInt(3) > 0;
                double pricePerKg = 10 + random.nextDouble() * 15;
                for (int c = l; c < columns; c += lotCount) {
                    price[c] = pricePerKg;
                }
                lots.add(new PlanLot(
                        "L" + l,
                        "Fuggle",
                        leaf[l] ? HopForm.LEAF : HopForm.T90,
                        2026,
                        Plans.NEW_YEAR.minusMonths(3),
                        AlphaMethod.LEAD_CONDUCTANCE,
                        Map.of("G1", alpha[l], "G2", alpha[l]),
                        OptionalDouble.empty(),
                        stock[l],
                        OptionalDouble.empty(),
                        OptionalDouble.of(pricePerKg)));
            }
            for (int g = 0; g < gyleCount; g++) {
                gyle(random, g, additions, lotCount, alpha, leaf, share);
            }
            for (int l = 0; l < lotCount; l++) {
                double[] row = new double[columns + 1];
                for (int c = l; c < columns; c += lotCount) {
                    row[c] = 1;
                }
                row[columns] = stock[l];
                most.add(row);
            }
            for (int c = 0; c < columns; c++) {
                double[] row = new double[columns + 1];
                row[c] = -1;
                most.add(row);
            }
        }

        private void gyle(
                Random random, int g, int additions, int lotCount, double[] alpha, boolean[] leaf, double mostShare) {
            double perKgAlpha = 1e6 * 0.3 / 1000;
            double lateFactor = 1e6 * 0.1 / 1000;
            double target = 20 + random.nextDouble() * 15;
            double tolerance = random.nextBoolean() ? 1 : 0;
            double bed = random.nextInt(3) == 0 ? random.nextDouble() * 2 : 0;
            List<PlanAddition> planned = new ArrayList<>();
            planned.add(PlanAddition.bittering("start", "Fuggle", Plans.none(), perKgAlpha));
            double dose = random.nextDouble() * 2;
            if (additions == 2) {
                planned.add(PlanAddition.dose("late", "Fuggle", dose, lateFactor));
            }
            gyles.add(Plans.gyle(g + 1, "bitter", target, tolerance, bed, planned.toArray(PlanAddition[]::new)));
            int first = g * additions * lotCount;
            double[] ebu = new double[columns + 1];
            double[] leafKg = new double[columns + 1];
            for (int a = 0; a < additions; a++) {
                double[] held = new double[columns + 1];
                for (int l = 0; l < lotCount; l++) {
                    int c = first + a * lotCount + l;
                    ebu[c] = alpha[l] * (a == 0 ? perKgAlpha : lateFactor);
                    leafKg[c] = leaf[l] ? -1 : 0;
                    held[c] = planned.get(a).holds() == Holds.BITTERNESS ? ebu[c] : 1;
                }
                if (planned.get(a).holds() == Holds.DOSE) {
                    double[] row = held.clone();
                    row[columns] = dose;
                    equal.add(row);
                }
                for (int l = 0; l < lotCount && mostShare < 1; l++) {
                    double[] row = new double[columns + 1];
                    for (int k = 0; k < lotCount; k++) {
                        int c = first + a * lotCount + k;
                        row[c] = (k == l ? held[c] : 0) - mostShare * held[c];
                    }
                    most.add(row);
                }
            }
            if (tolerance == 0) {
                ebu[columns] = target;
                equal.add(ebu);
            } else {
                double[] low = new double[columns + 1];
                for (int c = 0; c < columns; c++) {
                    low[c] = -ebu[c];
                }
                ebu[columns] = target + tolerance;
                low[columns] = -(target - tolerance);
                most.add(ebu);
                most.add(low);
            }
            leafKg[columns] = -bed;
            most.add(leafKg);
        }

        /** The least cost over all corners: every choice of rows that meet in one point. */
        OptionalDouble bestCorner() {
            double[] best = {Double.POSITIVE_INFINITY};
            choose(new ArrayList<>(equal), 0, best);
            return Double.isInfinite(best[0]) ? OptionalDouble.empty() : OptionalDouble.of(best[0]);
        }

        private void choose(List<double[]> chosen, int from, double[] best) {
            if (chosen.size() == columns) {
                double[] x = solve(chosen);
                if (x.length > 0 && feasible(x)) {
                    double cost = 0;
                    for (int c = 0; c < columns; c++) {
                        cost += price[c] * x[c];
                    }
                    best[0] = Math.min(best[0], cost);
                }
                return;
            }
            for (int i = from; i < most.size(); i++) {
                chosen.add(most.get(i));
                choose(chosen, i + 1, best);
                chosen.remove(chosen.size() - 1);
            }
        }

        private boolean feasible(double[] x) {
            for (double[] row : most) {
                if (sum(row, x) > row[columns] + 1e-7) {
                    return false;
                }
            }
            for (double[] row : equal) {
                if (Math.abs(sum(row, x) - row[columns]) > 1e-7) {
                    return false;
                }
            }
            return true;
        }

        private double sum(double[] row, double[] x) {
            double sum = 0;
            for (int c = 0; c < columns; c++) {
                sum += row[c] * x[c];
            }
            return sum;
        }

        /** Gauss with pivots; nothing where the rows don't meet in one point. */
        private double[] solve(List<double[]> rows) {
            double[][] m = rows.stream().map(double[]::clone).toArray(double[][]::new);
            for (int p = 0; p < columns; p++) {
                int pivot = p;
                for (int r = p + 1; r < columns; r++) {
                    pivot = Math.abs(m[r][p]) > Math.abs(m[pivot][p]) ? r : pivot;
                }
                double[] swap = m[p];
                m[p] = m[pivot];
                m[pivot] = swap;
                if (Math.abs(m[p][p]) < 1e-9) {
                    return new double[0];
                }
                for (int r = 0; r < columns; r++) {
                    if (r != p) {
                        double factor = m[r][p] / m[p][p];
                        for (int c = p; c <= columns; c++) {
                            m[r][c] -= factor * m[p][c];
                        }
                    }
                }
            }
            double[] x = new double[columns];
            for (int c = 0; c < columns; c++) {
                x[c] = m[c][columns] / m[c][c];
            }
            return x;
        }

        /** Every requirement to 1e-9, from the allocations alone. */
        void assertHolds(HarvestPlan plan, String at) {
            for (PlanGyle gyle : gyles) {
                double ebu = 0;
                double leafKg = 0;
                for (HarvestPlan.Allocation line : plan.allocations()) {
                    if (line.gyle().equals(gyle.id())) {
                        double factor = line.addition().equals("start") ? 1e6 * 0.3 / 1000 : 1e6 * 0.1 / 1000;
                        ebu += line.kg() * line.alpha() * factor;
                        boolean leaf = lots.stream()
                                .anyMatch(lot -> lot.id().equals(line.lot()) && lot.form() == HopForm.LEAF);
                        leafKg += leaf ? line.kg() : 0;
                    }
                }
                double off = Math.abs(ebu - gyle.targetEbu());
                assertTrue(off <= gyle.toleranceEbu() + 1e-9 * gyle.targetEbu(), at + ": " + ebu + " EBU");
                assertTrue(leafKg >= gyle.leastLeafKg() - 1e-9, at + ": " + leafKg + " kg of leaf");
            }
            for (PlanLot lot : lots) {
                double used = plan.allocations().stream()
                        .filter(line -> line.lot().equals(lot.id()))
                        .mapToDouble(HarvestPlan.Allocation::kg)
                        .sum();
                assertTrue(used <= lot.stockKg() + 1e-9, at + ": " + used + " kg of " + lot.id());
            }
        }
    }
}
