package costrel.buying;

import static costrel.cost.Given.GBP;
import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.assertSays;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Cases;
import costrel.cost.Given;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** Invented suppliers and prices; the rule of choice is that of the package's description. */
class PriceListTest {

    /** A row of pale malt by the 25 kg sack; the line number is its origin. */
    private static PriceRow malt(
            int line, String supplier, String price, String from, String until, String minimum, String delivery) {
        return new PriceRow(
                "Pale malt",
                supplier,
                new Pack(dec("25"), PackUnit.KILOGRAM),
                dec(price),
                GBP,
                day(from),
                until.isEmpty() ? Optional.empty() : Optional.of(day(until)),
                dec(minimum),
                dec(delivery),
                "prices.csv:" + line);
    }

    private static PriceRow malt(int line, String supplier, String price) {
        return malt(line, supplier, price, "2026-01-01", "2026-12-31", "0", "0");
    }

    private static Choice choose(List<PriceRow> rows, String day, String kg) {
        return PriceList.of(rows).choose(List.of("Pale malt"), day(day), dec(kg), PackUnit.KILOGRAM, GBP);
    }

    private static String chosen(List<PriceRow> rows, String day, String kg) {
        return choose(rows, day, kg).row().origin();
    }

    @Test
    void a_price_holds_on_its_first_and_its_last_day() {
        List<PriceRow> rows = List.of(
                malt(2, "Ash", "18.00", "2026-01-01", "2026-06-30", "0", "0"),
                malt(3, "Ash", "19.00", "2026-07-01", "", "0", "0"));

        assertEquals("prices.csv:2", chosen(rows, "2026-01-01", "100"));
        assertEquals("prices.csv:2", chosen(rows, "2026-06-30", "100"));
        assertEquals("prices.csv:3", chosen(rows, "2026-07-01", "100"));
        assertEquals("prices.csv:3", chosen(rows, "2036-07-01", "100"));
    }

    @Test
    void a_day_with_no_price_names_the_nearest_that_there_is() {
        List<PriceRow> rows = List.of(
                malt(2, "Ash", "18.00", "2025-01-01", "2025-06-30", "0", "0"),
                malt(3, "Ash", "19.00", "2026-07-01", "2026-12-31", "0", "0"));

        NoPriceException none = assertThrows(NoPriceException.class, () -> choose(rows, "2026-05-01", "100"));

        assertEquals(
                List.of(
                        "Pale malt: no price applies on 2026-05-01; the nearest is 2026-07-01 to 2026-12-31 (prices.csv:3)"),
                none.faults());
    }

    @Test
    void the_largest_minimum_that_is_met_applies() {
        List<PriceRow> rows = List.of(
                malt(2, "Ash", "18.00"),
                malt(3, "Ash", "17.00", "2026-01-01", "", "500", "0"),
                malt(4, "Ash", "16.00", "2026-01-01", "", "1000", "0"));

        assertEquals("prices.csv:2", chosen(rows, "2026-05-01", "499.9"));
        assertEquals("prices.csv:3", chosen(rows, "2026-05-01", "500"));
        assertEquals("prices.csv:4", chosen(rows, "2026-05-01", "1000"));
        Choice middle = choose(rows, "2026-05-01", "600");
        assertEquals(
                List.of("for orders under 500 kg, where the next price begins", "for orders of 1000 kg or more"),
                middle.passedOver().stream().map(Choice.PassedOver::why).toList());
    }

    @Test
    void a_break_that_is_dearer_still_applies_and_is_told() {
        List<PriceRow> rows = List.of(malt(2, "Ash", "17.00"), malt(3, "Ash", "18.00", "2026-01-01", "", "500", "0"));

        Choice choice = choose(rows, "2026-05-01", "500");

        assertEquals("prices.csv:3", choice.row().origin());
        assertSays("is dearer than that for less (prices.csv:2)", choice.findings());
    }

