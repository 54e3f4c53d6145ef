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
import costrel.cost.ContainerCost;
import costrel.cost.CostSheet;
import costrel.harvest.HarvestPlan;
import costrel.pricing.Comparison;
import costrel.pricing.ListPrice;
import costrel.pricing.RiskResult;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CostSheetHtmlTest {

    private static final double LAST_OF_34_DIGITS = 1e-28;
    private static final double HUNDREDTH = 0.005 + 1e-9;

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Brewery LANTERNFOLD = Brewery.open(Path.of("../samples/lanternfold"));
    private static final Picture PICTURE = Picture.ofSvg(
            "pint", "A pint's price", "Where it goes", "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\"></svg>");

    private static Brew brew(String beer) {
        return LANTERNFOLD.brew(beer).on("Main").length("24 brl").day(DAY);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Tallow Mild", "Wickgate Bitter", "Haymoth Golden", "Oatlamp Stout", "Trimwick Pale"})
    void a_pint_is_split_without_remainder(String beer) {
        SellingPrices prices = brew(beer).pricing().margin("35 %");
        CostSheet sheet = prices.sheet();
        close(sheet.unroundedPerPint(), PintSplit.of(sheet).perPint());
        List<PintSplit> splits = PintSplit.of(prices);
        assertEquals(sheet.containers().size(), splits.size());
        for (int i = 0; i < splits.size(); i++) {
            ContainerCost container = sheet.containers().get(i);
            BigDecimal net = prices.price(container).orElseThrow().perPint();
            PintSplit split = splits.get(i);
            close(net.multiply(new BigDecimal("1.2")), split.perPint());
            BigDecimal cost = split.parts().stream()
                    .filter(part -> part.kind() != PintSplit.Kind.MARGIN && part.kind() != PintSplit.Kind.VAT)
                    .map(PintSplit.Part::perPint)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            close(container.unroundedPerPint(), cost);
            assertEquals(split.pencePerPint(), split.pence().stream().reduce(BigDecimal.ZERO, BigDecimal::add));
        }
    }

    private static void close(BigDecimal expected, BigDecimal found) {
        assertTrue(expected.subtract(found).abs().doubleValue() <= LAST_OF_34_DIGITS, expected + " against " + found);
    }

    @Test
    void the_figures_on_the_sheet_are_those_of_the_cost_sheet_and_add_up() {
        SellingPrices prices = brew("Wickgate Bitter").pricing().at("firkin", "£86.00");
        CostSheet sheet = prices.sheet();
        Page page = new Page(CostSheetHtml.of(prices, List.of(PICTURE)));
        page.wellFormed();
        assertEquals(sheet.total().getAmount(), new BigDecimal(page.figure("total")));
        assertEquals(sheet.pencePerPint(), new BigDecimal(page.figure("total.pint")));
        assertEquals(sheet.total().getAmount(), sum(page, "group\\.[a-z_]+"));
        assertEquals(sheet.gyleCost().getAmount(), sum(page, "gyle\\.\\d+"));
        for (int i = 0; i < sheet.containers().size(); i++) {
            String key = "container." + i;
            assertEquals(
                    new BigDecimal(page.figure(key + ".total")),
                    sum(page, key.replace(".", "\\.") + "\\.(gyle|packaging|duty)"));
        }
        assertEquals(new BigDecimal(page.figure("pint.0.all")), sum(page, "pint\\.0\\.(?!all)\\w+"));
        assertTrue(page.html().contains("<svg"));
        assertTrue(page.html().contains("no duty return and no tax advice"));
        new Page(CostSheetHtml.of(sheet, List.of())).wellFormed();
    }

    private static BigDecimal sum(Page page, String keys) {
        return page.figures().entrySet().stream()
                .filter(entry -> entry.getKey().matches(keys))
                .map(Map.Entry::getValue)
                .flatMap(List::stream)
                .filter(figure -> !figure.isEmpty())
                .map(BigDecimal::new)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** VAT by hand: a fifth of the price, to the penny, halves up. */
    @Test
    void the_price_list_shows_prices_and_no_cost() {
        Page page = new Page(PriceListHtml.of(LANTERNFOLD, DAY));
        page.wellFormed();
        for (int i = 0; i < LANTERNFOLD.listPrices().size(); i++) {
            ListPrice line = LANTERNFOLD.listPrices().get(i);
            BigDecimal net = line.price().getAmount();
            BigDecimal vat = net.divide(new BigDecimal(5), 2, RoundingMode.HALF_UP);
            assertEquals(net, new BigDecimal(page.figure("price." + i)));
            assertEquals(vat, new BigDecimal(page.figure("price." + i + ".vat")));
            assertEquals(net.add(vat), new BigDecimal(page.figure("price." + i + ".all")));
            assertTrue(page.figure("price." + i + ".allergens").contains("barley"));
        }
        for (String word : List.of("cost", "margin", "contribution")) {
            assertFalse(page.html().split("</style>", -1)[1].contains(word), word);
        }
    }

    @Test
    void a_comparison_on_paper_runs_from_before_to_after() {
        Comparison comparison = WhyItMoved.between(
                LANTERNFOLD,
                brew("Wickgate Bitter").day("2026-04-14").cost(),
                brew("Wickgate Bitter").cost());
        Page page = new Page(StudyHtml.of(comparison, List.of(PICTURE)));
        page.wellFormed();
        assertEquals(comparison.after().pencePerPint(), new BigDecimal(page.figure("after")));
        assertEquals(
                comparison.after().pencePerPint(),
                new BigDecimal(page.figure("before")).add(sum(page, "effect\\.[a-z_]+")));
        String text = ChartText.of(comparison);
        assertTrue(text.contains(comparison.before().pencePerPint().toPlainString()), text);
        assertTrue(text.contains("█"), text);
    }

    @Test
    void a_study_of_risk_on_paper_has_the_figures_of_the_draws() {
        RiskStudy study =
                brew("Wickgate Bitter").risk().price("mashed goods", "10 %").draws(1000);
        RiskResult result = study.result();
        Page page = new Page(StudyHtml.of(study, result, List.of()));
        page.wellFormed();
        assertEquals(result.p10PerPint() * 100, page.number("p10"), HUNDREDTH);
        assertEquals(result.p90PerPint() * 100, page.number("p90"), HUNDREDTH);
        assertTrue(ChartText.of(study, result).contains(page.figure("p50")));
    }

    @Test
    void a_harvest_on_paper_uses_what_its_plan_uses() {
        HarvestPlan plan = LANTERNFOLD
                .harvest()
                .between(LocalDate.of(2026, 12, 1), LocalDate.of(2027, 2, 10))
                .plan();
        Page page = new Page(StudyHtml.of(plan, List.of()));
        page.wellFormed();
        HopMonths use = HopMonths.of(plan);
        assertEquals(3, use.months().size());
        for (HarvestPlan.LotUse lot : plan.lots()) {
            if (lot.weighedKg() > 0) {
                assertEquals(lot.weighedKg(), page.number("lot." + lot.lot()), HUNDREDTH);
            }
        }
        assertEquals(
                3, ChartText.of(plan).lines().filter(line -> line.contains("█")).count());
    }

    @Test
    void a_range_on_paper_has_a_row_for_each_beer_and_container() {
        Page page = new Page(StudyHtml.of(PricedRange.of(LANTERNFOLD, DAY), List.of()));
        page.wellFormed();
        assertEquals(
                LANTERNFOLD.listPrices().size(),
                page.figures().keySet().stream()
                        .filter(key -> key.matches("range\\.\\d+\\.cost"))
                        .count());
        assertTrue(page.html().contains("Not for customers"));
    }

    /** Forty characters for the largest, eighths below, shaded below 0. */
    @Test
    void a_bar_is_as_long_as_its_figure() {
        assertEquals("█".repeat(40), ChartText.bar(8, 8));
        assertEquals("█".repeat(20), ChartText.bar(4, 8));
        assertEquals("▌", ChartText.bar(0.1, 8));
        assertEquals("░".repeat(10), ChartText.bar(-2, 8));
        assertEquals("", ChartText.bar(1, 0));
    }
}
