package costrel.scaling;

import costrel.recipe.GristMaterial;
import costrel.scaling.BrewSolver.BrewState;
import costrel.wort.Colour;
import costrel.wort.ColourRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Colour of the collected wort by each published rule. */
final class Colours {

    /** Apart by more than this share of the default, the second rule is shown as well. */
    private static final double SHOWN_APART = 0.25;

    private Colours() {}

    static List<Gyle.RuledColour> of(Intent intent, BrewState state, List<Finding> findings) {
        List<String> silent = materials(intent)
                .filter(material -> material.ebc().isEmpty())
                .map(GristMaterial::name)
                .toList();
        if (!silent.isEmpty()) {
            findings.add(Finding.note(
                    "colour left out: no figure for " + String.join(", ", silent),
                    "supply one, such as 5 EBC, in grist-materials.csv"));
            return List.of();
        }
        double sum = sumKgEbc(intent, state);
        double litres = state.outL() / intent.castShare();
        Colour first = ColourRule.MOREY.of(sum, litres);
        List<Gyle.RuledColour> colours = new ArrayList<>();
        boolean within = ColourRule.MOREY.within(first);
        colours.add(new Gyle.RuledColour(ColourRule.MOREY.name(), first, within));
        if (!within) {
            findings.add(Finding.note(
                    String.format(
                            Locale.ROOT,
                            "colour of %.0f EBC is beyond the range for which the %s rule was published",
                            first.ebc(),
                            ColourRule.MOREY.name()),
                    "have it measured"));
        }
        Colour second = ColourRule.LINEAR.of(sum, litres);
        if (Math.abs(second.ebc() - first.ebc()) > SHOWN_APART * first.ebc()) {
            colours.add(new Gyle.RuledColour(ColourRule.LINEAR.name(), second, ColourRule.LINEAR.within(second)));
            findings.add(Finding.note(
                    "the two published colour rules are far apart, " + ColourRule.MOREY.name() + " "
                            + FixedText.of(first.ebc(), 0) + " EBC and " + ColourRule.LINEAR.name() + " "
                            + FixedText.of(second.ebc(), 0) + " EBC, each ± 25 %",
                    "go by a measured gyle"));
        }
        return colours;
    }

    static double byDefaultRule(Intent intent, BrewState state) {
        return ColourRule.MOREY
                .of(sumKgEbc(intent, state), state.outL() / intent.castShare())
                .ebc();
    }

    private static Stream<GristMaterial> materials(Intent intent) {
        return Stream.concat(
                intent.mashed().stream().map(Intent.Mashed::material),
                intent.sugars().stream().map(Intent.Sugar::material));
    }

    private static double sumKgEbc(Intent intent, BrewState state) {
        double sum = 0;
        for (int i = 0; i < intent.mashed().size(); i++) {
            sum += state.grist().mashedKg()[i]
                    * intent.mashed().get(i).material().ebcOrRefuse();
        }
        for (int i = 0; i < intent.sugars().size(); i++) {
            sum += state.grist().sugarKg()[i]
                    * intent.sugars().get(i).material().ebcOrRefuse();
        }
        return sum;
    }
}
