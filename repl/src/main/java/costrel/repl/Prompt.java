package costrel.repl;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jline.reader.Candidate;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.EOFError;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.Terminal.Signal;
import org.jline.terminal.Terminal.SignalHandler;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStyle;

/** The console at a terminal: editing, history, completion, and Ctrl-C that stops an evaluation but not the session. */
final class Prompt implements Listener {

    static final String FIRST = "gyle> ";
    static final String FURTHER = "   …> ";

    private static final String FURTHER_IN_ASCII = "  ..> ";
    private static final List<String> LEAVING = List.of("exit", "quit");

    /** The line editor's own warnings would stand in the middle of the user's line. Held, or the setting is lost. */
    private static final Logger EDITOR_LOG = Logger.getLogger("org.jline");

    private final Terminal terminal;
    private final CompletableFuture<Session> session;
    private final boolean colour;
    private final LineReader reader;

    /**
     * Sets the terminal up. The session may still be starting.
     *
     * @param terminal the terminal
     * @param session the session
     * @param history the file for the history of inputs; empty to keep none
     * @param colour whether to use colour
     */
    Prompt(Terminal terminal, CompletableFuture<Session> session, Optional<Path> history, boolean colour) {
        this.terminal = terminal;
        this.session = session;
        this.colour = colour;
        EDITOR_LOG.setLevel(Level.OFF);
        boolean dots = terminal.encoding().canEncode()
                && terminal.encoding().newEncoder().canEncode('…');
        LineReaderBuilder builder = LineReaderBuilder.builder()
                .appName("costrel")
                .terminal(terminal)
                .parser(new JavaInput())
                .completer((line, parsed, candidates) -> complete(parsed, candidates))
                .variable(LineReader.SECONDARY_PROMPT_PATTERN, dots ? FURTHER : FURTHER_IN_ASCII)
                .variable(LineReader.LIST_MAX, 60)
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.HISTORY_IGNORE_DUPS, true)
                .option(LineReader.Option.CASE_INSENSITIVE, true);
        history.ifPresent(file -> builder.variable(LineReader.HISTORY_FILE, file));
        reader = builder.build();
    }

    /**
     * Reads and evaluates until the user leaves.
     *
     * @param greeting what is printed first
     */
    void run(String greeting) {
        say(greeting, AttributedStyle.DEFAULT);
        String prompt = colour ? new AttributedString(FIRST, AttributedStyle.DEFAULT.bold()).toAnsi(terminal) : FIRST;
        while (true) {
            String source;
            try {
                source = reader.readLine(prompt);
            } catch (UserInterruptException cleared) {
                continue;
            } catch (EndOfFileException left) {
                return;
            }
            if (LEAVING.contains(source.strip())) {
                return;
            }
            if (!source.isBlank()) {
                evaluate(source);
            }
        }
    }

    @Override
    public void answer(String text, boolean needsAPerson) {
        say(text, AttributedStyle.DEFAULT);
    }

    @Override
    public void note(String text) {
        say(text, AttributedStyle.DEFAULT.foreground(AttributedStyle.YELLOW));
    }

    private void evaluate(String source) {
        Evaluation evaluation = new Evaluation(session.join(), source, this);
        SignalHandler before = terminal.handle(Signal.INT, signal -> evaluation.interrupt());
        try {
            Fault fault = evaluation.run();
            if (fault != null) {
                say(
                        fault.underPrompt(source, FIRST.length(), width()),
                        AttributedStyle.DEFAULT.foreground(AttributedStyle.RED));
            }
        } finally {
            terminal.handle(Signal.INT, before);
        }
    }

    private void say(String text, AttributedStyle style) {
        String clean = Rendering.clean(text);
        String shown = colour ? new AttributedString(clean, style).toAnsi(terminal) : clean;
        terminal.writer().println(shown);
        terminal.flush();
    }

    private int width() {
        return terminal.getWidth() > 0 ? terminal.getWidth() : 80;
    }

    private static void complete(ParsedLine parsed, List<Candidate> candidates) {
        if (parsed instanceof Words words) {
            for (String word : words.found.words()) {
                candidates.add(new Candidate(word, word, null, null, null, null, false));
            }
        }
    }

    /** An input as the line editor sees it: whole or not, and the word at the cursor as Java counts it. */
    private final class JavaInput implements Parser {

        @Override
        public ParsedLine parse(String line, int cursor, ParseContext context) {
            if (context == ParseContext.ACCEPT_LINE
                    && !LEAVING.contains(line.strip())
                    && session.join().isUnfinished(line)) {
                throw new EOFError(-1, -1, "unfinished");
            }
            return new Words(
                    line,
                    cursor,
                    context == ParseContext.COMPLETE
                            ? session.join().completions(line, cursor)
                            : new Session.Completions(cursor, List.of()));
        }

        @Override
        public boolean isEscapeChar(char letter) {
            return false;
        }
    }

    private static final class Words implements CompletingParsedLine {

        private final String line;
        private final int cursor;
        private final Session.Completions found;

        Words(String line, int cursor, Session.Completions found) {
            this.line = line;
            this.cursor = cursor;
            this.found = found;
        }

        @Override
        public String word() {
            return line.substring(Math.min(found.anchor(), cursor), cursor);
        }

        @Override
        public int wordCursor() {
            return word().length();
        }

        @Override
        public CharSequence escape(CharSequence candidate, boolean complete) {
            return candidate;
        }

        @Override
        public int rawWordCursor() {
            return wordCursor();
        }

        @Override
        public int rawWordLength() {
            return wordCursor();
        }

        @Override
        public int wordIndex() {
            return 0;
        }

        @Override
        public List<String> words() {
            return List.of(word());
        }

        @Override
        public String line() {
            return line;
        }

        @Override
        public int cursor() {
            return cursor;
        }
    }
}
