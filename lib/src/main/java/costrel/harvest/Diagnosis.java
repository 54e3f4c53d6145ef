package costrel.harvest;

import costrel.harvest.LinearProgram.Answer;
import costrel.harvest.LinearProgram.Row;
import costrel.harvest.PlanModel.Tag;
import costrel.harvest.PlanModel.Use;
import costrel.recipe.Holds;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Why there is no plan. Every requirement is let give way at a cost: first what no stock can mend is made least, then the
 * kilograms that would have to be added to the stocks. What has to give way even so is short.
 */
final class Diagnosis {

    /** What gives way by less than this, for each unit of the requirement (or 1), is met. */
    private static final double MET = 1e-7;

    /** Alpha acid of a middling hop, only to weigh requirements of unlike units against one another: judgement, no source. */
    private static final double MIDDLING_ALPHA = 0.05;

    /** Oil of a middling hop, mL for each kg, for the same end: judgement, no source. */
    private static final double MIDDLING_OIL = 10;

    /** A requirement counts so many times a rule of the house, so that a rule gives way first. */
    private static final double OVER_RULES = 10;

    private final PlanModel model;
    private final LinearProgram program;
    private final List<Slack> slacks = new ArrayList<>();
    private final List<Shortfall> shortfalls = new ArrayList<>();

    /** A column by which a row gives way; {@code more} where it allows more than the row's most. */
    private record Slack(int column, Tag tag, boolean more, double weight, double scale) {}

    /**
     * The diagnosis.
     *
     * @param shortfalls what is short; nothing where all requirements can be met after all
     * @param nearest what comes nearest to a plan
     */
    record Found(List<Shortfall> shortfalls, Answer nearest) {}

    private Diagnosis(PlanModel model) {
        this.model = model;
        this.program = model.program().copy();
    }

    static Found of(PlanModel model, PlanLimits limits) {
        return new Diagnosis(model).find(limits);
    }

    private Found find(PlanLimits limits) {
        model.tags().forEach(this::loosen);
        double[] unmet = new double[program.columns()];
        double[] extra = new double[program.columns()];
        for (Slack slack : slacks) {
            (slack.tag().asks() == PlanModel.Asks.STOCK ? extra : unmet)[slack.column()] = slack.weight();
        }
        Answer first = program.minimise(unmet, limits);
        if (!first.hasPoint()) {
            throw new IllegalStateException("planner: expected an answer within " + limits.mostSteps()
                    + " steps, found none; allow more steps");
        }
        int[] columns = new int[unmet.length];
        Arrays.setAll(columns, i -> i);
        program.row(new Row(columns, unmet, Double.NEGATIVE_INFINITY, first.cost() + 1e-9 * Math.max(1, first.cost())));
        Answer second = program.minimise(extra, limits);
        Answer nearest = second.hasPoint() ? second : first;
        double[] x = nearest.x();
        slacks.stream()
                .filter(slack -> x[slack.column()] > MET * Math.max(1, slack.scale()))
                .forEach(slack -> tell(slack, x[slack.column()], x));
        return new Found(List.copyOf(shortfalls), nearest);
    }

    private void loosen(Tag tag) {
        Row row = program.row(tag.row());
        double reach = reach(row);
        switch (tag.asks()) {
            case BITTERNESS -> {
                PlanGyle gyle = model.gyle(tag.gyle());
                double weight = OVER_RULES / (ebuPerKgAlpha(tag.gyle()) * MIDDLING_ALPHA);
                give(tag, false, Math.max(0, row.least()), weight, gyle.targetEbu());
                give(tag, true, reach, weight, gyle.targetEbu());
            }
            case HELD -> give(tag, false, row.most(), OVER_RULES / perKg(tag), row.most());
            case LEAF -> give(tag, false, row.least(), OVER_RULES, row.least());
            case MOST_SHARE -> give(tag, true, reach, 1 / perKg(tag), 1);
            case SOLUBLE -> give(tag, true, reach, 1 / MIDDLING_ALPHA, row.most());
            case STOCK -> give(tag, true, reach, 1, model.lot(tag.lot()).stockKg());
            case PROPORTION -> {}
        }
    }

    /** The most that a row can come to over the bounds of its columns. */
    private double reach(Row row) {
        double[] upper = program.upper();
        double sum = 0;
        for (int i = 0; i < row.size(); i++) {
            sum += Math.max(0, row.factor(i)) * upper[row.column(i)];
        }
        return sum;
    }

