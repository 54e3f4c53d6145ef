package costrel.harvest;

import costrel.hops.AlphaMethod;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One gyle of the brewing plan.
 *
 * @param id number of the gyle
 * @param beer the beer
 * @param day the brewing day
 * @param collectedL litres collected, over 0
 * @param method the laboratory method behind the alpha figures that the bitterness was read by
 * @param targetEbu bitterness of all additions, EBU, 0 or more
 * @param toleranceEbu how far the bitterness may stand off on either side, EBU, 0 or more
 * @param leastLeafKg least leaf hops in copper and hopback for a bed that strains, kg, 0 or more
 * @param additions its hop additions
 */
public record PlanGyle(
        String id,
        String beer,
        LocalDate day,
        double collectedL,
        AlphaMethod method,
        double targetEbu,
        double toleranceEbu,
        double leastLeafKg,
        List<PlanAddition> additions) {

    public PlanGyle {
        Figures.named("gyle", id);
        Figures.named("beer of gyle " + id, beer);
        Figures.positive("litres collected of gyle " + id, collectedL, " L");
        targetEbu = Figures.notNegative("bitterness of gyle " + id, targetEbu, " EBU");
        toleranceEbu = Figures.notNegative("tolerance of bitterness of gyle " + id, toleranceEbu, " EBU");
        leastLeafKg = Figures.notNegative("least leaf hops of gyle " + id, leastLeafKg, " kg");
        additions = List.copyOf(additions);
        Set<String> labels = new HashSet<>();
        for (PlanAddition addition : additions) {
            if (!labels.add(addition.label())) {
                throw new IllegalArgumentException(
                        "gyle " + id + ": expected every hop addition once, found '" + addition.label() + "' twice");
            }
        }
    }

    /** The gyle in words: beer, number and day. */
    String words() {
        return beer + ", gyle " + id + " of " + day;
    }
}