    @Test
    void a_larger_order_that_costs_less_in_all_is_told() {
        List<PriceRow> rows = List.of(malt(2, "Ash", "18.00"), malt(3, "Ash", "17.00", "2026-01-01", "", "500", "0"));

        // 500 kg at £17.00 a sack are £340.00; 475 kg at £18.00 are £342.00, and 450 kg are £324.00.
        Choice nearly = choose(rows, "2026-05-01", "475");
        assertSays("475 kg costs 342.00 GBP from Ash, 500 kg costs 340.00 GBP from Ash", nearly.findings());
        assertSays("buy 500 kg", nearly.findings());
        assertEquals(List.of(), choose(rows, "2026-05-01", "450").findings());
    }

    @Test
    void the_cheapest_supplier_is_taken_with_delivery() {
        List<PriceRow> rows = List.of(
                malt(2, "Ash", "18.00", "2026-01-01", "", "0", "1.50"),
                malt(3, "Birch", "19.00", "2026-01-01", "", "0", "0"));

        Choice choice = choose(rows, "2026-05-01", "100");

        assertEquals("Birch", choice.row().supplier());
        assertFigure("0.76", choice.unitPrice().value());
        assertEquals("dearer", choice.passedOver().get(0).why());
        assertFigure("0.78", choice.passedOver().get(0).row().landed().value());
    }

    @Test
    void packs_of_different_content_compare_by_the_kilogram() {
        PriceRow tote = new PriceRow(
                "Pale malt",
                "Birch",
                new Pack(dec("1000"), PackUnit.KILOGRAM),
                dec("700"),
                GBP,
                day("2026-01-01"),
                Optional.empty(),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                "prices.csv:3");

        assertEquals("prices.csv:3", chosen(List.of(malt(2, "Ash", "18.00"), tote), "2026-05-01", "100"));
    }

    @Test
    void of_equal_prices_the_first_in_the_file_is_taken() {
        assertEquals(
                "prices.csv:2",
                chosen(List.of(malt(2, "Birch", "18.00"), malt(3, "Ash", "18.000")), "2026-05-01", "1"));
        assertEquals(
                "prices.csv:3",
                chosen(List.of(malt(3, "Ash", "18.000"), malt(2, "Birch", "18.00")), "2026-05-01", "1"));
    }

    @Test
    void two_prices_that_both_apply_are_refused_by_their_origins() {
        List<PriceRow> rows = List.of(
                malt(2, "Ash", "18.00", "2026-01-01", "", "0", "0"),
                malt(9, "ASH", "19.00", "2026-07-01", "", "0.0", "0"));

        assertEquals("prices.csv:2", chosen(rows, "2026-06-30", "1"));
        assertRefused(
                "two prices that both apply: prices.csv:2 and prices.csv:9", () -> choose(rows, "2026-07-01", "1"));
        assertEquals(1, PriceList.of(rows).overlaps().size());
    }

    @Test
    void overlaps_are_found_past_a_row_that_lies_between() {
        List<PriceRow> rows = List.of(
                malt(2, "Ash", "18.00", "2026-01-01", "", "0", "0"),
                malt(3, "Ash", "18.00", "2026-02-01", "2026-02-28", "0", "0"),
                malt(4, "Ash", "18.00", "2026-03-01", "2026-03-31", "0", "0"),
                malt(5, "Birch", "18.00", "2026-01-01", "2026-01-31", "0", "0"),
                malt(6, "Birch", "18.00", "2026-02-01", "", "0", "0"));

        assertEquals(
                List.of("prices.csv:2 prices.csv:3", "prices.csv:2 prices.csv:4"),
                PriceList.of(rows).overlaps().stream()
                        .map(overlap -> overlap.first().origin() + " "
                                + overlap.second().origin())
                        .toList());
    }

    @Test
    void an_unknown_item_is_offered_the_nearest() {
        PriceList prices = PriceList.of(List.of(malt(2, "Ash", "18.00")));

        assertRefused(
                "Pale mlat: no price list names it; nearest: Pale malt",
                () -> prices.choose(List.of("Pale mlat"), day("2026-05-01"), BigDecimal.ONE, PackUnit.KILOGRAM, GBP));
    }

    @Test
    void names_are_found_whatever_their_case_and_spaces() {
        PriceList prices = PriceList.of(List.of(malt(2, "Ash", "18.00")));

        assertEquals(
                "prices.csv:2",
                prices.choose(List.of(" PALE  Malt"), day("2026-05-01"), BigDecimal.ONE, PackUnit.KILOGRAM, GBP)
                        .row()
                        .origin());
    }

