package costrel.buying;

import static costrel.cost.Given.GBP;
import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.assertSays;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** Several rows of one item: which stand in each other's way, which is chosen, and what is kept between two questions. */
class ManyRowsOfOneItemTest {
    private static final LocalDate MAY = LocalDate.parse("2026-05-01");
    private static final PackUnit KG = PackUnit.KILOGRAM;

    private static PriceRow row(
            int line, String item, String supplier, String perSack, String from, String until, String least) {
        return row(line, item, supplier, perSack, from, until, least, Optional.empty());
    }

    private static PriceRow row(
            int line,
            String item,
            String supplier,
            String perSack,
            String from,
            String until,
            String least,
            Optional<BigDecimal> contracted) {
        return new PriceRow(
                item,
                supplier,
                new Pack(dec("25"), KG),
                dec(perSack),
                GBP,
                day(from),
                Optional.of(until).filter(text -> !text.isEmpty()).map(LocalDate::parse),
                dec(least),
                BigDecimal.ZERO,
                Optional.empty(),
                contracted,
                "prices.csv:" + line);
    }

    private static PriceRow malt(int line, String supplier, String perSack, String least) {
        return row(line, "Pale malt", supplier, perSack, "2026-01-01", "", least);
    }

    private static Choice choose(PriceList prices, String kg) {
        return prices.choose(List.of("Pale malt"), MAY, dec(kg), KG, GBP);
    }

    private static List<String> overlaps(PriceRow... rows) {
        return PriceList.of(List.of(rows)).overlaps().stream()
                .map(overlap -> overlap.first().place().line() + " "
                        + overlap.second().place().line())
                .toList();
    }

    @Test
    void overlaps_are_told_in_the_order_of_the_file() {
        assertEquals(
                List.of("3 4", "5 6"),
                overlaps(
                        row(2, "Pale malt", "Ash", "18", "2025-01-01", "2025-12-31", "0"),
                        row(3, "Fuggle", "Ash", "18", "2026-01-01", "", "0"),
                        row(4, "Fuggle", "Ash", "19", "2026-01-01", "", "0"),
                        row(5, "Pale malt", "Ash", "18", "2026-01-01", "", "0"),
                        row(6, "Pale malt", "Ash", "19", "2026-01-01", "", "0")));
    }

    @Test
    void overlaps_are_found_between_suppliers_and_contracts_that_stand_mixed() {
        assertEquals(
                List.of("2 4"),
                overlaps(
                        malt(2, "Ash", "18", "0"),
                        row(3, "Pale malt", "Birch", "18", "2026-02-01", "", "0"),
                        row(4, "Pale malt", "Ash", "19", "2026-03-01", "", "0")));
        assertEquals(
                List.of("2 4"),
                overlaps(
                        malt(2, "Ash", "18", "0"),
                        row(3, "Pale malt", "Ash", "18", "2026-02-01", "", "0", Optional.of(dec("500"))),
                        row(4, "Pale malt", "Ash", "19", "2026-03-01", "", "0")));
        assertEquals(
                List.of("2 3"),
                overlaps(row(2, "Pale malt", "Ash", "19", "2026-03-01", "", "0"), malt(3, "Ash", "18", "0")));
    }

    @Test
    void each_row_is_held_against_the_one_that_ends_last() {
        assertEquals(
                List.of("2 3", "3 4"),
                overlaps(
                        row(2, "Pale malt", "Ash", "18", "2026-01-01", "2026-02-28", "0"),
                        row(3, "Pale malt", "Ash", "18", "2026-02-01", "2026-03-31", "0"),
                        row(4, "Pale malt", "Ash", "18", "2026-03-15", "2026-12-31", "0")));
        assertEquals(
                List.of("2 3", "2 4"),
                overlaps(
                        row(2, "Pale malt", "Ash", "18", "2026-01-01", "2026-12-31", "0"),
                        row(3, "Pale malt", "Ash", "18", "2026-02-01", "2026-02-28", "0"),
                        row(4, "Pale malt", "Ash", "18", "2026-03-15", "2026-12-31", "0")));
    }

