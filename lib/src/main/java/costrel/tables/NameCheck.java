package costrel.tables;

import costrel.recipe.Catalogue;
import costrel.recipe.GristMaterial;
import costrel.recipe.Names;
import costrel.recipe.Supply;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Looks up the names that a file uses, and says in which line and column one is unknown and which are near. */
public final class NameCheck {

    /** How what was expected in place of an unknown name begins. */
    public static final String KNOWN = "a known ";

    private NameCheck() {}

    /**
     * Checks the containers of packages.csv.
     *
     * @param source the file
     * @param containers the containers there are
     * @return a problem for each unknown name; none where the file can't be read, which its own reader reports
     */
    public static List<TableProblem> packages(CsvSource source, Collection<String> containers) {
        Known known = new Known("container", containers);
        return checked(source, PackageReader.COLUMNS, (row, problems) -> known.check(row, "container", problems));
    }

    /**
     * Checks the containers of container-losses.csv.
     *
     * @param source the file
     * @param containers the containers there are
     * @return a problem for each unknown name; none where the file can't be read, which its own reader reports
     */
    public static List<TableProblem> containerLosses(CsvSource source, Collection<String> containers) {
        Known known = new Known("container", containers);
        return checked(source, ContainerLossReader.COLUMNS, (row, problems) -> known.check(row, "container", problems));
    }

    /**
     * Checks the containers and materials of packaging-weights.csv.
     *
     * @param source the file
     * @param containers the containers there are
     * @param materials the materials that fees are known for, on any day
     * @return a problem for each unknown name; none where the file can't be read, which its own reader reports
     */
    public static List<TableProblem> packagingWeights(
            CsvSource source, Collection<String> containers, Collection<String> materials) {
        Known known = new Known("container", containers);
        Known charged = new Known("material with a packaging fee", materials);
        return checked(source, PackagingWeightReader.COLUMNS, (row, problems) -> {
            known.check(row, "container", problems);
            charged.check(row, "material", problems);
        });
    }

    /**
     * Checks the beers and containers of packaging-plans.csv.
     *
     * @param source the file
     * @param containers the containers there are
     * @param beers the beers there are
     * @return a problem for each unknown name; none where the file can't be read, which its own reader reports
     */
    public static List<TableProblem> plans(CsvSource source, Collection<String> containers, Collection<String> beers) {
        Known known = new Known("container", containers);
        Known recipes = new Known("beer", beers);
        return checked(source, PackagingPlanReader.COLUMNS, (row, problems) -> {
            recipes.check(row, "beer", problems);
            known.check(row, "container", problems);
        });
    }

    /**
     * Checks the beers and plants of brewing-plan.csv.
     *
     * @param source the file
     * @param beers the beers there are
     * @param plants the plants there are
     * @return a problem for each unknown name; none where the file can't be read, which its own reader reports
     */
    public static List<TableProblem> brewingPlan(
            CsvSource source, Collection<String> beers, Collection<String> plants) {
        Known recipes = new Known("beer", beers);
        Known known = new Known("plant", plants);
        return checked(source, BrewingPlanReader.COLUMNS, (row, problems) -> {
            recipes.check(row, "beer", problems);
            known.check(row, "plant", problems);
        });
    }

    /**
     * Checks the beers, containers and plants of list-prices.csv.
     *
     * @param source the file
     * @param beers the beers there are
     * @param containers the containers there are
     * @param plants the plants there are
     * @return a problem for each unknown name; none where the file can't be read, which its own reader reports
     */
    public static List<TableProblem> listPrices(
            CsvSource source, Collection<String> beers, Collection<String> containers, Collection<String> plants) {
        Known recipes = new Known("beer", beers);
        Known filled = new Known("container", containers);
        Known known = new Known("plant", plants);
        return checked(source, ListPriceReader.COLUMNS, (row, problems) -> {
            recipes.check(row, "beer", problems);
            filled.check(row, "container", problems);
            known.check(row, "plant", problems);
        });
    }

    /**
     * Checks the suppliers and items of surcharges.csv.
     *
     * @param source the file
     * @param suppliers the suppliers of the price lists
     * @param items the items of the price lists
     * @return a problem for each unknown name; none where the file can't be read, which its own reader reports
     */
    public static List<TableProblem> surcharges(
            CsvSource source, Collection<String> suppliers, Collection<String> items) {
        Known sellers = new Known("supplier of the price lists", suppliers);
        Known goods = new Known("item of the price lists", items);
        return checked(source, AdjustmentReader.COLUMNS, (row, problems) -> {
            sellers.check(row, "supplier", problems);
            goods.check(row, "item", problems);
        });
    }

