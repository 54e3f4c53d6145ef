package costrel.scaling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Cases;
import costrel.hops.HopUse;
import costrel.hops.Kinetic;
import costrel.hops.Tinseth;
import costrel.hops.Utilisation;
import costrel.measure.Amounts;
import costrel.plant.MashEfficiency;
import costrel.plant.Plant;
import costrel.recipe.ResolvedRecipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must hold for any beer, any plant and any brew length. */
class ScalingPropertyTest {

    private static final long SEED = Long.getLong("seed", 20261125L);
    private static final int CASES = Cases.upTo(300);
    private static final double RELATIVE = 1e-8;

    @Test
    void the_same_plant_and_brew_length_give_the_recipe_back() {
        each((random, at) -> {
            Plant home = plant(random, "home");
            ResolvedRecipe recipe = recipe(random, home);
            Gyle gyle = Sample.brew(
                    recipe, home, home, recipe.recipe().brewLengthL().getAsDouble());
            assertSameWeights(recipe, gyle, at);
        });
    }

    @Test
    void there_and_back_again_gives_the_recipe_back() {
        each((random, at) -> {
            Plant home = plant(random, "home");
            Plant away = plant(random, "away");
            ResolvedRecipe recipe = recipe(random, home);
            Gyle there = Sample.brew(recipe, home, away, 500 + random.nextDouble() * 8000);
            Gyle back = Sample.brew(
                    Scaler.asBrewed(there),
                    away,
                    home,
                    recipe.recipe().brewLengthL().getAsDouble());
            assertSameWeights(recipe, back, at);
        });
    }

    @Test
    void two_gyles_side_by_side_use_what_one_of_their_sum_uses_on_a_plant_without_fixed_losses() {
        each((random, at) -> {
            Plant home = plant(random, "home");
            Plant even = Sample.plant(
                    "even",
                    new MashEfficiency.Constant(0.8 + random.nextDouble() * 0.15),
                    Sample.figures(0.3, 0.15),
                    0,
                    0,
                    0,
                    6);
            ResolvedRecipe recipe = recipe(random, home);
            double first = 500 + random.nextDouble() * 3000;
            double second = 500 + random.nextDouble() * 3000;
            Gyle one = Sample.brew(recipe, home, even, first);
            Gyle two = Sample.brew(recipe, home, even, second);
            Gyle both = Sample.brew(recipe, home, even, first + second);
            for (int i = 0; i < both.grist().size(); i++) {
                double sum = one.grist().get(i).kg() + two.grist().get(i).kg();
                assertEquals(sum, both.grist().get(i).kg(), RELATIVE * sum, at);
            }
            for (int i = 0; i < both.hops().size(); i++) {
                double sum = one.hops().get(i).kg() + two.hops().get(i).kg();
                assertEquals(sum, both.hops().get(i).kg(), RELATIVE * sum, at);
            }
        });
    }

    @Test
    void the_beer_is_held_whatever_the_plant() {
        each((random, at) -> {
            Plant home = plant(random, "home");
            Plant away = plant(random, "away");
            ResolvedRecipe recipe = recipe(random, home);
            Intent intent = Scaler.read(recipe, Optional.of(home));
            Gyle gyle = Scaler.scale(
                    intent, away, Amounts.ofLitres(500 + random.nextDouble() * 8000), Scaler.Options.usual());
            // the ledgers' own sums, taken afresh from the weights
            double potential = 0;
            double sugar = 0;
            for (Gyle.Grist line : gyle.grist()) {
                double litreDegrees = line.kg() * line.material().hweOrRefuse();
                if (line.material().mashed()) {
                    potential += litreDegrees;
                } else {
                    sugar += litreDegrees;
                }
            }
            double heldL = 0;
            for (Gyle.Hop hop : gyle.hops()) {
                heldL += hop.use().holdsWort()
                        ? hop.kg() * away.hopback().retention(hop.hop().form())
                        : 0;
            }
            double outL = gyle.intent().castShare() * gyle.collectedL()
                    + heldL
                    + away.hopback().deadL()
                    + away.copper().leftL();
            double og = (gyle.mashEfficiency() * potential + sugar)
                    / outL
                    * gyle.intent().castShare();
            assertEquals(intent.og().excessDegrees(), og, RELATIVE * og, at);
            double ebu = 0;
            for (Gyle.Hop hop : gyle.hops()) {
                ebu += 1e6 * hop.kg() * hop.hop().alpha() * hop.utilisation() / gyle.collectedL();
            }
            assertEquals(gyle.bitterness().ebu(), ebu, RELATIVE * Math.max(1, ebu), at);
            if (gyle.hops().get(0).kg() > 0) {
                assertEquals(intent.ebu(), ebu, RELATIVE * Math.max(1, ebu), at);
            }
        });
    }

