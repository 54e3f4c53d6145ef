package costrel.tables;

import costrel.hops.HopUse;
import costrel.measure.Share;
import costrel.recipe.Recipe;
import costrel.wort.Gravity;
import java.util.OptionalDouble;

/** Writes a recipe as the text of a recipe file, which {@link RecipeReader} reads back to an equal recipe. */
public final class RecipeWriter {

    private static final String BEER = "beer";

    private RecipeWriter() {}

    /**
     * The file of a recipe.
     *
     * @param recipe the recipe
     * @return CSV text
     */
    public static String text(Recipe recipe) {
        CsvOut out = new CsvOut();
        out.row("part", "item", "amount", "use", "time", "holds", "lot");
        beer(out, recipe);
        recipe.grist().forEach(line -> grist(out, line));
        recipe.hops().forEach(line -> hops(out, line));
        recipe.yeasts().forEach(line -> out.row("yeast", line.name(), AmountText.print(line.amount()), "", "", "", ""));
        recipe.additions().forEach(line -> addition(out, line));
        return out.text();
    }

    private static void beer(CsvOut out, Recipe recipe) {
        property(out, RecipeReader.NAME, recipe.name());
        recipe.home().ifPresent(plant -> property(out, RecipeReader.PLANT, plant));
        recipe.brewed().ifPresent(day -> property(out, RecipeReader.BREWED, day.toString()));
        figure(out, RecipeReader.BREW_LENGTH, recipe.brewLengthL(), " L");
        Recipe.Targets targets = recipe.targets();
        targets.og().ifPresent(og -> property(out, RecipeReader.OG, gravity(og)));
        figure(out, RecipeReader.BITTERNESS, targets.ebu(), " EBU");
        targets.apparentAttenuation().ifPresent(share -> property(out, RecipeReader.ATTENUATION, share(share)));
        figure(out, RecipeReader.STRENGTH, targets.declaredStrength(), " %");
        figure(out, RecipeReader.CONDITION, targets.volumesOfCondition(), " volumes");
        Recipe.Method method = recipe.method();
        figure(out, RecipeReader.LIQUOR_TO_GRIST, method.liquorToGrist(), " L/kg");
        figure(out, RecipeReader.INITIAL_HEAT, method.initialHeatC(), " °C");
        property(out, RecipeReader.BOIL, minutes(method.boilMinutes()));
        property(out, RecipeReader.CAST_SHARE, share(method.castShare()));
        method.stand().ifPresent(course -> property(out, RecipeReader.STAND, course.toString()));
        figure(out, RecipeReader.TANK_TIME, method.tankDays(), " d");
        property(out, RecipeReader.HOLD, RecipeReader.label(method.hold()));
    }

    private static void grist(CsvOut out, Recipe.Grist line) {
        OptionalDouble time = line.minutesBeforeCast();
        out.row(
                "grist",
                line.material(),
                AmountText.print(line.amount()),
                "",
                time.isPresent() ? minutes(time.getAsDouble()) : "",
                line.forColour() ? "colour" : "",
                "");
    }

    private static void hops(CsvOut out, Recipe.Hop line) {
        String alpha = line.statedAlpha().isPresent()
                ? RecipeLines.ALPHA + " " + share(line.statedAlpha().getAsDouble())
                : "";
        String lot = line.lot().orElse("");
        out.row(
                "hops",
                line.variety(),
                AmountText.print(line.amount()),
                line.use().label(),
                time(line.use()),
                line.holds().label(),
                lot + (lot.isEmpty() || alpha.isEmpty() ? "" : "; ") + alpha);
    }

    private static void addition(CsvOut out, Recipe.Addition line) {
        String part = switch (line.into()) {
            case MASH_LIQUOR, SPARGE_LIQUOR, ALL_LIQUOR, LIQUORING_BACK -> "liquor";
            case COPPER, FV, TANK, CASK -> "aid";
            case PRIMINGS -> "primings";
        };
        out.row(part, line.name(), AmountText.print(line.amount()), line.into().label(), "", "", "");
    }

    private static String time(HopUse use) {
        if (use instanceof HopUse.Copper copper) {
            return minutes(copper.minutesBeforeCast());
        }
        if (use instanceof HopUse.HotStand stand && !Double.isInfinite(stand.minutes())) {
            return minutes(stand.minutes());
        }
        return "";
    }

    private static void property(CsvOut out, String name, String value) {
        out.row(BEER, name, value, "", "", "", "");
    }

    private static void figure(CsvOut out, String name, OptionalDouble value, String unit) {
        value.ifPresent(number -> property(out, name, CsvOut.number(number) + unit));
    }

    /** As SG where that is the whole of it, else as degrees. */
    private static String gravity(Gravity gravity) {
        String sg = gravity.toString();
        return Gravity.parse(sg).equals(gravity) ? sg : CsvOut.number(gravity.excessDegrees()) + " °";
    }

    private static String share(double fraction) {
        return Share.of(fraction).toString();
    }

    private static String minutes(double minutes) {
        return CsvOut.number(minutes) + " min";
    }
}
