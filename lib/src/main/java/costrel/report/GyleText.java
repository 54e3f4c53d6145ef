package costrel.report;

import costrel.hops.HopOnTheDay;
import costrel.plant.Plant;
import costrel.scaling.Fermented;
import costrel.scaling.Finding;
import costrel.scaling.Gyle;
import costrel.scaling.Ledger;
import costrel.scaling.LiquorPlan;
import costrel.wort.WaterDensity;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A gyle as text: what to weigh out, what to draw, what to expect, what to look out for. */
public final class GyleText {

    private static final int WIDTH = 110;

    private GyleText() {}

    /**
     * The whole sheet.
     *
     * @param gyle the gyle
     * @return lines of text
     */
    public static String of(Gyle gyle) {
        return heading(gyle)
                + grist(gyle)
                + hops(gyle)
                + others(gyle)
                + liquor(gyle)
                + volumes(gyle)
                + beer(gyle)
                + findings(gyle.findings());
    }

    static String heading(Gyle gyle) {
        StringBuilder text = new StringBuilder();
        text.append(gyle.beerName())
                .append(", a gyle of ")
                .append(Figures.brewLength(gyle.collectedL()))
                .append(" on ")
                .append(gyle.plant().name())
                .append('\n');
        text.append("  OG ").append(Figures.degrees(gyle.og().excessDegrees()));
        gyle.beer().fg().ifPresent(fg -> text.append("   FG ").append(Figures.degrees(fg.excessDegrees())));
        text.append("   ")
                .append(Figures.fixed(gyle.bitterness().ebu(), 1))
                .append(" EBU (")
                .append(gyle.bitterness().convention())
                .append(" convention, ")
                .append(
                        gyle.bitterness().upperBound()
                                ? "an upper bound"
                                : gyle.bitterness().speaksOf())
                .append(')');
        for (Gyle.RuledColour colour : gyle.colours()) {
            text.append("   ")
                    .append(Figures.fixed(colour.colour().ebc(), 0))
                    .append(" EBC (")
                    .append(Figures.capital(colour.rule()))
                    .append(", ± 25 %)");
        }
        text.append('\n');
        text.append("  mash efficiency ")
                .append(Figures.percent(gyle.mashEfficiency(), 1))
                .append("   extract efficiency to FV ")
                .append(Figures.percent(gyle.extractEfficiency(), 1))
                .append('\n');
        return text.toString();
    }

    /**
     * The grist to weigh out.
     *
     * @param gyle the gyle
     * @return a table
     */
    public static String grist(Gyle gyle) {
        boolean weighed = gyle.weighed().isPresent();
        TextTable table = TextTable.of(
                "grist", "#kg", weighed ? "#weigh out kg" : "#not for weighing", "sacks", "#L°", "#% of extract");
        PaperSum kg = new PaperSum(2);
        PaperSum weighedKg = new PaperSum(2);
        PaperSum litreDegrees = new PaperSum(0);
        PaperSum share = new PaperSum(1);
        for (Gyle.Grist line : gyle.grist()) {
            table.row(
                    line.material().name() + (line.material().mashed() ? "" : sugarTime(line)),
                    kg.add(line.kg()),
                    weighed ? weighedKg.add(line.weighedKg()) : "",
                    weighed && line.material().mashed() ? sacks(line.weighedKg(), gyle.plant()) : "",
                    litreDegrees.add(line.litreDegrees()),
                    share.add(line.share() * 100));
        }
        table.total("", kg.total(), weighed ? weighedKg.total() : "", "", litreDegrees.total(), share.total());
        return table.text(2);
    }

    private static String sugarTime(Gyle.Grist line) {
        return line.minutesBeforeCast().isPresent()
                ? " (copper, " + Figures.fixed(line.minutesBeforeCast(), 0) + " min)"
                : " (copper)";
    }

    static String sacks(double kg, Plant plant) {
        OptionalDouble sack = plant.weighing().sackKg();
        if (sack.isEmpty() || sack.getAsDouble() == 0) {
            return "";
        }
        long full = (long) Math.floor(kg / sack.getAsDouble() + 1e-9);
        double rest = kg - full * sack.getAsDouble();
        return full + " × " + Figures.fixed(sack.getAsDouble(), 0) + " kg"
                + (rest > 1e-6 ? " + " + Figures.fixed(rest, 2) + " kg" : "");
    }

