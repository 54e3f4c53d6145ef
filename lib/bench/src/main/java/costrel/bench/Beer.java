package costrel.bench;

import costrel.brewery.Brewery;
import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.buying.PriceList;
import costrel.buying.PriceRow;
import costrel.cost.Batch;
import costrel.cost.BillGroup;
import costrel.cost.BillLine;
import costrel.cost.CostOptions;
import costrel.cost.CostSheet;
import costrel.cost.Coster;
import costrel.cost.PackageItem;
import costrel.hops.AlphaMethod;
import costrel.hops.HopForm;
import costrel.hops.HopOnTheDay;
import costrel.hops.HopUse;
import costrel.measure.Amounts;
import costrel.packaging.PackagingShare;
import costrel.plant.Plant;
import costrel.recipe.Amount;
import costrel.recipe.GristMaterial;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.ResolvedRecipe.ResolvedAddition;
import costrel.recipe.ResolvedRecipe.ResolvedGrist;
import costrel.recipe.ResolvedRecipe.ResolvedHop;
import costrel.recipe.ResolvedRecipe.ResolvedYeast;
import costrel.recipe.Supply;
import costrel.scaling.Gyle;
import costrel.scaling.Intent;
import costrel.scaling.Scaler;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/** An invented beer of so many lines at Lanternfold, with all that it takes to scale and cost it. */
final class Beer {
    static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Brewery LANTERNFOLD = Brewery.open(Path.of("samples/lanternfold"));
    private static final Plant HOME = LANTERNFOLD.plant("Pilot");
    private static final Plant MAIN = LANTERNFOLD.plant("Main");
    private static final Quantity<Volume> BREW_LENGTH = Amounts.ofLitres(4900);
    private static final double HOME_L = 818;

    private final Intent intent;
    private final PriceList prices;
    private final List<PackagingShare> packaging;
    private final CostOptions options = CostOptions.in(LANTERNFOLD.currency());

    /** A beer of 10 lines or more: four in ten are grist, three in ten hops, one yeast, the rest aids. */
    Beer(int number, int lines) {
        int hops = lines * 3 / 10;
        int grist = lines * 4 / 10;
        this.intent = Scaler.read(recipe(number, grist, hops, lines - grist - hops - 1), Optional.of(HOME));
        List<PriceRow> rows = new ArrayList<>(LANTERNFOLD.prices().rows());
        bill(scale()).forEach(line -> rows.add(price(line.item(), 3 + rows.size() % 7, DAY.withDayOfYear(1))));
        this.prices = PriceList.of(rows);
        this.packaging = LANTERNFOLD.packagingPlan("Wickgate Bitter").entrySet().stream()
                .map(entry -> new PackagingShare(
                        entry.getKey(),
                        entry.getValue(),
                        MAIN.losses().fillLoss(entry.getKey().name())))
                .toList();
    }

    static PriceRow price(String item, double perKg, LocalDate from) {
        return new PriceRow(
                item,
                "Sedgeholt Maltings",
                new Pack(new BigDecimal("25"), PackUnit.KILOGRAM),
                BigDecimal.valueOf(Math.round(perKg * 2500), 2),
                LANTERNFOLD.currency(),
                from,
                Optional.empty(),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                "prices.csv:2");
    }

    /** A week's price: from a Monday up to the Sunday after. */
    static PriceRow weekly(String item, double perKg, LocalDate from, int line) {
        PriceRow row = price(item, perKg, from);
        return new PriceRow(
                item,
                row.supplier(),
                row.pack(),
                row.price(),
                row.currency(),
                from,
                Optional.of(from.plusDays(6)),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                "prices.csv:" + line);
    }

    /** What Lanternfold pays for the containers and what goes with them. */
    static List<PriceRow> ofContainers() {
        Set<String> items =
                LANTERNFOLD.packages().stream().map(PackageItem::item).collect(Collectors.toSet());
        return LANTERNFOLD.prices().rows().stream()
                .filter(row -> items.contains(row.item()))
                .toList();
    }

