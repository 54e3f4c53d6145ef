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
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/** A harvest plan as text: addition by addition the lots and weights, totals, what changed, what runs out, what is short. */
public final class HarvestText {

    private HarvestText() {}

    /**
     * The whole plan as text.
     *
     * @param plan the plan
     * @return lines of text
     */
    public static String of(HarvestPlan plan) {
        return TextForm.of(sheet(plan));
    }

    /**
     * The whole plan.
     *
     * @param plan the plan
     * @return a sheet of the kind "hop plan"
     */
    public static Sheet sheet(HarvestPlan plan) {
        OptionalDouble cost = plan.cost();
        boolean costed = cost.isPresent() && !plan.allocations().isEmpty();
        List<Fact> about = new ArrayList<>();
        about.add(Fact.words("objective", "objective", plan.objective().label()));
        about.add(Fact.words("status", "status", plan.status().label()));
        if (costed) {
            about.add(Fact.figure("cost", "hops cost", Figures.fixed(cost, 2), ""));
        }
        List<Block> blocks = new ArrayList<>();
        for (HarvestPlan.Goal goal : plan.goals()) {
            blocks.add(goal(goal, blocks.size() + 1));
        }
        if (!plan.allocations().isEmpty()) {
            blocks.add(additions(plan));
            blocks.add(gyles(plan));
            blocks.add(lots(plan));
            changes(plan).ifPresent(blocks::add);
            plan.largestChange()
                    .ifPresent(change -> blocks.add(new Block.Note(
                            Block.Note.Kind.HOW,
                            "steadiness",
                            "the largest change of a lot's share from a gyle to the next is "
                                    + Figures.percent(change.size(), 1) + " (" + change.beer() + ", "
                                    + change.addition() + ", lot " + change.lot() + ", gyle " + change.fromGyle()
                                    + " to " + change.toGyle() + ")")));
        }
        for (Shortfall shortfall : plan.shortfalls()) {
            blocks.add(new Block.Note(Block.Note.Kind.FINDING, "short", shortfall.text()));
        }
        for (String remark : plan.remarks()) {
            blocks.add(new Block.Note(Block.Note.Kind.HOW, "note", remark));
        }
        String title = "Hop plan, " + plan.objective().label() + ": "
                + plan.status().label() + (costed ? ", hops cost " + Figures.fixed(cost, 2) : "");
        return new Sheet("hop plan", title, about, blocks);
    }

    private static Block goal(HarvestPlan.Goal goal, int number) {
        return new Block.Facts(List.of(
                Fact.figure("goal" + number, goal.what() + ":", Figures.fixed(goal.reached(), 4), ""),
                Fact.figure("bound" + number, "no plan can better", Figures.fixed(goal.bound(), 4), "")));
    }

    private static Table additions(HarvestPlan plan) {
        TextTable table = TextTable.keyed(
                "additions",
                "lots and weights, addition by addition",
                Column.words("gyle", "gyle"),
                Column.words("day", "day"),
                Column.words("beer", "beer"),
                Column.words("addition", "addition"),
                Column.words("lot", "lot"),
                Column.figures("alpha", "alpha %", "%"),
                Column.figures("weight", "kg", "kg"),
                Column.figures("weighOut", "weigh out kg", "kg"),
                Column.figures("ebu", "EBU", "EBU"),
                Column.figures("oil", "oil mL", "mL"),
                Column.figures("cost", "cost", ""));
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
        return table.table();
    }

    private static Table gyles(HarvestPlan plan) {
        TextTable table = TextTable.keyed(
                "gyles",
                "each gyle",
                Column.words("gyle", "gyle"),
                Column.words("beer", "beer"),
                Column.figures("ebuWanted", "EBU wanted", "EBU"),
                Column.figures("within", "within", "EBU"),
                Column.figures("ebu", "EBU", "EBU"),
                Column.figures("ebuWeighed", "as weighed", "EBU"),
                Column.figures("leaf", "leaf kg", "kg"),
                Column.figures("hops", "hops kg", "kg"));
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
        return table.table();
    }

    private static Table lots(HarvestPlan plan) {
        TextTable table = TextTable.keyed(
                "lots",
                "each lot",
                Column.words("lot", "lot"),
                Column.words("variety", "variety"),
                Column.figures("stock", "stock kg", "kg"),
                Column.figures("used", "used kg", "kg"),
                Column.figures("left", "left kg", "kg"),
                Column.words("usedUpOn", "used up on"),
                Column.figures("cost", "cost", ""));
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
        return table.table();
    }

