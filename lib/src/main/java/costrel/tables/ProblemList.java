package costrel.tables;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The problems of one file as they are met. Beyond a bound they are counted but no longer kept. */
final class ProblemList {

    /** More than a person reads, and little enough for a small heap. */
    static final int MOST_KEPT = 10_000;

    private final String file;
    private final List<TableProblem> problems = new ArrayList<>();
    private long left;

    ProblemList(String file) {
        this.file = file;
    }

    void add(long line, String column, String found, String expected) {
        add(new TableProblem(file, line, column, found, expected));
    }

    void add(TableProblem problem) {
        if (problems.size() < MOST_KEPT) {
            problems.add(problem);
        } else {
            left++;
        }
    }

    boolean isEmpty() {
        return problems.isEmpty();
    }

    String file() {
        return file;
    }

    /** The problems by line, those of the file as a whole last, and one more that counts those that weren't kept. */
    List<TableProblem> all() {
        List<TableProblem> all = new ArrayList<>(problems);
        all.sort(Comparator.comparingLong(problem -> problem.line() > 0 ? problem.line() : Long.MAX_VALUE));
        if (left > 0) {
            all.add(new TableProblem(file, 0, "", left + " more that are not listed", "no problems"));
        }
        return all;
    }
}
