package costrel.cost;

import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a gyle buys: first everything that is wanted is gathered, then each thing is priced at the quantity that all its
 * lines take together. Faults are kept until the end, so that all missing prices are told at once.
 */
final class Purchases {

    /** A thing as price lists know it. */
    private record Thing(String foldedName, PackUnit unit) {}

    private final PriceList prices;
    private final LocalDate day;
    private final CostOptions options;
    private final Map<Thing, BigDecimal> wanted = new HashMap<>();
    private final Map<String, BigDecimal> boughtAtATime = new HashMap<>();
    private final Map<String, String> orders = new HashMap<>();
    private final Map<PriceRow, BigDecimal> contractLeft = new HashMap<>();
    private final Map<Thing, BigDecimal> beyondContracts = new HashMap<>();
    private final List<String> faults = new ArrayList<>();
    private final Set<CostFinding> findings = new LinkedHashSet<>();

    Purchases(PriceList prices, LocalDate day, CostOptions options) {
        this.prices = prices;
        this.day = day;
        this.options = options;
        options.purchaseQuantities().forEach((item, quantity) -> boughtAtATime.put(Names.folded(item), quantity));
        options.orders().forEach((item, order) -> orders.put(Names.folded(item), Names.folded(order)));
    }

    void want(List<String> names, BigDecimal quantity, PackUnit unit) {
        wanted.merge(thing(names, unit), quantity, BigDecimal::add);
    }

    /**
     * A part of what is bought, at one price.
     *
     * @param choice the price
     * @param amount how much at that price
     * @param boughtOverUsed what is bought at a time over what the gyle uses, 1 or more
     * @param order the supplier and the order it comes with
     * @param remark how it came about, or empty
     */
    record Part(Choice choice, BigDecimal amount, BigDecimal boughtOverUsed, Order order, String remark) {}

    /**
     * What comes together.
     *
     * @param foldedSupplier who brings it
     * @param name which order it is, empty for the one of the whole sheet
     */
    record Order(String foldedSupplier, String name) {}

    /** The prices of an amount that was wanted: contracts first, then the lists; nothing where there is a fault, which is then kept. */
    List<Part> buy(List<String> names, PackUnit unit, BigDecimal amount) {
        Thing thing = thing(names, unit);
        try {
            return parts(thing, names, unit, amount);
        } catch (NoPriceException none) {
            none.faults().forEach(this::fault);
            return List.of();
        }
    }

    private List<Part> parts(Thing thing, List<String> names, PackUnit unit, BigDecimal amount) {
        BigDecimal all = wanted.getOrDefault(thing, amount);
        List<PriceRow> contracts = prices.contracts(names, day, unit);
        BigDecimal spot = beyondContracts.computeIfAbsent(
                thing,
                any -> all.subtract(contracts.stream().map(this::left).reduce(BigDecimal.ZERO, BigDecimal::add))
                        .max(BigDecimal.ZERO));
        List<Part> parts = new ArrayList<>();
        BigDecimal rest = amount;
        for (PriceRow row : contracts) {
            BigDecimal part = left(row).min(rest);
            if (part.signum() > 0) {
                BigDecimal after = left(row).subtract(part);
                contractLeft.put(row, after);
                rest = rest.subtract(part);
                Choice choice = new PriceSearch(prices, day, part, unit, options.currency()).contracted(row);
                String remark =
                        "contract of " + Figures.plain(row.contractQuantity().orElseThrow()) + " " + unit.label() + ", "
                                + Figures.rounded(after, 3) + " " + unit.label() + " left after it";
                parts.add(new Part(choice, part, BigDecimal.ONE, order(thing, row), remark));
            }
        }
        if (rest.signum() > 0) {
            BigDecimal atATime = boughtAtATime.getOrDefault(thing.foldedName(), spot);
            Choice choice = prices.choose(names, day, atATime, unit, options.currency());
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
            parts.add(new Part(
                    choice, rest, over, order(thing, choice.row()), parts.isEmpty() ? "" : "beyond the contract"));
        }
        return parts;
    }

    private BigDecimal left(PriceRow contract) {
        return contractLeft.getOrDefault(contract, contract.contractQuantity().orElseThrow());
    }

    private Order order(Thing thing, PriceRow row) {
        return new Order(Names.folded(row.supplier()), orders.getOrDefault(thing.foldedName(), ""));
    }

    void fault(String fault) {
        if (!faults.contains(fault)) {
            faults.add(fault);
        }
    }

    private Thing thing(List<String> names, PackUnit unit) {
        String known = names.stream()
                .filter(name -> !prices.rowsOf(name).isEmpty())
                .findFirst()
                .orElse(names.get(0));
        return new Thing(Names.folded(known), unit);
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
