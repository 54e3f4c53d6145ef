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
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/** One lookup in a price list: the rule of choice, and the words for what was passed over. */
record PriceSearch(PricesOnDay rows, BigDecimal quantity, PackUnit unit, CurrencyUnit currency) {

    /** A row that can be used, what it costs by the unit, and its supplier's name as names are compared. */
    private record Offer(PriceRow row, Landed landed, String supplier) {
        UnitPrice price() {
            return landed.price();
        }

        PassedOver passed(String why) {
            return new PassedOver(row, why, price());
        }
    }

    PriceSearch {
        Figures.zeroOrMore("quantity", quantity, " " + unit.label());
    }

    Choice choose(List<String> names) {
        List<String> refusals = new ArrayList<>();
        boolean known = false;
        for (String name : names) {
            if (!rows.of(name).named()) {
                continue;
            }
            known = true;
            List<PriceRow> valid = rows.of(name).listed();
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
            List<PriceList.Overlap> both = PriceList.toldApart(valid) ? List.of() : PriceList.overlaps(valid);
            if (!both.isEmpty()) {
                throw new NoPriceException(
                        both.stream().map(PriceList.Overlap::text).toList());
            }
            Optional<Choice> choice = among(name, valid, refusals);
            if (choice.isPresent()) {
                return choice.get();
            }
        }
        if (!known) {
            String wanted = names.get(0);
            List<String> near = names.stream()
                    .flatMap(name -> rows.prices().nearest(name).stream())
                    .distinct()
                    .limit(3)
                    .toList();
            refusals.add(wanted + ": no price list names it"
                    + (names.size() > 1 ? " or " + String.join(" or ", names.subList(1, names.size())) : "")
                    + (near.isEmpty() ? "; supply a price" : "; nearest: " + String.join(", ", near)));
        }
        throw new NoPriceException(List.of(String.join("; ", refusals)));
    }

    private Optional<Choice> among(String name, List<PriceRow> valid, List<String> refusals) {
        List<PassedOver> passedOver = new ArrayList<>();
        List<CostFinding> findings = new ArrayList<>();
        refusals.forEach(refusal -> findings.add(new CostFinding(refusal, "the price of " + name + " was taken")));
        List<PriceRow> usable = new ArrayList<>();
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
                usable.add(row);
            }
        }
        if (usable.size() == 1 && usable.get(0).minimumQuantity().compareTo(quantity) <= 0) {
            PriceRow only = usable.get(0); // as most things have it: there is nothing to compare
            Landed landed = landed(only);
            return Optional.of(
                    new Choice(only, landed.price(), inFileOrder(valid, passedOver), findings, landed.notes()));
        }
        List<Offer> offers = offers(usable);
        Map<String, BigDecimal> met = new HashMap<>();
        for (Offer offer : offers) {
            BigDecimal least = offer.row().minimumQuantity();
            if (least.compareTo(quantity) <= 0) {
                met.merge(offer.supplier(), least, BigDecimal::max);
            }
        }
        List<Offer> candidates = new ArrayList<>();
        List<Offer> larger = new ArrayList<>();
        for (Offer offer : offers) {
            BigDecimal least = offer.row().minimumQuantity();
            BigDecimal largestMet = met.get(offer.supplier());
            if (least.compareTo(quantity) > 0) {
                larger.add(offer);
                passedOver.add(offer.passed("for orders of " + amount(least) + " or more"));
            } else if (largestMet != null && least.compareTo(largestMet) < 0) {
                passedOver.add(
                        offer.passed("for orders under " + amount(largestMet) + ", where the next price begins"));
            } else {
                candidates.add(offer);
            }
        }
        if (candidates.isEmpty()) {
            refusals.add(refusal(name, larger, passedOver));
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
        cheaperBreak(chosen, larger).ifPresent(findings::add);
        return Optional.of(new Choice(
                chosen.row(),
                chosen.price(),
                inFileOrder(valid, passedOver),
                findings,
                chosen.landed().notes()));
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

    /** A contract row as a choice: nothing is compared, since it is drawn first. */
    Choice contracted(PriceRow row) {
        Landed landed = landed(row);
        return new Choice(row, landed.price(), List.of(), List.of(), landed.notes());
    }

    private LocalDate day() {
        return rows.day();
    }

    private static PassedOver passed(PriceRow row, String why) {
        return new PassedOver(row, why, row.landed());
    }

    private String refusal(String name, List<Offer> larger, List<PassedOver> passedOver) {
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

    private Optional<CostFinding> cheaperBreak(Offer chosen, List<Offer> larger) {
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
