package costrel.brewery;

import costrel.buying.PackUnit;
import costrel.cost.Batch;
import costrel.cost.BillGroup;
import costrel.cost.BillLine;
import costrel.cost.CostBasis;
import costrel.cost.CostOptions;
import costrel.cost.CostSheet;
import costrel.cost.Coster;
import costrel.cost.StockBasis;
import costrel.packaging.PackagingShare;
import costrel.recipe.Recipe;
import costrel.scaling.Gyle;
import costrel.stock.StockLedger;
import costrel.stock.Valuation;
import costrel.tables.CostSettings;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Writes a gyle's bill of materials, as weighed out, and has it costed. Scaling knows no money and cost knows no scaling. */
final class Costing {

    private Costing() {}

    static CostSheet of(Brewery brewery, Brew brew, Gyle gyle) {
        LocalDate day = brew.day()
                .orElseThrow(() -> new IllegalArgumentException(gyle.beerName()
                        + ": expected a brewing day to price by, such as day(\"2026-11-25\"), found none"));
        return Coster.cost(
                batch(brewery, gyle, day, brew.dutyDay().orElse(day)),
                brewery.prices(),
                brewery.rates(),
                brewery.packages(),
                brewery.duty(),
                brewery.production(),
                options(brewery, brew, day));
    }

    private static CostOptions options(Brewery brewery, Brew brew, LocalDate day) {
        CostSettings settings = brewery.settings().costing();
        return new CostOptions(
                brewery.currency(),
                Map.of(),
                settings.claimRelief(),
                Optional.empty(),
                Map.of(),
                stock(brewery, brew.basis(), day),
                settings.yearVolume(),
                brewery.containerCharges(),
                settings.normalLossShare(),
                settings.unsoldShare());
    }

    /** The store that the gyle draws from; empty for replacement, which goes by the price lists of the day. */
    private static Optional<StockBasis> stock(Brewery brewery, CostBasis basis, LocalDate day) {
        if (basis == CostBasis.REPLACEMENT) {
            return Optional.empty();
        }
        StockLedger ledger = brewery.stock()
                .orElseThrow(() -> new IllegalArgumentException("cost basis " + basis.label()
                        + ": expected receipts and issues in stock.csv to cost by, found none;"
                        + " replacement costs by the price lists of the day"));
        return Optional.of(new StockBasis(ledger.until(day), valuation(brewery, basis)));
    }

    private static Valuation valuation(Brewery brewery, CostBasis basis) {
        return switch (basis) {
            case FIFO -> Valuation.FIFO;
            case AVERAGE -> Valuation.AVERAGE_PERPETUAL;
            case PERIODIC_AVERAGE -> Valuation.AVERAGE_PERIODIC;
            case STANDARD, REPLACEMENT -> Valuation.standardCost(brewery.standardCosts());
        };
    }

    static Batch batch(Brewery brewery, Gyle gyle, LocalDate day, LocalDate dutyDay) {
        if (gyle.weighed().isEmpty()) {
            throw new IllegalArgumentException(
                    gyle.beerName() + " on " + gyle.plant().name()
                            + ": expected weights to cost, but they rest on an upper bound of the bitterness;"
                            + " state the plant's isomerisation recovery, or insist");
        }
        Gravity fg = gyle.beer()
                .fg()
                .orElseThrow(() -> new IllegalArgumentException(gyle.beerName()
                        + ": expected an apparent attenuation or FG in the recipe to reckon duty by, found none"));
        OptionalDouble label = gyle.intent().recipe().targets().declaredStrength();
        Gravity og = Gravity.ofDegrees(gyle.og().excessDegrees() + gyle.beer().primingDegrees());
        return new Batch(
                gyle.beerName(),
                day,
                day,
                dutyDay,
                gyle.collectedL(),
                gyle.beer().rackedL(),
                gyle.weighedMashedKg(),
                gyle.intent().recipe().method().tankDays(),
                og,
                fg,
                label.isPresent() ? Optional.of(BigDecimal.valueOf(label.getAsDouble())) : Optional.empty(),
                bill(gyle),
                packaging(brewery, gyle),
                allergens(gyle));
    }

    static List<PackagingShare> packaging(Brewery brewery, Gyle gyle) {
        return brewery.packagingPlan(gyle.beerName()).entrySet().stream()
                .map(entry -> new PackagingShare(
                        entry.getKey(),
                        entry.getValue(),
                        gyle.plant().losses().fillLoss(entry.getKey().name())))
                .toList();
    }

    /** One line an item, in the order of the sheet; hop lots by first use. */
    static List<BillLine> bill(Gyle gyle) {
        Map<String, BillLine> lines = new LinkedHashMap<>();
        for (Gyle.Grist line : gyle.grist()) {
            BillGroup group = line.material().mashed() ? BillGroup.MASHED_GOODS : BillGroup.SUGARS;
            add(lines, group, line.material().name(), List.of(line.material().name()), line.weighedKg(), false);
        }
        for (Gyle.Hop line : gyle.hops()) {
            String variety = line.hop().variety();
            add(
                    lines,
                    BillGroup.HOPS,
                    variety + " " + line.hop().lot(),
                    List.of(line.hop().lot(), variety + " " + line.hop().form().label(), variety),
                    line.weighedKg(),
                    false);
        }
        for (Gyle.Weight line : gyle.yeasts()) {
            add(lines, BillGroup.YEAST, line.name(), List.of(line.name()), line.weighedAmount(), false);
        }
        for (BillGroup group : List.of(BillGroup.LIQUOR_TREATMENT, BillGroup.PROCESS_AIDS, BillGroup.PRIMINGS)) {
            for (Gyle.Weight line : gyle.additions()) {
                if (groupOf(line.into().orElseThrow()) == group) {
                    add(lines, group, line.name(), List.of(line.name()), line.weighedAmount(), line.byVolume());
                }
            }
        }
        return lines.values().stream().filter(line -> line.amount() > 0).toList();
    }

    private static void add(
            Map<String, BillLine> lines,
            BillGroup group,
            String item,
            List<String> priceNames,
            double amount,
            boolean byVolume) {
        PackUnit unit = byVolume ? PackUnit.LITRE : PackUnit.KILOGRAM;
        lines.merge(
                group + "|" + item + "|" + unit,
                new BillLine(group, item, priceNames, amount, unit, ""),
                (old, more) -> new BillLine(group, item, priceNames, old.amount() + more.amount(), unit, ""));
    }

    private static BillGroup groupOf(Recipe.Into into) {
        return switch (into) {
            case MASH_LIQUOR, SPARGE_LIQUOR, ALL_LIQUOR, LIQUORING_BACK -> BillGroup.LIQUOR_TREATMENT;
            case COPPER, FV, TANK, CASK -> BillGroup.PROCESS_AIDS;
            case PRIMINGS -> BillGroup.PRIMINGS;
        };
    }

    private static List<String> allergens(Gyle gyle) {
        Set<String> found = new LinkedHashSet<>();
        gyle.grist().forEach(line -> found.addAll(line.material().allergens()));
        gyle.yeasts().forEach(line -> found.addAll(line.allergens()));
        gyle.additions().forEach(line -> found.addAll(line.allergens()));
        return new ArrayList<>(found);
    }
}
