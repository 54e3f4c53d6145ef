package costrel.cost;

import costrel.buying.Choice;
import costrel.buying.NoPriceException;
import costrel.buying.PackUnit;
import costrel.buying.PriceList;
import costrel.buying.PriceRow;
import costrel.buying.PricesOnDay;
import costrel.explain.CostFinding;
import costrel.figures.Figures;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a gyle buys: first everything that is wanted is gathered, then each thing is priced at the quantity that all its
 * lines take together. Faults are kept until the end, so that all missing prices are told at once.
 */
final class Purchases {

    /** A thing as price lists know it, and how much of it all lines take together. */
    static final class Thing {
        private final String foldedName;
        private final PackUnit unit;
        private BigDecimal wanted = BigDecimal.ZERO;
        private @Nullable BigDecimal beyondContracts;

        private Thing(String foldedName, PackUnit unit) {
            this.foldedName = foldedName;
            this.unit = unit;
        }
    }

    private record Key(String foldedName, PackUnit unit) {}

    private final PricesOnDay rows;
    private final CostOptions options;
    private final Map<Key, Thing> things = new HashMap<>();
    private final Map<String, BigDecimal> boughtAtATime = new HashMap<>();
    private final Map<String, String> orders = new HashMap<>();
    private final Map<PriceRow, BigDecimal> contractLeft = new HashMap<>();
    private final List<String> faults = new ArrayList<>();
    private final Set<CostFinding> findings = new LinkedHashSet<>();

    Purchases(PriceList prices, LocalDate day, CostOptions options) {
        this.rows = prices.on(day);
        this.options = options;
        options.purchaseQuantities().forEach((item, quantity) -> boughtAtATime.put(Names.folded(item), quantity));
        options.orders().forEach((item, order) -> orders.put(Names.folded(item), Names.folded(order)));
    }

    /** The thing that the first of the names that has a price stands for. */
    Thing thing(List<String> names, PackUnit unit) {
        String foldedName = rows.boughtBy(names);
        return things.computeIfAbsent(new Key(foldedName, unit), key -> new Thing(key.foldedName(), key.unit()));
    }

    void want(Thing thing, BigDecimal quantity) {
        thing.wanted = thing.wanted.add(quantity);
    }

    /**
     * A part of what is bought, at one price.
     *
     * @param choice the price
     * @param amount how much at that price
     * @param boughtOverUsed what is bought at a time over what the gyle uses, 1 or more
     * @param order which order of the supplier's it comes with, empty for the one of the whole sheet
     * @param remark how it came about, or empty
     */
    record Part(Choice choice, BigDecimal amount, BigDecimal boughtOverUsed, String order, String remark) {}

    /** The prices of an amount that was wanted: contracts first, then the lists; nothing where there is a fault, which is then kept. */
    List<Part> buy(Thing thing, List<String> names, BigDecimal amount) {
        try {
            return parts(thing, names, amount);
        } catch (NoPriceException none) {
            none.faults().forEach(this::fault);
            return List.of();
        }
    }

    private List<Part> parts(Thing thing, List<String> names, BigDecimal amount) {
        PackUnit unit = thing.unit;
        List<PriceRow> contracts = rows.contracts(names, unit);
        BigDecimal spot = contracts.isEmpty() ? thing.wanted : beyondContracts(thing, contracts);
        List<Part> parts = new ArrayList<>();
        BigDecimal rest = amount;
        for (PriceRow row : contracts) {
            BigDecimal part = left(row).min(rest);
            if (part.signum() > 0) {
                BigDecimal after = left(row).subtract(part);
                contractLeft.put(row, after);
                rest = rest.subtract(part);
                Choice choice = rows.drawn(row, part, options.currency());
                String remark =
                        "contract of " + Figures.plain(row.contractQuantity().orElseThrow()) + " " + unit.label() + ", "
                                + Figures.rounded(after, 3) + " " + unit.label() + " left after it";
                parts.add(new Part(choice, part, BigDecimal.ONE, order(thing), remark));
            }
        }
        if (rest.signum() > 0) {
            BigDecimal atATime = boughtAtATime.getOrDefault(thing.foldedName, spot);
            Choice choice = rows.choose(names, atATime, unit, options.currency());
            findings.addAll(choice.findings());
            for (Part contract : parts) {
                if (contract.choice().unitPrice().compareTo(choice.unitPrice()) > 0) {
                    findings.add(new CostFinding(
                            choice.row().item() + ": the contract price ("
                                    + contract.choice().row().origin() + ") is above today's ("
                                    + choice.row().origin() + ")",
                            "it is drawn first all the same"));
                }
            }
            BigDecimal over = spot.signum() > 0 && atATime.compareTo(spot) > 0
                    ? atATime.divide(spot, Figures.SHOWN)
                    : BigDecimal.ONE;
            parts.add(new Part(choice, rest, over, order(thing), parts.isEmpty() ? "" : "beyond the contract"));
        }
        return parts;
    }

    /** What is wanted beyond the contracts, as they stood when the thing was first asked for. */
    private BigDecimal beyondContracts(Thing thing, List<PriceRow> contracts) {
        BigDecimal beyond = thing.beyondContracts;
        if (beyond == null) {
            BigDecimal contracted = contracts.stream().map(this::left).reduce(BigDecimal.ZERO, BigDecimal::add);
            beyond = thing.wanted.subtract(contracted).max(BigDecimal.ZERO);
            thing.beyondContracts = beyond;
        }
        return beyond;
    }

    private BigDecimal left(PriceRow contract) {
        return contractLeft.getOrDefault(contract, contract.contractQuantity().orElseThrow());
    }

    private String order(Thing thing) {
        return orders.getOrDefault(thing.foldedName, "");
    }

    void fault(String fault) {
        if (!faults.contains(fault)) {
            faults.add(fault);
        }
    }

    Set<CostFinding> findings() {
        return findings;
    }

    void refuseFaults() {
        if (!faults.isEmpty()) {
            throw new NoPriceException(faults);
        }
    }
}
