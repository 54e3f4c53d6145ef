package costrel.repl;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
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

    /** The line editor's own warnings would stand in the middle of the user's line. Held, or the setting is lost. */
    private static final Logger EDITOR_LOG = Logger.getLogger("org.jline");

    private final Terminal terminal;
    private final CompletableFuture<Session> session;
    private final boolean colour;
    private final LineReader reader;
    private final Waiting waiting;
    private final TypedInput input;
    private final Pages pages;
    private final StringBuilder answers = new StringBuilder();

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
        waiting = new Waiting(terminal, colour);
        input = new TypedInput(session);
        pages = new Pages(terminal, colour);
        boolean dots = terminal.encoding().canEncode()
                && terminal.encoding().newEncoder().canEncode('…');
        LineReaderBuilder builder = LineReaderBuilder.builder()
                .appName("costrel")
                .terminal(terminal)
                .parser(input)
                .completer((line, parsed, candidates) -> TypedInput.offer(parsed, candidates))
                .variable(LineReader.SECONDARY_PROMPT_PATTERN, dots ? FURTHER : FURTHER_IN_ASCII)
                .variable(LineReader.LIST_MAX, 60)
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.HISTORY_IGNORE_DUPS, true)
                .option(LineReader.Option.CASE_INSENSITIVE, true);
        history.ifPresent(file -> builder.variable(LineReader.HISTORY_FILE, file));
        if (colour && !TypedInput.isPlain(terminal)) {
            builder.highlighter(new GhostHint(input));
        }
        reader = builder.build();
    }

    /**
     * Reads and evaluates until the user leaves.
     *
     * @param greeting what is printed first
     */
    void run(String greeting) {
        ExitGuard.stay(true);
        say(greeting, AttributedStyle.DEFAULT);
        String prompt = colour ? new AttributedString(FIRST, AttributedStyle.DEFAULT.bold()).toAnsi(terminal) : FIRST;
        while (true) {
            String source;
            List<String> changed = Desk.changedFiles();
            if (!changed.isEmpty()) {
                note(String.join(", ", changed) + (changed.size() == 1 ? " has" : " have")
                        + " changed since the folder was read; reload takes that in");
            }
            input.begin();
            try {
                source = reader.readLine(prompt);
            } catch (UserInterruptException cleared) {
                continue;
            } catch (EndOfFileException left) {
                return;
            }
            if (TypedInput.leaves(source)) {
                return;
            }
            if (!source.isBlank()) {
                evaluate(source);
            }
        }
    }

    /** Held back at a terminal with pages until the input has run, since a page waits for a key. */
    @Override
    public void answer(String text, boolean needsAPerson) {
        if (TypedInput.isPlain(terminal)) {
            say(text, AttributedStyle.DEFAULT);
        } else {
            answers.append(Rendering.clean(text)).append('\n');
        }
    }

    private void showAnswers() {
        String text = answers.toString().stripTrailing();
        answers.setLength(0);
        if (!text.isEmpty()) {
            if (pages.cuts(text)) {
                waiting.clear();
                pages.show(text);
            } else {
                say(text, AttributedStyle.DEFAULT);
            }
        }
    }

    @Override
    public void note(String text) {
        say(text, AttributedStyle.DEFAULT.foreground(AttributedStyle.YELLOW));
    }

    private void evaluate(String source) {
        Desk.width(width());
        Desk.shareDone(Double.NaN);
        Evaluation evaluation = new Evaluation(session.join(), source, this, waiting::show);
        SignalHandler before = terminal.handle(Signal.INT, signal -> evaluation.interrupt());
        try {
            Fault fault = evaluation.run();
            waiting.clear();
            showAnswers();
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
        waiting.clear();
        String clean = Rendering.clean(text);
        String shown = colour ? new AttributedString(clean, style).toAnsi(terminal) : clean;
        terminal.writer().println(shown);
        terminal.flush();
    }

    private int width() {
        return terminal.getWidth() > 0 ? terminal.getWidth() : 80;
    }
}
