package costrel.scaling;

import costrel.recipe.Amount;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.ResolvedRecipe.ResolvedAddition;
import costrel.recipe.ResolvedRecipe.ResolvedGrist;
import costrel.recipe.ResolvedRecipe.ResolvedHop;
import costrel.recipe.ResolvedRecipe.ResolvedYeast;
import costrel.wort.Gravity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Takes a recipe that states its targets at its word; no plant is needed. */
final class TargetReader {

    private TargetReader() {}

    static Intent read(ResolvedRecipe resolved) {
        Recipe recipe = resolved.recipe();
        Gravity og = recipe.targets()
                .og()
                .orElseThrow(() -> new IllegalArgumentException(
                        recipe.name() + ": expected an OG, or a home plant to read it on, found neither"));
        List<Intent.Mashed> mashed = new ArrayList<>();
        List<Intent.Sugar> sugars = new ArrayList<>();
        boolean shares = resolved.grist().stream().allMatch(line -> line.amount() instanceof Amount.OfGrist);
        boolean masses = resolved.grist().stream().allMatch(line -> line.amount() instanceof Amount.OfMass);
        if (!shares && !masses) {
            throw new IllegalArgumentException(recipe.name()
                    + ": expected all grist materials by mass or all as shares of the grist, found some of each");
        }
        double sum = 0;
        for (ResolvedGrist line : resolved.grist()) {
            double weight = line.amount() instanceof Amount.OfMass mass
                    ? mass.kilograms()
                    : ((Amount.OfGrist) line.amount()).share();
            sum += weight;
            if (line.material().mashed()) {
                mashed.add(new Intent.Mashed(line.material(), weight, OptionalDouble.empty(), line.forColour()));
            } else {
                sugars.add(new Intent.Sugar(
                        line.material(),
                        weight,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        line.minutesBeforeCast(),
                        line.forColour()));
            }
        }
        if (shares && !(Math.abs(sum - 1) <= 1e-6)) {
            throw new IllegalArgumentException(
                    recipe.name() + ": expected shares of the grist that add up to 100 %, found "
                            + Math.round(sum * 1e6) / 1e4 + " %");
        }
        List<Intent.Hop> hops = new ArrayList<>();
        for (ResolvedHop line : resolved.hops()) {
            hops.add(hop(recipe, line));
        }
        return new Intent(
                recipe,
                Optional.empty(),
                og,
                recipe.method().castShare(),
                mashed,
                sugars,
                hops,
                total(recipe, hops),
                resolved.yeasts().stream().map(line -> yeast(recipe, line, og)).toList(),
                resolved.additions().stream()
                        .map(line -> addition(recipe, line))
                        .toList(),
                List.of());
    }

    private static double total(Recipe recipe, List<Intent.Hop> hops) {
        if (recipe.targets().ebu().isPresent()) {
            return recipe.targets().ebu().getAsDouble();
        }
        double sum = 0;
        for (Intent.Hop hop : hops) {
            boolean silent = hop.use().isDryHop();
            sum += hop.ebu().orElseGet(() -> {
                if (silent) {
                    return 0;
                }
                throw new IllegalArgumentException(recipe.name()
                        + ": expected its bitterness in EBU, every addition in EBU, or a home plant to read them on,"
                        + " found none of these");
            });
        }
        return sum;
    }

    private static Intent.Hop hop(Recipe recipe, ResolvedHop line) {
        OptionalDouble ebu = OptionalDouble.empty();
        OptionalDouble grams = OptionalDouble.empty();
        OptionalDouble oil = OptionalDouble.empty();
        Amount amount = line.amount();
        if (amount instanceof Amount.OfBitterness bitterness) {
            ebu = OptionalDouble.of(bitterness.ebu());
        } else if (amount instanceof Amount.OfRate rate) {
            grams = OptionalDouble.of(rate.gramsPerHectolitre());
        } else if (amount instanceof Amount.OfMass mass) {
            grams = OptionalDouble.of(
                    mass.kilograms() * 1e5 / brewLength(recipe, line.hop().variety()));
        } else if (amount instanceof Amount.OfOil stated) {
            oil = OptionalDouble.of(stated.millilitresPerHectolitre());
        }
        if (oil.isEmpty() && grams.isPresent() && line.hop().oilMlPer100g().isPresent()) {
            oil = OptionalDouble.of(
                    grams.getAsDouble() * line.hop().oilMlPer100g().getAsDouble() / 100);
        }
        return new Intent.Hop(line.hop(), line.hop(), line.use(), line.holds(), ebu, grams, oil);
    }

    private static Intent.Yeast yeast(Recipe recipe, ResolvedYeast line, Gravity og) {
        OptionalDouble cells = line.supply().cellsPerKilogram();
        double kgPerHlPerPlato = Conversions.yeastRate(
                line, og, () -> brewLength(recipe, line.supply().name()) / 100);
        return new Intent.Yeast(
                line.supply().name(), kgPerHlPerPlato, cells, line.supply().allergens());
    }

    private static Intent.Addition addition(Recipe recipe, ResolvedAddition line) {
        Amount amount = line.amount();
        if (amount instanceof Amount.OfRate || amount instanceof Amount.OfVolumeRate) {
            return Conversions.addition(line, 1);
        }
        throw new IllegalArgumentException(recipe.name() + ": " + line.name() + " for the "
                + line.into().label() + ": expected a rate such as 30 g/hL, since the recipe has no home plant, found '"
                + amount.text() + "'");
    }

    private static double brewLength(Recipe recipe, String item) {
        return recipe.brewLengthL()
                .orElseThrow(() -> new IllegalArgumentException(
                        recipe.name() + ": " + item + " is given by mass: expected a brew length as well, found none"));
    }
}
