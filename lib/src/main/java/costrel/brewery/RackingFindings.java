package costrel.brewery;

import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.scaling.Finding;
import costrel.wort.BottleVerdict;
import costrel.wort.Condition;
import costrel.wort.Gravity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What a person must know before a beer is racked. */
final class RackingFindings {

    /** Figures of condition are good to some hundredths of a volume; nearer than this is the same. */
    private static final double SAME_VOLUMES = 0.05;

    private static final String PRIMING_CARE =
            "let fermentation finish and prove it by a forcing test, weigh primings for the"
                    + " beer that is there and mix them in evenly, try a few bottles warm and behind a guard, protect eyes and hands,"
                    + " and keep within the bottle maker's figure";

    private RackingFindings() {}

    static List<Finding> of(RackingSheet sheet) {
        List<Finding> findings = new ArrayList<>();
        for (RackingSheet.Line line : sheet.lines()) {
            glass(line, line.comesTo(), "it comes to", findings);
            if (sheet.recipeVolumes() > 0) {
                recipePrimings(line, findings);
            }
            strength(sheet, line, findings);
        }
        if (sheet.lines().stream().anyMatch(line -> bottle(line.container()) && ferments(sheet, line))) {
            findings.add(caution("beer goes on fermenting in the bottle, and over-primed bottles burst", PRIMING_CARE));
        }
        if (sheet.lines().stream().anyMatch(line -> !bottle(line.container()) && ferments(sheet, line))) {
            findings.add(caution(
                    "beer goes on fermenting in the closed cask: vent it slowly, away from the face",
                    "its carbon dioxide suffocates: air the cellar, and follow the site's rules"));
        }
        if (sheet.gyle().hops().stream().anyMatch(hop -> hop.use().isDryHop() && hop.kg() > 0)) {
            findings.add(caution(
                    "dry hops can free sugar that the FG does not count, and more condition comes of it",
                    "prove the FG by a forcing test with the dry hops in"));
        }
        if (sheet.at().excessDegrees() < sheet.fg().excessDegrees() - 1e-9) {
            findings.add(new Finding(
                    Finding.Weight.NOTE,
                    "the present gravity is under the FG of the recipe, " + shown(sheet.fg())
                            + ", and counts as fermented out",
                    "prove the FG by a forcing test and state its attenuation"));
        }
        return findings;
    }

    private static boolean bottle(Container container) {
        return container.kind() == ContainerKind.BOTTLE;
    }

    private static boolean ferments(RackingSheet sheet, RackingSheet.Line line) {
        return line.racking().leftDegrees() > 0 || line.racking().shortVolumes() > 0 || sheet.recipeVolumes() > 0;
    }

    private static void glass(RackingSheet.Line line, double volumes, String how, List<Finding> findings) {
        Container container = line.container();
        OptionalDouble rated = container.ratedVolumes();
        BottleVerdict verdict = Condition.bottleVerdict(volumes, rated);
        if (!bottle(container)) {
            if (verdict != BottleVerdict.WITHIN) {
                findings.add(caution(
                        number(
                                "%s: %s %.2f volumes, far more than the trade gives such a container",
                                container, how, volumes),
                        "ask its maker what it bears, or want less"));
            }
            return;
        }
        String glass = rated.isPresent()
                ? String.format(Locale.ROOT, "a bottle rated for %.2f", rated.getAsDouble())
                : "ordinary glass of no stated rating";
        String what = number("%s: %s %.2f volumes in ", container, how, volumes) + glass;
        if (verdict == BottleVerdict.REFUSED) {
            findings.add(new Finding(
                    Finding.Weight.LIMIT,
                    what + ": " + verdict.words(),
                    "do not fill; " + (line.racking().leftDegrees() > 0 ? "let it ferment on, " : "")
                            + "want less, or take bottles that their maker rates for it and state the rating"));
        } else if (verdict == BottleVerdict.CAUTION) {
            findings.add(caution(what, verdict.words()));
        }
    }

    private static void recipePrimings(RackingSheet.Line line, List<Finding> findings) {
        double over = line.withRecipe() - line.racking().wantedVolumes();
        if (!line.container().conditioned()) {
            findings.add(caution(
                    line.container().name() + ": primings of the recipe would ferment in a container that is not there"
                            + " for it (conditioned: no)",
                    "keep primed beer out of it"));
        } else if (!line.refused() && Math.abs(over) > SAME_VOLUMES) {
            String what = number(
                            "%s: primings of the recipe bring it to at most %.2f volumes",
                            line.container(), line.withRecipe())
                    + String.format(Locale.ROOT, ", %.2f wanted", line.racking().wantedVolumes());
            findings.add(
                    over > 0
                            ? caution(what, "take the dose of this sheet instead, and mend the recipe")
                            : new Finding(Finding.Weight.NOTE, what, "take the dose of this sheet instead"));
        }
        if (line.withRecipe() > line.comesTo()) {
            glass(line, line.withRecipe(), "with the primings of the recipe it comes to", findings);
        }
    }

    /** Beer that comes out above what is wanted without any primings. */
    private static void strength(RackingSheet sheet, RackingSheet.Line line, List<Finding> findings) {
        double over = line.racking().tooManyVolumes();
        if (!line.container().conditioned()) {
            if (line.racking().leftDegrees() > 0) {
                findings.add(caution(
                        line.container().name()
                                + ": what is left to ferment would ferment in a container that is not there"
                                + " for it (conditioned: no)",
                        "let it ferment out, and keep yeast out of it"));
            }
        } else if (over > SAME_VOLUMES) {
            String what = number("%s: comes to %.2f volumes", line.container(), line.comesTo())
                    + String.format(
                            Locale.ROOT,
                            " without primings, %.2f wanted",
                            line.racking().wantedVolumes());
            boolean holdsTooMuch = line.racking().heldVolumes() > line.racking().wantedVolumes();
            findings.add(caution(
                    what,
                    sheet.fermentedOut()
                            ? "it holds more than that already: let gas off before it is closed, and measure"
                            : "let it ferment on to " + shown(line.racking().rackingGravity())
                                    + (holdsTooMuch ? " and let gas off" : "")));
        }
    }

    private static String number(String format, Container container, double volumes) {
        return String.format(Locale.ROOT, format, container.name(), volumes);
    }

    private static String number(String format, Container container, String how, double volumes) {
        return String.format(Locale.ROOT, format, container.name(), how, volumes);
    }

    private static String shown(Gravity gravity) {
        return String.format(Locale.ROOT, "%.4f", gravity.sg());
    }

    private static Finding caution(String what, String suggestion) {
        return new Finding(Finding.Weight.CAUTION, what, suggestion);
    }
}
