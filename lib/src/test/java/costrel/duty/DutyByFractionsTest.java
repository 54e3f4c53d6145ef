package costrel.duty;

import static costrel.cost.Given.day;
import static costrel.cost.Given.uk;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Cases;
import costrel.cost.Given;
import costrel.wort.Gravity;
import costrel.wort.StrengthFactor;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Every rounding of duty against whole fractions that lose no digit, on random runs and on runs made to lie a hair to either
 * side of a step. Written from the texts: HMRC Notice 226 paras 30.2 and 30.3 (fall of gravity to a tenth, halves up, times its
 * factor), Alcoholic products technical guide s.11 (strength cut down to one decimal), Finance (No. 2) Act 2023 ss.54 to 59
 * (discount up to the penny), HMRC guidance on working out Alcohol Duty step 5 (duty cut down to the penny).
 */
class DutyByFractionsTest {
    private static final long SEED = Long.getLong("seed", 20230801L);
    private static final int CASES = Cases.upTo(800);
    private static final List<DutyRate> RATES = Given.rates("UK");
    private static final List<ReliefBand> BANDS = Given.bands("UK");
    private static final List<StrengthFactor> FACTORS = Given.factors().rows();
    private static final LocalDate IN_2025 = LocalDate.of(2025, 6, 1);
    private static final LocalDate IN_2026 = LocalDate.of(2026, 11, 25);

    /** A run of casks or bottles of a beer, brewed and released in 2026 by a brewery of so many hectolitres of alcohol. */
    private record Run(
            BigDecimal litres,
            int count,
            boolean conditioned,
            boolean draught,
            BigDecimal ogDegrees,
            BigDecimal pgDegrees,
            BigDecimal declared,
            LocalDate day,
            BigDecimal productionHl) {

        static Run any(Random random) {
            boolean draught = random.nextBoolean();
            // draught relief is for 20 L and more; a whole penny may lie a little under the litres drawn
            BigDecimal litres = draught
                    ? FractionTrials.random(random, 60, 5).add(BigDecimal.valueOf(21))
                    : FractionTrials.random(random, random.nextBoolean() ? 80 : 1, 5);
            BigDecimal pg = BigDecimal.valueOf(500 + random.nextInt(1000), 2);
            return new Run(
                    litres,
                    1 + random.nextInt(3000),
                    random.nextBoolean(),
                    draught,
                    pg.add(BigDecimal.valueOf(1 + random.nextInt(7000), 2)),
                    pg,
                    FractionTrials.random(random, random.nextInt(10) == 0 ? 25 : 9, 1 + random.nextInt(4)),
                    random.nextBoolean() ? IN_2025 : IN_2026,
                    FractionTrials.random(random, random.nextBoolean() ? 4500 : 300, 1 + random.nextInt(4)));
        }

        Run of(BigDecimal otherLitres, BigDecimal otherProductionHl) {
            return new Run(
                    otherLitres, count, conditioned, draught, ogDegrees, pgDegrees, declared, day, otherProductionHl);
        }

        DutyFigure figure(DutySchedule uk) {
            return Duty.of(
                    new DutyInput(
                            Given.holding(litres.toPlainString(), conditioned, draught),
                            count,
                            Gravity.ofDegrees(ogDegrees.doubleValue()),
                            Gravity.ofDegrees(pgDegrees.doubleValue()),
                            Optional.of(declared),
                            day,
                            day,
                            day,
                            Given.made(day, productionHl),
                            true,
                            Optional.empty()),
                    uk);
        }

        Fraction expectedStrength() {
            Fraction fall = Fraction.of(ogDegrees).minus(Fraction.of(pgDegrees)).halfUp(1);
            StrengthFactor row = FACTORS.stream()
                    .filter(each -> fall.compareTo(Fraction.of(BigDecimal.valueOf(each.toDegrees()))) <= 0)
                    .findFirst()
                    .orElseThrow();
            return fall.times(Fraction.of(BigDecimal.valueOf(row.factor()))).down(1);
        }

        Fraction strength() {
            Fraction cut = Fraction.of(declared).down(1);
            return conditioned ? cut.max(expectedStrength()) : cut;
        }

        Fraction rate() {
            return Fraction.of(RATES.stream()
                    .filter(rate -> !rate.validFrom().isAfter(day)
                            && rate.validUntil()
                                    .map(last -> !last.isBefore(day))
                                    .orElse(true)
                            && Fraction.of(rate.strengthFrom()).compareTo(strength()) <= 0
                            && rate.strengthUnder()
                                    .map(under -> strength().compareTo(Fraction.of(under)) < 0)
                                    .orElse(true)
                            && rate.draught() != (draught ? DraughtRule.NO : DraughtRule.YES))
                    .findFirst()
                    .orElseThrow()
                    .ratePerLpa());
        }

        Optional<ReliefBand> band() {
            Fraction made = Fraction.of(productionHl);
            return BANDS.stream()
                    .filter(band -> !band.validFrom().isAfter(day)
                            && band.validUntil()
                                    .map(last -> !last.isBefore(day))
                                    .orElse(true)
                            && band.draught() == draught
                            && Fraction.of(band.strengthFrom()).compareTo(strength()) <= 0
                            && strength().compareTo(Fraction.of(band.strengthUnder())) < 0
                            && Fraction.of(band.overHl()).compareTo(made) < 0
                            && made.compareTo(Fraction.of(band.upToHl())) <= 0)
                    .findFirst();
        }

        /** D = (C + M (A − S)) / A. */
        Fraction unroundedDiscount() {
            Fraction made = Fraction.of(productionHl);
            return band().map(band -> Fraction.of(band.cumulative())
                            .plus(Fraction.of(band.marginal()).times(made.minus(Fraction.of(band.overHl()))))
                            .over(made))
                    .orElse(Fraction.ZERO);
        }

        Fraction payable() {
            return rate().minus(unroundedDiscount().up(2).max(Fraction.ZERO)).max(Fraction.ZERO);
        }

        Fraction unrounded() {
            return Fraction.of(litres)
                    .times(Fraction.of(count))
                    .times(strength())
                    .over(Fraction.of(100))
                    .times(payable());
        }
    }

