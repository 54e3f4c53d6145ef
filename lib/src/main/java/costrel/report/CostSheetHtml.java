package costrel.report;

import costrel.brewery.SellingPrices;
import costrel.cost.ContainerCost;
import costrel.cost.CostGroup;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.cost.YieldChain;
import costrel.explain.CostFinding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The cost of a gyle for the accountant: every line and where it was bought, what it adds up to, and where a pint's price goes. */
public final class CostSheetHtml {

    private CostSheetHtml() {}

    /**
     * The cost alone.
     *
     * @param sheet the cost sheet
     * @param pictures to stand under where a pint's cost goes
     * @return a page of HTML that needs no other file
     */
    public static String of(CostSheet sheet, List<Picture> pictures) {
        return page(sheet, List.of(PintSplit.of(sheet)), pictures);
    }

    /**
     * The cost with the prices that are asked.
     *
     * @param prices the containers, priced or not
     * @param pictures to stand under where a pint's price goes
     * @return a page of HTML that needs no other file
     */
    public static String of(SellingPrices prices, List<Picture> pictures) {
        return page(prices.sheet(), PintSplit.of(prices), pictures);
    }

    private static String page(CostSheet sheet, List<PintSplit> splits, List<Picture> pictures) {
        Html html = Html.page(sheet.batch().beer() + ", cost sheet", SheetStyle.COMMON);
        html.open("main")
                .leaf("p", "Cost sheet of one gyle")
                .leaf("h1", sheet.batch().beer(), "data-key", "beer");
        html.leaf(
                "p",
                "Brewed " + sheet.batch().brewedOn() + ", at the prices of "
                        + sheet.batch().costedOn() + ", duty point "
                        + sheet.batch().dutyOn()
                        + "; without VAT but where it is named.");
        split(html, splits);
        pictures.forEach(html::picture);
        groups(html, sheet);
        containers(html, sheet);
        lines(html, "The gyle", "gyle", sheet.gyleLines(), sheet.gyleCost());
        for (int i = 0; i < sheet.containers().size(); i++) {
            container(html, "container." + i, sheet.containers().get(i));
        }
        yieldChain(html, sheet.yieldChain());
        notes(html, sheet);
        return html.close("main").finished();
    }

    private static void split(Html html, List<PintSplit> splits) {
        boolean priced = splits.stream().anyMatch(PintSplit::priced);
        List<String> headers = new ArrayList<>(List.of(""));
        splits.forEach(split -> headers.add("#" + split.name()));
        html.table(
                "Where the " + (priced ? "price" : "cost") + " of a pint goes, "
                        + MoneyWords.coins(splits.get(0).currency()) + " a pint",
                headers.toArray(String[]::new));
        for (PintSplit.Kind kind : PintSplit.Kind.values()) {
            if (splits.stream().noneMatch(split -> at(split, kind) >= 0)) {
                continue;
            }
            html.open("tr").leaf("th", kind.label(), "scope", "row");
            for (int i = 0; i < splits.size(); i++) {
                int at = at(splits.get(i), kind);
                html.figure(
                        "pint." + i + "." + Html.key(kind),
                        at < 0 ? "" : splits.get(i).pence().get(at).toPlainString());
            }
            html.close("tr");
        }
        html.open("tr", "class", "total").leaf("th", priced ? "price with VAT" : "cost", "scope", "row");
        for (int i = 0; i < splits.size(); i++) {
            html.figure("pint." + i + ".all", splits.get(i).pencePerPint().toPlainString());
        }
        html.close("tr").endTable();
    }

    private static int at(PintSplit split, PintSplit.Kind kind) {
        for (int i = 0; i < split.parts().size(); i++) {
            if (split.parts().get(i).kind() == kind) {
                return i;
            }
        }
        return -1;
    }

    private static void groups(Html html, CostSheet sheet) {
        CurrencyUnit currency = sheet.total().getCurrencyUnit();
        html.table(
                "Where the money goes",
                "part",
                "#" + MoneyWords.sign(currency),
                "#" + MoneyWords.coins(currency) + " a pint");
        PaperSum pence = new PaperSum(2);
        for (CostGroup group : CostGroup.values()) {
            Money sum = sheet.sumOf(group);
            if (!sum.isZero()) {
                BigDecimal each = PintSplit.perPint(sum, sheet.yieldChain().saleablePints());
                html.open("tr").leaf("th", group.label(), "scope", "row");
                html.figure("group." + Html.key(group), MoneyWords.figure(sum));
                html.figure(
                                "group." + Html.key(group) + ".pint",
                                pence.step(each.movePointRight(currency.getDecimalPlaces())
                                        .doubleValue()))
                        .close("tr");
            }
        }
        html.open("tr", "class", "total").leaf("th", "all", "scope", "row");
        html.figure("total", MoneyWords.figure(sheet.total()));
        html.figure("total.pint", sheet.pencePerPint().toPlainString())
                .close("tr")
                .endTable();
    }

