package costrel.report;

import costrel.brewery.RiskStudy;
import costrel.harvest.HarvestPlan;
import costrel.pricing.Comparison;
import costrel.pricing.ComparisonStatement;
import costrel.pricing.Effect;
import costrel.pricing.RiskResult;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;

/** Charts of block characters for a terminal. The figure stands before its bar, so that nothing hangs on the bar alone. */
public final class ChartText {

    private static final int BAR = 40;
    private static final String EIGHTHS = " ▏▎▍▌▋▊▉";

    private ChartText() {}

    /**
     * Where the price of a pint goes.
     *
     * @param split the parts
     * @return a bar for each part; what is below 0 has a shaded bar
     */
    public static String of(PintSplit split) {
        double most = split.parts().stream()
                .mapToDouble(part -> Math.abs(part.perPint().doubleValue()))
                .max()
                .orElse(0);
        TextTable table = TextTable.of(split.name(), "#" + MoneyWords.coins(split.currency()) + " a pint", "");
        List<BigDecimal> pence = split.pence();
        for (int i = 0; i < pence.size(); i++) {
            table.row(
                    split.parts().get(i).kind().label(),
                    pence.get(i).toPlainString(),
                    bar(split.parts().get(i).perPint().doubleValue(), most));
        }
        table.total(
                split.priced() ? "price with VAT" : "cost", split.pencePerPint().toPlainString(), "");
        return table.text(2);
    }

    /**
     * Why a pint moved, as steps from before to after.
     *
     * @param comparison the comparison
     * @return a line for each effect; each step begins where the last ended
     */
    public static String of(Comparison comparison) {
        CurrencyUnit currency = comparison.after().total().getCurrencyUnit();
        ComparisonStatement statement = comparison.pencePerPint();
        List<Step> steps = Step.of(statement);
        BigDecimal least = steps.stream().map(Step::least).reduce(statement.before(), BigDecimal::min);
        BigDecimal most = steps.stream().map(Step::most).reduce(statement.before(), BigDecimal::max);
        TextTable table = TextTable.of("why a pint moved", "#" + MoneyWords.coins(currency), "");
        table.row("before", statement.before().toPlainString(), marker(statement.before(), least, most));
        for (Step step : steps) {
            int from = place(step.least(), least, most);
            int to = Math.max(from + 1, place(step.most(), least, most));
            table.row(
                    step.effect().label(),
                    (step.amount().signum() > 0 ? "+" : "") + step.amount().toPlainString(),
                    " ".repeat(from) + (step.amount().signum() < 0 ? "░" : "█").repeat(to - from));
        }
        table.row("after", statement.after().toPlainString(), marker(statement.after(), least, most));
        return table.text(2) + Figures.folded("█ dearer, ░ cheaper", 2, 110);
    }

    /**
     * One step from before to after.
     *
     * @param effect what moved
     * @param from where it begins
     * @param amount by how much
     */
    record Step(Effect effect, BigDecimal from, BigDecimal amount) {

        /** The steps of a comparison that moved anything. */
        static List<Step> of(ComparisonStatement statement) {
            List<Step> steps = new ArrayList<>();
            BigDecimal at = statement.before();
            for (ComparisonStatement.Row row : statement.rows()) {
                if (row.amount().signum() != 0) {
                    steps.add(new Step(row.effect(), at, row.amount()));
                    at = at.add(row.amount());
                }
            }
            return steps;
        }

        BigDecimal least() {
            return from.min(from.add(amount));
        }

        BigDecimal most() {
            return from.max(from.add(amount));
        }
    }

    /**
     * What a pint may come to cost: nine in ten draws lie under the right end of the band, a tenth under the left.
     *
     * @param study what was drawn
     * @param result what came of it
     * @return the band with the middle and the sheet's own figure
     */
    public static String of(RiskStudy study, RiskResult result) {
        CurrencyUnit currency = study.sheet().total().getCurrencyUnit();
        double least = Math.min(result.p10PerPint(), result.sheetPerPint());
        double most = Math.max(result.p90PerPint(), result.sheetPerPint());
        TextTable table = TextTable.of("what a pint may cost", "#" + MoneyWords.coins(currency), "");
        int from = place(result.p10PerPint(), least, most);
        int to = Math.max(from + 1, place(result.p90PerPint(), least, most));
        table.row("a tenth cost no more (P10)", coins(currency, result.p10PerPint()), " ".repeat(from) + "├");
        table.row(
                "half cost no more (P50)",
                coins(currency, result.p50PerPint()),
                " ".repeat(from) + "█".repeat(to - from));
        table.row("nine in ten cost no more (P90)", coins(currency, result.p90PerPint()), " ".repeat(to - 1) + "┤");
        table.row(
                "the sheet",
                coins(currency, result.sheetPerPint()),
                " ".repeat(Math.min(BAR - 1, place(result.sheetPerPint(), least, most))) + "│");
        return table.text(2);
    }

    /**
     * Use of hops over the year.
     *
     * @param plan the plan
     * @return a bar for each month and the lots in it
     */
    public static String of(HarvestPlan plan) {
        HopMonths use = HopMonths.of(plan);
        List<Double> totals = new ArrayList<>();
        for (int i = 0; i < use.months().size(); i++) {
            int month = i;
            totals.add(
                    use.lots().stream().mapToDouble(lot -> lot.kg().get(month)).sum());
        }
        double most = totals.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        TextTable table = TextTable.of("hops by month", "#kg", "");
        PaperSum kg = new PaperSum(1);
        for (int i = 0; i < totals.size(); i++) {
            table.row(use.months().get(i).toString(), kg.add(totals.get(i)), bar(totals.get(i), most));
        }
        table.total("all", kg.total(), "");
        return table.text(2);
    }

    /** A bar to an eighth of a character. */
    static String bar(double value, double most) {
        if (!(most > 0)) {
            return "";
        }
        long eighths = Math.round(Math.abs(value) / most * BAR * 8);
        if (value < 0) {
            return "░".repeat((int) Math.max(1, Math.round(eighths / 8.0)));
        }
        int rest = (int) (eighths % 8);
        return "█".repeat((int) (eighths / 8)) + (rest == 0 ? "" : EIGHTHS.substring(rest, rest + 1));
    }

    private static String marker(BigDecimal value, BigDecimal least, BigDecimal most) {
        return " ".repeat(Math.min(BAR - 1, place(value, least, most))) + "│";
    }

    private static int place(BigDecimal value, BigDecimal least, BigDecimal most) {
        return place(value.doubleValue(), least.doubleValue(), most.doubleValue());
    }

    private static int place(double value, double least, double most) {
        return most > least ? (int) Math.round((value - least) / (most - least) * BAR) : 0;
    }

    private static String coins(CurrencyUnit currency, double money) {
        return BigDecimal.valueOf(money)
                .movePointRight(currency.getDecimalPlaces())
                .setScale(2, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
