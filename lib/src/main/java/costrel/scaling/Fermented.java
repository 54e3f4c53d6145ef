package costrel.scaling;

import costrel.hops.HopUse;
import costrel.plant.Plant;
import costrel.recipe.Recipe;
import costrel.wort.Attenuation;
import costrel.wort.BottleVerdict;
import costrel.wort.Condition;
import costrel.wort.Gravity;
import costrel.wort.PrimingSugar;
import costrel.wort.Strength;
import costrel.wort.TrueStrength;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The beer from the FV to the racking back.
 *
 * @param fg final gravity; empty where the recipe states no attenuation
 * @param rackedL beer to be racked, litres
 * @param losses the volume ledger from the FV to racking
 * @param primingDegrees gravity that primings bring, excess degrees
 * @param primingVolumes the most condition that primings bring, volumes
 * @param rackingGravity gravity at racking for the wanted condition; empty where no condition is wanted or it can't be told
 * @param heldVolumes carbon dioxide in the beer before racking, volumes; empty where it can't be told
 * @param ogWithPrimings original gravity with what the primings add, for the true strength
 */
public record Fermented(
        Optional<Gravity> fg,
        double rackedL,
        Ledger losses,
        double primingDegrees,
        double primingVolumes,
        Optional<Gravity> rackingGravity,
        OptionalDouble heldVolumes,
        Gravity ogWithPrimings) {

    /**
     * True strength by Balling, Tabarié and OIML R 22 with the primings fermented; worked out when it is asked for.
     *
     * @return the strength; empty without an FG
     */
    public Optional<Strength> strength() {
        return fg.map(gravity -> TrueStrength.of(ogWithPrimings, gravity).abv());
    }

    static Fermented of(Plant plant, Intent intent, Gravity og, double collectedL, double[] hopKg) {
        double fvL = collectedL * plant.losses().fvShare();
        double tankL = (collectedL - fvL) * plant.losses().tankShare();
        double dryHopL = 0;
        for (int i = 0; i < hopKg.length; i++) {
            Intent.Hop hop = intent.hops().get(i);
            if (hop.use() instanceof HopUse.DryHopTank) {
                dryHopL += HopRules.tankHeld(plant, hop.use(), hop.now().form(), hopKg[i]);
            }
        }
        double rackedL = HopRules.rackedL(plant, collectedL, dryHopL);
        if (!(rackedL > 0)) {
            throw new IllegalArgumentException(
                    intent.recipe().name() + ": expected beer left to rack, found that the losses take all of it");
        }
        Ledger ledger = new Ledger(
                "beer",
                "L",
                List.of(Ledger.Line.of("collected in the FV", collectedL)),
                List.of(
                        Ledger.Line.of("left in the FV with yeast and trub", fvL),
                        Ledger.Line.of("left in the conditioning tank", tankL),
                        Ledger.Line.of("held by dry hops in the tank", dryHopL),
                        Ledger.Line.of("racked", rackedL)));
        Optional<Gravity> fg = intent.recipe().targets().apparentAttenuation().stream()
                .mapToObj(share -> Attenuation.fgFrom(og, share))
                .findFirst();
        double primings = primingDegrees(intent.additions());
        OptionalDouble held = heldVolumes(plant);
        Optional<Gravity> racking = Optional.empty();
        OptionalDouble wanted = intent.recipe().targets().volumesOfCondition();
        if (fg.isPresent() && wanted.isPresent() && held.isPresent()) {
            racking = Optional.of(Condition.racking(
                    fg.get(), wanted.getAsDouble(), held.getAsDouble() + primingVolumes(intent.additions())));
        }
        Gravity withPrimings = Gravity.ofDegrees(og.excessDegrees() + primings);
        fg.ifPresent(gravity -> TrueStrength.requireOriginal(withPrimings));
        return new Fermented(
                fg, rackedL, ledger, primings, primingVolumes(intent.additions()), racking, held, withPrimings);
    }

    /** Degrees that primings add: kilograms for each hectolitre racked, times L°/kg, over 100 L. */
    static double primingDegrees(List<Intent.Addition> additions) {
        double degrees = 0;
        for (Intent.Addition addition : additions) {
            if (addition.into() == Recipe.Into.PRIMINGS) {
                degrees += addition.perHl() * addition.primingHwe() / 100;
            }
        }
        return degrees;
    }

    /** The most condition that primings bring: they ferment out, so by their sugar and not by the degrees they add. */
    private static double primingVolumes(List<Intent.Addition> additions) {
        return additions.stream()
                .filter(addition -> addition.into() == Recipe.Into.PRIMINGS && addition.perHl() > 0)
                .mapToDouble(addition -> PrimingSugar.of(addition.name(), addition.primingHwe())
                        .mostVolumes(addition.perHl() * 1000 / 100))
                .sum();
    }

    private static OptionalDouble heldVolumes(Plant plant) {
        if (plant.heldCarbonDioxide().isPresent()) {
            return plant.heldCarbonDioxide();
        }
        return plant.warmestCelsius().isPresent()
                ? OptionalDouble.of(Condition.volumesFromGramsPerLitre(Condition.equilibriumGramsPerLitre(
                        plant.warmestCelsius().getAsDouble(), 0)))
                : OptionalDouble.empty();
    }

    /** Carbon dioxide in a closed container: what is held, and what ferments from racking gravity and primings. */
    private OptionalDouble closedVolumes() {
        if (fg.isEmpty() || heldVolumes.isEmpty()) {
            return OptionalDouble.empty();
        }
        double left = rackingGravity
                .map(gravity -> gravity.excessDegrees() - fg.get().excessDegrees())
                .orElse(0.0);
        return OptionalDouble.of(heldVolumes.getAsDouble() + Condition.VOLUMES_PER_DEGREE * left + primingVolumes);
    }

    List<Finding> findings(Intent intent) {
        List<Finding> findings = new ArrayList<>();
        if (fg.isEmpty()) {
            findings.add(Finding.note(
                    "no apparent attenuation or FG is stated, so strength, duty and racking gravity are left out",
                    "add it to the recipe, such as 76 %"));
        }
        OptionalDouble wanted = intent.recipe().targets().volumesOfCondition();
        if (wanted.isPresent() && heldVolumes.isEmpty()) {
            findings.add(Finding.note(
                    "racking gravity left out: it is not stated what carbon dioxide the beer holds before racking",
                    "state the plant's held condition or its warmest temperature"));
        }
        closedVolumes().stream()
                .filter(volumes -> Condition.bottleVerdict(volumes, OptionalDouble.empty()) != BottleVerdict.WITHIN)
                .forEach(volumes -> findings.add(new Finding(
                        Condition.bottleVerdict(volumes, OptionalDouble.empty()) == BottleVerdict.REFUSED
                                ? Finding.Weight.LIMIT
                                : Finding.Weight.CAUTION,
                        String.format(Locale.ROOT, "condition comes to %.1f volumes in a closed container", volumes),
                        Condition.bottleVerdict(volumes, OptionalDouble.empty()).words())));
        if (primingDegrees > 0) {
            findings.add(Finding.caution(
                    "primings ferment in the closed container: check the dose and the sugar left at racking before filling",
                    "over-primed bottles burst; keep within the pressure that the bottle maker states"));
        }
        return findings;
    }
}
