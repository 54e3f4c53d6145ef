package costrel.tables;

import costrel.hops.HopForm;
import costrel.hops.Utilisation;
import costrel.plant.DipTable;
import costrel.plant.MashEfficiency;
import costrel.plant.Plant;
import costrel.recipe.Names;
import costrel.wort.TemperatureCourse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads plants.csv: plant, property, value, one row a property. What a plant doesn't state takes the default of the model,
 * which is then named among what was assumed.
 */
public final class PlantReader {

    private static final Columns COLUMNS = Columns.required("plant", "property", "value");

    /** Forms of hops that hold wort or beer when they are drained. */
    private static final List<HopForm> HELD_FORMS =
            List.of(HopForm.LEAF, HopForm.T90, HopForm.T45, HopForm.CO2_EXTRACT);

    private static final String FILL_LOSS = "fill loss";
    private static final String HOP_RETENTION = "hop retention ";
    private static final String DRY_HOP_RETENTION = "dry hop retention ";
    private static final String STAND = "stand";

    private static final List<String> WORDS = List.of(
            "mash tun volume",
            "greatest grist",
            "mash tun dead space",
            "mash heat allowance",
            "grain retention",
            "displacement",
            "grist temperature",
            "copper volume",
            "copper headspace",
            "boiling temperature",
            "evaporation",
            "copper left",
            "hopback dead space",
            "hopback contact",
            "hopback temperature",
            "least leaf hops",
            STAND,
            "FV volume",
            "FV headspace",
            "FV loss",
            "tank loss",
            "malt weighed to",
            "sugar weighed to",
            "hops weighed to",
            "others weighed to",
            "sack",
            "bitterness correction",
            "held condition",
            "warmest temperature");

    private static final CellKind<TemperatureCourse> COURSE =
            CellKind.of("a course such as hold 98 °C 20 min", TemperatureCourse::parse);

