package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.harvest.Cover;
import costrel.harvest.HarvestPlan;
import costrel.harvest.Objective;
import costrel.harvest.Shortfall;
import costrel.report.HarvestText;
import java.time.YearMonth;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The harvest story of the sample brewery: twelve lots, five beers, forty gyles, one variety short. */
class HarvestTest {

    private static final Brewery LANTERNFOLD = Brewery.open(LanternfoldTest.FOLDER);
    private static final double PLANNED = 1e-6;

    private static Harvest year() {
        return LANTERNFOLD.harvest().allow("East Kent Golding", "First Gold");
    }

    @Test
    void one_variety_is_short_and_the_plan_says_when_and_by_how_much() {
        HarvestPlan plan = LANTERNFOLD.harvest().plan();
        assertEquals(HarvestPlan.Status.INFEASIBLE, plan.status());
        double short1 = 0;
        for (Shortfall shortfall : plan.shortfalls()) {
            assertTrue(shortfall.what().contains("East Kent Golding"), shortfall.text());
            assertTrue(shortfall.month().isPresent());
            short1 += shortfall.kg().orElseThrow();
        }
        // what the variety lacks over the year, by the cover: doses alone, since alpha moves the bittering
        Cover.VarietyCover cover = LANTERNFOLD.harvest().cover().stream()
                .filter(line -> line.variety().equals("East Kent Golding"))
                .findFirst()
                .orElseThrow();
        assertTrue(cover.leftKg() < 0);
        assertEquals(-cover.leftKg(), short1, 1);
        assertTrue(cover.runsOutOn().isPresent());
        assertEquals(Optional.of(YearMonth.of(2027, 10)), cover.runsOutOn().map(YearMonth::from));
    }

    @Test
    void with_a_substitute_allowed_every_gyle_keeps_its_bitterness_and_no_lot_is_overdrawn() {
        HarvestPlan plan = year().plan();
        assertEquals(HarvestPlan.Status.OPTIMAL, plan.status());
        assertEquals(40, plan.gyles().size());
        for (HarvestPlan.GyleTotal gyle : plan.gyles()) {
            assertTrue(Math.abs(gyle.ebu() - gyle.targetEbu()) <= gyle.toleranceEbu() + PLANNED, gyle.toString());
            assertTrue(gyle.leafKg() >= gyle.leastLeafKg() - PLANNED, gyle.toString());
        }
        for (HarvestPlan.LotUse lot : plan.lots()) {
            assertTrue(lot.usedKg() <= lot.stockKg() + PLANNED, lot.toString());
            assertTrue(lot.weighedKg() <= lot.stockKg() + PLANNED, lot.toString());
        }
    }

    @Test
    void the_figures_of_a_gyle_are_those_of_the_brewing() {
        // EBU = 10⁶ · kg · alpha · utilisation / litres, added up from the plan's own lines
        HarvestPlan plan = year().gyle("001").plan();
        double ebu = plan.allocations().stream()
                .mapToDouble(HarvestPlan.Allocation::ebu)
                .sum();
        assertEquals(plan.gyles().get(0).ebu(), ebu, PLANNED);
        assertEquals(
                LANTERNFOLD.brew("Wickgate Bitter").beer().ebu(),
                plan.gyles().get(0).targetEbu(),
                PLANNED);
    }

    @Test
    void the_steadiest_plan_is_no_less_steady_than_the_cheapest_and_no_cheaper() {
        HarvestPlan steady = year().objective(Objective.STEADIEST).plan();
        HarvestPlan cheap = year().objective("least cost").plan();
        assertTrue(steady.largestChange().orElseThrow().size()
                <= cheap.largestChange().orElseThrow().size() + PLANNED);
        assertTrue(steady.cost().orElseThrow() >= cheap.cost().orElseThrow() - PLANNED);
        assertTrue(HarvestText.of(steady).contains("steadiness: the largest change"));
    }

    @Test
    void need_is_what_the_gyles_weigh() {
        Map<String, ?> need = LANTERNFOLD.harvest().gyle("001").need();
        assertEquals(2, need.size(), need.toString());
        assertThrows(IllegalArgumentException.class, () -> LANTERNFOLD.harvest().gyle("999"));
        assertThrows(IllegalArgumentException.class, () -> LANTERNFOLD.harvest().objective("nicest"));
    }
}
