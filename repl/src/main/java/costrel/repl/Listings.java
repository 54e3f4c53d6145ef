package costrel.repl;

import costrel.brewery.Brewery;
import costrel.hops.HopLot;
import costrel.hops.HopOnTheDay;
import costrel.plant.Plant;
import costrel.recipe.Recipe;
import costrel.recipe.Resolver;
import costrel.report.Column;
import costrel.report.TextTable;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Locale;
import java.util.OptionalDouble;

/** What is in a brewery's folder, as tables. */
final class Listings {

    private Listings() {}

    /** A brewery in a few lines, with the words that lead on. */
    static String inShort(Brewery brewery) {
        return String.join(
                "\n",
                brewery.name() + ", " + brewery.settings().country() + ", costs in " + brewery.currency(),
                "beers: " + String.join(", ", brewery.recipes().keySet()),
                "plants: " + String.join(", ", brewery.plants().keySet()),
                "hop lots: " + brewery.catalogue().hopLots().size() + ", gyles to come: "
                        + brewery.brewingPlan().size() + ", rows of price lists: "
                        + brewery.prices().rows().size(),
                "beers(), plants(), lots(), harvest() and range() show more of each");
    }

    static TextTable beers(Brewery brewery) {
        TextTable table = TextTable.keyed(
                "beers",
                "the beers of the brewery",
                Column.words("beer", "beer"),
                Column.words("home", "home"),
                Column.words("brewed", "brewed"),
                Column.figures("label", "label %", "% vol"),
                Column.words("hops", "hops"));
        for (Recipe recipe : brewery.recipes().values()) {
            table.row(
                    recipe.name(),
                    recipe.home().orElse("by targets"),
                    recipe.brewed().map(LocalDate::toString).orElse(""),
                    figure(recipe.targets().declaredStrength(), 1),
                    String.join(
                            ", ",
                            recipe.hops().stream()
                                    .map(Recipe.Hop::variety)
                                    .distinct()
                                    .toList()));
        }
        return table;
    }

    static TextTable plants(Brewery brewery) {
        TextTable table = TextTable.keyed(
                "plants",
                "the plants of the brewery",
                Column.words("plant", "plant"),
                Column.words("mashEfficiency", "mash efficiency"),
                Column.figures("greatestGrist", "greatest grist kg", "kg"),
                Column.figures("copper", "copper L", "L"),
                Column.figures("fv", "FV L", "L"),
                Column.figures("evaporation", "boiled off L/h", "L/h"),
                Column.words("utilisation", "utilisation"));
        for (String name : brewery.plants().keySet()) {
            Plant plant = brewery.plant(name);
            table.row(
                    plant.name(),
                    plant.efficiency().text(),
                    figure(plant.mashTun().greatestGristKg(), 0),
                    figure(plant.copper().volumeL(), 0),
                    figure(plant.fv().volumeL(), 0),
                    figure(OptionalDouble.of(plant.copper().evaporationLPerHour()), 0),
                    plant.utilisation().name());
        }
        return table;
    }

    static TextTable lots(Brewery brewery, LocalDate day) {
        TextTable table = TextTable.keyed(
                "lots",
                "the hop lots in store",
                Column.words("lot", "lot"),
                Column.words("variety", "variety"),
                Column.words("form", "form"),
                Column.figures("crop", "crop", ""),
                Column.figures("alpha", "alpha %", "%"),
                Column.figures("oil", "oil mL/100 g", "mL/100 g"),
                Column.figures("stock", "stock kg", "kg"),
                Column.words("alphaBy", "alpha by"));
        brewery.catalogue().hopLots().values().stream()
                .sorted(Comparator.comparing(HopLot::variety)
                        .thenComparing(HopLot::cropYear)
                        .thenComparing(HopLot::id))
                .forEach(lot -> {
                    boolean known = !lot.analyses().get(0).date().isAfter(day);
                    HopOnTheDay hop = known ? Resolver.onTheDay(lot, brewery.catalogue(), day) : null;
                    table.row(
                            lot.id(),
                            lot.variety(),
                            lot.form().label(),
                            String.valueOf(lot.cropYear()),
                            hop == null ? "" : figure(OptionalDouble.of(hop.alpha() * 100), 2),
                            hop == null ? "" : figure(hop.oilMlPer100g(), 2),
                            figure(lot.stockKg(), 1),
                            hop == null
                                    ? "not analysed until "
                                            + lot.analyses().get(0).date()
                                    : hop.route());
                });
        return table;
    }

    private static String figure(OptionalDouble value, int decimals) {
        return value.isPresent() ? String.format(Locale.ROOT, "%." + decimals + "f", value.getAsDouble()) : "";
    }
}
