package costrel.repl;

import costrel.brewery.Brewery;
import costrel.cost.CostGroup;
import costrel.harvest.Objective;
import costrel.harvest.PlannedBrew;
import costrel.hops.HopLot;
import costrel.packaging.Container;
import costrel.plant.Plant;
import costrel.pricing.ListPrice;
import costrel.recipe.Names;
import costrel.recipe.Recipe;
import costrel.recipe.Resolver;
import costrel.scaling.Intent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** The names that a brewery knows, by kind, each with the figure that tells it from the others. */
final class Larder {

    private final Brewery brewery;
    private final LocalDate day;
    private final Map<String, List<Named>> found = new ConcurrentHashMap<>();

    /**
     * A name.
     *
     * @param name as it is typed
     * @param figure what tells it from the others, such as its alpha acid and its stock
     */
    record Named(String name, String figure) {}

    Larder(Brewery brewery, LocalDate day) {
        this.brewery = brewery;
        this.day = day;
    }

    /**
     * Names of a kind.
     *
     * @param kind what is named
     * @param before texts in the same brackets, of which the last one counts where a lot is of a variety
     * @return the names, in the order of the files; none for what has no names
     */
    List<Named> names(Calls.Kind kind, List<String> before) {
        String of = kind == Calls.Kind.LOT && !before.isEmpty() ? before.get(before.size() - 1) : "";
        String key = kind + " " + of;
        List<Named> known = found.get(key);
        if (known == null) {
            known = look(kind, before);
            if (of.isEmpty() || !known.isEmpty()) { // else every slip of a pen would be kept
                found.put(key, known);
            }
        }
        return known;
    }

    /** Whether this holds the names of that brewery on that day. */
    @SuppressWarnings("ReferenceEquality") // one reading of the folder, not one like it
    boolean isOf(Brewery other, LocalDate otherDay) {
        return brewery == other && day.equals(otherDay);
    }

    private List<Named> look(Calls.Kind kind, List<String> before) {
        return switch (kind) {
            case BEER -> brewery.recipes().values().stream().map(this::beer).toList();
            case PLANT -> brewery.plants().values().stream().map(this::plant).toList();
            case LENGTH -> lengths();
            case VARIETY -> varieties();
            case LOT -> lots(before.isEmpty() ? "" : before.get(before.size() - 1));
            case CONTAINER -> containers();
            case ITEM -> items();
            case GYLE ->
                brewery.brewingPlan().stream()
                        .map(gyle -> new Named(gyle.id(), gyle.beer() + ", " + gyle.day()))
                        .toList();
            case OBJECTIVE ->
                Stream.of(Objective.values())
                        .map(objective -> new Named(objective.label(), ""))
                        .toList();
            case WORD ->
                Words.all().values().stream()
                        .map(word -> new Named(word.name(), word.line()))
                        .toList();
            case DAY, SHARE, MONEY, AMOUNT, UNIT, GRAVITY, VOLUMES, STEPS, SCRIPT, STEP, CURRENCY -> List.of();
        };
    }

    private Named beer(Recipe recipe) {
        try {
            Intent beer = brewery.brew(recipe.name()).day(day).beer();
            double og = 1 + beer.og().excessDegrees() / 1000;
            return new Named(recipe.name(), "OG " + figure(og, 4) + ", " + figure(beer.ebu(), 0) + " EBU");
        } catch (RuntimeException unfinished) {
            return new Named(recipe.name(), "can't be read yet");
        }
    }

    private Named plant(Plant plant) {
        String fv = plant.fv().volumeL().isPresent()
                ? "FV " + figure(plant.fv().volumeL().getAsDouble(), 0) + " L"
                : "";
        String copper = plant.copper().volumeL().isPresent()
                ? "copper " + figure(plant.copper().volumeL().getAsDouble(), 0) + " L"
                : "";
        return new Named(plant.name(), joined(fv, copper));
    }

