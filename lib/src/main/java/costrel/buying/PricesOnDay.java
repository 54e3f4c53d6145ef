package costrel.buying;

import costrel.recipe.Names;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.joda.money.CurrencyUnit;

/** A price list on one day; each thing is looked up once, however often it is asked for. Safe for many threads. */
public final class PricesOnDay {

    /**
     * The rows of one name.
     *
     * @param foldedName the name as names are compared
     * @param named whether any row has the name, on any day
     * @param holding those that hold on the day
     * @param listed those of them that are no contracts
     */
    record Rows(String foldedName, boolean named, List<PriceRow> holding, List<PriceRow> listed) {}

    private final PriceList prices;
    private final LocalDate day;

    private final Map<String, Offers[]> asked = new ConcurrentHashMap<>();
    private final Map<String, Rows> byName = new ConcurrentHashMap<>();

    PricesOnDay(PriceList prices, LocalDate day) {
        this.prices = prices;
        this.day = day;
    }

    PriceList prices() {
        return prices;
    }

    LocalDate day() {
        return day;
    }

    Rows of(String name) {
        Rows known = byName.get(name);
        if (known == null) {
            known = rows(Names.folded(name));
            if (known.named()) { // else every slip of a pen would be kept
                byName.put(name, known);
            }
        }
        return known;
    }

    private Rows rows(String foldedName) {
        List<PriceRow> holding = prices.rowsOn(day, foldedName);
        List<PriceRow> listed = holding;
        for (PriceRow row : holding) {
            if (row.contractQuantity().isPresent()) {
                listed = holding.stream()
                        .filter(one -> one.contractQuantity().isEmpty())
                        .toList();
                break;
            }
        }
        return new Rows(foldedName, prices.has(foldedName), holding, listed);
    }

    /**
     * What a thing can be bought at.
     *
     * @param names names to look up, the most particular first
     * @param unit what it is counted in
     * @param currency the currency of the sheet
     * @return the offers, the same for the same names, unit and currency
     */
    public Offers offers(List<String> names, PackUnit unit, CurrencyUnit currency) {
        Offers[] known = asked.get(names.get(0));
        if (known != null) {
            for (Offers offers : known) {
                if (offers.isFor(names, unit, currency)) {
                    return offers;
                }
            }
        }
        Offers fresh = new Offers(this, names, unit, currency);
        if (of(names.get(0)).named()) {
            asked.merge(names.get(0), new Offers[] {fresh}, PricesOnDay::with);
        }
        return fresh;
    }

    private static Offers[] with(Offers[] known, Offers[] more) {
        Offers[] all = Arrays.copyOf(known, known.length + more.length);
        System.arraycopy(more, 0, all, known.length, more.length);
        return all;
    }

    /** The first of the names that any row has, on any day, else the first of all; as names are compared. */
    String boughtBy(List<String> names) {
        for (String name : names) {
            Rows rows = of(name);
            if (rows.named()) {
                return rows.foldedName();
            }
        }
        return of(names.get(0)).foldedName();
    }

    /** The contracts of the first name that has any price on the day. */
    List<PriceRow> contracts(List<String> names, PackUnit unit) {
        for (String name : names) {
            Rows rows = of(name);
            if (!rows.holding().isEmpty()) {
                if (rows.listed().size() == rows.holding().size()) {
                    return List.of();
                }
                return rows.holding().stream()
                        .filter(row ->
                                row.contractQuantity().isPresent() && row.pack().unit() == unit)
                        .toList();
            }
        }
        return List.of();
    }
}
