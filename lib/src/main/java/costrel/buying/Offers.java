package costrel.buying;

import costrel.buying.Choice.PassedOver;
import costrel.buying.PriceTerms.Landed;
import costrel.explain.CostFinding;
import costrel.figures.Figures;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * What one thing can be bought at on one day: the rule of choice, and the words for what was passed over. Rows that hold and what they
 * cost by the unit are worked out once, however many amounts are asked for. Safe for many threads.
 */
public final class Offers {

    /**
     * A thing as price lists know it.
     *
     * @param foldedName its name without case and spaces
     * @param unit what it is counted in
     */
    public record Thing(String foldedName, PackUnit unit) {}

    /** A row that can be used, what it costs by the unit, and its supplier's name as names are compared. */
    private record Offer(PriceRow row, Landed landed, String supplier) {
        UnitPrice price() {
            return landed.price();
        }

        PassedOver passed(String why) {
            return new PassedOver(row, why, price());
        }
    }

    /** The rows of one name that hold: those that can be used with what they cost, and why the others can't. */
    private record Usable(
            List<PriceRow> valid, List<Offer> offers, List<PassedOver> passedOver, List<CostFinding> findings) {}

    /** A choice that is the same for any quantity from the least on: there is nothing to compare. */
    private record OnlyOne(Choice choice, BigDecimal least) {}

    private final PricesOnDay rows;
    private final List<String> names;
    private final PackUnit unit;
    private final CurrencyUnit currency;
    private final Thing thing;
    private final List<PriceRow> contracts;
    private final Map<String, Usable> byName = new ConcurrentHashMap<>();
    private volatile @Nullable OnlyOne onlyOne;

    Offers(PricesOnDay rows, List<String> names, PackUnit unit, CurrencyUnit currency) {
        this.rows = rows;
        this.names = List.copyOf(names);
        this.unit = unit;
        this.currency = currency;
        this.thing = new Thing(rows.boughtBy(names), unit);
        this.contracts = rows.contracts(names, unit);
    }

    boolean isFor(List<String> otherNames, PackUnit otherUnit, CurrencyUnit otherCurrency) {
        if (unit != otherUnit || !currency.equals(otherCurrency) || names.size() != otherNames.size()) {
            return false;
        }
        for (int i = 0; i < names.size(); i++) {
            if (!names.get(i).equals(otherNames.get(i))) {
                return false;
            }
        }
        return true;
    }

    /**
     * What is bought, so that two lines of one thing are bought together.
     *
     * @return the first of the names that any row has, on any day, else the first of all; with the unit
     */
    public Thing thing() {
        return thing;
    }

    /**
     * The contract prices that apply.
     *
     * @return those of the first name that has any price on the day, in file order; empty where there is no contract
     */
    public List<PriceRow> contracts() {
        return contracts;
    }

    /**
     * The price that applies, by the rule of {@link PriceList#choose}.
     *
     * @param quantity how much is bought, 0 or more, in the unit
     * @return the row chosen and those passed over
     * @throws NoPriceException when no row can be used or two rows of one supplier both apply
     */
    public Choice choose(BigDecimal quantity) {
        OnlyOne known = onlyOne;
        if (known != null && known.least().compareTo(quantity) <= 0 && quantity.signum() >= 0) {
            return known.choice();
        }
        return search(Figures.zeroOrMore("quantity", quantity, " " + unit.label()));
    }

    /**
     * A contract price as a choice: nothing is compared, since it is drawn first.
     *
     * @param contract one of {@link #contracts}
     * @return the row with what a unit costs
     * @throws NoPriceException when the terms don't fit the row or there is no rate of exchange
     */
    public Choice drawn(PriceRow contract) {
        Landed landed = landed(contract);
        return new Choice(contract, landed.price(), List.of(), List.of(), landed.notes());
    }

