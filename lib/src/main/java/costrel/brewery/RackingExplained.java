package costrel.brewery;

import costrel.explain.Explanation;
import costrel.wort.Condition;
import costrel.wort.Racking;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How a racking sheet came about. */
final class RackingExplained {

    private RackingExplained() {}

    static Explanation of(RackingSheet sheet) {
        List<Explanation> parts = new ArrayList<>();
        parts.add(Explanation.of(
                "FG",
                gravity(sheet.fg().sg()),
                "OG " + gravity(sheet.gyle().og().sg()) + " less the apparent attenuation of the recipe"));
        parts.add(Explanation.of(
                "gravity at racking", gravity(sheet.at().sg()), sheet.fermentedOut() ? "fermented out" : "as given"));
        parts.add(Explanation.of(
                "condition held", volumes(sheet.held().volumes()), sheet.held().how()));
        if (sheet.recipeVolumes() > 0) {
            parts.add(Explanation.of(
                    "primings of the recipe",
                    volumes(sheet.recipeVolumes()),
                    "at most, by the molar mass of the sugar"));
        }
        sheet.lines().forEach(line -> parts.add(line(line)));
        return new Explanation("racking of " + sheet.gyle().beerName(), "", "", parts);
    }

    private static Explanation line(RackingSheet.Line line) {
        Racking racking = line.racking();
        List<Explanation> parts = new ArrayList<>();
        parts.add(Explanation.of(
                "left to ferment",
                String.format(Locale.ROOT, "%.2f °", racking.leftDegrees()),
                "gravity at racking less FG, 0 or more"));
        parts.add(Explanation.of(
                "condition from it",
                volumes(racking.leftVolumes()),
                String.format(
                        Locale.ROOT,
                        "%.2f volumes for each degree, by Balling's balance",
                        Condition.VOLUMES_PER_DEGREE)));
        parts.add(Explanation.of(
                "without primings",
                volumes(racking.unprimedVolumes()),
                "condition held and condition from what is left"));
        if (!line.container().conditioned()) {
            return new Explanation(line.container().name(), "", "the beer gains no condition in it", parts);
        }
        if (line.refused()) {
            return new Explanation(
                    line.container().name(),
                    "refused",
                    volumes(line.comesTo()) + " is more than the glass is good for",
                    parts);
        }
        parts.add(Explanation.of(
                "racking gravity without primings",
                gravity(racking.rackingGravity().sg()),
                "FG and (wanted − held) / " + Condition.VOLUMES_PER_DEGREE + " degrees, never under FG"));
        parts.add(Explanation.of("short", volumes(racking.shortVolumes()), "wanted less what it comes to, 0 or more"));
        for (RackingSheet.Dose dose : line.doses()) {
            parts.add(Explanation.of(
                    "primings of " + dose.sugar().name(),
                    String.format(Locale.ROOT, "%.2f g/L", dose.gramsPerLitre()),
                    String.format(
                            Locale.ROOT,
                            "short × %.4f g/L of gas a volume / %.4f g of gas a gram, at most (%s); × %s L; × %d",
                            Condition.GRAMS_PER_LITRE_PER_VOLUME,
                            dose.sugar().mostGasGramsPerGram(),
                            dose.sugar().how(),
                            line.container().nominalL().toPlainString(),
                            line.count()),
                    Explanation.leaf("each", String.format(Locale.ROOT, "%.2f g", dose.gramsEach())),
                    Explanation.leaf("for the run", String.format(Locale.ROOT, "%.3f kg", dose.kgForRun())),
                    Explanation.of(
                            "condition at least",
                            volumes(dose.leastVolumes()),
                            "where some sugar goes to yeast, Balling")));
        }
        return new Explanation(line.container().name(), volumes(racking.wantedVolumes()), "wanted", parts);
    }

    private static String gravity(double sg) {
        return String.format(Locale.ROOT, "%.4f", sg);
    }

    private static String volumes(double volumes) {
        return String.format(Locale.ROOT, "%.3f volumes", volumes);
    }
}
