package costrel.scaling;

import costrel.hops.HopUse;
import costrel.hops.UtilisationFigure;
import costrel.plant.Plant;
import costrel.recipe.Recipe;
import costrel.scaling.BrewSolver.BrewState;
import costrel.scaling.LiquorPlan.Goods;
import costrel.wort.WaterDensity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Lays a solved brewing out as a gyle: weights, ledgers, liquor, beer and findings. */
final class GyleBuilder {

    private GyleBuilder() {}

    static Gyle build(Intent intent, Plant plant, double collectedL, Scaler.Options options) {
        Recipe.Method method = intent.recipe().method();
        BrewState state = BrewSolver.solve(
                plant,
                method.boilMinutes(),
                method.stand().orElse(plant.stand()),
                collectedL,
                intent.castShare(),
                GristRules.held(intent, plant.efficiency(), method.boilMinutes()),
                HopRules.held(plant, intent, collectedL, options.factors()));
        double efficiency =
                BrewSolver.efficiencyAt(plant.efficiency(), state.grist().castDegrees());
        boolean upperBound = upperBound(state);
        boolean weighable = !upperBound || options.insistOnUpperBound();

        List<Gyle.Grist> grist = grist(intent, plant, state, efficiency, weighable);
        List<Gyle.Hop> hops = hops(intent, plant, state, weighable);
        Optional<LiquorPlan> liquor = LiquorPlan.of(
                plant,
                method,
                Goods.of(intent),
                state,
                mashHopHeldL(intent, plant, state.hops().kg()));
        Fermented beer = Fermented.of(
                plant, intent, intent.og(), collectedL, state.hops().kg());
        List<Gyle.Weight> yeasts = new ArrayList<>();
        for (Intent.Yeast yeast : intent.yeasts()) {
            double kg = yeast.kgPerHlPerPlato() * intent.og().plato() * collectedL / 100;
            double weighed = weighable ? Weighing.toStep(kg, plant.weighing().otherStepKg()) : kg;
            yeasts.add(new Gyle.Weight(yeast.name(), kg, weighed, false, Optional.empty(), yeast.allergens()));
        }
        List<Finding> findings = new ArrayList<>(intent.findings());
        List<Gyle.Weight> additions = additions(intent, plant, state, liquor, beer.rackedL(), weighable, findings);
        List<Gyle.RuledColour> colours = Colours.of(intent, state, findings);
        double potential = grist.stream()
                .mapToDouble(line -> line.kg() * line.material().hweOrRefuse())
                .sum();
        Gyle.Bitter bitter = bitter(intent, plant, state, upperBound, options);
        Gyle gyle = new Gyle(
                intent,
                plant,
                collectedL,
                intent.og(),
                state.grist().castDegrees(),
                state.copperUpDegrees(),
                efficiency,
                collectedL * intent.og().excessDegrees() / potential,
                grist,
                hops,
                bitter,
                yeasts,
                additions,
                liquor,
                colours,
                volumeLedger(intent, plant, state, liquor),
                extractLedger(intent, plant, state, grist),
                beer,
                weighable
                        ? Optional.of(Weighing.drift(intent, plant, collectedL, grist, hops, options))
                        : Optional.empty(),
                List.of());
        findings.addAll(beer.findings(intent));
        findings.addAll(VesselChecks.of(gyle));
        findings.addAll(HopChecks.of(gyle, state, options));
        return gyle.withFindings(findings);
    }

    private static List<Gyle.Grist> grist(
            Intent intent, Plant plant, BrewState state, double efficiency, boolean weighable) {
        double copper = state.outL() * state.grist().castDegrees();
        List<Gyle.Grist> lines = new ArrayList<>();
        for (int i = 0; i < intent.mashed().size(); i++) {
            Intent.Mashed line = intent.mashed().get(i);
            double kg = state.grist().mashedKg()[i];
            double litreDegrees = efficiency * kg * line.material().hweOrRefuse();
            double weighed = weighable ? Weighing.toStep(kg, plant.weighing().maltStepKg()) : kg;
            lines.add(new Gyle.Grist(
                    line.material(), kg, weighed, litreDegrees, litreDegrees / copper, OptionalDouble.empty()));
        }
        for (int i = 0; i < intent.sugars().size(); i++) {
            Intent.Sugar line = intent.sugars().get(i);
            double kg = state.grist().sugarKg()[i];
            double litreDegrees = kg * line.material().hweOrRefuse();
            double weighed = weighable ? Weighing.toStep(kg, plant.weighing().sugarStepKg()) : kg;
            lines.add(new Gyle.Grist(
                    line.material(), kg, weighed, litreDegrees, litreDegrees / copper, line.minutesBeforeCast()));
        }
        return lines;
    }

