package costrel.cost;

import costrel.cost.Choice.PassedOver;
import costrel.cost.PriceTerms.Landed;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** One lookup in a price list: the rule of choice, and the words for what was passed over. */
record PriceSearch(PriceList prices, LocalDate day, BigDecimal quantity, PackUnit unit, CurrencyUnit currency) {

    PriceSearch {
        Figures.zeroOrMore("quantity", quantity, " " + unit.label());
    }

    Choice choose(List<String> names) {
        List<String> refusals = new ArrayList<>();
        boolean known = false;
        for (String name : names) {
            List<PriceRow> rows = prices.rowsOf(name);
            if (rows.isEmpty()) {
                continue;
            }
            known = true;
            List<PriceRow> valid = rows.stream()
                    .filter(row -> row.holdsOn(day) && row.contractQuantity().isEmpty())
                    .toList();
            if (valid.isEmpty()
                    && rows.stream().anyMatch(row -> row.contractQuantity().isPresent())) {
                refusals.add(name + ": beyond what is contracted no price applies on " + day);
                continue;
            }
            if (valid.isEmpty()) {
                refusals.add(name + ": no price applies on " + day + "; the nearest is " + nearest(rows));
                continue;
            }
            List<PriceList.Overlap> both = PriceList.overlaps(valid);
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
                    .flatMap(name -> prices.nearest(name).stream())
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
            } else if (!prices.terms().canTurn(row.currency(), currency)) {
                passedOver.add(passed(row, "in " + row.currency() + ", the sheet is in " + currency));
                findings.add(new CostFinding(
                        row.origin() + ": the price of " + row.item() + " is in " + row.currency()
                                + " and could not be compared",
                        "supply it in " + currency + ", turned at the rate of the day"));
            } else {
                usable.add(row);
            }
        }
        Map<PriceRow, Landed> landed = landed(usable);
        Map<String, BigDecimal> met = new HashMap<>();
        for (PriceRow row : usable) {
            if (row.minimumQuantity().compareTo(quantity) <= 0) {
                met.merge(Names.folded(row.supplier()), row.minimumQuantity(), BigDecimal::max);
            }
        }
        List<PriceRow> candidates = new ArrayList<>();
        List<PriceRow> larger = new ArrayList<>();
        for (PriceRow row : usable) {
            BigDecimal largestMet = met.get(Names.folded(row.supplier()));
            if (row.minimumQuantity().compareTo(quantity) > 0) {
                larger.add(row);
                passedOver.add(passed(row, "for orders of " + amount(row.minimumQuantity()) + " or more", landed));
            } else if (largestMet != null && row.minimumQuantity().compareTo(largestMet) < 0) {
                passedOver.add(passed(
                        row, "for orders under " + amount(largestMet) + ", where the next price begins", landed));
            } else {
                candidates.add(row);
            }
        }
        if (candidates.isEmpty()) {
            refusals.add(refusal(name, larger, passedOver));
            return Optional.empty();
        }
        candidates.sort(Comparator.comparing(row -> price(row, landed))); // stable: file order where two cost the same
        PriceRow chosen = candidates.get(0);
        UnitPrice unitPrice = price(chosen, landed);
        for (PriceRow row : candidates.subList(1, candidates.size())) {
            boolean same = price(row, landed).compareTo(unitPrice) == 0;
            passedOver.add(passed(row, same ? "costs the same, stands later" : "dearer", landed));
        }
        usable.stream()
                .filter(row -> Names.folded(row.supplier()).equals(Names.folded(chosen.supplier())))
                .filter(row -> row.minimumQuantity().compareTo(chosen.minimumQuantity()) < 0)
                .filter(row -> price(row, landed).compareTo(unitPrice) < 0)
                .findFirst()
                .ifPresent(row -> findings.add(new CostFinding(
                        chosen.item() + " from " + chosen.supplier() + ": the price for "
                                + amount(chosen.minimumQuantity()) + " or more (" + chosen.origin()
                                + ") is dearer than that for less (" + row.origin() + ")",
                        "check the price list")));
        cheaperBreak(chosen, larger, landed).ifPresent(findings::add);
        return Optional.of(new Choice(
                chosen,
                unitPrice,
                inFileOrder(valid, passedOver),
                findings,
                Objects.requireNonNull(landed.get(chosen)).notes()));
    }

    /** What each row costs by the unit, in the currency of the sheet. */
    private Map<PriceRow, Landed> landed(List<PriceRow> usable) {
        Map<PriceRow, Landed> landed = new HashMap<>();
        List<String> faults = new ArrayList<>();
        for (PriceRow row : usable) {
            try {
                landed.put(row, prices.terms().landed(row, day, currency));
            } catch (IllegalArgumentException e) {
                String fault = row.item() + ": " + e.getMessage();
                if (!faults.contains(fault)) {
                    faults.add(fault);
                }
            }
        }
        if (!faults.isEmpty()) {
            throw new NoPriceException(faults);
        }
        return landed;
    }

    /** A contract row as a choice: nothing is compared, since it is drawn first. */
    Choice contracted(PriceRow row) {
        Landed landed = Objects.requireNonNull(landed(List.of(row)).get(row));
        return new Choice(row, landed.price(), List.of(), List.of(), landed.notes());
    }

    private static UnitPrice price(PriceRow row, Map<PriceRow, Landed> landed) {
        return Objects.requireNonNull(landed.get(row)).price();
    }

    private static PassedOver passed(PriceRow row, String why) {
        return new PassedOver(row, why, row.landed());
    }

    private static PassedOver passed(PriceRow row, String why, Map<PriceRow, Landed> landed) {
        return new PassedOver(row, why, price(row, landed));
    }

    private String refusal(String name, List<PriceRow> larger, List<PassedOver> passedOver) {
        if (larger.isEmpty()) {
            PassedOver first = passedOver.get(0);
            return name + ": no price that applies on " + day + " can be used; "
                    + first.row().origin() + " is " + first.why() + "; supply a price per " + unit.label() + " in "
                    + currency;
        }
        BigDecimal least = larger.stream()
                .map(PriceRow::minimumQuantity)
                .reduce(BigDecimal::min)
                .orElseThrow();
        return name + ": no price for " + amount(quantity) + " on " + day + "; the smallest order is " + amount(least)
                + "; state the quantity that is bought";
    }

    private Optional<CostFinding> cheaperBreak(PriceRow chosen, List<PriceRow> larger, Map<PriceRow, Landed> landed) {
        int decimals = currency.getDecimalPlaces();
        UnitPrice price = price(chosen, landed);
        Optional<PriceRow> best = larger.stream()
                .filter(row -> costsLess(price(row, landed), row.minimumQuantity(), price, quantity))
                .min((a, b) -> costsLess(price(a, landed), a.minimumQuantity(), price(b, landed), b.minimumQuantity())
                        ? -1
                        : 1);
        return best.map(row -> new CostFinding(
                chosen.item() + ": " + amount(quantity) + " costs " + price.times(quantity, decimals) + " " + currency
                        + " from " + chosen.supplier() + ", " + amount(row.minimumQuantity()) + " costs "
                        + price(row, landed).times(row.minimumQuantity(), decimals) + " " + currency + " from "
                        + row.supplier() + " (" + row.origin() + ")",
                "buy " + amount(row.minimumQuantity()) + " if it keeps"));
    }

    private static boolean costsLess(UnitPrice a, BigDecimal quantityA, UnitPrice b, BigDecimal quantityB) {
        return a.amount()
                        .multiply(quantityA)
                        .multiply(b.content())
                        .compareTo(b.amount().multiply(quantityB).multiply(a.content()))
                < 0;
    }

    private static List<PassedOver> inFileOrder(List<PriceRow> valid, List<PassedOver> passedOver) {
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
        return day.isBefore(row.validFrom())
                ? ChronoUnit.DAYS.between(day, row.validFrom())
                : row.validUntil()
                        .map(until -> ChronoUnit.DAYS.between(until, day))
                        .orElse(0L);
    }

    private String amount(BigDecimal value) {
        return Figures.plain(value) + " " + unit.label();
    }
}
