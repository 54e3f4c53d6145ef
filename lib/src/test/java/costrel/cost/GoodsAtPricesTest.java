package costrel.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import costrel.Cases;
import costrel.buying.UnitPrice;
import costrel.figures.Rounded;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Money by doubles where they are sure, held against exact decimals, which round by the rule of {@link RoundingMode#HALF_UP}. */
class GoodsAtPricesTest {
    private static final CurrencyUnit POUNDS = CurrencyUnit.GBP;
    private static final long SEED = Long.getLong("seed", 20261125L);

    @Test
    void half_a_penny_is_rounded_up_where_doubles_would_fall_short() {
        // 1.005 has no double: the one next to it lies below, and rounding that gives 100 pence.
        GoodsAtPrices malt = GoodsAtPrices.of(List.of(price("1.005", "1")), POUNDS);
        assertEquals(101, malt.coins(1));
        assertEquals(Money.parse("GBP 1.01"), malt.total(1));
        assertEquals(new BigDecimal("1.01"), price("1.005", "1").times(BigDecimal.ONE, 2));
        assertEquals(new BigDecimal("-1.01"), price("-1.005", "1").times(BigDecimal.ONE, 2));
    }

    @Test
    void a_line_costs_what_exact_decimals_say() {
        Random random = new Random(SEED);
        for (int i = 0; i < Cases.upTo(200_000); i++) {
            BigDecimal amount = decimal(random, 6, 4);
            BigDecimal content = decimal(random, 4, 2).add(BigDecimal.ONE);
            // Tenths of a kilogram and prices in farthings make many exact halves.
            BigDecimal quantity = i % 2 == 0 ? decimal(random, 5, 1) : decimal(random, 9, 6);
            BigDecimal exact = amount.multiply(quantity).divide(content, 2, RoundingMode.HALF_UP);
            UnitPrice price = new UnitPrice(amount, content, "kg");
            String which = amount + " for " + content + " times " + quantity + ", seed " + SEED;
            assertEquals(exact, price.times(quantity, 2), which);
            long pence = GoodsAtPrices.of(List.of(price), POUNDS).coins(quantity.doubleValue());
            assertEquals(exact.movePointRight(2).longValueExact(), pence, which);
        }
    }

    @Test
    void figures_past_the_reach_of_a_double_are_exact_too() {
        UnitPrice dear = price("123456789012345678901234.005", "1");
        assertEquals(new BigDecimal("123456789012345678901234.01"), dear.times(BigDecimal.ONE, 2));
        assertEquals(
                new BigDecimal("0.33"), price("1", "3.00000000000000000000").times(BigDecimal.ONE, 2));
        assertEquals(new BigDecimal("5E+2").setScale(0), price("5E+2", "1").times(BigDecimal.ONE, 0));
    }

    @Test
    void an_amount_is_the_decimal_that_java_writes_for_it() {
        Random random = new Random(SEED);
        for (int i = 0; i < Cases.upTo(200_000); i++) {
            double steps = random.nextInt(2_000_000) / Math.pow(10, i % 6);
            double amount = i % 7 == 0 ? random.nextDouble() * 1e8 : steps;
            assertEquals(new BigDecimal(Double.toString(amount)), Rounded.decimal(amount), "seed " + SEED);
        }
    }

    @Test
    void a_total_is_the_sum_of_its_lines() {
        Random random = new Random(SEED);
        List<UnitPrice> prices = new ArrayList<>();
        double[] amounts = new double[12];
        long sum = 0;
        for (int i = 0; i < amounts.length; i++) {
            prices.add(new UnitPrice(decimal(random, 5, 2), BigDecimal.valueOf(25), "kg"));
            amounts[i] = random.nextInt(10_000) / 10.0;
            sum += GoodsAtPrices.of(List.of(prices.get(i)), POUNDS).coins(amounts[i]);
        }
        assertEquals(sum, GoodsAtPrices.of(prices, POUNDS).coins(amounts), "seed " + SEED);
    }

    @Test
    void an_amount_that_is_none_is_refused() {
        GoodsAtPrices malt = GoodsAtPrices.of(List.of(price("21.45", "25")), POUNDS);
        assertThrows(IllegalArgumentException.class, () -> malt.coins(-1));
        assertThrows(IllegalArgumentException.class, () -> malt.coins(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> malt.coins(Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> malt.coins(1, 2));
    }

    private static UnitPrice price(String amount, String content) {
        return new UnitPrice(new BigDecimal(amount), new BigDecimal(content), "kg");
    }

    private static BigDecimal decimal(Random random, int digits, int places) {
        return BigDecimal.valueOf(random.nextInt((int) Math.pow(10, digits)) + 1L, places);
    }
}
