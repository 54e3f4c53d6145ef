package costrel.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The rules of IAS 2.13, 2.14 and 2.16; the figures are illustrations worked on paper. */
class ProcessCostTest {

    private static Money pounds(String amount) {
        return Money.parse("GBP " + amount);
    }

    private static ProcessCost batch(String goodHl) {
        return new ProcessCost(pounds("5000.00"), pounds("120.00"), dec("100"), dec("0.08"), dec(goodHl));
    }

    private static BigDecimal dec(String text) {
        return new BigDecimal(text);
    }

    @Test
    void spent_grain_is_taken_off_and_the_normal_loss_is_carried_by_the_good_beer() {
        ProcessCost batch = batch("92");

        assertEquals(pounds("4880.00"), batch.net());
        assertEquals(0, dec("92").compareTo(batch.normalHl()));
        assertEquals(pounds("0.00"), batch.expensed());
        assertEquals(pounds("4880.00"), batch.carried());
        // 4880 / 92 = 53.0434783
        assertEquals("53.043478", Carried.shown(batch.unitCost()));
    }

    @Test
    void a_loss_beyond_the_normal_is_expensed_at_the_same_unit_cost() {
        ProcessCost batch = batch("90");

        // 2 × 4880 / 92 = 106.0869...
        assertEquals(0, dec("2").compareTo(batch.abnormalLossHl()));
        assertEquals(pounds("106.09"), batch.expensed());
        assertEquals(pounds("4773.91"), batch.carried());
        assertEquals(batch("92").unitCost(), batch.unitCost());
    }

    @Test
    void more_than_normal_makes_a_hectolitre_cheaper_and_carries_no_more_than_was_spent() {
        assertEquals(pounds("4880.00"), batch("95").carried());
        assertTrue(batch("95").unitCost().compareTo(batch("92").unitCost()) < 0);
        assertEquals(0, batch("95").abnormalLossHl().signum());
    }

    @Test
    void a_batch_that_is_lost_is_an_expense() {
        assertEquals(pounds("4880.00"), batch("0").expensed());
        assertEquals(pounds("0.00"), batch("0").carried());
    }

    @Test
    void fixed_overhead_goes_by_normal_output() {
        FixedOverhead low = new FixedOverhead(pounds("120000.00"), dec("10000"), dec("8000"));

        assertEquals(0, dec("12").compareTo(low.perHl()));
        assertEquals(pounds("96000.00"), low.absorbed());
        assertEquals(pounds("24000.00"), low.expensed());
    }

    @Test
    void output_above_the_normal_bears_what_was_spent() {
        FixedOverhead high = new FixedOverhead(pounds("120000.00"), dec("10000"), dec("12000"));

        assertEquals(0, dec("10").compareTo(high.perHl()));
        assertEquals(pounds("120000.00"), high.absorbed());
        assertEquals(pounds("0.00"), high.expensed());
    }

    @Test
    void what_is_carried_and_what_is_expensed_are_what_was_spent() {
        long seed = Long.getLong("seed", 13L);
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            Money inputs = Money.ofMinor(CurrencyUnit.GBP, 10_000 + random.nextInt(900_000));
            ProcessCost batch = new ProcessCost(
                    inputs,
                    pounds("33.33"),
                    BigDecimal.valueOf(500 + random.nextInt(500), 1),
                    BigDecimal.valueOf(random.nextInt(300), 3),
                    BigDecimal.valueOf(random.nextInt(500), 1));
            assertEquals(batch.net(), batch.carried().plus(batch.expensed()), "seed " + seed + ", case " + i);
            assertTrue(!batch.carried().isNegative(), "seed " + seed + ", case " + i);
        }
    }

    @Test
    void figures_that_make_no_batch_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> batch("100.1"));
        assertThrows(IllegalArgumentException.class, () -> batch("-1"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new ProcessCost(pounds("1"), pounds("2"), dec("1"), dec("0"), dec("1")));
        assertThrows(
                IllegalArgumentException.class,
                () -> new ProcessCost(pounds("1"), pounds("0"), dec("1"), dec("1"), dec("0")));
        assertThrows(
                IllegalArgumentException.class,
                () -> new ProcessCost(pounds("1"), Money.parse("EUR 0"), dec("1"), dec("0"), dec("1")));
        assertThrows(IllegalArgumentException.class, () -> new FixedOverhead(pounds("1"), BigDecimal.ZERO, dec("1")));
    }
}
