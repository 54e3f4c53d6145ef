package costrel.cost;

import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * All rows of all price lists of a brewery, found by item. Rows share their equal parts and are chained by item, so a
 * hundred thousand of them take little memory and no lookup reads more than its own item's rows.
 */
public final class PriceList {

    private final List<PriceRow> rows;
    private final Map<String, Integer> firstByItem;
    private final int[] nextOfItem;

    private PriceList(List<PriceRow> rows) {
        this.rows = List.copyOf(rows);
        this.firstByItem = new HashMap<>();
        this.nextOfItem = new int[rows.size()];
        for (int i = rows.size() - 1; i >= 0; i--) {
            Integer next = firstByItem.put(Names.folded(rows.get(i).item()), i);
            nextOfItem[i] = next == null ? -1 : next;
        }
    }

    /**
     * A price list of these rows.
     *
     * @param rows the rows in file order
     * @return the list
     */
    public static PriceList of(List<PriceRow> rows) {
        Builder builder = new Builder();
        rows.forEach(builder::add);
        return builder.build();
    }

    /** Takes rows one at a time, as a file is read, and lets equal parts be shared. */
    public static final class Builder {
        private final List<PriceRow> rows = new ArrayList<>();
        private final Map<Object, Object> shared = new HashMap<>();

        /** Starts with no rows. */
        public Builder() {}

        /**
         * Adds a row after those that are in.
         *
         * @param row the row
         * @return this builder
         */
        public Builder add(PriceRow row) {
            rows.add(new PriceRow(
                    shared(row.item()),
                    shared(row.supplier()),
                    shared(row.pack()),
                    shared(row.price()),
                    row.currency(),
                    shared(row.validFrom()),
                    shared(row.validUntil()),
                    shared(row.minimumQuantity()),
                    shared(row.deliveryPerPack()),
                    row.origin()));
            return this;
        }

        @SuppressWarnings("unchecked") // a thing is only ever shared with its equal, which is of the same type
        private <T> T shared(T thing) {
            Object known = shared.putIfAbsent(thing, thing);
            return known == null ? thing : (T) known;
        }

        /**
         * The price list of the rows added so far.
         *
         * @return the list
         */
        public PriceList build() {
            shared.clear(); // before the index takes its own room
            return new PriceList(rows);
        }
    }

    /**
     * All rows.
     *
     * @return in file order
     */
    public List<PriceRow> rows() {
        return rows;
    }

    /**
     * The rows of an item, by its name without regard to case and spaces.
     *
     * @param item the name
     * @return in file order, empty where no row names it
     */
    public List<PriceRow> rowsOf(String item) {
        List<PriceRow> found = new ArrayList<>();
        Integer first = firstByItem.get(Names.folded(item));
        for (int i = first == null ? -1 : first; i >= 0; i = nextOfItem[i]) {
            found.add(rows.get(i));
        }
        return found;
    }

    /**
     * Names of items near to one that no row has.
     *
     * @param item the name as written
     * @return at most three, nearest first
     */
    public List<String> nearest(String item) {
        return Names.nearest(
                firstByItem.values().stream().map(i -> rows.get(i).item()).toList(), item);
    }

    /**
     * The price that applies: on the day, of each supplier the largest minimum order that is met, and of the suppliers
     * the cheapest with delivery; the first in the file where two cost the same.
     *
     * @param names names to look up, the most particular first: a lot, then its variety; a later name serves only where
     *     no price of an earlier one can be used, and a finding then says so
     * @param day the day that the price must apply on
     * @param quantity how much is bought, 0 or more, in the unit
     * @param unit what the quantity is counted in; rows sold by another unit can't be used
     * @param currency the currency of the sheet; rows in another can't be used
     * @return the row chosen and those passed over
     * @throws NoPriceException when no row can be used or two rows of one supplier both apply
     */
    public Choice choose(List<String> names, LocalDate day, BigDecimal quantity, PackUnit unit, CurrencyUnit currency) {
        return new PriceSearch(this, day, quantity, unit, currency).choose(names);
    }

    /**
     * Two rows that can't be told apart on some day: the same item, supplier, pack and minimum order.
     *
     * @param first the row that stands first
     * @param second the row that stands after it
     */
    public record Overlap(PriceRow first, PriceRow second) {

        /**
         * What to say about it.
         *
         * @return both origins, the item and the supplier
         */
        public String text() {
            return "two prices that both apply: " + first.origin() + " and " + second.origin() + ", "
                    + first.item() + " from " + first.supplier() + ", "
                    + first.pack().text()
                    + "; end the earlier one before the later one begins";
        }
    }

    /**
     * Every pair of rows that both apply on some day.
     *
     * @return the pairs, in file order of their first row; empty where each price is told apart
     */
    public List<Overlap> overlaps() {
        List<Overlap> found = new ArrayList<>();
        for (int i : firstByItem.values()) {
            if (nextOfItem[i] >= 0) {
                found.addAll(overlaps(rowsOf(rows.get(i).item())));
            }
        }
        Map<PriceRow, Integer> place = new HashMap<>();
        if (!found.isEmpty()) {
            for (int i = 0; i < rows.size(); i++) {
                place.putIfAbsent(rows.get(i), i);
            }
        }
        found.sort(Comparator.comparing(overlap -> place.getOrDefault(overlap.first(), 0)));
        return found;
    }

    /** A row by what tells it from another: supplier, minimum order, pack. */
    private record Told(PriceRow row, String supplier, int place) {
        boolean likeOf(Told other) {
            return supplier.equals(other.supplier)
                    && row.minimumQuantity().compareTo(other.row.minimumQuantity()) == 0
                    && row.pack().unit() == other.row.pack().unit()
                    && row.pack().content().compareTo(other.row.pack().content()) == 0;
        }
    }

    static List<Overlap> overlaps(List<PriceRow> rowsOfItem) {
        List<Told> told = new ArrayList<>();
        for (PriceRow row : rowsOfItem) {
            told.add(new Told(row, Names.folded(row.supplier()), told.size()));
        }
        told.sort(Comparator.comparing(Told::supplier)
                .thenComparing(t -> t.row().minimumQuantity())
                .thenComparing(t -> t.row().pack().unit())
                .thenComparing(t -> t.row().pack().content())
                .thenComparing(t -> t.row().validFrom()));
        List<Overlap> found = new ArrayList<>();
        @Nullable Told longest = null;
        for (Told next : told) {
            if (longest == null || !longest.likeOf(next)) {
                longest = next;
                continue;
            }
            if (longest.row().holdsOn(next.row().validFrom())) {
                boolean inOrder = longest.place() < next.place();
                found.add(new Overlap(inOrder ? longest.row() : next.row(), inOrder ? next.row() : longest.row()));
            }
            if (endsAfter(next.row().validUntil(), longest.row().validUntil())) {
                longest = next;
            }
        }
        return found;
    }

    private static boolean endsAfter(Optional<LocalDate> until, Optional<LocalDate> other) {
        return other.isPresent() && (until.isEmpty() || until.get().isAfter(other.get()));
    }
}
