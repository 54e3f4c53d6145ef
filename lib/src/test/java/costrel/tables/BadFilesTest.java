package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.recipe.GristMaterial;
import costrel.stock.Movement;
import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each case is two files: a table with faults, and the problems that a person reading it would list. */
class BadFilesTest {

    static final Map<String, Function<CsvSource, Loaded<?>>> READERS = readers();

    @TestFactory
    Stream<DynamicTest> every_fault_is_told_with_its_place() throws IOException, URISyntaxException {
        List<Path> cases = cases();
        assertTrue(cases.size() >= 40, () -> "expected the cases, found " + cases.size());
        return cases.stream()
                .map(file -> DynamicTest.dynamicTest(folder(file) + "/" + file.getFileName(), () -> check(file)));
    }

    @Test
    void faults_are_told_alike_in_every_country() throws IOException, URISyntaxException {
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                for (Path file : cases()) {
                    check(file);
                }
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void no_damage_to_a_file_breaks_its_reader() throws IOException, URISyntaxException {
        long seed = Long.getLong("seed", 19790405);
        Random random = new Random(seed);
        for (Path file : cases()) {
            Function<CsvSource, Loaded<?>> reader = Objects.requireNonNull(READERS.get(folder(file)), folder(file));
            String good = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            for (int i = 0; i < 150; i++) {
                String damaged = damaged(good, random);
                try {
                    Loaded<?> loaded = reader.apply(CsvSource.text("t.csv", damaged));
                    assertEquals(loaded.sound(), loaded.problems().isEmpty());
                } catch (AssertionError | RuntimeException e) {
                    throw new AssertionError("-Dseed=" + seed + ", from " + file + ":\n" + damaged, e);
                }
            }
        }
    }

    /** The text with some lines and cells left out, doubled, swapped or filled with something else. */
    private static String damaged(String text, Random random) {
        List<String> others =
                List.of("", "0", "-1 kg", "NaN", "1e9", "12 %", "2026-02-30", "£1", "\uFFFD", "x\ny", "=1");
        List<String> lines = new ArrayList<>(text.lines().toList());
        for (int i = random.nextInt(3); i >= 0 && !lines.isEmpty(); i--) {
            int at = random.nextInt(lines.size());
            List<String> cells = new ArrayList<>(List.of(lines.get(at).split(",", -1)));
            int cell = random.nextInt(cells.size());
            switch (random.nextInt(5)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(random.nextInt(lines.size()), lines.get(at));
                case 2 ->
                    lines.set(
                            at,
                            lines.get(at)
                                    .substring(0, random.nextInt(lines.get(at).length() + 1)));
                default -> {
                    cells.set(cell, others.get(random.nextInt(others.size())));
                    lines.set(at, String.join(",", cells));
                }
            }
        }
        return String.join("\n", lines);
    }

    private static void check(Path file) throws IOException {
        Function<CsvSource, Loaded<?>> reader = Objects.requireNonNull(READERS.get(folder(file)), folder(file));
        Loaded<?> loaded = reader.apply(CsvSource.file(file));
        String expected = Files.readString(file.resolveSibling(
                file.getName(file.getNameCount() - 1).toString().replaceAll("\\.csv$", ".txt")));
        String found = loaded.problems().stream().map(TableProblem::text).collect(Collectors.joining("\n")) + "\n";
        assertEquals(expected, found);
        assertFalse(loaded.sound());
        TableProblems thrown = assertThrows(TableProblems.class, loaded::orThrow);
        assertEquals(loaded.problems(), thrown.problems());
        assertEquals(found, thrown.getMessage() + "\n");
    }

    static List<Path> cases() throws IOException, URISyntaxException {
        URL folder = Objects.requireNonNull(BadFilesTest.class.getResource("bad/prices/decimal-comma.csv"));
        Path bad = Path.of(folder.toURI()).resolve("../..").normalize();
        try (Stream<Path> files = Files.walk(bad)) {
            return files.filter(file -> file.toString().endsWith(".csv"))
                    .sorted()
                    .toList();
        }
    }

    static String folder(Path file) {
        return file.getName(file.getNameCount() - 2).toString();
    }

    private static Map<String, Function<CsvSource, Loaded<?>>> readers() {
        Map<String, GristMaterial> materials = new LinkedHashMap<>();
        IngredientTables.materials().stream()
                .filter(material -> material.name().equals("pale ale malt"))
                .forEach(material -> materials.put(material.name(), material));
        return Map.ofEntries(
                Map.entry("prices", PriceReader::read),
                Map.entry("plants", PlantReader::read),
                Map.entry("recipes", RecipeReader::read),
                Map.entry("hop-lots", HopLotReader::read),
                Map.entry("hop-varieties", HopVarietyReader::read),
                Map.entry("crop-year-alpha", CropYearAlphaReader::read),
                Map.entry("grist-materials", GristMaterialReader::read),
                Map.entry("malt-lots", source -> MaltLotReader.read(source, materials)),
                Map.entry("supplies", SupplyReader::read),
                Map.entry("rates", RateReader::read),
                Map.entry("containers", ContainerReader::read),
                Map.entry("packages", PackageReader::read),
                Map.entry("surcharges", AdjustmentReader::read),
                Map.entry("carriage", CarriageReader::read),
                Map.entry("exchange-rates", ExchangeRateReader::read),
                Map.entry("stock", BadFilesTest::ledger),
                Map.entry(
                        "standard-costs",
                        source -> StandardCostReader.read(source, Optional.of(CurrencyUnit.GBP), Optional.empty())),
                Map.entry("container-losses", ContainerLossReader::read),
                Map.entry("packaging-weights", PackagingWeightReader::read),
                Map.entry("packaging-fees", IngredientTables::packagingFees),
                Map.entry("list-prices", ListPriceReader::read),
                Map.entry("packaging-plans", PackagingPlanReader::read),
                Map.entry("production", ProductionReader::read),
                Map.entry("brewery", BrewerySettingsReader::read),
                Map.entry("duty-rates", rates -> duty(rates, reliefsSource(), factorsSource())),
                Map.entry("duty-reliefs", reliefs -> duty(ratesSource(), reliefs, factorsSource())),
                Map.entry("strength-factors", factors -> duty(ratesSource(), reliefsSource(), factors)),
                Map.entry("duty-bases", bases -> IngredientTables.duty(added(Optional.of(bases), Optional.empty()))),
                Map.entry(
                        "duty-rates-by-volume",
                        rates -> IngredientTables.duty(added(Optional.empty(), Optional.of(rates)))));
    }

    private static Loaded<?> duty(CsvSource rates, CsvSource reliefs, CsvSource factors) {
        return DutyReader.read(new DutyFiles(
                Optional.of(rates), Optional.of(reliefs), Optional.of(factors), Optional.empty(), Optional.empty()));
    }

    private static DutyFiles added(Optional<CsvSource> bases, Optional<CsvSource> ratesByVolume) {
        return new DutyFiles(Optional.empty(), Optional.empty(), Optional.empty(), bases, ratesByVolume);
    }

    /** The rows of a stock ledger, and where they are sound, the ledger that they make. */
    private static Loaded<?> ledger(CsvSource source) {
        Loaded<List<Movement>> rows = StockReader.read(source);
        return rows.sound() ? StockReader.ledger(CurrencyUnit.GBP, rows.orThrow()) : rows;
    }

    private static CsvSource ratesSource() {
        return IngredientTables.source("duty-rates.csv");
    }

    private static CsvSource reliefsSource() {
        return IngredientTables.source("duty-reliefs.csv");
    }

    private static CsvSource factorsSource() {
        return IngredientTables.source("strength-factors.csv");
    }
}
