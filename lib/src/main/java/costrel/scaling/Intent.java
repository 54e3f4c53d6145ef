package costrel.scaling;

import costrel.hops.HopOnTheDay;
import costrel.hops.HopUse;
import costrel.hops.Utilisation;
import costrel.plant.Plant;
import costrel.recipe.GristMaterial;
import costrel.recipe.Holds;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe;
import costrel.wort.Gravity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a beer is, free of the plant it was brewed on: the figures that scaling holds.
 *
 * @param recipe the recipe it was read from
 * @param home the plant whose figures it was read with; empty where the recipe states targets
 * @param og original gravity
 * @param castShare litres cast over litres collected (V_s/B)
 * @param mashed mashed goods
 * @param sugars copper sugars
 * @param hops hop additions
 * @param ebu total bitterness on collected wort by the home plant's convention, EBU
 * @param yeasts yeast
 * @param additions liquor treatment, process aids, finings and primings, as rates
 * @param findings what the reading met
 */
public record Intent(
        Recipe recipe,
        Optional<Plant> home,
        Gravity og,
        double castShare,
        List<Mashed> mashed,
        List<Sugar> sugars,
        List<Hop> hops,
        double ebu,
        List<Yeast> yeasts,
        List<Addition> additions,
        List<Finding> findings) {

    public Intent {
        mashed = List.copyOf(mashed);
        sugars = List.copyOf(sugars);
        hops = List.copyOf(hops);
        yeasts = List.copyOf(yeasts);
        additions = List.copyOf(additions);
        findings = List.copyOf(findings);
        if (mashed.isEmpty()) {
            throw new IllegalArgumentException(recipe.name() + ": expected at least one mashed material, found none");
        }
        if (!(og.excessDegrees() > 0)) {
            throw new IllegalArgumentException(
                    recipe.name() + ": expected an original gravity over 1.000, found " + og);
        }
    }

    /**
     * A mashed material.
     *
     * @param material with its analysis
     * @param weight its weight, in any unit common to all mashed goods and sugars of the recipe
     * @param kgPerHl kg for each hL of wort at cast, brought to the collected gravity; empty without a home plant
     * @param forColour whether it is there for colour
     */
    public record Mashed(GristMaterial material, double weight, OptionalDouble kgPerHl, boolean forColour) {}

    /**
     * A copper sugar.
     *
     * @param material with its analysis
     * @param weight its weight, in the unit of the mashed goods
     * @param shareOfExtract share of the litre-degrees in the copper; empty without a home plant, where weights rule
     * @param kgPerHl as for mashed goods
     * @param minutesBeforeCast minutes of boil left when it goes in; empty is the start
     * @param forColour whether it is there for colour
     */
    public record Sugar(
            GristMaterial material,
            double weight,
            OptionalDouble shareOfExtract,
            OptionalDouble kgPerHl,
            OptionalDouble minutesBeforeCast,
            boolean forColour) {}

    /**
     * A hop addition.
     *
     * @param asRead the hops by which the addition was read
     * @param now the hops to brew with
     * @param use where and when
     * @param holds what it keeps
     * @param ebu bitterness it brought, EBU; empty without a home plant unless stated
     * @param gramsPerHl weight for each hL collected, or racked for dry hops in cask; empty where only EBU or oil is stated
     * @param oilMlPerHl hop oil for each hL; empty where unknown
     */
    public record Hop(
            HopOnTheDay asRead,
            HopOnTheDay now,
            HopUse use,
            Holds holds,
            OptionalDouble ebu,
            OptionalDouble gramsPerHl,
            OptionalDouble oilMlPerHl) {}

    /**
     * Yeast.
     *
     * @param name the yeast
     * @param kgPerHlPerPlato kg for each hL collected and degree Plato of the original gravity
     * @param cellsPerKilogram cells, where known
     * @param allergens declarable allergens it brings
     */
    public record Yeast(String name, double kgPerHlPerPlato, OptionalDouble cellsPerKilogram, List<String> allergens) {}

    /**
     * An addition as a rate of what it goes into.
     *
     * @param name the item
     * @param into what it goes into
     * @param perHl kg, or litres, for each hectolitre of that
     * @param byVolume whether the rate is litres
     * @param primingHwe extract of primings, L°/kg; else 0
     * @param allergens declarable allergens it brings
     */
    public record Addition(
            String name, Recipe.Into into, double perHl, boolean byVolume, double primingHwe, List<String> allergens) {}

    /**
     * The same beer with the analyses of another day: malt lots and hop lots of then, the same shares.
     *
     * @param today the recipe resolved for that day
     * @return the intent to brew
     * @throws IllegalArgumentException if it is another recipe
     */
    public Intent with(ResolvedRecipe today) {
        if (today.grist().size() != mashed.size() + sugars.size()
                || today.hops().size() != hops.size()) {
            throw new IllegalArgumentException("expected the recipe " + recipe.name() + " on another day, found "
                    + today.recipe().name());
        }
        List<Mashed> newMashed = new ArrayList<>();
        List<Sugar> newSugars = new ArrayList<>();
        for (ResolvedRecipe.ResolvedGrist line : today.grist()) {
            if (line.material().mashed()) {
                Mashed old = mashed.get(newMashed.size());
                newMashed.add(new Mashed(line.material(), old.weight(), old.kgPerHl(), old.forColour()));
            } else {
                Sugar old = sugars.get(newSugars.size());
                newSugars.add(new Sugar(
                        line.material(),
                        old.weight(),
                        old.shareOfExtract(),
                        old.kgPerHl(),
                        old.minutesBeforeCast(),
                        old.forColour()));
            }
        }
        List<HopOnTheDay> newHops =
                today.hops().stream().map(ResolvedRecipe.ResolvedHop::hop).toList();
        return new Intent(recipe, home, og, castShare, newMashed, newSugars, hops, ebu, yeasts, additions, findings)
                .withHops(newHops);
    }

    /**
     * The same beer with other hops.
     *
     * @param now one for each addition, in order
     * @return the intent to brew
     * @throws IllegalArgumentException if the number of hops isn't the number of additions
     */
    public Intent withHops(List<HopOnTheDay> now) {
        if (now.size() != hops.size()) {
            throw new IllegalArgumentException(
                    recipe.name() + ": expected hops for " + hops.size() + " additions, found " + now.size());
        }
        List<Hop> changed = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
            Hop old = hops.get(i);
            changed.add(new Hop(
                    old.asRead(), now.get(i), old.use(), old.holds(), old.ebu(), old.gramsPerHl(), old.oilMlPerHl()));
        }
        return new Intent(recipe, home, og, castShare, mashed, sugars, changed, ebu, yeasts, additions, findings);
    }

    /**
     * The same beer at another original gravity: the shares of the grist, the total bitterness and all rates stay, and so do
     * materials that are held for colour.
     *
     * @param gravity the original gravity, over that of water
     * @return the beer, stronger or weaker
     * @throws IllegalArgumentException if the gravity is no more than that of water
     */
    public Intent withOg(Gravity gravity) {
        return new Intent(recipe, home, gravity, castShare, mashed, sugars, hops, ebu, yeasts, additions, findings);
    }

    /**
     * The same beer with another strength on its label.
     *
     * @param percent per cent by volume
     * @return the beer, declared so
     */
    public Intent declared(double percent) {
        Recipe.Targets old = recipe.targets();
        Recipe labelled = new Recipe(
                recipe.name(),
                recipe.home(),
                recipe.brewed(),
                recipe.brewLengthL(),
                new Recipe.Targets(
                        old.og(),
                        old.ebu(),
                        old.apparentAttenuation(),
                        OptionalDouble.of(percent),
                        old.volumesOfCondition()),
                recipe.method(),
                recipe.grist(),
                recipe.hops(),
                recipe.yeasts(),
                recipe.additions());
        return new Intent(labelled, home, og, castShare, mashed, sugars, hops, ebu, yeasts, additions, findings);
    }

    /**
     * The convention by which the bitterness was read.
     *
     * @return empty where the recipe states its bitterness
     */
    public Optional<Utilisation> convention() {
        return home.map(Plant::utilisation);
    }
}
