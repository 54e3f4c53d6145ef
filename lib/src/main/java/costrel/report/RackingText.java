package costrel.report;

import costrel.brewery.RackingPlan;
import costrel.brewery.RackingSheet;
import costrel.wort.BottleVerdict;
import costrel.wort.Racking;

/** A racking sheet as text: racking gravity, what the beer comes to, primings by kind of sugar, cautions. */
public final class RackingText {

    private static final int WIDTH = 110;

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
        StringBuilder text = new StringBuilder();
        text.append(sheet.gyle().beerName())
                .append(", ")
                .append(Figures.brewLength(sheet.gyle().collectedL()))
                .append(" on ")
                .append(sheet.gyle().plant().name())
                .append(": racking and condition\n");
        text.append(Figures.folded(beer(sheet), 2, WIDTH));
        text.append(containers(sheet));
        text.append(Figures.folded(
                "rack at: the gravity that brings the wanted condition without primings. A handbook has 0.75 to 2 °P of"
                        + " extract left at racking for cask (T. Goldammer, The Brewers' Handbook, citing Hough and others, 1982).",
                2,
                WIDTH));
        if (sheet.lines().stream().anyMatch(line -> !line.doses().isEmpty())) {
            text.append("\nPrimings to weigh, racked at ")
                    .append(Figures.degrees(sheet.at().excessDegrees()))
                    .append("; take one row for a container\n")
                    .append(primings(sheet))
                    .append(Figures.folded(
                            "Weighed by the most gas that the sugar can give; at least is by Balling's balance, where some of"
                                    + " it goes to yeast. Figures are good to a few per cent.",
                            2,
                            WIDTH));
        }
        return text.append('\n').append(GyleText.findings(sheet.findings())).toString();
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

    private static String containers(RackingSheet sheet) {
        TextTable table = TextTable.of(
                "container",
                "#full",
                "#wanted vol",
                "#rack at",
                "#unprimed vol",
                "#short vol",
                "#comes to vol",
                "#bar at 25 °C",
                "glass");
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
        return table.text(2);
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

    private static String primings(RackingSheet sheet) {
        TextTable table = TextTable.of("container", "sugar", "#g/L", "#g each", "#kg for the run", "#at least vol");
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
        return table.text(2);
    }
}
