package costrel.harvest;

import java.time.LocalDate;

/**
 * A gyle that is to be brewed, by name: what a brewing plan lists.
 *
 * @param id number of the gyle
 * @param beer name of the beer
 * @param plant name of the plant
 * @param day the brewing day
 * @param litres cold wort to collect, over 0
 */
public record PlannedBrew(String id, String beer, String plant, LocalDate day, double litres) {

    public PlannedBrew {
        Figures.named("gyle", id);
        Figures.named("beer of gyle " + id, beer);
        Figures.named("plant of gyle " + id, plant);
        Figures.positive("brew length of gyle " + id, litres, " L");
    }
}
