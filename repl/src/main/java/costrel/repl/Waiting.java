package costrel.repl;

import java.util.Locale;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStyle;
import org.jline.utils.InfoCmp.Capability;

/** A line at the terminal for whatever takes over a second: how long it has taken, and how long it still will if that can be told. */
final class Waiting {

    private static final long UNSEEN_MILLIS = 1000;

    private final Terminal terminal;
    private final boolean colour;
    private String shown = "";

    Waiting(Terminal terminal, boolean colour) {
        this.terminal = terminal;
        this.colour = colour;
    }

    /** Shows or brings up to date, from a second on; nothing where the cursor can't move. */
    synchronized void show(long millis) {
        if (millis < UNSEEN_MILLIS || TypedInput.isPlain(terminal)) {
            return;
        }
        String text = text(millis, Desk.shareDone());
        if (text.equals(shown)) {
            return;
        }
        AttributedStyle style = colour ? AttributedStyle.DEFAULT.faint() : AttributedStyle.DEFAULT;
        terminal.writer().print("\r" + new AttributedString(text, style).toAnsi(terminal));
        terminal.puts(Capability.clr_eol);
        terminal.writer().print("\r");
        terminal.flush();
        shown = text;
    }

    /** Takes the line away. */
    synchronized void clear() {
        if (!shown.isEmpty()) {
            terminal.writer().print("\r");
            terminal.puts(Capability.clr_eol);
            terminal.flush();
            shown = "";
        }
    }

    /**
     * The words.
     *
     * @param millis how long it has taken
     * @param share which part of it is done, or not a number if that can't be told
     */
    static String text(long millis, double share) {
        String text = millis / 1000 + " s so far";
        if (share > 0.02 && share <= 1) {
            text += String.format(
                    Locale.ROOT,
                    ", %.0f %% done, about %d s left",
                    share * 100,
                    Math.round(millis * (1 - share) / share / 1000));
        }
        return text + "; Ctrl-C stops";
    }
}
