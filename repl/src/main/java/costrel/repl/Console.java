package costrel.repl;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.jline.terminal.Terminal;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** The console's entry point: reads the command line and says how it ended. */
public final class Console {

    static final int DONE = 0;
    static final int NEEDS_A_PERSON = 1;
    static final int WRONG_INPUT = 2;
    static final int FAILURE = 3;

    private static final String PROGRAM = "costrel: ";

    /** More than anybody types in a year; the engine takes some seconds for it. */
    private static final long LONGEST_SCRIPT_BYTES = 1_000_000;

    private final Surroundings around;
    private final Rendering rendering;

    Console(Surroundings around, Rendering rendering) {
        this.around = around;
        this.rendering = rendering;
    }

    /**
     * Runs the console and ends the process: with 0 if all was done, 1 if an answer holds findings that need a person, 2 if
     * the input was wrong, 3 if something failed.
     *
     * @param args the command line; {@code --help} tells
     */
    public static void main(String[] args) {
        Surroundings around = Surroundings.ofProcess();
        int code = new Console(around, Sheets.rendering()).run(args);
        System.exit(code);
    }

    /** Runs the console; returns what the process is to end with. What can't be written is a failure; it is told unless the reader has left. */
    int run(String... args) {
        int code = answer(args);
        if (!around.out().checkError()) {
            return code;
        }
        if (around.out() instanceof Output output && output.readerHasGone()) {
            return FAILURE;
        }
        return failure("output: can't be written"
                + (around.out() instanceof Output output
                        ? output.reason().map(reason -> ": " + reason).orElse("")
                        : "")
                + "; not all answers came through");
    }

    private int answer(String... args) {
        Arguments arguments = new Arguments();
        CommandLine line = new CommandLine(arguments);
        try {
            line.parseArgs(args);
        } catch (CommandLine.ParameterException e) {
            return wrong(e.getMessage() + "; --help tells what there is");
        }
        if (arguments.help()) {
            line.usage(around.out(), CommandLine.Help.Ansi.OFF);
            return DONE;
        }
        if (arguments.version()) {
            around.out().println("Costrel " + Version.read());
            return DONE;
        }
        if (arguments.folders().size() > 1) {
            return wrong("brewery folder: expected one, found " + String.join(" and ", arguments.folders())
                    + " (scripts end in .jsh)");
        }
        List<Form> forms = arguments.forms();
        if (forms.size() > 1) {
            return wrong("form: expected one of --json, --csv and --html, found "
                    + forms.stream()
                            .map(form -> "--" + form.name().toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining(" and ")));
        }
        Form form = forms.isEmpty() ? Form.TEXT : forms.get(0);
        Optional<Path> folder =
                folder(arguments.folders().isEmpty() ? "" : arguments.folders().get(0));
        if (folder.isEmpty()) {
            return wrong("brewery folder: expected a folder, found '"
                    + arguments.folders().get(0) + "'");
        }
        Desk.open(folder.get());
        try {
            if (!arguments.scripts().isEmpty() || !arguments.expressions().isEmpty()) {
                return evaluate(arguments, form);
            }
            if (arguments.plain()
                    || form != Form.TEXT
                    || around.terminal().isEmpty()
                    || around.environment().getOrDefault("TERM", "").equals("dumb")) {
                return plain(form);
            }
            return atTerminal(folder.get(), around.terminal().get());
        } catch (IOException e) {
            return failure("input: can't be read: " + e.getMessage());
        } catch (CompletionException e) {
            return failure(
                    e.getCause() == null
                            ? "can't start"
                            : String.valueOf(e.getCause().getMessage()));
        } catch (Exception | Error e) {
            return failure(String.valueOf(e.getMessage()));
        }
    }

    private int evaluate(Arguments arguments, Form form) {
        for (String expression : arguments.expressions()) {
            if (expression.indexOf('\uFFFD') >= 0) {
                return wrong("-e: holds letters that the language setting of this terminal can't carry; "
                        + "set LC_ALL=C.UTF-8, or put it into a script; found '" + expression + "'");
            }
        }
        Map<String, String> scripts = new LinkedHashMap<>();
        for (String script : arguments.scripts()) {
            String text = script(script);
            if (text == null) {
                return WRONG_INPUT;
            }
            scripts.put(script, text);
        }
        try (Session session = start(form)) {
            PlainMode mode = new PlainMode(session, around.out(), around.err());
            for (String script : arguments.scripts()) {
                Fault fault = mode.evaluate(scripts.getOrDefault(script, ""), script);
                if (fault != null || mode.hasGone()) {
                    return code(fault, mode);
                }
            }
            for (String expression : arguments.expressions()) {
                Fault fault = mode.evaluate(expression, "");
                if (fault != null || mode.hasGone()) {
                    return code(fault, mode);
                }
            }
            return code(null, mode);
        }
    }

