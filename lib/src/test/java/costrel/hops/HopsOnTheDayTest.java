package costrel.hops;

import static costrel.hops.HopCases.alpha;
import static costrel.hops.HopCases.alphaAndIndex;
import static costrel.hops.HopCases.index;
import static costrel.hops.HopCases.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.HopLot.Packing;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which route a lot takes to its alpha acid of the day. Lots are invented; shares left after six months are the USDA's. */
class HopsOnTheDayTest {
    private static final double ARITHMETIC = 1e-12;

    private static final OptionalDouble COLD = OptionalDouble.of(2);
    private static final OptionalDouble NOT_STATED = OptionalDouble.empty();

    /** USDA-ARS 19209: 75 % left after six months at room temperature. */
    private static final HopVariety FUGGLE = variety("Fuggle", OptionalDouble.of(0.75));

    @Test
    void baled_leaf_ages_by_the_storage_model() {
        // storage_examples.csv: Fuggle of 5.1 % has 4.49974 % after 180 days at 2 °C.
        HopOnTheDay hops = onTheDay("2027-04-30", leaf(COLD, Packing.AIR, alpha("2026-11-01", 0.051)));
        assertEquals(0.0449974, hops.alpha(), 0.6e-7);
        for (String words :
                List.of("storage model", "certificate of 2026-11-01", "180 days at 2 °C", "75 %", "11.77 %")) {
            assertTrue(hops.route().contains(words), hops.route());
        }
    }

    @Test
    void packing_that_is_not_stated_is_taken_as_a_bale_and_that_is_said() {
        HopOnTheDay stated = onTheDay("2027-04-30", leaf(COLD, Packing.AIR, alpha("2026-11-01", 0.051)));
        HopOnTheDay unstated = onTheDay("2027-04-30", leaf(COLD, Packing.UNSTATED, alpha("2026-11-01", 0.051)));
        assertEquals(stated.alpha(), unstated.alpha());
        assertTrue(unstated.route().contains("taken as baled"), unstated.route());
        assertFalse(stated.route().contains("taken as baled"), stated.route());
    }

    @Test
    void pellets_extract_and_inert_packs_keep_the_certificate() {
        for (HopForm form : new HopForm[] {HopForm.T90, HopForm.T45, HopForm.CO2_EXTRACT}) {
            HopOnTheDay hops = onTheDay("2027-04-30", lot(form, COLD, Packing.AIR, alpha("2026-11-01", 0.051)));
            assertEquals(0.051, hops.alpha());
            assertEquals("certificate of 2026-11-01", hops.route());
        }
        HopOnTheDay inert = onTheDay("2027-04-30", leaf(COLD, Packing.INERT, alpha("2026-11-01", 0.051)));
        assertEquals(0.051, inert.alpha());
        assertTrue(inert.route().contains("inert"), inert.route());
    }

    @Test
    void leaf_with_figures_missing_is_not_aged_and_they_are_named() {
        HopLot noStore = leaf(NOT_STATED, Packing.AIR, alpha("2026-11-01", 0.051));
        HopLot cold = leaf(COLD, Packing.AIR, alpha("2026-11-01", 0.051));
        LocalDate day = LocalDate.parse("2027-04-30");
        HopOnTheDay hops = AlphaAgeing.onTheDay(noStore, Optional.of(FUGGLE), day);
        assertEquals(0.051, hops.alpha());
        assertTrue(hops.route().contains("temperature of the store"), hops.route());
        assertFalse(hops.route().contains("six months"), hops.route());
        HopVariety silent = variety("Fuggle", NOT_STATED);
        assertTrue(
                AlphaAgeing.onTheDay(cold, Optional.of(silent), day).route().contains("Fuggle left after six months"));
        String both = AlphaAgeing.onTheDay(noStore, Optional.empty(), day).route();
        assertTrue(both.contains("temperature of the store and share"), both);
    }

    @Test
    void on_the_day_of_the_certificate_nothing_is_lost() {
        HopOnTheDay hops = onTheDay("2026-11-01", leaf(COLD, Packing.AIR, alpha("2026-11-01", 0.051)));
        assertEquals(0.051, hops.alpha());
        assertEquals("certificate of 2026-11-01", hops.route());
    }

    @Test
    void a_re_analysis_stands_for_itself() {
        HopLot lot = leaf(COLD, Packing.AIR, alpha("2026-11-01", 0.051), alpha("2027-02-01", 0.046));
        HopOnTheDay hops = onTheDay("2027-04-30", lot);
        assertEquals(0.046, hops.alpha());
        assertEquals("re-analysis of 2027-02-01", hops.route());
    }

