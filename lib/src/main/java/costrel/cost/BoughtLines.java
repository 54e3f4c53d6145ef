package costrel.cost;

import costrel.buying.Offers;
import costrel.buying.PackUnit;
import costrel.buying.PriceList;
import costrel.buying.PriceTerms;
import costrel.buying.UnitPrice;
import costrel.explain.CostFinding;
import costrel.figures.Figures;
import costrel.packaging.PackagingRun;
import costrel.recipe.Names;
import costrel.stock.Movement;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
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
    private record Source(Movement.@Nullable Issue issue, Offers offers, Purchases.@Nullable Wanted wanted) {}

    private record Sourced(Need need, Source source) {}

    /** A thing that a run of containers takes. */
    private record PackageNeed(PackageItem item, int count, BigDecimal amount, Source source) {}

    /** A line and, where it was bought, how. */
    private record Made(CostLine line, Purchases.@Nullable Part part) {}

    private final CurrencyUnit currency;
    private final Purchases purchases;
    private final StockIssues stock;
    private final List<Sourced> needs = new ArrayList<>();
    private final List<List<PackageNeed>> packageNeeds = new ArrayList<>();
    private final Set<String> byTheLists = new LinkedHashSet<>();
    private final List<CostLine> gyleLines = new ArrayList<>();
    private final List<List<CostLine>> packagingLines = new ArrayList<>();

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
        List<Made> gyle = new ArrayList<>(needs.size());
        needs.forEach(need -> addLines(need, gyle));
        inOrder(gyle, made -> made.line().group());
        List<List<Made>> packaging = new ArrayList<>();
        for (List<PackageNeed> ofContainer : packageNeeds) {
            List<Made> made = new ArrayList<>();
            ofContainer.forEach(need -> addLines(need, made));
            packaging.add(made);
        }
        IdentityHashMap<Made, List<CostLine>> carriage = carriage(gyle, packaging, prices.terms(), batch.costedOn());
        purchases.refuseFaults();
        gyle.forEach(made -> addWithCarriage(made, carriage, gyleLines));
        for (List<Made> made : packaging) {
            List<CostLine> lines = new ArrayList<>();
            made.forEach(one -> addWithCarriage(one, carriage, lines));
            packagingLines.add(lines);
        }
    }

    /** Sorts by group; within a group things stay as given. Mostly they are in order already. */
    static <T> void inOrder(List<T> lines, Function<T, CostGroup> group) {
        for (int i = 1; i < lines.size(); i++) {
            if (group.apply(lines.get(i)).compareTo(group.apply(lines.get(i - 1))) < 0) {
                lines.sort(Comparator.comparing(group));
                return;
            }
        }
    }

    /** The bill's lines, in the order of {@link CostGroup}. */
    List<CostLine> gyleLines() {
        return gyleLines;
    }

    /** What each container type takes, in the order of those that were filled; empty lists where it takes nothing. */
    List<List<CostLine>> packagingLines() {
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
        Map<String, Integer> places = new HashMap<>();
        List<Need> merged = new ArrayList<>(bill.size());
        for (BillLine line : bill) {
            if (line.amount() > 0) {
                Need need = new Need(line, line.exactAmount(), line.remark());
                Integer place = places.putIfAbsent(line.item(), merged.size());
                int same = place == null ? -1 : sameAs(line, merged, place);
                if (same < 0) {
                    merged.add(need);
                } else {
                    merged.set(same, merged.get(same).with(need));
                }
            }
        }
        for (Need need : merged) {
            BillLine line = need.first();
            needs.add(new Sourced(need, want(line.item(), line.priceNames(), need.amount(), line.unit())));
        }
        for (PackagingRun.Filled filled : run.filled()) {
            if (filled.count() > 0) {
                packageNeeds.add(needs(filled, packages));
            }
        }
    }

    /** The place from one on of what is the same thing for the same part of the bill; -1 where there is none. */
    private static int sameAs(BillLine line, List<Need> merged, int from) {
        for (int i = from; i < merged.size(); i++) {
            BillLine other = merged.get(i).first();
            if (other.item().equals(line.item())
                    && other.group() == line.group()
                    && other.unit() == line.unit()
                    && other.priceNames().equals(line.priceNames())) {
                return i;
            }
        }
        return -1;
    }

    private List<PackageNeed> needs(PackagingRun.Filled filled, List<PackageItem> packages) {
        List<PackageNeed> ofContainer = new ArrayList<>();
        String name = filled.plan().container().name();
        for (PackageItem item : packages) {
            if (Names.same(item.container(), name)) {
                BigDecimal amount = amount(item, filled.count());
                ofContainer.add(new PackageNeed(
                        item, filled.count(), amount, want(item.item(), List.of(item.item()), amount, item.unit())));
            }
        }
        return ofContainer;
    }

    private Source want(String item, List<String> names, BigDecimal amount, PackUnit unit) {
        Movement.Issue issue = stock.want(names, amount, unit);
        Offers offers = purchases.offers(names, unit);
        if (issue != null) {
            return new Source(issue, offers, null);
        }
        if (stock.given()) {
            byTheLists.add(item);
        }
        return new Source(null, offers, purchases.want(offers, amount));
    }

    private void buy(Source source, BigDecimal amount, Consumer<Purchases.Part> part) {
        purchases.buy(Objects.requireNonNull(source.wanted()), source.offers(), amount, part);
    }

    private static BigDecimal amount(PackageItem item, int count) {
        BigDecimal all = item.quantity().multiply(BigDecimal.valueOf(count));
        if (item.forContainers().compareTo(BigDecimal.ONE) == 0) {
            return all;
        }
        BigDecimal[] whole = all.divideAndRemainder(item.forContainers());
        return whole[1].signum() == 0 ? whole[0] : all.divide(item.forContainers(), Figures.SHOWN);
    }

    private void addLines(Sourced sourced, List<Made> made) {
        Need need = sourced.need();
        BillLine line = need.first();
        CostGroup group = CostGroup.of(line.group());
        Movement.Issue issue = sourced.source().issue();
        if (issue != null) {
            made.add(new Made(stock.line(group, line.item(), issue, need.remark()), null));
            return;
        }
        buy(
                sourced.source(),
                need.amount(),
                part -> made.add(
                        bought(group, line.item(), part, part.choice().unitPrice(), part.amount(), need.remark())));
    }

    private void addLines(PackageNeed need, List<Made> made) {
        PackageItem item = need.item();
        Movement.Issue issue = need.source().issue();
        if (issue != null) {
            made.add(new Made(stock.line(CostGroup.PACKAGING, item.item(), issue, ""), null));
            return;
        }
        buy(need.source(), need.amount(), part -> made.add(bought(need, part)));
    }

    private Made bought(PackageNeed need, Purchases.Part part) {
        PackageItem item = need.item();
        UnitPrice unitPrice = part.choice().unitPrice();
        if (part.amount().compareTo(need.amount()) != 0) { // part of it under a contract
            return bought(CostGroup.PACKAGING, item.item(), part, unitPrice, part.amount(), "");
        }
        // One division only: a twelfth of a carton has no end in decimals.
        UnitPrice perContainer = new UnitPrice(
                unitPrice.amount().multiply(item.quantity()),
                unitPrice.content().multiply(item.forContainers()),
                "container");
        return bought(CostGroup.PACKAGING, item.item(), part, perContainer, BigDecimal.valueOf(need.count()), "");
    }

    private Made bought(
            CostGroup group, String item, Purchases.Part part, UnitPrice price, BigDecimal times, String remark) {
        Money value = Money.of(currency, price.times(times, currency.getDecimalPlaces()));
        String both =
                remark.isEmpty() || part.remark().isEmpty() ? remark + part.remark() : remark + "; " + part.remark();
        return new Made(CostLine.bought(group, item, part.amount(), part.choice(), value, both), part);
    }

    private IdentityHashMap<Made, List<CostLine>> carriage(
            List<Made> gyle, List<List<Made>> packaging, PriceTerms terms, LocalDate day) {
        CarriageShares shares = new CarriageShares(terms, day, currency);
        if (shares.isNone()) {
            return new IdentityHashMap<>(0);
        }
        IdentityHashMap<Made, List<CostLine>> carriage = new IdentityHashMap<>();
        List<Made> bought = new ArrayList<>(gyle);
        packaging.forEach(bought::addAll);
        bought.removeIf(made -> made.part() == null);
        List<List<CostLine>> ofEach = shares.of(
                bought.stream()
                        .map(made -> new CarriageShares.Bought(made.line(), Objects.requireNonNull(made.part())))
                        .toList(),
                purchases::fault,
                purchases.findings()::add);
        for (int i = 0; i < bought.size(); i++) {
            carriage.put(bought.get(i), ofEach.get(i));
        }
        return carriage;
    }

    private static void addWithCarriage(
            Made made, IdentityHashMap<Made, List<CostLine>> carriage, List<CostLine> lines) {
        lines.add(made.line());
        List<CostLine> itsCarriage = carriage.isEmpty() ? null : carriage.get(made);
        if (itsCarriage != null) {
            lines.addAll(itsCarriage);
        }
    }
}
