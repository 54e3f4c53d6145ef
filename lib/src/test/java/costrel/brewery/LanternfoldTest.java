package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.cost.ContainerCost;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.recipe.UnknownNameException;
import costrel.scaling.Gyle;
import costrel.scaling.LiquorPlan;
import costrel.scaling.Scaler;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The sample brewery from files to pennies. Figures of two beers were worked out by another program, from the published formulas
 * and the files alone.
 */
class LanternfoldTest {

    static final Path FOLDER = Path.of("../samples/lanternfold");
    static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static final Brewery LANTERNFOLD = Brewery.open(FOLDER);
    private static final double WORKED = 1e-5;

    @Test
    void the_bitter_moved_to_the_main_plant_with_the_hops_of_2026() {
        Gyle gyle = LANTERNFOLD
                .brew("Wickgate Bitter")
                .on("Main")
                .length("30 brl")
                .day(DAY)
                .gyle();
        assertEquals(38.613237, gyle.og().excessDegrees(), WORKED);
        double[] kg = {616.596565, 44.640475, 27.900297, 29.822043};
        double[] weighed = {617, 45, 28, 30};
        for (int i = 0; i < kg.length; i++) {
            assertEquals(kg[i], gyle.grist().get(i).kg(), WORKED);
            assertEquals(weighed[i], gyle.grist().get(i).weighedKg(), 1e-9);
        }
        double[] hops = {6.261347, 3.900000, 0.912192};
        for (int i = 0; i < hops.length; i++) {
            assertEquals(hops[i], gyle.hops().get(i).kg(), WORKED);
        }
        assertEquals(27.450339, gyle.bitterness().ebu(), WORKED);
        assertEquals(13.189708, gyle.colours().get(0).colour().ebc(), WORKED);
        assertEquals(6.185226, gyle.yeasts().get(0).amount(), WORKED);
        LiquorPlan liquor = gyle.liquor().orElseThrow();
        assertEquals(5868.282249, liquor.totalL(), WORKED);
        assertEquals(1722.843344, liquor.mashL(), WORKED);
        assertEquals(73.017542, liquor.strikeC().orElseThrow(), WORKED);
        assertEquals(4604.300682, gyle.beer().rackedL(), WORKED);
        Gyle.Weighed drift = gyle.weighed().orElseThrow();
        assertEquals(38.663492, drift.ogDegrees(), WORKED);
        assertEquals(27.591569, drift.ebu(), WORKED);
        assertEquals(13.241782, drift.ebc().orElseThrow(), WORKED);
    }

    @Test
    void the_golden_ale_with_first_wort_hot_stand_and_cask_hops() {
        Gyle gyle = LANTERNFOLD
                .brew("Haymoth Golden")
                .on("Main")
                .length("30 brl")
                .day(DAY)
                .gyle();
        double[] kg = {741.768950, 50.575156};
        for (int i = 0; i < kg.length; i++) {
            assertEquals(kg[i], gyle.grist().get(i).kg(), WORKED);
        }
        double[] hops = {1.693981, 2.100000, 10.705882, 1.216256};
        for (int i = 0; i < hops.length; i++) {
            assertEquals(hops[i], gyle.hops().get(i).kg(), WORKED);
        }
        assertEquals(25.431847, gyle.bitterness().ebu(), WORKED);
        assertEquals(6.332340, gyle.colours().get(0).colour().ebc(), WORKED);
        assertEquals(71.488707, gyle.liquor().orElseThrow().strikeC().orElseThrow(), WORKED);
    }

