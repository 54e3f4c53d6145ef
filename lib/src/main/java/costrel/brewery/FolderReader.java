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
import costrel.hops.HopLot;
import costrel.hops.HopVariety;
import costrel.packaging.Container;
import costrel.plant.Plant;
import costrel.pricing.ListPrice;
import costrel.recipe.Catalogue;
import costrel.recipe.GristMaterial;
import costrel.recipe.Names;
import costrel.recipe.Recipe;
import costrel.recipe.Supply;
import costrel.stock.StockLedger;
import costrel.stock.UnitCost;
import costrel.tables.AlphaMethodReader;
import costrel.tables.BrewerySettings;
import costrel.tables.BrewerySettingsReader;
import costrel.tables.BrewingPlanReader;
import costrel.tables.ContainerChargesReader;
import costrel.tables.ContainerReader;
import costrel.tables.CsvSource;
import costrel.tables.DutyFiles;
import costrel.tables.GristMaterialReader;
import costrel.tables.HopLotReader;
import costrel.tables.HopVarietyReader;
import costrel.tables.HouseRulesReader;
import costrel.tables.IngredientTables;
import costrel.tables.ListPriceReader;
import costrel.tables.Loaded;
import costrel.tables.MaltLotReader;
import costrel.tables.NameCheck;
import costrel.tables.PackageReader;
import costrel.tables.PackagingPlanReader;
import costrel.tables.PlantReader;
import costrel.tables.ProductionReader;
import costrel.tables.RateReader;
import costrel.tables.RecipeReader;
import costrel.tables.SupplyReader;
import costrel.tables.TableProblem;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;

/** Reads every file of a brewery's folder and gathers every fault before it gives up. */
final class FolderReader {

    private final Path folder;
    private final List<TableProblem> problems = new ArrayList<>();
    private final List<String> assumed = new ArrayList<>();

    private FolderReader(Path folder) {
        this.folder = folder;
    }

    static Loaded<Brewery> read(Path folder) {
        if (!Files.isDirectory(folder)) {
            return Loaded.refused(List.of(new TableProblem(
                    String.valueOf(folder.getFileName()),
                    0,
                    "",
                    Files.exists(folder) ? "a file" : "nothing",
                    "a brewery's folder with brewery.csv, plants.csv and recipes in it")));
        }
        FolderReader reader = new FolderReader(folder);
        Map<String, String> before = FolderState.of(folder);
        Optional<Brewery> brewery = reader.brewery();
        reader.problems(FolderState.changes(before, FolderState.of(folder)));
        return brewery.isPresent() && reader.problems.isEmpty()
                ? Loaded.of(brewery.get(), reader.assumed)
                : Loaded.refused(reader.problems);
    }