    private static List<Gyle.Hop> hops(Intent intent, Plant plant, BrewState state, boolean weighable) {
        double tankHeldL = 0;
        for (int i = 0; i < intent.hops().size(); i++) {
            Intent.Hop hop = intent.hops().get(i);
            tankHeldL += HopRules.tankHeld(
                    plant, hop.use(), hop.now().form(), state.hops().kg()[i]);
        }
        double rackedL = HopRules.rackedL(plant, state.collectedL(), tankHeldL);
        List<Gyle.Hop> lines = new ArrayList<>();
        for (int i = 0; i < intent.hops().size(); i++) {
            Intent.Hop hop = intent.hops().get(i);
            double kg = state.hops().kg()[i];
            UtilisationFigure figure = state.hops().figures()[i];
            double doseL = hop.use() instanceof HopUse.DryHopCask ? rackedL : state.collectedL();
            lines.add(new Gyle.Hop(
                    hop.now(),
                    hop.use(),
                    hop.holds(),
                    kg,
                    weighable ? Weighing.toStep(kg, plant.weighing().hopStepKg()) : kg,
                    kg * 1e5 / doseL,
                    figure.share() * plant.bitternessCorrection(),
                    state.hops().ebu()[i],
                    hop.gramsPerHl(),
                    figure.remark()));
        }
        return lines;
    }

    private static List<Gyle.Weight> additions(
            Intent intent,
            Plant plant,
            BrewState state,
            Optional<LiquorPlan> liquor,
            double rackedL,
            boolean weighable,
            List<Finding> findings) {
        List<Gyle.Weight> lines = new ArrayList<>();
        for (Intent.Addition addition : intent.additions()) {
            OptionalDouble litres = litresOf(addition.into(), state, liquor, rackedL);
            if (litres.isEmpty()) {
                findings.add(Finding.note(
                        addition.name() + " for the " + addition.into().label()
                                + " left out: the recipe states no liquor:grist ratio",
                        "add one, such as 2.5 L/kg"));
                continue;
            }
            double amount = addition.perHl() * litres.getAsDouble() / 100;
            double step = plant.weighing().otherStepKg();
            lines.add(new Gyle.Weight(
                    addition.name(),
                    amount,
                    weighable && !addition.byVolume() ? Weighing.toStep(amount, step) : amount,
                    addition.byVolume(),
                    Optional.of(addition.into()),
                    addition.allergens()));
        }
        return lines;
    }

    private static OptionalDouble litresOf(
            Recipe.Into into, BrewState state, Optional<LiquorPlan> liquor, double rackedL) {
        return switch (into) {
            case COPPER, FV -> OptionalDouble.of(state.collectedL());
            case TANK, CASK, PRIMINGS -> OptionalDouble.of(rackedL);
            case LIQUORING_BACK -> OptionalDouble.of(state.collectedL() - state.castL());
            case MASH_LIQUOR ->
                liquor.map(plan -> OptionalDouble.of(plan.mashL())).orElse(OptionalDouble.empty());
            case SPARGE_LIQUOR ->
                liquor.map(plan -> OptionalDouble.of(Math.max(0, plan.spargeL())))
                        .orElse(OptionalDouble.empty());
            case ALL_LIQUOR ->
                liquor.map(plan -> OptionalDouble.of(plan.totalL())).orElse(OptionalDouble.empty());
        };
    }