    @Test
    void what_is_analysed_later_is_not_yet_known() {
        HopLot lot = leaf(COLD, Packing.AIR, alpha("2026-11-01", 0.051), alpha("2027-05-01", 0.040));
        HopOnTheDay hops = onTheDay("2027-04-30", lot);
        assertEquals(0.0449974, hops.alpha(), 0.6e-7);
    }

    @Test
    void a_later_storage_index_steps_down_from_that_of_the_certificate() {
        // storage_index_loss.csv: 5.4140 % lost at 0.280, 22.4532 % at 0.400.
        HopLot lot = leaf(COLD, Packing.AIR, alphaAndIndex("2026-11-01", 0.051, 0.280), index("2027-02-01", 0.400));
        HopOnTheDay hops = onTheDay("2027-04-30", lot);
        assertEquals(0.051 * (1 - 0.224532) / (1 - 0.054140), hops.alpha(), 1e-7);
        for (String words : List.of("0.4 of 2027-02-01", "0.28", "certificate of 2026-11-01", "18.01 %")) {
            assertTrue(hops.route().contains(words), hops.route());
        }
    }

    @Test
    void an_analysis_of_oil_alone_takes_the_place_of_no_storage_index() {
        HopAnalysis oilAlone = new HopAnalysis(
                LocalDate.of(2027, 3, 1),
                NOT_STATED,
                AlphaMethod.HPLC,
                MoistureBasis.AS_IS,
                NOT_STATED,
                OptionalDouble.of(0.6),
                NOT_STATED);
        HopLot lot = leaf(
                COLD, Packing.AIR, alphaAndIndex("2026-11-01", 0.051, 0.280), index("2027-02-01", 0.400), oilAlone);
        HopOnTheDay hops = onTheDay("2027-04-30", lot);
        // storage_index_loss.csv, as for the step without it
        assertEquals(0.051 * (1 - 0.224532) / (1 - 0.054140), hops.alpha(), 1e-7);
        assertEquals(OptionalDouble.of(0.6), hops.oilMlPer100g());
    }

    @Test
    void the_step_starts_from_a_re_analysis_that_has_an_index_and_says_so() {
        HopLot lot = leaf(
                COLD,
                Packing.AIR,
                alphaAndIndex("2026-11-01", 0.051, 0.260),
                alphaAndIndex("2027-02-01", 0.046, 0.310),
                index("2027-04-01", 0.400));
        HopOnTheDay hops = onTheDay("2027-04-30", lot);
        // storage_index_loss.csv: 10.2764 % lost at 0.310, 22.4532 % at 0.400.
        assertEquals(0.046 * (1 - 0.224532) / (1 - 0.102764), hops.alpha(), 1e-7);
        assertTrue(hops.route().contains("re-analysis of 2027-02-01"), hops.route());
    }

    @Test
    void an_index_without_its_fellow_is_of_no_use() {
        HopLot noIndexThen = leaf(COLD, Packing.AIR, alpha("2026-11-01", 0.051), index("2027-02-01", 0.400));
        assertTrue(onTheDay("2027-04-30", noIndexThen).route().startsWith("storage model"));
        HopLot notSince = leaf(COLD, Packing.AIR, alphaAndIndex("2026-11-01", 0.051, 0.280));
        assertTrue(onTheDay("2027-04-30", notSince).route().startsWith("storage model"));
    }

    @Test
    void hops_that_seem_to_have_gained_have_lost_nothing() {
        HopLot lot = leaf(COLD, Packing.AIR, alphaAndIndex("2026-11-01", 0.051, 0.300), index("2027-02-01", 0.280));
        assertEquals(0.051, onTheDay("2027-04-30", lot).alpha());
        HopLot fresh = leaf(COLD, Packing.AIR, alphaAndIndex("2026-11-01", 0.051, 0.220), index("2027-02-01", 0.250));
        assertEquals(0.051, onTheDay("2027-04-30", fresh).alpha());
    }

    @Test
    void alpha_is_turned_from_its_basis_to_as_is() {
        HopLot lot = lot(HopForm.T90, COLD, Packing.INERT, dry("2026-11-01", 0.051, OptionalDouble.of(0.7)));
        assertEquals(0.051 * 0.92, onTheDay("2027-04-30", lot).alpha(), ARITHMETIC);
    }

    @Test
    void oil_is_that_of_the_newest_analysis_that_has_it() {
        HopLot lot = lot(
                HopForm.T90,
                COLD,
                Packing.INERT,
                dry("2026-11-01", 0.051, OptionalDouble.of(0.7)),
                dry("2027-01-01", 0.050, OptionalDouble.of(0.6)),
                alpha("2027-02-01", 0.046),
                dry("2027-06-01", 0.045, OptionalDouble.of(0.3)));
        assertEquals(OptionalDouble.of(0.6), onTheDay("2027-04-30", lot).oilMlPer100g());
        HopLot without = leaf(COLD, Packing.INERT, alpha("2026-11-01", 0.051));
        assertEquals(OptionalDouble.empty(), onTheDay("2027-04-30", without).oilMlPer100g());
    }

