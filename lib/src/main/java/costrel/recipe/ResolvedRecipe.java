package costrel.recipe;

import costrel.hops.HopOnTheDay;
import costrel.hops.HopUse;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A recipe whose names have become things, with the analyses of one day.
 *
 * @param recipe the recipe as written
 * @param grist grist materials with their analyses
 * @param hops hop additions with the alpha acid of the day
 * @param yeasts yeast
 * @param additions liquor treatment, process aids, finings and primings
 */
public record ResolvedRecipe(
        Recipe recipe,
        List<ResolvedGrist> grist,
        List<ResolvedHop> hops,
        List<ResolvedYeast> yeasts,
        List<ResolvedAddition> additions) {

    public ResolvedRecipe {
        grist = List.copyOf(grist);
        hops = List.copyOf(hops);
        yeasts = List.copyOf(yeasts);
        additions = List.copyOf(additions);
    }

    /**
     * A grist material with its analysis.
     *
     * @param material the material
     * @param amount mass or share of the grist
     * @param minutesBeforeCast for a copper sugar: minutes of boil left when it goes in; empty is the start of the boil
     * @param forColour whether it is there for colour
     */
    public record ResolvedGrist(
            GristMaterial material, Amount amount, OptionalDouble minutesBeforeCast, boolean forColour) {}

    /**
     * A hop addition with its lot on the day.
     *
     * @param hop the hops that go in
     * @param use where and when
     * @param amount mass, rate, bitterness or oil
     * @param holds what the addition keeps
     */
    public record ResolvedHop(HopOnTheDay hop, HopUse use, Amount amount, Holds holds) {}

    /**
     * Yeast with its figures.
     *
     * @param supply the yeast
     * @param amount mass, rate or cells
     */
    public record ResolvedYeast(Supply supply, Amount amount) {}

    /**
     * An addition with its figures. Primings name a grist material, everything else a supply.
     *
     * @param name the item
     * @param into what it goes into
     * @param amount mass, volume or a rate of either
     * @param primingHwe extract of primings, L°/kg; 0 for anything else
     * @param allergens declarable allergens it brings
     */
    public record ResolvedAddition(
            String name, Recipe.Into into, Amount amount, double primingHwe, List<String> allergens) {}
}
