package costrel.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.brewery.PricedRange;
import costrel.brewery.SellingPrices;
import costrel.cost.ContainerCost;
import costrel.cost.CostSheet;
import costrel.pricing.Price;
import costrel.scaling.Gyle;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a program reads is what the library says, to the digits that are printed. */
class SheetValuesTest {

    private static BigDecimal fact(Sheet sheet, String key) {
        return sheet.facts().stream()
                .filter(fact -> fact.key().equals(key))
                .findFirst()
                .flatMap(fact -> fact.value().number())
                .orElseThrow(() -> new AssertionError(sheet.kind() + " has no figure " + key));
    }

    private static Table table(Sheet sheet, String key) {
        return sheet.tables().stream()
                .filter(table -> table.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError(sheet.kind() + " has no table " + key));
    }

    private static BigDecimal at(Table table, int row, String key) {
        List<String> keys = table.columns().stream().map(Column::key).toList();
        return table.rows().get(row).cells().get(keys.indexOf(key)).number().orElseThrow();
    }

    /** Half a unit of the last digit that is printed. */
    private static void printed(double value, BigDecimal figure) {
        assertEquals(value, figure.doubleValue(), 0.5000001 * figure.ulp().doubleValue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Tallow Mild", "Wickgate Bitter", "Haymoth Golden", "Oatlamp Stout", "Snuffer Strong"})
    void a_gyle(String beer) {
        Gyle gyle = LanternfoldSheets.brew(beer).gyle();
        Sheet sheet = GyleText.sheet(gyle);
        printed(1 + gyle.og().excessDegrees() / 1000, fact(sheet, "og"));
        printed(gyle.bitterness().ebu(), fact(sheet, "ebu"));
        printed(gyle.mashEfficiency() * 100, fact(sheet, "mashEfficiency"));
        Table grist = table(sheet, "grist");
        for (int i = 0; i < gyle.grist().size(); i++) {
            printed(gyle.grist().get(i).kg(), at(grist, i, "weight"));
            printed(gyle.grist().get(i).weighedKg(), at(grist, i, "weighOut"));
        }
        Table hops = table(sheet, "hops");
        for (int i = 0; i < gyle.hops().size(); i++) {
            printed(gyle.hops().get(i).kg(), at(hops, i, "weight"));
            printed(gyle.hops().get(i).ebu(), at(hops, i, "ebu"));
            printed(gyle.hops().get(i).gramsPerHl(), at(hops, i, "dose"));
        }
        assertEquals("kg", grist.columns().get(1).unit());
        assertEquals("g/hL", hops.columns().get(6).unit());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Tallow Mild", "Wickgate Bitter", "Haymoth Golden", "Oatlamp Stout", "Snuffer Strong"})
    void a_cost_sheet(String beer) {
        CostSheet cost = LanternfoldSheets.brew(beer).cost();
        Sheet sheet = CostText.sheet(cost);
        Table gyle = table(sheet, "gyle");
        for (int i = 0; i < cost.gyleLines().size(); i++) {
            assertEquals(cost.gyleLines().get(i).value().getAmount(), at(gyle, i, "cost"));
        }
        assertEquals(cost.gyleCost().getAmount(), at(gyle, cost.gyleLines().size(), "cost"));
        Table containers = table(sheet, "containers");
        for (int i = 0; i < cost.containers().size(); i++) {
            ContainerCost container = cost.containers().get(i);
            assertEquals(container.pencePerPint(), at(containers, i, "perPint"));
            assertEquals(container.duty().duty().getAmount(), at(containers, i, "duty"));
            assertEquals(container.count(), at(containers, i, "filled").intValueExact());
        }
        assertEquals(cost.pencePerPint(), at(containers, cost.containers().size(), "perPint"));
        assertEquals(cost.total().getAmount(), at(containers, cost.containers().size(), "total"));
        assertEquals(List.of("GBP"), List.of(containers.columns().get(2).unit()));
    }

    @Test
    void prices_and_a_range() {
        SellingPrices prices = LanternfoldSheets.brew("Trimwick Pale").pricing().margin("55 %");
        Table table = table(PricingText.sheet(prices), "prices");
        for (int i = 0; i < table.rows().size(); i++) {
            Price price = prices.price(prices.sheet().containers().get(i)).orElseThrow();
            assertEquals(price.net().getAmount(), at(table, i, "price"));
            printed(price.margin().doubleValue() * 100, at(table, i, "margin"));
        }
        PricedRange range = PricedRange.of(LanternfoldSheets.BREWERY, LanternfoldSheets.DAY);
        Table year = table(RangeText.sheet(range), "year");
        assertEquals(
                range.view().total().contribution().getAmount(),
                at(year, range.view().rows().size(), "contribution"));
        assertTrue(year.rows().size() > 6);
    }
}