    private Optional<Brewery> brewery() {
        Optional<BrewerySettings> settings = needed("brewery.csv", BrewerySettingsReader::read);
        Map<String, GristMaterial> materials = overlaid(
                IngredientTables.materials(), "grist-materials.csv", GristMaterialReader::read, GristMaterial::name);
        Map<String, HopVariety> varieties =
                overlaid(IngredientTables.varieties(), "hop-varieties.csv", HopVarietyReader::read, HopVariety::name);
        Map<String, Supply> supplies =
                overlaid(IngredientTables.supplies(), "supplies.csv", SupplyReader::read, Supply::name);
        Map<String, Container> containers =
                overlaid(IngredientTables.containers(), "containers.csv", ContainerReader::read, Container::name);
        List<Catalogue.MaltLot> maltLots =
                wanted("malt-lots.csv", source -> MaltLotReader.read(source, materials), List::of);
        List<HopLot> hopLots = wanted("hop-lots.csv", HopLotReader::read, List::of);
        Map<String, Plant> plants =
                byName(needed("plants.csv", PlantReader::read).orElse(List.of()), Plant::name);
        Catalogue catalogue = new Catalogue(materials, maltLots, varieties, byName(hopLots, HopLot::id), supplies);
        Map<String, Recipe> recipes = recipes(catalogue, plants);
        Optional<CurrencyUnit> currency = settings.map(BrewerySettings::currency);
        PriceList prices = PriceFolder.prices(
                this, settings.map(set -> set.costing().exchangeRateAgeDays()).orElseGet(OptionalInt::empty));
        Optional<StockLedger> stock = StockFolder.ledger(this, currency);
        List<UnitCost> standardCosts = StockFolder.standardCosts(this, currency, stock);
        List<Rate> rates = new ArrayList<>();
        for (Path file : files("rates*.csv")) {
            take(RateReader.read(CsvSource.file(file))).ifPresent(rates::addAll);
        }
        List<PackageItem> packages = wanted("packages.csv", PackageReader::read, List::of);
        if (exists("packages.csv")) {
            problems.addAll(NameCheck.packages(source("packages.csv"), containers.keySet()));
        }
        if (exists("hop-lots.csv")) {
            problems.addAll(NameCheck.hopLots(source("hop-lots.csv"), varieties.keySet()));
        }
        Map<String, Map<Container, Double>> plans = plans(containers, recipes);
        ProductionYears production = wanted("production.csv", ProductionReader::read, ProductionYears::unknown);
        List<PlannedBrew> brewingPlan = wanted("brewing-plan.csv", BrewingPlanReader::read, List::of);
        if (exists("brewing-plan.csv")) {
            problems.addAll(NameCheck.brewingPlan(source("brewing-plan.csv"), recipes.keySet(), plants.keySet()));
        }
        HouseRules hopRules = wanted("hop-rules.csv", HouseRulesReader::read, () -> HouseRules.USUAL);
        AlphaMethodFactors factors =
                wanted("alpha-methods.csv", AlphaMethodReader::read, () -> AlphaMethodFactors.NONE);
        List<ListPrice> listPrices = wanted("list-prices.csv", ListPriceReader::read, List::of);
        if (exists("list-prices.csv")) {
            problems.addAll(NameCheck.listPrices(
                    source("list-prices.csv"), recipes.keySet(), containers.keySet(), plants.keySet()));
        }
        Map<String, DutySchedule> duties =
                take(IngredientTables.duty(ownDuty())).orElse(Map.of());
        Optional<ContainerCharges> charges = take(ContainerChargesReader.read(
                given("container-losses.csv"),
                given("packaging-weights.csv"),
                given("packaging-fees.csv"),
                containers.keySet()));
        forgiveNames();
        if (settings.isEmpty() || !problems.isEmpty()) {
            return Optional.empty();
        }
        Optional<DutySchedule> duty = Names.find(duties, settings.get().country());
        if (duty.isEmpty()) {
            problems.add(new TableProblem(
                    "brewery.csv",
                    0,
                    "country",
                    settings.get().country(),
                    "a country with duty tables: " + String.join(", ", duties.keySet())));
            return Optional.empty();
        }
        return Optional.of(new Brewery(
                settings.get(),
                catalogue,
                recipes,
                plants,
                prices,
                rates,
                containers,
                packages,
                plans,
                duty.get(),
                production,
                brewingPlan,
                hopRules,
                factors,
                assumed,
                listPrices,
                stock,
                standardCosts,
                charges.orElseGet(ContainerCharges::none)));
    }

    /** A name is not held unknown where the file that would say it could not be read: that file is to be mended first. */
    private void forgiveNames() {
        Set<String> spoilt = new HashSet<>();
        Map<String, String> said = Map.of(
                "plants.csv", "plant",
                "hop-lots.csv", "hop lot",
                "hop-varieties.csv", "hop variety",
                "grist-materials.csv", "grist material",
                "supplies.csv", "supply",
                "containers.csv", "container");
        for (TableProblem problem : problems) {
            if (!problem.expected().startsWith(NameCheck.KNOWN)) {
                String file = problem.file();
                String what = file.startsWith("recipes/") ? "beer" : said.get(file);
                if (what != null) {
                    spoilt.add(what);
                }
            }
        }
        problems.removeIf(problem ->
                spoilt.stream().anyMatch(what -> problem.expected().startsWith(NameCheck.KNOWN + what)));
    }

    private DutyFiles ownDuty() {
        return new DutyFiles(
                given("duty-rates.csv"),
                given("duty-reliefs.csv"),
                given("strength-factors.csv"),
                given("duty-bases.csv"),
                given("duty-rates-by-volume.csv"));
    }