    private void give(Tag tag, boolean more, double most, double weight, double scale) {
        int column = program.column(most);
        Row row = program.row(tag.row());
        program.replace(tag.row(), row.plus(column, more ? -1 : 1));
        slacks.add(new Slack(column, tag, more, weight, scale));
    }

    /** What a kilogram of a middling hop brings of what the addition of a row holds. */
    private double perKg(Tag tag) {
        PlanAddition addition = model.addition(tag.gyle(), tag.addition());
        return switch (addition.holds()) {
            case BITTERNESS -> addition.ebuPerKgAlpha() * MIDDLING_ALPHA;
            case DOSE -> 1;
            case OIL -> MIDDLING_OIL;
        };
    }

    /** EBU of a kilogram of alpha acid where it brings most in a gyle, before all in what holds bitterness; 1 where nowhere. */
    private double ebuPerKgAlpha(int g) {
        List<PlanAddition> additions = model.gyle(g).additions();
        double bittering = additions.stream()
                .filter(each -> each.holds() == Holds.BITTERNESS)
                .mapToDouble(PlanAddition::ebuPerKgAlpha)
                .max()
                .orElse(0);
        double any = additions.stream()
                .mapToDouble(PlanAddition::ebuPerKgAlpha)
                .max()
                .orElse(0);
        return bittering > 0 ? bittering : any > 0 ? any : 1;
    }

    private void tell(Slack slack, double by, double[] kg) {
        Tag tag = slack.tag();
        switch (tag.asks()) {
            case STOCK -> stock(tag.lot(), kg);
            case BITTERNESS -> bitterness(tag.gyle(), slack.more(), by);
            case HELD -> held(tag.gyle(), tag.addition(), by);
            case LEAF ->
                of(
                        tag.gyle(),
                        words(tag.gyle()) + ": the bed of leaf hops is " + Figures.kg(by) + " short of "
                                + Figures.kg(model.gyle(tag.gyle()).leastLeafKg()),
                        OptionalDouble.of(by),
                        OptionalDouble.empty(),
                        "a leaf lot with less alpha acid in the copper, or a smaller bed");
            case MOST_SHARE ->
                of(
                        tag.gyle(),
                        words(tag.gyle()) + ", " + label(tag) + ": "
                                + model.lot(tag.lot()).words() + " would have to bring more than "
                                + Figures.percent(model.rules().mostShare()),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        "a further lot of " + varieties(tag)
                                + ", an allowed substitute, or a larger share for one lot");
            case SOLUBLE ->
                of(
                        tag.gyle(),
                        words(tag.gyle()) + ", " + label(tag) + ": alpha acid of "
                                + Figures.fixed(
                                        model.rules().alphaSolubleMgPerL()
                                                + by
                                                        * 1e6
                                                        / model.gyle(tag.gyle()).collectedL(),
                                        0)
                                + " mg/L, of which "
                                + Figures.fixed(model.rules().alphaSolubleMgPerL(), 0) + " mg/L dissolves",
                        OptionalDouble.empty(),
                        OptionalDouble.of(by),
                        "split the addition");
            case PROPORTION -> {}
        }
    }

    private void stock(int lot, double[] kg) {
        PlanLot hops = model.lot(lot);
        Map<YearMonth, double[]> short0 = new TreeMap<>();
        double used = 0;
        for (int column : model.columnsOfLot(lot)) {
            Use use = model.uses().get(column);
            double before = Math.max(used, hops.stockKg());
            used += kg[column];
            if (used > before) {
                double[] sums = short0.computeIfAbsent(
                        YearMonth.from(model.gyle(use.gyle()).day()), month -> new double[2]);
                sums[0] += used - before;
                sums[1] += (used - before) * use.alpha();
            }
        }
        short0.forEach((month, sums) -> shortfalls.add(new Shortfall(
                hops.variety() + ": " + Figures.kg(sums[0]) + " short in " + words(month) + " (" + Figures.kg(sums[1])
                        + " alpha acid)",
                Optional.of(month),
                OptionalDouble.of(sums[0]),
                OptionalDouble.of(sums[1]),
                Figures.kg(sums[0]) + " more of lot " + hops.id() + ", or of other " + hops.variety()
                        + " with as much alpha acid, or allow a substitute for " + hops.variety())));
    }