    @Test
    void a_lot_has_its_own_price_and_else_the_variety_s() {
        PriceList prices = PriceList.of(List.of(
                Given.price("Fuggle", "Hopyard", "5", PackUnit.KILOGRAM, "70.00"),
                Given.price("F-25-118", "Hopyard", "5", PackUnit.KILOGRAM, "62.00")));

        assertFigure("12.4", unit(prices, "F-25-118", "Fuggle"));
        assertFigure("14", unit(prices, "F-25-999", "Fuggle"));
    }

    private static BigDecimal unit(PriceList prices, String lot, String variety) {
        return prices.choose(List.of(lot, variety), day("2026-05-01"), dec("2"), PackUnit.KILOGRAM, GBP)
                .unitPrice()
                .value();
    }

    @Test
    void the_variety_s_price_in_place_of_a_lot_s_that_has_run_out_is_told() {
        PriceRow run = Given.price("F-25-118", "Hopyard", "5", PackUnit.KILOGRAM, "62.00");
        PriceList prices =
                PriceList.of(List.of(Given.price("Fuggle", "Hopyard", "5", PackUnit.KILOGRAM, "70.00"), run));

        PriceList later = PriceList.of(List.of(
                new PriceRow(
                        "Fuggle",
                        "Hopyard",
                        run.pack(),
                        dec("75"),
                        GBP,
                        day("2027-01-01"),
                        Optional.empty(),
                        BigDecimal.ZERO,
                        BigDecimal.ZERO,
                        "prices-2027.csv:4"),
                run));
        Choice choice =
                later.choose(List.of("F-25-118", "Fuggle"), day("2027-02-01"), dec("2"), PackUnit.KILOGRAM, GBP);

        assertFigure("15", choice.unitPrice().value());
        assertSays("F-25-118: no price applies on 2027-02-01", choice.findings());
        assertEquals(2, prices.rows().size());
    }

    @Test
    void a_price_in_another_currency_is_not_compared_and_alone_it_is_refused() {
        PriceRow euro = new PriceRow(
                "Pale malt",
                "Esche",
                new Pack(dec("25"), PackUnit.KILOGRAM),
                dec("1.00"),
                CurrencyUnit.EUR,
                day("2026-01-01"),
                Optional.empty(),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                "prices.csv:3");

        Choice choice = choose(List.of(malt(2, "Ash", "18.00"), euro), "2026-05-01", "1");
        assertEquals("Ash", choice.row().supplier());
        assertSays("the price of Pale malt is in EUR and could not be compared", choice.findings());
        assertRefused("supply a price per kg in GBP", () -> choose(List.of(euro), "2026-05-01", "1"));
    }

    @Test
    void a_price_by_another_unit_is_refused() {
        PriceRow each = Given.price("Pale malt", "Ash", "1", PackUnit.EACH, "18.00");

        assertRefused("sold by each, wanted in kg", () -> choose(List.of(each), "2026-05-01", "1"));
    }

    @Test
    void an_order_under_every_minimum_is_refused() {
        assertRefused(
                "the smallest order is 500 kg; state the quantity that is bought",
                () -> choose(List.of(malt(2, "Ash", "17.00", "2026-01-01", "", "500", "0")), "2026-05-01", "100"));
    }

    @Test
    void prices_of_nothing_and_packs_of_nothing_are_refused() {
        assertRefused("price of Pale malt: expected more than 0, found 0", () -> malt(2, "Ash", "0"));
        assertRefused("price of Pale malt: expected more than 0, found -1", () -> malt(2, "Ash", "-1"));
        assertRefused("pack", () -> new Pack(BigDecimal.ZERO, PackUnit.KILOGRAM));
        assertRefused("valid until", () -> malt(2, "Ash", "1", "2026-01-02", "2026-01-01", "0", "0"));
        assertRefused("minimum quantity", () -> malt(2, "Ash", "1", "2026-01-02", "", "-1", "0"));
        assertRefused("delivery", () -> malt(2, "Ash", "1", "2026-01-02", "", "0", "-1"));
        assertRefused("a single line", () -> malt(2, "Ash\nBirch", "1"));
    }

