package costrel.repl;

import costrel.brewery.Brew;
import costrel.brewery.Brewery;
import costrel.brewery.Harvest;
import costrel.brewery.PricedRange;
import costrel.brewery.RackingPlan;
import costrel.brewery.RiskStudy;
import costrel.brewery.SellingPrices;
import costrel.brewery.WhyItMoved;
import costrel.cost.CostSheet;
import costrel.explain.Explanation;
import costrel.harvest.HarvestPlan;
import costrel.hops.HopLot;
import costrel.hops.HopOnTheDay;
import costrel.measure.QuantityText;
import costrel.plant.Plant;
import costrel.pricing.Comparison;
import costrel.recipe.Recipe;
import costrel.recipe.Resolver;
import costrel.repl.sheets.SheetFile;
import costrel.report.HarvestText;
import costrel.report.TextTable;
import costrel.scaling.Gyle;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The words that the console knows from the start. Each answers with something that prints itself. */
public final class Verbs {

    private Verbs() {}

    /**
     * The brewery that is open.
     *
     * @return the brewery of the folder, read at its first use
     */
    public static Brewery brewery() {
        return Desk.brewery();
    }

    /**
     * Sets the day that is brewed and priced for.
     *
     * @param day such as "2026-11-25"
     * @return the day
     * @throws IllegalArgumentException if it is no date
     */
    public static LocalDate day(String day) {
        return Desk.day(day);
    }

    /**
     * The day that is brewed and priced for: today, unless another was set.
     *
     * @return the day
     */
    public static LocalDate day() {
        return Desk.day();
    }

    /**
     * Plans a brewing of a beer on the desk's day.
     *
     * @param beer name of the beer
     * @return the brew; printed, it is the whole job on one screen
     */
    public static Brew brew(String beer) {
        return brewery().brew(beer).day(Desk.day());
    }

