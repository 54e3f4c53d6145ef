package costrel.report;

import costrel.brewery.PricedRange;
import costrel.brewery.RiskStudy;
import costrel.harvest.HarvestPlan;
import costrel.pricing.Comparison;
import costrel.pricing.ComparisonStatement;
import costrel.pricing.Price;
import costrel.pricing.RangeView;
import costrel.pricing.RiskPlan;
import costrel.pricing.RiskResult;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;

/** Sheets that answer a question: why a pint moved, what it may come to cost, which beers pay, which hops go where. */
public final class StudyHtml {

    /** As many as fit beside the names of the lots: a year and the month in which it began. */
    private static final int MONTHS_ACROSS = 13;

    private StudyHtml() {}

    private static Html begin(String title, String heading, String words) {
        Html html = Html.page(title + ", " + heading, SheetStyle.COMMON);
        return html.open("main").leaf("p", title).leaf("h1", heading).leaf("p", words);
    }

    /**
     * Why a pint costs more or less than it did.
     *
     * @param comparison the comparison
     * @param pictures to stand under the effects
     * @return a page of HTML that needs no other file
     */
    public static String of(Comparison comparison, List<Picture> pictures) {
        CurrencyUnit currency = comparison.after().total().getCurrencyUnit();
        String unit = "#" + MoneyWords.coins(currency) + " a pint";
        ComparisonStatement statement = comparison.pencePerPint();
        Html html = begin(
                "Why a pint moved",
                comparison.after().batch().beer(),
                "From " + comparison.before().batch().beer() + " at the prices of "
                        + comparison.before().batch().costedOn() + " to "
                        + comparison.after().batch().beer() + " at those of "
                        + comparison.after().batch().costedOn() + ", without VAT.");
        html.table("By cause", "", unit);
        html.open("tr").leaf("th", "before", "scope", "row");
        html.figure("before", statement.before().toPlainString()).close("tr");
        for (ComparisonStatement.Row row : statement.rows()) {
            html.open("tr").leaf("th", row.effect().label(), "scope", "row");
            html.figure("effect." + Html.key(row.effect()), signed(row.amount()))
                    .close("tr");
        }
        html.open("tr", "class", "total").leaf("th", "after", "scope", "row");
        html.figure("after", statement.after().toPlainString()).close("tr").endTable();
        pictures.forEach(html::picture);
        for (ComparisonStatement.Row row : statement.rows()) {
            if (row.lines().isEmpty()) {
                continue;
            }
            html.table("By " + row.effect().label(), "part", "item", unit);
            for (ComparisonStatement.Line line : row.lines()) {
                html.open("tr").cell(line.part()).cell(line.item());
                html.leaf("td", signed(line.amount()), "class", "n").close("tr");
            }
            html.open("tr", "class", "total").cell("in all").cell("");
            html.leaf("td", signed(row.amount()), "class", "n").close("tr").endTable();
        }
        return html.leaf("p", "Method: " + Comparison.METHOD + ".")
                .leaf("p", MoneyWords.CARE)
                .close("main")
                .finished();
    }

    private static String signed(BigDecimal amount) {
        return (amount.signum() > 0 ? "+" : "") + amount.toPlainString();
    }

    /**
     * What a pint may come to cost.
     *
     * @param study what was drawn
     * @param result what came of it
     * @param pictures to stand under the figures
     * @return a page of HTML that needs no other file
     */
    public static String of(RiskStudy study, RiskResult result, List<Picture> pictures) {
        CurrencyUnit currency = study.sheet().total().getCurrencyUnit();
        RiskPlan plan = result.plan();
        Html html = begin(
                "What a pint may come to cost",
                study.sheet().batch().beer(),
                study.container().map(one -> one.container().name()).orElse("whole mix")
                        + String.format(Locale.ROOT, ", %,d draws with seed %d.", plan.draws(), plan.seed()));
        html.table("Of all draws", "", "#" + MoneyWords.coins(currency) + " a pint");
        risk(html, currency, "sheet", "as the sheet reckons", result.sheetPerPint());
        risk(html, currency, "p10", "a tenth cost no more than (P10)", result.p10PerPint());
        risk(html, currency, "p50", "half cost no more than (P50)", result.p50PerPint());
        risk(html, currency, "p90", "nine in ten cost no more than (P90)", result.p90PerPint());
        risk(html, currency, "mean", "mean", result.meanPerPint());
        html.endTable();
        pictures.forEach(html::picture);
        html.table("What drives it", "driver", "#rank correlation with the cost");
        for (int i = 0; i < result.influences().size(); i++) {
            RiskResult.Influence influence = result.influences().get(i);
            html.open("tr").leaf("th", influence.driver(), "scope", "row");
            html.figure("driver." + i, Figures.fixed(influence.rankCorrelation(), 2))
                    .close("tr");
        }
        html.endTable();
        return html.leaf("p", "No better than its spreads, which are your own: not a forecast.")
                .leaf("p", MoneyWords.CARE)
                .close("main")
                .finished();
    }

