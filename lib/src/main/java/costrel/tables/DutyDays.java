package costrel.tables;

import costrel.cost.DutyRate;
import costrel.cost.ReliefBand;
import costrel.recipe.Names;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** Days that rows of duty hold on, both ends included; without a last day they have no end. */
record DutyDays(LocalDate from, Optional<LocalDate> until) {

    /**
     * Rows with others that take their place: of a country, the days between the first and the last that the others cover are
     * theirs alone, and what is left of a row on either side stays.
     */
    static <T> List<T> replaced(
            List<T> rows,
            List<T> others,
            Function<T, String> country,
            Function<T, DutyDays> days,
            BiFunction<T, DutyDays, T> on) {
        Map<String, DutyDays> covered = new LinkedHashMap<>();
        others.forEach(row -> covered.merge(Names.folded(country.apply(row)), days.apply(row), DutyDays::around));
        List<T> all = new ArrayList<>();
        for (T row : rows) {
            DutyDays taken = covered.get(Names.folded(country.apply(row)));
            if (taken == null) {
                all.add(row);
            } else {
                days.apply(row).without(taken).forEach(left -> all.add(on.apply(row, left)));
            }
        }
        all.addAll(others);
        return all;
    }

    private DutyDays around(DutyDays other) {
        LocalDate first = from.isBefore(other.from) ? from : other.from;
        if (until.isEmpty() || other.until.isEmpty()) {
            return new DutyDays(first, Optional.empty());
        }
        return new DutyDays(first, until.get().isAfter(other.until.get()) ? until : other.until);
    }

    private List<DutyDays> without(DutyDays taken) {
        List<DutyDays> left = new ArrayList<>();
        if (from.isBefore(taken.from)) {
            LocalDate before = taken.from.minusDays(1);
            boolean endsSooner = until.isPresent() && until.get().isBefore(before);
            left.add(new DutyDays(from, endsSooner ? until : Optional.of(before)));
        }
        if (taken.until.isPresent() && (until.isEmpty() || until.get().isAfter(taken.until.get()))) {
            LocalDate after = taken.until.get().plusDays(1);
            left.add(new DutyDays(from.isAfter(after) ? from : after, until));
        }
        return left;
    }

    DutyRate of(DutyRate rate) {
        return new DutyRate(
                from,
                until,
                rate.strengthFrom(),
                rate.strengthUnder(),
                rate.draught(),
                rate.ratePerLpa(),
                rate.tier(),
                rate.source());
    }

    ReliefBand of(ReliefBand band) {
        return new ReliefBand(
                from,
                until,
                band.strengthFrom(),
                band.strengthUnder(),
                band.draught(),
                band.overHl(),
                band.upToHl(),
                band.marginal(),
                band.cumulative(),
                band.source());
    }
}
