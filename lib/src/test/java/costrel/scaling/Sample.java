package costrel.scaling;

import costrel.hops.AlphaMethod;
import costrel.hops.FixedFigures;
import costrel.hops.HopForm;
import costrel.hops.HopOnTheDay;
import costrel.hops.HopUse;
import costrel.hops.Utilisation;
import costrel.measure.Amounts;
import costrel.plant.DipTable;
import costrel.plant.MashEfficiency;
import costrel.plant.Plant;
import costrel.recipe.Amount;
import costrel.recipe.GristMaterial;
import costrel.recipe.Holds;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.ResolvedRecipe.ResolvedGrist;
import costrel.recipe.ResolvedRecipe.ResolvedHop;
import costrel.wort.Gravity;
import costrel.wort.TemperatureCourse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Plants and recipes for the tests of this package; every figure is invented. */
final class Sample {

    static final GristMaterial PALE = material("pale ale malt", GristMaterial.Kind.MALT, 300, 0.03, 5);
    static final GristMaterial CRYSTAL = material("crystal malt", GristMaterial.Kind.MALT, 265, 0.04, 150);
    static final GristMaterial INVERT = material("invert sugar", GristMaterial.Kind.COPPER_SUGAR, 320, 0.17, 30);

    private Sample() {}

    static GristMaterial material(String name, GristMaterial.Kind kind, double hwe, double moisture, double ebc) {
        return new GristMaterial(
                name,
                kind,
                OptionalDouble.of(hwe),
                OptionalDouble.of(moisture),
                OptionalDouble.of(ebc),
                List.of("barley (gluten)"),
                "invented");
    }

    static Utilisation figures(double copper90, double copper15) {
        return new FixedFigures(
                Map.of(
                        new HopUse.FirstWort().label(), copper90,
                        new HopUse.Mash().label(), 0.1,
                        new HopUse.HotStand(Double.POSITIVE_INFINITY).label(), 0.08,
                        new HopUse.Hopback().label(), 0.05),
                List.of(new FixedFigures.Point(15, copper15), new FixedFigures.Point(90, copper90)));
    }

    /** A plant with nothing lost anywhere. */
    static Plant lossless(String name, double efficiency) {
        return plant(name, new MashEfficiency.Constant(efficiency), figures(0.3, 0.15), 0, 0, 0, 0);
    }

    static Plant plant(
            String name,
            MashEfficiency efficiency,
            Utilisation utilisation,
            double evaporationLPerHour,
            double leftL,
            double hopbackDeadL,
            double hopRetention) {
        return new Plant(
                name,
                new Plant.MashTun(
                        OptionalDouble.empty(), OptionalDouble.empty(), 0, 0, 0.96, 0.7, OptionalDouble.of(15)),
                new Plant.Copper(OptionalDouble.empty(), 0.15, 100, evaporationLPerHour, leftL),
                new Plant.Hopback(
                        hopbackDeadL,
                        Map.of(HopForm.LEAF, hopRetention, HopForm.T90, hopRetention),
                        10,
                        95,
                        OptionalDouble.empty()),
                TemperatureCourse.parse("linear 98 °C to 85 °C 30 min"),
                new Plant.Fv(OptionalDouble.empty(), 0.2),
                new Plant.Losses(0.03, 0.02, Map.of(HopForm.T90, 8.0), Map.of("", 0.01)),
                efficiency,
                utilisation,
                1,
                Plant.Weighing.exact(),
                OptionalDouble.empty(),
                OptionalDouble.of(18),
                DipTable.NONE,
                DipTable.NONE);
    }

    static HopOnTheDay hop(String lot, double alpha) {
        return new HopOnTheDay(
                lot,
                "Fuggle",
                HopForm.LEAF,
                alpha,
                AlphaMethod.LEAD_CONDUCTANCE,
                OptionalDouble.of(0.8),
                "certificate");
    }

    static ResolvedHop addition(HopOnTheDay hop, HopUse use, double kg) {
        return new ResolvedHop(hop, use, new Amount.OfMass(kg), Recipe.Hop.defaultFor(use));
    }

    static ResolvedHop addition(HopOnTheDay hop, HopUse use, Amount amount, Holds holds) {
        return new ResolvedHop(hop, use, amount, holds);
    }

    static ResolvedGrist malt(GristMaterial material, double kg) {
        return new ResolvedGrist(material, new Amount.OfMass(kg), OptionalDouble.empty(), false);
    }

    static ResolvedRecipe asBrewed(
            Plant home, double litres, double castShare, List<ResolvedGrist> grist, List<ResolvedHop> hops) {
        return recipe(Optional.of(home.name()), litres, Optional.empty(), castShare, grist, hops);
    }

    static ResolvedRecipe recipe(
            Optional<String> home,
            double litres,
            Optional<Gravity> og,
            double castShare,
            List<ResolvedGrist> grist,
            List<ResolvedHop> hops) {
        List<Recipe.Grist> gristNames = new ArrayList<>();
        for (ResolvedGrist line : grist) {
            gristNames.add(new Recipe.Grist(
                    line.material().name(), line.amount(), line.minutesBeforeCast(), line.forColour()));
        }
        List<Recipe.Hop> hopNames = new ArrayList<>();
        for (ResolvedHop line : hops) {
            hopNames.add(new Recipe.Hop(
                    line.hop().variety(),
                    Optional.of(line.hop().lot()),
                    OptionalDouble.empty(),
                    line.use(),
                    line.amount(),
                    line.holds()));
        }
        Recipe recipe = new Recipe(
                "trial bitter",
                home,
                Optional.empty(),
                OptionalDouble.of(litres),
                new Recipe.Targets(
                        og,
                        OptionalDouble.empty(),
                        OptionalDouble.of(0.75),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                new Recipe.Method(
                        OptionalDouble.of(2.5),
                        OptionalDouble.of(66),
                        90,
                        castShare,
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Recipe.GristHold.EXTRACT),
                gristNames,
                hopNames,
                List.of(),
                List.of());
        return new ResolvedRecipe(recipe, grist, hops, List.of(), List.of());
    }

    static Gyle brew(ResolvedRecipe recipe, Plant home, Plant plant, double litres) {
        return Scaler.scale(
                Scaler.read(recipe, Optional.of(home)), plant, Amounts.ofLitres(litres), Scaler.Options.usual());
    }
}
