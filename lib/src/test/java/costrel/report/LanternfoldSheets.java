package costrel.report;

import costrel.brewery.Brew;
import costrel.brewery.Brewery;
import costrel.brewery.PricedRange;
import costrel.brewery.SellingPrices;
import costrel.brewery.WhyItMoved;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A sheet of every kind that the library makes, for every beer of the sample brewery. */
final class LanternfoldSheets {

    static final Brewery BREWERY = Brewery.open(Path.of("../samples/lanternfold"));
    static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private LanternfoldSheets() {}

    static Brew brew(String beer) {
        return BREWERY.brew(beer).on("Main").length("30 brl").day(DAY);
    }

    static List<Sheet> all() {
        List<Sheet> all = new ArrayList<>();
        for (String beer : BREWERY.recipes().keySet()) {
            Brew brew = brew(BREWERY.recipes().get(beer).name());
            all.add(BeerText.sheet(brew.beer()));
            all.add(GyleText.sheet(brew.gyle()));
            all.add(CostText.sheet(brew.cost()));
            all.add(JobText.sheet(brew));
            all.add(PricingText.sheet(brew.pricing().margin("40 %")));
        }
        SellingPrices prices = brew("Trimwick Pale").pricing().margin("55 %");
        all.add(PricingText.sheet(prices.pub("60 %")));
        all.add(PricingText.sheet(prices.breakEven("firkin", "£95.00", "£48000", "£6000")));
        all.add(PricingText.sheet(prices.discounts("firkin", "£95.00", "10: 5 %")));
        all.add(StrengthText.sheet(prices.losses()));
        all.add(StrengthText.sheet(prices.strengths("3.0 %", "4.0 %", "0.5 %")));
        all.add(ComparisonText.sheet(WhyItMoved.between(
                BREWERY,
                brew("Wickgate Bitter").day("2026-04-14").cost(),
                brew("Wickgate Bitter").cost())));
        all.add(RiskText.sheet(brew("Wickgate Bitter")
                .risk()
                .price("hops", "10 %")
                .loss("1 %")
                .target("firkin", "£95.00", "30 %")
                .draws(200)));
        all.add(RackingText.sheet(BREWERY.brew("Oatlamp Stout")
                .on("Pilot")
                .length("5 brl")
                .day(DAY)
                .racking()
                .at("1.0115")));
        all.add(RangeText.sheet(PricedRange.of(BREWERY, DAY)));
        all.add(HarvestText.sheet(BREWERY.harvest().plan()));
        all.add(HarvestText.sheet(BREWERY.harvest()
                .allow("East Kent Golding", "First Gold")
                .gyle("001")
                .plan()));
        all.add(HarvestText.sheet(BREWERY.harvest().cover(), BREWERY.harvest().contracts()));
        all.add(HarvestText.sheet(BREWERY.harvest().substitutes("East Kent Golding")));
        return all;
    }
}
