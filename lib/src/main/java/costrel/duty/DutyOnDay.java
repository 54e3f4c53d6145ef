package costrel.duty;

import costrel.figures.Figures;
import costrel.wort.Gravity;
import costrel.wort.StrengthFactorTable;
import costrel.wort.StrengthForDuty;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A country's duty tables on the day of a duty point: what holds on it is looked up once. Safe for many threads. */
public final class DutyOnDay {
    private final DutySchedule schedule;
    private final LocalDate dutyOn;
    private final List<DutyRate> rates;
    private final List<ReliefBand> bands;
    private final Optional<StrengthFactorTable> factors;
    private final Optional<BigDecimal> reliefEndsOverHl;
    private volatile @Nullable Expected last;

    private record Expected(Gravity og, Gravity pg, StrengthForDuty.Result strength) {}

    DutyOnDay(DutySchedule schedule, LocalDate dutyOn) {
        this.schedule = schedule;
        this.dutyOn = dutyOn;
        this.rates = schedule.rates().stream()
                .filter(rate -> rate.tier().isEmpty() && rate.holdsOn(dutyOn))
                .toList();
        this.bands =
                schedule.bands().stream().filter(band -> band.holdsOn(dutyOn)).toList();
        this.factors = schedule.factors().stream()
                .filter(table -> table.holdsOn(dutyOn))
                .findFirst();
        this.reliefEndsOverHl =
                schedule.bands().stream().map(ReliefBand::upToHl).reduce(BigDecimal::max);
    }

    /**
     * The duty on a run of containers.
     *
     * @param input the run, the beer, the days and the production; its duty point is the day of these tables
     * @return the duty with its steps
     * @throws IllegalArgumentException when a day or a strength is outside the tables, naming what to supply
     */
    public DutyFigure of(DutyInput input) {
        if (!input.dutyOn().equals(dutyOn)) {
            throw new IllegalArgumentException("duty point: expected " + dutyOn + ", found " + input.dutyOn());
        }
        return schedule.basis().equals(DutyBasis.PURE_ALCOHOL)
                ? Duty.ofPureAlcohol(input, this)
                : DutyElsewhere.of(input, this);
    }

    DutySchedule schedule() {
        return schedule;
    }

    /** The bands of the small producer's discount that hold on the day. */
    List<ReliefBand> bands() {
        return bands;
    }

    /** The production over which no band of any day gives a discount; empty where there are no bands. */
    Optional<BigDecimal> reliefEndsOverHl() {
        return reliefEndsOverHl;
    }

    /** The strength by fall of gravity. The containers of a gyle ask for the same one after the other: the last is kept. */
    StrengthForDuty.Result expected(Gravity og, Gravity pg) {
        Expected known = last;
        if (known == null || !known.og().equals(og) || !known.pg().equals(pg)) {
            known = new Expected(og, pg, StrengthForDuty.of(og, pg, factors()));
            last = known;
        }
        return known.strength();
    }

    private StrengthFactorTable factors() {
        return factors.orElseThrow(() -> new IllegalArgumentException("duty point " + dutyOn
                + ": no table of strength factors holds on that day; supply one, or the strength as measured"));
    }

    /** The one full rate for beer of a strength. */
    DutyRate rate(BigDecimal strength, boolean draught) {
        if (rates.isEmpty()) {
            throw new IllegalArgumentException(
                    dutyOn.isBefore(schedule.begins())
                            ? "duty point " + dutyOn + ": the duty tables of " + schedule.country() + " begin "
                                    + schedule.begins() + "; supply the rates of that day"
                            : "duty point " + dutyOn + ": the duty tables of " + schedule.country()
                                    + " know no rates for that day; the newest set is of " + schedule.newest()
                                    + "; supply the rates that follow it");
        }
        for (DutyRate rate : rates) {
            if (rate.holds(strength) && rate.draught().covers(draught)) {
                return rate;
            }
        }
        throw new IllegalArgumentException("duty point " + dutyOn + ": no rate of " + schedule.country()
                + " for " + (draught ? "draught " : "") + "beer of " + Figures.plain(strength)
                + " %; supply one");
    }
}
