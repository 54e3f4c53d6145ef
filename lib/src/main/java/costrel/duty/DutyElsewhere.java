package costrel.duty;

import costrel.explain.CostFinding;
import costrel.figures.Figures;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.wort.StrengthForDuty;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.joda.money.Money;

/**
 * Duty by another basis than the British: the sum over the tiers of the year of volume × strength × rate
 * × share, with the roundings that the country's table states. Of the rates that a part of the beer may claim the lowest
 * is taken.
 */
final class DutyElsewhere {
    /** Binary noise of a computed gravity is far under this. */
    private static final DutyRounding NOISE = DutyRounding.parse("half up to 6");

    private final DutyInput input;
    private final DutyOnDay tables;
    private final DutySchedule schedule;
    private final DutyBasis basis;
    private final List<CostFinding> findings = new ArrayList<>();

    private DutyElsewhere(DutyInput input, DutyOnDay tables) {
        this.input = input;
        this.tables = tables;
        this.schedule = tables.schedule();
        this.basis = schedule.basis();
    }

    static DutyFigure of(DutyInput input, DutyOnDay tables) {
        return new DutyElsewhere(input, tables).figure();
    }

    private DutyFigure figure() {
        StrengthForDuty.Result expected = tables.expected(input.og(), input.pg());
        StrengthRule rule = input.declaredStrength().isPresent()
                ? StrengthRule.DECLARED
                : StrengthRule.EXPECTED_FOR_WANT_OF_DECLARED;
        BigDecimal strength = percent(input.declaredStrength().orElse(expected.strength()));
        BigDecimal multiplier = switch (basis.unit()) {
            case HL_PLATO -> {
                BigDecimal plato = NOISE.of(BigDecimal.valueOf(input.og().plato()));
                yield basis.strength().map(rounding -> rounding.of(plato)).orElse(plato);
            }
            case US_BARREL -> BigDecimal.ONE;
            case HL_PERCENT, PURE_ALCOHOL -> strength;
        };
        BigDecimal volume = volume();
        List<DutySlice> slices = slices(strength, multiplier, volume);
        BigDecimal unrounded = slices.stream().map(DutySlice::unrounded).reduce(BigDecimal.ZERO, BigDecimal::add);
        Container container = input.container();
        BigDecimal litres = container.dutiableL().multiply(BigDecimal.valueOf(input.count()));
        DutySlice first = slices.get(0);
        notes(rule, expected);
        return new DutyFigure(
                input,
                schedule,
                expected,
                strength,
                rule,
                litres,
                litres.multiply(strength).movePointLeft(2),
                first.rate(),
                ReliefFigure.none(
                        first.rate().tier().flatMap(YearTier::producerUpTo).isPresent()
                                ? "a rate for small breweries applies"
                                : "none"),
                first.payable(),
                unrounded,
                Money.of(schedule.currency(), basis.duty().of(unrounded)),
                findings,
                multiplier,
                slices);
    }

    private BigDecimal percent(BigDecimal strength) {
        if (basis.strength().isPresent() && basis.unit() != DutyUnit.HL_PLATO) {
            return basis.strength().get().of(strength);
        }
        if (basis.unit() == DutyUnit.HL_PERCENT && strength.stripTrailingZeros().scale() > 1) {
            throw new IllegalArgumentException("declared strength: expected one decimal, as on the label, found "
                    + Figures.plain(strength) + " %");
        }
        return strength;
    }

    /** The volume of the run in the unit's volumes, with the roundings of containers and run. */
    private BigDecimal volume() {
        Container container = input.container();
        BigDecimal count = BigDecimal.valueOf(input.count());
        boolean oneByOne = container.kind() == ContainerKind.CASK || container.kind() == ContainerKind.KEG;
        BigDecimal litres =
                oneByOne ? container.dutiableL() : container.dutiableL().multiply(count);
        BigDecimal volume = litres.divide(basis.unit().volumeL(), Figures.SHOWN);
        BigDecimal rounded =
                basis.container().isPresent() ? basis.container().get().of(volume) : volume;
        BigDecimal all = oneByOne ? rounded.multiply(count) : rounded;
        return basis.run().isPresent() ? basis.run().get().of(all) : all;
    }