    private static ResolvedRecipe recipe(int number, int grist, int hops, int aids) {
        List<ResolvedGrist> goods = new ArrayList<>();
        List<Recipe.Grist> goodsNamed = new ArrayList<>();
        for (int i = 0; i < grist; i++) {
            boolean sugar = i % 6 == 5;
            GristMaterial material = new GristMaterial(
                    "material " + number + "-" + i,
                    sugar ? GristMaterial.Kind.COPPER_SUGAR : GristMaterial.Kind.MALT,
                    OptionalDouble.of(295 + i % 13),
                    OptionalDouble.of(0.035),
                    OptionalDouble.of(4 + 12.0 * (i % 11)),
                    List.of("barley (gluten)"),
                    "invented");
            Amount amount = new Amount.OfMass((sugar ? 20.0 : 120.0) / grist);
            goods.add(new ResolvedGrist(material, amount, OptionalDouble.empty(), false));
            goodsNamed.add(new Recipe.Grist(material.name(), amount, OptionalDouble.empty(), false));
        }
        List<ResolvedHop> additions = new ArrayList<>();
        List<Recipe.Hop> hopsNamed = new ArrayList<>();
        for (int i = 0; i < hops; i++) {
            HopUse use =
                    i % 3 == 0 ? new HopUse.Copper(75) : i % 3 == 1 ? new HopUse.Copper(15) : new HopUse.DryHopTank();
            HopOnTheDay hop = new HopOnTheDay(
                    "lot " + number + "-" + i,
                    "variety " + i,
                    HopForm.LEAF,
                    0.04 + 0.001 * (i % 40),
                    AlphaMethod.LEAD_CONDUCTANCE,
                    OptionalDouble.of(0.8),
                    "certificate");
            Amount amount = new Amount.OfMass(2.0 / hops);
            additions.add(new ResolvedHop(hop, use, amount, Recipe.Hop.defaultFor(use)));
            hopsNamed.add(new Recipe.Hop(
                    hop.variety(),
                    Optional.of(hop.lot()),
                    OptionalDouble.empty(),
                    use,
                    amount,
                    Recipe.Hop.defaultFor(use)));
        }
        List<ResolvedAddition> added = new ArrayList<>();
        List<Recipe.Addition> addedNamed = new ArrayList<>();
        for (int i = 0; i < aids; i++) {
            Recipe.Into into = i % 2 == 0 ? Recipe.Into.ALL_LIQUOR : Recipe.Into.COPPER;
            Amount amount = new Amount.OfRate(40.0 / aids);
            added.add(new ResolvedAddition("aid " + number + "-" + i, into, amount, 0, List.of()));
            addedNamed.add(new Recipe.Addition("aid " + number + "-" + i, into, amount));
        }
        Supply yeast = LANTERNFOLD.catalogue().supplies().values().stream()
                .filter(supply -> supply.kind() == Supply.Kind.YEAST)
                .findFirst()
                .orElseThrow();
        Amount cells = new Amount.OfRate(200);
        Recipe recipe = new Recipe(
                "beer " + number,
                Optional.of(HOME.name()),
                Optional.empty(),
                OptionalDouble.of(HOME_L),
                new Recipe.Targets(
                        Optional.<Gravity>empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(0.77),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                new Recipe.Method(
                        OptionalDouble.of(2.5),
                        OptionalDouble.of(66),
                        75,
                        1,
                        Optional.empty(),
                        OptionalDouble.of(8),
                        Recipe.GristHold.EXTRACT),
                goodsNamed,
                hopsNamed,
                List.of(new Recipe.Yeast(yeast.name(), cells)),
                addedNamed);
        return new ResolvedRecipe(recipe, goods, additions, List.of(new ResolvedYeast(yeast, cells)), added);
    }

    Gyle scale() {
        return Scaler.scale(intent, MAIN, BREW_LENGTH, Scaler.Options.usual());
    }

    /** The whole sheet of a gyle, as an embedding program would ask for it. */
    CostSheet cost(Gyle gyle) {
        return cost(gyle, prices, DAY);
    }

    CostSheet cost(Gyle gyle, PriceList list, LocalDate day) {
        return Coster.cost(
                batch(gyle, day),
                list,
                LANTERNFOLD.rates(),
                LANTERNFOLD.packages(),
                LANTERNFOLD.duty(),
                LANTERNFOLD.production(),
                options);
    }

    PriceList prices() {
        return prices;
    }

    Batch batch(Gyle gyle, LocalDate day) {
        return new Batch(
                gyle.beerName(),
                day,
                day,
                day,
                gyle.collectedL(),
                gyle.beer().rackedL(),
                gyle.weighedMashedKg(),
                OptionalDouble.of(8),
                gyle.og(),
                gyle.beer().fg().orElseThrow(),
                Optional.empty(),
                bill(gyle),
                packaging,
                List.of("barley (gluten)"));
    }

    static List<BillLine> bill(Gyle gyle) {
        List<BillLine> lines = new ArrayList<>();
        for (Gyle.Grist line : gyle.grist()) {
            BillGroup group = line.material().mashed() ? BillGroup.MASHED_GOODS : BillGroup.SUGARS;
            lines.add(line(group, line.material().name(), line.weighedKg()));
        }
        gyle.hops().forEach(hop -> lines.add(line(BillGroup.HOPS, hop.hop().lot(), hop.weighedKg())));
        gyle.yeasts().forEach(yeast -> lines.add(line(BillGroup.YEAST, yeast.name(), yeast.weighedAmount())));
        gyle.additions()
                .forEach(added -> lines.add(line(
                        added.into().orElseThrow() == Recipe.Into.COPPER
                                ? BillGroup.PROCESS_AIDS
                                : BillGroup.LIQUOR_TREATMENT,
                        added.name(),
                        added.weighedAmount())));
        return lines;
    }

    private static BillLine line(BillGroup group, String item, double kg) {
        return new BillLine(group, item, List.of(item), kg, PackUnit.KILOGRAM, "");
    }
}
