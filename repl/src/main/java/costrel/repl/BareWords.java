package costrel.repl;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A word without Java's brackets, such as {@code beers} or {@code help brew}, as the call that is meant. */
final class BareWords {

    private static final Pattern FORM =
            Pattern.compile("(\\p{Lower}++)(?:[ \\t]++([\\p{L}\\d][\\p{L}\\d .,'’&_/-]*+))?");

    private static final Pattern SAVE = Pattern.compile("save[ \\t]++([^\"\\s(=.;][^\"\n]*+)");

    private BareWords() {}

    /**
     * Reads an input.
     *
     * @param source an input or a part of one
     * @param taken whether a name stands for something else in this session
     * @return the call, or empty if it isn't such a word
     */
    static Optional<String> call(String source, Predicate<String> taken) {
        String bare = source.strip();
        if (bare.endsWith(";")) {
            bare = bare.substring(0, bare.length() - 1).stripTrailing();
        }
        Matcher save = SAVE.matcher(bare);
        if (save.matches() && !taken.test("save")) {
            return Optional.of("save(\"" + save.group(1).replace("\\", "\\\\") + "\")");
        }
        Matcher form = FORM.matcher(bare);
        if (!form.matches() || !Words.all().containsKey(form.group(1)) || taken.test(form.group(1))) {
            return Optional.empty();
        }
        String word = form.group(1);
        String text = form.group(2);
        if (text == null) {
            return takes(word) ? Optional.of(word + "()") : Optional.empty();
        }
        return takes(word, String.class) ? Optional.of(word + "(\"" + text + "\")") : Optional.empty();
    }

    private static boolean takes(String word, Class<?>... what) {
        return Stream.of(Verbs.class.getMethods())
                .filter(method -> Modifier.isStatic(method.getModifiers()))
                .filter(method -> method.getName().equals(word))
                .map(Method::getParameterTypes)
                .anyMatch(types -> java.util.Arrays.equals(types, what));
    }
}
