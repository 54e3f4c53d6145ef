package costrel.scaling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Cases;
import costrel.hops.HopOnTheDay;
import costrel.measure.Amounts;
import costrel.plant.MashEfficiency;
import costrel.plant.Plant;
import costrel.recipe.ResolvedRecipe;
import costrel.wort.Dilution;
import costrel.wort.Dilution.Portion;
import costrel.wort.Gravity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Which way a gyle goes when one thing changes and all else stays, for any beer and any plant. */
class ScalingDirectionTest {

    private static final long SEED = Long.getLong("seed", 20261126L);
    private static final int CASES = Cases.upTo(300);

    /** Solved to this, of each figure or of 1. */
    private static final double NOISE = 1e-8;

    /** A beer read at home and the plant it goes to. */
    private record Job(Intent intent, Plant plant, double litres) {

        static Job any(Random random) {
            Plant home = ScalingPropertyTest.plant(random, "home");
            ResolvedRecipe recipe = ScalingPropertyTest.recipe(random, home);
            return new Job(
                    Scaler.read(recipe, Optional.of(home)),
                    ScalingPropertyTest.plant(random, "away"),
                    500 + random.nextDouble() * 8000);
        }

        Gyle gyle() {
            return gyle(plant, litres);
        }

        Gyle gyle(Plant where, double length) {
            return Scaler.scale(intent, where, Amounts.ofLitres(length), Scaler.Options.usual());
        }

        Job with(Intent changed) {
            return new Job(changed, plant, litres);
        }
    }

    private interface Trial {
        void run(Random random, Job job, String at);
    }

    private static void each(Trial trial) {
        for (int i = 0; i < CASES; i++) {
            long seed = SEED + i;
            Random random = new Random(seed);
            trial.run(random, Job.any(random), "-Dseed=" + seed);
        }
    }

    private static void assertNoLess(double before, double after, String at) {
        assertTrue(after >= before - NOISE * Math.max(1, Math.abs(before)), at + ": " + before + ", then " + after);
    }

    private static void assertNoLess(double[] before, double[] after, String at) {
        assertEquals(before.length, after.length, at);
        for (int i = 0; i < before.length; i++) {
            assertNoLess(before[i], after[i], at + ", line " + i);
        }
    }

    private static double[] malts(Gyle gyle) {
        return gyle.grist().stream().mapToDouble(Gyle.Grist::kg).toArray();
    }

    private static double[] hops(Gyle gyle) {
        return gyle.hops().stream().mapToDouble(Gyle.Hop::kg).toArray();
    }

    private static double[] others(Gyle gyle) {
        List<Gyle.Weight> all = new ArrayList<>(gyle.yeasts());
        all.addAll(gyle.additions());
        return all.stream().mapToDouble(Gyle.Weight::amount).toArray();
    }

    private static double liquorL(Gyle gyle) {
        return gyle.liquor().orElseThrow().totalL();
    }

    @Test
    void a_longer_gyle_takes_no_less_of_anything() {
        each((random, job, at) -> {
            Gyle shorter = job.gyle();
            Gyle longer = job.gyle(job.plant(), job.litres() * (1 + random.nextDouble()));
            assertNoLess(malts(shorter), malts(longer), at + ", malts");
            assertNoLess(hops(shorter), hops(longer), at + ", hops");
            assertNoLess(others(shorter), others(longer), at + ", the rest");
            assertNoLess(liquorL(shorter), liquorL(longer), at + ", liquor");
            assertNoLess(shorter.beer().rackedL(), longer.beer().rackedL(), at + ", racked");
        });
    }

    @Test
    void a_stronger_beer_takes_no_less_malt_and_no_less_bittering() {
        each((random, job, at) -> {
            double degrees = job.intent().og().excessDegrees();
            Gyle weaker = job.gyle();
            Gyle stronger = job.with(job.intent().withOg(Gravity.ofDegrees(degrees * (1 + 0.3 * random.nextDouble()))))
                    .gyle();
            assertNoLess(malts(weaker), malts(stronger), at + ", malts");
            assertNoLess(hops(weaker), hops(stronger), at + ", hops");
        });
    }

    @Test
    void less_alpha_acid_takes_no_less_hops_and_the_doses_stay() {
        each((random, job, at) -> {
            Gyle before = job.gyle();
            int poorer = random.nextInt(job.intent().hops().size());
            double factor = 0.3 + 0.7 * random.nextDouble();
            List<HopOnTheDay> now = new ArrayList<>();
            for (int i = 0; i < job.intent().hops().size(); i++) {
                HopOnTheDay hop = job.intent().hops().get(i).now();
                now.add(i == poorer ? Sample.hop(hop.lot(), hop.alpha() * factor) : hop);
            }
            Gyle after = job.with(job.intent().withHops(now)).gyle();
            assertNoLess(hops(before), hops(after), at + ", hops");
            assertEquals(
                    before.hops().get(1).kg(), after.hops().get(1).kg(), NOISE, at + ", late hops keep their dose");
            assertNoLess(malts(before), malts(after), at + ", malts: more hops hold more wort");
            assertEquals(
                    before.bitterness().ebu(),
                    after.bitterness().ebu(),
                    NOISE * before.bitterness().ebu(),
                    at + ", EBU");
        });
    }