    private Choice search(BigDecimal quantity) {
        List<String> refusals = new ArrayList<>();
        boolean known = false;
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            PricesOnDay.Rows named = rows.of(name);
            if (!named.named()) {
                continue;
            }
            known = true;
            List<PriceRow> valid = named.listed();
            if (valid.isEmpty()
                    && rows.prices().rowsOf(name).stream()
                            .anyMatch(row -> row.contractQuantity().isPresent())) {
                refusals.add(name + ": beyond what is contracted no price applies on " + day());
                continue;
            }
            if (valid.isEmpty()) {
                refusals.add(name + ": no price applies on " + day() + "; the nearest is "
                        + nearest(rows.prices().rowsOf(name)));
                continue;
            }
            Optional<Choice> choice = among(name, usable(name, valid), quantity, refusals);
            if (choice.isPresent()) {
                return choice.get();
            }
        }
        if (!known) {
            refusals.add(unknown());
        }
        throw new NoPriceException(List.of(String.join("; ", refusals)));
    }

    private String unknown() {
        String wanted = names.get(0);
        List<String> near = names.stream()
                .flatMap(name -> rows.prices().nearest(name).stream())
                .distinct()
                .limit(3)
                .toList();
        return wanted + ": no price list names it"
                + (names.size() > 1 ? " or " + String.join(" or ", names.subList(1, names.size())) : "")
                + (near.isEmpty() ? "; supply a price" : "; nearest: " + String.join(", ", near));
    }

    private Usable usable(String name, List<PriceRow> valid) {
        Usable known = byName.get(name);
        if (known != null) {
            return known;
        }
        List<PriceList.Overlap> both = PriceList.toldApart(valid) ? List.of() : PriceList.overlaps(valid);
        if (!both.isEmpty()) {
            throw new NoPriceException(
                    both.stream().map(PriceList.Overlap::text).toList());
        }
        List<PassedOver> passedOver = new ArrayList<>();
        List<CostFinding> findings = new ArrayList<>();
        List<PriceRow> fit = new ArrayList<>();
        for (PriceRow row : valid) {
            if (row.pack().unit() != unit) {
                passedOver.add(passed(row, "sold by " + row.pack().unit().label() + ", wanted in " + unit.label()));
            } else if (!rows.prices().terms().canTurn(row.currency(), currency)) {
                passedOver.add(passed(row, "in " + row.currency() + ", the sheet is in " + currency));
                findings.add(new CostFinding(
                        row.origin() + ": the price of " + row.item() + " is in " + row.currency()
                                + " and could not be compared",
                        "supply it in " + currency + ", turned at the rate of the day"));
            } else {
                fit.add(row);
            }
        }
        Usable usable = new Usable(valid, offers(fit), passedOver, findings);
        byName.put(name, usable);
        return usable;
    }

    private Optional<Choice> among(String name, Usable usable, BigDecimal quantity, List<String> refusals) {
        List<CostFinding> findings = new ArrayList<>();
        refusals.forEach(refusal -> findings.add(new CostFinding(refusal, "the price of " + name + " was taken")));
        findings.addAll(usable.findings());
        List<Offer> offers = usable.offers();
        if (offers.size() == 1 && offers.get(0).row().minimumQuantity().compareTo(quantity) <= 0) {
            Offer only = offers.get(0); // as most things have it
            Choice choice = new Choice(
                    only.row(),
                    only.price(),
                    inFileOrder(usable.valid(), usable.passedOver()),
                    findings,
                    only.landed().notes());
            if (refusals.isEmpty()) {
                onlyOne = new OnlyOne(choice, only.row().minimumQuantity());
            }
            return Optional.of(choice);
        }
        List<PassedOver> passedOver = new ArrayList<>(usable.passedOver());
        List<Offer> candidates = new ArrayList<>();
        List<Offer> larger = new ArrayList<>();
        for (Offer offer : offers) {
            BigDecimal least = offer.row().minimumQuantity();
            if (least.compareTo(quantity) > 0) {
                larger.add(offer);
                passedOver.add(offer.passed("for orders of " + amount(least) + " or more"));
                continue;
            }
            BigDecimal largestMet = largestMet(offers, offer.supplier(), quantity);
            if (least.compareTo(largestMet) < 0) {
                passedOver.add(
                        offer.passed("for orders under " + amount(largestMet) + ", where the next price begins"));
            } else {
                candidates.add(offer);
            }
        }
        if (candidates.isEmpty()) {
            refusals.add(refusal(name, quantity, larger, passedOver));
            return Optional.empty();
        }
        candidates.sort(Comparator.comparing(Offer::price)); // stable: file order where two cost the same
        Offer chosen = candidates.get(0);
        for (Offer offer : candidates.subList(1, candidates.size())) {
            boolean same = offer.price().compareTo(chosen.price()) == 0;
            passedOver.add(offer.passed(same ? "costs the same, stands later" : "dearer"));
        }
        for (Offer offer : offers) {
            if (offer.row().minimumQuantity().compareTo(chosen.row().minimumQuantity()) < 0
                    && offer.supplier().equals(chosen.supplier())
                    && offer.price().compareTo(chosen.price()) < 0) {
                findings.add(outOfOrder(chosen.row(), offer.row()));
                break;
            }
        }
        cheaperBreak(chosen, quantity, larger).ifPresent(findings::add);
        return Optional.of(new Choice(
                chosen.row(),
                chosen.price(),
                inFileOrder(usable.valid(), passedOver),
                findings,
                chosen.landed().notes()));
    }

    /** The largest least order of a supplier that the quantity meets; 0 where it meets none. */
    private static BigDecimal largestMet(List<Offer> offers, String supplier, BigDecimal quantity) {
        BigDecimal largest = BigDecimal.ZERO;
        for (int i = 0; i < offers.size(); i++) {
            BigDecimal least = offers.get(i).row().minimumQuantity();
            if (least.compareTo(quantity) <= 0
                    && least.compareTo(largest) > 0
                    && offers.get(i).supplier().equals(supplier)) {
                largest = least;
            }
        }
        return largest;
    }

    private CostFinding outOfOrder(PriceRow chosen, PriceRow cheaper) {
        return new CostFinding(
                chosen.item() + " from " + chosen.supplier() + ": the price for "
                        + amount(chosen.minimumQuantity()) + " or more (" + chosen.origin()
                        + ") is dearer than that for less (" + cheaper.origin() + ")",
                "check the price list");
    }

    /** What each row costs by the unit, in the currency of the sheet. */
    private List<Offer> offers(List<PriceRow> usable) {
        List<Offer> offers = new ArrayList<>(usable.size());
        Set<String> faults = new LinkedHashSet<>();
        for (PriceRow row : usable) {
            try {
                offers.add(new Offer(row, landed(row), Names.folded(row.supplier())));
            } catch (NoPriceException e) {
                faults.addAll(e.faults());
            }
        }
        if (!faults.isEmpty()) {
            throw new NoPriceException(List.copyOf(faults));
        }
        return offers;
    }

    private Landed landed(PriceRow row) {
        try {
            return rows.prices().terms().landed(row, day(), currency);
        } catch (IllegalArgumentException e) {
            throw new NoPriceException(List.of(row.item() + ": " + e.getMessage()));
        }
    }

    private LocalDate day() {
        return rows.day();
    }

    private static PassedOver passed(PriceRow row, String why) {
        return new PassedOver(row, why, row.landed());
    }

    private String refusal(String name, BigDecimal quantity, List<Offer> larger, List<PassedOver> passedOver) {
        if (larger.isEmpty()) {
            PassedOver first = passedOver.get(0);
            return name + ": no price that applies on " + day() + " can be used; "
                    + first.row().origin() + " is " + first.why() + "; supply a price per " + unit.label() + " in "
                    + currency;
        }
        BigDecimal least = larger.stream()
                .map(offer -> offer.row().minimumQuantity())
                .reduce(BigDecimal::min)
                .orElseThrow();
        return name + ": no price for " + amount(quantity) + " on " + day() + "; the smallest order is " + amount(least)
                + "; state the quantity that is bought";
    }

    private Optional<CostFinding> cheaperBreak(Offer chosen, BigDecimal quantity, List<Offer> larger) {
        int decimals = currency.getDecimalPlaces();
        Optional<Offer> best = larger.stream()
                .filter(offer -> costsLess(offer, offer.row().minimumQuantity(), chosen, quantity))
                .min((a, b) ->
                        costsLess(a, a.row().minimumQuantity(), b, b.row().minimumQuantity()) ? -1 : 1);
        return best.map(offer -> {
            BigDecimal least = offer.row().minimumQuantity();
            return new CostFinding(
                    chosen.row().item() + ": " + amount(quantity) + " costs "
                            + chosen.price().times(quantity, decimals) + " " + currency + " from "
                            + chosen.row().supplier() + ", " + amount(least) + " costs "
                            + offer.price().times(least, decimals) + " " + currency + " from "
                            + offer.row().supplier() + " (" + offer.row().origin() + ")",
                    "buy " + amount(least) + " if it keeps");
        });
    }

    private static boolean costsLess(Offer one, BigDecimal quantityOne, Offer other, BigDecimal quantityOther) {
        UnitPrice a = one.price();
        UnitPrice b = other.price();
        return a.amount()
                        .multiply(quantityOne)
                        .multiply(b.content())
                        .compareTo(b.amount().multiply(quantityOther).multiply(a.content()))
                < 0;
    }

    private static List<PassedOver> inFileOrder(List<PriceRow> valid, List<PassedOver> passedOver) {
        if (passedOver.size() < 2) {
            return passedOver;
        }
        List<PassedOver> sorted = new ArrayList<>(passedOver);
        sorted.sort(Comparator.comparingInt(over -> valid.indexOf(over.row())));
        return sorted;
    }

    private String nearest(List<PriceRow> rows) {
        PriceRow best =
                rows.stream().min(Comparator.comparingLong(this::daysAway)).orElseThrow();
        return Figures.span(best.validFrom(), best.validUntil()) + " (" + best.origin() + ")";
    }

    private long daysAway(PriceRow row) {
        return day().isBefore(row.validFrom())
                ? ChronoUnit.DAYS.between(day(), row.validFrom())
                : row.validUntil()
                        .map(until -> ChronoUnit.DAYS.between(until, day()))
                        .orElse(0L);
    }

    private String amount(BigDecimal value) {
        return Figures.plain(value) + " " + unit.label();
    }
}