    @Test
    void weighing_to_a_step_moves_a_weight_by_half_a_step_at_the_most() {
        each((random, at) -> {
            double step = random.nextDouble() * 5;
            double amount = random.nextDouble() * 900;
            double weighed = Weighing.toStep(amount, step);
            assertTrue(Math.abs(weighed - amount) <= step / 2 + 1e-9, at);
            double steps = weighed / step;
            assertEquals(Math.rint(steps), steps, 1e-6, at);
        });
    }

    private static void assertSameWeights(ResolvedRecipe recipe, Gyle gyle, String at) {
        int mashed = 0;
        int sugars = 0;
        List<Gyle.Grist> mashedLines =
                gyle.grist().stream().filter(line -> line.material().mashed()).toList();
        List<Gyle.Grist> sugarLines =
                gyle.grist().stream().filter(line -> !line.material().mashed()).toList();
        for (ResolvedRecipe.ResolvedGrist line : recipe.grist()) {
            double wanted = ((costrel.recipe.Amount.OfMass) line.amount()).kilograms();
            double found = line.material().mashed()
                    ? mashedLines.get(mashed++).kg()
                    : sugarLines.get(sugars++).kg();
            assertEquals(
                    wanted,
                    found,
                    RELATIVE * wanted,
                    at + ", " + line.material().name());
        }
        for (int i = 0; i < recipe.hops().size(); i++) {
            double wanted = ((costrel.recipe.Amount.OfMass) recipe.hops().get(i).amount()).kilograms();
            assertEquals(wanted, gyle.hops().get(i).kg(), RELATIVE * Math.max(1, wanted), at + ", hop " + i);
        }
    }

    private interface Trial {
        void run(Random random, String at);
    }

    private static void each(Trial trial) {
        for (int i = 0; i < CASES; i++) {
            long seed = SEED + i;
            trial.run(new Random(seed), "repeat with -Dseed=" + seed);
        }
    }

    static Plant plant(Random random, String name) {
        MashEfficiency efficiency = random.nextBoolean()
                ? new MashEfficiency.Constant(0.75 + random.nextDouble() * 0.2)
                : new MashEfficiency.Linear(0.80 + random.nextDouble() * 0.1, random.nextDouble() * 0.002, 42, 30, 80);
        Utilisation utilisation = switch (random.nextInt(3)) {
            case 0 -> Sample.figures(0.2 + random.nextDouble() * 0.15, 0.1);
            case 1 -> new Tinseth();
            default -> new Kinetic(OptionalDouble.of(0.4 + random.nextDouble() * 0.3));
        };
        return Sample.plant(
                name,
                efficiency,
                utilisation,
                random.nextDouble() * 200,
                random.nextDouble() * 30,
                random.nextDouble() * 40,
                3 + random.nextDouble() * 4);
    }

    static ResolvedRecipe recipe(Random random, Plant home) {
        double litres = 600 + random.nextDouble() * 5000;
        List<ResolvedRecipe.ResolvedGrist> grist = new ArrayList<>();
        grist.add(Sample.malt(Sample.PALE, litres * (0.11 + random.nextDouble() * 0.05)));
        grist.add(Sample.malt(Sample.CRYSTAL, litres * random.nextDouble() * 0.01 + 1));
        if (random.nextBoolean()) {
            grist.add(Sample.malt(Sample.INVERT, litres * random.nextDouble() * 0.01 + 1));
        }
        List<ResolvedRecipe.ResolvedHop> hops = new ArrayList<>();
        hops.add(Sample.addition(
                Sample.hop("bittering", 0.04 + random.nextDouble() * 0.06), new HopUse.Copper(90), litres * 0.0012));
        hops.add(Sample.addition(
                Sample.hop("late", 0.03 + random.nextDouble() * 0.03), new HopUse.Copper(15), litres * 0.0004));
        hops.add(Sample.addition(Sample.hop("dry", 0.05), new HopUse.DryHopCask(), litres * 0.0002));
        double castShare = random.nextBoolean() ? 1 : 0.9 + random.nextDouble() * 0.1;
        return Sample.asBrewed(home, litres, castShare, grist, hops);
    }
}
