package costrel.repl;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.ExternalTerminal;

/** Surroundings made of byte streams, and what comes out of a console run in them. */
final class Streams {

    private static final Size SIZE = new Size(160, 40);

    private Streams() {}

    /**
     * How a run ended.
     *
     * @param code the exit code
     * @param out what went to the standard output
     * @param err what went to the error stream
     */
    record Run(int code, String out, String err) {}

    /** Runs the console in this process without a terminal. */
    static Run run(String input, Rendering rendering, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = new Console(surroundings(input, out, err, Map.of(), "", Optional.empty()), rendering).run(args);
        return new Run(code, text(out), text(err));
    }

    /** Runs the console in this process without a terminal and without kinds of result of its own. */
    static Run run(String input, String... args) {
        return run(input, new Rendering(List.of()), args);
    }

    static Surroundings surroundings(
            String input,
            ByteArrayOutputStream out,
            ByteArrayOutputStream err,
            Map<String, String> environment,
            String home,
            Optional<Callable<Terminal>> terminal) {
        return new Surroundings(
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                environment,
                "Linux",
                home,
                terminal);
    }

    /** A terminal between two byte streams, with its keys such as Ctrl-C, and none of the system's own in between. */
    static Terminal terminal(String type, InputStream in, ByteArrayOutputStream out) throws IOException {
        Terminal terminal = new ExternalTerminal("test", type, in, out, StandardCharsets.UTF_8);
        terminal.handle(Terminal.Signal.INT, Terminal.SignalHandler.SIG_IGN);
        terminal.setSize(SIZE);
        return terminal;
    }

    /** What was printed, without what steers the cursor and the colour. */
    static String text(ByteArrayOutputStream out) {
        return out.toString(StandardCharsets.UTF_8).replace("\r", "").replaceAll("\u001b\\[[?0-9;]*[A-Za-z]", "");
    }
}
