package costrel.pricing;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a pint may come to cost. Drawn by chance: the figures hold for the distributions and correlations of the plan and are
 * no better than those. An aid to pricing, not a forecast.
 *
 * @param plan what was drawn
 * @param sheetPerPint what a pint costs on the sheet, money per saleable pint
 * @param meanPerPint the mean of the draws
 * @param deviationPerPint their standard deviation
 * @param p10PerPint a tenth of the draws cost no more than this
 * @param p50PerPint half of them
 * @param p90PerPint nine tenths of them
 * @param influences what drives the cost, the strongest first
 * @param chanceUnderTarget the share of the draws that leave less than the target margin at the target price; empty where
 *     no target was given
 */
public record RiskResult(
        RiskPlan plan,
        double sheetPerPint,
        double meanPerPint,
        double deviationPerPint,
        double p10PerPint,
        double p50PerPint,
        double p90PerPint,
        List<Influence> influences,
        OptionalDouble chanceUnderTarget) {

    /**
     * How much a driver drives the cost.
     *
     * @param driver the driver's name
     * @param rankCorrelation Spearman's rank correlation of its value and the cost, −1 to 1; 0 where one of the two is
     *     always the same
     */
    public record Influence(String driver, double rankCorrelation) {}

    public RiskResult {
        influences = List.copyOf(influences);
    }
}