    /**
     * The beers of the brewery.
     *
     * @return a table
     */
    public static TextTable beers() {
        TextTable table = TextTable.of("beer", "home", "brewed", "#label %", "hops");
        for (Recipe recipe : brewery().recipes().values()) {
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

    /**
     * The plants of the brewery.
     *
     * @return a table
     */
    public static TextTable plants() {
        TextTable table = TextTable.of(
                "plant",
                "mash efficiency",
                "#greatest grist kg",
                "#copper L",
                "#FV L",
                "#boiled off L/h",
                "utilisation");
        for (String name : brewery().plants().keySet()) {
            Plant plant = brewery().plant(name);
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

    /**
     * The hop lots in store, as they stand on the desk's day.
     *
     * @return a table
     */
    public static TextTable lots() {
        TextTable table =
                TextTable.of("lot", "variety", "form", "#crop", "#alpha %", "#oil mL/100 g", "#stock kg", "alpha by");
        brewery().catalogue().hopLots().values().stream()
                .sorted(Comparator.comparing(HopLot::variety)
                        .thenComparing(HopLot::cropYear)
                        .thenComparing(HopLot::id))
                .forEach(lot -> {
                    boolean known = !lot.analyses().get(0).date().isAfter(Desk.day());
                    HopOnTheDay hop = known ? Resolver.onTheDay(lot, brewery().catalogue(), Desk.day()) : null;
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

    /**
     * The hops of the brewing plan, to be planned from the lots on hand.
     *
     * @return the harvest; its plan() says which lots go where
     */
    public static Harvest harvest() {
        return brewery().harvest();
    }

    /**
     * Hops on hand against what a harvest wants, and what to contract for the next.
     *
     * @param harvest the harvest
     * @return text
     */
    public static String cover(Harvest harvest) {
        return HarvestText.of(harvest.cover(), harvest.contracts());
    }

    /**
     * Varieties in store that may stand in for one that is gone, the nearest first.
     *
     * @param variety the variety that is gone
     * @return text
     */
    public static String substitutes(String variety) {
        return HarvestText.of(harvest().substitutes(variety));
    }

    /**
     * What to charge for a beer: its containers with their cost, to be priced.
     *
     * @param brew the brew
     * @return prices; their margin("35 %"), pub("60 %"), strengths(...) and the like say more
     */
    public static SellingPrices pricing(Brew brew) {
        return brew.pricing();
    }

    /**
     * Why a pint of one cost sheet costs more or less than a pint of another. Hop lots of one variety stand for the same hop.
     *
     * @param before the sheet that is compared with
     * @param after the sheet whose cost is to be explained
     * @return the comparison
     */
    public static Comparison compare(CostSheet before, CostSheet after) {
        return WhyItMoved.between(brewery(), before, after);
    }

    /**
     * Why a pint of one brew costs more or less than a pint of another.
     *
     * @param before the brew that is compared with
     * @param after the brew whose cost is to be explained
     * @return the comparison
     */
    public static Comparison compare(Brew before, Brew after) {
        return compare(before.cost(), after.cost());
    }

    /**
     * What could happen to the cost of a pint.
     *
     * @param brew the brew
     * @return a study; its price("mashed goods", "10 %"), alpha("15 %") and the like say what is drawn
     */
    public static RiskStudy risk(Brew brew) {
        return brew.risk().telling(Desk::shareDone);
    }

    /**
     * At what gravity to rack a beer and with what primings, for the condition wanted in each container.
     *
     * @param brew the brew
     * @return a plan; its at("1.0115"), warmest("19 °C"), wanted("firkin", "1.2 volumes") and the like say more
     */
    public static RackingPlan racking(Brew brew) {
        return brew.racking();
    }

    /**
     * The range of list-prices.csv at the costs of the desk's day: which beers earn their tank time.
     *
     * @return every beer and container
     */
    public static PricedRange range() {
        return PricedRange.of(brewery(), Desk.day());
    }

    /**
     * Writes a sheet to print, or its chart. It takes the place of an earlier sheet of the same kind and of no other file.
     *
     * @param thing a brew, its cost() or pricing(), a comparison, a study of risk, a harvest, range(), or brewery() for its
     *     price list
     * @param file ends in .html or .pdf for the sheet, in .svg or .png for its chart
     * @return what was written
     * @throws IllegalArgumentException if the thing has no sheet, or the file may not be written
     */
    public static String sheet(Object thing, String file) {
        return SheetFile.write(thing, file, Desk.day(), Optional.empty());
    }

    /**
     * Writes a brew sheet with the additions at their time of the clock.
     *
     * @param brew the brew
     * @param file ends in .html or .pdf
     * @param clock such as "boil 09:00" or "cast 10:15"
     * @return what was written
     * @throws IllegalArgumentException if the clock is none, or the file may not be written
     */
    public static String sheet(Brew brew, String file, String clock) {
        return SheetFile.write(brew, file, Desk.day(), Optional.of(clock));
    }

    /**
     * A chart in characters: where a pint's money goes, why it moved, what it may come to, which month takes how many hops.
     *
     * @param thing a brew, its cost() or pricing(), a comparison, a study of risk or a harvest
     * @return the chart
     * @throws IllegalArgumentException if the thing has none
     */
    public static String chart(Object thing) {
        return SheetFile.chart(thing);
    }

    /**
     * How a harvest plan came about.
     *
     * @param plan the plan
     * @return a tree of figures
     */
    public static Explanation explain(HarvestPlan plan) {
        return plan.explanation();
    }

    /**
     * How a cost sheet came about.
     *
     * @param sheet the sheet
     * @return a tree of figures
     */
    public static Explanation explain(CostSheet sheet) {
        return sheet.explanation();
    }

    /**
     * How a gyle came about.
     *
     * @param gyle the gyle
     * @return a tree of figures
     */
    public static Explanation explain(Gyle gyle) {
        return gyle.explanation();
    }

    /**
     * An amount in another unit.
     *
     * @param amount such as "2 oz/brl"
     * @param unit such as "g/hL"
     * @return the amount in that unit
     * @throws IllegalArgumentException if the units don't measure the same
     */
    public static String convert(String amount, String unit) {
        return QuantityText.convert(amount, unit);
    }

    /**
     * The words of the console, each with an example from the folder that is open.
     *
     * @return a page to read
     */
    public static Aside help() {
        return new Aside(session -> HelpPages.all(Own.ofDesk(), Desk.width()));
    }

    /**
     * More about one word.
     *
     * @param word such as "brew"
     * @return a page to read
     */
    public static Aside help(String word) {
        return new Aside(session -> HelpPages.of(word, Own.ofDesk(), Desk.width()));
    }

    /**
     * The next of five steps through the whole job, with the names of the folder that is open.
     *
     * @return a page to read
     */
    public static Aside tour() {
        return new Aside(session -> Tour.step(Desk.nextTourStep(Tour.STEPS), Desk.brewery(), Desk.day()));
    }

    /**
     * One of five steps through the whole job.
     *
     * @param step "1" to "5"
     * @return a page to read
     */
    public static Aside tour(String step) {
        return new Aside(session -> Tour.step(Desk.tourStep(Tour.number(step)), Desk.brewery(), Desk.day()));
    }

    /**
     * Takes the last {@code x = ...} back.
     *
     * @return what came of it
     */
    public static Aside undo() {
        return new Aside(Session::undo);
    }

    /**
     * Writes the lines of this session that were answered as a script that runs again.
     *
     * @param file its name, which ends in .jsh
     * @return what came of it
     */
    public static Aside save(String file) {
        return new Aside(session -> SavedScript.write(file, session.lines(), Desk.folder(), Desk.daySet()));
    }

    /**
     * Reads the folder again. Where it has faults, what was read before stays and the faults are told.
     *
     * @return what came of it
     */
    public static Aside reload() {
        return new Aside(session -> Desk.reload() + session.heldFromBefore());
    }

    private static String figure(OptionalDouble value, int decimals) {
        return value.isPresent() ? String.format(Locale.ROOT, "%." + decimals + "f", value.getAsDouble()) : "";
    }
}
