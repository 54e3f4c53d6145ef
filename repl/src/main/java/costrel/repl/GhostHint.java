package costrel.repl;

import java.util.regex.Pattern;
import org.jline.reader.Highlighter;
import org.jline.reader.LineReader;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.AttributedStyle;

/** Shows the hint behind the cursor, faint and never part of what is typed. */
final class GhostHint implements Highlighter {

    private final TypedInput input;

    GhostHint(TypedInput input) {
        this.input = input;
    }

    @Override
    public AttributedString highlight(LineReader reader, String buffer) {
        AttributedStringBuilder shown = new AttributedStringBuilder().append(buffer);
        boolean atEnd = reader.getBuffer().cursor() == buffer.length();
        if (!atEnd || input.accepted() || buffer.isBlank()) {
            return shown.toAttributedString();
        }
        String last = buffer.substring(buffer.lastIndexOf('\n') + 1);
        String hint = Rendering.clean(Hint.of(buffer));
        int room = reader.getTerminal().getWidth() - Prompt.FIRST.length() - last.length() - 1;
        if (hint.isEmpty() || hint.length() > room) {
            return shown.toAttributedString();
        }
        return shown.styled(AttributedStyle.DEFAULT.faint(), hint).toAttributedString();
    }

    @Override
    public void setErrorPattern(Pattern errorPattern) {}

    @Override
    public void setErrorIndex(int errorIndex) {}
}
