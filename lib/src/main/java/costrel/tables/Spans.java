package costrel.tables;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Rows of one thing that must not apply on the same day. */
final class Spans {

    private Spans() {}

    /** The days of a row, both ends included; without a last day it has no end. */
    record Span(long line, LocalDate from, Optional<LocalDate> until) {

        boolean meets(Span other) {
            return !endsBefore(other.from) && !other.endsBefore(from);
        }

        private boolean endsBefore(LocalDate day) {
            return until.isPresent() && until.get().isBefore(day);
        }
    }

    /** Adds a row's days to those of the rows before it; days that both have are a problem. */
    static void add(CsvRow row, List<Span> before, LocalDate from, Optional<LocalDate> until) {
        Span span = new Span(row.line(), from, until);
        before.stream()
                .filter(span::meets)
                .findFirst()
                .ifPresent(other -> row.problem(
                        "valid from",
                        TableProblem.quoted(row.cell("valid from")) + ", while line " + other.line() + " still applies",
                        "a day after the last of the row before"));
        before.add(span);
    }
}
