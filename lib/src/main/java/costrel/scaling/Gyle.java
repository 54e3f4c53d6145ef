package costrel.scaling;

import costrel.explain.Explanation;
import costrel.hops.HopOnTheDay;
import costrel.hops.HopUse;
import costrel.measure.Amounts;
import costrel.plant.Plant;
import costrel.recipe.GristMaterial;
import costrel.recipe.Holds;
import costrel.recipe.Recipe;
import costrel.wort.Colour;
import costrel.wort.Gravity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/**
 * One brewing of a beer on a plant: what to weigh out, what to draw, what to expect. Volumes are litres at 20 °C.
 *
 * @param intent the beer
 * @param plant the plant it is brewed on
 * @param collectedL brew length: cold wort in the FV after any liquoring back
 * @param og original gravity aimed at
 * @param castDegrees gravity at cast, excess degrees
 * @param copperUpDegrees gravity of the full copper, excess degrees
 * @param mashEfficiency litre-degrees in the copper from mashed goods over their potential
 * @param extractEfficiency litre-degrees collected over the potential of all materials
 * @param grist what is mashed and what goes into the copper as sugar
 * @param hops hop additions
 * @param bitterness the total, and by whose convention
 * @param yeasts yeast
 * @param additions liquor treatment, process aids, finings and primings
 * @param liquor mash and sparge; empty where the recipe states no liquor:grist ratio
 * @param colours colour by each published rule, the default first; empty where a material has no colour figure
 * @param volume the volume ledger from the run-off to the FV
 * @param extract the extract ledger
 * @param beer from the FV to racking
 * @param weighed what weighing changed; empty where the gyle may not be weighed out
 * @param findings limits, cautions and notes
 */
public record Gyle(
        Intent intent,
        Plant plant,
        double collectedL,
        Gravity og,
        double castDegrees,
        double copperUpDegrees,
        double mashEfficiency,
        double extractEfficiency,
        List<Grist> grist,
        List<Hop> hops,
        Bitter bitterness,
        List<Weight> yeasts,
        List<Weight> additions,
        Optional<LiquorPlan> liquor,
        List<RuledColour> colours,
        Ledger volume,
        Ledger extract,
        Fermented beer,
        Optional<Weighed> weighed,
        List<Finding> findings) {

    public Gyle {
        grist = List.copyOf(grist);
        hops = List.copyOf(hops);
        yeasts = List.copyOf(yeasts);
        additions = List.copyOf(additions);
        colours = List.copyOf(colours);
        findings = List.copyOf(findings);
    }

    /**
     * A grist material to weigh out.
     *
     * @param material with its analysis
     * @param kg as computed
     * @param weighedKg as weighed out
     * @param litreDegrees what it brings to the copper
     * @param share of the litre-degrees in the copper
     * @param minutesBeforeCast for a copper sugar, minutes of boil left; empty is the start
     */
    public record Grist(
            GristMaterial material,
            double kg,
            double weighedKg,
            double litreDegrees,
            double share,
            OptionalDouble minutesBeforeCast) {}

    /**
     * A hop addition to weigh out.
     *
     * @param hop the lot on the day
     * @param use where and when
     * @param holds what it keeps
     * @param kg as computed
     * @param weighedKg as weighed out
     * @param gramsPerHl weight for each hL collected, or racked for dry hops in cask
     * @param utilisation on collected wort, with the plant's correction
     * @param ebu bitterness it brings
     * @param wasGramsPerHl weight for each hL as the addition was read; empty where unknown
     * @param remark on the utilisation, or empty
     */
    public record Hop(
            HopOnTheDay hop,
            HopUse use,
            Holds holds,
            double kg,
            double weighedKg,
            double gramsPerHl,
            double utilisation,
            double ebu,
            OptionalDouble wasGramsPerHl,
            String remark) {}

    /**
     * Bitterness of the gyle.
     *
     * @param ebu total on collected wort, by the plant's convention
     * @param convention name of that convention
     * @param speaksOf what the convention speaks of
     * @param upperBound whether the figure is only an upper bound
     * @param byHome total of the same gyle by the home plant's convention, where that is another one
     * @param homeConvention name of the home plant's convention, or empty
     */
    public record Bitter(
            double ebu,
            String convention,
            String speaksOf,
            boolean upperBound,
            OptionalDouble byHome,
            String homeConvention) {}

    /**
     * Something else to weigh or measure out.
     *
     * @param name the item
     * @param amount kg, or litres where by volume
     * @param weighedAmount as weighed out
     * @param byVolume whether the amount is litres
     * @param into what it goes into
     * @param allergens declarable allergens it brings
     */
    public record Weight(
            String name,
            double amount,
            double weighedAmount,
            boolean byVolume,
            Optional<Recipe.Into> into,
            List<String> allergens) {}

    /**
     * Colour by a published rule.
     *
     * @param rule name of the rule
     * @param colour the colour
     * @param within whether the rule is inside its published range
     */
    public record RuledColour(String rule, Colour colour, boolean within) {}

    /**
     * What the weighed amounts give, to be held against what was aimed at.
     *
     * @param ogDegrees original gravity, excess degrees
     * @param ebu total bitterness
     * @param ebc colour by the default rule; empty where not computed
     */
    public record Weighed(double ogDegrees, double ebu, OptionalDouble ebc) {}

    /**
     * The brew length.
     *
     * @return cold wort collected
     */
    public Quantity<Volume> brewLength() {
        return Amounts.ofLitres(collectedL);
    }

    /**
     * The gyle with more to say about it.
     *
     * @param more findings to add
     * @return the same gyle
     */
    public Gyle withFindings(List<Finding> more) {
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(more);
        return new Gyle(
                intent,
                plant,
                collectedL,
                og,
                castDegrees,
                copperUpDegrees,
                mashEfficiency,
                extractEfficiency,
                grist,
                hops,
                bitterness,
                yeasts,
                additions,
                liquor,
                colours,
                volume,
                extract,
                beer,
                weighed,
                all);
    }

    /**
     * How the figures came about.
     *
     * @return a tree with the extract ledger, the grist, the bitterness and the liquor
     */
    public Explanation explanation() {
        return GyleExplained.of(this);
    }

    /**
     * Name of the beer.
     *
     * @return the recipe's name
     */
    public String beerName() {
        return intent.recipe().name();
    }

    /**
     * Weight of the mashed goods as computed.
     *
     * @return kg
     */
    public double mashedKg() {
        return grist.stream()
                .filter(line -> line.material().mashed())
                .mapToDouble(Grist::kg)
                .sum();
    }

    /**
     * Weight of the mashed goods as weighed out.
     *
     * @return kg
     */
    public double weighedMashedKg() {
        return grist.stream()
                .filter(line -> line.material().mashed())
                .mapToDouble(Grist::weighedKg)
                .sum();
    }

    /**
     * Whether a finding says that the gyle can't be brewed as it stands.
     *
     * @return true where a limit is met
     */
    public boolean limited() {
        return findings.stream().anyMatch(finding -> finding.weight() == Finding.Weight.LIMIT);
    }
}
