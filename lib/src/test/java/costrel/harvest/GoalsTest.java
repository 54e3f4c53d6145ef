package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Cases;
import costrel.harvest.HarvestPlan.Status;
import costrel.harvest.SmallHarvest.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.Test;

/** Every objective against exhaustive search over all corners of small harvests, and over all numbers of packs. */
class GoalsTest {

    private static final long SEED = Long.getLong("seed", 17240101L);
    private static final double EQUAL = 1e-6;
    private static final double MET = 1e-9;

    /** Runs a check on so many random harvests; it says 1 for one that has a plan, 0 for one that hasn't, −1 to pass over. */
    private static void cases(int usual, ToIntFunction<Random> check) {
        int wanted = Cases.upTo(usual);
        int seen = 0;
        int planned = 0;
        for (long seed = SEED; seen < wanted; seed++) {
            try {
                int found = check.applyAsInt(new Random(seed));
                seen += found < 0 ? 0 : 1;
                planned += Math.max(0, found);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("-Dseed=" + seed + ": " + e.getMessage(), e);
            }
        }
        assertTrue(planned > wanted / 5, planned + " of " + wanted + " have a plan");
    }

    private static Kind anyKind(Random random) {
        List<Kind> kinds = List.of(Kind.values());
        return kinds.get(random.nextInt(kinds.size()));
    }

    /** Whether there is a plan; the statuses must agree, and a plan must meet every requirement. */
    private static int planned(SmallHarvest harvest, HarvestPlan plan, boolean expected) {
        assertEquals(expected ? Status.OPTIMAL : Status.INFEASIBLE, plan.status());
        if (!expected) {
            assertFalse(plan.shortfalls().isEmpty());
            return 0;
        }
        assertTrue(harvest.worstBreach(plan) <= MET, () -> "breach of " + harvest.worstBreach(plan));
        return 1;
    }

    private static void assertReached(double expected, double reached) {
        assertEquals(expected, reached, EQUAL * Math.max(1, Math.abs(expected)));
    }

    private static double[] prices(SmallHarvest harvest) {
        return harvest.lots.stream()
                .mapToDouble(lot -> lot.pricePerKg().orElseThrow())
                .toArray();
    }

    @Test
    void no_corner_costs_less_than_the_cheapest_plan() {
        cases(500, random -> {
            SmallHarvest harvest = new SmallHarvest(
                    random, anyKind(random), 1 + random.nextInt(2), 2 + random.nextInt(2), Plans.none(), 1);
            Corners corners = harvest.rows(0);
            if (corners.choices() > 20_000) {
                return -1;
            }
            double[] best = corners.least(harvest.cost(corners, prices(harvest)));
            HarvestPlan plan = HarvestPlanner.plan(harvest.gyles, harvest.lots, harvest.rules, Objective.LEAST_COST);
            int found = planned(harvest, plan, best.length > 0);
            if (found > 0) {
                assertReached(best[0], plan.cost().orElseThrow());
                assertEquals(plan.cost().orElseThrow(), plan.goals().get(0).reached(), EQUAL);
            }
            return found;
        });
    }

    @Test
    void no_corner_uses_more_of_the_oldest_crop_and_then_of_the_next() {
        cases(300, random -> {
            SmallHarvest harvest = new SmallHarvest(
                    random, anyKind(random), 1 + random.nextInt(2), 2 + random.nextInt(2), Plans.none(), 1);
            Corners corners = harvest.rows(0);
            if (corners.choices() > 20_000) {
                return -1;
            }
            TreeSet<Integer> years = new TreeSet<>();
            for (PlanLot lot : harvest.lots) {
                boolean there =
                        harvest.gyles.stream().anyMatch(gyle -> !gyle.day().isBefore(lot.availableFrom()));
                if (there) {
                    years.add(lot.cropYear());
                }
            }
            List<double[]> costs = new ArrayList<>();
            years.pollLast();
            years.forEach(year -> costs.add(harvest.cost(
                    corners,
                    harvest.lots.stream()
                            .mapToDouble(lot -> lot.cropYear() == year ? -1 : 0)
                            .toArray())));
            double[] all = new double[harvest.lots.size()];
            Arrays.fill(all, 1);
            costs.add(harvest.cost(corners, all));
            double[] best = corners.least(costs.toArray(double[][]::new));
            HarvestPlan plan = HarvestPlanner.plan(harvest.gyles, harvest.lots, harvest.rules, Objective.OLDEST_FIRST);
            int found = planned(harvest, plan, best.length > 0);
            for (int i = 0; i < plan.goals().size(); i++) {
                double sign = i < best.length - 1 ? -1 : 1;
                assertReached(sign * best[i], plan.goals().get(i).reached());
            }
            return found;
        });
    }