    /**
     * The hop additions to weigh out.
     *
     * @param gyle the gyle
     * @return a table
     */
    public static String hops(Gyle gyle) {
        boolean weighed = gyle.weighed().isPresent();
        TextTable table = TextTable.of(
                "hops",
                "lot",
                "use",
                "holds",
                "#alpha %",
                "#was g/hL",
                "#g/hL",
                "#kg",
                weighed ? "#weigh out kg" : "#not for weighing",
                "#EBU");
        PaperSum kg = new PaperSum(3);
        PaperSum weighedKg = new PaperSum(3);
        PaperSum ebu = new PaperSum(2);
        for (Gyle.Hop hop : gyle.hops()) {
            table.row(
                    hop.hop().variety() + " " + hop.hop().form().label(),
                    hop.hop().lot(),
                    hop.use().text(),
                    hop.holds().label(),
                    Figures.fixed(hop.hop().alpha() * 100, 2),
                    Figures.fixed(hop.wasGramsPerHl(), 1),
                    Figures.fixed(hop.gramsPerHl(), 1),
                    kg.add(hop.kg()),
                    weighed ? weighedKg.add(hop.weighedKg()) : "",
                    ebu.add(hop.ebu()));
        }
        table.total("", "", "", "", "", "", "", kg.total(), weighed ? weighedKg.total() : "", ebu.total());
        return table.text(2) + routes(gyle) + weighed(gyle);
    }

    /**
     * The hop additions as they were and as they are now.
     *
     * @param gyle the gyle
     * @return a table
     */
    public static String hopChange(Gyle gyle) {
        boolean weighed = gyle.weighed().isPresent();
        TextTable table = TextTable.of(
                "hops",
                "use",
                "holds",
                "was lot",
                "#alpha %",
                "#g/hL",
                "now lot",
                "#alpha %",
                "#g/hL",
                weighed ? "#weigh out kg" : "#kg, not for weighing",
                "#EBU");
        PaperSum kg = new PaperSum(3);
        PaperSum ebu = new PaperSum(2);
        for (int i = 0; i < gyle.hops().size(); i++) {
            Gyle.Hop hop = gyle.hops().get(i);
            HopOnTheDay was = gyle.intent().hops().get(i).asRead();
            table.row(
                    hop.hop().variety(),
                    hop.use().text(),
                    hop.holds().label(),
                    was.lot(),
                    Figures.fixed(was.alpha() * 100, 2),
                    Figures.fixed(hop.wasGramsPerHl(), 1),
                    hop.hop().lot(),
                    Figures.fixed(hop.hop().alpha() * 100, 2),
                    Figures.fixed(hop.gramsPerHl(), 1),
                    kg.add(hop.weighedKg()),
                    ebu.add(hop.ebu()));
        }
        table.total("", "", "", "", "", "", "", "", "", kg.total(), ebu.total());
        return table.text(2) + routes(gyle) + weighed(gyle);
    }

    private static String routes(Gyle gyle) {
        List<String> routes = new ArrayList<>();
        for (Gyle.Hop hop : gyle.hops()) {
            String route = hop.hop().lot() + ": " + hop.hop().route();
            if (!routes.contains(route)) {
                routes.add(route);
            }
        }
        return routes.isEmpty() ? "" : Figures.folded("alpha on the day by " + String.join("; ", routes), 2, WIDTH);
    }

    private static String weighed(Gyle gyle) {
        StringBuilder text = new StringBuilder();
        gyle.weighed()
                .ifPresent(drift -> text.append("  as weighed out: OG ")
                        .append(Figures.degrees(drift.ogDegrees()))
                        .append(", ")
                        .append(Figures.fixed(drift.ebu(), 2))
                        .append(" EBU")
                        .append(drift.ebc().isPresent() ? ", " + Figures.fixed(drift.ebc(), 1) + " EBC" : "")
                        .append('\n'));
        return text.toString();
    }

    private static String others(Gyle gyle) {
        if (gyle.yeasts().isEmpty() && gyle.additions().isEmpty()) {
            return "";
        }
        TextTable table = TextTable.of("also", "into", "#weigh out", "unit");
        for (Gyle.Weight yeast : gyle.yeasts()) {
            table.row(yeast.name(), "FV", Figures.fixed(yeast.weighedAmount(), 2), "kg");
        }
        for (Gyle.Weight line : gyle.additions()) {
            boolean small = line.weighedAmount() < 1;
            String unit = line.byVolume() ? (small ? "mL" : "L") : (small ? "g" : "kg");
            table.row(
                    line.name(),
                    line.into().map(into -> into.label()).orElse(""),
                    small ? Figures.fixed(line.weighedAmount() * 1000, 0) : Figures.fixed(line.weighedAmount(), 2),
                    unit);
        }
        return table.text(2);
    }

