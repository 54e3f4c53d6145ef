package costrel.pricing;

import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.cell;
import static costrel.cost.Given.dec;
import static costrel.cost.Given.figure;
import static costrel.pricing.Given.GBP;
import static costrel.pricing.Given.gbp;
import static org.junit.jupiter.api.Assertions.assertEquals;

import costrel.ReferenceTable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The pub's side of a price, and volumes that pay. */
class PubPriceTest {
    private static final BigDecimal VAT = dec("0.20");

    private static BigDecimal places(BigDecimal value, int places) {
        return value.setScale(places, RoundingMode.HALF_UP);
    }

    /** Hand-worked trade arithmetic: see the table. Three more pints or fewer move the gross profit. */
    @Test
    void a_pump_price_leaves_the_gross_profit_of_the_table() {
        for (Map<String, String> row : ReferenceTable.read("pricing/gross_profit_examples.csv")) {
            PubPrice pub = PubPrice.atPumpPrice(
                    Money.of(GBP, figure(row, "cask_cost_ex_VAT")),
                    figure(row, "pints"),
                    Money.of(GBP, figure(row, "pint_price_incl_VAT")),
                    VAT);
            assertFigure(cell(row, "cost_per_pint"), places(pub.costPerPint(), 4));
            assertFigure(cell(row, "computed_GP_pct"), places(pub.grossProfit().movePointRight(2), 3));
            assertFigure(cell(row, "computed_GP_per_pint"), places(pub.grossProfitPerPint(), 4));
        }
    }

    /** 3.20 / 1.2 = 2.67; 60 / 70 = 0.86; 1.81 between: the trade's example rounded for reading. */
    @Test
    void the_example_reads_to_the_penny_from_unrounded_figures() {
        PubPrice pub = PubPrice.atPumpPrice(gbp("60.00"), dec("70"), gbp("3.20"), VAT);
        assertFigure("2.67", places(pub.netPerPint(), 2));
        assertFigure("0.86", places(pub.costPerPint(), 2));
        assertFigure("1.81", places(pub.grossProfitPerPint(), 2));
        assertFigure("67.9", places(pub.grossProfit().movePointRight(2), 1));
        assertFigure("67.391", places(pub.sold(dec("69")).grossProfit().movePointRight(2), 3));
    }

    /** The multipliers of the trade at 20 %: a cask of 10,000 pints at 1.00 each, so that no digit is lost. */
    @Test
    void a_gross_profit_has_its_multiplier() {
        for (Map<String, String> row : ReferenceTable.read("pricing/gross_profit_multiplier.csv")) {
            PubPrice pub = PubPrice.atGrossProfit(
                    gbp("10000.00"), dec("10000"), figure(row, "GP_pct").movePointLeft(2), VAT);
            assertFigure(cell(row, "computed_multiplier"), places(pub.unroundedPump(), 4));
            assertEquals(Money.of(GBP, figure(row, "computed_multiplier"), RoundingMode.HALF_UP), pub.pump());
        }
    }

    /** 1.00 / 0.4 × 1.2 = 3.00, by hand. */
    @Test
    void a_pint_of_a_pound_at_sixty_per_cent_is_three_pounds() {
        PubPrice pub = PubPrice.atGrossProfit(gbp("70.00"), dec("70"), dec("0.60"), VAT);
        assertEquals(gbp("3.00"), pub.pump());
        assertFigure("0.6", pub.grossProfit());
        assertEquals(gbp("70.00"), PubPrice.containerPriceFor(gbp("3.00"), dec("70"), dec("0.60"), VAT));
    }

    /** Fractions of value added tax: HM Revenue & Customs, VAT guide (Notice 700). */
    @Test
    void the_tax_in_a_price_is_its_fraction() {
        for (Map<String, String> row : ReferenceTable.read("pricing/vat_fractions.csv")) {
            PubPrice pub = PubPrice.atPumpPrice(
                    gbp("1.00"),
                    BigDecimal.ONE,
                    Money.of(GBP, figure(row, "gross")),
                    figure(row, "rate_pct").movePointLeft(2));
            assertFigure(cell(row, "vat"), pub.vatPerPint());
            assertFigure(cell(row, "net"), pub.netPerPint());
        }
    }

    @Test
    void a_pub_price_without_sense_is_refused() {
        assertRefused(
                "gross profit: expected under 1",
                () -> PubPrice.atGrossProfit(gbp("60.00"), dec("70"), BigDecimal.ONE, VAT));
        assertRefused("saleable pints", () -> PubPrice.atGrossProfit(gbp("60.00"), BigDecimal.ZERO, dec("0.6"), VAT));
        assertRefused("value added tax", () -> PubPrice.atPumpPrice(gbp("60.00"), dec("70"), gbp("3.20"), dec("-0.2")));
    }

    /** The formula of any primer of cost accounting, fixed / (price - variable), by hand; the second has 133.33 rounded up. */
    @Test
    void break_even_is_rounded_up_to_whole_containers() {
        assertEquals(
                1600,
                BreakEven.of(dec("75"), dec("45"), dec("48000")).containers().intValueExact());
        BreakEven second = BreakEven.of(dec("400"), dec("250"), dec("20000"));
        assertFigure("150", second.contribution());
        assertEquals(134, second.containers().intValueExact());
        // (48000 + 6000) / 30 = 1800; one pound more takes one more.
        assertEquals(
                1800,
                BreakEven.withProfit(dec("75"), dec("45"), dec("48000"), dec("6000"))
                        .containers()
                        .intValueExact());
        assertEquals(
                1801,
                BreakEven.withProfit(dec("75"), dec("45"), dec("48000"), dec("6001"))
                        .containers()
                        .intValueExact());
        assertEquals(
                0,
                BreakEven.of(dec("75"), dec("45"), BigDecimal.ZERO).containers().intValueExact());
    }

    @Test
    void no_volume_pays_for_a_price_that_leaves_nothing() {
        assertRefused("over the variable cost", () -> BreakEven.of(dec("45"), dec("45"), dec("1")));
        assertRefused("fixed cost", () -> BreakEven.of(dec("46"), dec("45"), dec("-1")));
        assertRefused("profit wanted", () -> BreakEven.withProfit(dec("46"), dec("45"), dec("1"), dec("-1")));
    }
}
