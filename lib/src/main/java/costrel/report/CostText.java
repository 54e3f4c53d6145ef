package costrel.report;

import costrel.cost.ContainerCost;
import costrel.cost.CostFinding;
import costrel.cost.CostGroup;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.cost.DutyBasis;
import costrel.cost.DutyFigure;
import costrel.cost.DutyUnit;
import costrel.cost.YieldChain;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A cost sheet as text: every line, what it adds up to, and the pint in each container. */
public final class CostText {

    private static final int WIDTH = 110;

    private CostText() {}

    /**
     * The whole sheet.
     *
     * @param sheet the cost sheet
     * @return lines of text
     */
    public static String of(CostSheet sheet) {
        StringBuilder text = new StringBuilder();
        text.append(sheet.batch().beer())
                .append(", cost of one gyle at the prices of ")
                .append(sheet.batch().costedOn())
                .append(", duty point ")
                .append(sheet.batch().dutyOn())
                .append(", all without VAT\n");
        text.append(lines("the gyle", sheet.gyleLines(), sheet.gyleCost()));
        for (ContainerCost container : sheet.containers()) {
            List<CostLine> lines = new ArrayList<>(container.lines());
            text.append(container(container, lines));
        }
        text.append(containers(sheet)).append(yieldChain(sheet.yieldChain())).append(sold(sheet));
        for (ContainerCost container : sheet.containers()) {
            if (container.count() > 0) {
                text.append(Figures.folded(duty(container.duty()), 2, WIDTH));
            }
        }
        return text.append(notes(sheet)).toString();
    }

    private static String lines(String heading, List<CostLine> lines, Money total) {
        String sign = MoneyWords.sign(total.getCurrencyUnit());
        TextTable table = TextTable.of(
                heading, "", "#amount", "unit", "#price " + sign + "/unit", "supplier or basis", "#" + sign);
        for (CostLine line : lines) {
            row(table, line);
        }
        table.total("", "", "", "", "", "", total.getAmount().toPlainString());
        return table.text(2);
    }

    private static void row(TextTable table, CostLine line) {
        table.row(
                line.group().label(),
                line.item(),
                number(line.amount(), 3),
                line.unit(),
                line.unitPrice().map(price -> number(price.value(), 4)).orElse(""),
                line.supplier().isEmpty() ? line.remark() : line.supplier(),
                line.value().getAmount().toPlainString());
    }

    private static String container(ContainerCost container, List<CostLine> lines) {
        String sign = MoneyWords.sign(container.total().getCurrencyUnit());
        TextTable table = TextTable.of(
                container.count() + " × " + container.container().name(),
                "",
                "#amount",
                "unit",
                "#price " + sign + "/unit",
                "supplier or basis",
                "#" + sign);
        table.row(
                "share of the gyle",
                "",
                number(container.share().movePointRight(2), 2),
                "%",
                "",
                "",
                container.gyleShare().getAmount().toPlainString());
        lines.forEach(line -> row(table, line));
        table.total("", "", "", "", "", "", container.total().getAmount().toPlainString());
        return table.text(2);
    }

    /**
     * The containers and the mix, each to the pint.
     *
     * @param sheet the cost sheet
     * @return a table
     */
    public static String containers(CostSheet sheet) {
        String sign = MoneyWords.sign(sheet.total().getCurrencyUnit());
        TextTable table = TextTable.of(
                "in",
                "#filled",
                "#gyle " + sign,
                "#packaging " + sign,
                "#duty " + sign,
                "#total " + sign,
                "#each " + sign,
                "#pints",
                "#" + MoneyWords.coins(sheet.total().getCurrencyUnit()) + " a pint");
        Money gyle = Money.zero(sheet.total().getCurrencyUnit());
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
        return table.text(2);
    }

    /**
     * Where the money goes, group by group.
     *
     * @param sheet the cost sheet
     * @return a table
     */
    public static String groups(CostSheet sheet) {
        CurrencyUnit currency = sheet.total().getCurrencyUnit();
        TextTable table = TextTable.of(
                "cost of the gyle, without VAT",
                "#" + MoneyWords.sign(currency),
                "#" + MoneyWords.coins(currency) + " a pint");
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
        return table.text(2);
    }

    private static String yieldChain(YieldChain chain) {
        TextTable table = TextTable.of("yield", "#L", "#lost L", "in");
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
        return table.text(2);
    }

    /** What a pint that is sold bears, where some that can be sold never is. */
    private static String sold(CostSheet sheet) {
        if (sheet.yieldChain().unsoldL().signum() == 0) {
            return "";
        }
        CurrencyUnit currency = sheet.total().getCurrencyUnit();
        return "  a pint that is sold bears " + MoneyWords.coinsOf(currency, sheet.unroundedPerPintSold()) + " "
                + MoneyWords.coins(currency) + ", one that could be sold "
                + sheet.pencePerPint().toPlainString() + "\n";
    }

    private static String duty(DutyFigure duty) {
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
     * Findings, cautions, what is left out and what was assumed.
     *
     * @param sheet the cost sheet
     * @return a line or more for each
     */
    public static String notes(CostSheet sheet) {
        StringBuilder text = new StringBuilder();
        text.append(grouped("finding: ", sheet.findings())).append(grouped("caution: ", sheet.cautions()));
        if (!sheet.leftOut().isEmpty()) {
            text.append(Figures.folded("left out: " + String.join("; ", sheet.leftOut()), 2, WIDTH));
        }
        if (!sheet.defaultsUsed().isEmpty()) {
            text.append(Figures.folded("assumed: " + String.join("; ", sheet.defaultsUsed()), 2, WIDTH));
        }
        return text.toString();
    }

    /** Findings that end in the same advice share it. */
    private static String grouped(String word, List<CostFinding> findings) {
        Map<String, List<String>> whats = new LinkedHashMap<>();
        for (CostFinding finding : findings) {
            List<String> alike = whats.computeIfAbsent(finding.suggestion(), advice -> new ArrayList<>());
            if (!alike.contains(finding.what())) {
                alike.add(finding.what());
            }
        }
        StringBuilder text = new StringBuilder();
        whats.forEach((advice, alike) -> text.append(
                Figures.folded(word + String.join("; ", alike) + (advice.isEmpty() ? "" : "; " + advice), 2, WIDTH)));
        return text.toString();
    }

    private static String amount(Money money) {
        return money.getAmount().toPlainString();
    }

    static String number(BigDecimal value, int decimals) {
        BigDecimal shown = value.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return (shown.scale() < 0 ? shown.setScale(0) : shown).toPlainString();
    }
}
