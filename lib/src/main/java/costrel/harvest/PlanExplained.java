package costrel.harvest;

import costrel.explain.Explanation;
import costrel.harvest.HarvestPlan.AdditionTotal;
import costrel.harvest.HarvestPlan.Allocation;
import costrel.harvest.HarvestPlan.GyleTotal;
import costrel.harvest.HarvestPlan.LotUse;
import java.util.ArrayList;
import java.util.List;

/** Turns a plan into a tree that a person can follow from a gyle down to a lot. */
final class PlanExplained {

    private PlanExplained() {}

    static Explanation of(HarvestPlan plan) {
        List<Explanation> parts = new ArrayList<>();
        plan.goals()
                .forEach(goal -> parts.add(Explanation.of(
                        goal.what(),
                        Figures.fixed(goal.reached(), 4),
                        "no plan does better than " + Figures.fixed(goal.bound(), 4))));
        plan.gyles().forEach(gyle -> parts.add(gyle(plan, gyle)));
        plan.lots().stream().filter(lot -> lot.usedKg() > 0).forEach(lot -> parts.add(lot(lot)));
        plan.shortfalls().forEach(shortfall -> parts.add(Explanation.of("short", shortfall.what(), shortfall.mend())));
        return new Explanation(
                "hop plan, " + plan.objective().label(), plan.status().label(), "", parts);
    }

    private static Explanation gyle(HarvestPlan plan, GyleTotal gyle) {
        List<Explanation> parts = new ArrayList<>();
        plan.additions().stream()
                .filter(addition -> addition.gyle().equals(gyle.gyle()))
                .forEach(addition -> parts.add(addition(plan, addition)));
        return new Explanation(
                gyle.beer() + ", gyle " + gyle.gyle() + " of " + gyle.day(),
                Figures.fixed(gyle.ebu(), 2) + " EBU",
                "wanted " + Figures.fixed(gyle.targetEbu(), 2) + " ± " + Figures.fixed(gyle.toleranceEbu(), 2)
                        + "; as weighed out " + Figures.fixed(gyle.weighedEbu(), 2),
                parts);
    }

    private static Explanation addition(HarvestPlan plan, AdditionTotal addition) {
        String unit = switch (addition.holds()) {
            case BITTERNESS -> " EBU";
            case DOSE -> " kg";
            case OIL -> " mL of oil";
        };
        List<Explanation> parts = new ArrayList<>();
        plan.allocations().stream()
                .filter(each ->
                        each.gyle().equals(addition.gyle()) && each.addition().equals(addition.addition()))
                .forEach(each -> parts.add(allocation(each)));
        return new Explanation(
                addition.addition(),
                Figures.fixed(addition.reached(), 3) + unit,
                "holds its " + addition.holds().label() + ", wanted " + Figures.fixed(addition.wanted(), 3) + unit
                        + "; as weighed out " + Figures.fixed(addition.weighed(), 3) + unit,
                parts);
    }

    private static Explanation allocation(Allocation each) {
        double ebuPerKgAlpha = each.alpha() > 0 ? each.ebu() / (each.kg() * each.alpha()) : 0;
        List<Explanation> parts = new ArrayList<>();
        parts.add(Explanation.of(
                "bitterness",
                Figures.fixed(each.ebu(), 3) + " EBU",
                Figures.fixed(each.kg(), 4) + " kg · alpha acid " + Figures.percent(each.alpha()) + " · "
                        + Figures.fixed(ebuPerKgAlpha, 3) + " EBU for a kg of alpha acid"));
        each.oilMl().ifPresent(oil -> parts.add(Explanation.leaf("hop oil", Figures.fixed(oil, 2) + " mL")));
        each.cost().ifPresent(cost -> parts.add(Explanation.leaf("cost", Figures.fixed(cost, 2))));
        return new Explanation(
                each.variety() + " lot " + each.lot(),
                Figures.kg(each.kg()),
                Figures.percent(each.share()) + " of the addition; weigh out " + Figures.kg(each.weighedKg()),
                parts);
    }

    private static Explanation lot(LotUse lot) {
        return Explanation.of(
                lot.variety() + " lot " + lot.lot() + ", used",
                Figures.kg(lot.usedKg()),
                "of " + Figures.kg(lot.stockKg())
                        + (lot.wasteKg() > 0 ? ", " + Figures.kg(lot.wasteKg()) + " of opened packs left over" : "")
                        + lot.usedUpOn().map(day -> ", used up on " + day).orElse(""));
    }
}
