package costrel.duty;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Pure alcohol made on the premises, by production year: 1 February to 31 January (Finance (No. 2) Act 2023 s.54(4)).
 * All alcohol counts, whatever its strength; connected premises are added together.
 *
 * @param pureAlcoholHl hectolitres of pure alcohol by the first day of the production year; a year that isn't over
 *     carries its estimate; 0 for a year in which nothing was made
 */
public record ProductionYears(Map<LocalDate, BigDecimal> pureAlcoholHl) {

    public ProductionYears {
        pureAlcoholHl.forEach((from, hl) -> {
            if (from.getMonth() != Month.FEBRUARY || from.getDayOfMonth() != 1) {
                throw new IllegalArgumentException(
                        "production year: expected one that starts on 1 February, found " + from);
            }
            Figures.zeroOrMore("pure alcohol made in the year from " + from, hl, " hL");
        });
        pureAlcoholHl = Collections.unmodifiableMap(new TreeMap<>(pureAlcoholHl));
    }

    /**
     * No figures at all: no relief is given.
     *
     * @return an empty record
     */
    public static ProductionYears unknown() {
        return new ProductionYears(Map.of());
    }

    /**
     * The production year that holds a day.
     *
     * @param day any day
     * @return the first day of the year
     */
    public static LocalDate yearOf(LocalDate day) {
        LocalDate start = LocalDate.of(day.getYear(), Month.FEBRUARY, 1);
        return day.isBefore(start) ? start.minusYears(1) : start;
    }

    Optional<BigDecimal> of(LocalDate yearStart) {
        return Optional.ofNullable(pureAlcoholHl.get(yearStart));
    }
}
