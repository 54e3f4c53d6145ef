package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.cost.CostGroup;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.pricing.Comparison;
import costrel.pricing.ComparisonStatement;
import costrel.pricing.Driver;
import costrel.pricing.Effect;
import costrel.pricing.RangeView;
import costrel.pricing.RiskResult;
import costrel.pricing.Spread;
import costrel.recipe.Holds;
import costrel.recipe.UnknownNameException;
import costrel.scaling.Gyle;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Why the cost of the sample brewery's beers moved, what may move it, and how they stand side by side. */
class CostMovesTest {

    private static final Brewery LANTERNFOLD = Brewery.open(LanternfoldTest.FOLDER);
    private static final BigDecimal LAST_DIGIT = new BigDecimal("1e-25");

    /** The standard normal score under which nine tenths lie: any table of the normal distribution. */
    private static final double NINE_TENTHS = 1.2815516;

    /** What the percentiles of 100,000 draws may miss by, as a part of the cost that is drawn. */
    private static final double DRAWN = 0.004;

    private static Brew brew(String beer) {
        return LANTERNFOLD.brew(beer).on("Main").length("30 brl").day("2026-11-25");
    }

    private static Comparison sinceSpring(String beer) {
        return WhyItMoved.between(
                LANTERNFOLD, brew(beer).day("2026-04-14").cost(), brew(beer).cost());
    }

