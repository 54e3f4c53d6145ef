package costrel.buying;

import costrel.recipe.Names;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Looks for quantity breaks that make a larger order dearer by the unit. */
final class PriceBreaks {

    private PriceBreaks() {}

    static List<PriceList.Break> outOfOrder(PriceList prices) {
        List<PriceList.Break> found = new ArrayList<>();
        prices.eachItem(rows -> {
            if (minimaDiffer(rows)) {
                found.addAll(ofItem(rows));
            }
        });
        return found;
    }

    /** Whether there is a larger and a smaller order at all, as for few items there is. */
    private static boolean minimaDiffer(List<PriceRow> rows) {
        BigDecimal first = rows.get(0).minimumQuantity();
        for (PriceRow row : rows) {
            if (row.minimumQuantity().compareTo(first) != 0) {
                return true;
            }
        }
        return false;
    }

    private static List<PriceList.Break> ofItem(List<PriceRow> rows) {
        Map<String, List<PriceRow>> bySupplier = new LinkedHashMap<>();
        for (PriceRow row : rows) {
            if (row.contractQuantity().isEmpty()) {
                bySupplier
                        .computeIfAbsent(
                                Names.folded(row.supplier()) + "|" + row.currency() + "|"
                                        + row.pack().unit(),
                                key -> new ArrayList<>())
                        .add(row);
            }
        }
        List<PriceList.Break> found = new ArrayList<>();
        bySupplier.values().forEach(ofSupplier -> found.addAll(ofSupplier(ofSupplier)));
        return found;
    }

    /** Goes through the rows by their first days and looks at those that still hold; at most one break for each row. */
    private static List<PriceList.Break> ofSupplier(List<PriceRow> rows) {
        List<PriceRow> byDay = new ArrayList<>(rows);
        byDay.sort(Comparator.comparing(PriceRow::validFrom)); // stable: file order on one day
        TreeMap<BigDecimal, List<PriceRow>> holding = new TreeMap<>();
        List<PriceList.Break> found = new ArrayList<>();
        for (PriceRow row : byDay) {
            first(holding.headMap(row.minimumQuantity(), false).values(), row, true)
                    .or(() ->
                            first(holding.tailMap(row.minimumQuantity(), false).values(), row, false))
                    .ifPresent(found::add);
            holding.computeIfAbsent(row.minimumQuantity(), least -> new ArrayList<>())
                    .add(row);
        }
        return found;
    }

    private static Optional<PriceList.Break> first(Collection<List<PriceRow>> groups, PriceRow row, boolean isMore) {
        for (List<PriceRow> group : groups) {
            group.removeIf(other -> !other.holdsOn(row.validFrom()));
            for (PriceRow other : group) {
                PriceRow less = isMore ? other : row;
                PriceRow more = isMore ? row : other;
                if (least(less).compareTo(least(more)) <= 0 && more.landed().compareTo(less.landed()) > 0) {
                    return Optional.of(new PriceList.Break(less, more));
                }
            }
        }
        return Optional.empty();
    }

    /** The least that can be bought: a whole pack, or the least order. */
    private static BigDecimal least(PriceRow row) {
        return row.minimumQuantity().max(row.pack().content());
    }
}
