package costrel.report;

import costrel.brewery.Brew;
import costrel.cost.CostSheet;
import costrel.scaling.Gyle;
import costrel.scaling.Intent;
import costrel.wort.WaterDensity;
import java.util.ArrayList;
import java.util.List;

/** The whole job on one screen: the beer as brewed, moved, with the hops of the day, and what a pint of it costs. */
public final class JobText {

    private JobText() {}

    /**
     * The job as text.
     *
     * @param brew what is to be brewed, with its plant, brew length and day
     * @return lines of text
     * @throws IllegalArgumentException if the brew lacks something it needs
     */
    public static String of(Brew brew) {
        return TextForm.of(sheet(brew));
    }

    /**
     * The job set out.
     *
     * @param brew what is to be brewed, with its plant, brew length and day
     * @return a sheet of the kind "job"
     * @throws IllegalArgumentException if the brew lacks something it needs
     */
    public static Sheet sheet(Brew brew) {
        Intent beer = brew.beer();
        Gyle gyle = brew.gyle();
        CostSheet cost = brew.cost();
        List<Fact> about = new ArrayList<>(GyleText.about(gyle).subList(0, 2));
        brew.day().ifPresent(day -> about.add(Fact.words("brewedOn", "to be brewed on", day.toString())));
        about.add(Fact.words("costedOn", "costed on", cost.batch().costedOn().toString()));
        about.add(Fact.words(
                "currency", "currency", cost.total().getCurrencyUnit().getCode()));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("1  The beer"
                + beer.home()
                        .map(home -> " as brewed on " + home.name() + BeerText.brewing(beer))
                        .orElse("")));
        blocks.add(new Block.Facts(BeerText.gravities(beer)));
        blocks.add(new Block.Heading("2  Moved to " + gyle.plant().name()));
        blocks.add(new Block.Facts(GyleText.efficiencies(gyle)));
        blocks.add(GyleText.gristTable(gyle));
        blocks.addAll(water(gyle));
        blocks.add(new Block.Heading("3  With the hops in store"));
        blocks.addAll(HopTables.changed(gyle));
        blocks.add(new Block.Heading(
                "4  What it costs, at the prices of " + cost.batch().costedOn()));
        blocks.add(CostText.groupsTable(cost));
        blocks.add(CostText.containersTable(cost));
        blocks.add(new Block.Heading(""));
        blocks.addAll(GyleText.findingBlocks(gyle.findings()));
        blocks.addAll(CostText.noteBlocks(cost));
        String title = brew.brewery().name() + ": " + gyle.beerName() + ", "
                + Figures.brewLength(gyle.collectedL()) + " on " + gyle.plant().name()
                + brew.day().map(day -> ", to be brewed on " + day).orElse("");
        return new Sheet("job", title, about, blocks);
    }

    private static List<Block> water(Gyle gyle) {
        List<Block> lines = new ArrayList<>();
        gyle.liquor().ifPresent(liquor -> {
            List<Fact> facts = new ArrayList<>();
            facts.add(Fact.figure("mashLiquor", "mash liquor", Figures.fixed(liquor.mashL(), 0), "L"));
            if (liquor.strikeC().isPresent()) {
                facts.add(Fact.figure("strike", "at", Figures.fixed(liquor.strikeC(), 1), "°C"));
                if (liquor.meteredL().isPresent()) {
                    facts.add(Fact.figure("metered", "on the meter", Figures.fixed(liquor.meteredL(), 0), "L"));
                }
            }
            facts.add(Fact.figure("spargeLiquor", "sparge", Figures.fixed(liquor.spargeL(), 0), "L"));
            lines.add(new Block.Facts(facts));
        });
        double up =
                gyle.volume().amount("run-off from the mash") + gyle.volume().amount("copper sugars");
        double boiling = gyle.plant().copper().boilingCelsius();
        lines.add(new Block.Facts(List.of(
                Fact.figure("copperUp", "copper up", Figures.fixed(up, 0), "L")
                        .remarked(Figures.fixed(WaterDensity.volumeAt(up, boiling), 0) + " L hot"),
                Fact.figure("copperUpGravity", "at", Figures.degrees(gyle.copperUpDegrees()), ""),
                Fact.figure("collected", "collected", Figures.fixed(gyle.collectedL(), 0), "L"),
                Fact.figure("collectedGravity", "at", Figures.degrees(gyle.og().excessDegrees()), ""),
                Fact.figure("racked", "racked", Figures.fixed(gyle.beer().rackedL(), 0), "L"))));
        return lines;
    }
}
