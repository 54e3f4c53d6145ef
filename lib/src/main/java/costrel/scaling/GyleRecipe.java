package costrel.scaling;

import costrel.recipe.Amount;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.Supply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns a gyle into a recipe whose home is the gyle's plant. */
final class GyleRecipe {

    private GyleRecipe() {}

    static ResolvedRecipe of(Gyle gyle) {
        Recipe old = gyle.intent().recipe();
        List<ResolvedRecipe.ResolvedGrist> grist = new ArrayList<>();
        List<Recipe.Grist> gristNames = new ArrayList<>();
        for (int i = 0; i < gyle.grist().size(); i++) {
            Gyle.Grist line = gyle.grist().get(i);
            boolean forColour = i < gyle.intent().mashed().size()
                    ? gyle.intent().mashed().get(i).forColour()
                    : gyle.intent()
                            .sugars()
                            .get(i - gyle.intent().mashed().size())
                            .forColour();
            Amount kg = new Amount.OfMass(line.kg());
            grist.add(new ResolvedRecipe.ResolvedGrist(line.material(), kg, line.minutesBeforeCast(), forColour));
            gristNames.add(new Recipe.Grist(line.material().name(), kg, line.minutesBeforeCast(), forColour));
        }
        List<ResolvedRecipe.ResolvedHop> hops = new ArrayList<>();
        List<Recipe.Hop> hopNames = new ArrayList<>();
        for (Gyle.Hop line : gyle.hops()) {
            Amount kg = new Amount.OfMass(line.kg());
            hops.add(new ResolvedRecipe.ResolvedHop(line.hop(), line.use(), kg, line.holds()));
            hopNames.add(new Recipe.Hop(
                    line.hop().variety(),
                    Optional.of(line.hop().lot()),
                    OptionalDouble.empty(),
                    line.use(),
                    kg,
                    line.holds()));
        }
        List<ResolvedRecipe.ResolvedYeast> yeasts = new ArrayList<>();
        List<Recipe.Yeast> yeastNames = new ArrayList<>();
        for (int i = 0; i < gyle.yeasts().size(); i++) {
            Gyle.Weight line = gyle.yeasts().get(i);
            Amount kg = new Amount.OfMass(line.amount());
            Supply supply = new Supply(
                    line.name(),
                    Supply.Kind.YEAST,
                    gyle.intent().yeasts().get(i).cellsPerKilogram(),
                    List.of(),
                    OptionalDouble.empty(),
                    line.allergens(),
                    "the gyle");
            yeasts.add(new ResolvedRecipe.ResolvedYeast(supply, kg));
            yeastNames.add(new Recipe.Yeast(line.name(), kg));
        }
        List<ResolvedRecipe.ResolvedAddition> additions = new ArrayList<>();
        List<Recipe.Addition> additionNames = new ArrayList<>();
        for (Intent.Addition rate : gyle.intent().additions()) {
            Amount amount = rate.byVolume()
                    ? new Amount.OfVolumeRate(rate.perHl() * 1000)
                    : new Amount.OfRate(rate.perHl() * 1000);
            additions.add(new ResolvedRecipe.ResolvedAddition(
                    rate.name(), rate.into(), amount, rate.primingHwe(), rate.allergens()));
            additionNames.add(new Recipe.Addition(rate.name(), rate.into(), amount));
        }
        Recipe.Targets targets = new Recipe.Targets(
                Optional.empty(),
                OptionalDouble.empty(),
                old.targets().apparentAttenuation(),
                old.targets().declaredStrength(),
                old.targets().volumesOfCondition());
        Recipe.Method method = new Recipe.Method(
                old.method().liquorToGrist(),
                old.method().initialHeatC(),
                old.method().boilMinutes(),
                gyle.intent().castShare(),
                old.method().stand(),
                old.method().tankDays(),
                old.method().hold());
        Recipe recipe = new Recipe(
                old.name(),
                Optional.of(gyle.plant().name()),
                old.brewed(),
                OptionalDouble.of(gyle.collectedL()),
                targets,
                method,
                gristNames,
                hopNames,
                yeastNames,
                additionNames);
        return new ResolvedRecipe(recipe, grist, hops, yeasts, additions);
    }
}
