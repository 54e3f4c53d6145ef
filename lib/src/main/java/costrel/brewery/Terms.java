package costrel.brewery;

import costrel.cost.ContainerCost;
import costrel.cost.CostBasis;
import costrel.cost.CostSheet;
import costrel.measure.Share;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.Collectors;

/** The terms that a person states in words: shares, days, and the containers of a sheet by name. */
final class Terms {

    private Terms() {}

    /** A share as the decimal that was written: 0.35 for "35 %". */
    static BigDecimal share(String what, String text) {
        try {
            return BigDecimal.valueOf(Share.parse(text).fraction());
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(what + ": " + e.getMessage(), e);
        }
    }

    /** Per cent as the decimal that was written: 3.5 for "3.5 %". */
    static BigDecimal percent(String what, String text) {
        return share(what, text).movePointRight(2);
    }

    /** A share for calculations that draw by chance. */
    static double spread(String what, String text) {
        double share = share(what, text).doubleValue();
        if (!(share >= 0)) {
            throw new IllegalArgumentException(what + ": expected a spread of 0 % or more, found '" + text + "'");
        }
        return share;
    }

    static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "day: expected a date, year first, such as 2026-11-25, found '" + text + "'", e);
        }
    }

    static CostBasis basis(String text) {
        for (CostBasis basis : CostBasis.values()) {
            if (Names.folded(basis.label()).equals(Names.folded(text))) {
                return basis;
            }
        }
        throw new IllegalArgumentException("cost basis: expected one of "
                + Arrays.stream(CostBasis.values()).map(CostBasis::label).collect(Collectors.joining(", "))
                + "; found '" + text + "'");
    }

    /** A container of a sheet; another is refused and those there are named. */
    static ContainerCost container(CostSheet sheet, String name) {
        for (ContainerCost container : sheet.containers()) {
            if (Names.folded(container.container().name()).equals(Names.folded(name))) {
                return container;
            }
        }
        throw new IllegalArgumentException("container: expected one that "
                + sheet.batch().beer() + " is filled into ("
                + sheet.containers().stream()
                        .map(container -> container.container().name())
                        .collect(Collectors.joining(", "))
                + "), found '" + name + "'");
    }
}
