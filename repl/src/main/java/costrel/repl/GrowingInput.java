package costrel.repl;

import java.util.function.Function;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * An input that comes line by line and is asked at each line whether it is whole. What was found out about the lines before is kept,
 * so that many lines take no longer than the same lines in several inputs.
 */
final class GrowingInput {

    private final Function<String, CompletionInfo> engine;
    private Cutter cutter;

    /**
     * No input yet.
     *
     * @param engine tells whether a text is whole
     */
    GrowingInput(Function<String, CompletionInfo> engine) {
        this.engine = text -> Roomy.withRoom(text, () -> engine.apply(text));
        this.cutter = new Cutter(this.engine);
    }

    /** Whether an input needs a further line; one that is refused anyhow, or has cost too much already, does not. */
    boolean isUnfinished(String source) {
        if (!cutter.wasBegunWith(source)) {
            cutter = new Cutter(engine);
        }
        try {
            return Roomy.mayBeWaitedFor(source) && cutter.isUnfinished(source) && !cutter.isTired();
        } catch (StackOverflowError tooDeep) {
            cutter = new Cutter(engine);
            return false;
        }
    }
}
