package costrel.scaling;

import costrel.hops.HopUse;
import costrel.plant.Plant;
import costrel.recipe.Amount;
import costrel.recipe.MissingFigureException;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.ResolvedRecipe.ResolvedAddition;
import costrel.recipe.ResolvedRecipe.ResolvedYeast;
import costrel.scaling.BrewSolver.BrewState;
import costrel.wort.Gravity;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;

/** Turns weights as brewed into rates of what they went into. */
record Conversions(ResolvedRecipe resolved, Plant plant, BrewState state, Gravity og) {

    List<Intent.Yeast> yeasts() {
        return resolved.yeasts().stream()
                .map(line -> new Intent.Yeast(
                        line.supply().name(),
                        yeastRate(line, og, () -> state.collectedL() / 100),
                        line.supply().cellsPerKilogram(),
                        line.supply().allergens()))
                .toList();
    }

    List<Intent.Addition> additions() {
        return resolved.additions().stream()
                .map(line -> addition(line, isRate(line.amount()) ? 1 : hectolitres(line)))
                .toList();
    }

    /** Kilograms for each hectolitre and degree Plato: what a pitching rate holds. */
    static double yeastRate(ResolvedYeast line, Gravity og, DoubleSupplier hectolitres) {
        double plato = og.plato();
        if (line.amount() instanceof Amount.OfMass mass) {
            return mass.kilograms() / hectolitres.getAsDouble() / plato;
        }
        if (line.amount() instanceof Amount.OfRate rate) {
            return rate.gramsPerHectolitre() / 1000 / plato;
        }
        double cells = line.supply()
                .cellsPerKilogram()
                .orElseThrow(() -> new MissingFigureException(line.supply().name(), "yeast cells", "7500 billion/kg"));
        return ((Amount.OfCells) line.amount()).cellsPerMlPerPlato() * 1e5 / cells;
    }

    static Intent.Addition addition(ResolvedAddition line, double hectolitres) {
        Amount amount = line.amount();
        double perHl;
        boolean byVolume = false;
        if (amount instanceof Amount.OfMass mass) {
            perHl = mass.kilograms() / hectolitres;
        } else if (amount instanceof Amount.OfVolume volume) {
            perHl = volume.litres() / hectolitres;
            byVolume = true;
        } else if (amount instanceof Amount.OfVolumeRate rate) {
            perHl = rate.millilitresPerHectolitre() / 1000;
            byVolume = true;
        } else {
            perHl = ((Amount.OfRate) amount).gramsPerHectolitre() / 1000;
        }
        return new Intent.Addition(line.name(), line.into(), perHl, byVolume, line.primingHwe(), line.allergens());
    }

    private static boolean isRate(Amount amount) {
        return amount instanceof Amount.OfRate || amount instanceof Amount.OfVolumeRate;
    }

    private double hectolitres(ResolvedAddition line) {
        return switch (line.into()) {
            case COPPER, FV -> state.collectedL() / 100;
            case TANK, CASK, PRIMINGS -> rackedL() / 100;
            case LIQUORING_BACK -> (state.collectedL() - state.castL()) / 100;
            case MASH_LIQUOR -> liquor(line).mashL() / 100;
            case SPARGE_LIQUOR -> liquor(line).spargeL() / 100;
            case ALL_LIQUOR -> liquor(line).totalL() / 100;
        };
    }

    private double rackedL() {
        double tankHeldL = 0;
        for (int i = 0; i < resolved.hops().size(); i++) {
            ResolvedRecipe.ResolvedHop hop = resolved.hops().get(i);
            if (hop.use() instanceof HopUse.DryHopTank) {
                tankHeldL += HopRules.tankHeld(
                        plant, hop.use(), hop.hop().form(), state.hops().kg()[i]);
            }
        }
        return HopRules.rackedL(plant, state.collectedL(), tankHeldL);
    }

    private LiquorPlan liquor(ResolvedAddition line) {
        Optional<LiquorPlan> plan =
                LiquorPlan.of(plant, resolved.recipe().method(), LiquorPlan.Goods.of(resolved), state, mashHopHeldL());
        return plan.orElseThrow(
                () -> new IllegalArgumentException(resolved.recipe().name() + ": " + line.name()
                        + " is given by weight for the " + line.into().label()
                        + ": expected a liquor:grist ratio as well, found none"));
    }

    private double mashHopHeldL() {
        double litres = 0;
        for (int i = 0; i < resolved.hops().size(); i++) {
            ResolvedRecipe.ResolvedHop hop = resolved.hops().get(i);
            if (hop.use() instanceof HopUse.Mash) {
                litres += state.hops().kg()[i]
                        * plant.hopback().retention(hop.hop().form());
            }
        }
        return litres;
    }
}
