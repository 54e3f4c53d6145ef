package costrel.hops;

import java.util.OptionalDouble;

/**
 * A hop variety as published: ranges over years, blank where the source is silent.
 *
 * @param name the variety
 * @param origin where it was bred or is grown
 * @param alphaLow lowest alpha acid, mass fraction as is
 * @param alphaHigh highest alpha acid, mass fraction as is
 * @param alphaMean mean alpha acid, mass fraction as is
 * @param oilLow least total oil, mL per 100 g
 * @param oilHigh most total oil, mL per 100 g
 * @param cohumuloneLow least cohumulone, share of the alpha acids
 * @param cohumuloneHigh most cohumulone, share of the alpha acids
 * @param retainedSixMonths share of the alpha acids left in baled hops after six months at 20 °C
 * @param source the publication
 * @param character flavour group as the brewery states it, such as "earthy"; blank where it states none
 */
public record HopVariety(
        String name,
        String origin,
        OptionalDouble alphaLow,
        OptionalDouble alphaHigh,
        OptionalDouble alphaMean,
        OptionalDouble oilLow,
        OptionalDouble oilHigh,
        OptionalDouble cohumuloneLow,
        OptionalDouble cohumuloneHigh,
        OptionalDouble retainedSixMonths,
        String source,
        String character) {

    /**
     * A variety whose flavour group nobody stated.
     *
     * @param name the variety
     * @param origin where it was bred or is grown
     * @param alphaLow lowest alpha acid, mass fraction as is
     * @param alphaHigh highest alpha acid, mass fraction as is
     * @param alphaMean mean alpha acid, mass fraction as is
     * @param oilLow least total oil, mL per 100 g
     * @param oilHigh most total oil, mL per 100 g
     * @param cohumuloneLow least cohumulone, share of the alpha acids
     * @param cohumuloneHigh most cohumulone, share of the alpha acids
     * @param retainedSixMonths share of the alpha acids left in baled hops after six months at 20 °C
     * @param source the publication
     */
    public HopVariety(
            String name,
            String origin,
            OptionalDouble alphaLow,
            OptionalDouble alphaHigh,
            OptionalDouble alphaMean,
            OptionalDouble oilLow,
            OptionalDouble oilHigh,
            OptionalDouble cohumuloneLow,
            OptionalDouble cohumuloneHigh,
            OptionalDouble retainedSixMonths,
            String source) {
        this(
                name,
                origin,
                alphaLow,
                alphaHigh,
                alphaMean,
                oilLow,
                oilHigh,
                cohumuloneLow,
                cohumuloneHigh,
                retainedSixMonths,
                source,
                "");
    }

    public HopVariety {
        if (name.isBlank()) {
            throw new IllegalArgumentException("hop variety: expected a name, found nothing");
        }
        requireRising("alpha acid of " + name, 100, 100, " %", alphaLow, alphaMean, alphaHigh);
        requireRising("oil of " + name, 1, 20, " mL/100 g", oilLow, oilHigh);
        requireRising("cohumulone of " + name, 100, 100, " %", cohumuloneLow, cohumuloneHigh);
        if (retainedSixMonths.isPresent()) {
            Limits.shareOverZero("alpha acid of " + name + " left after six months", retainedSixMonths.getAsDouble());
        }
    }

    /** Refuses figures, as shown to a reader, that fall from one to the next or leave the range; missing ones are passed over. */
    private static void requireRising(String what, double scale, double most, String unit, OptionalDouble... figures) {
        double least = 0;
        for (OptionalDouble figure : figures) {
            if (figure.isPresent()) {
                least = Limits.within(what, figure.getAsDouble() * scale, least, most, unit);
            }
        }
    }
}
