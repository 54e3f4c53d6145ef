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
        String source) {}
