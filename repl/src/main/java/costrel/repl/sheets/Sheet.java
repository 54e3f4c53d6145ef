package costrel.repl.sheets;

import costrel.brewery.Brew;
import costrel.brewery.Brewery;
import costrel.brewery.Harvest;
import costrel.brewery.PricedRange;
import costrel.brewery.RiskStudy;
import costrel.brewery.SellingPrices;
import costrel.cost.CostSheet;
import costrel.harvest.HarvestPlan;
import costrel.pricing.Comparison;
import costrel.pricing.RiskResult;
import costrel.report.BoilClock;
import costrel.report.BrewSheetHtml;
import costrel.report.ChartText;
import costrel.report.CostSheetHtml;
import costrel.report.Picture;
import costrel.report.PintSplit;
import costrel.report.PriceListHtml;
import costrel.report.StudyHtml;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Something that can be printed: a page, and the charts in it.
 *
 * @param kind what it is, such as "brew sheet"
 * @param of what it is about
 * @param page the page with the pictures it is given
 * @param drawings its charts; none for a brew sheet and a price list
 */
record Sheet(String kind, String of, Function<List<Picture>, String> page, List<Drawing> drawings) {

    Sheet {
        drawings = List.copyOf(drawings);
    }

    /** What can be printed of a result of the library. */
    static Sheet of(Object thing, LocalDate day, Optional<BoilClock> clock) {
        if (thing instanceof Brew brew) {
            return new Sheet("brew sheet", brew.recipe().name(), none -> BrewSheetHtml.of(brew, clock), List.of());
        }
        if (clock.isPresent()) {
            throw new IllegalArgumentException("clock: expected a brew to go with it, found something without a boil");
        }
        if (thing instanceof CostSheet sheet) {
            return new Sheet(
                    "cost sheet",
                    sheet.batch().beer(),
                    pictures -> CostSheetHtml.of(sheet, pictures),
                    List.of(Charts.of(PintSplit.of(sheet), "pint")));
        }
        if (thing instanceof SellingPrices prices) {
            return new Sheet(
                    "cost sheet",
                    prices.sheet().batch().beer(),
                    pictures -> CostSheetHtml.of(prices, pictures),
                    charts(PintSplit.of(prices)));
        }
        if (thing instanceof Comparison comparison) {
            return new Sheet(
                    "comparison",
                    comparison.after().batch().beer(),
                    pictures -> StudyHtml.of(comparison, pictures),
                    List.of(Charts.of(comparison)));
        }
        if (thing instanceof RiskStudy study) {
            RiskResult result = study.result();
            return new Sheet(
                    "study of risk",
                    study.sheet().batch().beer(),
                    pictures -> StudyHtml.of(study, result, pictures),
                    List.of(Charts.of(study, result)));
        }
        if (thing instanceof Harvest harvest) {
            return of(harvest.plan(), day, clock);
        }
        if (thing instanceof HarvestPlan plan) {
            return new Sheet(
                    "harvest plan",
                    plan.objective().label(),
                    pictures -> StudyHtml.of(plan, pictures),
                    plan.allocations().isEmpty() ? List.of() : List.of(Charts.of(plan)));
        }
        if (thing instanceof PricedRange range) {
            return new Sheet(
                    "range", "all beers", pictures -> StudyHtml.of(range, pictures), List.of(Charts.of(range)));
        }
        if (thing instanceof Brewery brewery) {
            return new Sheet("price list", brewery.name(), none -> PriceListHtml.of(brewery, day), List.of());
        }
        throw new IllegalArgumentException(
                "sheet: expected a brew, its cost() or pricing(), a comparison, a study of risk, a"
                        + " harvest, range() or brewery(), found something else");
    }

    private static List<Drawing> charts(List<PintSplit> splits) {
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < splits.size(); i++) {
            drawings.add(Charts.of(splits.get(i), "pint-" + (i + 1)));
        }
        return drawings;
    }

    /** The charts of a thing in characters. */
    static String text(Object thing) {
        if (thing instanceof Brew brew) {
            return ChartText.of(PintSplit.of(brew.cost()));
        }
        if (thing instanceof CostSheet sheet) {
            return ChartText.of(PintSplit.of(sheet));
        }
        if (thing instanceof SellingPrices prices) {
            StringBuilder text = new StringBuilder();
            PintSplit.of(prices).forEach(split -> text.append(ChartText.of(split)));
            return text.toString();
        }
        if (thing instanceof Comparison comparison) {
            return ChartText.of(comparison);
        }
        if (thing instanceof RiskStudy study) {
            return ChartText.of(study, study.result());
        }
        if (thing instanceof Harvest harvest) {
            return ChartText.of(harvest.plan());
        }
        if (thing instanceof HarvestPlan plan) {
            return ChartText.of(plan);
        }
        throw new IllegalArgumentException(
                "chart: expected a brew, its cost() or pricing(), a comparison, a study of risk or a"
                        + " harvest, found something else");
    }
}
