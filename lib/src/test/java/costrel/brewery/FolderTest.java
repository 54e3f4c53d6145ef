package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.cost.ContainerCost;
import costrel.cost.CostLine;
import costrel.tables.Loaded;
import costrel.tables.TableProblem;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faults in a brewery's folder: where they are, what was found, what was expected, and all of them at once. */
class FolderTest {

    @TempDir
    private Path folder;

    @Test
    void a_sound_folder_opens() throws IOException {
        copySample();
        Loaded<Brewery> loaded = Brewery.load(folder);
        assertTrue(loaded.sound(), loaded.problems().toString());
        assertEquals("Lanternfold", loaded.orThrow().name());
    }

    @Test
    void nothing_and_a_file_are_no_folders() throws IOException {
        assertEquals(
                "nothing",
                Brewery.load(folder.resolve("none")).problems().get(0).found());
        Path file = Files.writeString(folder.resolve("file"), "x");
        assertEquals("a file", Brewery.load(file).problems().get(0).found());
    }

    @Test
    void unknown_names_in_a_recipe_are_found_by_line_with_the_nearest_offered() throws IOException {
        copySample();
        change("recipes/wickgate-bitter.csv", "grist,pale ale malt", "grist,pale ale matl");
        change("recipes/wickgate-bitter.csv", "hops,Challenger,1.10 kg", "hops,Chalenger,1.10 kg");
        change("recipes/wickgate-bitter.csv", "beer,plant,Pilot", "beer,plant,Pilto");
        List<TableProblem> problems = Brewery.load(folder).problems();
        assertEquals(3, problems.size(), problems.toString());
        assertProblem(problems.get(0), "recipes/wickgate-bitter.csv", 4, "amount", "'Pilto'", "Pilot");
        assertProblem(problems.get(1), "recipes/wickgate-bitter.csv", 14, "item", "'pale ale matl'", "pale ale malt");
        assertProblem(problems.get(2), "recipes/wickgate-bitter.csv", 18, "item", "'Chalenger'", "Challenger");
    }

    @Test
    void unknown_names_among_the_list_prices_are_found_by_line() throws IOException {
        copySample();
        change("list-prices.csv", "Tallow Mild,kilderkin", "Tallow Mild,kilderkim");
        change("list-prices.csv", "Haymoth Golden,pin,£49.00,Main", "Haymoth Goldne,pin,£49.00,Mian");
        List<TableProblem> problems = Brewery.load(folder).problems();
        assertEquals(3, problems.size(), problems.toString());
        assertProblem(problems.get(0), "list-prices.csv", 5, "container", "'kilderkim'", "kilderkin");
        assertProblem(problems.get(1), "list-prices.csv", 9, "beer", "'Haymoth Goldne'", "Haymoth Golden");
        assertProblem(problems.get(2), "list-prices.csv", 9, "plant", "'Mian'", "Main");
    }

    @Test
    void faults_of_several_files_are_all_told_at_once() throws IOException {
        copySample();
        change("packaging-plans.csv", "Tallow Mild,kilderkin", "Tallow Mild,kilderkim");
        change("recipes/tallow-mild.csv", "beer,boil,", "beer,boil,-");
        Files.delete(folder.resolve("plants.csv"));
        List<TableProblem> problems = Brewery.load(folder).problems();
        List<String> files =
                problems.stream().map(TableProblem::file).distinct().toList();
        assertTrue(
                files.containsAll(List.of("packaging-plans.csv", "recipes/tallow-mild.csv", "plants.csv")),
                files.toString());
    }

    @Test
    void two_lists_whose_prices_both_apply_are_told_apart_by_line() throws IOException {
        copySample();
        change("prices-2026-spring.csv", ",2026-08-31,", ",2026-09-30,");
        List<TableProblem> problems = Brewery.load(folder).problems();
        assertFalse(problems.isEmpty());
        assertTrue(
                problems.stream().allMatch(problem -> problem.file().startsWith("prices-2026") && problem.line() > 1),
                problems.toString());
    }

    @Test
    void what_stands_in_a_cell_stays_text() throws IOException {
        copySample();
        change("recipes/wickgate-bitter.csv", "beer,name,Wickgate Bitter", "beer,name,\"=System.exit(3)\"");
        change("packaging-plans.csv", "Wickgate Bitter", "=System.exit(3)");
        change("brewing-plan.csv", "Wickgate Bitter", "=System.exit(3)");
        change("list-prices.csv", "Wickgate Bitter", "=System.exit(3)");
        Loaded<Brewery> loaded = Brewery.load(folder);
        assertTrue(loaded.sound(), loaded.problems().toString());
        assertEquals(
                "=System.exit(3)",
                loaded.orThrow().brew("=System.exit(3)").recipe().name());
    }

