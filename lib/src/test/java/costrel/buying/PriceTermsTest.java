package costrel.buying;

import static costrel.cost.Given.GBP;
import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** Invented suppliers; every figure worked on paper from the rule in the test's name. */
class PriceTermsTest {
    private static final CurrencyUnit EUR = CurrencyUnit.EUR;

    private static PriceRow malt(String supplier, String price, CurrencyUnit currency, Optional<PriceVat> vat) {
        return new PriceRow(
                "Pale malt",
                supplier,
                new Pack(dec("25"), PackUnit.KILOGRAM),
                dec(price),
                currency,
                day("2026-01-01"),
                Optional.empty(),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                vat,
                Optional.empty(),
                "prices.csv:" + supplier);
    }

    private static PriceRow malt(String supplier, String price) {
        return malt(supplier, price, GBP, Optional.empty());
    }

    private static Choice choose(PriceTerms terms, PriceRow... rows) {
        return PriceList.of(List.of(rows))
                .with(terms)
                .choose(List.of("Pale malt"), day("2026-05-01"), dec("100"), PackUnit.KILOGRAM, GBP);
    }

    private static PriceTerms adjusted(PriceAdjustment... adjustments) {
        return new PriceTerms(List.of(adjustments), List.of(), ExchangeRates.none());
    }

    private static PriceTerms exchanged(OptionalInt age, ExchangeRate... rates) {
        return new PriceTerms(List.of(), List.of(), new ExchangeRates(List.of(rates), age));
    }

    private static ExchangeRate rate(CurrencyUnit from, CurrencyUnit to, String day, String rate) {
        return new ExchangeRate(from, to, day(day), dec(rate), "exchange.csv:" + day);
    }

    private static PriceAdjustment percent(String name, String supplier, String percent) {
        return PriceAdjustment.percent(
                name,
                supplier,
                Optional.empty(),
                dec(percent),
                day("2026-01-01"),
                Optional.of(day("2026-06-30")),
                "terms.csv:" + name);
    }

    private static PriceAdjustment perKg(String name, String supplier, String amount) {
        return new PriceAdjustment(
                name,
                supplier,
                Optional.of("pale MALT"),
                BigDecimal.ZERO,
                dec(amount),
                Optional.of(PackUnit.KILOGRAM),
                Optional.of(GBP),
                day("2026-01-01"),
                Optional.empty(),
                "terms.csv:" + name);
    }

    @Test
    void a_surcharge_and_a_rebate_count_when_suppliers_are_compared() {
        // Ash: 18.00 × 1.04 / 25 = 0.7488; Birch: 19.00 / 25 − 0.02 = 0.74.
        Choice choice = choose(
                adjusted(percent("energy surcharge", "Ash", "4"), perKg("rebate", "Birch", "-0.02")),
                malt("Ash", "18.00"),
                malt("Birch", "19.00"));

        assertEquals("Birch", choice.row().supplier());
        assertFigure("0.74", choice.unitPrice().value());
        assertFigure("0.7488", choice.passedOver().get(0).unitPrice().value());
        assertEquals(List.of("rebate: less 0.02 GBP per kg (terms.csv:rebate)"), choice.notes());
    }

    @Test
    void a_surcharge_of_yesterday_is_none_today() {
        PriceList prices =
                PriceList.of(List.of(malt("Ash", "18.00"))).with(adjusted(percent("energy surcharge", "Ash", "4")));

        Choice later = prices.choose(List.of("Pale malt"), day("2026-07-01"), dec("100"), PackUnit.KILOGRAM, GBP);
        assertFigure("0.72", later.unitPrice().value());
    }

    @Test
    void two_surcharges_of_one_name_or_rebates_of_everything_are_refused() {
        assertRefused(
                "two surcharges or rebates that both apply on 2026-05-01",
                () -> choose(adjusted(percent("a", "Ash", "4"), percent("A", "Ash", "5")), malt("Ash", "18.00")));
        assertRefused(
                "expected more than 0 after rebates",
                () -> choose(adjusted(perKg("rebate", "Ash", "-0.72")), malt("Ash", "18.00")));
        assertRefused("rebate: expected under 100 %", () -> percent("a", "Ash", "-100"));
        assertRefused("found neither", () -> percent("a", "Ash", "0"));
    }

    /** Value Added Tax Act 1994 s.2(1) has the rate of 20 %; IAS 2.11 leaves out what can be recovered. */
    @Test
    void tax_that_can_be_recovered_is_no_cost_and_tax_that_can_t_is() {
        assertFigure("0.72", vat("21.60", true, true));
        assertFigure("0.72", vat("18.00", false, true));
        assertFigure("0.864", vat("21.60", true, false));
        assertFigure("0.864", vat("18.00", false, false));
    }

    private static BigDecimal vat(String price, boolean included, boolean recoverable) {
        PriceVat tax = new PriceVat(dec("20"), included, recoverable);
        return choose(PriceTerms.none(), malt("Ash", price, GBP, Optional.of(tax)))
                .unitPrice()
                .value();
    }

