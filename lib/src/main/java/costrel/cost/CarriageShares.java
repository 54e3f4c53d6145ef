package costrel.cost;

import costrel.buying.Carriage;
import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.buying.PriceTerms;
import costrel.buying.UnitPrice;
import costrel.explain.CostFinding;
import costrel.figures.Figures;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Carriage of each order shared over its lines by their values, after the choice of suppliers, each share rounded halves
 * up and what the roundings leave to the last line. An order that is bought for more than this gyle leaves the rest of
 * its carriage to what isn't used.
 */
final class CarriageShares {

    /** A line with the price that it was bought at. */
    record Bought(CostLine line, Purchases.Part part) {}

    /**
     * What comes together.
     *
     * @param foldedSupplier who brings it
     * @param name which order it is, empty for the one of the whole sheet
     */
    private record Order(String foldedSupplier, String name) {}

    private final PriceTerms terms;
    private final LocalDate day;
    private final CurrencyUnit currency;

    CarriageShares(PriceTerms terms, LocalDate day, CurrencyUnit currency) {
        this.terms = terms;
        this.day = day;
        this.currency = currency;
    }

    /**
     * The carriage on each line.
     *
     * @param bought all lines of the sheet that were bought, in its order
     * @param fault told where carriage can't be worked out
     * @param findings told where goods are not on any pallet
     * @return for each line its lines of carriage, in the same order
     */
    List<List<CostLine>> of(List<Bought> bought, Consumer<String> fault, Consumer<CostFinding> findings) {
        List<List<CostLine>> shares = new ArrayList<>();
        bought.forEach(any -> shares.add(new ArrayList<>()));
        Map<Order, List<Integer>> orders = new LinkedHashMap<>();
        for (int i = 0; i < bought.size(); i++) {
            Purchases.Part part = bought.get(i).part();
            Order itsOrder = new Order(Names.folded(part.choice().row().supplier()), part.order());
            orders.computeIfAbsent(itsOrder, order -> new ArrayList<>()).add(i);
        }
        orders.forEach((order, places) -> {
            try {
                charge(order, places, bought, shares, findings);
            } catch (IllegalArgumentException e) {
                fault.accept(String.valueOf(e.getMessage()));
            }
        });
        return shares;
    }

    private void charge(
            Order order,
            List<Integer> places,
            List<Bought> bought,
            List<List<CostLine>> shares,
            Consumer<CostFinding> findings) {
        List<Carriage> charges = charges(order);
        for (Carriage carriage : charges) {
            BigDecimal times = times(carriage, places, bought);
            if (times.signum() > 0) {
                share(carriage, times, places, bought, shares);
            }
        }
        Set<PackUnit> onPallets = charges.stream()
                .flatMap(carriage -> carriage.pallet().stream())
                .map(Pack::unit)
                .collect(Collectors.toSet());
        if (!onPallets.isEmpty()) {
            places.stream()
                    .map(bought::get)
                    .filter(one ->
                            !onPallets.contains(one.part().choice().row().pack().unit()))
                    .forEach(one -> findings.accept(new CostFinding(
                            one.line().item() + " from " + one.line().supplier()
                                    + ": no carriage per pallet is known for" + " goods by "
                                    + one.part().choice().unitPrice().unit(),
                            "state how much of it goes on a pallet")));
        }
    }

    /** Whether no supplier charges carriage, so that there is nothing to share. */
    boolean isNone() {
        return terms.carriages().isEmpty();
    }

    private List<Carriage> charges(Order order) {
        List<Carriage> charges = new ArrayList<>();
        Map<String, Carriage> seen = new HashMap<>();
        for (Carriage carriage : terms.carriages()) {
            if (carriage.holdsOn(day) && Names.folded(carriage.supplier()).equals(order.foldedSupplier())) {
                String key =
                        carriage.pallet().map(pallet -> pallet.unit().label()).orElse("order");
                Carriage other = seen.put(key, carriage);
                if (other != null) {
                    throw new IllegalArgumentException("two charges for carriage that both apply on " + day + ": "
                            + other.origin() + " and " + carriage.origin() + ", " + carriage.supplier()
                            + "; end the earlier one before the later one begins");
                }
                charges.add(carriage);
            }
        }
        return charges;
    }

    /** How often the charge falls due: once for an order, for every pallet that is begun. */
    private static BigDecimal times(Carriage carriage, List<Integer> places, List<Bought> bought) {
        if (carriage.pallet().isEmpty()) {
            return BigDecimal.ONE;
        }
        Pack pallet = carriage.pallet().get();
        BigDecimal quantity = BigDecimal.ZERO;
        for (int place : places) {
            Purchases.Part part = bought.get(place).part();
            if (part.choice().row().pack().unit() == pallet.unit()) {
                quantity = quantity.add(part.amount().multiply(part.boughtOverUsed()));
            }
        }
        return quantity.setScale(9, RoundingMode.HALF_UP).divide(pallet.content(), 0, RoundingMode.CEILING);
    }

    private void share(
            Carriage carriage,
            BigDecimal times,
            List<Integer> places,
            List<Bought> bought,
            List<List<CostLine>> shares) {
        List<Integer> bearing = places.stream()
                .filter(place -> carriage.pallet().isEmpty()
                        || carriage.pallet().get().unit()
                                == bought.get(place)
                                        .part()
                                        .choice()
                                        .row()
                                        .pack()
                                        .unit())
                .toList();
        BigDecimal used = BigDecimal.ZERO;
        BigDecimal ordered = BigDecimal.ZERO;
        for (int place : bearing) {
            BigDecimal value = bought.get(place).line().value().getAmount();
            used = used.add(value);
            ordered = ordered.add(value.multiply(bought.get(place).part().boughtOverUsed()));
        }
        UnitPrice charge = terms.exchange()
                .turned(
                        new UnitPrice(carriage.amount().multiply(times), BigDecimal.ONE, "order"),
                        carriage.currency(),
                        currency,
                        day);
        int decimals = currency.getDecimalPlaces();
        BigDecimal due = ordered.signum() == 0
                ? charge.times(BigDecimal.ONE, decimals)
                : new UnitPrice(charge.amount(), charge.content().multiply(ordered), "order").times(used, decimals);
        BigDecimal left = due;
        for (int i = 0; i < bearing.size(); i++) {
            CostLine line = bought.get(bearing.get(i)).line();
            boolean last = i == bearing.size() - 1;
            BigDecimal part = last
                    ? left
                    : used.signum() == 0
                            ? BigDecimal.ZERO.setScale(decimals)
                            : due.multiply(line.value().getAmount()).divide(used, decimals, RoundingMode.HALF_UP);
            left = left.subtract(part);
            shares.get(bearing.get(i)).add(line(carriage, times, due, line, part));
        }
    }

    private CostLine line(Carriage carriage, BigDecimal times, BigDecimal due, CostLine line, BigDecimal part) {
        String basis = carriage.pallet()
                .map(pallet -> "carriage of " + Figures.plain(times)
                        + (times.compareTo(BigDecimal.ONE) == 0 ? " pallet" : " pallets") + " of " + pallet.text())
                .orElse("carriage of an order");
        return new CostLine(
                line.group(),
                "carriage on " + line.item(),
                BigDecimal.ONE,
                "share",
                Optional.empty(),
                line.supplier(),
                carriage.origin(),
                Money.of(currency, part),
                Optional.empty(),
                false,
                "share by value of " + due.toPlainString() + " " + currency + ", " + basis,
                List.of());
    }
}
