package costrel.tables;

import static costrel.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.duty.DutySchedule;
import costrel.harvest.CropYearAlpha;
import costrel.hops.HopVariety;
import costrel.packaging.Container;
import costrel.recipe.GristMaterial;
import costrel.recipe.Supply;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class IngredientTablesTest {

    private static final double EXACT = 1e-12;

    /** L°/kg: what four printed decimals of a density make of the figure. */
    private static final double DENSITY_ROUNDING = 0.6;

    /** mg/L of an ion for 1 g/hL, printed to four decimals. */
    private static final double ION_ROUNDING = 0.0003;

    private static final Map<String, GristMaterial> MATERIALS =
            byName(IngredientTables.materials(), GristMaterial::name);
    private static final Map<String, HopVariety> VARIETIES = byName(IngredientTables.varieties(), HopVariety::name);
    private static final Map<String, Supply> SUPPLIES = byName(IngredientTables.supplies(), Supply::name);

    @Test
    void every_row_names_a_source_that_the_register_explains() throws IOException {
        String register = register();
        MATERIALS.values().forEach(row -> explained(register, row.name(), row.source()));
        VARIETIES.values().forEach(row -> explained(register, row.name(), row.source()));
        SUPPLIES.values().forEach(row -> explained(register, row.name(), row.source()));
        IngredientTables.cropYears().forEach(row -> explained(register, row.variety(), row.source()));
    }

    @Test
    void malts_keep_within_their_published_analyses() {
        for (Map<String, String> row : ReferenceTable.read("tables/malt_analyses.csv")) {
            GristMaterial malt = material(row.get("name"));
            double moisture = malt.moistureOrRefuse();
            double dry = malt.hweOrRefuse() / (1 - moisture);
            within(number(row, "hwe_low"), dry, number(row, "hwe_high"), row);
            within(number(row, "moisture_low"), 100 * moisture, number(row, "moisture_high"), row);
            within(number(row, "colour_low"), malt.ebcOrRefuse(), number(row, "colour_high"), row);
            String typical = Objects.requireNonNull(row.get("colour_typical"));
            if (!typical.isEmpty()) {
                assertEquals(Double.parseDouble(typical), malt.ebcOrRefuse(), EXACT, row.toString());
            }
        }
    }

    @Test
    void extract_on_dry_matter_becomes_extract_as_is() {
        // Bairds: 308 L°/kg dry at 4.0 % of moisture.
        assertEquals(308 * 0.96, material("pale ale malt").hweOrRefuse(), 1e-9);
    }

    @Test
    void sugars_follow_the_densities_of_their_solutions() {
        for (Map<String, String> row : ReferenceTable.read("tables/sugar_densities.csv")) {
            double density = number(row, "density_g_per_mL");
            // Litre-degrees of a kilogram in a solution of 10 % by weight; water 0.998203 g/mL at 20 °C.
            double dry = 1000 * (density / 0.998203 - 1) / (0.1 * density);
            assertEquals(
                    dry * number(row, "dry_share"),
                    material(row.get("name")).hweOrRefuse(),
                    DENSITY_ROUNDING,
                    row.toString());
        }
    }

    @Test
    void adjuncts_of_1907_are_converted_from_brewers_pounds() {
        // Bailey, The Brewers Analyst, 1907, p. 232, as quoted: 98.44 and 103.15 lb/quarter; 1 lb/quarter is 2.982861
        // L°/kg.
        assertEquals(98.44 * 2.982861, material("maize grits").hweOrRefuse(), 0.06);
        assertEquals(103.15 * 2.982861, material("flaked rice").hweOrRefuse(), 0.06);
    }

    @Test
    void where_the_sources_are_silent_the_cell_is_blank() {
        for (String name : List.of(
                "torrefied wheat", "flaked barley", "flaked oats", "mild ale malt", "crystal 400", "Vienna malt")) {
            assertTrue(material(name).hwe().isEmpty(), name);
        }
        assertTrue(material("black malt").ebc().isEmpty());
        assertTrue(material("brewing invert sugar").moisture().isEmpty());
    }

    @Test
    void hops_have_the_ranges_of_corvallis() {
        for (Map<String, String> row : ReferenceTable.read("tables/hop_alpha_corvallis.csv")) {
            HopVariety hop = Objects.requireNonNull(VARIETIES.get(row.get("name")), row.toString());
            assertEquals(number(row, "alpha_min"), 100 * hop.alphaLow().orElseThrow(), EXACT * 100, row.toString());
            assertEquals(number(row, "alpha_mean"), 100 * hop.alphaMean().orElseThrow(), EXACT * 100, row.toString());
            assertEquals(number(row, "alpha_max"), 100 * hop.alphaHigh().orElseThrow(), EXACT * 100, row.toString());
            assertEquals("USDA " + row.get("accession"), hop.source());
            String retained = Objects.requireNonNull(row.get("retained"));
            assertEquals(
                    retained.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(retained) / 100),
                    hop.retainedSixMonths(),
                    row.toString());
        }
    }

    @Test
    void crop_years_have_the_spread_of_corvallis() {
        // USDA-ARS Corvallis, cultivar descriptions: as in the resource, accession by accession.
        Map<String, CropYearAlpha> years = byName(IngredientTables.cropYears(), CropYearAlpha::variety);
        List<Map<String, String>> published = ReferenceTable.read("hops/crop_years.csv");
        assertEquals(published.size(), years.size());
        for (Map<String, String> row : published) {
            CropYearAlpha year = Objects.requireNonNull(years.get(row.get("variety")), row.toString());
            assertEquals(number(row, "least"), 100 * year.low(), EXACT * 100, row.toString());
            assertEquals(number(row, "mean"), 100 * year.mean(), EXACT * 100, row.toString());
            assertEquals(number(row, "most"), 100 * year.high(), EXACT * 100, row.toString());
            assertEquals("USDA " + row.get("accession"), year.source());
            // the Fuggle's description covers 13 years, every other 10
            assertEquals(year.variety().equals("Fuggle") ? 13 : 10, year.years(), row.toString());
            assertTrue(VARIETIES.containsKey(year.variety()), "a variety of hop-varieties.csv: " + year.variety());
        }
    }

    @Test
    void salts_bring_their_ions_by_stoichiometry() {
        // IUPAC standard atomic masses; 1 g/hL of a salt is 10 mg/L.
        double ca = 40.078;
        double mg = 24.305;
        double na = 22.98976928;
        double cl = 35.45;
        double so4 = 32.06 + 4 * 15.999;
        double water = 2 * 1.008 + 15.999;
        double hco3 = 1.008 + 12.011 + 3 * 15.999;
        ions("gypsum", ca + so4 + 2 * water, Map.of("Ca", ca, "SO4", so4));
        ions("calcium chloride dihydrate", ca + 2 * cl + 2 * water, Map.of("Ca", ca, "Cl", 2 * cl));
        ions("calcium chloride flake 77 %", (ca + 2 * cl) / 0.77, Map.of("Ca", ca, "Cl", 2 * cl));
        ions("calcium chloride anhydrous", ca + 2 * cl, Map.of("Ca", ca, "Cl", 2 * cl));
        ions("Epsom salt", mg + so4 + 7 * water, Map.of("Mg", mg, "SO4", so4));
        ions("common salt", na + cl, Map.of("Na", na, "Cl", cl));
        ions("sodium bicarbonate", na + hco3, Map.of("Na", na, "HCO3", hco3));
        // CRC Handbook, 102nd ed.: 11.642 and 17.966 mol/L; 1 mL/hL is a hundred-thousandth of it.
        ions("hydrochloric acid 36 %", 1000 / 11.642, Map.of("Cl", cl));
        ions("sulphuric acid 96 %", 1000 / 17.966, Map.of("SO4", so4));
    }

    @Test
    void acids_have_their_equivalents() {
        // CRC Handbook, 102nd ed.: 11.642 mol/L of HCl; 17.966 mol/L of H2SO4 with two equivalents each.
        assertEquals(11.642, supply("hydrochloric acid 36 %").normality().orElseThrow(), EXACT);
        assertEquals(2 * 17.966, supply("sulphuric acid 96 %").normality().orElseThrow(), EXACT * 100);
    }

    @Test
    void ale_yeast_has_the_cells_of_suihko() {
        // Suihko, Vilpola and Linko, J. Inst. Brew. 99 (1993) 341: 2.3 million/mL and 0.3 g/L for each degree Plato.
        assertEquals(
                2.3e6 * 1e3 / 0.3 * 1e3, supply("ale yeast").cellsPerKilogram().orElseThrow(), 0.005e12);
    }

    @Test
    void cereals_milk_and_sulphites_are_declared() {
        // Regulation (EU) No 1169/2011, Annex II points 1, 7 and 12; isinglass is exempt by point 4 (b).
        for (GristMaterial material : MATERIALS.values()) {
            String name = material.name();
            boolean free = name.contains("maize") || name.contains("rice") || !material.mashed();
            assertEquals(
                    !free || name.startsWith("lactose"), !material.allergens().isEmpty(), name);
        }
        assertEquals(List.of("wheat (gluten)"), material("torrefied wheat").allergens());
        assertEquals(List.of("oats (gluten)"), material("flaked oats").allergens());
        assertEquals(List.of("milk (lactose)"), material("lactose monohydrate").allergens());
        assertEquals(List.of("sulphites"), supply("sodium metabisulphite").allergens());
        assertEquals(List.of(), supply("isinglass finings").allergens());
    }

    @Test
    void casks_hold_their_gallons() {
        // Weights and Measures Act 1985: a gallon is 4.54609 L; casks of 4½, 9, 18, 36 gallons: common practice, no
        // source.
        Map<String, Container> containers = byName(IngredientTables.containers(), Container::name);
        Map<String, String> gallons = Map.of("pin", "4.5", "firkin", "9", "kilderkin", "18", "barrel", "36");
        gallons.forEach((name, count) -> assertEquals(
                0,
                new BigDecimal("4.54609")
                        .multiply(new BigDecimal(count))
                        .compareTo(Objects.requireNonNull(containers.get(name)).nominalL()),
                name));
        assertEquals(
                List.of("sediment 0 L, not stated", "undrinkable 0 L, not stated"),
                Objects.requireNonNull(containers.get("firkin")).defaultsUsed());
    }

    @Test
    void duty_is_that_of_the_acts() {
        DutySchedule uk = Objects.requireNonNull(IngredientTables.duty().get("UK"));
        // Finance (No. 2) Act 2023 Sch. 7 and 8, first rates: 9.27, 21.01 and 19.08 on draught.
        assertEquals(new BigDecimal("9.27"), rate(uk, LocalDate.of(2023, 8, 1), "3.4", false));
        assertEquals(new BigDecimal("21.01"), rate(uk, LocalDate.of(2025, 1, 31), "3.5", false));
        assertEquals(new BigDecimal("19.08"), rate(uk, LocalDate.of(2025, 1, 31), "8.4", true));
        assertFalse(uk.bands().isEmpty());
        assertFalse(uk.factors().isEmpty());
    }

    private static BigDecimal rate(DutySchedule duty, LocalDate day, String strength, boolean draught) {
        return duty.rate(day, new BigDecimal(strength), draught).ratePerLpa();
    }

    private static void ions(String name, double gramsPerMole, Map<String, Double> gramsOfIon) {
        Map<String, Double> found =
                supply(name).ions().stream().collect(Collectors.toMap(Supply.Ion::symbol, Supply.Ion::mgPerLitre));
        assertEquals(gramsOfIon.keySet(), found.keySet(), name);
        gramsOfIon.forEach((ion, grams) -> assertEquals(
                10 * grams / gramsPerMole, Objects.requireNonNull(found.get(ion)), ION_ROUNDING, name + " " + ion));
    }

    private static void within(double low, double value, double high, Map<String, String> row) {
        assertTrue(value >= low - 1e-9 && value <= high + 1e-9, () -> value + " is outside " + row);
    }

    private static void explained(String register, String name, String source) {
        String id = source.startsWith("USDA ") ? "USDA and a number" : source;
        assertTrue(register.contains("| " + id + " |"), () -> name + ": source '" + source + "' is not in SOURCES.md");
    }

    private static String register() throws IOException {
        try (InputStream in = Objects.requireNonNull(
                IngredientTables.class.getResourceAsStream("/costrel/ingredient-tables/SOURCES.md"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static GristMaterial material(@Nullable String name) {
        return Objects.requireNonNull(MATERIALS.get(name), String.valueOf(name));
    }

    private static Supply supply(String name) {
        return Objects.requireNonNull(SUPPLIES.get(name), name);
    }

    private static <T> Map<String, T> byName(List<T> rows, Function<T, String> name) {
        return rows.stream().collect(Collectors.toMap(name, row -> row));
    }
}
