package costrel.tables;

import java.util.List;
import java.util.stream.Collectors;

/** A table could not be used. The message has one line for each problem. */
public final class TableProblems extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<TableProblem> problems;

    /**
     * Carries what is wrong.
     *
     * @param problems at least one problem
     */
    public TableProblems(List<TableProblem> problems) {
        super(problems.stream().map(TableProblem::text).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /**
     * Everything that is wrong.
     *
     * @return the problems in the order of the file
     */
    public List<TableProblem> problems() {
        return problems;
    }
}
