package costrel.scaling;

import costrel.plant.MashEfficiency;
import costrel.recipe.GristMaterial;
import costrel.scaling.BrewSolver.GristRule;
import costrel.scaling.BrewSolver.GristState;
import java.util.List;
import java.util.OptionalDouble;

/** Weights of the grist: known ones that give a gravity, or those that a gravity needs. */
final class GristRules {

    private GristRules() {}

    /**
     * A grist by weight, in the order mashed goods, sugars.
     *
     * @param mashed materials
     * @param mashedKg their weights
     * @param sugars materials
     * @param sugarKg their weights
     * @param atStart for each sugar, whether it goes in at the start of the boil
     */
    @SuppressWarnings("ArrayRecordComponent") // lives inside one solve and is never compared
    record Known(
            List<GristMaterial> mashed,
            double[] mashedKg,
            List<GristMaterial> sugars,
            double[] sugarKg,
            boolean[] atStart) {

        double mashedPotential() {
            return potential(mashed, mashedKg);
        }

        double sugarLitreDegrees() {
            return potential(sugars, sugarKg);
        }

        double startSugarLitreDegrees() {
            double sum = 0;
            for (int i = 0; i < sugarKg.length; i++) {
                sum += atStart[i] ? sugarKg[i] * sugars.get(i).hweOrRefuse() : 0;
            }
            return sum;
        }
    }

    static double potential(List<GristMaterial> materials, double[] kg) {
        double sum = 0;
        for (int i = 0; i < kg.length; i++) {
            sum += kg[i] * materials.get(i).hweOrRefuse();
        }
        return sum;
    }

    static boolean atStart(OptionalDouble minutesBeforeCast, double boilMinutes) {
        return minutesBeforeCast.isEmpty() || minutesBeforeCast.getAsDouble() >= boilMinutes;
    }

    /** A known grist and the plant's efficiency give the gravity: V_out·G_s = E(G_s)·potential + sugar, E linear in G_s. */
    static GristRule gravityOf(Known known, MashEfficiency efficiency) {
        double potential = known.mashedPotential();
        double sugar = known.sugarLitreDegrees();
        double start = known.startSugarLitreDegrees();
        return (outL, castL) -> {
            double castDegrees;
            if (efficiency instanceof MashEfficiency.Linear linear) {
                double atZero = linear.share() + linear.slope() * linear.referenceDegrees();
                castDegrees = (atZero * potential + sugar) / (outL + linear.slope() * potential);
                BrewSolver.efficiencyAt(efficiency, castDegrees);
            } else {
                castDegrees = (BrewSolver.efficiencyAt(efficiency, 0) * potential + sugar) / outL;
            }
            return new GristState(castDegrees, outL * castDegrees - sugar, start, known.mashedKg(), known.sugarKg());
        };
    }

    /** A known grist and a stated gravity: what the mash gave is what the sugars did not. */
    static GristRule atGravity(Known known, double castDegrees) {
        double sugar = known.sugarLitreDegrees();
        double start = known.startSugarLitreDegrees();
        return (outL, castL) ->
                new GristState(castDegrees, outL * castDegrees - sugar, start, known.mashedKg(), known.sugarKg());
    }

    /**
     * The grist that an intent needs on a plant: materials held by colour keep their weight for each hectolitre, sugars their
     * share of the litre-degrees, and the other mashed goods share the rest in their old proportions.
     */
    static GristRule held(Intent intent, MashEfficiency efficiency, double boilMinutes) {
        boolean byColour = intent.recipe().method().hold() == costrel.recipe.Recipe.GristHold.COLOUR;
        double castDegrees = intent.og().excessDegrees() / intent.castShare();
        double share = BrewSolver.efficiencyAt(efficiency, castDegrees);
        double allMashed = 0;
        double allSugar = 0;
        for (Intent.Mashed line : intent.mashed()) {
            allMashed += line.weight() * line.material().hweOrRefuse();
        }
        for (Intent.Sugar line : intent.sugars()) {
            allSugar += line.weight() * line.material().hweOrRefuse();
        }
        double perLitreDegree = 1 / (share * allMashed + allSugar);
        return (outL, castL) -> {
            double copper = outL * castDegrees;
            double hectolitres = outL / intent.castShare() / 100;
            double[] sugarKg = new double[intent.sugars().size()];
            double sugarSum = 0;
            double startSum = 0;
            for (int i = 0; i < sugarKg.length; i++) {
                Intent.Sugar sugar = intent.sugars().get(i);
                double hwe = sugar.material().hweOrRefuse();
                if (byColour && sugar.forColour()) {
                    sugarKg[i] = perHl(intent, sugar.material(), sugar.kgPerHl()) * hectolitres;
                } else if (sugar.shareOfExtract().isPresent()) {
                    sugarKg[i] = sugar.shareOfExtract().getAsDouble() * copper / hwe;
                } else {
                    sugarKg[i] = sugar.weight() * perLitreDegree * copper;
                }
                sugarSum += sugarKg[i] * hwe;
                startSum += atStart(sugar.minutesBeforeCast(), boilMinutes) ? sugarKg[i] * hwe : 0;
            }
            double mash = copper - sugarSum;
            double[] mashedKg = new double[intent.mashed().size()];
            double rest = mash;
            double restWeight = 0;
            for (int i = 0; i < mashedKg.length; i++) {
                Intent.Mashed line = intent.mashed().get(i);
                double hwe = line.material().hweOrRefuse();
                if (byColour && line.forColour()) {
                    mashedKg[i] = perHl(intent, line.material(), line.kgPerHl()) * hectolitres;
                    rest -= share * mashedKg[i] * hwe;
                } else {
                    restWeight += line.weight() * hwe;
                }
            }
            if (!(rest > 0) || !(restWeight > 0)) {
                throw new IllegalArgumentException(intent.recipe().name()
                        + ": expected extract left for the mashed goods that carry the beer, found none; the sugars or the"
                        + " materials held for colour bring all of it");
            }
            double kgPerWeight = rest / (share * restWeight);
            for (int i = 0; i < mashedKg.length; i++) {
                Intent.Mashed line = intent.mashed().get(i);
                if (!(byColour && line.forColour())) {
                    mashedKg[i] = line.weight() * kgPerWeight;
                }
            }
            return new GristState(castDegrees, mash, startSum, mashedKg, sugarKg);
        };
    }

    private static double perHl(Intent intent, GristMaterial material, OptionalDouble kgPerHl) {
        return kgPerHl.orElseThrow(
                () -> new IllegalArgumentException(
                        intent.recipe().name() + ": " + material.name()
                                + " is held for colour: expected a home plant to read its weight for each hectolitre, found none"));
    }
}
