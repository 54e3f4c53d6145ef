package costrel.hops;

/** A named convention for how much of the alpha acid added reaches the wort as iso-alpha acid. */
public interface Utilisation {

    /**
     * The name by which plants and sheets call the convention.
     *
     * @return "plant", "tinseth" or "kinetic"
     */
    String name();

    /**
     * What the figure speaks of, for the sheet.
     *
     * @return for instance "collected wort" or "finished beer"
     */
    String speaksOf();

    /**
     * The utilisation of an addition, before any correction of the plant.
     *
     * @param use where and when the hops go in
     * @param boil the boil they go into
     * @return the utilisation on what the convention speaks of
     * @throws IllegalArgumentException if the convention has no figure for the use, or the hops would boil longer than the wort
     */
    UtilisationFigure of(HopUse use, BoilContext boil);
}
