package costrel.scaling;

import costrel.hops.HopUse;
import costrel.plant.Plant;
import costrel.recipe.Amount;
import costrel.recipe.GristMaterial;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.ResolvedRecipe.ResolvedGrist;
import costrel.recipe.ResolvedRecipe.ResolvedHop;
import costrel.scaling.BrewSolver.BrewState;
import costrel.scaling.GristRules.Known;
import costrel.wort.Gravity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a recipe as brewed back into what it achieved on its home plant. */
final class HomeReader {

    private HomeReader() {}

    static Intent read(ResolvedRecipe resolved, Plant plant) {
        Recipe recipe = resolved.recipe();
        double collectedL = recipe.brewLengthL()
                .orElseThrow(() -> new IllegalArgumentException(recipe.name()
                        + ": expected a brew length, since it was brewed on " + plant.name() + ", found none"));
        double castShare = recipe.method().castShare();
        Optional<Gravity> stated = recipe.targets().og();
        BrewState state = solve(resolved, plant, collectedL);
        double og = stated.map(Gravity::excessDegrees).orElse(state.grist().castDegrees() * castShare);
        double copper = state.outL() * state.grist().castDegrees();
        double hectolitres = state.outL() / castShare / 100;

        List<Intent.Mashed> mashed = new ArrayList<>();
        List<Intent.Sugar> sugars = new ArrayList<>();
        for (ResolvedGrist line : resolved.grist()) {
            if (line.material().mashed()) {
                double kg = state.grist().mashedKg()[mashed.size()];
                mashed.add(
                        new Intent.Mashed(line.material(), kg, OptionalDouble.of(kg / hectolitres), line.forColour()));
            } else {
                double kg = state.grist().sugarKg()[sugars.size()];
                sugars.add(new Intent.Sugar(
                        line.material(),
                        kg,
                        OptionalDouble.of(kg * line.material().hweOrRefuse() / copper),
                        OptionalDouble.of(kg / hectolitres),
                        line.minutesBeforeCast(),
                        line.forColour()));
            }
        }
        List<Finding> findings = new ArrayList<>();
        stated.ifPresent(gravity -> impliedEfficiency(resolved, plant, state, findings));
        List<Intent.Hop> hops = hops(resolved, plant, state);
        double ebu = 0;
        for (double each : state.hops().ebu()) {
            ebu += each;
        }
        Conversions rates = new Conversions(resolved, plant, state, Gravity.ofDegrees(og));
        return new Intent(
                recipe,
                Optional.of(plant),
                Gravity.ofDegrees(og),
                castShare,
                mashed,
                sugars,
                hops,
                recipe.targets().ebu().orElse(ebu),
                rates.yeasts(),
                rates.additions(),
                findings);
    }

    static BrewState solve(ResolvedRecipe resolved, Plant plant, double collectedL) {
        Recipe recipe = resolved.recipe();
        Optional<Gravity> stated = recipe.targets().og();
        double castShare = recipe.method().castShare();
        boolean byMass = resolved.grist().stream().allMatch(line -> line.amount() instanceof Amount.OfMass);
        BrewSolver.GristRule rule;
        if (byMass) {
            Known known = known(resolved);
            rule = stated.isPresent()
                    ? GristRules.atGravity(known, stated.get().excessDegrees() / castShare)
                    : GristRules.gravityOf(known, plant.efficiency());
        } else if (stated.isPresent()) {
            rule = GristRules.held(
                    TargetReader.read(resolved),
                    plant.efficiency(),
                    recipe.method().boilMinutes());
        } else {
            throw new IllegalArgumentException(
                    recipe.name()
                            + ": expected every grist material by mass, or an OG with shares of the grist, found shares without an OG");
        }
        return BrewSolver.solve(
                plant,
                recipe.method().boilMinutes(),
                recipe.method().stand().orElse(plant.stand()),
                collectedL,
                castShare,
                rule,
                HopRules.asStated(plant, resolved.hops(), collectedL));
    }

    static Known known(ResolvedRecipe resolved) {
        List<GristMaterial> mashed = new ArrayList<>();
        List<GristMaterial> sugars = new ArrayList<>();
        List<Double> mashedKg = new ArrayList<>();
        List<Double> sugarKg = new ArrayList<>();
        List<Boolean> start = new ArrayList<>();
        double boil = resolved.recipe().method().boilMinutes();
        for (ResolvedGrist line : resolved.grist()) {
            double kg = ((Amount.OfMass) line.amount()).kilograms();
            if (line.material().mashed()) {
                mashed.add(line.material());
                mashedKg.add(kg);
            } else {
                sugars.add(line.material());
                sugarKg.add(kg);
                start.add(GristRules.atStart(line.minutesBeforeCast(), boil));
            }
        }
        boolean[] atStart = new boolean[start.size()];
        for (int i = 0; i < atStart.length; i++) {
            atStart[i] = start.get(i);
        }
        return new Known(mashed, toArray(mashedKg), sugars, toArray(sugarKg), atStart);
    }

    private static List<Intent.Hop> hops(ResolvedRecipe resolved, Plant plant, BrewState state) {
        double tankHeldL = 0;
        for (int i = 0; i < resolved.hops().size(); i++) {
            ResolvedHop line = resolved.hops().get(i);
            tankHeldL += HopRules.tankHeld(
                    plant, line.use(), line.hop().form(), state.hops().kg()[i]);
        }
        double rackedL = HopRules.rackedL(plant, state.collectedL(), tankHeldL);
        List<Intent.Hop> hops = new ArrayList<>();
        for (int i = 0; i < resolved.hops().size(); i++) {
            ResolvedHop line = resolved.hops().get(i);
            double doseL = line.use() instanceof HopUse.DryHopCask ? rackedL : state.collectedL();
            double gramsPerHl = state.hops().kg()[i] * 1e5 / doseL;
            OptionalDouble oil = line.hop().oilMlPer100g();
            hops.add(new Intent.Hop(
                    line.hop(),
                    line.hop(),
                    line.use(),
                    line.holds(),
                    OptionalDouble.of(state.hops().ebu()[i]),
                    OptionalDouble.of(gramsPerHl),
                    oil.isPresent() ? OptionalDouble.of(gramsPerHl * oil.getAsDouble() / 100) : oil));
        }
        return hops;
    }

    private static void impliedEfficiency(
            ResolvedRecipe resolved, Plant plant, BrewState state, List<Finding> findings) {
        List<GristMaterial> mashed = resolved.grist().stream()
                .map(ResolvedGrist::material)
                .filter(GristMaterial::mashed)
                .toList();
        double implied = state.grist().mashLitreDegrees()
                / GristRules.potential(mashed, state.grist().mashedKg());
        double stated =
                BrewSolver.efficiencyAt(plant.efficiency(), state.grist().castDegrees());
        if (Math.abs(implied - stated) > 0.005) {
            findings.add(Finding.note(
                    String.format(
                            Locale.ROOT,
                            "the recipe states its OG and its grist weights; together they mean a mash efficiency of %.1f %% on %s,"
                                    + " which states %.1f %%",
                            implied * 100,
                            plant.name(),
                            stated * 100),
                    "the stated OG was taken at its word; leave it out to have it read from the weights"));
        }
    }

    private static double[] toArray(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
