package costrel.report;

import costrel.harvest.Cover;
import costrel.harvest.HarvestPlan;
import costrel.harvest.Shortfall;
import costrel.harvest.Substitutes;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;

/** A harvest plan as text: addition by addition the lots and weights, totals, what changed, what runs out, what is short. */
public final class HarvestText {

    private static final int WIDTH = 110;

    private HarvestText() {}

    /**
     * The whole plan.
     *
     * @param plan the plan
     * @return lines of text
     */
    public static String of(HarvestPlan plan) {
        StringBuilder text = new StringBuilder();
        text.append("Hop plan, ")
                .append(plan.objective().label())
                .append(": ")
                .append(plan.status().label());
        OptionalDouble cost = plan.cost();
        if (cost.isPresent() && !plan.allocations().isEmpty()) {
            text.append(", hops cost ").append(Figures.fixed(cost, 2));
        }
        text.append('\n');
        for (HarvestPlan.Goal goal : plan.goals()) {
            text.append("  ")
                    .append(goal.what())
                    .append(": ")
                    .append(Figures.fixed(goal.reached(), 4))
                    .append(", no plan can better ")
                    .append(Figures.fixed(goal.bound(), 4))
                    .append('\n');
        }
        if (!plan.allocations().isEmpty()) {
            text.append(additions(plan)).append(gyles(plan)).append(lots(plan)).append(changes(plan));
            plan.largestChange()
                    .ifPresent(change -> text.append(Figures.folded(
                            "steadiness: the largest change of a lot's share from a gyle to the next is "
                                    + Figures.percent(change.size(), 1) + " (" + change.beer() + ", "
                                    + change.addition() + ", lot "
                                    + change.lot() + ", gyle " + change.fromGyle() + " to " + change.toGyle() + ")",
                            2,
                            WIDTH)));
        }
        for (Shortfall shortfall : plan.shortfalls()) {
            text.append(Figures.folded("short: " + shortfall.text(), 2, WIDTH));
        }
        for (String remark : plan.remarks()) {
            text.append(Figures.folded("note: " + remark, 2, WIDTH));
        }
        return text.toString();
    }

    private static String additions(HarvestPlan plan) {
        TextTable table = TextTable.of(
                "gyle",
                "day",
                "beer",
                "addition",
                "lot",
                "#alpha %",
                "#kg",
                "#weigh out kg",
                "#EBU",
                "#oil mL",
                "#cost");
        PaperSum kg = new PaperSum(2);
        PaperSum weighed = new PaperSum(2);
        PaperSum cost = new PaperSum(2);
        boolean priced =
                plan.allocations().stream().allMatch(line -> line.cost().isPresent());
        for (HarvestPlan.Allocation line : plan.allocations()) {
            table.row(
                    line.gyle(),
                    line.day().toString(),
                    line.beer(),
                    line.addition() + ", " + line.variety(),
                    line.lot(),
                    Figures.fixed(line.alpha() * 100, 2),
                    kg.add(line.kg()),
                    weighed.add(line.weighedKg()),
                    Figures.fixed(line.ebu(), 2),
                    Figures.fixed(line.oilMl(), 0),
                    line.cost().isPresent() ? cost.add(line.cost().getAsDouble()) : "");
        }
        table.total("", "", "", "", "", "", kg.total(), weighed.total(), "", "", priced ? cost.total() : "");
        return table.text(2);
    }

    private static String gyles(HarvestPlan plan) {
        TextTable table =
                TextTable.of("gyle", "beer", "#EBU wanted", "#within", "#EBU", "#as weighed", "#leaf kg", "#hops kg");
        for (HarvestPlan.GyleTotal gyle : plan.gyles()) {
            table.row(
                    gyle.gyle(),
                    gyle.beer(),
                    Figures.fixed(gyle.targetEbu(), 2),
                    Figures.fixed(gyle.toleranceEbu(), 2),
                    Figures.fixed(gyle.ebu(), 2),
                    Figures.fixed(gyle.weighedEbu(), 2),
                    Figures.fixed(gyle.leafKg(), 2),
                    Figures.fixed(gyle.kg(), 2));
        }
        return table.text(2);
    }