    @Test
    void two_prices_alike_are_refused_among_many_rows_of_a_day() {
        List<PriceRow> rows = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            rows.add(malt(2 + i, "Ash", "18", String.valueOf(100 * i)));
        }
        assertEquals("prices.csv:7", choose(PriceList.of(rows), "500").row().origin());
        rows.add(malt(30, "Ash", "17", "500"));
        assertRefused(
                "two prices that both apply: prices.csv:7 and prices.csv:30", () -> choose(PriceList.of(rows), "500"));
    }

    @Test
    void of_several_larger_orders_the_one_that_costs_least_in_all_is_told() {
        // 499 kg at 18 a sack are 359.28; 500 kg at 17 are 340.00, 510 kg at 16 are 326.40.
        String told = "499 kg costs 359.28 GBP from Ash, 510 kg costs 326.40 GBP from Ash";
        PriceRow base = malt(2, "Ash", "18", "0");
        PriceRow nearer = malt(3, "Ash", "17", "500");
        PriceRow best = malt(4, "Ash", "16", "510");

        assertSays(
                told, choose(PriceList.of(List.of(base, nearer, best)), "499").findings());
        assertSays(
                told, choose(PriceList.of(List.of(base, best, nearer)), "499").findings());
    }

    @Test
    void a_larger_order_that_costs_the_same_in_all_is_no_news() {
        // 500 kg at 20 a sack and 1000 kg at 10 are both 400.00; 501 kg are 400.80.
        PriceList prices = PriceList.of(List.of(malt(2, "Ash", "20", "0"), malt(3, "Ash", "10", "1000")));

        assertEquals(List.of(), choose(prices, "500").findings());
        assertSays(
                "501 kg costs 400.80 GBP from Ash, 1000 kg costs 400.00 GBP",
                choose(prices, "501").findings());
    }

    @Test
    void a_break_at_the_same_price_is_not_dearer() {
        PriceList prices = PriceList.of(List.of(malt(2, "Ash", "18", "0"), malt(3, "Ash", "18.00", "500")));

        assertEquals(List.of(), choose(prices, "500").findings());
        assertEquals(List.of(), prices.breaksOutOfOrder());
    }

    @Test
    void a_price_for_large_orders_is_not_kept_for_small_ones_nor_a_stand_in_s_for_large() {
        PriceList prices = PriceList.of(List.of(
                row(2, "F-25-118", "Hopyard", "310", "2026-01-01", "", "10"),
                row(3, "Fuggle", "Hopyard", "350", "2026-01-01", "", "0")));

        assertFigure("14", hops(prices, "2"));
        assertFigure("12.4", hops(prices, "20"));
        assertFigure("12.4", hops(prices, "10"));
        assertFigure("14", hops(prices, "9.99"));
        assertRefused("quantity: expected 0 kg or more, found -1", () -> hops(prices, "-1"));

        PriceList one = PriceList.of(List.of(malt(2, "Ash", "18", "0")));
        assertFigure("0.72", choose(one, "0").unitPrice().value());
        assertRefused("quantity: expected 0 kg or more, found -1", () -> choose(one, "-1"));
    }

    private static BigDecimal hops(PriceList prices, String kg) {
        return prices.choose(List.of("F-25-118", "Fuggle"), MAY, dec(kg), KG, GBP)
                .unitPrice()
                .value();
    }

    @Test
    void the_same_question_has_the_same_offers_and_another_has_its_own() {
        PricesOnDay may = PriceList.of(
                        List.of(malt(2, "Ash", "18", "0"), row(3, "Fuggle", "Ash", "9", "2026-01-01", "", "0")))
                .on(MAY);
        List<Offers> asked = new ArrayList<>();
        for (int round = 0; round < 2; round++) {
            asked.add(may.offers(List.of("Pale malt"), KG, GBP));
            asked.add(may.offers(List.of("Pale malt"), PackUnit.LITRE, GBP));
            asked.add(may.offers(List.of("Pale malt"), KG, CurrencyUnit.EUR));
            asked.add(may.offers(List.of("Pale malt", "Fuggle"), KG, GBP));
            asked.add(may.offers(List.of("Pale malt", "Goldings"), KG, GBP));
        }
        for (int i = 0; i < 5; i++) {
            assertSame(asked.get(i), asked.get(i + 5));
            for (int k = 0; k < i; k++) {
                assertNotSame(asked.get(i), asked.get(k));
            }
        }
        assertRefused("sold by kg, wanted in L", () -> asked.get(6).choose(BigDecimal.ONE));
        assertRefused("in GBP, the sheet is in EUR", () -> asked.get(7).choose(BigDecimal.ONE));
    }

    @Test
    void what_no_list_names_is_not_kept() {
        PricesOnDay may = PriceList.of(List.of(malt(2, "Ash", "18", "0"))).on(MAY);

        assertNotSame(may.offers(List.of("Pale mlat"), KG, GBP), may.offers(List.of("Pale mlat"), KG, GBP));
    }

    @Test
    void a_thing_is_known_by_the_first_name_that_a_list_has() {
        PricesOnDay may = PriceList.of(List.of(malt(2, "Ash", "18", "0"))).on(MAY);

        assertEquals(
                "palemalt",
                may.offers(List.of("P-26", " PALE Malt"), KG, GBP).thing().foldedName());
        assertEquals(
                "palemalt",
                may.offers(List.of("Pale malt", "P-26"), KG, GBP).thing().foldedName());
        assertEquals(
                Names.folded("P-26"),
                may.offers(List.of("P-26", "P-27"), KG, GBP).thing().foldedName());
    }

    @Test
    void the_days_of_a_year_are_kept_and_no_more() {
        PriceList prices = PriceList.of(List.of(malt(2, "Ash", "18", "0")));
        PricesOnDay first = prices.on(MAY);
        for (int i = 1; i <= 366; i++) {
            assertSame(prices.on(MAY.plusDays(i)), prices.on(MAY.plusDays(i)));
        }
        assertSame(first, prices.on(MAY));
        prices.on(MAY.plusDays(367));
        assertNotSame(first, prices.on(MAY));
    }

    @Test
    void several_lists_are_one_list_without_terms() {
        PriceTerms terms = new PriceTerms(
                List.of(PriceAdjustment.percent(
                        "energy", "Ash", Optional.empty(), dec("4"), MAY, Optional.empty(), "terms.csv:2")),
                List.of(),
                ExchangeRates.none());
        PriceList ash = PriceList.of(List.of(malt(2, "Ash", "18", "0"))).with(terms);
        PriceList birch = PriceList.of(List.of(malt(3, "Birch", "17", "0")));

        assertFigure("0.7488", choose(ash, "1").unitPrice().value()); // 18 × 1.04 / 25
        assertFigure(
                "0.72", choose(PriceList.ofAll(List.of(ash)), "1").unitPrice().value());
        PriceList both = PriceList.ofAll(List.of(ash, birch));
        assertEquals(
                List.of("prices.csv:2", "prices.csv:3"),
                both.rows().stream().map(PriceRow::origin).toList());
        assertFigure("0.68", choose(both, "1").unitPrice().value());
    }

    @Test
    void contracts_are_of_the_first_name_that_has_a_price_and_in_the_unit_asked_for() {
        PriceRow contract = row(3, "Fuggle", "Ash", "17", "2026-01-01", "", "0", Optional.of(dec("500")));
        PriceList prices = PriceList.of(
                List.of(row(2, "Fuggle", "Ash", "18", "2026-01-01", "", "0"), contract, malt(4, "Ash", "18", "0")));

        assertEquals(List.of(contract), prices.contracts(List.of("F-25", "Fuggle"), MAY, KG));
        assertEquals(List.of(), prices.contracts(List.of("Fuggle"), MAY, PackUnit.EACH));
        assertEquals(List.of(), prices.contracts(List.of("Pale malt", "Fuggle"), MAY, KG));
        assertEquals(List.of(), prices.contracts(List.of("Fuggle"), day("2025-12-31"), KG));
    }
}
