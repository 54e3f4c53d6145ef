package costrel.scaling;

import costrel.hops.AlphaMethodFactors;
import costrel.measure.Amounts;
import costrel.plant.MashEfficiency;
import costrel.plant.Plant;
import costrel.recipe.GristMaterial;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.ResolvedRecipe.ResolvedGrist;
import costrel.wort.Gravity;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/**
 * Moves a beer between brew lengths and plants. What is held is the beer: its gravity, the share of extract by each material, its
 * bitterness, the dose of its late and dry hops, its liquor treatment and pitching rate. The weights follow from the plant.
 */
public final class Scaler {

    private static final int MOST_GYLES = 20;

    private Scaler() {}

    /**
     * Reads a recipe back into what it achieves: on its home plant, or at its word where it states targets.
     *
     * @param resolved the recipe with the analyses of the day it was brewed
     * @param home its home plant; empty where the recipe states targets
     * @return the beer, free of the plant
     * @throws IllegalArgumentException if the recipe lacks what the reading needs
     */
    public static Intent read(ResolvedRecipe resolved, Optional<Plant> home) {
        return home.isPresent() ? HomeReader.read(resolved, home.get()) : TargetReader.read(resolved);
    }

    /**
     * Brews a beer on a plant.
     *
     * @param intent the beer, with the hops and malts to brew with
     * @param plant the plant
     * @param brewLength cold wort to collect, over 0
     * @param options how strictly to weigh, and factors between alpha methods
     * @return the gyle, with findings where a limit is met
     * @throws IllegalArgumentException if an input is wrong or missing
     * @throws ArithmeticException if a ledger doesn't close
     */
    public static Gyle scale(Intent intent, Plant plant, Quantity<Volume> brewLength, Options options) {
        double collectedL = Amounts.litres(brewLength);
        if (!(collectedL > 0)) {
            throw new IllegalArgumentException("brew length: expected over 0 L, found " + collectedL + " L");
        }
        return GyleBuilder.build(intent, plant, collectedL, options);
    }

    /**
     * Brews a beer on a plant in as many equal gyles as its vessels need.
     *
     * @param intent the beer
     * @param plant the plant
     * @param total cold wort to collect in all, over 0
     * @param options as for one gyle
     * @return one of the equal gyles, and how many there are
     * @throws IllegalArgumentException if an input is wrong, or twenty gyles would not do
     */
    public static Split split(Intent intent, Plant plant, Quantity<Volume> total, Options options) {
        double totalL = Amounts.litres(total);
        for (int gyles = 1; gyles <= MOST_GYLES; gyles++) {
            Gyle gyle = scale(intent, plant, Amounts.ofLitres(totalL / gyles), options);
            if (!VesselChecks.overfull(gyle)) {
                return new Split(gyles, gyle);
            }
        }
        throw new IllegalArgumentException("brew length: " + Math.round(totalL) + " L does not fit " + plant.name()
                + " even in " + MOST_GYLES + " gyles; expected less");
    }

    /**
     * Several equal gyles.
     *
     * @param count how many
     * @param each one of them
     */
    public record Split(int count, Gyle each) {}

    /**
     * Choices in scaling.
     *
     * @param factors factors between alpha methods, stated by the brewery
     * @param insistOnUpperBound weigh out by a utilisation that is only an upper bound
     */
    public record Options(AlphaMethodFactors factors, boolean insistOnUpperBound) {

        /**
         * No factors between alpha methods, and no weighing out by an upper bound.
         *
         * @return the usual choices
         */
        public static Options usual() {
            return new Options(AlphaMethodFactors.NONE, false);
        }
    }

    /**
     * Turns an extract efficiency stated on a reference gyle into a mash efficiency: B·G = X·potential gives the gravity, and the
     * mash gave what the sugars did not.
     *
     * @param plant a plant that states its extract efficiency
     * @param reference the reference gyle, brewed on that plant, every grist material by mass
     * @return the plant with its mash efficiency; unchanged where it states one
     * @throws IllegalArgumentException if the reference gyle lacks what is needed
     */
    public static Plant withMashEfficiency(Plant plant, ResolvedRecipe reference) {
        if (!(plant.efficiency() instanceof MashEfficiency.OfReference stated)) {
            return plant;
        }
        double collectedL = reference
                .recipe()
                .brewLengthL()
                .orElseThrow(() -> new IllegalArgumentException(
                        "reference gyle " + reference.recipe().name() + ": expected a brew length, found none"));
        double potential = 0;
        for (ResolvedGrist line : reference.grist()) {
            if (!(line.amount() instanceof costrel.recipe.Amount.OfMass mass)) {
                throw new IllegalArgumentException("reference gyle "
                        + reference.recipe().name() + ": expected every grist material by mass, found '"
                        + line.amount().text() + "'");
            }
            potential += mass.kilograms() * line.material().hweOrRefuse();
        }
        double degrees = stated.extractEfficiency() * potential / collectedL;
        double castShare = reference.recipe().method().castShare();
        GristRules.Known known = HomeReader.known(reference);
        BrewSolver.BrewState state = BrewSolver.solve(
                plant,
                reference.recipe().method().boilMinutes(),
                reference.recipe().method().stand().orElse(plant.stand()),
                collectedL,
                castShare,
                GristRules.atGravity(known, Gravity.ofDegrees(degrees).excessDegrees() / castShare),
                HopRules.asStated(plant, reference.hops(), collectedL));
        double share = state.grist().mashLitreDegrees() / known.mashedPotential();
        return new Plant(
                plant.name(),
                plant.mashTun(),
                plant.copper(),
                plant.hopback(),
                plant.stand(),
                plant.fv(),
                plant.losses(),
                new MashEfficiency.Constant(share),
                plant.utilisation(),
                plant.bitternessCorrection(),
                plant.weighing(),
                plant.heldCarbonDioxide(),
                plant.warmestCelsius(),
                plant.copperDips(),
                plant.fvDips());
    }

    /**
     * A gyle as a recipe of its own: its plant is the home, its weights as computed are the amounts.
     *
     * @param gyle the gyle
     * @return the recipe with the same materials and hops
     */
    public static ResolvedRecipe asBrewed(Gyle gyle) {
        return GyleRecipe.of(gyle);
    }

    static double[] weights(java.util.List<Gyle.Grist> grist, boolean mashed) {
        return grist.stream()
                .filter(line -> line.material().mashed() == mashed)
                .mapToDouble(Gyle.Grist::weighedKg)
                .toArray();
    }

    static boolean hasAllColours(java.util.List<GristMaterial> materials) {
        return materials.stream().allMatch(material -> material.ebc().isPresent());
    }
}
