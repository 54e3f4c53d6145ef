package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.harvest.HarvestPlan.Allocation;
import costrel.harvest.HarvestPlan.Goal;
import costrel.harvest.HarvestPlan.LotUse;
import costrel.harvest.HarvestPlan.Status;
import costrel.hops.AlphaMethodFactors;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

/** A year of sixty gyles of five additions, and forty lots. */
class LargePlanTest {

    private static final double MET = 1e-9;
    private static final PlanRules RULES = new PlanRules(0.6, 250, 1, 0.1, AlphaMethodFactors.NONE);

    private final Random random = new Random(7);
    private final List<PlanGyle> gyles = Plans.year(random, 60);

    @Test
    void the_cheapest_year_is_proved_and_meets_every_requirement() {
        List<PlanLot> lots = Plans.lots(random, 40, 6, 18, Plans.none());
        for (Objective objective : List.of(Objective.LEAST_COST, Objective.OLDEST_FIRST)) {
            HarvestPlan plan = HarvestPlanner.plan(gyles, lots, RULES, objective);
            assertEquals(Status.OPTIMAL, plan.status());
            assertRequirements(lots, plan);
        }
    }

    @Test
    void a_year_of_whole_packs_is_proved_or_says_how_far_it_may_be_from_the_best() {
        List<PlanLot> lots = Plans.lots(random, 40, 6, 18, Plans.some(5));
        PlanRules rules = new PlanRules(1, 250, 1, 0.1, AlphaMethodFactors.NONE);
        HarvestPlan plan = HarvestPlanner.plan(gyles, lots, rules, Objective.LEAST_COST, new PlanLimits(200_000, 40));
        Goal goal = plan.goals().get(0);
        assertEquals(goal.gap() <= 1e-7 * goal.reached() ? Status.OPTIMAL : Status.FEASIBLE, plan.status());
        assertEquals(plan.cost().orElseThrow(), goal.reached(), 1e-6);
        assertTrue(goal.gap() >= 0 && goal.gap() < 0.05 * goal.reached(), goal.toString());
        HarvestPlan broken = HarvestPlanner.plan(gyles, unpacked(lots), rules, Objective.LEAST_COST);
        assertTrue(goal.bound() >= broken.cost().orElseThrow() - 1e-6, "whole packs can't cost less than broken ones");
        for (LotUse lot : plan.lots()) {
            double packs = lot.openedKg() / 5;
            double withoutOdd = (lot.openedKg() - lot.stockKg() % 5) / 5;
            assertTrue(
                    Math.abs(packs - Math.rint(packs)) < 1e-6 || Math.abs(withoutOdd - Math.rint(withoutOdd)) < 1e-6,
                    lot.toString());
            assertTrue(lot.wasteKg() >= 0 && lot.leftKg() >= -MET, lot.toString());
        }
    }

    private static List<PlanLot> unpacked(List<PlanLot> lots) {
        return lots.stream().map(Plans::unpacked).toList();
    }

    @Test
    void the_same_question_has_the_same_answer() {
        List<PlanLot> lots = Plans.lots(random, 40, 6, 18, Plans.none());
        assertEquals(
                HarvestPlanner.plan(gyles, lots, RULES, Objective.LEAST_COST),
                HarvestPlanner.plan(gyles, lots, RULES, Objective.LEAST_COST));
    }

    @Test
    void a_long_search_stops_when_its_thread_is_asked_to() throws InterruptedException {
        List<PlanLot> lots = Plans.lots(random, 40, 6, 18, Plans.none());
        AtomicReference<Throwable> thrown = new AtomicReference<>(new AssertionError("the plan was not stopped"));
        CountDownLatch begun = new CountDownLatch(1);
        Thread planner = new Thread(() -> {
            begun.countDown();
            try {
                HarvestPlanner.plan(gyles, lots, RULES, Objective.STEADIEST);
            } catch (CancellationException stopped) {
                thrown.set(stopped);
            }
        });
        planner.start();
        begun.await();
        Thread.sleep(500); // into the search, which takes many times as long
        planner.interrupt();
        planner.join(20_000);
        assertTrue(!planner.isAlive(), "the planner went on for 20 s after it was asked to stop");
        assertInstanceOf(CancellationException.class, thrown.get());
    }

    private void assertRequirements(List<PlanLot> lots, HarvestPlan plan) {
        Map<String, PlanLot> byId = new HashMap<>();
        lots.forEach(lot -> byId.put(lot.id(), lot));
        Map<String, Double> used = new HashMap<>();
        for (PlanGyle gyle : gyles) {
            double ebu = 0;
            double leafKg = 0;
            double[] held = new double[gyle.additions().size()];
            for (Allocation line : plan.allocations()) {
                if (!line.gyle().equals(gyle.id())) {
                    continue;
                }
                PlanLot lot = byId.getOrDefault(line.lot(), lots.get(0));
                PlanAddition addition = gyle.additions().stream()
                        .filter(each -> each.label().equals(line.addition()))
                        .findFirst()
                        .orElseThrow();
                double alpha = lot.alphaByGyle().getOrDefault(gyle.id(), Double.NaN);
                double brings = line.kg() * alpha * addition.ebuPerKgAlpha();
                ebu += brings;
                leafKg += addition.inTheCopper() ? line.kg() : 0;
                held[gyle.additions().indexOf(addition)] += addition.doseKg().isPresent() ? line.kg() : brings;
                assertTrue(addition.allows(lot) && !gyle.day().isBefore(lot.availableFrom()), line.toString());
                assertTrue(line.share() <= 0.6 + MET, line.toString());
                used.merge(lot.id(), line.kg(), Double::sum);
            }
            assertTrue(Math.abs(ebu - gyle.targetEbu()) <= gyle.toleranceEbu() + MET * gyle.targetEbu());
            assertTrue(leafKg >= gyle.leastLeafKg() - MET);
            assertEquals(0.3 * held[0], 0.7 * held[1], MET * held[0]);
            for (int a = 2; a < held.length; a++) {
                assertEquals(gyle.additions().get(a).doseKg().orElseThrow(), held[a], MET);
            }
        }
        used.forEach((lot, kg) ->
                assertTrue(kg <= byId.getOrDefault(lot, lots.get(0)).stockKg() + MET, lot));
    }
}
