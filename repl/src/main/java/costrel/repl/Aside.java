package costrel.repl;

import java.util.function.Function;

/**
 * What a word such as {@code help()} or {@code undo()} gives: no result of the trade but something for the console to do
 * when it comes to print it. It is not kept when a session is saved.
 */
public final class Aside {

    private final Function<Session, String> work;

    Aside(Function<Session, String> work) {
        this.work = work;
    }

    /** Does it; returns what is printed. */
    String carryOut(Session session) {
        return work.apply(session);
    }

    @Override
    public String toString() {
        return "something for the console to do; type it alone";
    }
}
