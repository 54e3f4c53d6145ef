package costrel.scaling;

import costrel.plant.Plant;
import costrel.recipe.GristMaterial;
import costrel.recipe.Recipe;
import costrel.scaling.BrewSolver.BrewState;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;

/** Rounds to what can be weighed out, last of all, and reads back what that changed. */
final class Weighing {

    /** Steps that decimals have exactly: halves, quarters, tenths, grams. */
    private static final double[] PARTS_OF_ONE = {10, 1000, 100, 2, 4, 5, 20, 50, 1};

    private Weighing() {}

    /** The nearest step, halves up; the amount itself where the step is 0. */
    static double toStep(double amount, double step) {
        if (!(step > 0)) {
            return amount;
        }
        double steps = Math.floor(amount / step + 0.5);
        for (double parts : PARTS_OF_ONE) {
            if (step == 1 / parts) {
                return steps / parts; // rounded once, as the decimal is
            }
        }
        return BigDecimal.valueOf(step).multiply(BigDecimal.valueOf(steps)).doubleValue();
    }

    /** What the weighed amounts give on the same plant at the same brew length. */
    static Gyle.Weighed drift(
            Intent intent,
            Plant plant,
            double collectedL,
            List<Gyle.Grist> grist,
            List<Gyle.Hop> hops,
            Scaler.Options options) {
        Recipe.Method method = intent.recipe().method();
        List<GristMaterial> mashed =
                intent.mashed().stream().map(Intent.Mashed::material).toList();
        List<GristMaterial> sugars =
                intent.sugars().stream().map(Intent.Sugar::material).toList();
        boolean[] atStart = new boolean[sugars.size()];
        for (int i = 0; i < atStart.length; i++) {
            atStart[i] = GristRules.atStart(intent.sugars().get(i).minutesBeforeCast(), method.boilMinutes());
        }
        GristRules.Known known = new GristRules.Known(
                mashed, Scaler.weights(grist, true), sugars, Scaler.weights(grist, false), atStart);
        double[] hopKg = hops.stream().mapToDouble(Gyle.Hop::weighedKg).toArray();
        BrewState state = BrewSolver.solve(
                plant,
                method.boilMinutes(),
                method.stand().orElse(plant.stand()),
                collectedL,
                intent.castShare(),
                GristRules.gravityOf(known, plant.efficiency()),
                HopRules.asWeighed(plant, intent, hopKg, collectedL, options.factors()));
        double ebu = 0;
        for (double each : state.hops().ebu()) {
            ebu += each;
        }
        OptionalDouble ebc = Scaler.hasAllColours(mashed) && Scaler.hasAllColours(sugars)
                ? OptionalDouble.of(Colours.byDefaultRule(intent, state))
                : OptionalDouble.empty();
        return new Gyle.Weighed(state.grist().castDegrees() * intent.castShare(), ebu, ebc);
    }
}
