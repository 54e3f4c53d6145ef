package costrel.report;

import costrel.plant.Plant;
import costrel.scaling.Fermented;
import costrel.scaling.Finding;
import costrel.scaling.Gyle;
import costrel.scaling.Ledger;
import costrel.scaling.LiquorPlan;
import costrel.wort.WaterDensity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A gyle set out: what to weigh out, what to draw, what to expect, what to look out for. */
public final class GyleText {

    private GyleText() {}

    /**
     * The whole sheet as text.
     *
     * @param gyle the gyle
     * @return lines of text
     */
    public static String of(Gyle gyle) {
        return TextForm.of(sheet(gyle));
    }

    /**
     * The whole sheet.
     *
     * @param gyle the gyle
     * @return a sheet of the kind "gyle"
     */
    public static Sheet sheet(Gyle gyle) {
        List<Block> blocks = new ArrayList<>(heading(gyle));
        blocks.add(gristTable(gyle));
        blocks.addAll(HopTables.additions(gyle));
        others(gyle).ifPresent(blocks::add);
        gyle.liquor().ifPresent(plan -> blocks.add(liquor(plan)));
        blocks.add(volumes(gyle));
        blocks.addAll(beer(gyle));
        blocks.addAll(findingBlocks(gyle.findings()));
        return new Sheet("gyle", title(gyle), about(gyle), blocks);
    }

    private static String title(Gyle gyle) {
        return gyle.beerName() + ", a gyle of " + Figures.brewLength(gyle.collectedL()) + " on "
                + gyle.plant().name();
    }

    /** What the titles of all sheets say that are made of a gyle. */
    static List<Fact> about(Gyle gyle) {
        return List.of(
                Fact.words("beer", "beer", gyle.beerName()),
                Fact.words("plant", "plant", gyle.plant().name()),
                Fact.figure("collected", "collected", Figures.fixed(gyle.collectedL(), 0), "L"));
    }

    private static List<Block> heading(Gyle gyle) {
        List<Fact> beer = new ArrayList<>();
        beer.add(Fact.figure("og", "OG", Figures.degrees(gyle.og().excessDegrees()), ""));
        gyle.beer().fg().ifPresent(fg -> beer.add(Fact.figure("fg", "FG", Figures.degrees(fg.excessDegrees()), "")));
        beer.add(Fact.figure("ebu", "", Figures.fixed(gyle.bitterness().ebu(), 1), "EBU")
                .remarked(gyle.bitterness().convention() + " convention, "
                        + (gyle.bitterness().upperBound()
                                ? "an upper bound"
                                : gyle.bitterness().speaksOf())));
        for (Gyle.RuledColour colour : gyle.colours()) {
            beer.add(Fact.figure(
                            Column.keyOf("ebc " + colour.rule()),
                            "",
                            Figures.fixed(colour.colour().ebc(), 0),
                            "EBC")
                    .remarked(Figures.capital(colour.rule()) + ", ± 25 %"));
        }
        return List.of(new Block.Facts(beer), new Block.Facts(efficiencies(gyle)));
    }

    static List<Fact> efficiencies(Gyle gyle) {
        return List.of(
                Fact.figure("mashEfficiency", "mash efficiency", Figures.fixed(gyle.mashEfficiency() * 100, 1), "%"),
                Fact.figure(
                        "extractEfficiency",
                        "extract efficiency to FV",
                        Figures.fixed(gyle.extractEfficiency() * 100, 1),
                        "%"));
    }

    /**
     * The grist to weigh out, as text.
     *
     * @param gyle the gyle
     * @return a table
     */
    public static String grist(Gyle gyle) {
        return TextForm.of(List.of(gristTable(gyle)));
    }

    static Table gristTable(Gyle gyle) {
        boolean weighed = gyle.weighed().isPresent();
        TextTable table = TextTable.keyed(
                "grist",
                "grist",
                Column.words("material", "grist"),
                Column.figures("weight", "kg", "kg"),
                Column.figures("weighOut", weighed ? "weigh out kg" : "not for weighing", "kg"),
                Column.words("sacks", "sacks"),
                Column.figures("extract", "L°", "L°"),
                Column.figures("share", "% of extract", "%"));
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
        return table.table();
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
        if (full == 0) {
            return Figures.fixed(rest, 2) + " kg";
        }
        return full + " × " + Figures.fixed(sack.getAsDouble(), 0) + " kg"
                + (rest > 1e-6 ? " + " + Figures.fixed(rest, 2) + " kg" : "");
    }