    private void bitterness(int g, boolean more, double by) {
        PlanGyle gyle = model.gyle(g);
        if (more) {
            of(
                    g,
                    words(g) + ": the additions bring " + Figures.fixed(by, 2) + " EBU more than "
                            + Figures.fixed(gyle.targetEbu() + gyle.toleranceEbu(), 2) + " EBU",
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    "a lower dose of late hops, lots with less alpha acid, or a wider tolerance");
            return;
        }
        List<String> empty = new ArrayList<>();
        List<String> wanted = new ArrayList<>();
        for (int a = 0; a < gyle.additions().size(); a++) {
            PlanAddition addition = model.addition(g, a);
            if (addition.holds() == Holds.BITTERNESS && model.columnsOf(g, a).isEmpty()) {
                empty.add(addition.label());
                wanted.add(addition.variety());
            }
        }
        boolean bittering = gyle.additions().stream().anyMatch(each -> each.holds() == Holds.BITTERNESS);
        double alphaKg = by / ebuPerKgAlpha(g);
        String varieties = String.join(", ", wanted.stream().distinct().toList());
        of(
                g,
                words(g) + ": " + Figures.fixed(by, 2) + " EBU short (" + Figures.kg(alphaKg) + " alpha acid)"
                        + (empty.isEmpty()
                                ? bittering ? "" : ", since no addition holds bitterness"
                                : ", since no lot can go into " + String.join(", ", empty) + whyNot(g, wanted)),
                OptionalDouble.empty(),
                OptionalDouble.of(alphaKg),
                empty.isEmpty()
                        ? bittering ? "a lot with more alpha acid" : "let a copper addition hold bitterness"
                        : "a lot of " + varieties + " by " + gyle.day() + ", or allow a substitute");
    }

    private void held(int g, int a, double by) {
        PlanAddition addition = model.addition(g, a);
        boolean oil = addition.holds() == Holds.OIL;
        of(
                g,
                words(g) + ", " + addition.label() + ": " + addition.variety() + " is "
                        + (oil ? Figures.fixed(by, 1) + " mL of oil" : Figures.kg(by)) + " short"
                        + (model.columnsOf(g, a).isEmpty()
                                ? ", since no lot can go in" + whyNot(g, List.of(addition.variety()))
                                : ""),
                oil ? OptionalDouble.empty() : OptionalDouble.of(by),
                OptionalDouble.empty(),
                "a lot of " + addition.variety() + (oil ? " with a figure for oil" : "") + " by "
                        + model.gyle(g).day() + ", or allow a substitute");
    }

    /** Which lots of a variety there are and why they can't be used on the day. */
    private String whyNot(int g, List<String> varieties) {
        PlanGyle gyle = model.gyle(g);
        List<String> reasons = new ArrayList<>();
        for (PlanLot lot : model.lots()) {
            if (!varieties.contains(lot.variety())) {
                continue;
            }
            if (gyle.day().isBefore(lot.availableFrom())) {
                reasons.add("lot " + lot.id() + " is there from " + lot.availableFrom());
            } else if (lot.alphaFor(gyle).isEmpty()) {
                reasons.add("lot " + lot.id() + " has no alpha acid figure for the day");
            } else {
                reasons.add("lot " + lot.id() + " is " + lot.form().label() + " with alpha acid "
                        + Figures.percent(lot.alphaFor(gyle).getAsDouble())
                        + (lot.oilMlPer100g().isEmpty() ? " and no figure for oil" : ""));
            }
        }
        return reasons.isEmpty() ? "" : " (" + String.join("; ", reasons) + ")";
    }

    private void of(int g, String what, OptionalDouble kg, OptionalDouble alphaKg, String mend) {
        shortfalls.add(
                new Shortfall(what, Optional.of(YearMonth.from(model.gyle(g).day())), kg, alphaKg, mend));
    }

    private String words(int g) {
        return model.gyle(g).words();
    }

    private String label(Tag tag) {
        return model.addition(tag.gyle(), tag.addition()).label();
    }

    private String varieties(Tag tag) {
        return model.addition(tag.gyle(), tag.addition()).variety();
    }

    static String words(YearMonth month) {
        return month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + month.getYear();
    }
}