    private int plain(Form form) throws IOException {
        try (Session session = start(form)) {
            PlainMode mode = new PlainMode(session, around.out(), around.err());
            return code(mode.run(reader(), "input"), mode);
        }
    }

    private int atTerminal(Path folder, Callable<Terminal> opener) throws Exception {
        CompletableFuture<Session> session = new CompletableFuture<>();
        AtomicReference<@Nullable Terminal> screen = new AtomicReference<>();
        Thread starter = new Thread(
                () -> {
                    try {
                        session.complete(Session.start(rendering.within(() -> width(screen.get())), Prelude.read()));
                        warmUp();
                    } catch (Throwable e) {
                        session.completeExceptionally(e);
                    }
                },
                "start");
        starter.setDaemon(true);
        starter.start();
        try (Terminal terminal = opener.call()) {
            screen.set(terminal);
            Optional<Path> history = State.folder(around.environment(), around.system(), around.home())
                    .flatMap(State::history);
            String greeting = "Costrel " + Version.read() + ", brewery folder " + folder
                    + (history.isPresent() ? "" : "\nNo history is kept: there is no state folder that can be written.")
                    + "\ntour shows the way in five steps, help lists the words. Tab completes, Ctrl-D leaves.";
            new Prompt(terminal, session, history, !around.has("NO_COLOR")).run(greeting);
            return DONE;
        }
    }

    /** Reads the folder while the user still looks at the prompt. A fault in it is told when the folder is asked for. */
    private static void warmUp() {
        try {
            Desk.larder().names(Calls.Kind.BEER, List.of());
        } catch (RuntimeException toldLater) {
            return;
        }
    }

    /** Characters in a line; a terminal that doesn't know has no end of line. */
    private static int width(@Nullable Terminal terminal) {
        return terminal != null && terminal.getWidth() > 0 ? terminal.getWidth() : Integer.MAX_VALUE;
    }

    private Session start(Form form) {
        return Session.start(rendering.in(form), Prelude.read());
    }

    private BufferedReader reader() {
        return new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8));
    }

    /** The folder meant: the one at hand if none is named; empty if there is no such folder. */
    private static Optional<Path> folder(String named) {
        try {
            Path folder = Path.of(named).toAbsolutePath().normalize();
            return Files.isDirectory(folder) ? Optional.of(folder) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** A script's text, its lines ended by line feeds; null, with the fault reported, if it can't be read. */
    private @Nullable String script(String name) {
        try {
            Path path = Path.of(name);
            if (!Files.isRegularFile(path)) {
                wrong("script: expected a file, found " + (Files.isDirectory(path) ? "a folder" : "none") + " at "
                        + name);
                return null;
            }
            if (Files.size(path) > LONGEST_SCRIPT_BYTES) {
                wrong(name + ": expected a script of at most 1,000,000 bytes, found one of " + Files.size(path));
                return null;
            }
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(path)))
                    .toString();
            return (text.startsWith("\uFEFF") ? text.substring(1) : text)
                    .replace("\r\n", "\n")
                    .replace('\r', '\n');
        } catch (CharacterCodingException e) {
            wrong(name + ": expected UTF-8 text, found bytes that are none");
        } catch (IOException | InvalidPathException e) {
            wrong(name + ": can't be read: " + e.getMessage());
        }
        return null;
    }

    private static int code(@Nullable Fault fault, PlainMode mode) {
        if (fault == null) {
            return mode.needsAPerson() ? NEEDS_A_PERSON : DONE;
        }
        return fault.kind() == Fault.Kind.INPUT ? WRONG_INPUT : FAILURE;
    }

    private int wrong(String message) {
        around.err().println(PROGRAM + Rendering.clean(message));
        return WRONG_INPUT;
    }

    private int failure(String message) {
        around.err().println(PROGRAM + Rendering.clean(message));
        return FAILURE;
    }
}