    private List<DutySlice> slices(BigDecimal strength, BigDecimal multiplier, BigDecimal volume) {
        DutyRate full = tables.rate(strength, input.container().draught());
        List<DutyRate> claimable = schedule.rates().stream()
                .filter(rate -> rate.tier().isPresent()
                        && rate.holdsOn(input.dutyOn())
                        && rate.holds(strength)
                        && rate.draught().covers(input.container().draught()))
                .filter(this::mayClaim)
                .toList();
        BigDecimal start =
                input.yearVolume().map(year -> inUnits(year.alreadyHl())).orElse(BigDecimal.ZERO);
        BigDecimal end = start.add(volume);
        NavigableSet<BigDecimal> edges = new TreeSet<>();
        for (DutyRate rate : claimable) {
            YearTier tier = rate.tier().orElseThrow();
            edges.add(tier.over());
            tier.upTo().ifPresent(edges::add);
        }
        edges.add(end);
        List<DutySlice> slices = new ArrayList<>();
        BigDecimal from = start;
        for (BigDecimal edge : edges) {
            if (edge.compareTo(from) > 0 && edge.compareTo(end) <= 0) {
                slices.add(slice(full, claimable, from, edge, multiplier));
                from = edge;
            }
        }
        return slices.isEmpty() ? List.of(slice(full, claimable, start, end, multiplier)) : slices;
    }

    private DutySlice slice(
            DutyRate full, List<DutyRate> claimable, BigDecimal from, BigDecimal to, BigDecimal multiplier) {
        DutyRate rate = full;
        for (DutyRate candidate : claimable) {
            if (candidate.tier().orElseThrow().holds(from, to)
                    && paid(candidate).compareTo(paid(rate)) < 0) {
                rate = candidate;
            }
        }
        BigDecimal payable = paid(rate)
                .subtract(input.statedDiscount().orElse(BigDecimal.ZERO))
                .max(BigDecimal.ZERO);
        BigDecimal each = multiplier.multiply(payable);
        BigDecimal perVolume =
                basis.perVolume().isPresent() ? basis.perVolume().get().of(each) : each;
        BigDecimal volume = to.subtract(from);
        return new DutySlice(rate, payable, volume, perVolume, perVolume.multiply(volume));
    }

    private BigDecimal paid(DutyRate rate) {
        BigDecimal share = rate.tier().map(YearTier::share).orElse(BigDecimal.ONE);
        BigDecimal paid = rate.ratePerLpa().multiply(share);
        return share.compareTo(BigDecimal.ONE) < 0 && basis.reducedRate().isPresent()
                ? basis.reducedRate().get().of(paid)
                : paid;
    }

    private boolean mayClaim(DutyRate rate) {
        Optional<BigDecimal> most = rate.tier().orElseThrow().producerUpTo();
        if (input.yearVolume().isEmpty() || (most.isPresent() && !input.claimRelief())) {
            return false;
        }
        return most.isEmpty() || inUnits(input.yearVolume().get().annualHl()).compareTo(most.get()) <= 0;
    }

    private BigDecimal inUnits(BigDecimal hl) {
        return hl.movePointRight(2).divide(basis.unit().volumeL(), Figures.SHOWN);
    }

    private void notes(StrengthRule rule, StrengthForDuty.Result expected) {
        String country = schedule.country();
        if (rule == StrengthRule.EXPECTED_FOR_WANT_OF_DECLARED) {
            findings.add(new CostFinding(
                    "no strength is declared: the expected " + Figures.plain(expected.strength()) + " % was taken",
                    "state the declared strength"));
        }
        boolean tiers = schedule.rates().stream().anyMatch(any -> any.tier().isPresent());
        if (tiers && input.yearVolume().isEmpty()) {
            findings.add(new CostFinding(
                    "the full rate of " + country
                            + " was taken: what the brewery makes in the year, and has released of"
                            + " it, is not known",
                    "supply both in hL of beer"));
        }
        boolean small = schedule.rates().stream()
                .anyMatch(any -> any.tier().flatMap(YearTier::producerUpTo).isPresent());
        if (!small && input.claimRelief() && input.statedDiscount().isEmpty()) {
            findings.add(new CostFinding(
                    "the full rate of " + country + " was taken: its tables hold no checked rate for small breweries",
                    "supply the rates in force on " + input.dutyOn() + " if one may be claimed"));
        }
    }
}
