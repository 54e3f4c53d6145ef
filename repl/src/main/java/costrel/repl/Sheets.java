package costrel.repl;

import costrel.brewery.Brew;
import costrel.cost.CostSheet;
import costrel.explain.Explanation;
import costrel.harvest.HarvestPlan;
import costrel.measure.QuantityText;
import costrel.report.BeerText;
import costrel.report.CostText;
import costrel.report.GyleText;
import costrel.report.HarvestText;
import costrel.report.JobText;
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
