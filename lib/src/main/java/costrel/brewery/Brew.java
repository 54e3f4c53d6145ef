package costrel.brewery;

import costrel.cost.CostBasis;
import costrel.cost.CostSheet;
import costrel.hops.HopLot;
import costrel.hops.HopOnTheDay;
import costrel.measure.Amounts;
import costrel.measure.QuantityText;
import costrel.plant.Plant;
import costrel.recipe.Names;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.Resolver;
import costrel.scaling.Gyle;
import costrel.scaling.Intent;
import costrel.scaling.Scaler;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/**
 * A brewing that is being planned: which beer, on which plant, how much, on what day, with which hops. Each call gives a changed
 * copy; nothing is computed before it is asked for.
 *
 * <pre>{@code
 * Gyle gyle = brewery.brew("Wickgate Bitter").on("Main").length("30 brl").day(LocalDate.of(2026, 11, 25)).gyle();
 * }</pre>
 */
public final class Brew {

    private final Brewery brewery;
    private final Recipe recipe;
    private final BrewOrder order;

    private Brew(Brewery brewery, Recipe recipe, BrewOrder order) {
        this.brewery = brewery;
        this.recipe = recipe;
        this.order = order;
    }

    static Brew of(Brewery brewery, Recipe recipe) {
        return new Brew(brewery, recipe, BrewOrder.of(recipe.home(), recipe.brewLengthL()));
    }

    private Brew with(BrewOrder changed) {
        return new Brew(brewery, recipe, changed);
    }

    /**
     * On another plant.
     *
     * @param name the plant
     * @return the changed brew
     * @throws costrel.recipe.UnknownNameException if no plant is called so
     */
    public Brew on(String name) {
        return with(order.on(brewery.plant(name).name()));
    }

    /**
     * At another brew length.
     *
     * @param brewLength cold wort to collect
     * @return the changed brew
     * @throws IllegalArgumentException if it is not over 0
     */
    public Brew length(Quantity<Volume> brewLength) {
        double asked = Amounts.litres(brewLength);
        if (!(asked > 0)) {
            throw new IllegalArgumentException("brew length: expected over 0 L, found " + asked + " L");
        }
        return with(order.length(asked));
    }

    /**
     * At another brew length.
     *
     * @param brewLength such as "30 brl"
     * @return the changed brew
     * @throws IllegalArgumentException if it is not a volume over 0
     */
    public Brew length(String brewLength) {
        return length(QuantityText.volume(brewLength));
    }

    /**
     * On a day, which picks malt lots, hop lots, alpha acid, prices and, where nothing else is said, duty.
     *
     * @param brewingDay the day of the mash
     * @return the changed brew
     */
    public Brew day(LocalDate brewingDay) {
        return with(order.day(brewingDay));
    }

    /**
     * On a day.
     *
     * @param brewingDay the day of the mash, such as "2026-11-25"
     * @return the changed brew
     * @throws IllegalArgumentException if it is no date
     */
    public Brew day(String brewingDay) {
        return day(Terms.day(brewingDay));
    }

    /**
     * Passing the duty point on another day than the brewing day.
     *
     * @param dutyPoint the day on which the beer is released
     * @return the changed brew
     */
    public Brew dutyDay(LocalDate dutyPoint) {
        return with(order.dutyDay(dutyPoint));
    }

    /**
     * Passing the duty point on another day than the brewing day.
     *
     * @param dutyPoint the day on which the beer is released, such as "2027-02-01"
     * @return the changed brew
     * @throws IllegalArgumentException if it is no date
     */
    public Brew dutyDay(String dutyPoint) {
        return dutyDay(Terms.day(dutyPoint));
    }

    /**
     * With a named lot for a variety instead of the newest.
     *
     * @param variety the variety in the recipe
     * @param lot the lot number
     * @return the changed brew
     * @throws costrel.recipe.UnknownNameException if the recipe has no such variety or no lot is called so
     */
    public Brew lot(String variety, String lot) {
        Map<String, String> inRecipe = new TreeMap<>();
        recipe.hops().forEach(hop -> inRecipe.put(hop.variety(), hop.variety()));
        Names.require("hop variety in " + recipe.name(), inRecipe, variety);
        HopLot found = Names.require("hop lot", brewery.catalogue().hopLots(), lot);
        Map<String, String> more = new TreeMap<>(order.lots());
        more.put(Names.folded(variety), found.id());
        return with(order.lots(more));
    }

    /**
     * With the hops the recipe was brewed with.
     *
     * @return the changed brew
     */
    public Brew sameHops() {
        return with(order.withSameHops());
    }

    /**
     * Weighed out even where the utilisation is only an upper bound.
     *
     * @return the changed brew
     */
    public Brew insist() {
        return with(order.insisted());
    }

    /**
     * Costed on a named basis instead of the brewery's own.
     *
     * @param costBasis what goods are costed at
     * @return the changed brew
     */
    public Brew basis(CostBasis costBasis) {
        return with(order.basis(costBasis));
    }

    /**
     * Costed on a named basis instead of the brewery's own.
     *
     * @param costBasis "replacement", "FIFO", "weighted average", "periodic average" or "standard cost"
     * @return the changed brew
     * @throws IllegalArgumentException if no basis is called so
     */
    public Brew basis(String costBasis) {
        return basis(Terms.basis(costBasis));
    }

