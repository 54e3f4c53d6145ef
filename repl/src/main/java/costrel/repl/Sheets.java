package costrel.repl;

import costrel.brewery.BarPrices;
import costrel.brewery.Brew;
import costrel.brewery.LossTable;
import costrel.brewery.PricedRange;
import costrel.brewery.RackingPlan;
import costrel.brewery.RackingSheet;
import costrel.brewery.RiskStudy;
import costrel.brewery.SellingPrices;
import costrel.brewery.StrengthTable;
import costrel.brewery.VolumeNeeded;
import costrel.cost.CostSheet;
import costrel.explain.Explanation;
import costrel.harvest.HarvestPlan;
import costrel.measure.QuantityText;
import costrel.pricing.Comparison;
import costrel.pricing.DiscountLadder;
import costrel.report.BeerText;
import costrel.report.ComparisonText;
import costrel.report.CostText;
import costrel.report.GyleText;
import costrel.report.HarvestText;
import costrel.report.JobText;
import costrel.report.PricingText;
import costrel.report.RackingText;
import costrel.report.RangeText;
import costrel.report.RiskText;
import costrel.report.StrengthText;
import costrel.report.TextTable;
import costrel.scaling.Gyle;
import costrel.scaling.Intent;
import costrel.scaling.Scaler;
import costrel.wort.Bitterness;
import costrel.wort.Colour;
import costrel.wort.Gravity;
import costrel.wort.Strength;
import costrel.wort.TemperatureCourse;
import java.util.List;
import javax.measure.Quantity;

/** How the library's results print in the console. */
final class Sheets {

    private Sheets() {}

    static Rendering rendering() {
        return new Rendering(List.of(
                new Rendering.Kind<>(
                        Brew.class, JobText::of, brew -> brew.gyle().limited()),
                new Rendering.Kind<>(Gyle.class, GyleText::of, Gyle::limited),
                new Rendering.Kind<>(
                        Scaler.Split.class, Sheets::split, split -> split.each().limited()),
                new Rendering.Kind<>(Intent.class, BeerText::of, intent -> false),
                new Rendering.Kind<>(CostSheet.class, CostText::of, sheet -> false),
                new Rendering.Kind<>(
                        HarvestPlan.class, HarvestText::of, plan -> plan.status() == HarvestPlan.Status.INFEASIBLE),
                new Rendering.Kind<>(SellingPrices.class, PricingText::of, prices -> false),
                new Rendering.Kind<>(BarPrices.class, PricingText::of, bar -> false),
                new Rendering.Kind<>(VolumeNeeded.class, PricingText::of, volume -> false),
                new Rendering.Kind<>(DiscountLadder.class, PricingText::of, ladder -> false),
                new Rendering.Kind<>(LossTable.class, StrengthText::of, losses -> false),
                new Rendering.Kind<>(StrengthTable.class, StrengthText::of, strengths -> false),
                new Rendering.Kind<>(Comparison.class, ComparisonText::of, comparison -> false),
                new Rendering.Kind<>(RiskStudy.class, RiskText::of, study -> false),
                new Rendering.Kind<>(
                        RackingPlan.class, RackingText::of, plan -> plan.sheet().limited()),
                new Rendering.Kind<>(RackingSheet.class, RackingText::of, RackingSheet::limited),
                new Rendering.Kind<>(PricedRange.class, RangeText::of, range -> false),
                new Rendering.Kind<>(Explanation.class, Explanation::text, explanation -> false),
                new Rendering.Kind<>(TextTable.class, TextTable::toString, table -> false),
                new Rendering.Kind<>(Quantity.class, QuantityText::print, quantity -> false),
                plain(Gravity.class),
                plain(Strength.class),
                plain(Colour.class),
                plain(Bitterness.class),
                plain(TemperatureCourse.class)));
    }

    /** A scale of the trade prints as it is written. */
    private static <T> Rendering.Kind<T> plain(Class<T> scale) {
        return new Rendering.Kind<>(scale, String::valueOf, value -> false);
    }

    private static String split(Scaler.Split split) {
        return (split.count() == 1 ? "One gyle fits.\n" : split.count() + " equal gyles, each:\n")
                + GyleText.of(split.each());
    }
}
