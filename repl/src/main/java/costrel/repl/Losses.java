package costrel.repl;

import java.util.List;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/** What one declaration does to others, told rather than left to be found out. */
final class Losses {

    private final JShell shell;
    private final Variables variables;

    Losses(JShell shell, Variables variables) {
        this.shell = shell;
        this.variables = variables;
    }

    /** What a method, class or variable waits for, such as {@code method g()}. */
    List<String> missing(DeclarationSnippet snippet) {
        return shell.unresolvedDependencies(snippet).toList();
    }

    /** Tells what a new method or class waits for. */
    void noteWaiting(DeclarationSnippet snippet, Listener listener) {
        if (snippet instanceof MethodSnippet || snippet instanceof TypeDeclSnippet) {
            listener.note(snippet.name() + " can be used once " + RunFaults.names(missing(snippet)) + " is known");
        }
    }

    /** Tells what came of others. A variable that was set back is taken away rather than left at 0. */
    void note(List<SnippetEvent> events, Listener listener) {
        for (SnippetEvent event : events) {
            if (event.causeSnippet() == null
                    || event.status() == Status.OVERWRITTEN
                    || event.status() == Status.DROPPED
                    || event.previousStatus() != Status.VALID) {
                continue;
            }
            if (event.snippet() instanceof VarSnippet variable) {
                variables.keepUnnamed(variable);
                variables.forget(variable);
                if (variable.subKind() != SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
                    listener.note(variable.name() + " is gone, for what it was made from has changed; make it again");
                }
            } else if (event.status() != Status.VALID && event.snippet() instanceof DeclarationSnippet waiting) {
                noteWaiting(waiting, listener);
            }
        }
    }
}
