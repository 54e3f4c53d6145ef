package costrel.wort;

/**
 * Beer that is racked at a gravity into a container it is closed in: what is left to ferment, the condition that brings, and
 * the primings that bring the rest.
 *
 * <p>A degree of the beer's own gravity brings half a volume; see {@link Condition}. Every figure is good to a few per cent and
 * none takes the place of a forcing test and a measured sample.
 *
 * @param fg gravity at which fermentation ends
 * @param presentGravity gravity at racking; under FG counts as fermented out
 * @param heldVolumes volumes of CO2 held at racking, 0 to 10
 * @param wantedVolumes volumes wanted in the container, 0 to 10
 */
public record Racking(Gravity fg, Gravity presentGravity, double heldVolumes, double wantedVolumes) {

    public Racking {
        heldVolumes = Limits.within("condition held", heldVolumes, 0, 10, " volumes");
        wantedVolumes = Limits.within("wanted condition", wantedVolumes, 0, 10, " volumes");
    }

    /**
     * What is left to ferment.
     *
     * @return excess degrees above FG, 0 or more
     */
    public double leftDegrees() {
        return Math.max(0, presentGravity.excessDegrees() - fg.excessDegrees());
    }

    /**
     * Condition from what is left.
     *
     * @return volumes, half of one for each degree
     */
    public double leftVolumes() {
        return Condition.VOLUMES_PER_DEGREE * leftDegrees();
    }

    /**
     * Extract that is left to ferment, by Balling's balance.
     *
     * @return grams of real extract in a litre
     */
    public double leftExtractGramsPerLitre() {
        return Condition.gramsPerLitreFromVolumes(leftVolumes()) / PrimingSugar.BALLING_GRAMS_PER_GRAM;
    }

    /**
     * The condition the beer comes to without primings.
     *
     * @return volumes
     */
    public double unprimedVolumes() {
        return heldVolumes + leftVolumes();
    }

    /**
     * What primings have to bring.
     *
     * @return volumes, 0 where what is left suffices
     */
    public double shortVolumes() {
        return Math.max(0, wantedVolumes - unprimedVolumes());
    }

    /**
     * By how much the beer comes out above the wanted condition without any primings.
     *
     * @return volumes, 0 where it does not
     */
    public double tooManyVolumes() {
        return Math.max(0, unprimedVolumes() - wantedVolumes);
    }

    /**
     * The gravity that brings the wanted condition without primings.
     *
     * @return the gravity, never under FG
     */
    public Gravity rackingGravity() {
        return Condition.racking(fg, wantedVolumes, heldVolumes);
    }

    /**
     * The dose of a sugar that brings the rest.
     *
     * @param sugar the sugar
     * @return grams as weighed for each litre of beer, 0 where none is needed
     * @throws IllegalArgumentException when the sugar does not ferment
     */
    public double primingsGramsPerLitre(PrimingSugar sugar) {
        return sugar.gramsPerLitreFor(shortVolumes());
    }

    /**
     * The most condition that comes of a dose.
     *
     * @param sugar the sugar
     * @param gramsPerLitre grams as weighed for each litre of beer, 0 or more
     * @return volumes
     * @throws IllegalArgumentException when negative
     */
    public double volumesWith(PrimingSugar sugar, double gramsPerLitre) {
        return unprimedVolumes() + sugar.mostVolumes(gramsPerLitre);
    }
}
