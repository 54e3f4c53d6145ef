package costrel.report;

import costrel.brewery.Brew;
import costrel.cost.CostSheet;
import costrel.scaling.Gyle;
import costrel.scaling.Intent;
import costrel.scaling.LiquorPlan;
import costrel.wort.WaterDensity;

/** The whole job on one screen: the beer as brewed, moved, with the hops of the day, and what a pint of it costs. */
public final class JobText {

    private static final int WIDTH = 110;

    private JobText() {}

    /**
     * The job as text.
     *
     * @param brew what is to be brewed, with its plant, brew length and day
     * @return lines of text
     * @throws IllegalArgumentException if the brew lacks something it needs
     */
    public static String of(Brew brew) {
        Intent beer = brew.beer();
        Gyle gyle = brew.gyle();
        StringBuilder text = new StringBuilder();
        text.append(brew.brewery().name())
                .append(": ")
                .append(gyle.beerName())
                .append(", ")
                .append(Figures.brewLength(gyle.collectedL()))
                .append(" on ")
                .append(gyle.plant().name());
        brew.day().ifPresent(day -> text.append(", to be brewed on ").append(day));
        text.append("\n\n1  The beer");
        beer.home().ifPresent(home -> {
            text.append(" as brewed on ").append(home.name());
            if (beer.recipe().brewLengthL().isPresent()) {
                text.append(", ")
                        .append(Figures.brewLength(beer.recipe().brewLengthL().getAsDouble()));
            }
            beer.recipe().brewed().ifPresent(day -> text.append(", ").append(day));
        });
        text.append("\n   ").append(BeerText.gravities(beer)).append('\n');
        text.append("\n2  Moved to ")
                .append(gyle.plant().name())
                .append(": mash efficiency ")
                .append(Figures.percent(gyle.mashEfficiency(), 1))
                .append(", extract efficiency to FV ")
                .append(Figures.percent(gyle.extractEfficiency(), 1))
                .append('\n')
                .append(GyleText.grist(gyle))
                .append(Figures.folded(water(gyle), 2, WIDTH));
        text.append("\n3  With the hops in store\n").append(GyleText.hopChange(gyle));
        CostSheet sheet = brew.cost();
        text.append("\n4  What it costs, at the prices of ")
                .append(sheet.batch().costedOn())
                .append('\n')
                .append(CostText.groups(sheet))
                .append(CostText.containers(sheet));
        text.append('\n').append(GyleText.findings(gyle.findings())).append(CostText.notes(sheet));
        return text.toString();
    }

    private static String water(Gyle gyle) {
        StringBuilder line = new StringBuilder();
        if (gyle.liquor().isPresent()) {
            LiquorPlan liquor = gyle.liquor().get();
            line.append("mash liquor ").append(Figures.fixed(liquor.mashL(), 0)).append(" L");
            if (liquor.strikeC().isPresent()) {
                line.append(" at ").append(Figures.fixed(liquor.strikeC(), 1)).append(" °C");
                if (liquor.meteredL().isPresent()) {
                    line.append(" (")
                            .append(Figures.fixed(liquor.meteredL(), 0))
                            .append(" L on the meter)");
                }
            }
            line.append(", sparge ").append(Figures.fixed(liquor.spargeL(), 0)).append(" L, ");
        }
        double up =
                gyle.volume().amount("run-off from the mash") + gyle.volume().amount("copper sugars");
        double boiling = gyle.plant().copper().boilingCelsius();
        return line.append("copper up ")
                .append(Figures.fixed(up, 0))
                .append(" L (")
                .append(Figures.fixed(WaterDensity.volumeAt(up, boiling), 0))
                .append(" L hot) at ")
                .append(Figures.degrees(gyle.copperUpDegrees()))
                .append(", collected ")
                .append(Figures.fixed(gyle.collectedL(), 0))
                .append(" L at ")
                .append(Figures.degrees(gyle.og().excessDegrees()))
                .append(", racked ")
                .append(Figures.fixed(gyle.beer().rackedL(), 0))
                .append(" L")
                .toString();
    }
}
