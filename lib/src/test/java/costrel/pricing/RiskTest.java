package costrel.pricing;

import static costrel.cost.Given.assertRefused;
import static costrel.pricing.Given.SEED;
import static costrel.pricing.Given.bitter;
import static costrel.pricing.Given.gbp;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.cost.ContainerCost;
import costrel.cost.CostGroup;
import costrel.cost.CostSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import org.hipparchus.stat.correlation.SpearmansCorrelation;
import org.junit.jupiter.api.Test;

/** What chance does to the cost of a pint. Sampling errors are those of any textbook of statistics, named at each check. */
class RiskTest {
    private static final int DRAWS = 100_000;

    /** Draws may miss by so many standard errors: one case in 16,000 by chance, and the seed is fixed. */
    private static final double Z = 4;

    /** Room for sums of doubles. */
    private static final double ROUNDING = 1e-12;

    private static final CostVector TWO = new CostVector(
            "beer",
            List.of(
                    new CostVector.Line(CostGroup.MASHED_GOODS, "malt", true, 0.30),
                    new CostVector.Line(CostGroup.HOPS, "hops", true, 0.20),
                    new CostVector.Line(CostGroup.DUTY, "duty", false, 0.40)));

    private static RiskPlan plan(List<RiskPlan.Correlation> correlations, Driver... drivers) {
        return new RiskPlan(List.of(drivers), correlations, Optional.empty(), DRAWS, SEED);
    }

    private static Driver malt(double deviation) {
        return Driver.price("malt", 1, new Spread.Normal(1, deviation));
    }

    private static Driver hops(double deviation) {
        return Driver.price("hops", 1, new Spread.Normal(1, deviation));
    }

    private static List<RiskPlan.Correlation> together(double coefficient) {
        return List.of(new RiskPlan.Correlation("price of malt", "price of hops", coefficient));
    }

    @Test
    void without_spread_every_draw_is_the_cost_of_the_sheet() {
        CostSheet sheet = bitter().sheet();
        List<Driver> certain = List.of(
                Driver.price("pale malt", 0.82, new Spread.Normal(0.82, 0)),
                Driver.alpha("alpha", 0.055, new Spread.Lognormal(0.055, 0), Set.of("Goldings")),
                Driver.efficiency(0.85, new Spread.Uniform(0.85, 0.85)),
                Driver.loss(0.05, new Spread.Triangular(0.05, 0.05, 0.05)),
                Driver.exchangeRate("EUR", 0.86, new Spread.Normal(0.86, 0), Set.of("yeast")));
        List<CostVector> costs = new ArrayList<>(List.of(CostVector.of(sheet)));
        List<Double> expected = new ArrayList<>(List.of(sheet.unroundedPerPint().doubleValue()));
        for (ContainerCost container : sheet.containers()) {
            costs.add(CostVector.of(sheet, container));
            expected.add(container.unroundedPerPint().doubleValue());
        }
        for (int i = 0; i < costs.size(); i++) {
            RiskResult result = Risk.of(costs.get(i), new RiskPlan(certain, List.of(), Optional.empty(), 1000, SEED));
            assertEquals(expected.get(i), result.p10PerPint(), ROUNDING);
            assertEquals(expected.get(i), result.p50PerPint(), ROUNDING);
            assertEquals(expected.get(i), result.p90PerPint(), ROUNDING);
            assertEquals(expected.get(i), result.meanPerPint(), ROUNDING);
            assertEquals(expected.get(i), result.sheetPerPint(), ROUNDING);
            assertEquals(0, result.deviationPerPint(), ROUNDING);
            assertTrue(result.influences().stream().allMatch(influence -> influence.rankCorrelation() == 0));
        }
    }

