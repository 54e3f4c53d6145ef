package costrel.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StockLedgerTest {
    private static final CurrencyUnit GBP = CurrencyUnit.GBP;
    private static final List<Valuation> BY_WHAT_WAS_PAID =
            List.of(Valuation.FIFO, Valuation.AVERAGE_PERPETUAL, Valuation.AVERAGE_PERIODIC);

    private static Movement in(int day, String quantity, String cost) {
        return in("Pale malt", day, quantity, cost);
    }

    private static Movement in(String item, int day, String quantity, String cost) {
        return new Movement.Receipt(
                day(day), item, new BigDecimal(quantity), "kg", Money.parse("GBP " + cost), false, "stock.csv:" + day);
    }

    private static Movement opening(int day, String quantity, String cost) {
        return new Movement.Receipt(
                day(day),
                "Pale malt",
                new BigDecimal(quantity),
                "kg",
                Money.parse("GBP " + cost),
                true,
                "stock.csv:" + day);
    }

    private static Movement out(int day, String quantity) {
        return new Movement.Issue(day(day), "Pale malt", new BigDecimal(quantity), "kg", "stock.csv:" + day);
    }

    private static LocalDate day(int day) {
        return LocalDate.of(2026, 1, 1).plusDays(day - 1L);
    }

    private static ItemStock valued(Valuation valuation, Movement... movements) {
        return StockLedger.of(GBP, List.of(movements)).value("pale  MALT", valuation);
    }

    private static void assertRefused(String words, Executable executable) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, executable);
        String message = String.valueOf(refused.getMessage());
        assertTrue(message.contains(words), () -> "expected '" + words + "', found '" + message + "'");
    }

    private static Valuation named(String label) {
        return BY_WHAT_WAS_PAID.stream()
                .filter(valuation -> valuation.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    static List<Map<String, String>> textbook() {
        return ReferenceTable.read("stock/textbook_issues.csv");
    }

    /** The textbook's stock record; the table names it. */
    @ParameterizedTest
    @MethodSource("textbook")
    void the_textbook_s_issues_cost_what_it_says(Map<String, String> row) {
        ItemStock stock = valued(
                named(Objects.requireNonNull(row.get("basis"))),
                in(1, "10", "910"),
                in(2, "15", "1590"),
                out(3, "20"),
                in(4, "20", "2300"),
                in(5, "10", "1190"),
                out(6, "23"));

        assertEquals(
                "GBP " + row.get("first issue"), stock.issues().get(0).value().toString());
        assertEquals(
                "GBP " + row.get("second issue"), stock.issues().get(1).value().toString());
        assertEquals("GBP " + row.get("closing"), stock.closing().toString());
        assertEquals(0, new BigDecimal("12").compareTo(stock.closingQuantity()));
        assertEquals(Money.parse("GBP 5990.00"), stock.issued().plus(stock.closing()));
    }

    /** The same textbook prints the stock between the two issues: 5 left at 106. */
    @Test
    void after_the_first_issue_five_of_the_later_receipt_are_left() {
        ItemStock stock = valued(Valuation.FIFO, in(1, "10", "910"), in(2, "15", "1590"), out(3, "20"));

        assertEquals(Money.parse("GBP 530.00"), stock.closing());
    }

    /** IAS 2.27: cost of sales of the period at one average; 43 × 5990/55 is 4683.09. */
    @Test
    void a_period_s_issues_at_one_average_come_to_cost_of_sales() {
        ItemStock stock = valued(
                Valuation.AVERAGE_PERIODIC, in(1, "25", "2500"), out(3, "20"), in(4, "30", "3490"), out(6, "23"));

        assertEquals(Money.parse("GBP 4683.09"), stock.issued());
    }

    @Test
    void what_the_roundings_leave_goes_to_the_last_issue() {
        // 10.00 over three: 3.33 each, and the last empties the store.
        ItemStock stock = valued(Valuation.FIFO, in(1, "3", "10"), out(2, "1"), out(3, "1"), out(4, "1"));

        assertEquals(
                List.of("GBP 3.33", "GBP 3.33", "GBP 3.34"),
                stock.issues().stream().map(issue -> issue.value().toString()).toList());
        assertEquals(
                List.of("GBP 0.00", "GBP 0.00", "GBP 0.01"),
                stock.issues().stream().map(issue -> issue.residue().toString()).toList());
        assertTrue(stock.closing().isZero());
        assertTrue(stock.explanation().text().contains("with 0.01 GBP of roundings"));
    }

    /** An issue of an exact half penny is rounded up, by whatever digits the average was carried on. */
    @Test
    void half_a_penny_is_still_a_half_after_a_thirty_third() {
        // 0.33 for 33; one third of 33 goes at 0.11; then 11 of 22 at 0.11, 0.5 of the last 11 at 0.005.
        ItemStock stock = valued(
                Valuation.AVERAGE_PERPETUAL,
                in(1, "33", "0.33"),
                out(2, "11"),
                out(3, "11"),
                out(4, "0.5"),
                out(5, "1"));

        assertEquals("GBP 0.01", stock.issues().get(2).value().toString());
    }

    @Test
    void opening_and_receipts_are_issues_and_closing_to_the_penny() {
        long seed = Long.getLong("seed", 27L);
        Random random = new Random(seed);
        for (int round = 0; round < 300; round++) {
            List<Movement> movements = new ArrayList<>();
            movements.add(opening(1, "7", "12.34"));
            int thereTenths = 70;
            for (int day = 2; day < 30; day++) {
                if (thereTenths == 0 || random.nextBoolean()) {
                    int tenths = 1 + random.nextInt(900);
                    thereTenths += tenths;
                    movements.add(in(
                            day,
                            tenth(tenths),
                            BigDecimal.valueOf(random.nextInt(90_000), 2).toPlainString()));
                } else {
                    int tenths = 1 + random.nextInt(thereTenths);
                    thereTenths -= tenths;
                    movements.add(out(day, tenth(tenths)));
                }
            }
            for (Valuation valuation : BY_WHAT_WAS_PAID) {
                ItemStock stock = StockLedger.of(GBP, movements).value("Pale malt", valuation);
                String which = valuation.label() + ", seed " + seed + ", round " + round;
                assertEquals(
                        stock.opening().plus(stock.received()), stock.issued().plus(stock.closing()), which);
                assertTrue(stock.difference().isZero(), which);
                assertEquals(0, new BigDecimal(tenth(thereTenths)).compareTo(stock.closingQuantity()), which);
                assertTrue(!stock.closing().isNegative(), which);
                int last = stock.issues().size() - 1;
                for (int i = 0; i < last; i++) {
                    assertTrue(stock.issues().get(i).residue().isZero(), which);
                }
            }
        }
    }

    private static String tenth(int tenths) {
        return BigDecimal.valueOf(tenths, 1).toPlainString();
    }

    /** While prices stand still, no basis makes a difference. */
    @Test
    void at_one_price_all_bases_agree() {
        for (Valuation valuation : BY_WHAT_WAS_PAID) {
            ItemStock stock = valued(valuation, in(1, "10", "25"), out(2, "4"), in(3, "2", "5"), out(4, "1"));

            assertEquals(Money.parse("GBP 12.50"), stock.issued(), valuation.label());
            assertEquals(Money.parse("GBP 17.50"), stock.closing(), valuation.label());
        }
    }

    @Test
    void standard_cost_shows_what_was_paid_above_it_as_a_variance() {
        Valuation standard = Valuation.standardCost(
                List.of(new UnitCost("Pale malt", day(1), new BigDecimal("0.70"), "standard.csv:2")));

        ItemStock stock = valued(standard, in(1, "100", "73.60"), out(2, "40"));

        assertEquals(Money.parse("GBP 28.00"), stock.issued());
        assertEquals(Money.parse("GBP 42.00"), stock.closing());
        assertEquals(Money.parse("GBP 3.60"), stock.difference());
        assertEquals(
                "3.60 GBP",
                stock.explanation()
                        .find("purchase price variance")
                        .orElseThrow()
                        .figure());
        assertEquals("standard cost", standard.label());
    }

    @Test
    void replacement_takes_the_price_of_the_day_of_issue() {
        Valuation replacement = Valuation.replacement(List.of(
                new UnitCost("Pale malt", day(1), new BigDecimal("0.70"), "a.csv:2"),
                new UnitCost("Pale malt", day(10), new BigDecimal("0.90"), "a.csv:3")));

        ItemStock stock = valued(replacement, in(2, "100", "70"), out(9, "10"), out(10, "10"));

        assertEquals("GBP 7.00", stock.issues().get(0).value().toString());
        assertEquals("GBP 9.00", stock.issues().get(1).value().toString());
        assertEquals(Money.parse("GBP 72.00"), stock.closing());
        assertEquals(Money.parse("GBP -18.00"), stock.difference());
    }

    @Test
    void a_set_cost_that_is_missing_or_double_is_refused() {
        UnitCost late = new UnitCost("Pale malt", day(5), BigDecimal.ONE, "a.csv:2");
        assertRefused(
                "no standard cost holds on 2026-01-03, the first is from 2026-01-05",
                () -> valued(Valuation.standardCost(List.of(late)), in(1, "1", "1"), out(3, "1")));
        assertRefused("found another in a.csv:2", () -> Valuation.replacement(List.of(late, late)));
        assertRefused("0", () -> new UnitCost("Pale malt", day(5), BigDecimal.ONE.negate(), "a.csv:2"));
    }

    @Test
    void more_than_is_there_is_refused_with_the_row_and_what_is_short() {
        assertRefused(
                "stock.csv:4: Pale malt: 20 kg issued on 2026-01-04, 15 kg there: short of 5 kg",
                () -> valued(Valuation.FIFO, in(2, "15", "10"), out(4, "20"), in(5, "100", "10")));
    }

    @Test
    void every_item_that_is_short_is_told_at_once() {
        Movement hops = new Movement.Issue(day(2), "Fuggle", BigDecimal.ONE, "kg", "stock.csv:9");
        assertRefused("stock.csv:9: Fuggle", () -> StockLedger.of(GBP, List.of(out(4, "20"), hops)));
        assertRefused("stock.csv:4: Pale malt", () -> StockLedger.of(GBP, List.of(out(4, "20"), hops)));
    }

    @Test
    void rows_may_stand_in_any_order_of_days() {
        ItemStock stock = valued(Valuation.FIFO, out(9, "5"), in(2, "10", "20"));

        assertEquals(Money.parse("GBP 10.00"), stock.issued());
    }

    @Test
    void on_one_day_the_file_s_order_counts() {
        assertRefused("short of 5 kg", () -> valued(Valuation.FIFO, out(2, "5"), in(2, "10", "20")));
    }

    @Test
    void two_units_another_currency_and_a_late_opening_are_refused() {
        Movement each = new Movement.Issue(day(3), "Pale malt", BigDecimal.ONE, "each", "stock.csv:3");
        Movement euro = new Movement.Receipt(
                day(3), "Pale malt", BigDecimal.ONE, "kg", Money.parse("EUR 1.00"), false, "stock.csv:3");
        assertRefused("expected kg as in stock.csv:1, found each", () -> valued(Valuation.FIFO, in(1, "1", "1"), each));
        assertRefused("cost: expected GBP, found EUR", () -> valued(Valuation.FIFO, in(1, "1", "1"), euro));
        assertRefused(
                "expected opening stock before every other row",
                () -> valued(Valuation.FIFO, in(1, "1", "1"), opening(2, "1", "1")));
        assertRefused("expected more than 0 kg, found 0", () -> out(1, "0"));
        assertRefused("cost: expected 0 or more", () -> in(1, "1", "-1"));
        assertRefused(
                "nearest: Pale malt",
                () -> StockLedger.of(GBP, List.of(in(1, "1", "1"))).value("Pale mlt", Valuation.FIFO));
    }

    @Test
    void closing_stock_opens_the_next_ledger() {
        StockLedger january = StockLedger.of(GBP, List.of(in(1, "3", "10"), out(2, "1")));
        ItemStock closed = january.value("Pale malt", Valuation.FIFO);

        StockLedger february = StockLedger.of(GBP, List.of(closed.carriedOn(day(32), "closing of January")));
        ItemStock next = february.with(List.of(out(33, "2"))).value("Pale malt", Valuation.FIFO);

        assertEquals(closed.closing(), next.opening());
        assertEquals(Money.parse("GBP 6.67"), next.issued());
    }

    @Test
    void every_item_is_valued_on_its_own() {
        StockLedger ledger = StockLedger.of(GBP, List.of(in("Fuggle", 1, "2", "30"), in(1, "3", "10"), out(2, "3")));

        assertEquals(List.of("Fuggle", "Pale malt"), ledger.items());
        List<ItemStock> valued = ledger.value(Valuation.FIFO);
        assertEquals(Money.parse("GBP 30.00"), valued.get(0).closing());
        assertEquals(Money.parse("GBP 10.00"), valued.get(1).issued());
        assertEquals(1, ledger.movementsOf("FUGGLE").size());
    }
}