    @Test
    void no_numbers_of_packs_cost_less_than_the_cheapest_plan() {
        cases(200, random -> {
            double packKg = 1 + random.nextInt(3);
            SmallHarvest harvest =
                    new SmallHarvest(random, anyKind(random), 1, 2 + random.nextInt(2), Plans.some(packKg), 1);
            if (harvest.rows(0).choices() > 400) {
                return -1;
            }
            double best = leastOfPacks(harvest, packKg, new double[harvest.lots.size()], 0);
            HarvestPlan plan = HarvestPlanner.plan(harvest.gyles, harvest.lots, harvest.rules, Objective.LEAST_COST);
            int found = planned(harvest, plan, best < Double.POSITIVE_INFINITY);
            if (found > 0) {
                assertReached(best, plan.cost().orElseThrow());
                plan.lots().forEach(lot -> assertWholePacks(lot, packKg));
            }
            return found;
        });
    }

    /** Tries every number of packs of every lot, the last pack being what is left of the stock. */
    private static double leastOfPacks(SmallHarvest harvest, double packKg, double[] openedKg, int lot) {
        if (lot == harvest.lots.size()) {
            Corners corners = harvest.rows(0);
            double cost = 0;
            for (int l = 0; l < openedKg.length; l++) {
                double[] row = corners.row(openedKg[l]);
                for (int c = l; c < harvest.columns(); c += openedKg.length) {
                    row[c] = 1;
                }
                corners.atMost(row);
                cost += openedKg[l] * prices(harvest)[l];
            }
            return corners.least(corners.row(0)).length > 0 ? cost : Double.POSITIVE_INFINITY;
        }
        double stockKg = harvest.lots.get(lot).stockKg();
        double oddKg = stockKg - packKg * Math.floor(stockKg / packKg);
        double best = Double.POSITIVE_INFINITY;
        for (double whole = 0; whole * packKg <= stockKg; whole++) {
            for (double odd : new double[] {0, oddKg}) {
                openedKg[lot] = whole * packKg + odd;
                best = Math.min(best, leastOfPacks(harvest, packKg, openedKg, lot + 1));
            }
        }
        return best;
    }

    private static void assertWholePacks(HarvestPlan.LotUse lot, double packKg) {
        double packs = lot.openedKg() / packKg;
        double withoutOdd = (lot.openedKg() - lot.stockKg() % packKg) / packKg;
        assertTrue(
                Math.abs(packs - Math.rint(packs)) < EQUAL || Math.abs(withoutOdd - Math.rint(withoutOdd)) < EQUAL,
                lot.toString());
        assertTrue(lot.wasteKg() >= 0 && lot.wasteKg() < packKg + EQUAL, lot.toString());
        assertTrue(lot.leftKg() >= -EQUAL, lot.toString());
    }

    @Test
    void no_corner_is_steadier_than_the_steadiest_plan() {
        cases(200, random -> {
            Kind kind = random.nextBoolean() ? Kind.ONE_BITTERING : Kind.TWO_BITTERINGS_IN_PROPORTION;
            SmallHarvest harvest = new SmallHarvest(random, kind, 2, 2, Plans.none(), 1);
            if (harvest.gyles.stream().anyMatch(gyle -> gyle.toleranceEbu() > 0)) {
                return -1;
            }
            int additions = harvest.gyles.get(0).additions().size();
            int changes = 2 * additions;
            int largest = harvest.columns();
            Corners corners = harvest.rows(1 + changes);
            double[] sum = corners.row(0);
            for (int i = 0; i < changes; i++) {
                int change = largest + 1 + i;
                sum[change] = 1;
                double[] most = corners.row(0);
                most[change] = 1;
                most[largest] = -1;
                corners.atMost(most);
                for (double sign : new double[] {1, -1}) {
                    double[] row = changeOfShare(harvest, corners, i / 2, i % 2, sign);
                    row[change] = -1;
                    corners.atMost(row);
                }
            }
            if (corners.choices() > 200_000) {
                return -1;
            }
            double[] size = corners.row(0);
            size[largest] = 1;
            double[] best = corners.least(size, sum);
            HarvestPlan plan = HarvestPlanner.plan(harvest.gyles, harvest.lots, harvest.rules, Objective.STEADIEST);
            int found = planned(harvest, plan, best.length > 0);
            if (found > 0) {
                assertReached(best[0], plan.goals().get(0).reached());
                assertReached(best[1], plan.goals().get(1).reached());
                assertReached(best[0], plan.largestChange().orElseThrow().size());
            }
            return found;
        });
    }