    private static String lots(HarvestPlan plan) {
        TextTable table = TextTable.of("lot", "variety", "#stock kg", "#used kg", "#left kg", "used up on", "#cost");
        for (HarvestPlan.LotUse lot : plan.lots()) {
            table.row(
                    lot.lot(),
                    lot.variety(),
                    Figures.fixed(lot.stockKg(), 2),
                    Figures.fixed(lot.usedKg(), 2),
                    Figures.fixed(lot.leftKg(), 2),
                    lot.usedUpOn().map(Object::toString).orElse(""),
                    Figures.fixed(lot.cost(), 2));
        }
        return table.text(2);
    }

    /** What changed from last year, once for all gyles of a beer that changed alike. */
    private static String changes(HarvestPlan plan) {
        Map<String, HarvestPlan.Change> firsts = new LinkedHashMap<>();
        for (HarvestPlan.Change change : plan.changes()) {
            firsts.putIfAbsent(change.beer() + "|" + change.addition() + "|" + change.lots(), change);
        }
        TextTable table = TextTable.of("beer", "addition", "was lot", "#kg", "now lots", "#kg", "why");
        for (HarvestPlan.Change change : firsts.values()) {
            table.row(
                    change.beer(),
                    change.addition(),
                    change.lastLot(),
                    Figures.fixed(change.lastKg(), 2),
                    String.join(" + ", change.lots()),
                    Figures.fixed(change.kg(), 2),
                    change.why());
        }
        return firsts.isEmpty() ? "" : table.text(2);
    }

    /**
     * Hops on hand against need, and what to contract.
     *
     * @param covers the varieties
     * @param contracts ranges for next harvest
     * @return tables
     */
    public static String of(List<Cover.VarietyCover> covers, List<Cover.Contract> contracts) {
        TextTable cover = TextTable.of("variety", "#on hand kg", "#alpha kg", "#wanted kg", "#left kg", "runs out on");
        for (Cover.VarietyCover line : covers) {
            cover.row(
                    line.variety(),
                    Figures.fixed(line.onHandKg(), 1),
                    Figures.fixed(line.onHandAlphaKg(), 2),
                    Figures.fixed(line.totalNeedKg(), 1),
                    Figures.fixed(line.leftKg(), 1),
                    line.runsOutOn().map(Object::toString).orElse(""));
        }
        TextTable contract = TextTable.of("to contract", "#least kg", "#mean kg", "#most kg", "for");
        for (Cover.Contract line : contracts) {
            contract.row(
                    line.variety(),
                    Figures.fixed(line.leastKg(), 0),
                    Figures.fixed(line.meanKg(), 0),
                    Figures.fixed(line.mostKg(), 0),
                    line.basis());
        }
        return cover.text(2) + months(covers) + contract.text(2);
    }

    /** What is wanted month by month, a column for each variety. */
    private static String months(List<Cover.VarietyCover> covers) {
        List<String> headers = new ArrayList<>(List.of("wanted kg in"));
        TreeSet<YearMonth> months = new TreeSet<>();
        for (Cover.VarietyCover line : covers) {
            headers.add("#" + line.variety());
            months.addAll(line.needKg().keySet());
        }
        TextTable table = TextTable.of(headers.toArray(String[]::new));
        List<PaperSum> sums = covers.stream().map(line -> new PaperSum(1)).toList();
        for (YearMonth month : months) {
            List<String> cells = new ArrayList<>(List.of(month.toString()));
            for (int i = 0; i < covers.size(); i++) {
                double kg = covers.get(i).needKg().getOrDefault(month, 0.0);
                cells.add(kg == 0 ? "" : sums.get(i).add(kg));
            }
            table.row(cells.toArray(String[]::new));
        }
        List<String> totals = new ArrayList<>(List.of(""));
        sums.forEach(sum -> totals.add(sum.total()));
        table.total(totals.toArray(String[]::new));
        return table.text(2);
    }

    /**
     * Suggestions for a variety that is gone.
     *
     * @param suggestions the nearest first
     * @return a table
     */
    public static String of(List<Substitutes.Suggestion> suggestions) {
        TextTable table = TextTable.of("may stand in", "#nearness", "#kg ×", "since");
        for (Substitutes.Suggestion line : suggestions) {
            table.row(
                    line.variety(),
                    Figures.fixed(line.nearness(), 2),
                    Figures.fixed(line.kgFactor(), 2),
                    line.reason());
        }
        return table.text(2);
    }
}
