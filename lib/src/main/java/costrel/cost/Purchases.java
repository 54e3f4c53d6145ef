package costrel.cost;

import costrel.buying.Choice;
import costrel.buying.NoPriceException;
import costrel.buying.Offers;
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

    /** How much of a thing all lines take together. */
    static final class Wanted {
        private final Offers offers;
        private BigDecimal quantity = BigDecimal.ZERO;

        /** How many lines of the bill have asked for it so far. */
        int byLines;

        private @Nullable BigDecimal beyondContracts;

        private Wanted(Offers offers) {
            this.offers = offers;
        }

        /** So much more of it. */
        void add(BigDecimal more) {
            quantity = quantity.signum() == 0 ? more : quantity.add(more);
        }
    }

    /** Room for the things of most gyles, so that the table seldom grows. */
    private static final int MANY = 64;

    private final PricesOnDay rows;
    private final CostOptions options;
    private final Map<Offers.Thing, Wanted> things = new HashMap<>(MANY);
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

    /** What the first of the names that has a price can be bought at. */
    Offers offers(List<String> names, PackUnit unit) {
        return rows.offers(names, unit, options.currency());
    }

    /** The thing that is bought by these offers. */
    Wanted wanted(Offers offers) {
        Wanted wanted = things.get(offers.thing());
        if (wanted == null) {
            wanted = new Wanted(offers);
            things.put(offers.thing(), wanted);
        }
        return wanted;
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

    /** The price of an amount of what is not contracted; null where there is a fault, which is then kept. */
    @Nullable
    Part whole(Wanted wanted, Offers offers, BigDecimal amount) {
        try {
            return listed(wanted, offers, amount, wanted.quantity, "");
        } catch (NoPriceException none) {
            none.faults().forEach(this::fault);
            return null;
        }
    }

    /** The prices of an amount: contracts first, then the lists; nothing where there is a fault, which is then kept. */
    List<Part> parts(Wanted wanted, Offers offers, BigDecimal amount) {
        try {
            return contractedFirst(wanted, offers, amount);
        } catch (NoPriceException none) {
            none.faults().forEach(this::fault);
            return List.of();
        }
    }

    private List<Part> contractedFirst(Wanted wanted, Offers offers, BigDecimal amount) {
        String unit = offers.thing().unit().label();
        BigDecimal spot = beyondContracts(wanted, offers.contracts());
        List<Part> parts = new ArrayList<>();
        BigDecimal rest = amount;
        for (PriceRow row : offers.contracts()) {
            BigDecimal part = left(row).min(rest);
            if (part.signum() > 0) {
                BigDecimal after = left(row).subtract(part);
                contractLeft.put(row, after);
                rest = rest.subtract(part);
                String remark =
                        "contract of " + Figures.plain(row.contractQuantity().orElseThrow()) + " " + unit + ", "
                                + Figures.rounded(after, 3) + " " + unit + " left after it";
                parts.add(new Part(offers.drawn(row), part, BigDecimal.ONE, order(offers), remark));
            }
        }
        if (rest.signum() > 0) {
            Part beyond = listed(wanted, offers, rest, spot, parts.isEmpty() ? "" : "beyond the contract");
            for (Part contract : parts) {
                if (contract.choice().unitPrice().compareTo(beyond.choice().unitPrice()) > 0) {
                    findings.add(new CostFinding(
                            beyond.choice().row().item() + ": the contract price ("
                                    + contract.choice().row().origin() + ") is above today's ("
                                    + beyond.choice().row().origin() + ")",
                            "it is drawn first all the same"));
                }
            }
            parts.add(beyond);
        }
        return parts;
    }

    /** An amount by the lists, at the price for what is bought at a time. */
    private Part listed(Wanted wanted, Offers offers, BigDecimal amount, BigDecimal spot, String remark) {
        BigDecimal atATime = boughtAtATime.isEmpty()
                ? spot
                : boughtAtATime.getOrDefault(wanted.offers.thing().foldedName(), spot);
        Choice choice = offers.choose(atATime);
        if (!choice.findings().isEmpty()) {
            findings.addAll(choice.findings());
        }
        BigDecimal over =
                spot.signum() > 0 && atATime.compareTo(spot) > 0 ? atATime.divide(spot, Figures.SHOWN) : BigDecimal.ONE;
        return new Part(choice, amount, over, order(offers), remark);
    }

    /** What is wanted beyond the contracts, as they stood when the thing was first asked for. */
    private BigDecimal beyondContracts(Wanted wanted, List<PriceRow> contracts) {
        BigDecimal beyond = wanted.beyondContracts;
        if (beyond == null) {
            BigDecimal contracted = contracts.stream().map(this::left).reduce(BigDecimal.ZERO, BigDecimal::add);
            beyond = wanted.quantity.subtract(contracted).max(BigDecimal.ZERO);
            wanted.beyondContracts = beyond;
        }
        return beyond;
    }

    private BigDecimal left(PriceRow contract) {
        return contractLeft.getOrDefault(contract, contract.contractQuantity().orElseThrow());
    }

    private String order(Offers offers) {
        return orders.isEmpty() ? "" : orders.getOrDefault(offers.thing().foldedName(), "");
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
