package costrel.harvest;

import costrel.hops.AlphaMethodFactors;

/**
 * Rules of the house for a plan.
 *
 * @param mostShare the most that one lot may bring of what an addition holds (its EBU, its weight or its oil), over 0 to 1; 1
 *     lets one lot carry an addition
 * @param alphaSolubleMgPerL the most alpha acid of one copper addition, mg for each litre collected, over 0; infinite for none.
 *     About 250 dissolves: {@link costrel.hops.AlphaBalance#DISSOLVES_MG_PER_L}
 * @param mostChange the most that a lot's share of an addition may change from a gyle to the next of the same beer, 0 to 1; 1
 *     for none
 * @param weighedToKg step that hops are weighed out to, kg, 0 or more; 0 for none
 * @param factors stated factors between laboratory methods
 */
public record PlanRules(
        double mostShare,
        double alphaSolubleMgPerL,
        double mostChange,
        double weighedToKg,
        AlphaMethodFactors factors) {

    /** No rule at all: amounts as computed, laboratory methods kept apart. */
    public static final PlanRules NONE = new PlanRules(1, Double.POSITIVE_INFINITY, 1, 0, AlphaMethodFactors.NONE);

    public PlanRules {
        Figures.shareOverZero("most of an addition from one lot", mostShare);
        if (!(alphaSolubleMgPerL > 0)) {
            throw new IllegalArgumentException("alpha acid that dissolves: expected more than 0 mg/L, found "
                    + Figures.plain(alphaSolubleMgPerL) + " mg/L");
        }
        if (!(mostChange >= 0 && mostChange <= 1)) {
            throw new IllegalArgumentException(
                    "most change of a lot's share: expected 0 % to 100 %, found " + Figures.asFound(mostChange));
        }
        weighedToKg = Figures.notNegative("step that hops are weighed to", weighedToKg, " kg");
    }
}