    private static CostLine line(CostSheet sheet, String item) {
        return sheet.lines().stream()
                .filter(line -> line.item().equals(item))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_effects_sum_to_the_difference_and_each_to_its_lines() {
        for (String beer : LANTERNFOLD.recipes().keySet()) {
            Comparison comparison = sinceSpring(beer);
            BigDecimal sum = comparison.effects().stream()
                    .map(Comparison.Moved::perPint)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertTrue(sum.subtract(comparison.perPint()).abs().compareTo(LAST_DIGIT) < 0, beer);
            ComparisonStatement printed = comparison.pencePerPint();
            BigDecimal shown = printed.before();
            for (ComparisonStatement.Row row : printed.rows()) {
                shown = shown.add(row.amount());
            }
            assertEquals(printed.after(), shown, beer);
        }
    }

    /**
     * Pale ale malt went from £20.60 to £21.45 for 25 kg on the lists: £0.034 a kg. With two factors that move, each
     * bears its own change at the mean of the other (Bennet 1920), so the price bears 0.034 × the mean kg over the pints.
     */
    @Test
    void dearer_malt_bears_its_own_part() {
        Comparison comparison = sinceSpring("Wickgate Bitter");
        BigDecimal meanKg = line(comparison.before(), "pale ale malt")
                .amount()
                .add(line(comparison.after(), "pale ale malt").amount())
                .divide(BigDecimal.valueOf(2));
        BigDecimal expected = new BigDecimal("0.034")
                .multiply(meanKg)
                .divide(comparison.after().yieldChain().saleablePints(), MathContext.DECIMAL64);
        BigDecimal found = comparison.of(Effect.PRICE).lines().stream()
                .filter(line -> line.item().equals("pale ale malt"))
                .map(Comparison.Line::perPint)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertEquals(expected.doubleValue(), found.doubleValue(), 1e-9);
    }

    /**
     * Cascade is bought in euros: €90.00 and 2 % for 5 kg at £0.8510 in spring, €92.00 and 2 % less €0.60 a kg at £0.8735 in
     * autumn. Of three factors u · p · e the last bears (e₁ − e₀) · ((u₀p₀ + u₁p₁) / 3 + (u₀p₁ + u₁p₀) / 6), Shapley 1953.
     */
    @Test
    void a_dearer_euro_bears_its_own_part() {
        Comparison comparison = sinceSpring("Trimwick Pale");
        double before = line(comparison.before(), "Cascade CA25-P09").amount().doubleValue();
        double after = line(comparison.after(), "Cascade CA26-P03").amount().doubleValue();
        double spring = 90 * 1.02 / 5;
        double autumn = 92 * 1.02 / 5 - 0.60;
        double expected = (0.8735 - 0.8510)
                * ((before * spring + after * autumn) / 3 + (before * autumn + after * spring) / 6)
                / comparison.after().yieldChain().saleablePints().doubleValue();
        double found = comparison.of(Effect.EXCHANGE_RATE).lines().stream()
                .filter(line -> line.item().equals("Cascade CA26-P03"))
                .mapToDouble(line -> line.perPint().doubleValue())
                .sum();
        assertEquals(expected, found, 1e-9);
        assertTrue(comparison.of(Effect.USAGE).lines().stream()
                .noneMatch(line -> line.item().startsWith("carriage")));
    }

    @Test
    void a_new_harvest_is_the_same_hop_at_another_price_and_dose() {
        Comparison comparison = sinceSpring("Wickgate Bitter");
        List<String> usage = comparison.of(Effect.USAGE).lines().stream()
                .map(Comparison.Line::item)
                .toList();
        assertTrue(usage.contains("Challenger CH26-0107"), usage.toString());
        assertTrue(usage.stream().noneMatch(item -> item.contains("CH25") || item.contains("EK25")), usage.toString());
        assertTrue(comparison.of(Effect.PRICE).lines().stream()
                .anyMatch(line -> line.item().equals("Challenger CH26-0107")));
    }

    @Test
    void changing_places_changes_every_sign() {
        CostSheet spring = brew("Haymoth Golden").day("2026-04-14").cost();
        CostSheet autumn = brew("Haymoth Golden").cost();
        Comparison up = WhyItMoved.between(LANTERNFOLD, spring, autumn);
        Comparison down = WhyItMoved.between(LANTERNFOLD, autumn, spring);
        for (Effect effect : Effect.values()) {
            assertTrue(
                    up.of(effect).perPint().add(down.of(effect).perPint()).abs().compareTo(LAST_DIGIT) < 0,
                    effect.label());
        }
    }

    @Test
    void nothing_spread_is_what_the_sheet_says() {
        for (String beer : List.of("Tallow Mild", "Wickgate Bitter")) {
            RiskResult result = brew(beer)
                    .risk()
                    .price("mashed goods", "0 %")
                    .alpha("0 %")
                    .efficiency("0 %")
                    .loss("0 %")
                    .draws(100)
                    .result();
            double sheet = brew(beer).cost().unroundedPerPint().doubleValue();
            assertEquals(sheet, result.sheetPerPint(), 1e-12);
            assertEquals(sheet, result.p10PerPint(), 1e-12);
            assertEquals(sheet, result.p90PerPint(), 1e-12);
        }
    }

    /** One lognormal price: nine tenths of its draws lie under the rest and the group times exp(0.10 × 1.2816). */
    @Test
    void the_percentiles_of_one_price_are_those_of_its_distribution() {
        RiskStudy study = brew("Wickgate Bitter").risk().price("Mashed goods", "10 %");
        RiskResult result = study.result();
        double pints = study.sheet().yieldChain().saleablePints().doubleValue();
        double group = study.sheet().sumOf(CostGroup.MASHED_GOODS).getAmount().doubleValue() / pints;
        double rest = result.sheetPerPint() - group;
        assertEquals(rest + group * Math.exp(0.10 * NINE_TENTHS), result.p90PerPint(), DRAWN * group);
        assertEquals(rest + group, result.p50PerPint(), DRAWN * group);
        assertEquals(rest + group * Math.exp(-0.10 * NINE_TENTHS), result.p10PerPint(), DRAWN * group);
        assertEquals(1, result.influences().get(0).rankCorrelation(), 1e-9);
    }

    /** Of the mild's one lot of Fuggle only what goes in for the bitterness goes by its alpha acid. */
    @Test
    void a_dose_of_the_same_lot_does_not_go_by_alpha_acid() {
        Brew mild = brew("Tallow Mild");
        Gyle gyle = mild.gyle();
        double all = 0;
        double bittering = 0;
        for (Gyle.Hop hop : gyle.hops()) {
            all += hop.weighedKg();
            bittering += hop.holds() == Holds.BITTERNESS ? hop.weighedKg() : 0;
        }
        assertTrue(bittering > 0 && bittering < all);
        RiskStudy study = mild.risk().alpha("20 %");
        RiskResult result = study.result();
        double hops = study.sheet().sumOf(CostGroup.HOPS).getAmount().doubleValue() * bittering / all;
        double part = hops / study.sheet().yieldChain().saleablePints().doubleValue();
        assertEquals(
                result.sheetPerPint() + part * (Math.exp(0.20 * NINE_TENTHS) - 1), result.p90PerPint(), DRAWN * part);
    }

    /** The median of what is drawn leaves exactly the margin that the sheet's cost leaves: half of the draws are dearer. */
    @Test
    void half_of_the_draws_leave_less_than_the_margin_of_the_sheet() {
        RiskStudy study = brew("Wickgate Bitter").risk().price("mashed goods", "10 %");
        double cost = study.sheet().containers().get(0).unroundedPerContainer().doubleValue();
        // A firkin at twice its cost leaves 50 %: 67.795, so that £67.79 leaves a hair less.
        RiskResult result = study.target("firkin", "£67.80", "50 %").result();
        assertEquals(67.795, 2 * cost, 1e-9);
        assertEquals(0.5, result.chanceUnderTarget().orElseThrow(), 0.01);
    }

    @Test
    void the_seed_gives_the_same_again_and_another_gives_another() {
        RiskStudy study = brew("Haymoth Golden")
                .risk()
                .price("mashed goods", "10 %")
                .price("hops", "20 %")
                .correlated("mashed goods", "price of hops", 0.5)
                .draws(1000);
        assertEquals(study.seed(7).result(), study.seed(7).result());
        assertNotEquals(
                study.seed(7).result().p90PerPint(), study.seed(8).result().p90PerPint());
        assertEquals(0.5, study.plan().correlations().get(0).coefficient());
    }

    /** A distribution of your own: between 0.9 and 1.1 nothing falls outside, and its middle is the sheet. */
    @Test
    void a_driver_of_your_own_and_a_rate_of_exchange_move_their_items() {
        RiskStudy study = brew("Wickgate Bitter").risk();
        RiskResult uniform = study.with(Driver.price("house yeast", 1, new Spread.Uniform(0.9, 1.1)))
                .result();
        double pints = study.sheet().yieldChain().saleablePints().doubleValue();
        double yeast = line(study.sheet(), "house yeast").value().getAmount().doubleValue() / pints;
        // Nine tenths of a uniform distribution lie under its least and nine tenths of its width.
        assertEquals(uniform.sheetPerPint() + 0.08 * yeast, uniform.p90PerPint(), DRAWN * yeast);
        RiskResult euro =
                study.exchangeRate("EUR", "10 %", "crown", "house yeast").result();
        double crown = line(study.sheet(), "crown").value().getAmount().doubleValue() / pints;
        assertEquals(
                euro.sheetPerPint() + (crown + yeast) * (Math.exp(0.10 * NINE_TENTHS) - 1),
                euro.p90PerPint(),
                DRAWN * (crown + yeast));
    }

    @Test
    void a_spread_of_something_unknown_is_refused() {
        RiskStudy study = brew("Wickgate Bitter").risk();
        assertTrue(assertThrows(UnknownNameException.class, () -> study.price("mashed good", "10 %"))
                .nearest()
                .contains("mashed goods"));
        assertThrows(
                UnknownNameException.class,
                () -> study.price("mashed goods", "10 %").correlated("mashed goods", "hops", 0.5));
        assertThrows(IllegalArgumentException.class, () -> study.price("mashed goods", "-10 %"));
        assertThrows(IllegalArgumentException.class, study::result);
        assertThrows(
                IllegalArgumentException.class,
                () -> study.price("mashed goods", "10 %").price("mashed goods", "5 %"));
    }

    /** 1,650 at £86.00 is £141,900.00; the totals are the sums of the rows. */
    @Test
    void a_range_holds_every_row_of_the_list_prices() {
        RangeView view = PricedRange.of(LANTERNFOLD, LocalDate.of(2026, 11, 25)).view();
        assertEquals(LANTERNFOLD.listPrices().size(), view.rows().size());
        RangeView.Row bitter = view.rows().get(2);
        assertEquals("Wickgate Bitter, firkin", bitter.sold().price().cost().name());
        assertEquals(Money.parse("GBP 141900.00"), bitter.revenue());
        // 29.74382 variable (see SellingPricesTest): 1650 × (86 - 29.74382)
        assertEquals(Money.parse("GBP 92822.70"), bitter.contribution());
        Money contribution = Money.zero(LANTERNFOLD.currency());
        for (RangeView.Row row : view.rows()) {
            contribution = contribution.plus(row.contribution());
            assertEquals(row.revenue(), row.variableCost().plus(row.contribution()));
        }
        assertEquals(contribution, view.total().contribution());
        assertTrue(view.rows().stream().anyMatch(row -> row.rankPerTankDay().equals(OptionalInt.of(1))));
    }
}
