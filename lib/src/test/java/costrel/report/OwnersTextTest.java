package costrel.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.brewery.Brew;
import costrel.brewery.Brewery;
import costrel.brewery.PricedRange;
import costrel.brewery.RiskStudy;
import costrel.brewery.SellingPrices;
import costrel.brewery.WhyItMoved;
import costrel.pricing.Driver;
import costrel.pricing.Spread;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What an owner reads: money as it is written, every sheet with its care, spreads and methods by name. */
class OwnersTextTest {

    private static final Brewery LANTERNFOLD = Brewery.open(Path.of("../samples/lanternfold"));
    private static final Brew BITTER =
            LANTERNFOLD.brew("Wickgate Bitter").on("Main").length("30 brl").day("2026-11-25");

    /** The decimals of a currency are those of ISO 4217: two for pounds, euros and dollars, none for yen. */
    @Test
    void money_is_written_as_its_currency_has_it() {
        assertEquals("£95.00", MoneyWords.said(Money.parse("GBP 95")));
        assertEquals("-£0.50", MoneyWords.said(Money.parse("GBP -0.50")));
        assertEquals("€95.00", MoneyWords.said(Money.parse("EUR 95")));
        assertEquals("95.00 USD", MoneyWords.said(Money.parse("USD 95")));
        assertEquals("95 JPY", MoneyWords.said(CurrencyUnit.JPY, new BigDecimal("94.5")));
        assertEquals("pence", MoneyWords.coins(CurrencyUnit.GBP));
        assertEquals("cents", MoneyWords.coins(CurrencyUnit.USD));
        assertEquals("0.01 CHF", MoneyWords.coins(CurrencyUnit.CHF));
        assertEquals("JPY", MoneyWords.coins(CurrencyUnit.JPY));
        assertEquals("48.50", MoneyWords.coinsOf(CurrencyUnit.GBP, new BigDecimal("0.48495")));
        assertEquals("12.5 %", MoneyWords.stated(new BigDecimal("0.125")));
        assertEquals("10 %", MoneyWords.stated(new BigDecimal("0.1")));
    }

    @Test
    void no_price_is_shown_without_the_care_to_take() {
        SellingPrices prices = BITTER.pricing().margin("55 %");
        for (String text : List.of(
                PricingText.of(prices),
                PricingText.of(prices.pub("60 %")),
                PricingText.of(prices.breakEven("firkin", "£95.00", "£48000", "£6000")),
                PricingText.of(prices.discounts("firkin", "£95.00", "10: 5 %")),
                StrengthText.of(prices.losses()),
                StrengthText.of(prices.strengths("3.0 %", "4.0 %", "0.5 %")),
                ComparisonText.of(WhyItMoved.between(LANTERNFOLD, prices.sheet(), prices.sheet())),
                RiskText.of(BITTER.risk().price("hops", "10 %").draws(100)),
                RangeText.of(PricedRange.of(LANTERNFOLD, LocalDate.of(2026, 11, 25))))) {
            assertTrue(text.replaceAll("\\s+", " ").contains("no duty return and no tax advice"), text);
            assertFalse(text.contains("null"), text);
        }
    }

    /** 48000 / 65.25618 = 735.56 and 54000 / 65.25618 = 827.51, from the contribution of a firkin at £95.00. */
    @Test
    void break_even_reads_as_a_sentence() {
        SellingPrices prices = BITTER.pricing();
        assertTrue(PricingText.of(prices.breakEven("firkin", "£95.00", "£48000"))
                .startsWith("Wickgate Bitter, firkin at £95.00: 736 of them pay for £48000.00\n"));
        assertTrue(PricingText.of(prices.breakEven("firkin", "£95.00", "£48000", "£6000"))
                .startsWith("Wickgate Bitter, firkin at £95.00: 828 of them pay for £48000.00 and leave £6000.00\n"));
    }

    @Test
    void a_step_of_duty_is_told_in_words_where_it_is() {
        List<String> steps = StrengthText.of(BITTER.pricing().strengths("3.0 %", "4.0 %", "0.5 %"))
                .lines()
                .filter(line -> line.contains("a step:"))
                .toList();
        assertEquals(1, steps.size());
        assertTrue(steps.get(0).strip().startsWith("3.5 "), steps.get(0));
    }

    @Test
    void a_comparison_names_its_method_and_sources() {
        String text = ComparisonText.of(
                        WhyItMoved.between(LANTERNFOLD, BITTER.day("2026-04-14").cost(), BITTER.cost()))
                .replaceAll("\\s+", " ");
        for (String word : List.of("Shapley 1953", "Sun 1998", "Bennet 1920", "by price", "by usage")) {
            assertTrue(text.contains(word), word);
        }
    }

    @Test
    void a_study_names_its_distributions() {
        RiskStudy study = BITTER.risk()
                .price("mashed goods", "10 %")
                .efficiency("2 %")
                .loss("1 %")
                .with(Driver.price("house yeast", 1, new Spread.Uniform(0.9, 1.1)))
                .with(Driver.price("shive", 1, new Spread.Triangular(0.8, 1, 1.5)))
                .correlated("shive", "house yeast", 0.25)
                .target("firkin", "£95.00", "30 %")
                .draws(500)
                .seed(7);
        String text = RiskText.of(study);
        for (String words : List.of(
                "Wickgate Bitter, firkin: what a pint may come to cost, 500 draws with seed 7",
                "lognormal about the sheet's, standard deviation of the logarithm 10.0 %",
                "normal, mean",
                "lognormal, median",
                "uniform from 0.9 to 1.1 against 1",
                "triangular, least 0.8, likeliest 1, most 1.5 against 1",
                "together: price of shive and price of house yeast, correlation 0.25",
                "leaves less than 30 % margin: 0.0 %")) {
            assertTrue(text.contains(words), words + " in\n" + text);
        }
        assertEquals(text, RiskText.of(study));
    }
}
