package costrel.repl;

import costrel.brewery.Brewery;
import costrel.harvest.PlannedBrew;
import costrel.hops.HopLot;
import costrel.packaging.Container;
import costrel.pricing.ListPrice;
import costrel.recipe.Names;
import costrel.recipe.Recipe;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of the open brewery for the examples in help and tour, so that each can be typed as it stands. */
final class Own {

    private static final Pattern NAME = Pattern.compile("\\{([a-z ]+)}");

    /** What stands in an example where the folder has nothing to put there. */
    private static final Map<String, String> WITHOUT_A_FOLDER = Map.ofEntries(
            Map.entry("beer", "Name"),
            Map.entry("brew", "brew(\"Name\")"),
            Map.entry("plant", "Plant"),
            Map.entry("length", "30 brl"),
            Map.entry("variety", "Fuggle"),
            Map.entry("lot", "LOT"),
            Map.entry("other variety", "Target"),
            Map.entry("container", "firkin"),
            Map.entry("price", "£95.00"),
            Map.entry("planned beer", "Name"),
            Map.entry("gyle", "001"));

    private final Map<String, String> names = new LinkedHashMap<>(WITHOUT_A_FOLDER);

    private Own() {}

    /** Names of the brewery that is open; stand-ins if it can't be read. */
    static Own ofDesk() {
        try {
            return of(Desk.brewery(), Desk.day());
        } catch (RuntimeException unreadable) {
            Own own = new Own();
            own.put("day", Desk.day().toString());
            return own;
        }
    }

    /** Names of a brewery: of its first beer, and of where and how that is brewed. */
    static Own of(Brewery brewery, LocalDate day) {
        Own own = new Own();
        own.put("day", day.toString());
        brewery.plants().keySet().stream().findFirst().ifPresent(plant -> own.put("plant", plant));
        brewery.recipes().values().stream().findFirst().ifPresent(recipe -> own.takeBeer(brewery, recipe));
        List<HopLot> lots = brewery.catalogue().hopLots().values().stream()
                .filter(lot -> !lot.analyses().get(0).date().isAfter(day))
                .sorted(Comparator.comparing(HopLot::cropYear).thenComparing(HopLot::id))
                .toList();
        own.takeHops(brewery, lots);
        brewery.brewingPlan().stream().findFirst().ifPresent(gyle -> {
            own.put("planned beer", gyle.beer());
            own.put("gyle", gyle.id());
        });
        return own;
    }

    /** An example with its names filled in. */
    String in(String example) {
        return NAME.matcher(example)
                .replaceAll(found -> Matcher.quoteReplacement(names.getOrDefault(found.group(1), found.group())));
    }

    /** Litres as a brewer says them: in barrels where they are whole or half ones. */
    static String length(double litres) {
        BigDecimal barrels = BigDecimal.valueOf(litres / LITRES_IN_A_BARREL).setScale(1, RoundingMode.HALF_UP);
        boolean halves = Math.abs(barrels.doubleValue() * LITRES_IN_A_BARREL - litres) < litres * 1e-4
                && (barrels.doubleValue() * 2) % 1 == 0;
        return halves
                ? barrels.stripTrailingZeros().toPlainString() + " brl"
                : BigDecimal.valueOf(litres).setScale(0, RoundingMode.HALF_UP).toPlainString() + " L";
    }

    /** 36 gallons of 4.54609 L: Weights and Measures Act 1985 Sch. 1. */
    private static final double LITRES_IN_A_BARREL = 36 * 4.54609;

    private void takeBeer(Brewery brewery, Recipe recipe) {
        put("beer", recipe.name());
        put("planned beer", recipe.name());
        recipe.home().ifPresent(plant -> put("plant", plant));
        recipe.brewLengthL().ifPresent(litres -> put("length", length(litres)));
        boolean atHome = recipe.home().isPresent() && recipe.brewLengthL().isPresent();
        Optional<PlannedBrew> gyle = brewery.brewingPlan().stream()
                .filter(planned -> planned.beer().equals(recipe.name()))
                .findFirst();
        gyle.ifPresent(planned -> {
            put("plant", planned.plant());
            put("length", length(planned.litres()));
        });
        Names.find(brewery.plans(), recipe.name()).stream()
                .flatMap(plan -> plan.keySet().stream())
                .map(Container::name)
                .findFirst()
                .ifPresent(container -> put("container", container));
        Optional<ListPrice> sold = brewery.listPrices().stream()
                .filter(price -> price.beer().equals(recipe.name()))
                .findFirst();
        sold.ifPresent(price -> {
            put("plant", price.plant());
            put("length", length(price.litres()));
            put("container", price.container());
            put(
                    "price",
                    price.price().getCurrencyUnit().getSymbol(Locale.UK)
                            + price.price().getAmount().toPlainString());
        });
        put("brew", in(atHome ? "brew(\"{beer}\")" : "brew(\"{beer}\").on(\"{plant}\").length(\"{length}\")"));
    }

    private void takeHops(Brewery brewery, List<HopLot> lots) {
        List<String> wanted =
                brewery.recipes().values().stream().findFirst().map(Recipe::hops).orElse(List.of()).stream()
                        .map(Recipe.Hop::variety)
                        .toList();
        Optional<HopLot> lot = lots.stream()
                .filter(known -> wanted.contains(known.variety()))
                .findFirst()
                .or(() -> lots.stream().findFirst());
        lot.ifPresent(found -> {
            put("variety", found.variety());
            put("lot", found.id());
        });
        lots.stream()
                .map(HopLot::variety)
                .filter(variety -> !variety.equals(names.get("variety")))
                .findFirst()
                .ifPresent(variety -> put("other variety", variety));
    }

    private void put(String name, String value) {
        names.put(name, value);
    }
}