    /** What changed from last year, once for all gyles of a beer that changed alike. */
    private static Optional<Table> changes(HarvestPlan plan) {
        Map<String, HarvestPlan.Change> firsts = new LinkedHashMap<>();
        for (HarvestPlan.Change change : plan.changes()) {
            firsts.putIfAbsent(change.beer() + "|" + change.addition() + "|" + change.lots(), change);
        }
        TextTable table = TextTable.keyed(
                "changes",
                "what changed from last year",
                Column.words("beer", "beer"),
                Column.words("addition", "addition"),
                Column.words("lotWas", "was lot"),
                Column.figures("weightWas", "kg", "kg"),
                Column.words("lots", "now lots"),
                Column.figures("weight", "kg", "kg"),
                Column.words("why", "why"));
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
        return firsts.isEmpty() ? Optional.empty() : Optional.of(table.table());
    }

    /**
     * Hops on hand against need, and what to contract, as text.
     *
     * @param covers the varieties
     * @param contracts ranges for next harvest
     * @return tables
     */
    public static String of(List<Cover.VarietyCover> covers, List<Cover.Contract> contracts) {
        return TextForm.of(sheet(covers, contracts));
    }

    /**
     * Hops on hand against need, and what to contract.
     *
     * @param covers the varieties
     * @param contracts ranges for next harvest
     * @return a sheet of the kind "hop cover"
     */
    public static Sheet sheet(List<Cover.VarietyCover> covers, List<Cover.Contract> contracts) {
        TextTable cover = TextTable.keyed(
                "cover",
                "hops on hand against need",
                Column.words("variety", "variety"),
                Column.figures("onHand", "on hand kg", "kg"),
                Column.figures("alpha", "alpha kg", "kg"),
                Column.figures("wanted", "wanted kg", "kg"),
                Column.figures("left", "left kg", "kg"),
                Column.words("runsOutOn", "runs out on"));
        for (Cover.VarietyCover line : covers) {
            cover.row(
                    line.variety(),
                    Figures.fixed(line.onHandKg(), 1),
                    Figures.fixed(line.onHandAlphaKg(), 2),
                    Figures.fixed(line.totalNeedKg(), 1),
                    Figures.fixed(line.leftKg(), 1),
                    line.runsOutOn().map(Object::toString).orElse(""));
        }
        TextTable contract = TextTable.keyed(
                "contracts",
                "what to contract for the next harvest",
                Column.words("variety", "to contract"),
                Column.figures("least", "least kg", "kg"),
                Column.figures("mean", "mean kg", "kg"),
                Column.figures("most", "most kg", "kg"),
                Column.words("basis", "for"));
        for (Cover.Contract line : contracts) {
            contract.row(
                    line.variety(),
                    Figures.fixed(line.leastKg(), 0),
                    Figures.fixed(line.meanKg(), 0),
                    Figures.fixed(line.mostKg(), 0),
                    line.basis());
        }
        return new Sheet(
                "hop cover",
                "Hops on hand, hops wanted and what to contract",
                List.of(),
                List.of(cover.table(), months(covers), contract.table()));
    }

    /** What is wanted month by month, a column for each variety. */
    private static Table months(List<Cover.VarietyCover> covers) {
        List<Column> columns = new ArrayList<>(List.of(Column.words("month", "wanted kg in")));
        TreeSet<YearMonth> months = new TreeSet<>();
        for (Cover.VarietyCover line : covers) {
            String key = Column.keyOf("kg " + line.variety());
            boolean taken = columns.stream().anyMatch(column -> column.key().equals(key));
            columns.add(Column.figures(taken ? key + columns.size() : key, line.variety(), "kg"));
            months.addAll(line.needKg().keySet());
        }
        TextTable table = TextTable.keyed("months", "what is wanted month by month", columns.toArray(Column[]::new));
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
        return table.table();
    }

    /**
     * Suggestions for a variety that is gone, as text.
     *
     * @param suggestions the nearest first
     * @return a table
     */
    public static String of(List<Substitutes.Suggestion> suggestions) {
        return TextForm.of(sheet(suggestions));
    }

    /**
     * Suggestions for a variety that is gone.
     *
     * @param suggestions the nearest first
     * @return a sheet of the kind "substitutes"
     */
    public static Sheet sheet(List<Substitutes.Suggestion> suggestions) {
        TextTable table = TextTable.keyed(
                "substitutes",
                "varieties in store that may stand in",
                Column.words("variety", "may stand in"),
                Column.figures("nearness", "nearness", ""),
                Column.figures("kgFactor", "kg ×", ""),
                Column.words("since", "since"));
        for (Substitutes.Suggestion line : suggestions) {
            table.row(
                    line.variety(),
                    Figures.fixed(line.nearness(), 2),
                    Figures.fixed(line.kgFactor(), 2),
                    line.reason());
        }
        return Sheet.of("substitutes", "Varieties in store that may stand in", table.table());
    }
}
