package costrel.repl;

import java.io.IOException;
import org.jline.terminal.Attributes;
import org.jline.terminal.Attributes.LocalFlag;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStyle;
import org.jline.utils.InfoCmp.Capability;

/** An answer that is longer than the screen, a screenful at a time. */
final class Pages {

    private static final int LEAST_HEIGHT = 8;
    private static final int CTRL_C = 3;
    private static final int CTRL_D = 4;
    private static final int NONE_LEFT = -1;

    private final Terminal terminal;
    private final boolean colour;

    Pages(Terminal terminal, boolean colour) {
        this.terminal = terminal;
        this.colour = colour;
    }

    /** Whether a text must be cut into pages here. */
    boolean cuts(String text) {
        return terminal.getHeight() >= LEAST_HEIGHT
                && !TypedInput.isPlain(terminal)
                && text.lines().count() > terminal.getHeight() - 1;
    }

    /** Shows a text; asks after each screenful but the last. What is left when q is pressed is not shown. */
    void show(String text) {
        String[] lines = text.split("\n", -1);
        int shown = 0;
        Attributes before = terminal.enterRawMode();
        try {
            // Ctrl-C comes as a key, so that it ends the answer and nothing else.
            Attributes asKeys = new Attributes(terminal.getAttributes());
            asKeys.setLocalFlag(LocalFlag.ISIG, false);
            terminal.setAttributes(asKeys);
            int step = terminal.getHeight() - 2;
            while (true) {
                int until = Math.min(lines.length, shown + Math.max(1, step));
                for (; shown < until; shown++) {
                    terminal.writer().print(lines[shown] + "\r\n");
                }
                if (shown == lines.length) {
                    return;
                }
                int key = ask(lines.length - shown);
                if (key == 'q' || key == 'Q' || key == CTRL_C || key == CTRL_D || key == NONE_LEFT) {
                    return;
                }
                step = key == 'e' || key == 'E'
                        ? lines.length
                        : key == '\r' || key == '\n' ? 1 : terminal.getHeight() - 2;
            }
        } catch (IOException left) {
            // A terminal that has gone away takes no more pages.
        } finally {
            terminal.setAttributes(before);
            terminal.flush();
        }
    }

    private int ask(int left) throws IOException {
        String words = left + (left == 1 ? " line more" : " lines more")
                + ": space for a page, Enter for a line, e for the end, q to leave it";
        AttributedStyle style = colour ? AttributedStyle.DEFAULT.faint() : AttributedStyle.DEFAULT;
        terminal.writer().print(new AttributedString(words, style).toAnsi(terminal));
        terminal.flush();
        int key = terminal.reader().read();
        terminal.writer().print("\r");
        terminal.puts(Capability.clr_eol);
        terminal.flush();
        return key;
    }
}