    /**
     * Checks the suppliers of carriage.csv.
     *
     * @param source the file
     * @param suppliers the suppliers of the price lists
     * @return a problem for each unknown name; none where the file can't be read, which its own reader reports
     */
    public static List<TableProblem> carriage(CsvSource source, Collection<String> suppliers) {
        Known sellers = new Known("supplier of the price lists", suppliers);
        return checked(source, CarriageReader.COLUMNS, (row, problems) -> sellers.check(row, "supplier", problems));
    }

    /**
     * Checks the varieties of hop-lots.csv.
     *
     * @param source the file
     * @param varieties the varieties there are
     * @return a problem for each unknown name; none where the file can't be read, which its own reader reports
     */
    public static List<TableProblem> hopLots(CsvSource source, Collection<String> varieties) {
        Known known = new Known("hop variety", varieties);
        return checked(source, HopLotReader.COLUMNS, (row, problems) -> known.check(row, "variety", problems));
    }

    /**
     * Checks the names of a recipe: its plant, materials, varieties, lots, yeast and additions.
     *
     * @param source the recipe's file
     * @param catalogue what a recipe can name
     * @param plants the plants there are
     * @return a problem for each unknown name; none where the file can't be read, which its own reader reports
     */
    public static List<TableProblem> recipe(CsvSource source, Catalogue catalogue, Collection<String> plants) {
        Known homes = new Known("plant", plants);
        Known materials = new Known("grist material", catalogue.materials().keySet());
        Known sugars = new Known("copper sugar for primings", sugars(catalogue));
        Known varieties = new Known("hop variety", catalogue.varieties().keySet());
        Known lots = new Known("hop lot", catalogue.hopLots().keySet());
        Known yeasts = new Known("yeast", supplies(catalogue, true));
        Known others = new Known("liquor treatment or process aid", supplies(catalogue, false));
        return checked(source, RecipeReader.COLUMNS, (row, problems) -> {
            switch (row.cell("part").toLowerCase(Locale.ROOT)) {
                case "beer" -> {
                    if (Names.folded(row.cell("item")).equals("plant")) {
                        homes.check(row, "amount", problems);
                    }
                }
                case "grist" -> materials.check(row, "item", problems);
                case "hops" -> {
                    varieties.check(row, "item", problems);
                    RecipeLines.lotNumber(row.name("lot")).ifPresent(lot -> lots.check(row, "lot", lot, problems));
                }
                case "yeast" -> yeasts.check(row, "item", problems);
                case "liquor", "aid" -> others.check(row, "item", problems);
                case "primings" -> sugars.check(row, "item", problems);
                default -> {}
            }
        });
    }

    private static List<String> sugars(Catalogue catalogue) {
        return catalogue.materials().values().stream()
                .filter(material -> !material.mashed())
                .map(GristMaterial::name)
                .toList();
    }

    private static List<String> supplies(Catalogue catalogue, boolean yeast) {
        return catalogue.supplies().values().stream()
                .filter(supply -> (supply.kind() == Supply.Kind.YEAST) == yeast)
                .map(Supply::name)
                .toList();
    }

    private interface RowCheck {
        void check(CsvRow row, List<TableProblem> problems);
    }

    private static List<TableProblem> checked(CsvSource source, Columns columns, RowCheck check) {
        List<TableProblem> problems = new ArrayList<>();
        try (CsvTable table = CsvTable.open(source, columns)) {
            for (CsvRow row : table) {
                check.check(row, problems);
            }
        }
        return problems;
    }

    /** Names by their folded form. */
    private static final class Known {
        private final String what;
        private final Collection<String> names;
        private final Set<String> folded;

        Known(String what, Collection<String> names) {
            this.what = what;
            this.names = names;
            this.folded = names.stream().map(Names::folded).collect(Collectors.toSet());
        }

        void check(CsvRow row, String column, List<TableProblem> problems) {
            check(row, column, row.name(column), problems);
        }

        void check(CsvRow row, String column, String name, List<TableProblem> problems) {
            if (!name.isEmpty() && !folded.contains(Names.folded(name))) {
                List<String> near = Names.nearest(names, name);
                problems.add(new TableProblem(
                        row.file(),
                        row.line(),
                        column,
                        TableProblem.quoted(name),
                        KNOWN + what + (near.isEmpty() ? "" : ", the nearest being " + String.join(" or ", near))));
            }
        }
    }
}