    private static void check(Run run, DutySchedule uk) {
        DutyFigure found = run.figure(uk);
        String what = run.toString();
        FractionTrials.assertExactly(
                run.expectedStrength(), found.expected().strength(), "expected strength of " + what);
        FractionTrials.assertExactly(run.strength(), found.strength(), "strength of " + what);
        FractionTrials.assertExactly(run.rate(), found.rate().ratePerLpa(), "rate of " + what);
        if (run.rate().compareTo(Fraction.ZERO) > 0) {
            FractionTrials.assertExactly(
                    run.unroundedDiscount().up(2).max(Fraction.ZERO),
                    found.relief().discount(),
                    "discount of " + what);
        }
        FractionTrials.assertExactly(run.payable(), found.payableRate(), "payable rate of " + what);
        FractionTrials.assertExactly(run.unrounded(), found.unrounded(), "duty before rounding of " + what);
        FractionTrials.assertExactly(run.unrounded().down(2), found.duty().getAmount(), "duty of " + what);
    }

    @Test
    void strength_discount_and_duty_are_rounded_each_its_own_way() {
        DutySchedule uk = uk();
        FractionTrials.each(SEED, CASES, random -> check(Run.any(random), uk));
    }

    @Test
    void a_discount_a_hair_over_a_penny_goes_up_to_the_next() {
        DutySchedule uk = uk();
        List<Fraction> distances = new ArrayList<>();
        FractionTrials.each(SEED, CASES, random -> {
            Run any = Run.any(random);
            Optional<ReliefBand> band = any.band();
            if (band.isEmpty() || any.rate().compareTo(Fraction.ZERO) == 0) {
                return;
            }
            // A at which D is a whole number of pence p: (C − M S) / (p − M)
            Fraction marginal = Fraction.of(band.get().marginal());
            Fraction pence = any.unroundedDiscount().up(2);
            Fraction numerator = Fraction.of(band.get().cumulative())
                    .minus(marginal.times(Fraction.of(band.get().overHl())));
            if (pence.compareTo(marginal) == 0) {
                return;
            }
            Fraction made = numerator.over(pence.minus(marginal));
            for (RoundingMode side : new RoundingMode[] {RoundingMode.FLOOR, RoundingMode.CEILING}) {
                BigDecimal near = made.decimal(8, side);
                if (near.signum() > 0 && near.compareTo(BigDecimal.valueOf(4500)) <= 0) {
                    Run run = any.of(any.litres(), near);
                    check(run, uk);
                    Fraction off = run.unroundedDiscount().up(2).minus(run.unroundedDiscount());
                    distances.add(off.min(Fraction.of("0.01").minus(off)));
                }
            }
        });
        long hairs = distances.stream()
                .filter(off -> off.compareTo(Fraction.of("0.00001")) < 0)
                .count();
        assertTrue(hairs > CASES / 4, "-Dseed=" + SEED + ": " + hairs + " near a penny");
    }

    @Test
    void duty_a_hair_under_a_penny_is_cut_down_to_the_one_before() {
        DutySchedule uk = uk();
        FractionTrials.each(SEED, CASES, random -> {
            Run any = Run.any(random);
            Fraction perLitre = any.unrounded().over(Fraction.of(any.litres()));
            if (perLitre.compareTo(Fraction.ZERO) == 0) {
                return;
            }
            Fraction litres = any.unrounded().up(2).over(perLitre);
            check(any.of(litres.decimal(12, RoundingMode.FLOOR).max(new BigDecimal("0.001")), any.productionHl()), uk);
            check(any.of(litres.decimal(12, RoundingMode.CEILING), any.productionHl()), uk);
        });
    }
}