    private static void containers(Html html, CostSheet sheet) {
        CurrencyUnit currency = sheet.total().getCurrencyUnit();
        String sign = MoneyWords.sign(currency);
        html.table(
                "By the container",
                "in",
                "#filled",
                "#gyle " + sign,
                "#packaging " + sign,
                "#duty " + sign,
                "#total " + sign,
                "#each " + sign,
                "#" + MoneyWords.coins(currency) + " a pint");
        for (int i = 0; i < sheet.containers().size(); i++) {
            ContainerCost container = sheet.containers().get(i);
            Money duty = container.duty().duty();
            String key = "container." + i;
            html.open("tr").leaf("th", container.container().name(), "scope", "row");
            html.figure(key + ".count", String.valueOf(container.count()));
            html.figure(key + ".gyle", MoneyWords.figure(container.gyleShare()));
            html.figure(
                    key + ".packaging",
                    MoneyWords.figure(
                            container.total().minus(container.gyleShare()).minus(duty)));
            html.figure(key + ".duty", MoneyWords.figure(duty));
            html.figure(key + ".total", MoneyWords.figure(container.total()));
            html.figure(key + ".each", container.count() == 0 ? "" : MoneyWords.figure(container.perContainer()));
            html.figure(
                    key + ".pint",
                    container.count() == 0 ? "" : container.pencePerPint().toPlainString());
            html.close("tr");
        }
        html.endTable();
    }

    private static void lines(Html html, String caption, String key, List<CostLine> lines, Money total) {
        String sign = MoneyWords.sign(total.getCurrencyUnit());
        html.table(
                caption,
                "part",
                "item",
                "#amount",
                "unit",
                "#price " + sign + "/unit",
                "supplier or basis",
                "#" + sign);
        for (int i = 0; i < lines.size(); i++) {
            CostLine line = lines.get(i);
            html.open("tr").cell(line.group().label()).cell(line.item());
            html.figure(key + "." + i + ".amount", CostText.number(line.amount(), 3))
                    .cell(line.unit());
            html.figure(
                    key + "." + i + ".price",
                    line.unitPrice()
                            .map(price -> CostText.number(price.value(), 4))
                            .orElse(""));
            html.cell(line.supplier().isEmpty() ? line.remark() : line.supplier());
            html.figure(key + "." + i, MoneyWords.figure(line.value())).close("tr");
        }
        html.open("tr", "class", "total")
                .cell("in all")
                .cell("")
                .cell("")
                .cell("")
                .cell("")
                .cell("");
        html.figure(key + ".all", MoneyWords.figure(total)).close("tr").endTable();
    }

    private static void container(Html html, String key, ContainerCost container) {
        Money own = container.total().minus(container.gyleShare());
        lines(
                html,
                container.count() + " × " + container.container().name() + ", beside their share of the gyle ("
                        + MoneyWords.said(container.gyleShare()) + ")",
                key + ".line",
                container.lines(),
                own);
    }

    private static void yieldChain(Html html, YieldChain chain) {
        html.table("Yield", "step", "#L", "#lost L", "in");
        PaperSum litres = new PaperSum(1);
        for (YieldChain.Step step : chain.steps()) {
            boolean first = step.label().equals("collected");
            if (first || step.lossL().signum() > 0) {
                String lost = litres.step(
                        first ? step.litres().doubleValue() : -step.lossL().doubleValue());
                html.open("tr")
                        .leaf("th", step.label(), "scope", "row")
                        .figure("yield." + step.label(), litres.total());
                html.cell(first ? "" : lost.replace("-", ""))
                        .cell(step.lostIn())
                        .close("tr");
            }
        }
        html.endTable();
    }

    private static void notes(Html html, CostSheet sheet) {
        Set<String> notes = new LinkedHashSet<>();
        for (CostFinding finding : sheet.findings()) {
            notes.add("finding: " + finding.text());
        }
        for (CostFinding caution : sheet.cautions()) {
            notes.add("caution: " + caution.text());
        }
        for (ContainerCost container : sheet.containers()) {
            if (container.count() > 0) {
                notes.add(CostText.duty(container.duty()) + "; an estimate and no return");
            }
        }
        sheet.leftOut().forEach(part -> notes.add("left out: " + part));
        sheet.defaultsUsed().forEach(part -> notes.add("assumed: " + part));
        notes.add(MoneyWords.CARE);
        html.leaf("h2", "To know and to confirm").open("ul");
        notes.forEach(note -> html.leaf("li", note));
        html.close("ul");
    }
}