    @Test
    void a_lower_mash_efficiency_takes_no_less_malt_and_the_same_sugar() {
        each((random, job, at) -> {
            double high = 0.75 + 0.2 * random.nextDouble();
            double low = high * (0.7 + 0.3 * random.nextDouble());
            Gyle before = job.gyle(plant(high, 1, 0, 0, 0, 5), job.litres());
            Gyle after = job.gyle(plant(low, 1, 0, 0, 0, 5), job.litres());
            for (int i = 0; i < before.grist().size(); i++) {
                double kg = before.grist().get(i).kg();
                boolean mashed = before.grist().get(i).material().mashed();
                assertEquals(
                        mashed ? kg * high / low : kg,
                        after.grist().get(i).kg(),
                        NOISE * Math.max(1, kg),
                        at + ", line " + i);
            }
        });
    }

    @Test
    void a_better_utilisation_takes_no_more_bittering_hops() {
        each((random, job, at) -> {
            double less = 0.5 + 0.5 * random.nextDouble();
            Gyle poor = job.gyle(plant(0.85, less, 50, 10, 10, 5), job.litres());
            Gyle good = job.gyle(plant(0.85, 1, 50, 10, 10, 5), job.litres());
            assertNoLess(hops(good), hops(poor), at + ", hops");
        });
    }

    @Test
    void more_wort_left_behind_anywhere_takes_no_less_malt_and_liquor() {
        each((random, job, at) -> {
            double[] few = {random.nextDouble() * 50, random.nextDouble() * 50, 2 + random.nextDouble() * 3};
            double[] more = few.clone();
            int place = random.nextInt(few.length);
            more[place] *= 1 + random.nextDouble();
            Gyle before = job.gyle(plant(0.85, 1, 50, few[0], few[1], few[2]), job.litres());
            Gyle after = job.gyle(plant(0.85, 1, 50, more[0], more[1], more[2]), job.litres());
            assertNoLess(malts(before), malts(after), at + ", place " + place);
            assertNoLess(liquorL(before), liquorL(after), at + ", place " + place);
            assertEquals(
                    before.og().excessDegrees(),
                    after.og().excessDegrees(),
                    NOISE * before.og().excessDegrees(),
                    at);
        });
    }

    @Test
    void what_boils_away_is_liquor_and_no_malt() {
        each((random, job, at) -> {
            double litresAnHour = random.nextDouble() * 300;
            Gyle before = job.gyle(plant(0.85, 1, 0, 10, 10, 5), job.litres());
            Gyle after = job.gyle(plant(0.85, 1, litresAnHour, 10, 10, 5), job.litres());
            // 90 minutes of boil; a thinner wort is a little less contracted, litre for litre, by no more than a part
            // in a hundred
            double boiledL = 1.5 * litresAnHour;
            assertEquals(boiledL, liquorL(after) - liquorL(before), 0.01 * boiledL + NOISE, at + ", liquor");
            assertNoLess(malts(before), malts(after), at + ", malts");
            assertNoLess(malts(after), malts(before), at + ", malts");
        });
    }

    @Test
    void gyles_blend_alike_whichever_two_go_together_first() {
        each((random, job, at) -> {
            List<Portion> worts = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                double degrees = job.intent().og().excessDegrees() * (0.7 + 0.5 * random.nextDouble());
                Gyle gyle = job.with(job.intent().withOg(Gravity.ofDegrees(degrees)))
                        .gyle(job.plant(), 300 + random.nextDouble() * 4000);
                worts.add(new Portion(gyle.collectedL(), gyle.og()));
            }
            Portion all = Dilution.blendExact(worts);
            Portion firstTwo = Dilution.blendExact(List.of(Dilution.blendExact(worts.subList(0, 2)), worts.get(2)));
            Portion lastTwo = Dilution.blendExact(List.of(worts.get(0), Dilution.blendExact(worts.subList(1, 3))));
            for (Portion blend : List.of(firstTwo, lastTwo)) {
                assertEquals(all.volumeL(), blend.volumeL(), NOISE * all.volumeL(), at);
                assertEquals(all.gravity().excessDegrees(), blend.gravity().excessDegrees(), NOISE * 100, at);
            }
            // and as a gyle of that length and gravity has it
            Gyle one = job.with(job.intent().withOg(all.gravity())).gyle(job.plant(), all.volumeL());
            double extractKg =
                    worts.stream().mapToDouble(ScalingDirectionTest::extractKg).sum();
            assertEquals(extractKg, extractKg(new Portion(one.collectedL(), one.og())), NOISE * extractKg, at);
        });
    }

    /** Kilograms of extract by weight: litres × kg/L × °P, the wort's density against water of 20 °C. */
    private static double extractKg(Portion wort) {
        double waterKgPerL = 0.9982;
        double sg = 1 + wort.gravity().excessDegrees() / 1000;
        return wort.volumeL() * sg * waterKgPerL * wort.gravity().plato() / 100;
    }

    private static Plant plant(
            double efficiency,
            double utilisation,
            double evaporationLPerHour,
            double leftL,
            double hopbackDeadL,
            double hopRetention) {
        return Sample.plant(
                "changed",
                new MashEfficiency.Constant(efficiency),
                Sample.figures(0.3 * utilisation, 0.15 * utilisation),
                evaporationLPerHour,
                leftL,
                hopbackDeadL,
                hopRetention);
    }
}
