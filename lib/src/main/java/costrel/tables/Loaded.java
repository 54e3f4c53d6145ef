package costrel.tables;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a file held, or else everything that is wrong with it. A file with a problem gives no value at all.
 *
 * @param <T> what the file holds
 */
public final class Loaded<T> {

    private final Optional<T> value;
    private final List<TableProblem> problems;
    private final List<String> assumed;

    private Loaded(Optional<T> value, List<TableProblem> problems, List<String> assumed) {
        this.value = value;
        this.problems = problems;
        this.assumed = assumed;
    }

    /**
     * A file without fault.
     *
     * @param <T> what the file holds
     * @param value what the file holds
     * @param assumed a sentence for each default that took the place of a blank
     * @return the loaded value
     */
    public static <T> Loaded<T> of(T value, List<String> assumed) {
        return new Loaded<>(Optional.of(value), List.of(), List.copyOf(assumed));
    }

    /**
     * A file that can't be used.
     *
     * @param <T> what the file would have held
     * @param problems everything that is wrong with it, at least one
     * @return the refusal
     * @throws IllegalArgumentException if there is no problem
     */
    public static <T> Loaded<T> refused(List<TableProblem> problems) {
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("refused table: expected at least one problem, found none");
        }
        return new Loaded<>(Optional.empty(), List.copyOf(problems), List.of());
    }

    /**
     * Whether the file can be used.
     *
     * @return true where there is no problem
     */
    public boolean sound() {
        return value.isPresent();
    }

    /**
     * What is wrong with the file.
     *
     * @return the problems in the order of the file; empty where it is sound
     */
    public List<TableProblem> problems() {
        return problems;
    }

    /**
     * The defaults that were used where the file is silent.
     *
     * @return a sentence for each, with file and line
     */
    public List<String> assumed() {
        return assumed;
    }

    /**
     * The value of a sound file.
     *
     * @return what the file holds
     * @throws TableProblems with all problems, where there is one
     */
    public T orThrow() {
        return value.orElseThrow(() -> new TableProblems(problems));
    }

    /**
     * The same with the value of a sound file changed.
     *
     * @param <R> what it becomes
     * @param change what to do with the value
     * @return the changed value, or the same problems
     */
    public <R> Loaded<R> map(Function<? super T, ? extends R> change) {
        return value.isPresent() ? of(change.apply(value.get()), assumed) : refused(problems);
    }
}
