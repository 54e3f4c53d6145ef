package costrel.repl;

import java.lang.reflect.Field;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.VarSnippet;

/**
 * The variables of a session. JShell keeps the value of a variable in a field that outlives it, so letting go of one
 * means emptying its field too. Results that got no name are kept under one that begins with {@code $}, the last few
 * hundred of them: every further one makes the next input a little slower.
 */
final class Variables {

    private static final int UNNAMED_KEPT = 200;

    private final JShell shell;
    private final CapturingControl control;
    private final Deque<VarSnippet> unnamed = new ArrayDeque<>();

    Variables(JShell shell, CapturingControl control) {
        this.shell = shell;
        this.control = control;
    }

    /** The variable of a name, if there is one. */
    Optional<VarSnippet> find(String name) {
        return shell.variables()
                .filter(variable -> variable.name().equals(name) && shell.status(variable) == Status.VALID)
                .findFirst();
    }

    /** The field that holds a variable's value, if it has one. */
    Optional<Field> field(VarSnippet variable) {
        return shell.status(variable) == Status.VALID
                ? control.fieldOf(() -> shell.varValue(variable))
                : Optional.empty();
    }

    /** All names, without those of results that got none. */
    List<String> named() {
        return shell.variables()
                .filter(variable -> variable.subKind() != SubKind.TEMP_VAR_EXPRESSION_SUBKIND)
                .map(VarSnippet::name)
                .toList();
    }

    /** Names that hold something of the library, which was made from the folder as it was read then. */
    List<String> ofLibrary() {
        return shell.variables()
                .filter(variable -> variable.subKind() != SubKind.TEMP_VAR_EXPRESSION_SUBKIND)
                .filter(variable -> field(variable).map(Variables::isOfLibrary).orElse(false))
                .map(VarSnippet::name)
                .toList();
    }

    private static boolean isOfLibrary(Field field) {
        try {
            Object value = field.get(null);
            return value != null && value.getClass().getName().startsWith("costrel.");
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    /** Takes a variable away, and its value with it. */
    void forget(Snippet variable) {
        if (!shell.status(variable).isActive()) {
            return;
        }
        Optional<Field> field = variable instanceof VarSnippet known ? field(known) : Optional.empty();
        shell.drop(variable);
        field.ifPresent(CapturingControl::empty);
    }

    /** Notes a result that got no name. */
    void addUnnamed(VarSnippet result) {
        unnamed.addLast(result);
    }

    /** Keeps a result that got no name for good, since something hangs on it. */
    void keepUnnamed(VarSnippet result) {
        unnamed.remove(result);
    }

    /** Takes a result away if it has no name. */
    void forgetUnnamed(VarSnippet result) {
        if (unnamed.remove(result)) {
            forget(result);
        }
    }

    /** Takes away the latest result that got no name. */
    void forgetLatestUnnamed() {
        forget(unnamed.removeLast());
    }

    /** Takes away the oldest of too many results that got no name, but for those that a method or class uses. */
    void forgetOldUnnamed() {
        while (unnamed.size() > UNNAMED_KEPT) {
            VarSnippet oldest = unnamed.removeFirst();
            Pattern use = Pattern.compile("(?<![\\w$])" + Pattern.quote(oldest.name()) + "(?![\\w$])");
            boolean used = Stream.<Snippet>concat(shell.methods(), shell.types())
                    .anyMatch(snippet -> use.matcher(snippet.source()).find());
            if (!used) {
                forget(oldest);
            }
        }
    }
}
