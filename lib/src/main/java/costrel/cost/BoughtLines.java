package costrel.cost;

import costrel.buying.PackUnit;
import costrel.buying.PriceList;
import costrel.buying.UnitPrice;
import costrel.explain.CostFinding;
import costrel.figures.Figures;
import costrel.packaging.PackagingRun;
import costrel.recipe.Names;
import costrel.stock.Movement;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** The lines of what a gyle and its containers take: out of store, under contract or from the lists, with its carriage. */
final class BoughtLines {

    /** One line of the bill with all of its like: a hop lot that goes in at three times is bought once. */
    private record Need(BillLine first, BigDecimal amount, String remark) {
        Need with(Need other) {
            boolean same = other.remark.isEmpty() || other.remark.equals(remark);
            return new Need(
                    first,
                    amount.add(other.amount),
                    same ? remark : remark.isEmpty() ? other.remark : remark + "; " + other.remark);
        }
    }

    /** Where a thing comes from: out of store, or, where there is no issue, from the lists. */
    private record Source(Movement.@Nullable Issue issue, Purchases.Thing thing) {}

    private record Sourced(Need need, Source source) {}

    /** A thing that a run of containers takes. */
    private record PackageNeed(PackageItem item, int count, BigDecimal amount, Source source) {}

    /** A line and, where it was bought, how. */
    private record Made(CostLine line, Optional<Purchases.Part> part) {}

    private final CurrencyUnit currency;
    private final Purchases purchases;
    private final StockIssues stock;
    private final List<Sourced> needs = new ArrayList<>();
    private final Map<PackagingRun.Filled, List<PackageNeed>> packageNeeds = new LinkedHashMap<>();
    private final Set<String> byTheLists = new LinkedHashSet<>();
    private final List<CostLine> gyleLines = new ArrayList<>();
    private final Map<PackagingRun.Filled, List<CostLine>> packagingLines = new LinkedHashMap<>();

    BoughtLines(Batch batch, PriceList prices, List<PackageItem> packages, PackagingRun run, CostOptions options) {
        this.currency = options.currency();
        this.purchases = new Purchases(prices, batch.costedOn(), options);
        this.stock = new StockIssues(options, batch);
        want(batch.bill(), packages, run);
        try {
            stock.value();
        } catch (IllegalArgumentException e) {
            purchases.fault(String.valueOf(e.getMessage()));
            purchases.refuseFaults();
        }
        List<Made> gyle = new ArrayList<>();
        needs.forEach(need -> gyle.addAll(lines(need)));
        gyle.sort(Comparator.comparing(made -> made.line().group())); // stable: within a group as given
        Map<PackagingRun.Filled, List<Made>> packaging = new LinkedHashMap<>();
        packageNeeds.forEach((filled, ofContainer) -> {
            List<Made> made = new ArrayList<>();
            ofContainer.forEach(need -> made.addAll(lines(need)));
            packaging.put(filled, made);
        });
        List<Made> all = new ArrayList<>(gyle);
        packaging.values().forEach(all::addAll);
        IdentityHashMap<Made, List<CostLine>> carriage =
                carriage(all, new CarriageShares(prices.terms(), batch.costedOn(), currency));
        purchases.refuseFaults();
        gyle.forEach(made -> gyleLines.addAll(withCarriage(made, carriage)));
        packaging.forEach((filled, made) -> {
            List<CostLine> lines = new ArrayList<>();
            made.forEach(one -> lines.addAll(withCarriage(one, carriage)));
            packagingLines.put(filled, lines);
        });
    }

    /** The bill's lines, in the order of {@link CostGroup}. */
    List<CostLine> gyleLines() {
        return gyleLines;
    }

    /** What each container type that was filled takes; empty lists where it takes nothing. */
    Map<PackagingRun.Filled, List<CostLine>> packagingLines() {
        return packagingLines;
    }

    Collection<CostFinding> findings() {
        return purchases.findings();
    }

    /** What the store was to give and does not name, in words. */
    List<String> defaultsUsed() {
        return byTheLists.stream()
                .map(item -> item + ": not in the stock ledger, the price of the day taken")
                .toList();
    }

