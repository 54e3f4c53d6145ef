package costrel.buying;

import static costrel.cost.Given.GBP;
import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** Terms and prices at the very limits that their descriptions state; invented suppliers, every figure worked on paper. */
class LimitsOfTermsTest {
    private static final CurrencyUnit EUR = CurrencyUnit.EUR;

    private static PriceRow malt(String supplier, CurrencyUnit currency, Optional<PriceVat> vat, String until) {
        return new PriceRow(
                "Pale malt",
                supplier,
                new Pack(dec("25"), PackUnit.KILOGRAM),
                dec("20.00"),
                currency,
                day("2026-01-01"),
                Optional.of(day(until)),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                vat,
                Optional.empty(),
                "prices.csv:2");
    }

    private static Choice choose(PriceTerms terms, CurrencyUnit currency, Optional<PriceVat> vat) {
        return PriceList.of(List.of(malt("Ash", currency, vat, "2026-12-31")))
                .with(terms)
                .choose(List.of("Pale malt"), day("2026-05-01"), dec("100"), PackUnit.KILOGRAM, GBP);
    }

    private static PriceTerms exchanged(OptionalInt age, ExchangeRate... rates) {
        return new PriceTerms(List.of(), List.of(), new ExchangeRates(List.of(rates), age));
    }

    private static ExchangeRate rate(CurrencyUnit from, CurrencyUnit to, String day, String rate) {
        return new ExchangeRate(from, to, day(day), dec(rate), "exchange.csv:" + day);
    }

    private static Carriage carriage(String from, String until) {
        return new Carriage(
                "Ash", dec("45"), GBP, Optional.empty(), day(from), Optional.of(day(until)), "carriage.csv:2");
    }

    @Test
    void carriage_is_charged_from_its_first_day_to_its_last() {
        Carriage carriage = carriage("2026-02-01", "2026-02-28");

        assertTrue(carriage.holdsOn(day("2026-02-01")) && carriage.holdsOn(day("2026-02-28")));
        assertFalse(carriage.holdsOn(day("2026-01-31")) || carriage.holdsOn(day("2026-03-01")));
        assertRefused(
                "carriage.csv:2: carriage of Ash: valid until: expected a day not before 2026-02-01",
                () -> carriage("2026-02-01", "2026-01-31"));
    }

    @Test
    void a_rate_of_exchange_may_be_as_old_as_is_stated() {
        // 20.00 × 0.86 / 25
        assertFigure(
                "0.688",
                choose(exchanged(OptionalInt.of(7), rate(EUR, GBP, "2026-04-24", "0.86")), EUR, Optional.empty())
                        .unitPrice()
                        .value());
        assertFigure(
                "0.688",
                choose(exchanged(OptionalInt.of(0), rate(EUR, GBP, "2026-05-01", "0.86")), EUR, Optional.empty())
                        .unitPrice()
                        .value());
        assertRefused(
                "8 days old; expected no more than 7 days",
                () -> choose(
                        exchanged(OptionalInt.of(7), rate(EUR, GBP, "2026-04-23", "0.86")), EUR, Optional.empty()));
        assertRefused("expected 0 days or more, found -1", () -> exchanged(OptionalInt.of(-1)));
    }

    @Test
    void the_first_rate_of_a_pair_is_named_whichever_way_it_is_quoted() {
        PriceTerms terms = exchanged(
                OptionalInt.empty(),
                rate(GBP, CurrencyUnit.USD, "2026-05-02", "1.3"),
                rate(EUR, CurrencyUnit.USD, "2026-05-02", "1.1"),
                rate(GBP, EUR, "2026-05-04", "1.16"),
                rate(EUR, GBP, "2026-05-05", "0.86"));

        assertRefused(
                "from EUR to GBP: none on or before 2026-05-01; the first is of 2026-05-04; supply",
                () -> choose(terms, EUR, Optional.empty()));
        assertRefused(
                "from EUR to GBP: none on or before 2026-05-01; supply",
                () -> choose(
                        exchanged(OptionalInt.empty(), rate(EUR, CurrencyUnit.USD, "2026-05-02", "1.1")),
                        EUR,
                        Optional.empty()));
    }

    @Test
    void where_a_row_stands_is_a_file_and_a_line() {
        assertEquals(new Origin("prices.csv", 7), Origin.of("prices.csv:7"));
        assertEquals(new Origin("a:b", 123456789), Origin.of("a:b:123456789"));
        assertEquals(new Origin("", 7), Origin.of(":7"));
        for (String file : List.of("prices.csv", "7", "prices.csv:", "prices.csv:07", "prices.csv:1234567890")) {
            assertEquals(new Origin(file, 0), Origin.of(file));
            assertEquals(file, Origin.of(file).text());
        }
        assertRefused("line of prices.csv: expected 0 or more, found -1", () -> new Origin("prices.csv", -1));
    }

    @Test
    void a_pack_is_written_as_in_the_list() {
        assertEquals("25 kg", new Pack(dec("25.0"), PackUnit.KILOGRAM).text());
        assertRefused("pack: expected more than 0 L, found 0", () -> new Pack(dec("0"), PackUnit.LITRE));
    }

