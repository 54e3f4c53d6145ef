package costrel.tables;

import costrel.cost.ContainerCharges.PackagingFee;
import costrel.duty.DutyRate;
import costrel.duty.ReliefBand;
import costrel.recipe.Names;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** Days that a dated row holds on, both ends included; without a last day it has no end. */
record HeldDays(LocalDate from, Optional<LocalDate> until) {

    /**
     * Rows with others that take their place: of one country or material, the days between the first and the last that the others
     * cover are theirs alone, and what is left of a row on either side stays.
     */
    static <T> List<T> replaced(
            List<T> rows,
            List<T> others,
            Function<T, String> subject,
            Function<T, HeldDays> days,
            BiFunction<T, HeldDays, T> on) {
        Map<String, HeldDays> covered = new LinkedHashMap<>();
        others.forEach(row -> covered.merge(Names.folded(subject.apply(row)), days.apply(row), HeldDays::around));
        List<T> all = new ArrayList<>();
        for (T row : rows) {
            HeldDays taken = covered.get(Names.folded(subject.apply(row)));
            if (taken == null) {
                all.add(row);
            } else {
                days.apply(row).without(taken).forEach(left -> all.add(on.apply(row, left)));
            }
        }
        all.addAll(others);
        return all;
    }

    private HeldDays around(HeldDays other) {
        LocalDate first = from.isBefore(other.from) ? from : other.from;
        if (until.isEmpty() || other.until.isEmpty()) {
            return new HeldDays(first, Optional.empty());
        }
        return new HeldDays(first, until.get().isAfter(other.until.get()) ? until : other.until);
    }

    private List<HeldDays> without(HeldDays taken) {
        List<HeldDays> left = new ArrayList<>();
        if (from.isBefore(taken.from)) {
            LocalDate before = taken.from.minusDays(1);
            boolean endsSooner = until.isPresent() && until.get().isBefore(before);
            left.add(new HeldDays(from, endsSooner ? until : Optional.of(before)));
        }
        if (taken.until.isPresent() && (until.isEmpty() || until.get().isAfter(taken.until.get()))) {
            LocalDate after = taken.until.get().plusDays(1);
            left.add(new HeldDays(from.isAfter(after) ? from : after, until));
        }
        return left;
    }

    PackagingFee of(PackagingFee fee) {
        return new PackagingFee(fee.material(), fee.perTonne(), fee.currency(), from, until, fee.source());
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