    private PlantReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @return the plants in file order, or what is wrong
     */
    public static Loaded<List<Plant>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            Map<String, Draft> drafts = new LinkedHashMap<>();
            CellKind<String> property = CellKind.word("a property of a plant", everyWord());
            String last = "";
            for (CsvRow row : table) {
                Optional<String> name = row.need("plant", CellKind.TEXT);
                if (name.isEmpty()) {
                    continue;
                }
                Draft draft = drafts.computeIfAbsent(
                        Names.folded(name.get()), key -> new Draft(table, name.get(), row.line()));
                if (!last.equals(draft.name) && draft.rows > 0) {
                    row.problem(
                            "plant",
                            TableProblem.quoted(name.get()) + " again, after line " + draft.firstLine,
                            "all rows of a plant together, and one plant of a name");
                }
                draft.rows++;
                last = draft.name;
                draft.take(row, property);
            }
            List<Plant> plants = new ArrayList<>();
            drafts.values().forEach(draft -> draft.plant().ifPresent(plants::add));
            return table.loaded(() -> List.copyOf(plants));
        }
    }

    static List<String> everyWord() {
        List<String> words = new ArrayList<>(WORDS);
        words.addAll(PlantRules.WORDS);
        words.add(FILL_LOSS);
        words.addAll(DipPoints.WORDS);
        for (HopForm form : HELD_FORMS) {
            words.add(HOP_RETENTION + form.label());
            words.add(DRY_HOP_RETENTION + form.label());
        }
        return words;
    }

    /** A plant while its rows come in. */
    private static final class Draft {
        private final String name;
        private final long firstLine;
        private final Properties of;
        private int rows;

        Draft(CsvTable table, String name, long firstLine) {
            this.name = name;
            this.firstLine = firstLine;
            this.of = new Properties(table, "property", "value", firstLine);
        }

        void take(CsvRow row, CellKind<String> property) {
            String written = row.cell("property");
            if (startsWith(written, FILL_LOSS) && written.length() > FILL_LOSS.length()) {
                of.put(
                        row,
                        FILL_LOSS + " " + written.substring(FILL_LOSS.length()).strip());
            } else if (PlantRules.isCopperPoint(written)) {
                of.put(row, PlantRules.copperPoint(written));
            } else if (DipPoints.isOne(written)) {
                of.put(row, DipPoints.named(written));
            } else {
                row.need("property", property).ifPresent(word -> of.put(row, word));
            }
            if (!row.sound()) {
                of.spoil();
            }
        }

        Optional<Plant> plant() {
            Optional<Plant.MashTun> tun = mashTun();
            Optional<Plant.Copper> copper = copper();
            Optional<Plant.Hopback> hopback = hopback(copper);
            Optional<Plant.Fv> fv = fv();
            Optional<Plant.Losses> losses = losses();
            Optional<Plant.Weighing> weighing = weighing();
            PlantRules rules = new PlantRules(of);
            Optional<MashEfficiency> efficiency = rules.efficiency();
            Optional<Utilisation> utilisation = rules.utilisation();
            TemperatureCourse stand = stand();
            double correction =
                    of.mayFigure("bitterness correction", Cells.NUMBER).orElse(1);
            OptionalDouble held = of.mayFigure("held condition", Cells.VOLUMES_OF_GAS);
            OptionalDouble warmest = of.mayFigure("warmest temperature", Cells.CELSIUS);
            Optional<DipTable> copperDips = DipPoints.of(of, "copper");
            Optional<DipTable> fvDips = DipPoints.of(of, "FV");
            return of.build(() -> new Plant(
                    name,
                    tun.orElseThrow(),
                    copper.orElseThrow(),
                    hopback.orElseThrow(),
                    stand,
                    fv.orElseThrow(),
                    losses.orElseThrow(),
                    efficiency.orElseThrow(),
                    utilisation.orElseThrow(),
                    correction,
                    weighing.orElseThrow(),
                    held,
                    warmest,
                    copperDips.orElseThrow(),
                    fvDips.orElseThrow()));
        }

        private Optional<Plant.MashTun> mashTun() {
            OptionalDouble volume = of.mayFigure("mash tun volume", Cells.LITRES);
            OptionalDouble greatest = of.mayFigure("greatest grist", Cells.KILOGRAMS);
            double dead = assumed("mash tun dead space", Cells.LITRES, 0, "0 L");
            double heat = assumed("mash heat allowance", Cells.KELVIN, 0, "0 °C");
            double retention = assumed(
                    "grain retention",
                    Cells.LITRES_PER_KILOGRAM,
                    Plant.DEFAULT_GRAIN_RETENTION,
                    CsvOut.number(Plant.DEFAULT_GRAIN_RETENTION) + " L/kg");
            double displacement = assumed(
                    "displacement",
                    Cells.LITRES_PER_KILOGRAM,
                    Plant.DEFAULT_DISPLACEMENT,
                    CsvOut.number(Plant.DEFAULT_DISPLACEMENT) + " L/kg");
            OptionalDouble grist = of.mayFigure("grist temperature", Cells.CELSIUS);
            return of.build(() -> new Plant.MashTun(volume, greatest, dead, heat, retention, displacement, grist));
        }

        private Optional<Plant.Copper> copper() {
            OptionalDouble volume = of.mayFigure("copper volume", Cells.LITRES);
            double headspace = assumed("copper headspace", Cells.PART, 0, "0 %");
            double boiling = assumed("boiling temperature", Cells.CELSIUS, 100, "100 °C");
            OptionalDouble evaporation = of.needFigure("evaporation", Cells.LITRES_PER_HOUR);
            double left = assumed("copper left", Cells.LITRES, 0, "0 L");
            return of.build(() -> new Plant.Copper(volume, headspace, boiling, evaporation.orElseThrow(), left));
        }

        private Optional<Plant.Hopback> hopback(Optional<Plant.Copper> copper) {
            double dead = assumed("hopback dead space", Cells.LITRES, 0, "0 L");
            double contact = assumed("hopback contact", Cells.MINUTES, 0, "0 min");
            OptionalDouble celsius = of.mayFigure("hopback temperature", Cells.CELSIUS);
            OptionalDouble least = of.mayFigure("least leaf hops", Cells.KILOGRAMS);
            Map<HopForm, Double> retention = byForm(HOP_RETENTION, Plant.DEFAULT_HOP_RETENTION);
            if (contact > 0 && !of.has("hopback temperature")) {
                of.assume(name, "hopback temperature", "that of the boil");
            }
            return of.build(() -> new Plant.Hopback(
                    dead,
                    retention,
                    contact,
                    celsius.orElseGet(() -> copper.orElseThrow().boilingCelsius()),
                    least));
        }

        private TemperatureCourse stand() {
            Optional<TemperatureCourse> course = of.may(STAND, COURSE);
            if (!of.has(STAND)) {
                of.assume(name, STAND, "none");
            }
            return course.orElse(TemperatureCourse.of());
        }

        private Optional<Plant.Fv> fv() {
            OptionalDouble volume = of.mayFigure("FV volume", Cells.LITRES);
            double headspace = assumed("FV headspace", Cells.PART, 0, "0 %");
            return of.build(() -> new Plant.Fv(volume, headspace));
        }

        private Optional<Plant.Losses> losses() {
            double fv = assumed("FV loss", Cells.PART, 0, "0 %");
            double tank = assumed("tank loss", Cells.PART, 0, "0 %");
            Map<HopForm, Double> retention = byForm(DRY_HOP_RETENTION, Plant.DEFAULT_DRY_HOP_RETENTION);
            Map<String, Double> fill = new HashMap<>();
            fill.put("", assumed(FILL_LOSS, Cells.PART, 0, "0 %"));
            for (String property : of.names()) {
                if (property.startsWith(FILL_LOSS + " ")) {
                    of.mayFigure(property, Cells.PART)
                            .ifPresent(share -> fill.put(property.substring(FILL_LOSS.length() + 1), share));
                }
            }
            return of.build(() -> new Plant.Losses(fv, tank, retention, fill));
        }

        private Optional<Plant.Weighing> weighing() {
            double malt = of.mayFigure("malt weighed to", Cells.KILOGRAMS).orElse(0);
            double sugar = of.mayFigure("sugar weighed to", Cells.KILOGRAMS).orElse(0);
            double hops = of.mayFigure("hops weighed to", Cells.KILOGRAMS).orElse(0);
            double others = of.mayFigure("others weighed to", Cells.KILOGRAMS).orElse(0);
            OptionalDouble sack = of.mayFigure("sack", Cells.KILOGRAMS);
            return of.build(() -> new Plant.Weighing(malt, sugar, hops, others, sack));
        }

        private Map<HopForm, Double> byForm(String prefix, double otherwise) {
            Map<HopForm, Double> byForm = new HashMap<>();
            for (HopForm form : HELD_FORMS) {
                byForm.put(
                        form,
                        assumed(
                                prefix + form.label(),
                                Cells.LITRES_PER_KILOGRAM,
                                otherwise,
                                CsvOut.number(otherwise) + " L/kg"));
            }
            return byForm;
        }

        private double assumed(String property, CellKind<Double> kind, double otherwise, String words) {
            return of.orAssume(name, property, kind, otherwise, words);
        }

        private static boolean startsWith(String text, String prefix) {
            return text.regionMatches(true, 0, prefix + " ", 0, prefix.length() + 1);
        }
    }
}
