package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.AlphaMethodFactors;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What the pieces of a plan refuse and how they are named. */
class PlanRecordsTest {

    private static void refused(String words, Executable attempt) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, attempt);
        assertTrue(String.valueOf(refused.getMessage()).contains(words), String.valueOf(refused.getMessage()));
    }

    @Test
    void objectives_and_statuses_have_words_of_their_own() {
        assertEquals("least cost", Objective.LEAST_COST.label());
        assertEquals("oldest first", Objective.OLDEST_FIRST.label());
        assertEquals("steadiest", Objective.STEADIEST.label());
        assertEquals("optimal", HarvestPlan.Status.OPTIMAL.label());
        assertEquals("infeasible", HarvestPlan.Status.INFEASIBLE.label());
    }

    @Test
    void a_gap_is_the_distance_to_the_bound_either_way() {
        assertEquals(2, new HarvestPlan.Goal("cost", 12, 10).gap());
        assertEquals(2, new HarvestPlan.Goal("kg of 2025", 10, 12).gap());
    }

    @Test
    void figures_that_cannot_be_are_refused_by_name() {
        refused("price of lot A", () -> Plans.lot("A", "Fuggle", 0.05, 1, -1));
        refused("pack of lot A", () -> Plans.lot("A", "Fuggle", 2026, 0.05, 1, Plans.some(0), Plans.none()));
        refused("dose of late", () -> PlanAddition.dose("late", "Fuggle", -0.1, 1));
        refused("share of the bitterness of start", () -> PlanAddition.bittering("start", "Fuggle", Plans.some(-1), 1));
        refused("most change of a lot's share", () -> new PlanRules(1, 250, 1.01, 0, AlphaMethodFactors.NONE));
        assertEquals(0, new PlanRules(1, 250, 0, 0, AlphaMethodFactors.NONE).mostChange());
        assertEquals(1, new PlanRules(1, 250, 1, 0, AlphaMethodFactors.NONE).mostChange());
    }

    @Test
    void what_a_plan_uses_and_leaves_of_a_lot_is_its_stock() {
        PlanGyle gyle = Plans.gyle(
                1, "bitter", 30, PlanAddition.bittering("start", "Fuggle", Plans.none(), Plans.ebuPerKgAlpha(0.3)));
        // 30 EBU are 0.1 kg of alpha acid: 2 kg at 5 %, of 7 kg
        HarvestPlan plan = HarvestPlanner.plan(
                List.of(gyle), List.of(Plans.lot("A", "Fuggle", 0.05, 7, 12)), PlanRules.NONE, Objective.LEAST_COST);
        assertEquals(2, plan.lots().get(0).usedKg(), 1e-9);
        assertEquals(5, plan.lots().get(0).leftKg(), 1e-9);
    }
}
