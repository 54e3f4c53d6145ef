package costrel.repl;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.lang.model.SourceVersion;

/**
 * An input such as {@code x = 5} or {@code var x = 5}: a name and what it is to stand for.
 *
 * @param name the name
 * @param declares whether the input says {@code var}, so that the name is new whatever it was before
 * @param start where the expression begins in the input
 * @param expression what the name is to stand for, without a closing semicolon
 */
record Assignment(String name, boolean declares, int start, String expression) {

    private static final Pattern FORM = Pattern.compile(
            "(?:\\s|//[^\\n]*\\n|/\\*.*?\\*/)*+(var\\s++)?+(\\p{javaJavaIdentifierStart}\\p{javaJavaIdentifierPart}*+)\\s*+=(?!=)\\s*+",
            Pattern.DOTALL);

    /**
     * Reads an input.
     *
     * @param source one whole input
     * @return the assignment, or empty if the input is anything else
     */
    static Optional<Assignment> of(String source) {
        Matcher form = FORM.matcher(source);
        if (!form.lookingAt() || !SourceVersion.isName(form.group(2))) {
            return Optional.empty();
        }
        String expression = source.substring(form.end()).stripTrailing();
        if (expression.endsWith(";")) {
            expression = expression.substring(0, expression.length() - 1).stripTrailing();
        }
        return expression.isEmpty()
                ? Optional.empty()
                : Optional.of(new Assignment(form.group(2), form.group(1) != null, form.end(), expression));
    }
}
