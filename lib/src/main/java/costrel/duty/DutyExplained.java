package costrel.duty;

import costrel.explain.Explanation;
import costrel.figures.Figures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Turns the duty on a run into a tree that a person can follow down to an Act. */
final class DutyExplained {
    private static final int SHOWN_PLACES = 6;

    private DutyExplained() {}

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

    private static String percent(BigDecimal value) {
        return Figures.plain(value) + " %";
    }

    /** A text on one line, as a tree prints it. */
    private static String clean(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ");
    }
}
