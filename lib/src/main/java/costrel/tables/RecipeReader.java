package costrel.tables;

import costrel.recipe.Recipe;
import costrel.wort.Bitterness;
import costrel.wort.Gravity;
import costrel.wort.Strength;
import costrel.wort.TemperatureCourse;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads a recipe file, one beer a file: part, item, amount, use, time, holds, lot. Parts are beer (what it is and how it is
 * made, one row a property), grist, hops, yeast, liquor, aid and primings.
 */
public final class RecipeReader {

    static final String NAME = "name";
    static final String PLANT = "plant";
    static final String BREWED = "brewed";
    static final String BREW_LENGTH = "brew length";
    static final String OG = "OG";
    static final String BITTERNESS = "bitterness";
    static final String ATTENUATION = "apparent attenuation";
    static final String FG = "FG";
    static final String STRENGTH = "declared strength";
    static final String CONDITION = "condition";
    static final String LIQUOR_TO_GRIST = "liquor:grist";
    static final String INITIAL_HEAT = "initial heat";
    static final String BOIL = "boil";
    static final String CAST_SHARE = "cast share";
    static final String LIQUORING_BACK = "liquoring back";
    static final String STAND = "stand";
    static final String TANK_TIME = "tank time";
    static final String HOLD = "hold";

    /** Every property of a beer. */
    static final List<String> PROPERTIES = List.of(
            NAME,
            PLANT,
            BREWED,
            BREW_LENGTH,
            OG,
            BITTERNESS,
            ATTENUATION,
            FG,
            STRENGTH,
            CONDITION,
            LIQUOR_TO_GRIST,
            INITIAL_HEAT,
            BOIL,
            CAST_SHARE,
            LIQUORING_BACK,
            STAND,
            TANK_TIME,
            HOLD);

    static final Columns COLUMNS = Columns.required("part", "item", "amount").optional("use", "time", "holds", "lot");

    static final CellKind<Double> EBU = CellKind.of(
            "a bitterness such as 28 EBU", text -> Bitterness.parse(text).ebu());
    private static final CellKind<Double> PERCENT_VOL =
            CellKind.of("a strength such as 4.2 %", text -> Strength.parse(text).percent());
    private static final CellKind<TemperatureCourse> COURSE =
            CellKind.of("a course such as hold 98 °C 20 min", TemperatureCourse::parse);
    private static final CellKind<Recipe.GristHold> GRIST_HOLD =
            CellKind.oneOf(Recipe.GristHold.values(), RecipeReader::label);

    private RecipeReader() {}