    @Test
    void the_bitter_is_costed_to_the_penny() {
        CostSheet sheet = LANTERNFOLD
                .brew("Wickgate Bitter")
                .on("Main")
                .length("30 brl")
                .day(DAY)
                .cost();
        ContainerCost firkins = sheet.containers().get(0);
        ContainerCost bottles = sheet.containers().get(1);
        assertEquals(100, firkins.count());
        assertEquals(930, bottles.count());
        // 39.31 L × 3.9 % × (19.45 − 10.31) × 100, floored: Finance Act 2026 s.89 with relief by 96.40 hL of the year
        // before
        assertEquals(new BigDecimal("1401.24"), firkins.duty().duty().getAmount());
        assertEquals(new BigDecimal("192.59"), bottles.duty().duty().getAmount());
        assertEquals(new BigDecimal("2089.29"), sheet.gyleCost().getAmount());
        assertEquals(33.897500, firkins.unroundedPerContainer().doubleValue(), WORKED);
        assertEquals(0.489959, firkins.unroundedPerPint().doubleValue(), 1e-6);
        assertEquals(new BigDecimal("4288.08"), sheet.total().getAmount());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Tallow Mild",
                "Wickgate Bitter",
                "Haymoth Golden",
                "Oatlamp Stout",
                "Snuffer Strong",
                "Trimwick Pale"
            })
    void every_total_is_the_sum_of_its_printed_lines(String beer) {
        CostSheet sheet =
                LANTERNFOLD.brew(beer).on("Main").length("28 brl").day(DAY).cost();
        Money lines = Money.zero(sheet.total().getCurrencyUnit());
        for (CostLine line : sheet.lines()) {
            lines = lines.plus(line.value());
        }
        assertEquals(lines, sheet.total());
        Money containers = Money.zero(sheet.total().getCurrencyUnit());
        for (ContainerCost container : sheet.containers()) {
            containers = containers.plus(container.total());
        }
        assertEquals(containers, sheet.total());
    }

    @Test
    void the_mild_pays_the_lower_rate_of_duty() {
        CostSheet sheet = LANTERNFOLD
                .brew("Tallow Mild")
                .on("Main")
                .length("30 brl")
                .day(DAY)
                .cost();
        // Finance Act 2026 s.89: draught under 3.5 %
        assertEquals(
                new BigDecimal("8.58"), sheet.containers().get(0).duty().rate().ratePerLpa());
    }

    @Test
    void more_than_the_vessels_hold_is_a_finding_and_is_split_into_gyles() {
        Brew brew =
                LANTERNFOLD.brew("Wickgate Bitter").on("Main").length("40 brl").day(DAY);
        assertTrue(brew.gyle().limited());
        Scaler.Split split = brew.gyles();
        assertEquals(2, split.count());
        assertFalse(split.each().limited());
    }

    @Test
    void the_same_plant_length_and_hops_give_the_recipe_back() {
        Brew brew = LANTERNFOLD.brew("Wickgate Bitter").sameHops().day(LocalDate.of(2026, 3, 17));
        Gyle gyle = brew.gyle();
        assertEquals(110.5, gyle.grist().get(0).kg(), 1e-8);
        assertEquals(1.10, gyle.hops().get(0).kg(), 1e-10);
    }

    @Test
    void a_lot_that_runs_short_is_told() {
        Gyle gyle = LANTERNFOLD
                .brew("Haymoth Golden")
                .on("Main")
                .length("30 brl")
                .day(DAY)
                .lot("First Gold", "FG25-0377")
                .gyle();
        assertTrue(
                gyle.findings().stream()
                        .anyMatch(finding -> finding.what().contains("FG25-0377")
                                && finding.what().contains("3.00 kg in store")),
                gyle.findings().toString());
    }

    @Test
    void a_gyle_tells_how_its_figures_came_about() {
        Gyle gyle = LANTERNFOLD
                .brew("Wickgate Bitter")
                .on("Main")
                .length("30 brl")
                .day(DAY)
                .gyle();
        assertEquals(
                "22.878 EBU",
                gyle.explanation()
                        .find("Challenger in the copper 75 min")
                        .orElseThrow()
                        .figure());
    }

    @Test
    void a_misspelt_beer_or_plant_is_told_the_nearest() {
        UnknownNameException beer = assertThrows(UnknownNameException.class, () -> LANTERNFOLD.brew("Wickgte Biter"));
        assertTrue(beer.nearest().contains("Wickgate Bitter"), beer.nearest().toString());
        UnknownNameException plant = assertThrows(
                UnknownNameException.class,
                () -> LANTERNFOLD.brew("Wickgate Bitter").on("Mian"));
        assertTrue(plant.nearest().contains("Main"), plant.nearest().toString());
    }

    @Test
    void a_day_without_prices_is_refused() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> LANTERNFOLD
                        .brew("Wickgate Bitter")
                        .sameHops()
                        .day(LocalDate.of(2026, 1, 5))
                        .cost());
        assertTrue(String.valueOf(refused.getMessage()).contains("2026"), String.valueOf(refused.getMessage()));
    }
}