    private Map<String, Recipe> recipes(Catalogue catalogue, Map<String, Plant> plants) {
        Map<String, Recipe> recipes = new LinkedHashMap<>();
        Path inner = folder.resolve("recipes");
        for (Path file : files(inner, "*.csv")) {
            String name = "recipes/" + file.getFileName();
            Optional<Recipe> recipe = take(RecipeReader.read(CsvSource.file(file, name)));
            problems.addAll(NameCheck.recipe(CsvSource.file(file, name), catalogue, plants.keySet()));
            recipe.ifPresent(beer -> {
                Optional<Recipe> twin = Names.find(recipes, beer.name());
                if (twin.isPresent()) {
                    problems.add(new TableProblem(
                            name, 0, "name", beer.name(), "a name that no other recipe in the folder has"));
                }
                recipes.put(beer.name(), beer);
            });
        }
        return recipes;
    }

    private Map<String, Map<Container, Double>> plans(Map<String, Container> containers, Map<String, Recipe> recipes) {
        if (!exists("packaging-plans.csv")) {
            return Map.of();
        }
        problems.addAll(NameCheck.plans(source("packaging-plans.csv"), containers.keySet(), recipes.keySet()));
        Map<String, Map<Container, Double>> plans = new LinkedHashMap<>();
        wanted("packaging-plans.csv", PackagingPlanReader::read, Map::of).forEach((beer, planned) -> {
            Map<Container, Double> shares = new LinkedHashMap<>();
            for (PackagingPlanReader.Planned line : planned) {
                Names.find(containers, line.container())
                        .ifPresent(container -> shares.merge(container, line.share(), Double::sum));
            }
            plans.put(beer, Brewery.ordered(shares));
        });
        return plans;
    }

    private <T> Map<String, T> overlaid(
            List<T> builtIn, String file, Function<CsvSource, Loaded<List<T>>> reader, Function<T, String> name) {
        Map<String, T> things = byName(builtIn, name);
        for (T own : wanted(file, reader, List::of)) {
            things.keySet().removeIf(key -> Names.folded(key).equals(Names.folded(name.apply(own))));
            things.put(name.apply(own), own);
        }
        return things;
    }

    private static <T> Map<String, T> byName(List<T> things, Function<T, String> name) {
        return things.stream()
                .collect(Collectors.toMap(name, Function.identity(), (first, second) -> second, LinkedHashMap::new));
    }

    private <T> Optional<T> needed(String file, Function<CsvSource, Loaded<T>> reader) {
        return take(reader.apply(source(file)));
    }

    <T> T wanted(String file, Function<CsvSource, Loaded<T>> reader, Supplier<T> without) {
        return exists(file) ? take(reader.apply(source(file))).orElseGet(without) : without.get();
    }

    void problems(List<TableProblem> more) {
        problems.addAll(more);
    }

    <T> Optional<T> take(Loaded<T> loaded) {
        problems.addAll(loaded.problems());
        assumed.addAll(loaded.assumed());
        return loaded.sound() ? Optional.of(loaded.orThrow()) : Optional.empty();
    }

    boolean exists(String file) {
        return Files.exists(folder.resolve(file), LinkOption.NOFOLLOW_LINKS);
    }

    private Optional<CsvSource> given(String file) {
        return exists(file) ? Optional.of(source(file)) : Optional.empty();
    }

    CsvSource source(String file) {
        return CsvSource.file(folder.resolve(file), file);
    }

    List<Path> files(String pattern) {
        return files(folder, pattern);
    }

    /** Files of a folder by name, so that price lists are read in the same order everywhere. */
    private List<Path> files(Path inner, String pattern) {
        if (!Files.isDirectory(inner)) {
            if (Files.exists(inner, LinkOption.NOFOLLOW_LINKS)) {
                refuseFolder(inner, Files.isSymbolicLink(inner) ? "a link that leads to none" : "a file");
            }
            return List.of();
        }
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(inner, pattern)) {
            found.forEach(files::add);
        } catch (AccessDeniedException denied) {
            refuseFolder(inner, "one without permission to read it");
        } catch (IOException | DirectoryIteratorException fault) {
            refuseFolder(inner, String.valueOf(fault.getMessage()));
        }
        files.sort(java.util.Comparator.comparing(file -> file.getFileName().toString()));
        return files;
    }

    private void refuseFolder(Path inner, String found) {
        problems.add(new TableProblem(String.valueOf(inner.getFileName()), 0, "", found, "a folder that can be read"));
    }
}
