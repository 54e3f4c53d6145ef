package costrel.brewery;

import costrel.explain.Explanation;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.scaling.Finding;
import costrel.scaling.Gyle;
import costrel.wort.BottleVerdict;
import costrel.wort.Condition;
import costrel.wort.Gravity;
import costrel.wort.HeldGas;
import costrel.wort.PrimingSugar;
import costrel.wort.Racking;
import java.util.List;
import java.util.Optional;

/**
 * A beer at racking: what it holds, what is left to ferment, and for each container the condition it comes to and the primings
 * that bring what is short.
 *
 * @param gyle the gyle that is racked
 * @param fg gravity at which fermentation ends, from the recipe's attenuation
 * @param at gravity at racking; FG where it is racked fermented out
 * @param held what it is taken to hold then
 * @param recipeVolumes the most condition that primings of the recipe bring, volumes; 0 without any
 * @param lines a line for each container of the packaging plan
 */
public record RackingSheet(Gyle gyle, Gravity fg, Gravity at, HeldGas held, double recipeVolumes, List<Line> lines) {

    /** Where bottles may be kept at the warmest that the table of CO2 in beer reaches. */
    private static final double WARM_STORE_CELSIUS = 25;

    public RackingSheet {
        lines = List.copyOf(lines);
    }

    /**
     * One container.
     *
     * @param container the container
     * @param count how many are filled
     * @param racking the beer in it; where it gains no condition in it, what it holds is taken to be wanted
     * @param withRecipe the most it comes to with the primings that the recipe states, volumes
     * @param verdict on the glass at what it comes to; empty for anything that is no bottle
     * @param doses primings that bring what is short, by kind of sugar; none where nothing is short or the glass is refused
     */
    public record Line(
            Container container,
            int count,
            Racking racking,
            double withRecipe,
            Optional<BottleVerdict> verdict,
            List<Dose> doses) {

        public Line {
            doses = List.copyOf(doses);
        }

        static Line of(
                Container container, int count, Racking racking, double recipeVolumes, List<PrimingSugar> sugars) {
            Line bare = unconditioned(container, count, racking, recipeVolumes);
            boolean prime = racking.shortVolumes() > 0 && !bare.refused();
            return new Line(
                    container,
                    count,
                    racking,
                    bare.withRecipe(),
                    bare.verdict(),
                    prime
                            ? sugars.stream()
                                    .map(sugar -> Dose.of(container, count, racking, sugar))
                                    .toList()
                            : List.of());
        }

        static Line unconditioned(Container container, int count, Racking racking, double recipeVolumes) {
            double comesTo = Math.max(racking.wantedVolumes(), racking.unprimedVolumes());
            Optional<BottleVerdict> verdict = container.kind() == ContainerKind.BOTTLE
                    ? Optional.of(Condition.bottleVerdict(comesTo, container.ratedVolumes()))
                    : Optional.empty();
            return new Line(container, count, racking, racking.unprimedVolumes() + recipeVolumes, verdict, List.of());
        }

        /**
         * The condition it comes to: what is wanted, or more where what is left to ferment brings more.
         *
         * @return volumes
         */
        public double comesTo() {
            return Math.max(racking.wantedVolumes(), racking.unprimedVolumes());
        }

        /**
         * Whether that is more than the glass is good for. No racking gravity and no primings are told then.
         *
         * @return true for a bottle over its rating, or of no stated rating from 4.0 volumes
         */
        public boolean refused() {
            return verdict.isPresent() && verdict.get() == BottleVerdict.REFUSED;
        }

        /**
         * Pressure in it when it is stored at 25 °C.
         *
         * @return bar over that of the atmosphere, 0 or more; where the condition is over 10 volumes, that of 10
         */
        public double gaugeBarStoredWarm() {
            return Math.max(0, Condition.gaugePressureBar(Math.min(10, comesTo()), WARM_STORE_CELSIUS));
        }
    }

    /**
     * Primings of one kind for one container.
     *
     * @param sugar the sugar
     * @param gramsPerLitre grams as weighed for each litre of beer
     * @param gramsEach grams for one container, filled to its nominal volume
     * @param kgForRun kilograms for all of them
     * @param leastVolumes the condition the beer comes to by Balling's balance; by molar masses it comes to what is wanted
     */
    public record Dose(
            PrimingSugar sugar, double gramsPerLitre, double gramsEach, double kgForRun, double leastVolumes) {

        static Dose of(Container container, int count, Racking racking, PrimingSugar sugar) {
            double gramsPerLitre = racking.primingsGramsPerLitre(sugar);
            double gramsEach = gramsPerLitre * container.nominalL().doubleValue();
            return new Dose(
                    sugar,
                    gramsPerLitre,
                    gramsEach,
                    gramsEach * count / 1000,
                    racking.unprimedVolumes() + sugar.leastVolumes(gramsPerLitre));
        }
    }

    /**
     * Whether the beer is racked with all of it fermented.
     *
     * @return true at FG or under it
     */
    public boolean fermentedOut() {
        return at.excessDegrees() <= fg.excessDegrees();
    }

    /**
     * What a person must know before racking.
     *
     * @return limits, cautions and notes
     */
    public List<Finding> findings() {
        return RackingFindings.of(this);
    }

    /**
     * Whether a bottle is refused.
     *
     * @return true where a limit is among the findings
     */
    public boolean limited() {
        return findings().stream().anyMatch(finding -> finding.weight() == Finding.Weight.LIMIT);
    }

    /**
     * How the figures came about.
     *
     * @return a tree of figures
     */
    public Explanation explanation() {
        return RackingExplained.of(this);
    }
}