    @Test
    void another_country_is_another_pair_of_files() throws IOException {
        copySample();
        change("brewery.csv", "country,UK", "country,Nowhere");
        assertTrue(Brewery.load(folder).problems().get(0).expected().contains("United States"));
        Files.writeString(folder.resolve("duty-bases.csv"), """
                country,charged by,strength,per volume,duty,source
                Nowhere,hL and % vol,down to 0,down to 1,up to 0,Beer Act of Nowhere s.1
                """);
        Files.writeString(folder.resolve("duty-rates-by-volume.csv"), """
                country,valid from,strength from,strength under,draught,rate,source
                Nowhere,2026-01-01,0 %,3 %,any,10 GBP,Beer Act of Nowhere s.2
                Nowhere,2026-01-01,3 %,,no,21 GBP,Beer Act of Nowhere s.2
                Nowhere,2026-01-01,3 %,,yes,19 GBP,Beer Act of Nowhere s.3
                """);
        // 100 firkins of 40.91 − 1.6 L at 3.9 %, which counts as 3: 39.31 hL × 3 × 19 = 2240.67, up to the whole pound.
        assertEquals(new BigDecimal("2241.00"), dutyOnTheFirkins());
    }

    @ParameterizedTest
    @CsvSource({
        "United States,United States",
        "us,United States",
        "Germany,Germany",
        "Ireland,Ireland",
        "EU,EU minimum by % vol"
    })
    void every_country_of_the_tables_opens(String written, String country) throws IOException {
        copySample();
        change("brewery.csv", "country,UK", "country," + written);
        assertEquals(country, Brewery.open(folder).duty().country());
    }

    @Test
    void a_country_by_pure_alcohol_is_one_file() throws IOException {
        copySample();
        change("brewery.csv", "country,UK", "country,Lyonesse");
        Files.writeString(folder.resolve("duty-rates.csv"), """
                country,valid from,strength from,draught,rate,source
                Lyonesse,2026-01-01,0 %,any,10.00 GBP,an Act of Lyonesse
                """);
        // 39.31 L × 100 × 3.9 % × 10 = 1533.09
        assertEquals(new BigDecimal("1533.09"), dutyOnTheFirkins());
    }

    @Test
    void lost_casks_and_fees_by_weight_are_lines_of_their_containers() throws IOException {
        copySample();
        List<String> before = firkins().lines().stream().map(CostLine::item).toList();
        Files.writeString(folder.resolve("container-losses.csv"), """
                container,value,lost per trip,valid from
                firkin,£65.00,2 %,2026-01-01
                """);
        Files.writeString(folder.resolve("packaging-weights.csv"), """
                container,material,weight
                firkin,plastic,12 g
                """);
        Files.writeString(folder.resolve("packaging-fees.csv"), """
                material,valid from,fee,source
                plastic,2026-04-01,500 GBP,an invented notice
                """);
        // 100 firkins, 2 % of £65.00 on each; 1.2 kg of plastic at £500 on 1000 kg.
        assertEquals(
                Map.of("loss of firkin on the trip", "130.00", "packaging fee on plastic", "0.60"),
                firkins().lines().stream()
                        .filter(line -> !before.contains(line.item()))
                        .collect(Collectors.toMap(
                                CostLine::item, line -> line.value().getAmount().toPlainString())));
    }

    @Test
    void a_slip_in_a_file_of_charges_keeps_the_folder_shut() throws IOException {
        copySample();
        Files.writeString(folder.resolve("container-losses.csv"), """
                container,value,lost per trip,valid from
                firkni,£65.00,2 %,2026-01-01
                """);
        List<TableProblem> problems = Brewery.load(folder).problems();
        assertEquals(1, problems.size(), problems.toString());
        assertProblem(problems.get(0), "container-losses.csv", 2, "container", "'firkni'", "firkin");
    }

    private BigDecimal dutyOnTheFirkins() {
        return firkins().duty().duty().getAmount();
    }

    private ContainerCost firkins() {
        return Brewery.open(folder)
                .brew("Wickgate Bitter")
                .on("Main")
                .length("30 brl")
                .day(LanternfoldTest.DAY)
                .cost()
                .containers()
                .get(0);
    }

    private static void assertProblem(
            TableProblem problem, String file, long line, String column, String found, String near) {
        assertEquals(file, problem.file());
        assertEquals(line, problem.line(), problem.text());
        assertEquals(column, problem.column());
        assertEquals(found, problem.found());
        assertTrue(problem.expected().contains(near), problem.expected());
        assertFalse(problem.text().isBlank());
    }

    private void change(String file, String from, String to) throws IOException {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        assertTrue(text.contains(from), file + " has no '" + from + "'");
        Files.writeString(path, text.replace(from, to));
    }

    private void copySample() throws IOException {
        try (Stream<Path> files = Files.walk(LanternfoldTest.FOLDER)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy =
                        folder.resolve(LanternfoldTest.FOLDER.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
    }
}
