package costrel.repl;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import jdk.jshell.JShell;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import jdk.jshell.VarSnippet;
import org.jspecify.annotations.Nullable;

/** Gives names back what they stood for before. */
final class Undo {

    private final JShell shell;
    private final Variables variables;
    private final Journal journal;

    Undo(JShell shell, Variables variables, Journal journal) {
        this.shell = shell;
        this.variables = variables;
        this.journal = journal;
    }

    /** What a name stands for, to be given back later. */
    Optional<Journal.Held> held(String name) {
        return variables
                .find(name)
                .flatMap(variable -> variables.field(variable).map(field -> {
                    return Journal.Held.of(variable.typeName(), value(field));
                }));
    }

    /** Takes the latest change of names back; returns what is told. */
    String latest() {
        List<Journal.Change> changes = journal.takeLatest();
        if (changes.isEmpty()) {
            return "nothing to take back: no name was set";
        }
        List<String> told = new ArrayList<>();
        for (Journal.Change change : changes) {
            told.add(takeBack(change));
        }
        return String.join("\n", told);
    }

    private String takeBack(Journal.Change change) {
        String name = change.name();
        Optional<VarSnippet> now = variables.find(name);
        if (change.before().isEmpty()) {
            now.ifPresent(variables::forget);
            return name + " is gone, as it was before";
        }
        Journal.Held held = change.before().get();
        Object value = held.value().get();
        if (value == null && !held.nothing()) {
            return name + " stays as it is: what it was before was too large to keep";
        }
        Optional<Field> field =
                now.filter(variable -> held.type().equals(variable.typeName())).flatMap(variables::field);
        if (field.isPresent()) {
            set(field.get(), value);
        } else {
            String type = WritableType.of(held.type());
            Kept.put(value);
            SnippetEvent declared = shell.eval(
                            type + " " + name + " = (" + type + ") " + Kept.class.getName() + ".take();")
                    .get(0);
            Kept.take();
            if (declared.status() != Status.VALID) {
                variables.forget(declared.snippet());
                return name + " can't be given back what it was before; make it again";
            }
        }
        return name + " is again "
                + (value == null
                        ? "nothing"
                        : isShort(value) ? new Rendering(List.of()).text(value) : "what it was before");
    }

    private static boolean isShort(Object value) {
        return value instanceof Number || value instanceof CharSequence || value instanceof Boolean;
    }

    private static @Nullable Object value(Field field) {
        try {
            return field.get(null);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    private static void set(Field field, @Nullable Object value) {
        try {
            field.set(null, value);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }
}
