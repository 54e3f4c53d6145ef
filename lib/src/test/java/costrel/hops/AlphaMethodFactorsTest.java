package costrel.hops;

import static costrel.hops.AlphaMethod.HPLC;
import static costrel.hops.AlphaMethod.LEAD_CONDUCTANCE;
import static costrel.hops.AlphaMethod.SPECTROPHOTOMETRY;
import static costrel.hops.AlphaMethod.UNSTATED;
import static costrel.hops.HopCases.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import costrel.hops.AlphaMethodFactors.Factor;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The factor is invented: no ratio of general use is published. */
class AlphaMethodFactorsTest {
    private static final AlphaMethodFactors OURS =
            new AlphaMethodFactors(List.of(new Factor(LEAD_CONDUCTANCE, HPLC, 0.94, "twelve lots analysed both ways")));

    @Test
    void figures_of_one_method_are_left_alone() {
        for (AlphaMethod method : AlphaMethod.values()) {
            assertEquals(0.051, AlphaMethodFactors.NONE.convert(0.051, method, method));
        }
    }

    @Test
    void a_stated_factor_leads_there_and_back() {
        assertEquals(0.047, OURS.convert(0.05, LEAD_CONDUCTANCE, HPLC), 1e-15);
        assertEquals(0.05, OURS.convert(0.047, HPLC, LEAD_CONDUCTANCE), 1e-15);
    }

    @Test
    void two_methods_without_a_factor_never_meet() {
        refused(() -> AlphaMethodFactors.NONE.convert(0.05, LEAD_CONDUCTANCE, HPLC), "EBC 7.4", "EBC 7.7", "factor");
        refused(() -> OURS.convert(0.05, SPECTROPHOTOMETRY, HPLC), "ASBC Hops-6", "EBC 7.7");
        refused(() -> OURS.convert(0.05, UNSTATED, HPLC), "unstated method", "EBC 7.7");
    }

    @Test
    void what_cannot_be_is_refused() {
        refused(() -> new Factor(HPLC, HPLC, 1, "x"), "two methods", "EBC 7.7 twice");
        refused(() -> new Factor(HPLC, UNSTATED, 0, "x"), "factor from EBC 7.7 to unstated");
        refused(() -> new Factor(HPLC, UNSTATED, Double.NaN, "x"), "NaN");
        refused(() -> new Factor(HPLC, UNSTATED, 1, " "), "source");
        refused(
                () -> new AlphaMethodFactors(List.of(
                        new Factor(LEAD_CONDUCTANCE, HPLC, 0.94, "x"), new Factor(HPLC, LEAD_CONDUCTANCE, 1.05, "y"))),
                "one for the pair",
                "two");
        refused(() -> OURS.convert(0.95, HPLC, LEAD_CONDUCTANCE), "under 100 %");
        refused(() -> OURS.convert(Double.NaN, HPLC, HPLC), "alpha acid");
    }
}
