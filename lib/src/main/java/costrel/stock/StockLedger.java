package costrel.stock;

import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * Receipts and issues of a store, item by item, in the order of their days and on one day in the order of the file.
 *
 * <p>Each issue is rounded to the penny, halves up, and so is the closing stock; what the roundings leave goes to the
 * item's last issue, so that opening + receipts = issues + closing to the penny.
 */
public final class StockLedger {

    private final CurrencyUnit currency;
    private final List<Movement> movements;
    private final Map<String, List<Movement>> byItem;

    private StockLedger(CurrencyUnit currency, List<Movement> movements) {
        this.currency = currency;
        this.movements = List.copyOf(movements);
        this.byItem = new LinkedHashMap<>();
        for (Movement movement : movements) {
            byItem.computeIfAbsent(Names.folded(movement.item()), name -> new ArrayList<>())
                    .add(movement);
        }
        List<String> faults = new ArrayList<>();
        for (List<Movement> ofItem : byItem.values()) {
            ofItem.sort(Comparator.comparing(Movement::day)); // stable: file order on one day
            fault(ofItem).ifPresent(faults::add);
        }
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(String.join("\n", faults));
        }
    }

    /**
     * A ledger of these movements.
     *
     * @param currency what every receipt is paid in
     * @param movements the rows in file order, any number of items
     * @return the ledger
     * @throws IllegalArgumentException when more is taken out than is there, naming the row and what is short; when an
     *     item is counted in two units, a cost is in another currency or an opening row stands after others; the first
     *     fault of every item, a line each
     */
    public static StockLedger of(CurrencyUnit currency, List<Movement> movements) {
        return new StockLedger(currency, movements);
    }

    /**
     * The same ledger with more movements behind its own.
     *
     * @param more what else moved, such as what a gyle takes
     * @return the longer ledger
     * @throws IllegalArgumentException as for {@link #of}
     */
    public StockLedger with(List<? extends Movement> more) {
        List<Movement> all = new ArrayList<>(movements);
        all.addAll(more);
        return new StockLedger(currency, all);
    }

    /**
     * The same ledger as it stood at the end of a day.
     *
     * @param day the day
     * @return its movements up to that day, that day's among them
     */
    public StockLedger until(LocalDate day) {
        return new StockLedger(
                currency,
                movements.stream()
                        .filter(movement -> !movement.day().isAfter(day))
                        .toList());
    }

    /**
     * What every receipt is paid in.
     *
     * @return the currency
     */
    public CurrencyUnit currency() {
        return currency;
    }

    /**
     * The items, each by the name of its first row.
     *
     * @return in the order in which the file first names them
     */
    public List<String> items() {
        return byItem.values().stream().map(ofItem -> ofItem.get(0).item()).toList();
    }

    /**
     * The movements of an item, by its name without regard to case and spaces.
     *
     * @param item the name
     * @return in the order of their days, empty where no row names it
     */
    public List<Movement> movementsOf(String item) {
        return List.copyOf(byItem.getOrDefault(Names.folded(item), List.of()));
    }

    /**
     * Values one item.
     *
     * @param item its name
     * @param valuation the basis of cost
     * @return what each issue cost and what is left
     * @throws IllegalArgumentException when no row names the item, or the basis has no cost for it
     */
    public ItemStock value(String item, Valuation valuation) {
        List<Movement> ofItem = byItem.get(Names.folded(item));
        if (ofItem == null) {
            List<String> near = Names.nearest(items(), item);
            throw new IllegalArgumentException(item + ": the stock ledger does not name it"
                    + (near.isEmpty() ? "" : "; nearest: " + String.join(", ", near)));
        }
        return valued(ofItem, valuation);
    }

    /**
     * Values every item.
     *
     * @param valuation the basis of cost
     * @return the items in the order in which the file first names them
     * @throws IllegalArgumentException when the basis has no cost for an item
     */
    public List<ItemStock> value(Valuation valuation) {
        return byItem.values().stream().map(ofItem -> valued(ofItem, valuation)).toList();
    }

    private ItemStock valued(List<Movement> ofItem, Valuation valuation) {
        BigDecimal openingQuantity = BigDecimal.ZERO;
        BigDecimal receivedQuantity = BigDecimal.ZERO;
        BigDecimal issuedQuantity = BigDecimal.ZERO;
        Money opening = Money.zero(currency);
        Money received = Money.zero(currency);
        List<Movement.Issue> issues = new ArrayList<>();
        for (Movement movement : ofItem) {
            if (movement instanceof Movement.Issue issue) {
                issues.add(issue);
                issuedQuantity = issuedQuantity.add(issue.quantity());
            } else if (movement instanceof Movement.Receipt receipt && receipt.opening()) {
                openingQuantity = openingQuantity.add(receipt.quantity());
                opening = opening.plus(receipt.cost());
            } else if (movement instanceof Movement.Receipt receipt) {
                receivedQuantity = receivedQuantity.add(receipt.quantity());
                received = received.plus(receipt.cost());
            }
        }
        CostFlow flow = valuation.flow(List.copyOf(ofItem));
        Money closing = Carried.money(currency, flow.closing());
        boolean whatWasPaid = valuation.differenceLabel().isEmpty();
        Money left = opening.plus(received).minus(closing);
        List<IssueCost> costs = new ArrayList<>();
        for (int i = 0; i < issues.size(); i++) {
            Money rounded = Carried.money(currency, flow.issues().get(i));
            boolean last = i == issues.size() - 1;
            Money value = last && whatWasPaid ? left : rounded;
            left = left.minus(value);
            costs.add(new IssueCost(issues.get(i), flow.issues().get(i), value, value.minus(rounded)));
        }
        return new ItemStock(
                ofItem.get(0).item(),
                ofItem.get(0).unit(),
                valuation,
                openingQuantity,
                opening,
                receivedQuantity,
                received,
                costs,
                openingQuantity.add(receivedQuantity).subtract(issuedQuantity),
                closing,
                left);
    }

    private Optional<String> fault(List<Movement> ofItem) {
        BigDecimal there = BigDecimal.ZERO;
        Movement first = ofItem.get(0);
        boolean opened = false;
        for (Movement movement : ofItem) {
            String row = movement.origin() + ": " + movement.item() + ": ";
            if (!movement.unit().equals(first.unit())) {
                return Optional.of(
                        row + "expected " + first.unit() + " as in " + first.origin() + ", found " + movement.unit());
            }
            if (movement instanceof Movement.Receipt receipt) {
                if (!receipt.cost().getCurrencyUnit().equals(currency)) {
                    return Optional.of(row + "cost: expected " + currency + ", found "
                            + receipt.cost().getCurrencyUnit());
                }
                if (receipt.opening() && opened) {
                    return Optional.of(row + "expected opening stock before every other row of the item, found it on "
                            + movement.day());
                }
                opened = opened || !receipt.opening();
                there = there.add(receipt.quantity());
            } else {
                opened = true;
                if (movement.quantity().compareTo(there) > 0) {
                    String unit = " " + first.unit();
                    return Optional.of(row + Carried.shown(movement.quantity()) + unit + " issued on " + movement.day()
                            + ", " + Carried.shown(there) + unit + " there: short of "
                            + Carried.shown(movement.quantity().subtract(there)) + unit);
                }
                there = there.subtract(movement.quantity());
            }
        }
        return Optional.empty();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof StockLedger ledger
                && currency.equals(ledger.currency)
                && movements.equals(ledger.movements);
    }

    @Override
    public int hashCode() {
        return Objects.hash(currency, movements);
    }
}
