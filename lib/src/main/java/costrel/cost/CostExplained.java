package costrel.cost;

import costrel.buying.Choice;
import costrel.explain.Explanation;
import costrel.figures.Figures;
import costrel.packaging.Container;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Turns the figures of a sheet into trees that a person can follow down to a price row or an Act. */
final class CostExplained {
    private static final int SHOWN_PLACES = 6;

    private CostExplained() {}

    static Explanation sheet(CostSheet sheet) {
        List<Explanation> parts = new ArrayList<>();
        parts.add(new Explanation(
                "gyle before packaging", Figures.text(sheet.gyleCost()), "sum of its lines", lines(sheet.gyleLines())));
        sheet.containers().forEach(container -> parts.add(container(container, sheet)));
        parts.add(yieldChain(sheet));
        parts.add(Explanation.leaf("cost of a saleable pint", perPint(sheet.pencePerPint(), sheet.total())));
        return new Explanation(
                "cost of " + sheet.batch().beer(), Figures.text(sheet.total()), "sum of its containers", parts);
    }

    private static Explanation container(ContainerCost container, CostSheet sheet) {
        List<Explanation> parts = new ArrayList<>();
        parts.add(Explanation.of(
                "share of the gyle",
                Figures.text(container.gyleShare()),
                Figures.plain(container.share()) + " of " + Figures.text(sheet.gyleCost())
                        + ", what the roundings leave to the last container"));
        parts.addAll(lines(container.lines().stream()
                .filter(line -> line.group() != CostGroup.DUTY)
                .toList()));
        parts.add(container.duty().explanation());
        parts.add(Explanation.of(
                "cost of one",
                Figures.text(container.perContainer()),
                "unrounded " + Figures.rounded(container.unroundedPerContainer(), SHOWN_PLACES)));
        parts.add(Explanation.of(
                "cost of a saleable pint",
                perPint(container.pencePerPint(), container.total()),
                Figures.rounded(container.saleablePints(), 2) + " pints in all"));
        return new Explanation(
                container.count() + " × " + container.container().name(),
                Figures.text(container.total()),
                "share of the gyle, packaging and duty",
                parts);
    }

    private static Explanation yieldChain(CostSheet sheet) {
        List<Explanation> parts = new ArrayList<>();
        for (YieldChain.Step step : sheet.yieldChain().steps()) {
            parts.add(Explanation.of(
                    step.label(),
                    Figures.rounded(step.litres(), 2) + " L",
                    step.lossL().signum() == 0 ? "" : Figures.rounded(step.lossL(), 2) + " L lost: " + step.lostIn()));
        }
        return new Explanation(
                "yield",
                Figures.rounded(sheet.yieldChain().saleablePints(), 2) + " saleable pints",
                "litres saleable / " + Container.PINT_L,
                parts);
    }

    private static List<Explanation> lines(List<CostLine> lines) {
        return lines.stream().map(CostExplained::line).toList();
    }

    private static Explanation line(CostLine line) {
        List<Explanation> parts = new ArrayList<>();
        line.unitPrice()
                .ifPresent(price -> parts.add(Explanation.of(
                        "unit price",
                        Figures.rounded(price.value(), SHOWN_PLACES) + " per " + price.unit(),
                        clean(line.supplier().isEmpty() ? line.origin() : line.supplier() + ", " + line.origin()))));
        for (Choice.PassedOver over : line.passedOver()) {
            parts.add(Explanation.of(
                    "passed over: " + over.row().supplier(),
                    Figures.rounded(over.unitPrice().value(), SHOWN_PLACES) + " per "
                            + over.unitPrice().unit(),
                    clean(over.row().origin() + ", " + over.why())));
        }
        return new Explanation(
                line.group().label() + ": " + line.item(),
                Figures.text(line.value()),
                clean(Figures.rounded(line.amount(), SHOWN_PLACES) + " " + line.unit()
                        + (line.remark().isEmpty() ? "" : ", " + line.remark())),
                parts);
    }

    /** Duty by another basis than the British. */
    private static String perPint(BigDecimal pence, Money total) {
        return total.getCurrencyUnit().equals(CurrencyUnit.GBP)
                ? pence + " p"
                : pence.movePointLeft(total.getCurrencyUnit().getDecimalPlaces()) + " " + total.getCurrencyUnit();
    }

    /** A text on one line, as a tree prints it. */
    private static String clean(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ");
    }
}