    private void want(List<BillLine> bill, List<PackageItem> packages, PackagingRun run) {
        record Same(BillGroup group, String item, List<String> priceNames, PackUnit unit) {}
        Map<Same, Need> merged = new LinkedHashMap<>();
        for (BillLine line : bill) {
            if (line.amount() > 0) {
                merged.merge(
                        new Same(line.group(), line.item(), line.priceNames(), line.unit()),
                        new Need(line, line.exactAmount(), line.remark()),
                        Need::with);
            }
        }
        for (Need need : merged.values()) {
            BillLine line = need.first();
            needs.add(new Sourced(need, want(line.item(), line.priceNames(), need.amount(), line.unit())));
        }
        Map<String, List<PackageItem>> byContainer = new HashMap<>();
        Map<String, List<PackageItem>> asWritten = new HashMap<>();
        for (PackageItem item : packages) {
            asWritten
                    .computeIfAbsent(
                            item.container(),
                            name -> byContainer.computeIfAbsent(Names.folded(name), folded -> new ArrayList<>()))
                    .add(item);
        }
        for (PackagingRun.Filled filled : run.filled()) {
            if (filled.count() > 0) {
                List<PackageNeed> ofContainer = new ArrayList<>();
                String name = Names.folded(filled.plan().container().name());
                for (PackageItem item : byContainer.getOrDefault(name, List.of())) {
                    BigDecimal amount = amount(item, filled.count());
                    ofContainer.add(new PackageNeed(
                            item,
                            filled.count(),
                            amount,
                            want(item.item(), List.of(item.item()), amount, item.unit())));
                }
                packageNeeds.put(filled, ofContainer);
            }
        }
    }

    private Source want(String item, List<String> names, BigDecimal amount, PackUnit unit) {
        Movement.Issue issue = stock.want(names, amount, unit);
        Purchases.Thing thing = purchases.thing(names, unit);
        if (issue == null) {
            purchases.want(thing, amount);
            if (stock.given()) {
                byTheLists.add(item);
            }
        }
        return new Source(issue, thing);
    }

    private static BigDecimal amount(PackageItem item, int count) {
        BigDecimal all = item.quantity().multiply(BigDecimal.valueOf(count));
        return item.forContainers().compareTo(BigDecimal.ONE) == 0
                ? all
                : all.divide(item.forContainers(), Figures.SHOWN);
    }

    private List<Made> lines(Sourced sourced) {
        Need need = sourced.need();
        BillLine line = need.first();
        CostGroup group = CostGroup.of(line.group());
        Movement.Issue issue = sourced.source().issue();
        if (issue != null) {
            return List.of(new Made(stock.line(group, line.item(), issue, need.remark()), Optional.empty()));
        }
        List<Made> made = new ArrayList<>();
        for (Purchases.Part part : purchases.buy(sourced.source().thing(), line.priceNames(), need.amount())) {
            made.add(bought(group, line.item(), part, part.choice().unitPrice(), part.amount(), need.remark()));
        }
        return made;
    }

    private List<Made> lines(PackageNeed need) {
        PackageItem item = need.item();
        Movement.Issue issue = need.source().issue();
        if (issue != null) {
            return List.of(new Made(stock.line(CostGroup.PACKAGING, item.item(), issue, ""), Optional.empty()));
        }
        List<Purchases.Part> parts = purchases.buy(need.source().thing(), List.of(item.item()), need.amount());
        List<Made> made = new ArrayList<>();
        for (Purchases.Part part : parts) {
            UnitPrice unitPrice = part.choice().unitPrice();
            // One division only: a twelfth of a carton has no end in decimals.
            UnitPrice perContainer = new UnitPrice(
                    unitPrice.amount().multiply(item.quantity()),
                    unitPrice.content().multiply(item.forContainers()),
                    "container");
            made.add(
                    parts.size() == 1
                            ? bought(
                                    CostGroup.PACKAGING,
                                    item.item(),
                                    part,
                                    perContainer,
                                    BigDecimal.valueOf(need.count()),
                                    "")
                            : bought(CostGroup.PACKAGING, item.item(), part, unitPrice, part.amount(), ""));
        }
        return made;
    }

    private Made bought(
            CostGroup group, String item, Purchases.Part part, UnitPrice price, BigDecimal times, String remark) {
        Money value = Money.of(currency, price.times(times, currency.getDecimalPlaces()));
        String both =
                remark.isEmpty() || part.remark().isEmpty() ? remark + part.remark() : remark + "; " + part.remark();
        return new Made(CostLine.bought(group, item, part.amount(), part.choice(), value, both), Optional.of(part));
    }

    private IdentityHashMap<Made, List<CostLine>> carriage(List<Made> all, CarriageShares shares) {
        IdentityHashMap<Made, List<CostLine>> carriage = new IdentityHashMap<>();
        if (shares.isNone()) {
            return carriage;
        }
        List<Made> bought = all.stream().filter(made -> made.part().isPresent()).toList();
        List<List<CostLine>> ofEach = shares.of(
                bought.stream()
                        .map(made -> new CarriageShares.Bought(
                                made.line(), made.part().orElseThrow()))
                        .toList(),
                purchases::fault,
                purchases.findings()::add);
        for (int i = 0; i < bought.size(); i++) {
            carriage.put(bought.get(i), ofEach.get(i));
        }
        return carriage;
    }

    private static List<CostLine> withCarriage(Made made, IdentityHashMap<Made, List<CostLine>> carriage) {
        List<CostLine> lines = new ArrayList<>(List.of(made.line()));
        lines.addAll(carriage.getOrDefault(made, List.of()));
        return lines;
    }
}
