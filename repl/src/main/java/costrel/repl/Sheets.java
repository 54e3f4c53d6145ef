package costrel.repl;

import costrel.brewery.BarPrices;
import costrel.brewery.Brew;
import costrel.brewery.Brewery;
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
import costrel.report.Sheet;
import costrel.report.StrengthText;
import costrel.report.TextForm;
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
                Rendering.Kind.sheet(
                        Brew.class, JobText::sheet, brew -> brew.gyle().limited()),
                Rendering.Kind.sheet(Gyle.class, GyleText::sheet, Gyle::limited),
                new Rendering.Kind<>(
                        Scaler.Split.class,
                        Sheets::split,
                        split -> GyleText.sheet(split.each()),
                        split -> split.each().limited()),
                Rendering.Kind.sheet(Intent.class, BeerText::sheet, intent -> false),
                Rendering.Kind.sheet(CostSheet.class, CostText::sheet, sheet -> false),
                Rendering.Kind.sheet(
                        HarvestPlan.class, HarvestText::sheet, plan -> plan.status() == HarvestPlan.Status.INFEASIBLE),
                Rendering.Kind.sheet(SellingPrices.class, PricingText::sheet, prices -> false),
                Rendering.Kind.sheet(BarPrices.class, PricingText::sheet, bar -> false),
                Rendering.Kind.sheet(VolumeNeeded.class, PricingText::sheet, volume -> false),
                Rendering.Kind.sheet(DiscountLadder.class, PricingText::sheet, ladder -> false),
                Rendering.Kind.sheet(LossTable.class, StrengthText::sheet, losses -> false),
                Rendering.Kind.sheet(StrengthTable.class, StrengthText::sheet, strengths -> false),
                Rendering.Kind.sheet(Comparison.class, ComparisonText::sheet, comparison -> false),
                Rendering.Kind.sheet(RiskStudy.class, RiskText::sheet, study -> false),
                Rendering.Kind.sheet(
                        RackingPlan.class,
                        RackingText::sheet,
                        plan -> plan.sheet().limited()),
                Rendering.Kind.sheet(RackingSheet.class, RackingText::sheet, RackingSheet::limited),
                Rendering.Kind.sheet(PricedRange.class, RangeText::sheet, range -> false),
                Rendering.Kind.sheet(Sheet.class, sheet -> sheet, sheet -> false),
                new Rendering.Kind<>(
                        Explanation.class,
                        (explanation, width) -> explanation.text(),
                        AnswerSheet::of,
                        explanation -> false),
                new Rendering.Kind<>(
                        TextTable.class, (table, width) -> table.text(0, width), TextTable::sheet, table -> false),
                new Rendering.Kind<>(Brewery.class, Listings::inShort, brewery -> false),
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

    private static String split(Scaler.Split split, int width) {
        return (split.count() == 1 ? "One gyle fits.\n" : split.count() + " equal gyles, each:\n")
                + TextForm.of(GyleText.sheet(split.each()), width);
    }
}
