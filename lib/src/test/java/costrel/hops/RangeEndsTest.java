package costrel.hops;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The ends of each range belong to it where its description says so, and what lies just outside is refused. */
class RangeEndsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static HopLot lot(int cropYear, OptionalDouble yearlyLoss, OptionalDouble packKg) {
        List<HopAnalysis> analyses = List.of(HopCases.alpha("2026-10-01", 0.05));
        return new HopLot(
                "F26", "Fuggle", cropYear, HopForm.LEAF, analyses, NONE, NONE, HopLot.Packing.AIR, yearlyLoss, packKg);
    }

    private static HopVariety variety(double oilLow, double oilHigh, double cohumuloneLow, double cohumuloneHigh) {
        return new HopVariety(
                "Fuggle",
                "England",
                NONE,
                NONE,
                NONE,
                OptionalDouble.of(oilLow),
                OptionalDouble.of(oilHigh),
                OptionalDouble.of(cohumuloneLow),
                OptionalDouble.of(cohumuloneHigh),
                NONE,
                "invented");
    }

    @Test
    void a_lot_has_a_year_a_loss_and_a_pack_that_can_be() {
        assertEquals(1900, lot(1900, NONE, NONE).cropYear());
        assertEquals(2200, lot(2200, NONE, NONE).cropYear());
        HopCases.refused(() -> lot(1899, NONE, NONE), "expected a crop year", "1899");
        HopCases.refused(() -> lot(2201, NONE, NONE), "expected a crop year", "2201");
        HopCases.refused(() -> lot(2026, OptionalDouble.of(1), NONE), "stated loss of lot F26");
        HopCases.refused(() -> lot(2026, NONE, OptionalDouble.of(0)), "pack of lot F26");
        HopCases.refused(() -> lot(2026, NONE, OptionalDouble.of(1e6)), "pack of lot F26");
        assertEquals(5, lot(2026, NONE, OptionalDouble.of(5)).wholePackKg().getAsDouble());
    }

    @Test
    void the_least_of_a_variety_is_not_above_the_most() {
        assertEquals(0.7, variety(0.7, 1.4, 0.25, 0.3).oilLow().getAsDouble());
        HopCases.refused(() -> variety(1.4, 0.7, 0.25, 0.3), "oil of Fuggle");
        HopCases.refused(() -> variety(0.7, 1.4, 0.3, 0.25), "cohumulone of Fuggle");
    }

    @Test
    void a_blend_that_is_to_have_the_alpha_of_one_lot_is_all_of_that_lot() {
        assertEquals(1, AlphaBalance.shareOfLot(0.06, 0.04, 0.06), 1e-12);
        assertEquals(0, AlphaBalance.shareOfLot(0.06, 0.04, 0.04), 1e-12);
        HopCases.refused(() -> AlphaBalance.shareOfLot(0.06, 0.04, 0.0601), "alpha acid of the blend");
    }

    @Test
    void two_pairs_of_methods_have_a_factor_each() {
        AlphaMethodFactors.Factor one =
                new AlphaMethodFactors.Factor(AlphaMethod.LEAD_CONDUCTANCE, AlphaMethod.HPLC, 0.9, "invented");
        AlphaMethodFactors.Factor other =
                new AlphaMethodFactors.Factor(AlphaMethod.SPECTROPHOTOMETRY, AlphaMethod.HPLC, 0.95, "invented");
        AlphaMethodFactors.Factor again =
                new AlphaMethodFactors.Factor(AlphaMethod.HPLC, AlphaMethod.LEAD_CONDUCTANCE, 1.1, "invented");

        assertEquals(2, new AlphaMethodFactors(List.of(one, other)).factors().size());
        HopCases.refused(() -> new AlphaMethodFactors(List.of(one, other, again)), "expected one for the pair");
    }

    @Test
    void hops_that_meet_the_wort_after_the_mash_and_before_the_fermenting_vessel_hold_some_back() {
        assertTrue(new HopUse.FirstWort().holdsWort());
        assertTrue(new HopUse.Copper(60).holdsWort());
        assertTrue(new HopUse.HotStand(20).holdsWort());
        assertTrue(new HopUse.Hopback().holdsWort());
        assertFalse(new HopUse.Mash().holdsWort());
        assertFalse(new HopUse.DryHopTank().holdsWort());
        assertFalse(new HopUse.DryHopCask().holdsWort());
        assertEquals("dry hop in tank", new HopUse.DryHopTank().label());
    }
}
