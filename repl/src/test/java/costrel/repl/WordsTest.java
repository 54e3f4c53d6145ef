package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.brewery.Brew;
import costrel.brewery.Brewery;
import costrel.brewery.Harvest;
import costrel.brewery.RackingPlan;
import costrel.brewery.RiskStudy;
import costrel.brewery.SellingPrices;
import java.lang.reflect.Method;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Help, tour and completion name what there is, and every example of theirs can be typed as it stands. */
@Timeout(300)
final class WordsTest {

    static final Path LANTERNFOLD =
            Path.of("../samples/lanternfold").toAbsolutePath().normalize();

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path scratch = Path.of("");

    private static List<Method> methods() {
        return Stream.of(
                        Verbs.class,
                        Brew.class,
                        Brewery.class,
                        Harvest.class,
                        SellingPrices.class,
                        RackingPlan.class,
                        RiskStudy.class)
                .flatMap(type -> Stream.of(type.getMethods()))
                .toList();
    }

    @Test
    void every_word_of_help_can_be_called() {
        for (String word : Words.all().keySet()) {
            assertTrue(
                    Stream.of(Verbs.class.getMethods())
                            .anyMatch(method -> method.getName().equals(word)),
                    word);
        }
    }

    @Test
    void every_call_that_completion_knows_takes_that_many_texts() {
        Calls.all()
                .forEach((call, between) -> assertTrue(
                        methods().stream()
                                .filter(method -> method.getName().equals(call.replaceFirst(".*\\.", "")))
                                .map(Method::getParameterTypes)
                                .anyMatch(types -> Arrays.stream(types)
                                                .takeWhile(type -> type == String.class)
                                                .count()
                                        >= between.size()),
                        call + " " + between));
    }

    @Test
    void every_example_of_help_is_answered_by_the_folder_it_is_made_from() {
        Own own = Own.of(Brewery.open(LANTERNFOLD), DAY);
        List<String> lines = new ArrayList<>();
        for (Words.Word word : Words.all().values()) {
            String example = own.in(word.example())
                    .replaceAll("\"(\\w+\\.(?:jsh|html))\"", Matcher.quoteReplacement("\"" + scratch + "/") + "$1\"");
            lines.add(example);
            word.more().forEach(more -> lines.add(example + own.in(more.ending())));
        }
        String input = "day(\"" + DAY + "\")\n" + String.join("\n", lines) + "\n";
        Streams.Run run = Streams.run(input, Sheets.rendering(), LANTERNFOLD.toString(), "--plain");
        assertEquals("", run.err());
        assertTrue(lines.stream().noneMatch(line -> line.contains("{")), lines.toString());
    }

    @Test
    void the_tour_can_be_typed_as_it_is_shown() {
        List<String> lines = new ArrayList<>(List.of("day(\"" + DAY + "\")"));
        for (Tour.Step step : Tour.of(Brewery.open(LANTERNFOLD), DAY)) {
            lines.add("tour");
            lines.addAll(step.lines());
        }
        assertEquals(Tour.STEPS, Tour.of(Brewery.open(LANTERNFOLD), DAY).size());
        Streams.Run run =
                Streams.run(String.join("\n", lines) + "\n", Sheets.rendering(), LANTERNFOLD.toString(), "--plain");
        assertEquals("", run.err());
        for (int step = 1; step <= Tour.STEPS; step++) {
            assertTrue(run.out().contains("Step " + step + " of 5"), run.out());
        }
    }

    @Test
    void a_step_of_the_tour_is_had_by_its_number_and_there_are_five() {
        Streams.Run run = Streams.run("tour 3\ntour\ntour 6\n", Sheets.rendering(), LANTERNFOLD.toString(), "--plain");
        assertTrue(run.out().contains("Step 3 of 5") && run.out().contains("Step 4 of 5"), run.out());
        assertTrue(run.err().contains("tour: expected a step from 1 to 5, found '6'"), run.err());
    }

    @Test
    void a_tour_of_an_empty_folder_says_what_is_missing() {
        Streams.Run run = Streams.run("tour\nhelp\n", Sheets.rendering(), scratch.toString(), "--plain");
        assertTrue(run.err().contains("brewery.csv"), run.err());
        assertTrue(run.out().contains("brew(\"Name\")"), run.out());
    }

    @Test
    void help_is_folded_on_a_narrow_screen_and_goes_beside_on_a_wide_one() {
        Own own = Own.of(Brewery.open(LANTERNFOLD), DAY);
        String narrow = HelpPages.all(own, 60);
        assertTrue(narrow.contains("beers()\n    the beers of the brewery\n"), narrow);
        String wide = HelpPages.all(own, 160);
        assertTrue(wide.lines().anyMatch(line -> line.matches("beers\\(\\) +the beers of the brewery")), wide);
    }

    @Test
    void words_need_no_brackets_unless_a_name_stands_in_their_way() {
        assertEquals(Optional.of("beers()"), BareWords.call("beers", name -> false));
        assertEquals(Optional.of("help(\"brew\")"), BareWords.call(" help brew ; ", name -> false));
        assertEquals(Optional.of("brew(\"Wickgate Bitter\")"), BareWords.call("brew Wickgate Bitter", name -> false));
        assertEquals(Optional.of("day(\"2026-11-25\")"), BareWords.call("day 2026-11-25", name -> false));
        assertEquals(Optional.of("save(\"a/b-c.jsh\")"), BareWords.call("save a/b-c.jsh", name -> false));
        for (String other :
                List.of("beers()", "beers + 1", "day = 3", "mild", "help(\"brew\")", "brew \"Mild\"", "lots\n1")) {
            assertEquals(Optional.empty(), BareWords.call(other, name -> false), other);
        }
        assertEquals(Optional.empty(), BareWords.call("beers", "beers"::equals));
    }

    @Test
    void a_length_is_told_in_barrels_where_it_is_whole_ones() {
        // 36 gallons of 4.54609 L: Weights and Measures Act 1985 Sch. 1
        assertEquals("30 brl", Own.length(30 * 163.65924));
        assertEquals("2.5 brl", Own.length(2.5 * 163.65924));
        assertEquals("1000 L", Own.length(1000));
    }

    @Test
    void a_word_that_help_does_not_know_gets_the_nearest() {
        Streams.Run run = Streams.run("help brwe\n", Sheets.rendering(), LANTERNFOLD.toString(), "--plain");
        assertEquals(
                "input:1: help: no word is called 'brwe'; nearest: brew",
                run.err().strip());
        assertEquals(Console.WRONG_INPUT, run.code());
        assertNull(Words.all().get("brwe"));
    }
}