    @Test
    void tax_that_leaves_no_whole_penny_is_taken_out_exactly() {
        // 10.00 / 1.2 = 8.3333... a sack; 75 kg are three sacks: 25.00 to the penny and no 24.99.
        PriceVat tax = new PriceVat(dec("20"), true, true);
        Choice choice = choose(PriceTerms.none(), malt("Ash", "10.00", GBP, Optional.of(tax)));

        assertFigure("25.00", choice.unitPrice().times(dec("75"), 2));
        assertEquals(List.of("20 % of recoverable tax taken out of the price"), choice.notes());
    }

    @Test
    void a_price_in_euro_is_turned_at_the_newest_rate_on_or_before_the_day() {
        PriceTerms terms = exchanged(
                OptionalInt.of(7),
                rate(EUR, GBP, "2026-04-24", "0.90"),
                rate(EUR, GBP, "2026-04-30", "0.86"),
                rate(EUR, GBP, "2026-05-02", "0.10"));

        // 20.00 × 0.86 / 25 = 0.688.
        Choice choice = choose(terms, malt("Ash", "18.00"), malt("Esche", "20.00", EUR, Optional.empty()));

        assertEquals("Esche", choice.row().supplier());
        assertFigure("0.688", choice.unitPrice().value());
        assertEquals(List.of("1 EUR = 0.86 GBP of 2026-04-30 (exchange.csv:2026-04-30)"), choice.notes());
    }

    @Test
    void a_rate_that_is_quoted_the_other_way_round_is_divided_by() {
        PriceTerms terms = exchanged(OptionalInt.empty(), rate(GBP, EUR, "2026-04-30", "1.25"));

        Choice choice = choose(terms, malt("Esche", "20.00", EUR, Optional.empty()));
        assertFigure("0.64", choice.unitPrice().value());
    }

    @Test
    void a_hole_in_the_rates_of_exchange_is_refused_with_what_to_supply() {
        PriceRow euro = malt("Esche", "20.00", EUR, Optional.empty());
        assertRefused(
                "none on or before 2026-05-01; the first is of 2026-05-02; supply the rate of 2026-05-01",
                () -> choose(exchanged(OptionalInt.empty(), rate(EUR, GBP, "2026-05-02", "0.86")), euro));
        assertRefused(
                "is of 2026-04-20 (exchange.csv:2026-04-20), 11 days old; expected no more than 7 days",
                () -> choose(exchanged(OptionalInt.of(7), rate(EUR, GBP, "2026-04-20", "0.86")), euro));
        assertRefused(
                "from EUR to GBP: none on or before 2026-05-01",
                () -> choose(exchanged(OptionalInt.empty(), rate(EUR, CurrencyUnit.USD, "2026-04-20", "1.1")), euro));
        assertRefused(
                "found another in",
                () -> exchanged(
                        OptionalInt.empty(),
                        rate(EUR, GBP, "2026-04-20", "0.86"),
                        rate(EUR, GBP, "2026-04-20", "0.87")));
        assertRefused("expected two currencies", () -> rate(EUR, EUR, "2026-04-20", "1"));
        assertRefused("expected more than 0", () -> rate(EUR, GBP, "2026-04-20", "0"));
    }

    @Test
    void quantity_breaks_that_make_more_dearer_are_told() {
        PriceRow sack = malt("Ash", "17.00");
        PriceRow tonne = new PriceRow(
                "Pale malt",
                "Ash",
                new Pack(dec("25"), PackUnit.KILOGRAM),
                dec("18.00"),
                GBP,
                day("2026-03-01"),
                Optional.empty(),
                dec("1000"),
                BigDecimal.ZERO,
                "prices.csv:9");

        assertEquals(
                List.of("Pale malt from Ash: the price for 1000 kg or more (prices.csv:9) is dearer than that for less"
                        + " (prices.csv:Ash)"),
                PriceList.of(List.of(tonne, sack)).breaksOutOfOrder().stream()
                        .map(PriceList.Break::text)
                        .toList());
        assertTrue(PriceList.of(List.of(tonne, by("2000", "10.00", "0")))
                .breaksOutOfOrder()
                .isEmpty());
        assertFalse(PriceList.of(List.of(tonne, by("1000", "10.00", "0")))
                .breaksOutOfOrder()
                .isEmpty());
        assertTrue(PriceList.of(List.of(sack, malt("Birch", "19.00")))
                .breaksOutOfOrder()
                .isEmpty());
    }

    private static PriceRow by(String kilograms, String price, String least) {
        return new PriceRow(
                "Pale malt",
                "Ash",
                new Pack(dec(kilograms), PackUnit.KILOGRAM),
                dec(price),
                GBP,
                day("2026-03-01"),
                Optional.empty(),
                dec(least),
                BigDecimal.ZERO,
                "prices.csv:" + kilograms);
    }
}
