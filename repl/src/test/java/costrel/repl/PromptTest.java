package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A person at a terminal: keys go in while the console runs, and the screen is read in between. */
@Timeout(60)
final class PromptTest {

    private static final String CTRL_C = "\u0003";
    private static final String CTRL_D = "\u0004";
    private static final String UP = "\u001b[A";
    private static final String TAB = "\t";

    @TempDir
    private Path scratch = Path.of("");

    /** The console at a terminal made of two byte streams. */
    private static final class Person implements AutoCloseable {

        private final PipedOutputStream keys = new PipedOutputStream();
        private final ByteArrayOutputStream screen = new ByteArrayOutputStream();
        private final CompletableFuture<Integer> end;
        private int read;

        Person(String type, Map<String, String> environment, String home, String... args) throws IOException {
            PipedInputStream in = new PipedInputStream(keys);
            Surroundings around = Streams.surroundings(
                    "",
                    new ByteArrayOutputStream(),
                    new ByteArrayOutputStream(),
                    environment,
                    home,
                    Optional.of(() -> Streams.terminal(type, in, screen)));
            end = CompletableFuture.supplyAsync(() -> new Console(around, new Rendering(List.of())).run(args));
        }

        Person() throws IOException {
            this("dumb", Map.of("NO_COLOR", "1"), "");
        }

        void type(String text) throws IOException {
            keys.write(text.getBytes(StandardCharsets.UTF_8));
            keys.flush();
        }

        /** Waits until the screen shows a text that it has not shown before; returns all up to it. */
        String await(String text) throws InterruptedException {
            long deadline = System.nanoTime() + 20_000_000_000L;
            while (true) {
                String shown = Streams.text(screen);
                int at = shown.indexOf(text, read);
                if (at >= 0) {
                    String before = shown.substring(read, at);
                    read = at + text.length();
                    return before;
                }
                assertFalse(end.isDone() || System.nanoTime() > deadline, () -> text + " awaited in\n" + shown);
                Thread.sleep(5);
            }
        }

        int leave() throws IOException {
            type(CTRL_D);
            return end.join();
        }

        @Override
        public void close() throws IOException {
            keys.close();
        }
    }

    @Test
    void ctrl_c_stops_an_endless_loop_and_keeps_the_variables() throws Exception {
        try (Person person = new Person()) {
            person.await(Prompt.FIRST);
            person.type("barrels = 5\n");
            person.await(Prompt.FIRST);
            person.type("while (true) {}\n");
            person.await("while (true) {}\n");
            Thread.sleep(300);
            person.type(CTRL_C);
            person.await("stopped\n");
            person.await(Prompt.FIRST);
            person.type("barrels * 36\n");
            person.await("\n180\n");
            assertEquals(0, person.leave());
        }
    }

    @Test
    void what_does_not_stop_is_left_behind_at_the_second_ctrl_c() throws Exception {
        try (Person person = new Person()) {
            person.await(Prompt.FIRST);
            person.type("gate = new java.util.concurrent.atomic.AtomicBoolean(true)\n");
            person.await(Prompt.FIRST);
            person.type("while (gate.get()) try { while (gate.get()) {} } catch (Throwable again) {}\n");
            person.await("{}\n");
            Thread.sleep(300);
            person.type(CTRL_C);
            // From version 20 on a stop goes past such a loop's catch, so that it does stop.
            if (Runtime.version().feature() < 20) {
                person.await("this doesn't stop yet; Ctrl-C again leaves it behind\n");
                person.type(CTRL_C);
                person.await("left behind");
            } else {
                person.await("stopped");
            }
            person.await(Prompt.FIRST);
            person.type("gate.set(false); 5 * 36\n");
            person.await("\n180\n");
            assertEquals(0, person.leave());
        }
    }

    /** The screen of the test is 40 lines high. */
    @Test
    void a_long_answer_comes_a_page_at_a_time() throws IOException, InterruptedException {
        try (Person person = new Person("ansi", Map.of("NO_COLOR", "1"), "")) {
            person.await(Prompt.FIRST);
            person.type("\"row\\n\".repeat(99) + \"last row\"\r");
            String page = person.await("62 lines more");
            assertEquals(38, page.split("\nrow", -1).length - 1, page);
            person.type("\r");
            person.await("61 lines more");
            person.type(" ");
            person.await("23 lines more");
            person.type("e");
            person.await("last row");
            person.await(Prompt.FIRST);
            person.type("\"row\\n\".repeat(99) + \"last row\"\r");
            person.await("62 lines more");
            person.type("q");
            String left = person.await(Prompt.FIRST);
            assertFalse(left.contains("last row"), left);
            person.type("6 * 7\r");
            person.await("42");
            assertEquals(0, person.leave());
        }
    }