    @Test
    void no_corner_within_the_bound_on_changes_costs_less() {
        cases(200, random -> {
            double bound = random.nextDouble() * 0.5;
            SmallHarvest harvest = new SmallHarvest(random, Kind.ONE_BITTERING, 2, 2, Plans.none(), bound);
            if (harvest.gyles.stream().anyMatch(gyle -> gyle.toleranceEbu() > 0)) {
                return -1;
            }
            Corners corners = harvest.rows(0);
            for (int l = 0; l < 2; l++) {
                for (double sign : new double[] {1, -1}) {
                    double[] row = changeOfShare(harvest, corners, 0, l, sign);
                    row[harvest.columns()] = bound;
                    corners.atMost(row);
                }
            }
            double[] best = corners.least(harvest.cost(corners, prices(harvest)));
            HarvestPlan plan = HarvestPlanner.plan(harvest.gyles, harvest.lots, harvest.rules, Objective.LEAST_COST);
            int found = planned(harvest, plan, best.length > 0);
            if (found > 0) {
                assertReached(best[0], plan.cost().orElseThrow());
                assertTrue(plan.largestChange().orElseThrow().size() <= bound + MET);
            }
            return found;
        });
    }

    /** Share of a lot in the second gyle less its share in the first; totals are fixed where bitterness has no tolerance. */
    private static double[] changeOfShare(SmallHarvest harvest, Corners corners, int a, int l, double sign) {
        double[] row = corners.row(0);
        int additions = harvest.gyles.get(0).additions().size();
        double part = additions == 1 ? 1 : a == 0 ? 0.7 : 0.3;
        for (int g = 0; g < 2; g++) {
            double total = part * harvest.gyles.get(g).targetEbu();
            row[harvest.column(g, a, l)] = sign * (g == 1 ? 1 : -1) * harvest.heldPerKg(g, a, l) / total;
        }
        return row;
    }

    @Test
    void where_late_hops_move_the_bittering_the_steadiest_plan_lies_between_its_bound_and_a_fine_search() {
        int steps = 16;
        cases(25, random -> {
            SmallHarvest harvest = new SmallHarvest(random, Kind.BITTERING_AND_DOSE, 2, 2, OptionalDouble.empty(), 1);
            HarvestPlan plan = HarvestPlanner.plan(harvest.gyles, harvest.lots, harvest.rules, Objective.STEADIEST);
            if (plan.status() == Status.INFEASIBLE) {
                return -1;
            }
            assertTrue(harvest.worstBreach(plan) <= MET);
            double searched = Double.POSITIVE_INFINITY;
            for (int i = 0; i < Math.pow(steps + 1, 4); i++) {
                double[] split = new double[4];
                for (int k = 0, rest = i; k < 4; k++, rest /= steps + 1) {
                    split[k] = (rest % (steps + 1)) / (double) steps;
                }
                searched = Math.min(searched, changeOfBlends(harvest, split));
            }
            HarvestPlan.Goal goal = plan.goals().get(0);
            assertTrue(goal.bound() <= searched + MET, goal + ", searched " + searched);
            assertTrue(goal.bound() <= goal.reached() + MET, goal.toString());
            assertEquals(goal.reached(), plan.largestChange().orElseThrow().size(), EQUAL);
            assertTrue(goal.reached() <= searched + 0.002, goal + ", searched " + searched);
            return 1;
        });
    }

    /** The largest change of share for blends of start and late hops in two gyles; infinite where a requirement is broken. */
    private static double changeOfBlends(SmallHarvest harvest, double[] split) {
        double[] x = new double[harvest.columns()];
        for (int g = 0; g < 2; g++) {
            PlanGyle gyle = harvest.gyles.get(g);
            double doseKg = harvest.addition(g, 1).doseKg().orElseThrow();
            double late = 0;
            for (int l = 0; l < 2; l++) {
                double kg = doseKg * (l == 0 ? split[g] : 1 - split[g]);
                x[harvest.column(g, 1, l)] = kg;
                late += kg * harvest.ebuPerKg(g, 1, l);
            }
            for (int l = 0; l < 2; l++) {
                double share = l == 0 ? split[2 + g] : 1 - split[2 + g];
                x[harvest.column(g, 0, l)] = share * (gyle.targetEbu() - late) / harvest.ebuPerKg(g, 0, l);
            }
        }
        return harvest.rows(0).worstBreach(x) > MET
                ? Double.POSITIVE_INFINITY
                : Math.max(Math.abs(split[0] - split[1]), Math.abs(split[2] - split[3]));
    }
}
