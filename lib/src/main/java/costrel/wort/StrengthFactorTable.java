package costrel.wort;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A published table of strength factors and the time it holds for. The bands follow one another in steps of a tenth
 * of a degree (6.9, then 7.0), so every difference taken to a tenth falls in one band only.
 *
 * @param name what the table is called in results
 * @param validFrom first day it holds
 * @param validUntil last day it holds, that day included; empty when no end is known
 * @param rows the bands, from the smallest difference to the greatest
 * @param source where it was published
 */
public record StrengthFactorTable(
        String name, LocalDate validFrom, Optional<LocalDate> validUntil, List<StrengthFactor> rows, String source) {
    private static final BigDecimal TENTH = new BigDecimal("0.1");

    public StrengthFactorTable {
        if (name.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException("strength factor table: expected a name and a source, found none");
        }
        if (validUntil.isPresent() && validUntil.get().isBefore(validFrom)) {
            throw new IllegalArgumentException("strength factor table '" + name + "': expected a last day on or after "
                    + validFrom + ", found " + validUntil.get());
        }
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException(
                    "strength factor table '" + name + "': expected a band or more, found none");
        }
        BigDecimal next = BigDecimal.ZERO;
        for (StrengthFactor row : rows) {
            BigDecimal from = BigDecimal.valueOf(row.fromDegrees());
            if (from.compareTo(next) != 0) {
                throw new IllegalArgumentException("strength factor table '" + name + "': expected a band from "
                        + next.toPlainString() + " degrees, found " + from.toPlainString());
            }
            BigDecimal to = BigDecimal.valueOf(row.toDegrees());
            if (to.remainder(TENTH).signum() != 0) {
                throw new IllegalArgumentException("strength factor table '" + name
                        + "': expected bands that end on a tenth of a degree, found " + to.toPlainString());
            }
            next = to.add(TENTH);
        }
    }

    /**
     * Whether the table holds on a day.
     *
     * @param day the day, both ends of the validity included
     * @return true when it does
     */
    public boolean holdsOn(LocalDate day) {
        return !day.isBefore(validFrom)
                && validUntil.map(last -> !day.isAfter(last)).orElse(true);
    }

    /** The greatest difference the table reaches. */
    double mostDegrees() {
        return rows.get(rows.size() - 1).toDegrees();
    }
}