    /**
     * What its goods are costed at.
     *
     * @return the basis that was named, else the brewery's own
     */
    public CostBasis basis() {
        return order.basis().orElseGet(() -> brewery.settings().costing().basis());
    }

    /**
     * The beer as it was brewed at home, or as its recipe states it.
     *
     * @return the beer, free of any plant
     */
    public Intent beer() {
        ResolvedRecipe asBrewed =
                Resolver.resolve(recipe, brewery.catalogue(), recipe.brewed().or(order::day));
        return Scaler.read(asBrewed, recipe.home().map(brewery::plant));
    }

    /**
     * The beer with the malts and hops of the brewing day.
     *
     * @return what is to be brewed
     */
    public Intent today() {
        Intent intent = beer();
        if (order.day().isEmpty()) {
            return intent;
        }
        Recipe open = order.sameHops() ? recipe : withoutLots();
        Intent changed = intent.with(Resolver.resolve(open, brewery.catalogue(), order.day()));
        return order.lots().isEmpty() ? changed : changed.withHops(chosenHops(changed));
    }

    private List<HopOnTheDay> chosenHops(Intent intent) {
        List<HopOnTheDay> hops = new ArrayList<>();
        for (Intent.Hop hop : intent.hops()) {
            String chosen = order.lots().get(Names.folded(hop.asRead().variety()));
            hops.add(
                    chosen == null
                            ? hop.now()
                            : Resolver.onTheDay(
                                    Names.require("hop lot", brewery.catalogue().hopLots(), chosen),
                                    brewery.catalogue(),
                                    order.day().orElseThrow()));
        }
        return hops;
    }

    private Recipe withoutLots() {
        List<Recipe.Hop> open = recipe.hops().stream()
                .map(hop -> new Recipe.Hop(
                        hop.variety(), Optional.empty(), hop.statedAlpha(), hop.use(), hop.amount(), hop.holds()))
                .toList();
        return new Recipe(
                recipe.name(),
                recipe.home(),
                recipe.brewed(),
                recipe.brewLengthL(),
                recipe.targets(),
                recipe.method(),
                recipe.grist(),
                open,
                recipe.yeasts(),
                recipe.additions());
    }

    /**
     * The gyle.
     *
     * @return one brewing with its findings
     * @throws IllegalArgumentException if plant or brew length are not known
     */
    public Gyle gyle() {
        return gyleOf(today());
    }

    /** The gyle of a beer that is like this one, such as the same at another strength. */
    Gyle gyleOf(Intent intent) {
        Gyle gyle = Scaler.scale(intent, place(), Amounts.ofLitres(amount()), options());
        return gyle.withFindings(GyleNotes.of(gyle, brewery.catalogue()));
    }

    /**
     * The same wort in as many equal gyles as the vessels need.
     *
     * @return how many, and one of them
     */
    public Scaler.Split gyles() {
        return Scaler.split(today(), place(), Amounts.ofLitres(amount()), options());
    }

    /**
     * What the gyle costs, by the price lists of the brewing day.
     *
     * @return the cost sheet
     * @throws IllegalArgumentException if the brewing day isn't known or a figure is missing
     */
    public CostSheet cost() {
        return costOf(gyle());
    }

    CostSheet costOf(Gyle gyle) {
        return Costing.of(brewery, this, gyle);
    }

    /**
     * What to charge for it, from the cost of its gyle.
     *
     * @return its containers, to be priced
     * @throws IllegalArgumentException if the brewing day isn't known or a figure is missing
     */
    public SellingPrices pricing() {
        return SellingPrices.of(this);
    }

    /**
     * What could happen to the cost of a pint of it.
     *
     * @return a study without spreads yet
     */
    public RiskStudy risk() {
        return RiskStudy.of(this);
    }

    /**
     * At what gravity to rack it and with what primings.
     *
     * @return a plan for the condition of the recipe
     */
    public RackingPlan racking() {
        return RackingPlan.of(this);
    }

    private Scaler.Options options() {
        return new Scaler.Options(brewery.alphaMethodFactors(), order.insist());
    }

    private Plant place() {
        return brewery.plant(order.plant()
                .orElseThrow(() -> new IllegalArgumentException(recipe.name()
                        + ": expected a plant to brew on, such as on(\"" + brewery.firstPlant() + "\"), found none")));
    }

    private double amount() {
        return order.litres()
                .orElseThrow(() -> new IllegalArgumentException(
                        recipe.name() + ": expected a brew length, such as length(\"30 brl\"), found none"));
    }

    /**
     * The recipe.
     *
     * @return as written
     */
    public Recipe recipe() {
        return recipe;
    }

    /**
     * The brewery it belongs to.
     *
     * @return the brewery
     */
    public Brewery brewery() {
        return brewery;
    }

    /**
     * The brewing day.
     *
     * @return empty where none was given
     */
    public Optional<LocalDate> day() {
        return order.day();
    }

    /**
     * The day on which the beer passes the duty point: the brewing day where nothing else was said.
     *
     * @return empty where neither was given
     */
    public Optional<LocalDate> dutyDay() {
        return order.dutyDay().or(order::day);
    }
}
