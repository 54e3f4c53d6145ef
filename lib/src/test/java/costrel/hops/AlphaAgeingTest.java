package costrel.hops;

import static costrel.ReferenceTable.number;
import static costrel.hops.HopCases.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The rules of ageing against published figures. */
class AlphaAgeingTest {
    /** Half a unit in the fourth decimal of a percentage. */
    private static final double PERCENT_PRINTED = 0.5e-6 + 1e-12;

    private static final double SIX_PLACES = 0.5e-6 + 1e-12;

    @Test
    void the_storage_index_tells_the_published_loss() {
        for (Map<String, String> row : ReferenceTable.read("hops/storage_index_loss.csv")) {
            double loss = AlphaAgeing.lossFromStorageIndex(number(row, "index"));
            assertEquals(number(row, "loss") / 100, loss, PERCENT_PRINTED, row.toString());
            assertTrue(loss >= number(row, "loss by slope 101.8") / 100, row.toString());
            assertTrue(loss <= number(row, "loss by slope 114.6") / 100, row.toString());
            if (!row.getOrDefault("printed", "").isEmpty()) {
                assertEquals(number(row, "printed") / 100, loss, 0.005, row.toString());
            }
        }
    }

    @Test
    void the_index_of_a_loss_leads_back() {
        for (Map<String, String> row : ReferenceTable.read("hops/storage_index_inverse.csv")) {
            double index = AlphaAgeing.storageIndexFor(number(row, "loss") / 100);
            assertEquals(number(row, "index"), index, SIX_PLACES, row.toString());
            assertEquals(number(row, "loss") / 100, AlphaAgeing.lossFromStorageIndex(index), 1e-12);
        }
    }

    @Test
    void hops_fresher_than_fresh_have_lost_nothing() {
        assertEquals(0, AlphaAgeing.lossFromStorageIndex(0.22));
    }

    @Test
    void an_index_that_would_leave_nothing_is_refused() {
        // 110 log10(index/0.25) reaches 100 at 0.25 · 10^(100/110) = 2.028.
        assertTrue(AlphaAgeing.lossFromStorageIndex(2.02) < 1);
        refused(() -> AlphaAgeing.lossFromStorageIndex(2.03), "storage index", "2.03");
        refused(() -> AlphaAgeing.lossFromStorageIndex(0), "storage index");
        refused(() -> AlphaAgeing.lossFromStorageIndex(Double.NaN), "storage index", "NaN");
        refused(() -> AlphaAgeing.storageIndexFor(1), "loss", "100 %");
    }

    @Test
    void rates_come_from_the_published_shares_left_after_six_months() {
        // Erratum: Garetz prints AN = A0 (100*%Lost); only (100 − %Lost) gives back the share that the rate is made
        // from.
        for (Map<String, String> row : ReferenceTable.read("hops/storage_rates.csv")) {
            double retained = number(row, "retained") / 100;
            double k = AlphaAgeing.storageRate(retained);
            assertEquals(number(row, "k"), k, 0.6e-8, row.toString());
            assertEquals(number(row, "half life days"), Math.log(2) / k, 0.06, row.toString());
            assertEquals(retained, AlphaAgeing.leftAfterStorage(retained, 20, 180), 1e-12, row.toString());
        }
    }

    @Test
    void hops_age_half_as_fast_for_each_fifteen_degrees_less() {
        for (Map<String, String> row : ReferenceTable.read("hops/storage_temperature_factors.csv")) {
            double celsius = number(row, "celsius");
            double factor = AlphaAgeing.temperatureFactor(celsius);
            assertEquals(number(row, "factor"), factor, SIX_PLACES, row.toString());
            assertEquals(factor / 2, AlphaAgeing.temperatureFactor(celsius - 15), 1e-12, row.toString());
        }
    }

    @Test
    void stored_bales_lose_what_the_worked_examples_say() {
        for (Map<String, String> row : ReferenceTable.read("hops/storage_examples.csv")) {
            double left = AlphaAgeing.leftAfterStorage(
                    number(row, "retained") / 100, number(row, "celsius"), number(row, "days"));
            assertEquals(number(row, "alpha after"), number(row, "alpha") * left, 0.6e-5, row.toString());
            assertEquals(number(row, "lost"), 100 * (1 - left), 0.0006, row.toString());
        }
    }

    @Test
    void the_model_meets_published_losses_of_bales_and_not_those_of_pellets() {
        int pellets = 0;
        for (Map<String, String> row : ReferenceTable.read("hops/published_storage_losses.csv")) {
            double lost = 100
                    * (1
                            - AlphaAgeing.leftAfterStorage(
                                    number(row, "retained") / 100, number(row, "celsius"), number(row, "days")));
            if (row.getOrDefault("hops", "").equals("pellets")) {
                pellets++;
                assertTrue(lost > number(row, "most lost"), row + ": " + lost);
            } else {
                assertTrue(lost >= number(row, "least lost") && lost <= number(row, "most lost"), row + ": " + lost);
            }
        }
        assertEquals(2, pellets);
    }

    @Test
    void hops_that_keep_everything_lose_nothing() {
        assertEquals(0, AlphaAgeing.storageRate(1));
        assertEquals(1, AlphaAgeing.leftAfterStorage(1, 30, 1000));
    }

    @Test
    void figures_beyond_sense_are_refused() {
        refused(() -> AlphaAgeing.storageRate(0), "six months", "more than 0 %");
        refused(() -> AlphaAgeing.storageRate(1.1), "110 %");
        refused(() -> AlphaAgeing.temperatureFactor(Double.NaN), "temperature of the store");
        refused(() -> AlphaAgeing.leftAfterStorage(0.75, 2, -1), "days in store");
    }
}