    /**
     * The hop additions to weigh out, as text.
     *
     * @param gyle the gyle
     * @return a table
     */
    public static String hops(Gyle gyle) {
        return TextForm.of(HopTables.additions(gyle));
    }

    /**
     * The hop additions as they were and as they are now, as text.
     *
     * @param gyle the gyle
     * @return a table
     */
    public static String hopChange(Gyle gyle) {
        return TextForm.of(HopTables.changed(gyle));
    }

    private static Optional<Table> others(Gyle gyle) {
        if (gyle.yeasts().isEmpty() && gyle.additions().isEmpty()) {
            return Optional.empty();
        }
        TextTable table = TextTable.keyed(
                "also",
                "yeast, liquor treatment, finings and the like",
                Column.words("item", "also"),
                Column.words("into", "into"),
                Column.figures("weighOut", "weigh out", ""),
                Column.words("unit", "unit"));
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
        return Optional.of(table.table());
    }

    private static Table liquor(LiquorPlan plan) {
        TextTable table = TextTable.keyed(
                "liquor",
                "liquor plan",
                Column.words("liquor", "liquor"),
                Column.figures("volume", "L at 20 °C", "L"),
                Column.figures("temperature", "°C", "°C"),
                Column.figures("hotVolume", "L hot", "L"));
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
        return table.table();
    }

    private static Table volumes(Gyle gyle) {
        TextTable table = TextTable.keyed(
                "volumes",
                "volumes from the mash to the racking",
                Column.words("step", "volume"),
                Column.figures("volume", "L at 20 °C", "L"),
                Column.figures("gravity", "gravity", ""),
                Column.figures("hotVolume", "L hot", "L"),
                Column.figures("temperature", "at °C", "°C"));
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
        return table.table();
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

    private static List<Block> beer(Gyle gyle) {
        List<Block> blocks = new ArrayList<>();
        gyle.beer()
                .strength()
                .ifPresent(strength -> blocks.add(new Block.Facts(List.of(
                        Fact.figure("trueStrength", "true strength", Figures.fixed(strength.percent(), 2), "% vol")
                                .remarked("Balling, Tabarié, OIML R 22; the strength for duty is another figure")))));
        gyle.beer()
                .rackingGravity()
                .ifPresent(gravity -> blocks.add(new Block.Facts(List.of(
                        Fact.figure("rackAt", "rack at", Figures.degrees(gravity.excessDegrees()), ""),
                        Fact.figure(
                                "condition",
                                "for",
                                Figures.fixed(gyle.intent().recipe().targets().volumesOfCondition(), 2),
                                "volumes of condition"),
                        Fact.figure(
                                        "heldCondition",
                                        "the beer is taken to hold",
                                        Figures.fixed(gyle.beer().heldVolumes(), 2),
                                        "volumes")
                                .remarked("an upper bound; handbook range for cask: 0.75 to 2 °P of extract left")))));
        return blocks;
    }

    /**
     * Findings, the weightiest first, as text.
     *
     * @param findings any findings
     * @return a line or more for each
     */
    public static String findings(List<Finding> findings) {
        return TextForm.of(findingBlocks(findings));
    }

    static List<Block> findingBlocks(List<Finding> findings) {
        List<Block> blocks = new ArrayList<>();
        for (Finding.Weight weight :
                new Finding.Weight[] {Finding.Weight.LIMIT, Finding.Weight.CAUTION, Finding.Weight.NOTE}) {
            for (Finding finding : findings) {
                if (finding.weight() == weight) {
                    blocks.add(new Block.Note(kind(weight), "", finding.text()));
                }
            }
        }
        return blocks;
    }

    private static Block.Note.Kind kind(Finding.Weight weight) {
        return switch (weight) {
            case LIMIT -> Block.Note.Kind.FINDING;
            case CAUTION -> Block.Note.Kind.CAUTION;
            case NOTE -> Block.Note.Kind.HOW;
        };
    }
}
