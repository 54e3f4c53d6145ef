package costrel.duty;

import static costrel.cost.Given.day;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Cases;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/**
 * Duty of countries with roundings of any kind against whole fractions that lose no digit. The order of the roundings is that of
 * 27 CFR 25.156 and Biersteuergesetz 2009 s.2: rate, duty of one volume, container, run, duty.
 */
class DutyAbroadByFractionsTest {
    private static final long SEED = Long.getLong("seed", 20230802L);
    private static final int CASES = Cases.upTo(1500);

    private static Optional<DutyRounding> anyRounding(Random random, int mostPlaces) {
        if (random.nextBoolean()) {
            return Optional.empty();
        }
        RoundingMode[] modes = {RoundingMode.DOWN, RoundingMode.UP, RoundingMode.HALF_UP};
        return Optional.of(new DutyRounding(random.nextInt(mostPlaces + 1), modes[random.nextInt(3)]));
    }

    private static Fraction rounded(Optional<DutyRounding> rounding, Fraction exact) {
        return rounding.map(how -> exact.rounded(how.places(), how.mode())).orElse(exact);
    }

    /** A country of random roundings with a full rate, and one for the first of a year of a small brewery. */
    private record Abroad(DutyBasis basis, BigDecimal full, YearTier tier) {

        static Abroad any(Random random) {
            List<DutyUnit> units = List.of(DutyUnit.HL_PERCENT, DutyUnit.HL_PLATO, DutyUnit.US_BARREL);
            DutyBasis basis = new DutyBasis(
                    units.get(random.nextInt(units.size())),
                    anyRounding(random, 1),
                    anyRounding(random, 4),
                    anyRounding(random, 3),
                    anyRounding(random, 5),
                    anyRounding(random, 3),
                    new DutyRounding(
                            random.nextInt(3), random.nextBoolean() ? RoundingMode.HALF_UP : RoundingMode.DOWN),
                    "invented");
            return new Abroad(
                    basis,
                    FractionTrials.random(random, 30, 1 + random.nextInt(3)),
                    new YearTier(
                            Optional.of(BigDecimal.valueOf(50_000)),
                            BigDecimal.ZERO,
                            Optional.of(BigDecimal.valueOf(100 + random.nextInt(900))),
                            BigDecimal.valueOf(1 + random.nextInt(100), 2)));
        }

        DutySchedule schedule() {
            DutyRate all = new DutyRate(
                    day("2026-01-01"),
                    Optional.empty(),
                    BigDecimal.ZERO,
                    Optional.empty(),
                    DraughtRule.ANY,
                    full,
                    Optional.empty(),
                    "invented");
            DutyRate small = new DutyRate(
                    day("2026-01-01"),
                    Optional.empty(),
                    BigDecimal.ZERO,
                    Optional.empty(),
                    DraughtRule.ANY,
                    full,
                    Optional.of(tier),
                    "invented");
            return DutyTables.schedule("Elsewhere", CurrencyUnit.EUR, List.of(all, small), basis);
        }

        Fraction volumeL() {
            return basis.unit() == DutyUnit.US_BARREL
                    ? Fraction.of("3.785411784").times(Fraction.of(31))
                    : Fraction.of(100);
        }

        Fraction unitsOf(BigDecimal hl) {
            return Fraction.of(hl).times(Fraction.of(100)).over(volumeL());
        }

        Fraction perVolume(boolean reduced, Fraction multiplier) {
            Fraction paid = Fraction.of(full);
            if (reduced) {
                Fraction share = Fraction.of(tier.share());
                paid = paid.times(share);
                paid = share.compareTo(Fraction.ONE) < 0 ? rounded(basis.reducedRate(), paid) : paid;
            }
            return rounded(basis.perVolume(), multiplier.times(paid));
        }

        /** Whether the small brewery's rate is the lower: a rate rounded up may not be. */
        boolean lower() {
            Fraction share = Fraction.of(tier.share());
            Fraction paid = Fraction.of(full).times(share);
            paid = share.compareTo(Fraction.ONE) < 0 ? rounded(basis.reducedRate(), paid) : paid;
            return paid.compareTo(Fraction.of(full)) < 0;
        }
    }

    @Test
    void a_country_of_any_roundings_charges_what_the_fractions_say() {
        TreeSet<Integer> slices = new TreeSet<>();
        FractionTrials.each(SEED, CASES, random -> {
            Abroad abroad = Abroad.any(random);
            DutyBasis basis = abroad.basis();
            boolean keg = random.nextBoolean();
            BigDecimal litres = FractionTrials.random(random, keg ? 160 : 1, 3);
            int count = 1 + random.nextInt(keg ? 400 : 20_000);
            BigDecimal plato = FractionTrials.random(random, 22, 3);
            BigDecimal strength = FractionTrials.random(random, 12, 1);
            YearVolume year = new YearVolume(
                    BigDecimal.valueOf(random.nextInt(4) == 0 ? 80_000 : 40_000),
                    BigDecimal.valueOf(random.nextInt(1200)));
            DutyFigure found = Duty.of(
                    new DutyInput(
                            container(litres, keg),
                            count,
                            Gravity.ofPlato(plato.doubleValue()),
                            Gravity.ofDegrees(0),
                            Optional.of(strength),
                            day("2026-11-10"),
                            day("2026-11-25"),
                            day("2026-11-25"),
                            ProductionYears.unknown(),
                            true,
                            Optional.empty(),
                            Optional.of(year)),
                    abroad.schedule());

            Fraction multiplier = switch (basis.unit()) {
                case HL_PLATO -> rounded(basis.strength(), Fraction.of(plato));
                case US_BARREL -> Fraction.ONE;
                case HL_PERCENT, PURE_ALCOHOL -> rounded(basis.strength(), Fraction.of(strength));
            };
            Fraction containers = Fraction.of(count);
            Fraction one = Fraction.of(litres).over(abroad.volumeL());
            Fraction volume = rounded(
                    basis.run(),
                    keg
                            ? rounded(basis.container(), one).times(containers)
                            : rounded(basis.container(), one.times(containers)));
            boolean small = abroad.unitsOf(year.annualHl())
                                    .compareTo(Fraction.of(
                                            abroad.tier().producerUpTo().orElseThrow()))
                            <= 0
                    && abroad.lower();
            Fraction start = abroad.unitsOf(year.alreadyHl());
            Fraction under = Fraction.of(abroad.tier().upTo().orElseThrow())
                    .minus(start)
                    .max(Fraction.ZERO)
                    .min(volume);
            Fraction reduced = small ? under : Fraction.ZERO;
            Fraction unrounded = abroad.perVolume(true, multiplier)
                    .times(reduced)
                    .plus(abroad.perVolume(false, multiplier).times(volume.minus(reduced)));
            slices.add(found.slices().size());
            Fraction off = Fraction.of(found.unrounded()).minus(unrounded);
            assertTrue(
                    off.max(Fraction.ZERO.minus(off)).compareTo(Fraction.of("1e-24")) < 0,
                    "duty before rounding of " + abroad + ": found " + found.unrounded());
            FractionTrials.assertExactly(
                    unrounded.rounded(basis.duty().places(), basis.duty().mode()),
                    found.duty().getAmount(),
                    "duty of " + abroad);
        });
        assertEquals(List.of(1, 2), List.copyOf(slices), "runs within a tier and over its end");
    }

    private static Container container(BigDecimal litres, boolean keg) {
        return new Container(
                "container",
                keg ? ContainerKind.KEG : ContainerKind.BOTTLE,
                litres,
                litres,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                false,
                false,
                List.of(),
                List.of());
    }
}