    @Test
    void ctrl_c_at_the_prompt_clears_the_line() throws Exception {
        try (Person person = new Person("ansi", Map.of("NO_COLOR", "1"), "")) {
            person.await(Prompt.FIRST);
            person.type("half a li");
            person.await("half a li");
            person.type(CTRL_C);
            person.await(Prompt.FIRST);
            person.type("5 * 36\n");
            person.await("\n180\n");
            assertEquals(0, person.leave());
        }
    }

    @Test
    void tab_completes_a_word_and_up_brings_the_last_input_back() throws Exception {
        try (Person person = new Person("ansi", Map.of("NO_COLOR", "1"), "")) {
            person.await(Prompt.FIRST);
            person.type("\"kilderkin\".leng" + TAB);
            person.await("length()");
            person.type("\n");
            person.await("\n9\n");
            person.await(Prompt.FIRST);
            person.type(UP + "\n");
            person.await("\n9\n");
            assertEquals(0, person.leave());
        }
    }

    @Test
    void the_history_is_kept_in_the_state_folder_and_nowhere_else(@TempDir Path folder) throws Exception {
        Path state = folder.resolve("state");
        Path home = Files.createDirectory(folder.resolve("home"));
        Map<String, String> environment = Map.of("COSTREL_STATE", state.toString(), "NO_COLOR", "1");
        try (Person person = new Person("dumb", environment, home.toString())) {
            person.await(Prompt.FIRST);
            person.type("5 * 36\n");
            person.await("\n180\n");
            person.await(Prompt.FIRST);
            assertTrue(
                    Files.readString(state.resolve("history")).endsWith(":5 * 36\n"), "kept at once, not at the end");
            assertEquals(0, person.leave());
        }
        try (Person person = new Person("ansi", environment, home.toString())) {
            person.await(Prompt.FIRST);
            person.type(UP);
            person.await("5 * 36");
            person.type("\n");
            person.await("\n180\n");
            assertEquals(0, person.leave());
        }
        try (Stream<Path> files = Files.walk(folder)) {
            assertEquals(
                    List.of(state.resolve("history")),
                    files.filter(Files::isRegularFile).toList());
        }
    }