    /**
     * Reads a recipe.
     *
     * @param source the file
     * @return the recipe with its names unresolved, or what is wrong
     */
    public static Loaded<Recipe> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            Properties beer = new Properties(table, "item", "amount", table.headerLine());
            CellKind<String> property = CellKind.word("a property of a beer", PROPERTIES);
            RecipeLines lines = new RecipeLines();
            boolean rows = false;
            for (CsvRow row : table) {
                rows = true;
                row.need("part", RecipeLines.PART).ifPresent(part -> {
                    if (part == RecipeLines.Part.BEER) {
                        row.need("item", property).ifPresent(name -> beer.put(row, name));
                        nothingIn(row, "use", "time", "holds", "lot");
                    } else {
                        lines.take(row, part);
                    }
                });
            }
            return rows ? finish(table, beer, lines) : table.refused("none", "rows of a recipe below the column names");
        }
    }

    static String label(Recipe.GristHold hold) {
        return hold == Recipe.GristHold.EXTRACT ? "extract" : "colour";
    }

    /** Refuses what stands in cells that mean nothing in such a row. */
    static void nothingIn(CsvRow row, String... columns) {
        for (String column : columns) {
            if (!row.cell(column).isEmpty()) {
                row.problem(column, TableProblem.quoted(row.cell(column)), "nothing in a row of this part");
            }
        }
    }

    private static Loaded<Recipe> finish(CsvTable table, Properties beer, RecipeLines lines) {
        Optional<String> name = beer.need(NAME, CellKind.TEXT);
        Optional<String> plant = beer.may(PLANT, CellKind.TEXT);
        Optional<LocalDate> brewed = beer.may(BREWED, Cells.DATE);
        OptionalDouble brewLength = beer.mayFigure(BREW_LENGTH, Cells.LITRES);
        Optional<Recipe.Targets> targets = targets(beer);
        OptionalDouble boil = beer.needFigure(BOIL, Cells.MINUTES);
        Optional<Recipe.Method> method = method(beer, boil);
        lines.finish(boil);
        if (lines.grist().isEmpty() && table.problems().isEmpty()) {
            table.problems().add(0, "part", "none", "at least one row of grist");
        }
        return table.loaded(() -> new Recipe(
                name.orElseThrow(),
                plant,
                brewed,
                brewLength,
                targets.orElseThrow(),
                method.orElseThrow(),
                lines.grist(),
                lines.hops(),
                lines.yeasts(),
                lines.additions()));
    }

    private static Optional<Recipe.Targets> targets(Properties beer) {
        Optional<Gravity> og = beer.may(OG, Cells.GRAVITY);
        OptionalDouble ebu = beer.mayFigure(BITTERNESS, EBU);
        OptionalDouble attenuation = attenuation(beer, og);
        OptionalDouble strength = beer.mayFigure(STRENGTH, PERCENT_VOL);
        OptionalDouble condition = beer.mayFigure(CONDITION, Cells.VOLUMES_OF_GAS);
        return beer.build(() -> new Recipe.Targets(og, ebu, attenuation, strength, condition));
    }

    /** Apparent attenuation as stated, or from FG by FG = OG·(1 − A) on excess degrees. */
    private static OptionalDouble attenuation(Properties beer, Optional<Gravity> og) {
        OptionalDouble stated = beer.mayFigure(ATTENUATION, Cells.PART);
        Optional<Gravity> fg = beer.may(FG, Cells.GRAVITY);
        if (!beer.has(FG)) {
            return stated;
        }
        if (beer.has(ATTENUATION)) {
            beer.problem(FG, beer.shown(FG), "either FG or apparent attenuation, not both");
            return OptionalDouble.empty();
        }
        if (!beer.has(OG)) {
            beer.problem(FG, beer.shown(FG), "a row 'OG' with it, or apparent attenuation instead");
            return OptionalDouble.empty();
        }
        if (fg.isEmpty() || og.isEmpty()) {
            return OptionalDouble.empty();
        }
        double attenuation = 1 - fg.get().excessDegrees() / og.get().excessDegrees();
        if (!(attenuation >= 0 && attenuation <= 1)) {
            beer.problem(FG, beer.shown(FG), "a gravity from 1.000 to the OG");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(attenuation);
    }

    private static Optional<Recipe.Method> method(Properties beer, OptionalDouble boil) {
        OptionalDouble liquorToGrist = beer.mayFigure(LIQUOR_TO_GRIST, Cells.LITRES_PER_KILOGRAM);
        OptionalDouble heat = beer.mayFigure(INITIAL_HEAT, Cells.CELSIUS);
        OptionalDouble cast = beer.mayFigure(CAST_SHARE, Cells.PART);
        OptionalDouble back = beer.mayFigure(LIQUORING_BACK, Cells.PART);
        if (beer.has(CAST_SHARE) && beer.has(LIQUORING_BACK)) {
            beer.problem(LIQUORING_BACK, beer.shown(LIQUORING_BACK), "either cast share or liquoring back, not both");
        }
        double castShare = cast.orElse(1 - back.orElse(0));
        Optional<TemperatureCourse> stand = beer.may(STAND, COURSE);
        OptionalDouble tank = beer.mayFigure(TANK_TIME, Cells.DAYS);
        Recipe.GristHold hold = beer.may(HOLD, GRIST_HOLD).orElse(Recipe.GristHold.EXTRACT);
        return beer.build(
                () -> new Recipe.Method(liquorToGrist, heat, boil.orElseThrow(), castShare, stand, tank, hold));
    }
}
