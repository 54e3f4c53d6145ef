package costrel.hops;

import static costrel.hops.HopCases.alpha;
import static costrel.hops.HopCases.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.HopLot.Packing;
import costrel.wort.TemperatureCourse;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class HopRecordsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    @Test
    void labels_read_back_without_regard_to_case_and_blanks() {
        for (HopForm form : HopForm.values()) {
            assertEquals(form, HopForm.parse(form.label()));
        }
        for (AlphaMethod method : AlphaMethod.values()) {
            assertEquals(method, AlphaMethod.parse(" " + method.label() + " "));
        }
        for (MoistureBasis basis : MoistureBasis.values()) {
            assertEquals(basis, MoistureBasis.parse(basis.label()));
        }
        for (Packing packing : Packing.values()) {
            assertEquals(packing, Packing.parse(packing.label()));
        }
        assertEquals(HopForm.CO2_EXTRACT, HopForm.parse("co2  Extract"));
        assertEquals(AlphaMethod.HPLC, AlphaMethod.parse("ebc7.7"));
        assertEquals(MoistureBasis.TEN_PERCENT, MoistureBasis.parse("at 10\u00a0%"));
    }

    @Test
    void a_wrong_label_is_answered_with_all_that_are_right() {
        refused(() -> HopForm.parse("cones"), "leaf, T90, T45, CO2 extract, isomerised extract", "'cones'");
        refused(() -> AlphaMethod.parse("EBC 7.5"), "EBC 7.4, EBC 7.7, ASBC Hops-6, unstated", "'EBC 7.5'");
        refused(() -> MoistureBasis.parse(""), "as is, dry, at 10 %", "found nothing");
        refused(() -> Packing.parse("x".repeat(1000)), "air, inert, unstated", "x...'");
    }

    @Test
    void a_use_is_read_from_its_label_and_minutes() {
        assertEquals(new HopUse.Copper(90), HopUse.of("Copper", OptionalDouble.of(90)));
        assertEquals(new HopUse.HotStand(20), HopUse.of("hot stand", OptionalDouble.of(20)));
        assertEquals(new HopUse.HotStand(Double.POSITIVE_INFINITY), HopUse.of("hot stand", NONE));
        for (HopUse use : List.of(
                new HopUse.Mash(),
                new HopUse.FirstWort(),
                new HopUse.Hopback(),
                new HopUse.DryHopTank(),
                new HopUse.DryHopCask())) {
            assertEquals(use, HopUse.of(use.label(), NONE));
            refused(() -> HopUse.of(use.label(), OptionalDouble.of(5)), use.label(), "no minutes", "5 min");
        }
        refused(() -> HopUse.of("copper", NONE), "copper", "minutes before cast");
        refused(() -> HopUse.of("whirl", NONE), "hot stand", "'whirl'");
    }

    @Test
    void a_use_says_where_it_goes_and_for_how_long() {
        assertEquals("copper 90 min", new HopUse.Copper(90).text());
        assertEquals("copper 7.5 min", new HopUse.Copper(7.5).text());
        assertEquals("hot stand 20 min", new HopUse.HotStand(20).text());
        assertEquals("hot stand", new HopUse.HotStand(Double.POSITIVE_INFINITY).text());
        assertEquals("dry hop in cask", new HopUse.DryHopCask().text());
        assertTrue(new HopUse.DryHopCask().isDryHop() && new HopUse.DryHopTank().isDryHop());
        assertFalse(new HopUse.Hopback().isDryHop() || new HopUse.Mash().isDryHop());
    }

    @Test
    void minutes_beyond_sense_are_refused() {
        refused(() -> new HopUse.Copper(Double.NaN), "copper addition", "0 to 600 min");
        refused(() -> new HopUse.Copper(-1), "-1 min");
        refused(() -> new HopUse.HotStand(Double.NaN), "hot stand");
        refused(() -> new HopUse.HotStand(-5), "-5 min");
    }

    @Test
    void alpha_at_ten_per_cent_of_moisture_is_turned_to_as_is() {
        // 5.0 % as is at 10 % of moisture is 5.5556 % dry (alpha_arithmetic.csv), so 5.0 % at 10 % is 5.5556 % · (1 −
        // moisture).
        assertEquals(
                0.05,
                analysis(0.05, MoistureBasis.TEN_PERCENT, 0.10).alphaAsIs().orElseThrow(),
                1e-15);
        assertEquals(
                0.05555556 * 0.92,
                analysis(0.05, MoistureBasis.TEN_PERCENT, 0.08).alphaAsIs().orElseThrow(),
                1e-8);
        assertEquals(
                0.05,
                analysis(0.0555555556, MoistureBasis.DRY, 0.10).alphaAsIs().orElseThrow(),
                1e-10);
        assertEquals(0.05, analysis(0.05, MoistureBasis.AS_IS, 0.10).alphaAsIs().orElseThrow());
    }

    @Test
    void an_analysis_refuses_what_no_laboratory_finds() {
        refused(() -> analysis(1.0, MoistureBasis.AS_IS, 0.1), "alpha acid", "100 %");
        refused(() -> analysis(0.05, MoistureBasis.DRY, Double.NaN), "moisture");
        LocalDate date = LocalDate.of(2026, 11, 1);
        OptionalDouble alpha = OptionalDouble.of(0.05);
        refused(
                () -> new HopAnalysis(date, alpha, AlphaMethod.HPLC, MoistureBasis.DRY, NONE, NONE, NONE),
                "moisture",
                "stated dry");
        refused(
                () -> new HopAnalysis(
                        date, alpha, AlphaMethod.HPLC, MoistureBasis.AS_IS, NONE, OptionalDouble.of(25), NONE),
                "oil",
                "25 mL/100 g");
        refused(
                () -> new HopAnalysis(
                        date, alpha, AlphaMethod.HPLC, MoistureBasis.AS_IS, NONE, NONE, OptionalDouble.of(0)),
                "storage index");
    }

    @Test
    void a_lot_keeps_its_analyses_by_date() {
        HopLot lot = lot("26/1", "Fuggle", 2026, alpha("2027-02-01", 0.046), alpha("2026-11-01", 0.051));
        assertEquals(LocalDate.of(2026, 11, 1), lot.analyses().get(0).date());
    }

    @Test
    void a_lot_refuses_what_it_cannot_be() {
        refused(() -> lot(" ", "Fuggle", 2026, alpha("2026-11-01", 0.05)), "lot number");
        refused(() -> lot("26/1", "", 2026, alpha("2026-11-01", 0.05)), "26/1", "variety");
        refused(() -> lot("26/1", "Fuggle", 26, alpha("2026-11-01", 0.05)), "crop year", "26");
        refused(() -> lot("26/1", "Fuggle", 2026), "26/1", "at least one analysis");
    }

    @Test
    void a_variety_refuses_ranges_that_fall() {
        refused(() -> variety(0.061, 0.024, 0.051, 0.75), "alpha acid of Fuggle", "5.1 %");
        refused(() -> variety(0.024, 1.2, 0.051, 0.75), "alpha acid of Fuggle", "120 %");
        refused(() -> variety(0.024, 0.061, 0.051, 0), "six months");
        // USDA-ARS 19209
        assertEquals(0.051, variety(0.024, 0.061, 0.051, 0.75).alphaMean().orElseThrow());
    }

    @Test
    void a_boil_refuses_what_no_copper_does() {
        TemperatureCourse none = TemperatureCourse.of();
        refused(() -> new BoilContext(-1, 100, 40, 44, none, 0, 95, 1), "boil");
        refused(() -> new BoilContext(60, 60, 40, 44, none, 0, 95, 1), "boiling temperature", "60 °C");
        refused(() -> new BoilContext(60, 100, 1040, 44, none, 0, 95, 1), "copper-up gravity", "1040 °");
        refused(() -> new BoilContext(60, 100, 40, Double.NaN, none, 0, 95, 1), "gravity at cast");
        refused(() -> new BoilContext(60, 100, 40, 44, none, -1, 95, 1), "hopback contact");
        refused(() -> new BoilContext(60, 100, 40, 44, none, 0, Double.NaN, 1), "hopback temperature");
        refused(() -> new BoilContext(60, 100, 40, 44, none, 0, 95, 1.01), "collected share", "101 %");
        refused(() -> new UtilisationFigure(1.01, false, ""), "utilisation", "101 %");
    }

    private static HopAnalysis analysis(double alpha, MoistureBasis basis, double moisture) {
        return new HopAnalysis(
                LocalDate.of(2026, 11, 1),
                OptionalDouble.of(alpha),
                AlphaMethod.HPLC,
                basis,
                OptionalDouble.of(moisture),
                NONE,
                NONE);
    }

    private static HopLot lot(String id, String variety, int cropYear, HopAnalysis... analyses) {
        return new HopLot(id, variety, cropYear, HopForm.LEAF, List.of(analyses), NONE, NONE, Packing.AIR);
    }

    private static HopVariety variety(double low, double high, double mean, double retained) {
        return new HopVariety(
                "Fuggle",
                "England",
                OptionalDouble.of(low),
                OptionalDouble.of(high),
                OptionalDouble.of(mean),
                NONE,
                NONE,
                NONE,
                NONE,
                OptionalDouble.of(retained),
                "USDA-ARS 19209");
    }
}
