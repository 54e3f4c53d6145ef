package costrel.cost;

import costrel.explain.Explanation;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Turns the figures of this package into trees that a person can follow down to a price row or an Act. */
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
        parts.add(duty(container.duty()));
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
    private static Explanation byVolume(DutyFigure duty) {
        String unit = duty.basis().unit().volumeUnit();
        List<Explanation> parts = new ArrayList<>();
        parts.add(strength(duty));
        for (DutySlice slice : duty.slices()) {
            parts.add(Explanation.of(
                    "at " + Figures.plain(slice.payable()) + " by "
                            + duty.basis().unit().label(),
                    Figures.rounded(slice.unrounded(), SHOWN_PLACES) + " "
                            + duty.duty().getCurrencyUnit(),
                    Figures.rounded(slice.volume(), SHOWN_PLACES) + " " + unit + " × "
                            + Figures.rounded(slice.perVolume(), SHOWN_PLACES) + "; from "
                            + slice.rate().validFrom() + ", "
                            + clean(slice.rate().source())));
        }
        return new Explanation(
                "duty on " + duty.count() + " × " + duty.container().name(),
                Figures.text(duty.duty()),
                "volume × " + Figures.plain(duty.multiplier()) + " × rate = "
                        + Figures.rounded(duty.unrounded(), SHOWN_PLACES) + ", rounded "
                        + duty.basis().duty().label() + " decimals; "
                        + clean(duty.basis().source()),
                parts);
    }

    static Explanation duty(DutyFigure duty) {
        if (!duty.basis().equals(DutyBasis.PURE_ALCOHOL)) {
            return byVolume(duty);
        }
        ReliefFigure relief = duty.relief();
        String perLitre = " per L of pure alcohol";
        List<Explanation> reliefParts = new ArrayList<>();
        relief.band().ifPresent(band -> {
            reliefParts.add(Explanation.of(
                    "production A",
                    Figures.plain(relief.productionHl().orElseThrow()) + " hL of pure alcohol",
                    "production year from " + relief.productionYear().orElseThrow()));
            reliefParts.add(Explanation.of(
                    "band",
                    "over " + Figures.plain(band.overHl()) + " to " + Figures.plain(band.upToHl()) + " hL",
                    "cumulative " + band.cumulative() + ", marginal " + band.marginal() + "; " + clean(band.source())));
        });
        return Explanation.of(
                "duty on " + duty.count() + " × " + duty.container().name(),
                Figures.text(duty.duty()),
                "litres of pure alcohol × payable rate = " + Figures.plain(duty.unrounded())
                        + ", rounded down to the penny",
                strength(duty),
                Explanation.of(
                        "litres of pure alcohol",
                        Figures.plain(duty.pureAlcoholL()) + " L",
                        Figures.plain(duty.dutiableL()) + " L × " + percent(duty.strength()) + "; "
                                + Figures.plain(duty.container().labelL()) + " L on the label less "
                                + Figures.plain(duty.container().undrinkableL()) + " L undrinkable, each"),
                Explanation.of(
                        "full rate",
                        duty.rate().ratePerLpa() + perLitre,
                        "from " + duty.rate().validFrom() + ", "
                                + clean(duty.rate().source())),
                new Explanation(
                        "Small Producer Relief",
                        relief.discount() + perLitre,
                        relief.why()
                                + (relief.band().isPresent()
                                        ? ": " + Figures.rounded(relief.unroundedDiscount(), SHOWN_PLACES)
                                                + " rounded up to the penny, never under 0"
                                        : ""),
                        reliefParts),
                Explanation.of("payable rate", duty.payableRate() + perLitre, "full rate − relief, never under 0"));
    }

    private static Explanation strength(DutyFigure duty) {
        return Explanation.of(
                "strength for duty",
                percent(duty.strength()),
                duty.rule().label() + ", cut down to one decimal",
                Explanation.of(
                        "expected strength",
                        percent(duty.expected().strength()),
                        "(OG − PG) " + Figures.plain(duty.expected().difference()) + " ° × "
                                + Figures.plain(duty.expected().factor()) + " = "
                                + percent(duty.expected().unroundedStrength())));
    }

    private static String perPint(BigDecimal pence, Money total) {
        return total.getCurrencyUnit().equals(CurrencyUnit.GBP)
                ? pence + " p"
                : pence.movePointLeft(total.getCurrencyUnit().getDecimalPlaces()) + " " + total.getCurrencyUnit();
    }

    private static String percent(BigDecimal value) {
        return Figures.plain(value) + " %";
    }

    /** A text on one line, as a tree prints it. */
    private static String clean(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ");
    }
}