    private static void risk(Html html, CurrencyUnit currency, String key, String label, double money) {
        html.open("tr").leaf("th", label, "scope", "row");
        html.figure(key, MoneyWords.coinsOf(currency, BigDecimal.valueOf(money)))
                .close("tr");
    }

    /**
     * Which lots go into which gyles.
     *
     * @param plan the plan
     * @param pictures to stand under the months
     * @return a page of HTML that needs no other file
     */
    public static String of(HarvestPlan plan, List<Picture> pictures) {
        Html html = begin(
                "Hop plan",
                "Hops of the year",
                "Planned for " + plan.objective().label() + ": " + plan.status().label() + ".");
        HopMonths use = HopMonths.of(plan);
        for (int first = 0; first < use.months().size(); first += MONTHS_ACROSS) {
            months(html, use, first, Math.min(use.months().size(), first + MONTHS_ACROSS));
        }
        pictures.forEach(html::picture);
        if (!plan.allocations().isEmpty()) {
            html.table("Gyle by gyle", "gyle", "day", "beer", "addition", "lot", "#alpha %", "#weigh out kg");
            for (int i = 0; i < plan.allocations().size(); i++) {
                HarvestPlan.Allocation line = plan.allocations().get(i);
                html.open("tr")
                        .leaf("th", line.gyle(), "scope", "row")
                        .cell(line.day().toString())
                        .cell(line.beer());
                html.cell(line.addition() + ", " + line.variety()).cell(line.lot());
                html.leaf("td", Figures.fixed(line.alpha() * 100, 2), "class", "n");
                html.figure("allocation." + i, Figures.fixed(line.weighedKg(), 2))
                        .close("tr");
            }
            html.endTable();
        }
        html.open("ul");
        plan.shortfalls().forEach(shortfall -> html.leaf("li", "short: " + shortfall.text()));
        plan.remarks().forEach(remark -> html.leaf("li", "note: " + remark));
        html.leaf("li", "Alpha acid of each day is reckoned ahead; go by the newest analysis when the day comes.");
        return html.close("ul").close("main").finished();
    }

    /** A part of the year, a row for each lot; the last part has the sums of all of it. */
    private static void months(Html html, HopMonths use, int first, int end) {
        boolean last = end == use.months().size();
        List<String> headers = new ArrayList<>(List.of("lot", "variety"));
        use.months().subList(first, end).forEach(month -> headers.add("#" + month));
        headers.add(last ? "#all" : "");
        html.table("Lots by the month, kg weighed out", headers.toArray(String[]::new));
        for (HopMonths.Lot lot : use.lots()) {
            html.open("tr").leaf("th", lot.lot(), "scope", "row").cell(lot.variety());
            for (double kg : lot.kg().subList(first, end)) {
                html.leaf("td", kg == 0 ? "" : Figures.fixed(kg, 2), "class", "n");
            }
            if (last) {
                html.figure("lot." + lot.lot(), Figures.fixed(lot.totalKg(), 2)).close("tr");
            } else {
                html.cell("").close("tr");
            }
        }
        html.endTable();
    }

    /**
     * Which beers earn their tank time. For the brewery's own eyes: it shows costs.
     *
     * @param range the range
     * @param pictures to stand under the table
     * @return a page of HTML that needs no other file
     */
    public static String of(PricedRange range, List<Picture> pictures) {
        CurrencyUnit currency = range.view().currency();
        String sign = MoneyWords.sign(currency);
        Html html = begin(
                "Which beers earn their tank time",
                "The range",
                "At the costs and duty of " + range.day() + ", without VAT. Not for customers: it shows costs.");
        html.table(
                "One of each",
                "beer and container",
                "#costs " + sign,
                "#price " + sign,
                "#margin %",
                "#contribution " + sign + " a hL",
                "#rank",
                "#" + sign + " a tank-day",
                "#rank");
        for (int i = 0; i < range.view().rows().size(); i++) {
            RangeView.Row row = range.view().rows().get(i);
            Price price = row.sold().price();
            String key = "range." + i;
            html.open("tr").leaf("th", price.cost().name(), "scope", "row");
            html.figure(key + ".cost", MoneyWords.figure(currency, price.cost().cost()));
            html.figure(key + ".price", MoneyWords.figure(price.net()));
            html.figure(key + ".margin", MoneyWords.percent(price.margin()));
            html.figure(key + ".hl", MoneyWords.figure(currency, price.contributionPerHl()));
            html.leaf("td", String.valueOf(row.rankPerHl()), "class", "n");
            html.figure(
                    key + ".day",
                    price.contributionPerTankDay()
                            .map(money -> MoneyWords.figure(currency, money))
                            .orElse(""));
            html.leaf(
                    "td",
                    row.rankPerTankDay().isPresent()
                            ? String.valueOf(row.rankPerTankDay().getAsInt())
                            : "",
                    "class",
                    "n");
            html.close("tr");
        }
        html.endTable();
        pictures.forEach(html::picture);
        range.remarks().forEach(remark -> html.leaf("p", "finding: " + remark));
        return html.leaf("p", MoneyWords.CARE).close("main").finished();
    }
}