    private static Gyle.Bitter bitter(
            Intent intent, Plant plant, BrewState state, boolean upperBound, Scaler.Options options) {
        double sum = 0;
        for (double each : state.hops().ebu()) {
            sum += each;
        }
        OptionalDouble byHome = OptionalDouble.empty();
        String homeConvention = "";
        if (intent.home().isPresent()
                && !intent.home()
                        .get()
                        .utilisation()
                        .name()
                        .equals(plant.utilisation().name())) {
            byHome = OptionalDouble.of(HopRules.totalBy(intent.home().get(), intent, state, options.factors()));
            homeConvention = intent.home().get().utilisation().name();
        }
        return new Gyle.Bitter(
                sum, plant.utilisation().name(), plant.utilisation().speaksOf(), upperBound, byHome, homeConvention);
    }

    private static boolean upperBound(BrewState state) {
        for (UtilisationFigure figure : state.hops().figures()) {
            if (figure.upperBound()) {
                return true;
            }
        }
        return false;
    }

    private static double mashHopHeldL(Intent intent, Plant plant, double[] kg) {
        double sum = 0;
        for (int i = 0; i < kg.length; i++) {
            Intent.Hop hop = intent.hops().get(i);
            sum += hop.use() instanceof HopUse.Mash
                    ? kg[i] * plant.hopback().retention(hop.now().form())
                    : 0;
        }
        return sum;
    }

    private static Ledger volumeLedger(Intent intent, Plant plant, BrewState state, Optional<LiquorPlan> liquor) {
        double boiling = plant.copper().boilingCelsius();
        double sugarL = 0;
        for (int i = 0; i < intent.sugars().size(); i++) {
            sugarL += costrel.wort.Sugars.litresTakenUp(
                    state.grist().sugarKg()[i],
                    intent.sugars().get(i).material().hweOrRefuse());
        }
        double runOffL = liquor.map(LiquorPlan::runOffL).orElse(state.upL() - sugarL);
        double heldL = 0;
        for (int i = 0; i < intent.hops().size(); i++) {
            Intent.Hop hop = intent.hops().get(i);
            heldL += hop.use().holdsWort()
                    ? state.hops().kg()[i] * plant.hopback().retention(hop.now().form())
                    : 0;
        }
        double evaporated = plant.copper().evaporationLPerHour() * state.boil().boilMinutes() / 60;
        List<Ledger.Line> in = List.of(
                Ledger.Line.of("run-off from the mash", runOffL),
                Ledger.Line.of("copper sugars", sugarL),
                Ledger.Line.of("liquoring back", state.collectedL() - state.castL()));
        List<Ledger.Line> out = List.of(
                Ledger.Line.of("boiled off", evaporated),
                Ledger.Line.hot(
                        "left in the copper",
                        plant.copper().leftL(),
                        WaterDensity.volumeAt(plant.copper().leftL(), boiling),
                        boiling),
                Ledger.Line.of("held by spent hops", heldL),
                Ledger.Line.of("left in the hopback", plant.hopback().deadL()),
                Ledger.Line.of("collected in the FV", state.collectedL()));
        return new Ledger("volume", "L", in, out);
    }

    private static Ledger extractLedger(Intent intent, Plant plant, BrewState state, List<Gyle.Grist> grist) {
        double mash = 0;
        double sugar = 0;
        for (Gyle.Grist line : grist) {
            if (line.material().mashed()) {
                mash += line.litreDegrees();
            } else {
                sugar += line.litreDegrees();
            }
        }
        double castDegrees = state.grist().castDegrees();
        double heldL = state.outL()
                - state.castL()
                - plant.hopback().deadL()
                - plant.copper().leftL();
        return new Ledger(
                "extract",
                "L°",
                List.of(Ledger.Line.of("won in the mash", mash), Ledger.Line.of("copper sugars", sugar)),
                List.of(
                        Ledger.Line.of("held by spent hops", heldL * castDegrees),
                        Ledger.Line.of("left in the hopback", plant.hopback().deadL() * castDegrees),
                        Ledger.Line.of("left in the copper", plant.copper().leftL() * castDegrees),
                        Ledger.Line.of(
                                "collected in the FV",
                                state.collectedL() * intent.og().excessDegrees())));
    }
}