    @Test
    void a_history_that_cannot_be_kept_or_read_is_no_hindrance(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "not a folder");
        try (Person person =
                new Person("dumb", Map.of("COSTREL_STATE", file.resolve("state").toString()), "")) {
            assertTrue(person.await(Prompt.FIRST).contains("No history is kept"));
            person.type("5 * 36\n");
            person.await("\n180\n");
            assertEquals(0, person.leave());
        }
        Path state = Files.createDirectory(folder.resolve("state"));
        Files.write(state.resolve("history"), new byte[] {'a', (byte) 0xff, 0, '\n'});
        try (Person person = new Person("dumb", Map.of("COSTREL_STATE", state.toString()), "")) {
            assertFalse(person.await(Prompt.FIRST).contains("No history is kept"));
            assertEquals(0, person.leave());
        }
        assertTrue(Files.exists(state.resolve("history-unreadable")));
    }

    @Test
    void there_is_colour_at_a_terminal_but_none_where_no_color_is_set() throws Exception {
        String red = "\u001b[31m";
        for (boolean colour : List.of(true, false)) {
            Map<String, String> environment = colour ? Map.of() : Map.of("NO_COLOR", "1");
            try (Person person = new Person("ansi", environment, "")) {
                person.await(Prompt.FIRST);
                person.type("barels\n");
                person.await("isn't known");
                assertEquals(0, person.leave());
                assertEquals(
                        colour, person.screen.toString(StandardCharsets.UTF_8).contains(red));
            }
        }
    }

    @Test
    void the_words_exit_and_quit_leave() throws Exception {
        for (String word : List.of("exit", "quit")) {
            try (Person person = new Person()) {
                person.await(Prompt.FIRST);
                person.type(word + "\n");
                assertEquals(0, person.end.join());
            }
        }
    }

    @Test
    void lines_pasted_at_once_are_evaluated_one_by_one() throws Exception {
        try (Person person = new Person("ansi", Map.of("NO_COLOR", "1"), "")) {
            person.await(Prompt.FIRST);
            person.type("\u001b[200~a = 1\nb = 2\na + b\n\u001b[201~\n");
            person.await("\n3\n");
            assertEquals(0, person.leave());
        }
    }

    @Test
    void tab_in_a_text_offers_the_names_of_the_folder_with_a_figure_and_closes_the_text() throws Exception {
        Map<String, String> environment = Map.of("NO_COLOR", "1");
        try (Person person = new Person("ansi", environment, "", WordsTest.LANTERNFOLD.toString())) {
            person.await(Prompt.FIRST);
            person.type("brew(\"" + TAB);
            String list = person.await("Wickgate Bitter");
            assertTrue(list.contains("Tallow Mild"), list);
            person.await("EBU)");
            person.type("Wick" + TAB);
            person.await("gate Bitter\")");
            person.type(".recipe().name()\n");
            person.await("\nWickgate Bitter\n");
            assertEquals(0, person.leave());
        }
    }

    @Test
    void the_hint_is_faint_and_gone_once_the_line_is_entered_and_there_is_none_without_colour() throws Exception {
        for (boolean colour : List.of(true, false)) {
            Map<String, String> environment = colour ? Map.of() : Map.of("NO_COLOR", "1");
            try (Person person = new Person("ansi", environment, "", WordsTest.LANTERNFOLD.toString())) {
                person.await(Prompt.FIRST);
                person.type("5 * 36\n");
                person.await("\n180\n");
                person.await(Prompt.FIRST);
                person.type("brew(\"");
                person.await(colour ? "beer" : "brew(\"");
                person.type("Tallow Mild\").recipe().name()\n");
                person.await("\nTallow Mild\n");
                assertEquals(0, person.leave());
                assertEquals(
                        colour, person.screen.toString(StandardCharsets.UTF_8).contains("\u001b[2m"));
            }
        }
    }

    @Test
    void a_file_that_changes_is_told_before_the_next_prompt() throws Exception {
        Path folder = Files.createDirectory(scratch.resolve("brewery"));
        String settings = "property,value\nname,Alderholt\ncurrency,GBP\ncountry,UK\nVAT,20 %\n";
        Path file = Files.writeString(folder.resolve("brewery.csv"), settings);
        Files.copy(WordsTest.LANTERNFOLD.resolve("plants.csv"), folder.resolve("plants.csv"));
        try (Person person = new Person("dumb", Map.of("NO_COLOR", "1"), "", folder.toString())) {
            person.await(Prompt.FIRST);
            person.type("brewery().name()\n");
            person.await(Prompt.FIRST);
            Files.writeString(file, settings.replace("Alderholt", "Alderholt Ales"));
            person.type("1\n");
            person.await("brewery.csv has changed since the folder was read; reload takes that in\n");
            person.await(Prompt.FIRST);
            person.type("reload\n");
            person.await("Alderholt Ales read again: 0 beers");
            assertFalse(person.await(Prompt.FIRST).contains("has changed"));
            assertEquals(0, person.leave());
        }
    }

    @Test
    void what_takes_over_a_second_says_so_at_a_terminal_that_can_take_it_back() throws Exception {
        for (String type : List.of("ansi", "dumb")) {
            try (Person person = new Person(type, Map.of("NO_COLOR", "1"), "")) {
                person.await(Prompt.FIRST);
                person.type("Thread.sleep(1600); 5 * 36\n");
                String before = person.await("180\n");
                assertEquals(type.equals("ansi"), before.contains("1 s so far; Ctrl-C stops"), before);
                assertEquals(0, person.leave());
            }
        }
    }

    @Test
    void the_time_left_is_told_where_a_part_is_known_to_be_done() {
        assertEquals("4 s so far; Ctrl-C stops", Waiting.text(4_000, Double.NaN));
        // a quarter done in 4 s leaves three quarters, which take 12 s
        assertEquals("4 s so far, 25 % done, about 12 s left; Ctrl-C stops", Waiting.text(4_000, 0.25));
    }
}
