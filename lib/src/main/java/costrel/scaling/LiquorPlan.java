package costrel.scaling;

import costrel.plant.Plant;
import costrel.recipe.GristMaterial;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.ResolvedRecipe.ResolvedGrist;
import costrel.scaling.BrewSolver.BrewState;
import costrel.wort.Gravity;
import costrel.wort.MashHeat;
import costrel.wort.Sugars;
import costrel.wort.WaterDensity;
import costrel.wort.WortDensity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The liquor of one gyle. Volumes are litres at 20 °C unless they say hot.
 *
 * @param mashL mash liquor
 * @param spargeL sparge liquor; negative where the mash liquor alone is too much
 * @param backL liquor added after the boil
 * @param strikeC strike heat, °C; empty where initial heat or grist temperature is not stated
 * @param initialC initial heat of the mash, °C; empty where not stated
 * @param meteredL what the liquor meter reads for the mash liquor at the strike heat; empty without one
 * @param mashVolumeL the mash, liquor and grist
 * @param mashHotL the mash with its liquor at the initial heat
 * @param runOffL wort run off to the copper
 * @param water the water ledger of the mash
 */
public record LiquorPlan(
        double mashL,
        double spargeL,
        double backL,
        OptionalDouble strikeC,
        OptionalDouble initialC,
        OptionalDouble meteredL,
        double mashVolumeL,
        double mashHotL,
        double runOffL,
        Ledger water) {

    /** Density of water at 20 °C, kg/L, as gravities at 20/20 °C are read against. */
    static final double WATER_KG_PER_L = 0.9982;

    /**
     * Mash and sparge liquor.
     *
     * @return litres at 20 °C
     */
    public double totalL() {
        return mashL + spargeL;
    }

    /** What is mashed and what goes into the copper. */
    record Goods(List<GristMaterial> mashed, List<GristMaterial> sugars) {

        static Goods of(ResolvedRecipe resolved) {
            List<GristMaterial> all =
                    resolved.grist().stream().map(ResolvedGrist::material).toList();
            return new Goods(
                    all.stream().filter(GristMaterial::mashed).toList(),
                    all.stream().filter(material -> !material.mashed()).toList());
        }

        static Goods of(Intent intent) {
            return new Goods(
                    intent.mashed().stream().map(Intent.Mashed::material).toList(),
                    intent.sugars().stream().map(Intent.Sugar::material).toList());
        }
    }

    /** The plan of a solved brewing; empty where the recipe states no liquor:grist ratio. */
    static Optional<LiquorPlan> of(
            Plant plant, Recipe.Method method, Goods goods, BrewState state, double mashHopHeldL) {
        if (method.liquorToGrist().isEmpty()) {
            return Optional.empty();
        }
        double ratio = method.liquorToGrist().getAsDouble();
        double gristKg = 0;
        double moistureKg = 0;
        for (int i = 0; i < goods.mashed().size(); i++) {
            double kg = state.grist().mashedKg()[i];
            gristKg += kg;
            moistureKg += kg == 0 ? 0 : kg * goods.mashed().get(i).moistureOrRefuse();
        }
        double sugarL = 0;
        for (int i = 0; i < goods.sugars().size(); i++) {
            sugarL += Sugars.litresTakenUp(
                    state.grist().sugarKg()[i], goods.sugars().get(i).hweOrRefuse());
        }
        double runOffL = state.upL() - sugarL;
        Gravity runOff = Gravity.ofDegrees(state.grist().mashLitreDegrees() / runOffL);
        double wortKg = runOffL * WortDensity.kgPerLitreAt20(runOff);
        double extractKg = wortKg * runOff.plato() / 100;
        double waterL = (wortKg - extractKg) / WATER_KG_PER_L;
        double grainL = plant.mashTun().grainRetentionLPerKg() * gristKg;
        double moistureL = moistureKg / WATER_KG_PER_L;
        double liquorL = waterL + grainL + mashHopHeldL + plant.mashTun().deadL() - moistureL;
        double mashL = ratio * gristKg;
        double spargeL = liquorL - mashL;

        double moisture = moistureKg / gristKg;
        OptionalDouble initial = method.initialHeatC();
        OptionalDouble strike = OptionalDouble.empty();
        OptionalDouble metered = OptionalDouble.empty();
        if (initial.isPresent() && plant.mashTun().gristCelsius().isPresent()) {
            double celsius = MashHeat.strikeHeat(
                    initial.getAsDouble(),
                    plant.mashTun().gristCelsius().getAsDouble(),
                    ratio,
                    moisture,
                    plant.mashTun().heatAllowanceK());
            strike = OptionalDouble.of(celsius);
            if (celsius <= 150) {
                metered = OptionalDouble.of(WaterDensity.volumeAt(mashL, celsius));
            }
        }
        double hotLiquorL = initial.isPresent() ? WaterDensity.volumeAt(mashL, initial.getAsDouble()) : mashL;
        double displacedL = plant.mashTun().displacementLPerKg() * gristKg;
        Ledger water = new Ledger(
                "water",
                "L",
                List.of(
                        Ledger.Line.of("mash liquor", mashL),
                        Ledger.Line.of("sparge liquor", spargeL),
                        Ledger.Line.of("moisture of the grist", moistureL)),
                List.of(
                        Ledger.Line.of("water in the run-off", waterL),
                        Ledger.Line.of("water in the wet grains", grainL),
                        Ledger.Line.of("held by mash hops", mashHopHeldL),
                        Ledger.Line.of("mash tun dead space", plant.mashTun().deadL())));
        return Optional.of(new LiquorPlan(
                mashL,
                spargeL,
                state.collectedL() - state.castL(),
                strike,
                initial,
                metered,
                mashL + displacedL,
                hotLiquorL + displacedL,
                runOffL,
                water));
    }
}