    private static String note(String percent, String perUnit) {
        boolean byUnit = !perUnit.equals("0");
        return new PriceAdjustment(
                        "energy",
                        "Ash",
                        Optional.empty(),
                        dec(percent),
                        dec(perUnit),
                        Optional.of(PackUnit.KILOGRAM).filter(unit -> byUnit),
                        Optional.of(GBP).filter(currency -> byUnit),
                        day("2026-01-01"),
                        Optional.of(day("2026-01-01")),
                        "terms.csv:3")
                .note();
    }

    @Test
    void a_surcharge_is_more_and_a_rebate_is_less() {
        assertEquals("energy: plus 4 % (terms.csv:3)", note("4", "0"));
        assertEquals("energy: less 4 % (terms.csv:3)", note("-4", "0"));
        assertEquals("energy: plus 0.02 GBP per kg (terms.csv:3)", note("0", "0.02"));
        assertEquals("energy: less 0.02 GBP per kg (terms.csv:3)", note("0", "-0.02"));
        assertRefused("expected either per cent or an amount per unit, found both", () -> note("4", "0.02"));
        assertRefused("rebate: expected under 100 %, found 100", () -> note("-100", "0"));
        assertEquals("energy: less 99.9 % (terms.csv:3)", note("-99.9", "0"));
    }

    @Test
    void a_surcharge_that_ends_before_it_begins_is_refused() {
        assertRefused(
                "terms.csv:3: energy: valid until: expected a day not before 2026-01-02",
                () -> PriceAdjustment.percent(
                        "energy",
                        "Ash",
                        Optional.empty(),
                        dec("4"),
                        day("2026-01-02"),
                        Optional.of(day("2026-01-01")),
                        "terms.csv:3"));
    }

    @Test
    void what_is_done_with_the_tax_is_told_and_nothing_where_nothing_is() {
        assertEquals(
                List.of("with 20 % of tax that can't be recovered"),
                choose(PriceTerms.none(), GBP, Optional.of(new PriceVat(dec("20"), true, false)))
                        .notes());
        assertEquals(
                List.of("20 % of tax that can't be recovered added"),
                choose(PriceTerms.none(), GBP, Optional.of(new PriceVat(dec("20"), false, false)))
                        .notes());
        assertEquals(
                List.of(),
                choose(PriceTerms.none(), GBP, Optional.of(new PriceVat(dec("20"), false, true)))
                        .notes());
    }

    @Test
    void a_row_that_cannot_be_is_refused_by_its_item_and_unit() {
        assertRefused(
                "price of Pale malt: supplier: expected a name", () -> malt(" ", GBP, Optional.empty(), "2026-12-31"));
        assertRefused(
                "price of Pale malt: valid until: expected a day not before 2026-01-01, found 2025-12-31",
                () -> malt("Ash", GBP, Optional.empty(), "2025-12-31"));
        assertRefused("price of Pale malt: minimum quantity: expected 0 kg or more, found -1", () -> order("-1", "1"));
        assertRefused("price of Pale malt: contract quantity: expected more than 0 kg", () -> order("0", "0"));
    }

    private static PriceRow order(String minimum, String contract) {
        return new PriceRow(
                "Pale malt",
                "Ash",
                new Pack(dec("25"), PackUnit.KILOGRAM),
                dec("20.00"),
                GBP,
                day("2026-01-01"),
                Optional.empty(),
                dec(minimum),
                BigDecimal.ZERO,
                Optional.empty(),
                Optional.of(dec(contract)),
                "prices.csv:2");
    }

    @Test
    void a_price_per_unit_is_the_same_however_much_it_is_printed_for() {
        UnitPrice sack = new UnitPrice(dec("25.00"), dec("50"), "kg");
        UnitPrice kilogram = new UnitPrice(dec("0.5"), BigDecimal.ONE, "kg");

        assertEquals(sack, kilogram);
        assertEquals(sack.hashCode(), kilogram.hashCode());
        assertNotEquals(sack, new UnitPrice(dec("0.5"), BigDecimal.ONE, "L"));
        assertNotEquals(sack, new UnitPrice(dec("0.51"), BigDecimal.ONE, "kg"));
        assertNotEquals(sack, (Object) "0.5");
        assertRefused(
                "unit price: content: expected more than 0 kg, found 0",
                () -> new UnitPrice(BigDecimal.ONE, BigDecimal.ZERO, "kg"));
    }

    @Test
    void prices_that_differ_are_seldom_looked_for_in_one_place() {
        List<UnitPrice> prices = new ArrayList<>();
        Set<Integer> places = new HashSet<>();
        for (String unit : List.of("kg", "L", "each")) {
            for (int pence = 1; pence <= 100; pence++) {
                prices.add(new UnitPrice(BigDecimal.valueOf(pence, 2), BigDecimal.ONE, unit));
            }
        }
        prices.forEach(price -> places.add(price.hashCode()));
        assertTrue(places.size() > prices.size() / 2, "places: " + places.size());
    }
}
