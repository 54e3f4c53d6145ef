package costrel.recipe;

import costrel.hops.AlphaAgeing;
import costrel.hops.AlphaMethod;
import costrel.hops.HopForm;
import costrel.hops.HopLot;
import costrel.hops.HopOnTheDay;
import costrel.hops.HopVariety;
import costrel.recipe.ResolvedRecipe.ResolvedAddition;
import costrel.recipe.ResolvedRecipe.ResolvedGrist;
import costrel.recipe.ResolvedRecipe.ResolvedHop;
import costrel.recipe.ResolvedRecipe.ResolvedYeast;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns the names in a recipe into things: the one place where a name can be unknown. */
public final class Resolver {

    private Resolver() {}

    /**
     * Resolves a recipe with the analyses of a day.
     *
     * @param recipe the recipe
     * @param catalogue what it can name
     * @param day the brewing day, which picks malt lots and the alpha acid; empty takes the table rows and first certificates
     * @return the resolved recipe
     * @throws UnknownNameException if a name is unknown; nearest names are offered
     * @throws IllegalArgumentException if a hop addition has neither a lot nor a stated alpha acid
     */
    public static ResolvedRecipe resolve(Recipe recipe, Catalogue catalogue, Optional<LocalDate> day) {
        List<ResolvedGrist> grist = recipe.grist().stream()
                .map(line -> new ResolvedGrist(
                        catalogue.material(line.material(), day),
                        line.amount(),
                        line.minutesBeforeCast(),
                        line.forColour()))
                .toList();
        List<ResolvedHop> hops = recipe.hops().stream()
                .map(line ->
                        new ResolvedHop(hop(recipe, line, catalogue, day), line.use(), line.amount(), line.holds()))
                .toList();
        List<ResolvedYeast> yeasts = recipe.yeasts().stream()
                .map(line ->
                        new ResolvedYeast(Names.require("yeast", catalogue.supplies(), line.name()), line.amount()))
                .toList();
        List<ResolvedAddition> additions = recipe.additions().stream()
                .map(line -> addition(line, catalogue, day))
                .toList();
        return new ResolvedRecipe(recipe, grist, hops, yeasts, additions);
    }

    /**
     * A hop lot on a day, with the variety's published figures where it is in the table.
     *
     * @param lot the lot
     * @param catalogue holds the varieties
     * @param day the brewing day
     * @return the hops on that day
     */
    public static HopOnTheDay onTheDay(HopLot lot, Catalogue catalogue, LocalDate day) {
        Optional<HopVariety> variety = Names.find(catalogue.varieties(), lot.variety());
        return AlphaAgeing.onTheDay(lot, variety, day);
    }

    private static HopOnTheDay hop(Recipe recipe, Recipe.Hop line, Catalogue catalogue, Optional<LocalDate> day) {
        if (line.statedAlpha().isPresent()) {
            return new HopOnTheDay(
                    line.lot().orElse(line.variety()),
                    line.variety(),
                    HopForm.LEAF,
                    line.statedAlpha().getAsDouble(),
                    AlphaMethod.UNSTATED,
                    OptionalDouble.empty(),
                    "stated in the recipe");
        }
        Optional<HopLot> named = line.lot().map(id -> Names.require("hop lot", catalogue.hopLots(), id));
        Optional<HopLot> lot = named.or(() -> day.flatMap(date -> catalogue.lotInUse(line.variety(), date)));
        if (lot.isEmpty()) {
            boolean known = Names.find(catalogue.varieties(), line.variety()).isPresent()
                    || catalogue.varietiesInStore().stream()
                            .anyMatch(name -> Names.folded(name).equals(Names.folded(line.variety())));
            if (!known) {
                throw new UnknownNameException(
                        "hop variety",
                        line.variety(),
                        Names.nearest(catalogue.varieties().keySet(), line.variety()));
            }
            throw new IllegalArgumentException(recipe.name() + ": " + line.variety() + " in the "
                    + line.use().text()
                    + ": expected a lot analysed by "
                    + day.map(LocalDate::toString).orElse("the brewing day")
                    + " or a stated alpha acid, found none; add a lot to hop-lots.csv");
        }
        HopLot found = lot.get();
        if (!Names.folded(found.variety()).equals(Names.folded(line.variety()))) {
            throw new IllegalArgumentException(recipe.name() + ": lot " + found.id() + " is " + found.variety()
                    + ", but the recipe asks for " + line.variety());
        }
        return onTheDay(found, catalogue, day.orElse(found.analyses().get(0).date()));
    }

    private static ResolvedAddition addition(Recipe.Addition line, Catalogue catalogue, Optional<LocalDate> day) {
        if (line.into() == Recipe.Into.PRIMINGS) {
            GristMaterial sugar = catalogue.material(line.name(), day);
            return new ResolvedAddition(
                    sugar.name(), line.into(), line.amount(), sugar.hweOrRefuse(), sugar.allergens());
        }
        Supply supply = Names.require("liquor treatment or process aid", catalogue.supplies(), line.name());
        return new ResolvedAddition(supply.name(), line.into(), line.amount(), 0, supply.allergens());
    }
}
