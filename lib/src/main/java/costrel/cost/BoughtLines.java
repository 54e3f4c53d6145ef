package costrel.cost;

import costrel.buying.Offers;
import costrel.buying.PriceList;
import costrel.buying.PriceTerms;
import costrel.buying.UnitPrice;
import costrel.explain.CostFinding;
import costrel.figures.Rounded;
import costrel.packaging.PackagingRun;
import costrel.recipe.Names;
import costrel.stock.Movement;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** The lines of what a gyle and its containers take: out of store, under contract or from the lists, with its carriage. */
final class BoughtLines {

    /** What the gyle or a run of containers takes of one thing, and where it comes from: out of store, or from the lists. */
    private static final class Need {
        private final CostGroup group;
        private final String item;
        private final List<String> priceNames;
        private final Offers offers;
        private final Purchases.Wanted wanted;
        private final @Nullable PackageItem ofEach;
        private final int count;
        private BigDecimal amount;
        private String remark;
        private Movement.@Nullable Issue issue;

        Need(BillLine line, Offers offers, Purchases.Wanted wanted) {
            this.group = CostGroup.of(line.group());
            this.item = line.item();
            this.priceNames = line.priceNames();
            this.offers = offers;
            this.wanted = wanted;
            this.ofEach = null;
            this.count = 0;
            this.amount = line.exactAmount();
            this.remark = line.remark();
        }

        Need(PackageItem ofEach, int count, Offers offers, Purchases.Wanted wanted) {
            this.group = CostGroup.PACKAGING;
            this.item = ofEach.item();
            this.priceNames = List.of(ofEach.item());
            this.offers = offers;
            this.wanted = wanted;
            this.ofEach = ofEach;
            this.count = count;
            this.amount = amountOf(ofEach, count);
            this.remark = "";
        }

        boolean isFor(BillLine line, Purchases.Wanted of) {
            return wanted == of
                    && item.equals(line.item())
                    && group == CostGroup.of(line.group())
                    && priceNames.equals(line.priceNames());
        }

        /** A hop lot that goes in at three times is bought once. */
        void add(BillLine line) {
            amount = amount.add(line.exactAmount());
            if (!line.remark().isEmpty() && !line.remark().equals(remark)) {
                remark = remark.isEmpty() ? line.remark() : remark + "; " + line.remark();
            }
        }

        private static BigDecimal amountOf(PackageItem item, int count) {
            BigDecimal all = item.quantity().multiply(BigDecimal.valueOf(count));
            if (item.forContainers().compareTo(BigDecimal.ONE) == 0) {
                return all;
            }
            return Rounded.ratio(all, item.forContainers());
        }
    }

    /** A line and, where it was bought, how. */
    private record Made(CostLine line, Purchases.@Nullable Part part) {}

    private final CurrencyUnit currency;
    private final Purchases purchases;
    private final StockIssues stock;
    private final List<Need> needs;
    private final List<List<Need>> packageNeeds = new ArrayList<>();
    private final Set<String> byTheLists = new LinkedHashSet<>();
    private final List<CostLine> gyleLines;
    private final List<List<CostLine>> packagingLines = new ArrayList<>();

    BoughtLines(Batch batch, PriceList prices, List<PackageItem> packages, PackagingRun run, CostOptions options) {
        this.currency = options.currency();
        this.purchases = new Purchases(prices, batch.costedOn(), options);
        this.stock = new StockIssues(options, batch);
        this.needs = needs(batch.bill());
        for (PackagingRun.Filled filled : run.filled()) {
            if (filled.count() > 0) {
                packageNeeds.add(needs(filled, packages));
            }
        }
        try {
            stock.value();
        } catch (IllegalArgumentException e) {
            purchases.fault(String.valueOf(e.getMessage()));
            purchases.refuseFaults();
        }
        this.gyleLines = new ArrayList<>(needs.size());
        List<Made> gyle = new ArrayList<>(needs.size());
        needs.forEach(need -> addLines(need, gyle));
        inOrder(gyle, made -> made.line().group());
        List<List<Made>> packaging = new ArrayList<>();
        for (List<Need> ofContainer : packageNeeds) {
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

    private List<Need> needs(List<BillLine> bill) {
        List<Need> found = new ArrayList<>(bill.size());
        for (BillLine line : bill) {
            if (line.amount() > 0) {
                Offers offers = purchases.offers(line.priceNames(), line.unit());
                Purchases.Wanted wanted = purchases.wanted(offers);
                Need like = wanted.byLines++ == 0 ? null : like(line, wanted, found);
                if (like == null) {
                    found.add(new Need(line, offers, wanted));
                } else {
                    like.add(line);
                }
            }
        }
        found.forEach(this::want);
        return found;
    }

    /** What is the same thing for the same part of the bill; null where there is none. */
    private static @Nullable Need like(BillLine line, Purchases.Wanted wanted, List<Need> found) {
        for (Need need : found) {
            if (need.isFor(line, wanted)) {
                return need;
            }
        }
        return null;
    }

    private List<Need> needs(PackagingRun.Filled filled, List<PackageItem> packages) {
        List<Need> found = new ArrayList<>();
        String name = filled.plan().container().name();
        for (PackageItem item : packages) {
            if (Names.same(item.container(), name)) {
                Offers offers = purchases.offers(List.of(item.item()), item.unit());
                Need need = new Need(item, filled.count(), offers, purchases.wanted(offers));
                want(need);
                found.add(need);
            }
        }
        return found;
    }

    private void want(Need need) {
        need.issue =
                stock.want(need.priceNames, need.amount, need.offers.thing().unit());
        if (need.issue == null) {
            if (stock.given()) {
                byTheLists.add(need.item);
            }
            need.wanted.add(need.amount);
        }
    }

    private void addLines(Need need, List<Made> made) {
        Movement.Issue issue = need.issue;
        if (issue != null) {
            made.add(new Made(stock.line(need.group, need.item, issue, need.remark), null));
        } else if (!need.offers.contracts().isEmpty()) {
            purchases.parts(need.wanted, need.offers, need.amount).forEach(part -> made.add(bought(need, part)));
        } else {
            Purchases.Part part = purchases.whole(need.wanted, need.offers, need.amount);
            if (part != null) {
                made.add(bought(need, part));
            }
        }
    }

    private Made bought(Need need, Purchases.Part part) {
        UnitPrice unitPrice = part.choice().unitPrice();
        PackageItem ofEach = need.ofEach;
        if (ofEach == null || part.amount().compareTo(need.amount) != 0) { // the latter: part of it under a contract
            return bought(need, part, unitPrice, part.amount());
        }
        // One division only: a twelfth of a carton has no end in decimals.
        UnitPrice perContainer = new UnitPrice(
                unitPrice.amount().multiply(ofEach.quantity()),
                unitPrice.content().multiply(ofEach.forContainers()),
                "container");
        return bought(need, part, perContainer, BigDecimal.valueOf(need.count));
    }

    private Made bought(Need need, Purchases.Part part, UnitPrice price, BigDecimal times) {
        Money value = Money.of(currency, price.times(times, currency.getDecimalPlaces()));
        String both = need.remark.isEmpty() || part.remark().isEmpty()
                ? need.remark + part.remark()
                : need.remark + "; " + part.remark();
        return new Made(CostLine.bought(need.group, need.item, part.amount(), part.choice(), value, both), part);
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
