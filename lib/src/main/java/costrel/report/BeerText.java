package costrel.report;

import costrel.recipe.GristMaterial;
import costrel.scaling.Intent;
import costrel.wort.Attenuation;
import costrel.wort.Gravity;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What a beer is, as it was read on its home plant or from its targets. */
public final class BeerText {

    private BeerText() {}

    /**
     * The beer as text.
     *
     * @param intent the beer
     * @return lines of text
     */
    public static String of(Intent intent) {
        return TextForm.of(sheet(intent));
    }

    /**
     * The beer set out.
     *
     * @param intent the beer
     * @return a sheet of the kind "beer"
     */
    public static Sheet sheet(Intent intent) {
        String title = intent.recipe().name()
                + intent.home()
                        .map(home -> ", as brewed on " + home.name() + brewing(intent))
                        .orElse(", as its recipe states it");
        List<Fact> about = new ArrayList<>();
        about.add(Fact.words("beer", "beer", intent.recipe().name()));
        intent.home().ifPresent(home -> about.add(Fact.words("home", "home plant", home.name())));
        return new Sheet(
                "beer", title, about, List.of(new Block.Facts(gravities(intent)), grist(intent), hops(intent)));
    }

    /** The brew length and the day of the brewing that a recipe tells of, each after a comma. */
    static String brewing(Intent intent) {
        OptionalDouble litres = intent.recipe().brewLengthL();
        return (litres.isPresent() ? ", " + Figures.brewLength(litres.getAsDouble()) : "")
                + intent.recipe().brewed().map(day -> ", " + day).orElse("");
    }

    private static Table grist(Intent intent) {
        TextTable grist = TextTable.keyed(
                "grist",
                "grist",
                Column.words("material", "grist"),
                Column.figures("share", "% of weight", "%"),
                Column.figures("extract", "extract L°/kg", "L°/kg"),
                Column.figures("colour", "colour EBC", "EBC"));
        double weight = intent.mashed().stream()
                        .mapToDouble(Intent.Mashed::weight)
                        .sum()
                + intent.sugars().stream().mapToDouble(Intent.Sugar::weight).sum();
        for (Intent.Mashed line : intent.mashed()) {
            material(grist, line.material(), line.weight() / weight);
        }
        for (Intent.Sugar line : intent.sugars()) {
            material(grist, line.material(), line.weight() / weight);
        }
        return grist.table();
    }

    private static void material(TextTable grist, GristMaterial material, double share) {
        grist.row(
                material.name(),
                Figures.fixed(share * 100, 1),
                Figures.fixed(material.hwe(), 1),
                Figures.fixed(material.ebc(), 0));
    }

    private static Table hops(Intent intent) {
        PaperSum ebu = new PaperSum(1);
        TextTable hops = TextTable.keyed(
                "hops",
                "hop additions",
                Column.words("hop", "hops"),
                Column.words("lot", "lot"),
                Column.words("use", "use"),
                Column.words("holds", "holds"),
                Column.figures("alpha", "alpha %", "%"),
                Column.figures("dose", "dose g/hL", "g/hL"),
                Column.figures("ebu", "EBU", "EBU"));
        for (Intent.Hop hop : intent.hops()) {
            hops.row(
                    hop.asRead().variety(),
                    hop.asRead().lot(),
                    hop.use().text(),
                    hop.holds().label(),
                    Figures.fixed(hop.asRead().alpha() * 100, 2),
                    Figures.fixed(hop.gramsPerHl(), 1),
                    hop.ebu().isPresent() ? ebu.add(hop.ebu().getAsDouble()) : "");
        }
        return hops.total("", "", "", "", "", "", ebu.total()).table();
    }

    static List<Fact> gravities(Intent intent) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.figure("og", "OG", Figures.degrees(intent.og().excessDegrees()), ""));
        intent.recipe().targets().apparentAttenuation().ifPresent(share -> {
            Gravity fg = Attenuation.fgFrom(intent.og(), share);
            facts.add(Fact.figure("fg", "FG", Figures.degrees(fg.excessDegrees()), ""));
        });
        facts.add(Fact.figure("ebu", "", Figures.fixed(intent.ebu(), 1), "EBU")
                .remarked(intent.convention()
                        .map(convention -> convention.name() + " convention, " + convention.speaksOf())
                        .orElse("")));
        OptionalDouble declared = intent.recipe().targets().declaredStrength();
        if (declared.isPresent()) {
            facts.add(Fact.figure("label", "label", Figures.fixed(declared, 1), "% vol"));
        }
        return facts;
    }
}
