package costrel.report;

import costrel.cost.ContainerCost;
import costrel.cost.CostGroup;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.cost.YieldChain;
import costrel.duty.DutyBasis;
import costrel.duty.DutyFigure;
import costrel.duty.DutyUnit;
import costrel.explain.CostFinding;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A cost sheet set out: every line, what it adds up to, and the pint in each container. */
public final class CostText {

    private CostText() {}

    /**
     * The whole sheet as text.
     *
     * @param sheet the cost sheet
     * @return lines of text
     */
    public static String of(CostSheet sheet) {
        return TextForm.of(sheet(sheet));
    }

    /**
     * The whole sheet.
     *
     * @param cost the cost sheet
     * @return a sheet of the kind "cost sheet"
     */
    public static Sheet sheet(CostSheet cost) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(gyle(cost));
        for (int i = 0; i < cost.containers().size(); i++) {
            blocks.add(container("container" + (i + 1), cost.containers().get(i)));
        }
        blocks.add(containersTable(cost));
        blocks.add(yieldChain(cost.yieldChain()));
        sold(cost).ifPresent(blocks::add);
        for (ContainerCost container : cost.containers()) {
            if (container.count() > 0) {
                blocks.add(Block.Note.how(duty(container.duty())));
            }
        }
        blocks.addAll(noteBlocks(cost));
        String title = cost.batch().beer() + ", cost of one gyle at the prices of "
                + cost.batch().costedOn() + ", duty point " + cost.batch().dutyOn() + ", all without VAT";
        return new Sheet("cost sheet", title, about(cost), blocks);
    }

    /** What the titles of all sheets say that are made of a cost sheet. */
    static List<Fact> about(CostSheet cost) {
        return List.of(
                Fact.words("beer", "beer", cost.batch().beer()),
                Fact.words("costedOn", "costed on", cost.batch().costedOn().toString()),
                Fact.words("dutyOn", "duty point", cost.batch().dutyOn().toString()),
                Fact.words(
                        "currency", "currency", cost.total().getCurrencyUnit().getCode()));
    }

    private static TextTable lines(String key, String caption, CurrencyUnit currency) {
        return TextTable.keyed(
                key,
                caption,
                Column.words("group", caption),
                Column.words("item", ""),
                Column.figures("amount", "amount", ""),
                Column.words("unit", "unit"),
                Column.figures("price", "price " + MoneyWords.sign(currency) + "/unit", currency.getCode() + "/unit"),
                Column.words("basis", "supplier or basis"),
                MoneyWords.column("cost", "", currency));
    }

    private static Table gyle(CostSheet cost) {
        TextTable table = lines("gyle", "the gyle", cost.total().getCurrencyUnit());
        cost.gyleLines().forEach(line -> row(table, line));
        return table.total("", "", "", "", "", "", amount(cost.gyleCost())).table();
    }

    private static void row(TextTable table, CostLine line) {
        table.row(
                line.group().label(),
                line.item(),
                number(line.amount(), 3),
                line.unit(),
                line.unitPrice().map(price -> number(price.value(), 4)).orElse(""),
                line.supplier().isEmpty() ? line.remark() : line.supplier(),
                amount(line.value()));
    }

    private static Table container(String key, ContainerCost container) {
        TextTable table = lines(
                key,
                container.count() + " × " + container.container().name(),
                container.total().getCurrencyUnit());
        table.row(
                "share of the gyle",
                "",
                number(container.share().movePointRight(2), 2),
                "%",
                "",
                "",
                amount(container.gyleShare()));
        container.lines().forEach(line -> row(table, line));
        return table.total("", "", "", "", "", "", amount(container.total())).table();
    }

    /**
     * The containers and the mix, each to the pint, as text.
     *
     * @param sheet the cost sheet
     * @return a table
     */
    public static String containers(CostSheet sheet) {
        return TextForm.of(List.of(containersTable(sheet)));
    }

    static Table containersTable(CostSheet sheet) {
        CurrencyUnit currency = sheet.total().getCurrencyUnit();
        TextTable table = TextTable.keyed(
                "containers",
                "each container and the mix",
                Column.words("container", "in"),
                Column.figures("filled", "filled", ""),
                MoneyWords.column("gyle", "gyle", currency),
                MoneyWords.column("packaging", "packaging", currency),
                MoneyWords.column("duty", "duty", currency),
                MoneyWords.column("total", "total", currency),
                MoneyWords.column("each", "each", currency),
                Column.figures("pints", "pints", "pint"),
                MoneyWords.perPint("perPint", currency));
        Money gyle = Money.zero(currency);
        Money packaging = gyle;
        Money duty = gyle;
        PaperSum pints = new PaperSum(1);
        for (ContainerCost container : sheet.containers()) {
            Money ofDuty = container.duty().duty();
            Money ofPackaging = container.total().minus(container.gyleShare()).minus(ofDuty);
            gyle = gyle.plus(container.gyleShare());
            packaging = packaging.plus(ofPackaging);
            duty = duty.plus(ofDuty);
            table.row(
                    container.container().name(),
                    String.valueOf(container.count()),
                    amount(container.gyleShare()),
                    amount(ofPackaging),
                    amount(ofDuty),
                    amount(container.total()),
                    amount(container.perContainer()),
                    pints.add(container.saleablePints().doubleValue()),
                    container.pencePerPint().toPlainString());
        }
        table.total(
                "all",
                "",
                amount(gyle),
                amount(packaging),
                amount(duty),
                amount(sheet.total()),
                "",
                pints.total(),
                sheet.pencePerPint().toPlainString());
        return table.table();
    }

    /**
     * Where the money goes, group by group, as text.
     *
     * @param sheet the cost sheet
     * @return a table
     */
    public static String groups(CostSheet sheet) {
        return TextForm.of(List.of(groupsTable(sheet)));
    }

    static Table groupsTable(CostSheet sheet) {
        CurrencyUnit currency = sheet.total().getCurrencyUnit();
        TextTable table = TextTable.keyed(
                "groups",
                "where the money goes",
                Column.words("group", "cost of the gyle, without VAT"),
                MoneyWords.column("cost", "", currency),
                MoneyWords.perPint("perPint", currency));
        PaperSum pence = new PaperSum(2);
        BigDecimal pints = sheet.yieldChain().saleablePints();
        for (CostGroup group : CostGroup.values()) {
            Money sum = sheet.sumOf(group);
            if (!sum.isZero()) {
                double each = sum.getAmount()
                                .movePointRight(currency.getDecimalPlaces())
                                .doubleValue()
                        / pints.doubleValue();
                table.row(group.label(), amount(sum), pence.step(each));
            }
        }
        table.total("all", amount(sheet.total()), sheet.pencePerPint().toPlainString());
        return table.table();
    }

    private static Table yieldChain(YieldChain chain) {
        TextTable table = TextTable.keyed(
                "yield",
                "from what is collected to what is sold",
                Column.words("step", "yield"),
                Column.figures("volume", "L", "L"),
                Column.figures("lost", "lost L", "L"),
                Column.words("lostIn", "in"));
        PaperSum litres = new PaperSum(1);
        for (YieldChain.Step step : chain.steps()) {
            if (step.label().equals("collected")) {
                litres.step(step.litres().doubleValue());
                table.row("collected", litres.total());
            } else if (step.lossL().signum() > 0) {
                String lost = litres.step(-step.lossL().doubleValue());
                table.row("= " + step.label(), litres.total(), lost.replace("-", ""), step.lostIn());
            }
        }
        return table.table();
    }

    /** What a pint that is sold bears, where some that can be sold never is. */
    private static Optional<Block> sold(CostSheet sheet) {
        if (sheet.yieldChain().unsoldL().signum() == 0) {
            return Optional.empty();
        }
        CurrencyUnit currency = sheet.total().getCurrencyUnit();
        String coins = MoneyWords.coins(currency);
        return Optional.of(new Block.Facts(List.of(
                Fact.figure(
                        "perPintSold",
                        "a pint that is sold bears",
                        MoneyWords.coinsOf(currency, sheet.unroundedPerPintSold()),
                        coins),
                Fact.figure(
                        "perPintSaleable",
                        "one that could be sold",
                        sheet.pencePerPint().toPlainString(),
                        coins))));
    }

    static String duty(DutyFigure duty) {
        String head = "duty on " + duty.count() + " × " + duty.container().name() + ": ";
        return duty.basis().unit() == DutyUnit.PURE_ALCOHOL ? head + byAlcohol(duty) : head + byVolume(duty);
    }

    private static String byAlcohol(DutyFigure duty) {
        CurrencyUnit currency = duty.duty().getCurrencyUnit();
        return duty.strength().toPlainString() + " % (" + duty.rule().label() + "), "
                + number(duty.dutiableL(), 2) + " L, " + number(duty.pureAlcoholL(), 4)
                + " L of pure alcohol at " + rate(currency, duty.payableRate()) + " (full rate "
                + rate(currency, duty.rate().ratePerLpa()) + ", relief "
                + rate(currency, duty.relief().discount()) + ") = " + amount(duty.duty()) + ", rounded "
                + (duty.basis().equals(DutyBasis.PURE_ALCOHOL)
                        ? "down to the penny"
                        : duty.basis().duty().label() + " decimals");
    }

    /** Each part of the run with its rate: volume, what one hectolitre or barrel bears, and what that comes to. */
    private static String byVolume(DutyFigure duty) {
        DutyUnit unit = duty.basis().unit();
        CurrencyUnit currency = duty.duty().getCurrencyUnit();
        String strength = switch (unit) {
            case HL_PERCENT ->
                number(duty.multiplier(), 4) + " % (" + duty.rule().label() + "), ";
            case HL_PLATO -> number(duty.multiplier(), 4) + " °P of original wort, ";
            case US_BARREL, PURE_ALCOHOL -> "";
        };
        String slices = duty.slices().stream()
                .map(slice -> number(slice.volume(), 6) + " " + unit.volumeUnit() + " at "
                        + rate(currency, slice.payable()) + " by " + unit.label() + " = "
                        + number(slice.unrounded(), 6))
                .collect(Collectors.joining(" + "));
        return strength + slices + "; duty " + MoneyWords.said(duty.duty()) + ", rounded "
                + duty.basis().duty().label() + " decimals";
    }

    private static String rate(CurrencyUnit currency, BigDecimal amount) {
        String sign = MoneyWords.sign(currency);
        return sign.length() == 1 ? sign + amount.toPlainString() : amount.toPlainString() + " " + sign;
    }

    /**
     * Findings, cautions, what is left out and what was assumed, as text.
     *
     * @param sheet the cost sheet
     * @return a line or more for each
     */
    public static String notes(CostSheet sheet) {
        return TextForm.of(noteBlocks(sheet));
    }

    static List<Block.Note> noteBlocks(CostSheet sheet) {
        List<Block.Note> notes = new ArrayList<>(grouped(Block.Note.Kind.FINDING, sheet.findings()));
        notes.addAll(grouped(Block.Note.Kind.CAUTION, sheet.cautions()));
        if (!sheet.leftOut().isEmpty()) {
            notes.add(Block.Note.of(Block.Note.Kind.LEFT_OUT, String.join("; ", sheet.leftOut())));
        }
        if (!sheet.defaultsUsed().isEmpty()) {
            notes.add(Block.Note.of(Block.Note.Kind.ASSUMED, String.join("; ", sheet.defaultsUsed())));
        }
        return notes;
    }

    /** Findings that end in the same advice share it. */
    private static List<Block.Note> grouped(Block.Note.Kind kind, List<CostFinding> findings) {
        Map<String, List<String>> whats = new LinkedHashMap<>();
        for (CostFinding finding : findings) {
            List<String> alike = whats.computeIfAbsent(finding.suggestion(), advice -> new ArrayList<>());
            if (!alike.contains(finding.what())) {
                alike.add(finding.what());
            }
        }
        List<Block.Note> notes = new ArrayList<>();
        whats.forEach((advice, alike) ->
                notes.add(Block.Note.of(kind, String.join("; ", alike) + (advice.isEmpty() ? "" : "; " + advice))));
        return notes;
    }

    private static String amount(Money money) {
        return money.getAmount().toPlainString();
    }

    static String number(BigDecimal value, int decimals) {
        BigDecimal shown = value.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return (shown.scale() < 0 ? shown.setScale(0) : shown).toPlainString();
    }
}
