package costrel.duty;

import costrel.explain.CostFinding;
import costrel.figures.Figures;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Small Producer Relief, Finance (No. 2) Act 2023 ss.54 to 59: D = (C + M (A − S)) / A per litre of pure alcohol, rounded up
 * to the penny and taken off the full rate. A is the pure alcohol made in the production year before the one in which
 * the beer was brewed, or this year's estimate where last year's was nil.
 */
final class SmallProducerRelief {

    private SmallProducerRelief() {}

    /**
     * The discount of a band before rounding, as the fraction (C + M (A − S)) / A.
     *
     * @param band the band that holds the production
     * @param productionHl A in hL of pure alcohol, more than 0
     * @return the numerator; the denominator is A
     */
    private static BigDecimal numerator(ReliefBand band, BigDecimal productionHl) {
        return band.cumulative().add(band.marginal().multiply(productionHl.subtract(band.overHl())));
    }

    /** The discount rounded up to the penny and never under 0: at the end of the taper it is a hair below. */
    static BigDecimal discount(ReliefBand band, BigDecimal productionHl, int decimals) {
        return numerator(band, productionHl)
                .divide(productionHl, decimals, RoundingMode.CEILING)
                .max(BigDecimal.ZERO);
    }

    static BigDecimal unrounded(ReliefBand band, BigDecimal productionHl) {
        return numerator(band, productionHl).divide(productionHl, Figures.SHOWN);
    }

    /** The relief on beer of a strength; whatever a person must know is handed to {@code findings}. */
    static ReliefFigure of(DutyInput input, BigDecimal strength, DutyOnDay tables, Consumer<CostFinding> findings) {
        DutySchedule schedule = tables.schedule();
        if (!input.claimRelief()) {
            return ReliefFigure.none("not claimed");
        }
        if (endsUnder(strength, schedule)) {
            return ReliefFigure.none("none at " + Figures.plain(strength) + " %");
        }
        if (input.statedDiscount().isPresent()) {
            return stated(input.statedDiscount().get(), schedule.currency().getDecimalPlaces());
        }
        if (schedule.bands().isEmpty()) {
            return ReliefFigure.none("the duty tables of " + schedule.country() + " hold none");
        }
        LocalDate year = ProductionYears.yearOf(input.brewedOn());
        LocalDate yearBefore = year.minusYears(1);
        Optional<BigDecimal> before = input.production().of(yearBefore);
        if (before.isEmpty()) {
            findings.accept(new CostFinding(
                    "no Small Producer Relief: the pure alcohol made in the production year from " + yearBefore
                            + " is not known",
                    "supply it in hectolitres, or 0 if nothing was made and this year's estimate"));
            return ReliefFigure.none("production in the year from " + yearBefore + " is not known");
        }
        BigDecimal estimate = input.production().of(year).orElse(BigDecimal.ZERO);
        boolean nil = before.get().signum() == 0;
        BigDecimal production = nil ? estimate : before.get();
        if (production.signum() == 0) {
            throw new IllegalArgumentException("Small Producer Relief: a production of 0 hL is in no band; nothing was "
                    + "made in the year from " + yearBefore + ", so supply this year's estimate, for the year from "
                    + year);
        }
        BigDecimal most = tables.reliefEndsOverHl().orElseThrow();
        BigDecimal larger = production.max(estimate);
        if (larger.compareTo(most) > 0) {
            String over = "over the " + Figures.plain(most) + " hL of pure alcohol a year where it ends";
            findings.accept(
                    new CostFinding("no Small Producer Relief: " + Figures.plain(larger) + " hL is " + over, ""));
            return ReliefFigure.none(Figures.plain(larger) + " hL is " + over);
        }
        ReliefBand band = band(input, strength, tables, production);
        return new ReliefFigure(
                Optional.of(nil ? year : yearBefore),
                Optional.of(production),
                Optional.of(band),
                BigDecimal.ZERO,
                discount(band, production, schedule.currency().getDecimalPlaces()),
                nil
                        ? "by this year's estimate, since nothing was made the year before"
                        : "by the production year before");
    }

    private static ReliefFigure stated(BigDecimal discount, int decimals) {
        return new ReliefFigure(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                discount,
                discount.setScale(decimals, RoundingMode.CEILING),
                "a discount that the user stated");
    }

    private static ReliefBand band(DutyInput input, BigDecimal strength, DutyOnDay tables, BigDecimal production) {
        if (tables.bands().isEmpty()) {
            throw new IllegalArgumentException("duty point " + input.dutyOn()
                    + ": no checked relief table of " + tables.schedule().country()
                    + " covers that day; supply the table, "
                    + "or the discount per litre of pure alcohol, or cost the beer without relief");
        }
        for (ReliefBand band : tables.bands()) {
            if (band.holds(strength, input.container().draught()) && band.holdsProduction(production)) {
                return band;
            }
        }
        throw new IllegalArgumentException("Small Producer Relief: the tables have no band for "
                + Figures.plain(production) + " hL of pure alcohol and beer of " + Figures.plain(strength)
                + " % on " + input.dutyOn() + "; supply it");
    }

    private static boolean endsUnder(BigDecimal strength, DutySchedule schedule) {
        for (ReliefBand band : schedule.bands()) {
            if (strength.compareTo(band.strengthUnder()) < 0) {
                return false;
            }
        }
        return !schedule.bands().isEmpty();
    }
}