    private List<Named> lengths() {
        Map<String, String> plants = new LinkedHashMap<>();
        for (ListPrice price : brewery.listPrices()) {
            plants.putIfAbsent(Own.length(price.litres()), price.plant());
        }
        for (PlannedBrew gyle : brewery.brewingPlan()) {
            plants.putIfAbsent(Own.length(gyle.litres()), gyle.plant());
        }
        for (Recipe recipe : brewery.recipes().values()) {
            recipe.brewLengthL()
                    .ifPresent(litres ->
                            plants.putIfAbsent(Own.length(litres), recipe.home().orElse("")));
        }
        List<Named> lengths = new ArrayList<>();
        plants.forEach((length, plant) -> lengths.add(new Named(length, plant.isEmpty() ? "" : "on " + plant)));
        return lengths;
    }

    private List<Named> varieties() {
        return brewery.catalogue().varietiesInStore().stream()
                .map(variety -> new Named(
                        variety,
                        figure(
                                        lotsOf(variety)
                                                .mapToDouble(
                                                        lot -> lot.stockKg().orElse(0))
                                                .sum(),
                                        1)
                                + " kg in store"))
                .toList();
    }

    private List<Named> lots(String variety) {
        return lotsOf(variety)
                .sorted(Comparator.comparing(HopLot::cropYear).reversed().thenComparing(HopLot::id))
                .map(lot -> new Named(
                        lot.id(),
                        joined(
                                variety.isEmpty() ? lot.variety() : "",
                                alpha(lot),
                                lot.stockKg().isPresent() ? figure(lot.stockKg().getAsDouble(), 1) + " kg" : "")))
                .toList();
    }

    private Stream<HopLot> lotsOf(String variety) {
        String wanted = Names.folded(variety);
        return brewery.catalogue().hopLots().values().stream()
                .filter(lot -> wanted.isEmpty() || Names.folded(lot.variety()).equals(wanted));
    }

    private String alpha(HopLot lot) {
        LocalDate analysed = lot.analyses().get(0).date();
        if (analysed.isAfter(day)) {
            return "not analysed until " + analysed;
        }
        try {
            return "alpha "
                    + figure(Resolver.onTheDay(lot, brewery.catalogue(), day).alpha() * 100, 2) + " %";
        } catch (RuntimeException unknown) {
            return "alpha not known";
        }
    }

    private List<Named> containers() {
        List<Container> filled = brewery.plans().values().stream()
                .flatMap(plan -> plan.keySet().stream())
                .distinct()
                .toList();
        return (filled.isEmpty() ? brewery.containers().values().stream() : filled.stream())
                .sorted(Comparator.comparing(Container::nominalL).thenComparing(Container::name))
                .map(container ->
                        new Named(container.name(), figure(container.nominalL().doubleValue(), 2) + " L"))
                .toList();
    }

    private List<Named> items() {
        List<Named> items = new ArrayList<>();
        for (CostGroup part : CostGroup.values()) {
            items.add(new Named(part.label(), "a part of the cost sheet"));
        }
        Map<String, String> prices = new LinkedHashMap<>();
        brewery.prices().rows().stream()
                .filter(row -> row.holdsOn(day))
                .forEach(row -> prices.putIfAbsent(
                        row.item(),
                        row.currency().getSymbol(Locale.UK) + row.price().toPlainString() + " for "
                                + row.pack().text()));
        prices.forEach((item, price) -> items.add(new Named(item, price)));
        return items;
    }

    /** The figure beside a name, if the name is one of its kind. */
    Optional<String> figureOf(Calls.Kind kind, List<String> before, String name) {
        return names(kind, before).stream()
                .filter(named -> Names.folded(named.name()).equals(Names.folded(name)))
                .map(Named::figure)
                .filter(figure -> !figure.isEmpty())
                .findFirst();
    }

    private static String joined(String... parts) {
        return String.join(
                ", ", Stream.of(parts).filter(part -> !part.isEmpty()).toList());
    }

    private static String figure(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
