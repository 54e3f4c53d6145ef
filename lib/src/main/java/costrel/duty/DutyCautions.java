package costrel.duty;

import costrel.explain.CostFinding;
import costrel.figures.Figures;
import costrel.packaging.Container;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What to confirm before a figure of duty is relied on, in words. */
final class DutyCautions {
    private static final BigDecimal NEAR_A_STEP = new BigDecimal("0.1");

    private DutyCautions() {}

    static List<CostFinding> of(DutyFigure duty) {
        return duty.basis().equals(DutyBasis.PURE_ALCOHOL) ? byPureAlcohol(duty) : elsewhere(duty);
    }

    private static List<CostFinding> byPureAlcohol(DutyFigure duty) {
        List<CostFinding> cautions = new ArrayList<>();
        DutyInput input = duty.input();
        DutySchedule schedule = duty.schedule();
        Container container = input.container();
        ReliefFigure relief = duty.relief();
        DutyRate rate = duty.rate();
        cautions.add(new CostFinding(
                "duty of " + schedule.country() + " by the rates in force from " + rate.validFrom(), rate.source()));
        LocalDate newest = schedule.newest();
        if (input.dutyOn().isAfter(input.costedOn()) || !input.dutyOn().isBefore(newest.plusYears(1))) {
            cautions.add(new CostFinding(
                    "rates are known up to the set of " + newest + ", and the duty point is " + input.dutyOn(),
                    "a Budget may change them: check before pricing"));
        }
        for (BigDecimal step : schedule.stepsOn(input.dutyOn())) {
            boolean near = step.subtract(duty.strength()).abs().compareTo(NEAR_A_STEP) <= 0
                    || step.subtract(duty.expected().unroundedStrength()).abs().compareTo(NEAR_A_STEP) <= 0;
            if (near) {
                cautions.add(new CostFinding(
                        "the strength is within 0.1 of " + Figures.plain(step) + " %, where the rate of duty steps",
                        "have it measured: duty goes by what the beer is, cut down to one decimal"));
            }
        }
        cautions.add(
                relief.productionHl().isPresent()
                        ? new CostFinding(
                                "Small Producer Relief by "
                                        + Figures.plain(relief.productionHl().get())
                                        + " hL of pure alcohol in the production year from "
                                        + relief.productionYear().orElseThrow(),
                                "all alcohol of all connected premises counts")
                        : new CostFinding("Small Producer Relief: " + relief.why(), ""));
        cautions.add(
                container.draught()
                        ? new CostFinding(
                                container.name() + ": costed as draught",
                                "holds only where it connects to a pump or gas and isn't decanted for taking away")
                        : new CostFinding(container.name() + ": costed as not draught", ""));
        if (container.undrinkableL().signum() > 0) {
            cautions.add(new CostFinding(
                    container.name() + ": duty is left off " + Figures.plain(container.undrinkableL())
                            + " L of sediment",
                    "there is no national allowance: it must be agreed with the authority"));
        }
        return cautions;
    }

    private static List<CostFinding> elsewhere(DutyFigure duty) {
        List<CostFinding> cautions = new ArrayList<>();
        DutyInput input = duty.input();
        DutySchedule schedule = duty.schedule();
        String country = schedule.country();
        cautions.add(new CostFinding(
                "duty of " + country + " by the rates from " + duty.rate().validFrom() + ", by "
                        + duty.basis().unit().label(),
                duty.rate().source()));
        if (input.dutyOn().isAfter(input.costedOn())
                || !input.dutyOn().isBefore(schedule.newest().plusYears(1))) {
            cautions.add(new CostFinding(
                    "rates are known up to the set of " + schedule.newest() + ", and the duty point is "
                            + input.dutyOn(),
                    "they may have changed: check before pricing"));
        }
        cautions.add(new CostFinding(
                "duty of " + country + " is an estimate", "confirm rates, reliefs and roundings with its authority"));
        return cautions;
    }
}
