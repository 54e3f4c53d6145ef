package costrel.scaling;

import costrel.hops.HopForm;
import costrel.hops.Utilisation;
import costrel.measure.Amounts;
import costrel.plant.MashEfficiency;
import costrel.plant.Plant;
import costrel.recipe.Amount;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.ResolvedRecipe.ResolvedAddition;
import costrel.recipe.ResolvedRecipe.ResolvedGrist;
import costrel.recipe.ResolvedRecipe.ResolvedHop;
import costrel.recipe.ResolvedRecipe.ResolvedYeast;
import costrel.recipe.Supply;
import costrel.wort.Gravity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A beer and a plant put together piece by piece for tests that can be worked out by hand: 5000 L of 1040 on 90 %. */
final class Job {
    static final double LITRES = 5000;

    /** Pale ale malt of 300 L°/kg for 5000 L at 40 degrees at 90 %. */
    static final double PALE_KG = 40 * LITRES / (300 * 0.9);

    boolean home = true;
    double litres = LITRES;
    OptionalDouble statedLitres = OptionalDouble.of(LITRES);
    Optional<Gravity> og = Optional.empty();
    OptionalDouble ebu = OptionalDouble.empty();
    OptionalDouble attenuation = OptionalDouble.of(0.75);
    OptionalDouble condition = OptionalDouble.empty();
    OptionalDouble liquorToGrist = OptionalDouble.of(2.5);
    OptionalDouble initialHeatC = OptionalDouble.of(66);
    double castShare = 1;
    Recipe.GristHold hold = Recipe.GristHold.EXTRACT;
    final List<ResolvedGrist> grist = new ArrayList<>(List.of(Sample.malt(Sample.PALE, PALE_KG)));
    final List<ResolvedHop> hops = new ArrayList<>();
    final List<ResolvedYeast> yeasts = new ArrayList<>();
    final List<ResolvedAddition> additions = new ArrayList<>();

    OptionalDouble tunL = OptionalDouble.empty();
    OptionalDouble greatestGristKg = OptionalDouble.empty();
    OptionalDouble gristC = OptionalDouble.of(15);
    OptionalDouble copperL = OptionalDouble.empty();
    OptionalDouble fvL = OptionalDouble.empty();
    OptionalDouble leastLeafKg = OptionalDouble.empty();
    double hopRetention;
    double correction = 1;
    MashEfficiency efficiency = new MashEfficiency.Constant(0.9);
    Utilisation utilisation = Sample.figures(0.3, 0.15);
    OptionalDouble heldVolumes = OptionalDouble.empty();
    OptionalDouble warmestC = OptionalDouble.empty();
    Scaler.Options options = Scaler.Options.usual();

    Plant plant() {
        Plant plain = Sample.plant("plain", efficiency, utilisation, 0, 0, 0, hopRetention);
        return new Plant(
                "plain",
                new Plant.MashTun(tunL, greatestGristKg, 0, 0, 0.96, 0.7, gristC),
                new Plant.Copper(copperL, 0.15, 100, 0, 0),
                new Plant.Hopback(
                        0, Map.of(HopForm.LEAF, hopRetention, HopForm.T90, hopRetention), 10, 95, leastLeafKg),
                plain.stand(),
                new Plant.Fv(fvL, 0.2),
                plain.losses(),
                efficiency,
                utilisation,
                correction,
                Plant.Weighing.exact(),
                heldVolumes,
                warmestC,
                plain.copperDips(),
                plain.fvDips());
    }

    ResolvedRecipe recipe() {
        ResolvedRecipe plain =
                Sample.recipe(home ? Optional.of("plain") : Optional.empty(), LITRES, og, castShare, grist, hops);
        Recipe named = plain.recipe();
        Recipe recipe = new Recipe(
                named.name(),
                named.home(),
                named.brewed(),
                statedLitres,
                new Recipe.Targets(og, ebu, attenuation, OptionalDouble.empty(), condition),
                new Recipe.Method(
                        liquorToGrist, initialHeatC, 90, castShare, Optional.empty(), OptionalDouble.empty(), hold),
                named.grist(),
                named.hops(),
                List.of(),
                List.of());
        return new ResolvedRecipe(recipe, grist, hops, yeasts, additions);
    }

    Intent intent() {
        return Scaler.read(recipe(), home ? Optional.of(plant()) : Optional.empty());
    }

    Gyle gyle() {
        return gyle(intent());
    }

    Gyle gyle(Intent intent) {
        return Scaler.scale(intent, plant(), Amounts.ofLitres(litres), options);
    }

    static ResolvedYeast yeast(Amount amount, double cellsPerKg) {
        return new ResolvedYeast(
                new Supply(
                        "yeast",
                        Supply.Kind.YEAST,
                        OptionalDouble.of(cellsPerKg),
                        List.of(),
                        OptionalDouble.empty(),
                        List.of(),
                        "invented"),
                amount);
    }

    static ResolvedAddition addition(String name, Recipe.Into into, Amount amount) {
        return new ResolvedAddition(name, into, amount, 0, List.of());
    }

    /** What the findings say of a weight, one a line. */
    static List<String> said(Gyle gyle, Finding.Weight weight) {
        return gyle.findings().stream()
                .filter(finding -> finding.weight() == weight)
                .map(finding -> finding.what() + " | " + finding.suggestion())
                .toList();
    }

    static boolean says(Gyle gyle, Finding.Weight weight, String words) {
        return said(gyle, weight).stream().anyMatch(line -> line.contains(words));
    }
}