    /**
     * A cost of 0.90 of which 0.30 is normal with 10 %: normal with deviation 0.03; its deciles lie 1.2815516 deviations off
     * (any table of the normal distribution). Standard error of a percentile: √(p (1 − p) / n) / density there.
     */
    @Test
    void the_percentiles_of_a_normal_price_are_those_of_the_normal_distribution() {
        RiskResult result = Risk.of(TWO, plan(List.of(), malt(0.1)));
        double n = DRAWS;
        double densityAtTenth = Math.exp(-1.2815516 * 1.2815516 / 2) / Math.sqrt(2 * Math.PI) / 0.03;
        double errorAtTenth = Math.sqrt(0.1 * 0.9 / n) / densityAtTenth;
        double errorAtHalf = Math.sqrt(0.25 / n) * Math.sqrt(2 * Math.PI) * 0.03;
        assertEquals(0.90 - 1.2815516 * 0.03, result.p10PerPint(), Z * errorAtTenth);
        assertEquals(0.90, result.p50PerPint(), Z * errorAtHalf);
        assertEquals(0.90 + 1.2815516 * 0.03, result.p90PerPint(), Z * errorAtTenth);
        assertEquals(0.90, result.meanPerPint(), Z * 0.03 / Math.sqrt(n));
        assertEquals(0.03, result.deviationPerPint(), Z * 0.03 / Math.sqrt(2 * n));
    }

    /** Var(aX + bY) = a²σ² + b²τ² + 2abρστ; the standard error of a variance of normal draws is √(2/n) of it. */
    @Test
    void drivers_that_go_together_widen_the_spread_as_their_covariance_says() {
        double a = 0.30 * 0.10;
        double b = 0.20 * 0.15;
        for (double correlation : new double[] {-1, -0.5, 0, 0.7, 1}) {
            RiskResult result = Risk.of(TWO, plan(together(correlation), malt(0.10), hops(0.15)));
            double variance = a * a + b * b + 2 * correlation * a * b;
            double found = result.deviationPerPint() * result.deviationPerPint();
            assertEquals(variance, found, Z * Math.sqrt(2.0 / DRAWS) * variance + ROUNDING, "at " + correlation);
        }
        double apart = Risk.of(TWO, plan(List.of(), malt(0.10), hops(0.15))).deviationPerPint();
        assertEquals(a * a + b * b, apart * apart, Z * Math.sqrt(2.0 / DRAWS) * (a * a + b * b));
    }

    /** The chance that a cost of 0.90 ± 0.03 passes 0.93 is that of one deviation: 0.1586553 (any table). */
    @Test
    void the_chance_to_miss_the_margin_is_that_of_the_distribution() {
        // At 1.55 a margin of 40 % allows a cost of 0.93.
        RiskPlan plan =
                new RiskPlan(List.of(malt(0.1)), List.of(), Optional.of(new RiskPlan.Target(1.55, 0.40)), DRAWS, SEED);
        double chance = Risk.of(TWO, plan).chanceUnderTarget().orElseThrow();
        assertEquals(0.1586553, chance, Z * Math.sqrt(0.1586553 * 0.8413447 / DRAWS));
        assertTrue(Risk.of(TWO, plan(List.of(), malt(0.1))).chanceUnderTarget().isEmpty());
    }

    @Test
    void the_target_of_a_container_is_its_price_by_the_pint() {
        CostSheet sheet = bitter().sheet();
        UnitCost cost = UnitCost.of(sheet, sheet.containers().get(0));
        Price price = Pricing.of(cost).at(gbp("200.00"));
        assertEquals(
                200 / cost.saleablePints().doubleValue(),
                RiskPlan.Target.of(price, 0.4).pricePerPint(),
                ROUNDING);
    }

    @Test
    void the_same_seed_gives_the_same_result_and_another_one_does_not() {
        RiskPlan first = plan(together(0.3), malt(0.1), hops(0.2));
        RiskPlan other = new RiskPlan(first.drivers(), first.correlations(), Optional.empty(), DRAWS, SEED + 1);
        assertEquals(Risk.of(TWO, first), Risk.of(TWO, first));
        assertNotEquals(Risk.of(TWO, first).meanPerPint(), Risk.of(TWO, other).meanPerPint());
    }

