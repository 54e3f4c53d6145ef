package costrel.brewery;

import costrel.buying.PriceList;
import costrel.cost.ContainerCharges;
import costrel.cost.PackageItem;
import costrel.cost.Rate;
import costrel.duty.DutySchedule;
import costrel.duty.ProductionYears;
import costrel.harvest.HouseRules;
import costrel.harvest.PlannedBrew;
import costrel.hops.AlphaMethodFactors;
import costrel.packaging.Container;
import costrel.plant.MashEfficiency;
import costrel.plant.Plant;
import costrel.pricing.ListPrice;
import costrel.recipe.Catalogue;
import costrel.recipe.Names;
import costrel.recipe.Recipe;
import costrel.recipe.Resolver;
import costrel.scaling.Scaler;
import costrel.stock.StockLedger;
import costrel.stock.UnitCost;
import costrel.tables.BrewerySettings;
import costrel.tables.Loaded;
import costrel.tables.TableProblems;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * A brewery's folder of CSV files, opened once. It never changes; open the folder again to see changed files.
 *
 * <pre>{@code
 * Brewery brewery = Brewery.open(Path.of("samples/lanternfold"));
 * }</pre>
 *
 * @param settings name, currency, country and VAT
 * @param catalogue everything that recipes can name
 * @param recipes recipes by beer
 * @param plants plants by name, as their file states them
 * @param prices all price lists
 * @param rates what is charged beside what is bought
 * @param containers containers by name, built-in ones included
 * @param packages what one container takes
 * @param plans containers of each beer with their shares of what is racked
 * @param duty the duty schedule of the brewery's country
 * @param production pure alcohol made by production year
 * @param brewingPlan gyles that are to be brewed
 * @param hopRules what the brewery lays down for its hops
 * @param alphaMethodFactors factors between alpha methods that the brewery states
 * @param assumed defaults that its files left to the library, in words
 * @param listPrices what it sells at, and how much of it in a year
 * @param stock receipts and issues of its store; empty where it keeps no ledger here
 * @param standardCosts set costs of goods with the day each begins
 * @param containerCharges loss of containers and fees on packaging by weight
 */
public record Brewery(
        BrewerySettings settings,
        Catalogue catalogue,
        Map<String, Recipe> recipes,
        Map<String, Plant> plants,
        PriceList prices,
        List<Rate> rates,
        Map<String, Container> containers,
        List<PackageItem> packages,
        Map<String, Map<Container, Double>> plans,
        DutySchedule duty,
        ProductionYears production,
        List<PlannedBrew> brewingPlan,
        HouseRules hopRules,
        AlphaMethodFactors alphaMethodFactors,
        List<String> assumed,
        List<ListPrice> listPrices,
        Optional<StockLedger> stock,
        List<UnitCost> standardCosts,
        ContainerCharges containerCharges) {

    /**
     * Opens a folder.
     *
     * @param folder the brewery's folder
     * @return the brewery
     * @throws TableProblems with every fault of every file, where there is one
     */
    public static Brewery open(Path folder) {
        return load(folder).orThrow();
    }

    /**
     * Opens a folder and keeps the faults as a value.
     *
     * @param folder the brewery's folder
     * @return the brewery, or every fault of every file
     */
    public static Loaded<Brewery> load(Path folder) {
        return FolderReader.read(folder);
    }

    /**
     * Name of the brewery.
     *
     * @return as brewery.csv states it
     */
    public String name() {
        return settings.name();
    }

    /**
     * Currency of its cost sheets.
     *
     * @return as brewery.csv states it
     */
    public CurrencyUnit currency() {
        return settings.currency();
    }

    /**
     * Plans a brewing of a beer. Without more said it is on the home plant at the recipe's own brew length.
     *
     * @param beer name of the beer
     * @return the brew, to be told plant, brew length and day
     * @throws costrel.recipe.UnknownNameException if no beer is called so; the nearest names are offered
     */
    public Brew brew(String beer) {
        return Brew.of(this, recipe(beer));
    }

    /**
     * The hops of the brewing plan, to be planned from the lots on hand.
     *
     * @return the harvest of all gyles of brewing-plan.csv, for least cost unless told otherwise
     */
    public Harvest harvest() {
        return Harvest.of(this);
    }

    /**
     * A recipe.
     *
     * @param beer name of the beer
     * @return as written
     * @throws costrel.recipe.UnknownNameException if no beer is called so; the nearest names are offered
     */
    public Recipe recipe(String beer) {
        return Names.require("beer", recipes, beer);
    }

    /**
     * A plant with its mash efficiency, read on its reference gyle where it states an extract efficiency.
     *
     * @param name name of the plant
     * @return the plant
     * @throws costrel.recipe.UnknownNameException if no plant is called so; the nearest names are offered
     */
    public Plant plant(String name) {
        Plant plant = Names.require("plant", plants, name);
        if (plant.efficiency() instanceof MashEfficiency.OfReference stated) {
            Recipe reference = recipe(stated.referenceBeer());
            return Scaler.withMashEfficiency(plant, Resolver.resolve(reference, catalogue, reference.brewed()));
        }
        return plant;
    }

    /**
     * Containers of a beer.
     *
     * @param beer name of the beer
     * @return shares of what is racked, in the order of the plan
     * @throws IllegalArgumentException if the beer has no packaging plan
     */
    public Map<Container, Double> packagingPlan(String beer) {
        return Names.find(plans, beer)
                .orElseThrow(() -> new IllegalArgumentException(beer
                        + ": expected a packaging plan, such as firkin 100 %, in packaging-plans.csv, found none"));
    }

    String firstPlant() {
        return plants.keySet().stream().findFirst().orElse("Main");
    }

    /** Keeps the order of a map and closes it to change. */
    static <K, V> Map<K, V> ordered(Map<K, V> map) {
        return java.util.Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    public Brewery {
        recipes = ordered(recipes);
        plants = ordered(plants);
        rates = List.copyOf(rates);
        containers = ordered(containers);
        packages = List.copyOf(packages);
        brewingPlan = List.copyOf(brewingPlan);
        plans = ordered(plans);
        assumed = List.copyOf(assumed);
        listPrices = List.copyOf(listPrices);
        standardCosts = List.copyOf(standardCosts);
    }
}
