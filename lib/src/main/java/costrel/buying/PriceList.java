package costrel.buying;

import costrel.figures.Figures;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.joda.money.CurrencyUnit;

/**
 * All rows of all price lists of a brewery, found by item. Rows share their equal parts and are chained by item, so a
 * hundred thousand of them take little memory and no lookup reads more than its own item's rows.
 */
public final class PriceList {
    /** Up to this many rows of an item are held against each other without sorting them. */
    private static final int FEW = 16;

    /** So many days are kept at once: a year of them and a day more than a leap year has. */
    private static final int MOST_DAYS = 367;

    private final List<PriceRow> rows;
    private final Map<String, Integer> firstByItem;
    private final int[] nextOfItem;
    private final int[] firstDay;
    private final int[] lastDay;
    private final PriceTerms terms;
    private final Map<LocalDate, PricesOnDay> days = new ConcurrentHashMap<>();

    private PriceList(List<PriceRow> rows) {
        this.rows = List.copyOf(rows);
        this.firstByItem = new HashMap<>();
        this.nextOfItem = new int[rows.size()];
        this.firstDay = new int[rows.size()];
        this.lastDay = new int[rows.size()];
        this.terms = PriceTerms.none();
        String item = "";
        for (int i = rows.size() - 1; i >= 0; i--) {
            PriceRow row = rows.get(i);
            if (row.item().equals(item)) {
                nextOfItem[i] = i + 1; // rows of an item mostly stand together
            } else {
                item = row.item();
                Integer next = firstByItem.get(Names.folded(item));
                nextOfItem[i] = next == null ? -1 : next;
            }
            if (i == 0 || !rows.get(i - 1).item().equals(item)) {
                firstByItem.put(Names.folded(item), i);
            }
            firstDay[i] = day(row.validFrom());
            lastDay[i] = row.validUntil().isPresent() ? day(row.validUntil().get()) : Integer.MAX_VALUE;
        }
    }

    private PriceList(PriceList list, PriceTerms terms) {
        this.rows = list.rows;
        this.firstByItem = list.firstByItem;
        this.nextOfItem = list.nextOfItem;
        this.firstDay = list.firstDay;
        this.lastDay = list.lastDay;
        this.terms = terms;
    }

    /**
     * The same rows under terms.
     *
     * @param newTerms surcharges and rebates, carriage and rates of exchange, in place of those before
     * @return the list with these terms
     */
    public PriceList with(PriceTerms newTerms) {
        return new PriceList(this, newTerms);
    }