    @Test
    @SuppressWarnings("StringOperationCanBeSimplified") // two equal strings that are not one
    void equal_parts_of_rows_are_held_once() {
        List<PriceRow> rows = PriceList.of(
                        List.of(malt(2, new String("Ash"), "18.00"), malt(3, new String("Ash"), "18.00")))
                .rows();

        assertSame(rows.get(0).supplier(), rows.get(1).supplier());
        assertSame(rows.get(0).price(), rows.get(1).price());
        assertSame(rows.get(0).pack(), rows.get(1).pack());
        assertSame(rows.get(0).validFrom(), rows.get(1).validFrom());
    }

    @Test
    void the_order_of_the_rows_does_not_change_what_is_paid() {
        long seed = Long.getLong("seed", 118L);
        Random random = new Random(seed);
        for (int i = 0; i < Cases.upTo(200); i++) {
            List<PriceRow> rows = new ArrayList<>();
            for (int supplier = 0; supplier < 5; supplier++) {
                for (int minimum = 0; minimum < 3; minimum++) {
                    rows.add(malt(
                            rows.size() + 2,
                            "Supplier " + supplier,
                            BigDecimal.valueOf(1500 + random.nextInt(500), 2).toPlainString(),
                            "2026-01-01",
                            "",
                            String.valueOf(minimum * (1 + random.nextInt(5)) * 100 + minimum),
                            BigDecimal.valueOf(random.nextInt(200), 2).toPlainString()));
                }
            }
            String kg = String.valueOf(random.nextInt(2000));
            PriceList prices = PriceList.of(rows);
            if (!prices.overlaps().isEmpty()) {
                continue;
            }
            UnitPrice before = choose(rows, "2026-05-01", kg).unitPrice();
            Collections.shuffle(rows, random);
            UnitPrice after = choose(rows, "2026-05-01", kg).unitPrice();
            assertEquals(before, after, "seed " + seed + ", case " + i);
        }
    }

    @Test
    void every_row_that_applies_is_chosen_or_passed_over() {
        List<PriceRow> rows = List.of(
                malt(2, "Ash", "18.00"),
                malt(3, "Birch", "18.50"),
                malt(4, "Birch", "17.50", "2026-01-01", "", "100", "0"),
                malt(5, "Cedar", "9.50", "2027-01-01", "", "0", "0"));

        Choice choice = choose(rows, "2026-05-01", "150");

        assertEquals("prices.csv:4", choice.row().origin());
        assertEquals(
                List.of("prices.csv:2", "prices.csv:3"),
                choice.passedOver().stream().map(over -> over.row().origin()).toList());
        assertTrue(choice.findings().isEmpty());
    }

    @Test
    void what_was_asked_before_changes_no_answer() {
        long seed = Long.getLong("seed", 38L);
        Random random = new Random(seed);
        List<PriceRow> rows = new ArrayList<>();
        for (int line = 2; line < 14; line++) {
            String from = "2026-0" + (1 + random.nextInt(9)) + "-01";
            String least = List.of("0", "50", "100").get(random.nextInt(3));
            rows.add(malt(line, "Supplier " + line, (15 + random.nextInt(8)) + ".00", from, "", least, "0"));
        }
        PriceList known = PriceList.of(rows);
        for (int i = 0; i < 2000; i++) {
            String day = "2026-" + (10 + random.nextInt(3)) + "-0" + (1 + random.nextInt(9));
            String earlier = "2026-0" + (1 + random.nextInt(9)) + "-15";
            String asked = random.nextBoolean() ? day : earlier;
            String kg = String.valueOf(random.nextInt(150));
            assertEquals(
                    outcome(PriceList.of(rows), asked, kg),
                    outcome(known, asked, kg),
                    () -> "seed " + seed + ": " + kg + " kg on " + asked);
        }
    }

    private static String outcome(PriceList prices, String day, String kg) {
        try {
            return prices.choose(List.of("Pale malt"), day(day), dec(kg), PackUnit.KILOGRAM, GBP)
                    .toString();
        } catch (NoPriceException none) {
            return none.faults().toString();
        }
    }
}
