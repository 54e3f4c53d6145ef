package costrel.brewery;

import costrel.cost.CostSheet;
import costrel.harvest.DryHopNotes;
import costrel.hops.HopLot;
import costrel.hops.HopOnTheDay;
import costrel.measure.Amounts;
import costrel.measure.QuantityText;
import costrel.plant.Plant;
import costrel.recipe.Names;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.Resolver;
import costrel.scaling.Finding;
import costrel.scaling.Gyle;
import costrel.scaling.Intent;
import costrel.scaling.Scaler;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
    private final Optional<String> plant;
    private final OptionalDouble litres;
    private final Optional<LocalDate> day;
    private final Optional<LocalDate> dutyDay;
    private final Map<String, String> lots;
    private final boolean sameHops;
    private final boolean insist;

    private Brew(
            Brewery brewery,
            Recipe recipe,
            Optional<String> plant,
            OptionalDouble litres,
            Optional<LocalDate> day,
            Optional<LocalDate> dutyDay,
            Map<String, String> lots,
            boolean sameHops,
            boolean insist) {
        this.brewery = brewery;
        this.recipe = recipe;
        this.plant = plant;
        this.litres = litres;
        this.day = day;
        this.dutyDay = dutyDay;
        this.lots = lots;
        this.sameHops = sameHops;
        this.insist = insist;
    }

    static Brew of(Brewery brewery, Recipe recipe) {
        return new Brew(
                brewery,
                recipe,
                recipe.home(),
                recipe.brewLengthL(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                false,
                false);
    }

    /**
     * On another plant.
     *
     * @param name the plant
     * @return the changed brew
     * @throws costrel.recipe.UnknownNameException if no plant is called so
     */
    public Brew on(String name) {
        String found = brewery.plant(name).name();
        return new Brew(brewery, recipe, Optional.of(found), litres, day, dutyDay, lots, sameHops, insist);
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
        return new Brew(brewery, recipe, plant, OptionalDouble.of(asked), day, dutyDay, lots, sameHops, insist);
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
        return new Brew(brewery, recipe, plant, litres, Optional.of(brewingDay), dutyDay, lots, sameHops, insist);
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
        return new Brew(brewery, recipe, plant, litres, day, Optional.of(dutyPoint), lots, sameHops, insist);
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
     * @throws costrel.recipe.UnknownNameException if no lot is called so
     */
    public Brew lot(String variety, String lot) {
        HopLot found = Names.require("hop lot", brewery.catalogue().hopLots(), lot);
        Map<String, String> more = new TreeMap<>(lots);
        more.put(Names.folded(variety), found.id());
        return new Brew(brewery, recipe, plant, litres, day, dutyDay, Map.copyOf(more), false, insist);
    }

    /**
     * With the hops the recipe was brewed with.
     *
     * @return the changed brew
     */
    public Brew sameHops() {
        return new Brew(brewery, recipe, plant, litres, day, dutyDay, Map.of(), true, insist);
    }

    /**
     * Weighed out even where the utilisation is only an upper bound.
     *
     * @return the changed brew
     */
    public Brew insist() {
        return new Brew(brewery, recipe, plant, litres, day, dutyDay, lots, sameHops, true);
    }

    /**
     * The beer as it was brewed at home, or as its recipe states it.
     *
     * @return the beer, free of any plant
     */
    public Intent beer() {
        ResolvedRecipe asBrewed =
                Resolver.resolve(recipe, brewery.catalogue(), recipe.brewed().or(() -> day));
        return Scaler.read(asBrewed, recipe.home().map(brewery::plant));
    }

    /**
     * The beer with the malts and hops of the brewing day.
     *
     * @return what is to be brewed
     */
    public Intent today() {
        Intent intent = beer();
        if (day.isEmpty()) {
            return intent;
        }
        Recipe open = sameHops ? recipe : withoutLots();
        Intent changed = intent.with(Resolver.resolve(open, brewery.catalogue(), day));
        return lots.isEmpty() ? changed : changed.withHops(chosenHops(changed));
    }

    private List<HopOnTheDay> chosenHops(Intent intent) {
        List<HopOnTheDay> hops = new ArrayList<>();
        for (Intent.Hop hop : intent.hops()) {
            String chosen = lots.get(Names.folded(hop.asRead().variety()));
            hops.add(
                    chosen == null
                            ? hop.now()
                            : Resolver.onTheDay(
                                    Names.require("hop lot", brewery.catalogue().hopLots(), chosen),
                                    brewery.catalogue(),
                                    day.orElseThrow()));
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
        List<Finding> more = shortOfHops(gyle);
        gyle.hops().stream()
                .filter(hop -> hop.use().isDryHop() && hop.kg() > 0)
                .flatMap(
                        hop -> DryHopNotes.of(
                                hop.hop().form(), hop.gramsPerHl(), OptionalDouble.empty(), OptionalDouble.empty())
                                .stream())
                .distinct()
                .forEach(note -> more.add(new Finding(Finding.Weight.NOTE, "dry hops: " + note, "")));
        return gyle.withFindings(more);
    }

    /** Lots of which the gyle takes more than is in store. */
    private List<Finding> shortOfHops(Gyle gyle) {
        Map<String, Double> wanted = new TreeMap<>();
        gyle.hops().forEach(hop -> wanted.merge(hop.hop().lot(), hop.weighedKg(), Double::sum));
        List<Finding> findings = new ArrayList<>();
        wanted.forEach((id, kg) -> Names.find(brewery.catalogue().hopLots(), id)
                .filter(lot -> lot.stockKg().isPresent() && kg > lot.stockKg().getAsDouble() + 1e-9)
                .ifPresent(lot -> findings.add(new Finding(
                        Finding.Weight.CAUTION,
                        String.format(
                                Locale.ROOT,
                                "%s lot %s: %.2f kg wanted, %.2f kg in store",
                                lot.variety(),
                                id,
                                kg,
                                lot.stockKg().getAsDouble()),
                        "take another lot for part of it, or brew less"))));
        return findings;
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

    private Scaler.Options options() {
        return new Scaler.Options(brewery.alphaMethodFactors(), insist);
    }

    private Plant place() {
        return brewery.plant(plant.orElseThrow(() -> new IllegalArgumentException(recipe.name()
                + ": expected a plant to brew on, such as on(\"" + brewery.firstPlant() + "\"), found none")));
    }

    private double amount() {
        return litres.orElseThrow(() -> new IllegalArgumentException(
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
        return day;
    }

    /**
     * The day on which the beer passes the duty point: the brewing day where nothing else was said.
     *
     * @return empty where neither was given
     */
    public Optional<LocalDate> dutyDay() {
        return dutyDay.or(() -> day);
    }
}