    /** Each spread against the library's own distribution. */
    @Test
    void a_spread_has_the_quantiles_of_its_distribution() {
        NormalDistribution normal = new NormalDistribution(0, 1);
        record Pair(Spread ours, RealDistribution theirs) {}
        List<Pair> pairs = List.of(
                new Pair(new Spread.Normal(3, 0.4), new NormalDistribution(3, 0.4)),
                new Pair(new Spread.Lognormal(3, 0.4), new LogNormalDistribution(Math.log(3), 0.4)),
                new Pair(new Spread.Triangular(1, 2, 5), new TriangularDistribution(1, 2, 5)),
                new Pair(new Spread.Triangular(1, 1, 5), new TriangularDistribution(1, 1, 5)),
                new Pair(new Spread.Uniform(-1, 4), new UniformRealDistribution(-1, 4)));
        Random random = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            double score = 4 * (2 * random.nextDouble() - 1);
            double share = normal.cumulativeProbability(score);
            assertEquals(share, NormalShare.under(score), 1e-12, "seed " + SEED + ", case " + i);
            for (Pair pair : pairs) {
                assertEquals(
                        pair.theirs().inverseCumulativeProbability(share),
                        pair.ours().at(score),
                        1e-6,
                        "seed " + SEED + ", case " + i + ": " + pair.ours() + " at " + score);
            }
        }
        assertEquals(0, NormalShare.under(-40));
        assertEquals(1, NormalShare.under(40));
    }

    /** Against the library's rank correlation. */
    @Test
    void ranks_are_correlated_as_the_library_does() {
        Random random = new Random(SEED);
        double[] x = new double[3000];
        double[] y = new double[3000];
        for (int i = 0; i < x.length; i++) {
            x[i] = random.nextGaussian();
            y[i] = 0.4 * x[i] - random.nextGaussian();
        }
        assertEquals(
                new SpearmansCorrelation().correlation(x, y),
                Ranks.correlation(Ranks.of(x), Ranks.of(y)),
                1e-9,
                "seed " + SEED);
    }

    /** For normal scores ρ Spearman's coefficient is 6/π · asin(ρ/2) (K. Pearson 1907). */
    @Test
    void what_drives_the_cost_comes_first() {
        RiskResult result = Risk.of(TWO, plan(List.of(), hops(0.15), malt(0.05)));
        double a = 0.20 * 0.15;
        double b = 0.30 * 0.05;
        double pearson = a / Math.hypot(a, b);
        assertEquals("price of hops", result.influences().get(0).driver());
        assertEquals(
                6 / Math.PI * Math.asin(pearson / 2),
                result.influences().get(0).rankCorrelation(),
                Z / Math.sqrt(DRAWS));
        assertEquals("price of malt", result.influences().get(1).driver());
    }

    /** By hand: half the alpha acid asks for twice the hops; a tenth more efficiency for a tenth less malt, and so on. */
    @Test
    void each_driver_moves_its_lines_its_own_way() {
        record Way(Driver driver, double perPint) {}
        List<Way> ways = List.of(
                new Way(Driver.alpha("alpha", 0.06, certain(0.03), Set.of("Hops")), 0.30 + 0.40 + 0.40),
                new Way(Driver.efficiency(0.80, certain(0.88)), 0.30 / 1.1 + 0.20 + 0.40),
                new Way(Driver.loss(0.04, certain(0.20)), 0.50 * 0.96 / 0.80 + 0.40),
                new Way(Driver.prices(CostGroup.MASHED_GOODS, 1, certain(1.5)), 0.45 + 0.20 + 0.40),
                new Way(Driver.price("duty", 1, certain(2)), 0.50 + 0.80),
                new Way(Driver.exchangeRate("EUR", 0.80, certain(0.90), Set.of("hops")), 0.30 + 0.225 + 0.40));
        for (Way way : ways) {
            assertEquals(
                    way.perPint(),
                    Risk.of(TWO, plan(List.of(), way.driver())).p50PerPint(),
                    ROUNDING,
                    way.driver().name());
        }
    }

    private static Spread certain(double value) {
        return new Spread.Uniform(value, value);
    }

    @Test
    void a_risk_without_sense_is_refused() {
        assertRefused(
                "expected a line of the sheet",
                () -> Risk.of(TWO, plan(List.of(), Driver.price("oats", 1, new Spread.Normal(1, 0.1)))));
        assertRefused("price of malt: least that is drawn", () -> malt(0.25));
        assertRefused(
                "least that is drawn: expected 0 to less than 1",
                () -> Driver.loss(0.05, new Spread.Normal(0.05, 0.02)));
        assertRefused("value of the sheet: expected more than 0", () -> Driver.price("malt", 0, certain(1)));
        assertRefused("value of the sheet", () -> Driver.price("malt", Double.NaN, certain(1)));
        assertRefused("deviation: expected 0 or more", () -> new Spread.Normal(1, Double.NaN));
        assertRefused("in that order", () -> new Spread.Triangular(1, 3, 2));
        assertRefused("in that order", () -> new Spread.Uniform(2, 1));
        assertRefused("more than 0", () -> new Spread.Lognormal(0, 0.1));
        assertRefused("expected -1 to 1", () -> together(1.01));
        assertRefused("a driver of the plan", () -> plan(together(0.5), malt(0.1)));
        assertRefused("each name once", () -> plan(List.of(), malt(0.1), malt(0.15)));
        assertRefused(
                "draws: expected 100 to 1,000,000",
                () -> new RiskPlan(List.of(malt(0.1)), List.of(), Optional.empty(), 99, SEED));
        assertRefused("margin: expected under 1", () -> new RiskPlan.Target(1.5, 1));
    }

    /** Two that both go wholly with a third can't go against each other. */
    @Test
    void correlations_that_contradict_each_other_are_refused() {
        Driver duty = Driver.price("duty", 1, new Spread.Normal(1, 0.1));
        List<RiskPlan.Correlation> impossible = List.of(
                new RiskPlan.Correlation("price of malt", "price of hops", 0.9),
                new RiskPlan.Correlation("price of malt", "price of duty", 0.9),
                new RiskPlan.Correlation("price of hops", "price of duty", -0.9));
        assertRefused("contradict each other", () -> Risk.of(TWO, plan(impossible, malt(0.1), hops(0.1), duty)));
    }

    @Test
    void a_person_may_stop_the_draws() {
        Thread.currentThread().interrupt();
        assertThrows(CancellationException.class, () -> Risk.of(TWO, plan(List.of(), malt(0.1))));
    }

    @Test
    void whoever_waits_is_told_a_share_that_only_rises_and_the_figures_stay_the_same() {
        List<Double> told = new ArrayList<>();
        RiskPlan plan = plan(List.of(), malt(0.1));
        RiskResult watched = Risk.of(TWO, plan, told::add);
        assertEquals(Risk.of(TWO, plan), watched);
        assertTrue(told.size() > 2, told.toString());
        assertEquals(0, told.get(0));
        for (int i = 1; i < told.size(); i++) {
            assertTrue(told.get(i) >= told.get(i - 1) && told.get(i) <= 1, told.toString());
        }
    }

    /** About a second on one free core is what is asked for; the best of three may take five, for a busy machine. */
    @Test
    void a_hundred_thousand_draws_of_thirty_lines_take_a_moment() {
        List<CostVector.Line> lines = new ArrayList<>();
        List<Driver> drivers = new ArrayList<>();
        List<RiskPlan.Correlation> correlations = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            String item = "item " + i;
            lines.add(new CostVector.Line(CostGroup.MASHED_GOODS, item, true, 0.01 + 0.001 * i));
            drivers.add(Driver.price(
                    item, 1, i % 2 == 0 ? new Spread.Lognormal(1, 0.1) : new Spread.Triangular(0.8, 1, 1.4)));
            if (i > 0) {
                correlations.add(new RiskPlan.Correlation("price of item " + (i - 1), "price of " + item, 0.3));
            }
        }
        CostVector cost = new CostVector("beer", lines);
        RiskPlan plan = new RiskPlan(drivers, correlations, Optional.empty(), DRAWS, SEED);
        RiskResult result = Risk.of(cost, plan);
        double seconds = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            long start = System.nanoTime();
            assertEquals(result, Risk.of(cost, plan));
            seconds = Math.min(seconds, (System.nanoTime() - start) / 1e9);
        }
        double best = seconds;
        assertTrue(result.p10PerPint() < result.p50PerPint() && result.p50PerPint() < result.p90PerPint());
        assertTrue(best < 5, () -> "took " + best + " s");
    }
}
