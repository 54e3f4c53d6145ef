package costrel.repl;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import org.jspecify.annotations.Nullable;

/** The console without a terminal: lines in, answers out, and what went wrong on the error stream. */
final class PlainMode implements Listener {

    private static final int LONGEST_LINE = 2_000_000;

    private final Session session;
    private final PrintStream out;
    private final PrintStream err;
    private boolean needsAPerson;

    PlainMode(Session session, PrintStream out, PrintStream err) {
        this.session = session;
        this.out = out;
        this.err = err;
    }

    /** Whether an answer so far holds findings that a person must decide on. */
    boolean needsAPerson() {
        return needsAPerson;
    }

    @Override
    public void answer(String text, boolean person) {
        needsAPerson |= person;
        out.print(text.endsWith("\n") ? text : text + System.lineSeparator());
        out.flush();
    }

    @Override
    public boolean hasGone() {
        return out.checkError();
    }

    @Override
    public void note(String text) {
        err.println(Rendering.clean(text));
    }

    /**
     * Evaluates a whole text: an expression or a script.
     *
     * @param text the text
     * @param name what a fault calls it, or empty
     * @return what was wrong, or null
     */
    @Nullable
    Fault evaluate(String text, String name) {
        Fault fault = session.evaluate(text, this);
        if (fault != null) {
            err.println(Rendering.clean(fault.inFile(name, 1)));
        }
        return fault;
    }

    /**
     * Evaluates line by line, each as soon as it is whole, and goes on after a fault.
     *
     * @param lines where the lines come from
     * @param name what a fault calls them
     * @return the gravest fault, or null
     */
    @Nullable
    Fault run(BufferedReader lines, String name) throws IOException {
        Fault gravest = null;
        StringBuilder input = new StringBuilder();
        int firstLine = 1;
        int line = 0;
        while (true) {
            String text = line(lines);
            if (text != null) {
                line++;
                input.append(input.length() == 0 ? "" : "\n").append(text);
                if (session.isUnfinished(input.toString())) {
                    continue;
                }
            }
            Fault fault = session.evaluate(input.toString(), this);
            if (fault != null) {
                err.println(Rendering.clean(fault.inFile(name, firstLine)));
                gravest = gravest == null || fault.kind().compareTo(gravest.kind()) > 0 ? fault : gravest;
            }
            if (text == null || hasGone()) {
                return gravest;
            }
            input.setLength(0);
            firstLine = line + 1;
        }
    }

    /** The next line, null at the end; a line without end is refused before it fills the memory. */
    private static @Nullable String line(BufferedReader lines) throws IOException {
        StringBuilder line = new StringBuilder();
        for (int c = lines.read(); c != '\n'; c = lines.read()) {
            if (c < 0) {
                return line.length() == 0 ? null : line.toString();
            }
            if (line.length() == LONGEST_LINE) {
                throw new IOException("expected lines of at most 2,000,000 characters, found a longer one");
            }
            line.append((char) c);
        }
        if (line.length() > 0 && line.charAt(line.length() - 1) == '\r') {
            line.setLength(line.length() - 1);
        }
        return line.toString();
    }
}
