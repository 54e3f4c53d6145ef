package costrel.harvest;

import java.util.Map;
import java.util.Set;

/**
 * What a brewery lays down for its hops, beside the figures of its recipes.
 *
 * @param toleranceEbu how far a gyle's bitterness may stand off, EBU, 0 or more
 * @param mostShare the most of an addition that one lot may carry, over 0 to 1
 * @param mostChange the most that a lot's share of an addition may change from a gyle to the next of the same beer, 0 to 1
 * @param substitutes by variety, the varieties that may stand in for it
 */
public record HouseRules(
        double toleranceEbu, double mostShare, double mostChange, Map<String, Set<String>> substitutes) {

    /** Bitterness within 1 EBU, a lot may carry an addition alone, nothing stands in for anything: judgement, no source. */
    public static final HouseRules USUAL = new HouseRules(1, 1, 1, Map.of());

    public HouseRules {
        toleranceEbu = Figures.notNegative("tolerance of bitterness", toleranceEbu, " EBU");
        Figures.shareOverZero("most of an addition from one lot", mostShare);
        substitutes = Map.copyOf(substitutes);
    }
}