    /**
     * What makes a printed price what is paid.
     *
     * @return the terms; none unless they were given
     */
    public PriceTerms terms() {
        return terms;
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

    /**
     * Several lists as one; one alone stays as it is.
     *
     * @param lists the lists in the order of their files
     * @return the rows of all of them, without terms
     */
    public static PriceList ofAll(List<PriceList> lists) {
        if (lists.size() == 1) {
            return lists.get(0).with(PriceTerms.none());
        }
        Builder builder = new Builder();
        lists.forEach(list -> list.rows().forEach(builder::add));
        return builder.build();
    }

    /**
     * A price list of rows that share their equal parts already, as a reader of files makes them.
     *
     * @param rows the rows in file order
     * @return the list
     */
    public static PriceList ofShared(List<PriceRow> rows) {
        return new PriceList(rows);
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
                    shared(row.vat()),
                    shared(row.contractQuantity()),
                    row.place()));
            return this;
        }

        @SuppressWarnings("unchecked") // a thing is only ever shared with its equal, which is of the same type
        private <T> T shared(T thing) {
            Object before = shared.putIfAbsent(thing, thing);
            return before == null ? thing : (T) before;
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

    /** A day as a number, held at both ends of what an int takes: millions of years away. */
    private static int day(LocalDate date) {
        return (int) Math.max(Integer.MIN_VALUE, Math.min(Integer.MAX_VALUE, date.toEpochDay()));
    }

    boolean has(String foldedItem) {
        return firstByItem.containsKey(foldedItem);
    }

    /** The rows of an item that hold on a day, in file order. A list of years has many rows of an item and few of a day. */
    List<PriceRow> rowsOn(LocalDate date, String foldedItem) {
        int asked = day(date);
        List<PriceRow> found = new ArrayList<>(2);
        Integer first = firstByItem.get(foldedItem);
        for (int i = first == null ? -1 : first; i >= 0; i = nextOfItem[i]) {
            if (firstDay[i] <= asked && asked <= lastDay[i]) {
                found.add(rows.get(i));
            }
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
     * The list on one day. What was looked up on a day is kept for the next who asks.
     *
     * @param day the day that prices must apply on
     * @return what is looked up once and then known
     */
    public PricesOnDay on(LocalDate day) {
        PricesOnDay known = days.get(day);
        if (known != null) {
            return known;
        }
        if (days.size() >= MOST_DAYS) {
            days.clear();
        }
        PricesOnDay fresh = new PricesOnDay(this, day);
        PricesOnDay before = days.putIfAbsent(day, fresh);
        return before == null ? fresh : before;
    }

    /**
     * The price that applies: on the day, of each supplier the largest minimum order that is met, and of the suppliers
     * the cheapest with delivery, surcharges and rebates, in the currency of the sheet at the rate of the day; the first in
     * the file where two cost the same. Contract prices are no part of it: see {@link #contracts}.
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
        return on(day).offers(names, unit, currency).choose(quantity);
    }

    /**
     * The contract prices that apply: of the first name that has any price on the day.
     *
     * @param names names to look up, the most particular first
     * @param day the day that the price must apply on
     * @param unit what is bought by; contracts in another unit don't count
     * @return the rows in file order; empty where there is no contract
     */
    public List<PriceRow> contracts(List<String> names, LocalDate day, PackUnit unit) {
        return on(day).contracts(names, unit);
    }

    /**
     * Two prices of one supplier of which the one for a larger order costs more a unit.
     *
     * @param less the row for the smaller order
     * @param more the row for the larger one
     */
    public record Break(PriceRow less, PriceRow more) {

        /**
         * What to say about it.
         *
         * @return item, supplier, the larger least order and both origins
         */
        public String text() {
            return more.item() + " from " + more.supplier() + ": the price for " + Figures.plain(more.minimumQuantity())
                    + " " + more.pack().unit().label() + " or more (" + more.origin()
                    + ") is dearer than that for less (" + less.origin() + ")";
        }
    }

    /**
     * Quantity breaks out of order: a larger least order that costs more a unit than a smaller one of the same supplier
     * and currency on the same days. Contracts are no breaks, and a pack that holds more than the larger order isn't
     * a smaller one.
     *
     * @return such pairs, at most one for each row; empty where larger orders are never dearer
     */
    public List<Break> breaksOutOfOrder() {
        return PriceBreaks.outOfOrder(this);
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

    /** The rows of each item, in file order of the items' first rows. */
    void eachItem(Consumer<List<PriceRow>> job) {
        BitSet seen = new BitSet(rows.size());
        for (int first = seen.nextClearBit(0); first < rows.size(); first = seen.nextClearBit(first)) {
            List<PriceRow> ofItem = new ArrayList<>();
            for (int i = first; i >= 0; i = nextOfItem[i]) {
                seen.set(i);
                ofItem.add(rows.get(i));
            }
            job.accept(ofItem);
        }
    }

    /**
     * Every pair of rows that both apply on some day.
     *
     * @return the pairs, in file order of their first row; empty where each price is told apart
     */
    public List<Overlap> overlaps() {
        List<Overlap> found = new ArrayList<>();
        eachItem(ofItem -> found.addAll(overlaps(ofItem)));
        Map<PriceRow, Integer> place = new HashMap<>();
        if (!found.isEmpty()) {
            for (int i = 0; i < rows.size(); i++) {
                place.putIfAbsent(rows.get(i), i);
            }
        }
        found.sort(Comparator.comparing(overlap -> place.getOrDefault(overlap.first(), 0)));
        return found;
    }

    /** Whether no two of a few rows are of one supplier, pack and minimum order; of many it isn't said without sorting them. */
    static boolean toldApart(List<PriceRow> rowsOfItem) {
        if (rowsOfItem.size() > FEW) {
            return false;
        }
        for (int i = 1; i < rowsOfItem.size(); i++) {
            for (int k = 0; k < i; k++) {
                PriceRow one = rowsOfItem.get(i);
                PriceRow other = rowsOfItem.get(k);
                if (alike(one, other) && Names.folded(one.supplier()).equals(Names.folded(other.supplier()))) {
                    return false;
                }
            }
        }
        return true;
    }

    static boolean alike(PriceRow one, PriceRow other) {
        return one.contractQuantity().isPresent() == other.contractQuantity().isPresent()
                && one.minimumQuantity().compareTo(other.minimumQuantity()) == 0
                && one.pack().unit() == other.pack().unit()
                && one.pack().content().compareTo(other.pack().content()) == 0;
    }

    static List<Overlap> overlaps(List<PriceRow> rowsOfItem) {
        return PriceOverlaps.ofItem(rowsOfItem);
    }
}