    @Test
    void of_two_certificates_of_one_day_the_first_counts() {
        HopAnalysis second = new HopAnalysis(
                LocalDate.parse("2026-11-01"),
                OptionalDouble.of(0.055),
                AlphaMethod.LEAD_CONDUCTANCE,
                MoistureBasis.AS_IS,
                NOT_STATED,
                NOT_STATED,
                NOT_STATED);
        HopOnTheDay hops =
                onTheDay("2027-04-30", lot(HopForm.T90, COLD, Packing.INERT, alpha("2026-11-01", 0.051), second));
        assertEquals(0.051, hops.alpha());
        assertEquals(AlphaMethod.HPLC, hops.method());
        assertEquals("certificate of 2026-11-01", hops.route());
    }

    @Test
    void a_lot_without_alpha_on_the_day_is_refused() {
        refused(
                () -> onTheDay("2026-10-31", leaf(COLD, Packing.AIR, alpha("2026-11-01", 0.051))),
                "lot 26/114",
                "2026-11-01",
                "after the brewing day 2026-10-31");
        refused(
                () -> onTheDay("2027-04-30", leaf(COLD, Packing.AIR, index("2026-11-01", 0.28))),
                "lot 26/114",
                "an analysis with alpha acid");
    }

    private static HopOnTheDay onTheDay(String day, HopLot lot) {
        return AlphaAgeing.onTheDay(lot, Optional.of(FUGGLE), LocalDate.parse(day));
    }

    private static HopLot leaf(OptionalDouble storeCelsius, Packing packing, HopAnalysis... analyses) {
        return lot(HopForm.LEAF, storeCelsius, packing, analyses);
    }

    private static HopLot lot(HopForm form, OptionalDouble storeCelsius, Packing packing, HopAnalysis... analyses) {
        return new HopLot(
                "26/114", "Fuggle", 2026, form, List.of(analyses), OptionalDouble.of(60), storeCelsius, packing);
    }

    private static HopAnalysis dry(String date, double alpha, OptionalDouble oil) {
        return new HopAnalysis(
                LocalDate.parse(date),
                OptionalDouble.of(alpha),
                AlphaMethod.HPLC,
                MoistureBasis.DRY,
                OptionalDouble.of(0.08),
                oil,
                NOT_STATED);
    }

    private static HopVariety variety(String name, OptionalDouble retained) {
        return new HopVariety(
                name,
                "England",
                NOT_STATED,
                NOT_STATED,
                NOT_STATED,
                NOT_STATED,
                NOT_STATED,
                NOT_STATED,
                NOT_STATED,
                retained,
                "USDA-ARS 19209");
    }

    @Test
    void sealed_pellets_lose_what_their_supplier_states() {
        // 3 % a year: 0.97 after a year, the square of it after two (compound, as a yearly loss reads)
        LocalDate packed = LocalDate.of(2025, 11, 1);
        HopAnalysis certificate = new HopAnalysis(
                packed,
                OptionalDouble.of(0.10),
                AlphaMethod.LEAD_CONDUCTANCE,
                MoistureBasis.AS_IS,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        HopLot lot = new HopLot(
                "P",
                "Target",
                2025,
                HopForm.T90,
                List.of(certificate),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                HopLot.Packing.INERT,
                OptionalDouble.of(0.03),
                OptionalDouble.empty());
        assertEquals(0.10, AlphaAgeing.onTheDay(lot, Optional.empty(), packed).alpha(), 1e-15);
        assertEquals(
                0.097,
                AlphaAgeing.onTheDay(lot, Optional.empty(), packed.plusDays(365))
                        .alpha(),
                1e-12);
        assertEquals(
                0.09409,
                AlphaAgeing.onTheDay(lot, Optional.empty(), packed.plusDays(730))
                        .alpha(),
                1e-12);
        assertEquals(
                "certificate of 2025-11-01",
                AlphaAgeing.onTheDay(lot, Optional.empty(), packed).route());
        // 0.97^(1/365) is 0.99991655; 0.97^(146/365) is 0.98789
        assertRoute(lot, packed.plusDays(1), "3 % a year", "certificate of 2025-11-01: 1 day, 0.01 % lost");
        assertRoute(lot, packed.plusDays(146), "3 % a year", "certificate of 2025-11-01: 146 days, 1.21 % lost");
    }

    private static void assertRoute(HopLot lot, LocalDate day, String... words) {
        String route = AlphaAgeing.onTheDay(lot, Optional.empty(), day).route();
        for (String each : words) {
            assertTrue(route.contains(each), route);
        }
    }
}
