package costrel.report;

import costrel.brewery.RackingPlan;
import costrel.brewery.RackingSheet;
import costrel.wort.BottleVerdict;
import costrel.wort.Racking;
import java.util.ArrayList;
import java.util.List;

/** A racking sheet as text: racking gravity, what the beer comes to, primings by kind of sugar, cautions. */
public final class RackingText {

    private RackingText() {}

    /**
     * A racking plan as text.
     *
     * @param plan the plan
     * @return lines of text
     * @throws IllegalArgumentException if the plan lacks something it needs
     */
    public static String of(RackingPlan plan) {
        return of(plan.sheet());
    }

    /**
     * A racking sheet as text.
     *
     * @param sheet the sheet
     * @return lines of text
     */
    public static String of(RackingSheet sheet) {
        return TextForm.of(sheet(sheet));
    }

    /**
     * A racking plan set out.
     *
     * @param plan the plan
     * @return a sheet of the kind "racking"
     * @throws IllegalArgumentException if the plan lacks something it needs
     */
    public static Sheet sheet(RackingPlan plan) {
        return sheet(plan.sheet());
    }

    /**
     * A racking sheet set out.
     *
     * @param sheet the racking sheet
     * @return a sheet of the kind "racking"
     */
    public static Sheet sheet(RackingSheet sheet) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.Note.how(beer(sheet)));
        blocks.add(containers(sheet));
        blocks.add(
                Block.Note.how(
                        "rack at: the gravity that brings the wanted condition without primings. A handbook has 0.75 to 2 °P of"
                                + " extract left at racking for cask (T. Goldammer, The Brewers' Handbook, citing Hough and others, 1982)."));
        if (sheet.lines().stream().anyMatch(line -> !line.doses().isEmpty())) {
            blocks.add(new Block.Heading("Primings to weigh, racked at "
                    + Figures.degrees(sheet.at().excessDegrees()) + "; take one row for a container"));
            blocks.add(primings(sheet));
            blocks.add(Block.Note.how(
                    "Weighed by the most gas that the sugar can give; at least is by Balling's balance, where some of"
                            + " it goes to yeast. Figures are good to a few per cent."));
        }
        blocks.add(new Block.Heading(""));
        blocks.addAll(GyleText.findingBlocks(sheet.findings()));
        String title =
                sheet.gyle().beerName() + ", " + Figures.brewLength(sheet.gyle().collectedL()) + " on "
                        + sheet.gyle().plant().name() + ": racking and condition";
        return new Sheet("racking", title, about(sheet), blocks);
    }

    private static List<Fact> about(RackingSheet sheet) {
        List<Fact> about = new ArrayList<>(GyleText.about(sheet.gyle()));
        about.add(Fact.figure("og", "OG", Figures.degrees(sheet.gyle().og().excessDegrees()), ""));
        about.add(Fact.figure("fg", "FG", Figures.degrees(sheet.fg().excessDegrees()), ""));
        about.add(Fact.figure("racked", "racked at", Figures.degrees(sheet.at().excessDegrees()), ""));
        about.add(Fact.figure(
                        "heldCondition",
                        "the beer is taken to hold",
                        Figures.fixed(sheet.held().volumes(), 2),
                        "volumes")
                .remarked(sheet.held().how()));
        return about;
    }

    private static String beer(RackingSheet sheet) {
        double left = sheet.lines().get(0).racking().leftDegrees();
        String at = sheet.fermentedOut()
                ? "racked fermented out at " + Figures.degrees(sheet.at().excessDegrees())
                : "racked at " + Figures.degrees(sheet.at().excessDegrees()) + " with " + Figures.fixed(left, 1)
                        + " degrees ("
                        + Figures.fixed(sheet.lines().get(0).racking().leftExtractGramsPerLitre() / 10, 2)
                        + " g/100 mL of extract) left to ferment, "
                        + Figures.fixed(sheet.lines().get(0).racking().leftVolumes(), 2) + " volumes";
        return "OG " + Figures.degrees(sheet.gyle().og().excessDegrees()) + ", FG "
                + Figures.degrees(sheet.fg().excessDegrees()) + "; " + at + "; the beer is taken to hold "
                + Figures.fixed(sheet.held().volumes(), 2) + " volumes ("
                + sheet.held().how() + ")";
    }

    private static Table containers(RackingSheet sheet) {
        TextTable table = TextTable.keyed(
                "containers",
                "condition in each container",
                Column.words("container", "container"),
                Column.figures("count", "full", ""),
                Column.figures("wanted", "wanted vol", "volumes"),
                Column.figures("rackAt", "rack at", ""),
                Column.figures("unprimed", "unprimed vol", "volumes"),
                Column.figures("short", "short vol", "volumes"),
                Column.figures("comesTo", "comes to vol", "volumes"),
                Column.figures("pressure", "bar at 25 °C", "bar"),
                Column.words("glass", "glass"));
        for (RackingSheet.Line line : sheet.lines()) {
            Racking racking = line.racking();
            boolean told = line.container().conditioned();
            table.row(
                    line.container().name(),
                    String.valueOf(line.count()),
                    told ? Figures.fixed(racking.wantedVolumes(), 2) : "",
                    told && !line.refused()
                            ? Figures.degrees(racking.rackingGravity().excessDegrees())
                            : "",
                    Figures.fixed(racking.unprimedVolumes(), 2),
                    told ? Figures.fixed(racking.shortVolumes(), 2) : "",
                    Figures.fixed(line.comesTo(), 2),
                    Figures.fixed(line.gaugeBarStoredWarm(), 2),
                    glass(line));
        }
        return table.table();
    }

    private static String glass(RackingSheet.Line line) {
        if (!line.container().conditioned()) {
            return line.refused() ? "refused" : "gains no condition in it";
        }
        return line.verdict().map(RackingText::word).orElse("");
    }

    private static String word(BottleVerdict verdict) {
        return switch (verdict) {
            case WITHIN -> "within";
            case CAUTION -> "caution";
            case REFUSED -> "refused";
        };
    }

    private static Table primings(RackingSheet sheet) {
        TextTable table = TextTable.keyed(
                "primings",
                "primings to weigh",
                Column.words("container", "container"),
                Column.words("sugar", "sugar"),
                Column.figures("dose", "g/L", "g/L"),
                Column.figures("each", "g each", "g"),
                Column.figures("run", "kg for the run", "kg"),
                Column.figures("atLeast", "at least vol", "volumes"));
        for (RackingSheet.Line line : sheet.lines()) {
            for (RackingSheet.Dose dose : line.doses()) {
                table.row(
                        line.container().name(),
                        dose.sugar().name(),
                        Figures.fixed(dose.gramsPerLitre(), 2),
                        Figures.fixed(dose.gramsEach(), dose.gramsEach() < 20 ? 2 : 1),
                        Figures.fixed(dose.kgForRun(), 3),
                        Figures.fixed(dose.leastVolumes(), 2));
            }
        }
        return table.table();
    }
}