    private static String liquor(Gyle gyle) {
        if (gyle.liquor().isEmpty()) {
            return "";
        }
        LiquorPlan plan = gyle.liquor().get();
        TextTable table = TextTable.of("liquor", "#L at 20 °C", "#°C", "#L hot");
        PaperSum litres = new PaperSum(1);
        table.row(
                "mash liquor",
                litres.add(plan.mashL()),
                Figures.fixed(plan.strikeC(), 1),
                Figures.fixed(plan.meteredL(), 0));
        table.row("sparge liquor", litres.add(plan.spargeL()));
        if (plan.backL() > 0) {
            table.row("liquoring back", litres.add(plan.backL()));
        }
        table.total("in all", litres.total());
        table.row(
                "the mash, liquor and grist",
                Figures.fixed(plan.mashVolumeL(), 1),
                Figures.fixed(plan.initialC(), 1),
                Figures.fixed(plan.mashHotL(), 0));
        return table.text(2);
    }

    private static String volumes(Gyle gyle) {
        TextTable table = TextTable.of("volume", "#L at 20 °C", "#gravity", "#L hot", "#at °C");
        PaperSum litres = new PaperSum(1);
        double boiling = gyle.plant().copper().boilingCelsius();
        double sugars = gyle.volume().amount("copper sugars");
        double runOff = gyle.volume().amount("run-off from the mash");
        double up = runOff + sugars;
        double cast = up - gyle.volume().amount("boiled off");
        table.row("run-off from the mash", litres.step(runOff));
        if (sugars > 0) {
            table.row("+ copper sugars", litres.step(sugars));
        }
        hot(table, "= copper up", litres, gyle.copperUpDegrees(), up, boiling);
        table.row("- boiled off", less(litres, up - cast));
        hot(table, "= in the copper at cast", litres, gyle.castDegrees(), cast, boiling);
        for (Ledger.Line line : gyle.volume().out()) {
            boolean loss = !line.label().equals("boiled off") && !line.label().equals("collected in the FV");
            if (loss && line.amount() > 0) {
                table.row("- " + line.label(), less(litres, line.amount()));
            }
        }
        double back = gyle.volume().amount("liquoring back");
        if (back > 0) {
            table.row("+ liquoring back", litres.step(back));
        }
        table.row(
                "= collected in the FV",
                litres.total(),
                Figures.degrees(gyle.og().excessDegrees()));
        Fermented beer = gyle.beer();
        for (Ledger.Line line : beer.losses().out()) {
            if (!line.label().equals("racked") && line.amount() > 0) {
                table.row("- " + line.label(), less(litres, line.amount()));
            }
        }
        table.row(
                "= racked",
                litres.total(),
                beer.rackingGravity()
                        .map(gravity -> Figures.degrees(gravity.excessDegrees()))
                        .orElse(""));
        return table.text(2);
    }

    /** A loss, printed without its sign. */
    private static String less(PaperSum litres, double loss) {
        String step = litres.step(-loss);
        return step.startsWith("-") ? step.substring(1) : step;
    }

    private static void hot(
            TextTable table, String label, PaperSum litres, double degrees, double volumeL, double celsius) {
        table.row(
                label,
                litres.total(),
                Figures.degrees(degrees),
                Figures.fixed(WaterDensity.volumeAt(volumeL, celsius), 0),
                Figures.fixed(celsius, 0));
    }

    private static String beer(Gyle gyle) {
        StringBuilder text = new StringBuilder();
        gyle.beer()
                .strength()
                .ifPresent(strength -> text.append("  true strength ")
                        .append(Figures.fixed(strength.percent(), 2))
                        .append(" % vol (Balling, Tabarié, OIML R 22; the strength for duty is another figure)\n"));
        gyle.beer()
                .rackingGravity()
                .ifPresent(gravity -> text.append("  rack at ")
                        .append(Figures.degrees(gravity.excessDegrees()))
                        .append(" for ")
                        .append(Figures.fixed(gyle.intent().recipe().targets().volumesOfCondition(), 2))
                        .append(" volumes of condition; the beer is taken to hold ")
                        .append(Figures.fixed(gyle.beer().heldVolumes(), 2))
                        .append(" volumes, an upper bound (handbook range for cask: 0.75 to 2 °P of extract left)\n"));
        return text.toString();
    }

    /**
     * Findings, the weightiest first.
     *
     * @param findings any findings
     * @return a line or more for each
     */
    public static String findings(List<Finding> findings) {
        StringBuilder text = new StringBuilder();
        for (Finding.Weight weight :
                new Finding.Weight[] {Finding.Weight.LIMIT, Finding.Weight.CAUTION, Finding.Weight.NOTE}) {
            for (Finding finding : findings) {
                if (finding.weight() == weight) {
                    text.append(Figures.folded(finding.text(), 2, WIDTH));
                }
            }
        }
        return text.toString();
    }
}
