package costrel.repl;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/**
 * What the console is started in.
 *
 * @param in the standard input
 * @param out the standard output
 * @param err the error stream
 * @param environment the environment's variables
 * @param system the operating system's name
 * @param home the user's home folder, may be empty
 * @param terminal opens the terminal, if a person sits at both ends
 */
record Surroundings(
        InputStream in,
        PrintStream out,
        PrintStream err,
        Map<String, String> environment,
        String system,
        String home,
        Optional<Callable<Terminal>> terminal) {

    /**
     * The surroundings of this process, with its output set to UTF-8 unless a terminal wants something else. What the
     * user's own code prints goes the same way.
     */
    static Surroundings ofProcess() {
        @SuppressWarnings("SystemConsoleNull") // null on versions before 22
        Console console = System.console();
        boolean atTerminal = console != null && isTerminal(console);
        Charset charset = console != null && atTerminal ? console.charset() : StandardCharsets.UTF_8;
        PrintStream out = Output.on(new FileOutputStream(FileDescriptor.out), charset);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, charset);
        System.setOut(out);
        System.setErr(err);
        return new Surroundings(
                System.in,
                out,
                err,
                System.getenv(),
                System.getProperty("os.name", ""),
                System.getProperty("user.home", ""),
                atTerminal ? Optional.of(Surroundings::openTerminal) : Optional.empty());
    }

    private static Terminal openTerminal() throws IOException {
        return TerminalBuilder.builder()
                .system(true)
                .dumb(true)
                .nativeSignals(true)
                .signalHandler(Terminal.SignalHandler.SIG_IGN)
                .build();
    }

    /** From 22 on there is a console without a terminal too, and a method that tells; before, there is neither. */
    private static boolean isTerminal(Console console) {
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    /** Whether an environment variable is set to anything. */
    boolean has(String variable) {
        return !environment.getOrDefault(variable, "").isEmpty();
    }
}
