package costrel.buying;

import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;

/** A price list on one day; each name is looked up once, however often it is asked for. For one thread. */
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
    private final Map<String, Rows> byName = new HashMap<>();

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
            byName.put(name, known);
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
     * The name that a thing is bought by.
     *
     * @param names names to look up, the most particular first
     * @return the first of them that any row has, on any day, else the first of all; as names are compared
     */
    public String boughtBy(List<String> names) {
        for (String name : names) {
            Rows rows = of(name);
            if (rows.named()) {
                return rows.foldedName();
            }
        }
        return of(names.get(0)).foldedName();
    }

    /**
     * The price that applies, by the rule of {@link PriceList#choose}.
     *
     * @param names names to look up, the most particular first
     * @param quantity how much is bought, 0 or more, in the unit
     * @param unit what the quantity is counted in
     * @param currency the currency of the sheet
     * @return the row chosen and those passed over
     * @throws NoPriceException when no row can be used or two rows of one supplier both apply
     */
    public Choice choose(List<String> names, BigDecimal quantity, PackUnit unit, CurrencyUnit currency) {
        return new PriceSearch(this, quantity, unit, currency).choose(names);
    }

    /**
     * A contract price as a choice: nothing is compared, since it is drawn first.
     *
     * @param contract one of {@link #contracts}
     * @param amount how much is drawn, 0 or more, in the unit of its pack
     * @param currency the currency of the sheet
     * @return the row with what a unit costs
     * @throws NoPriceException when the terms don't fit the row or there is no rate of exchange
     */
    public Choice drawn(PriceRow contract, BigDecimal amount, CurrencyUnit currency) {
        return new PriceSearch(this, amount, contract.pack().unit(), currency).contracted(contract);
    }

    /**
     * The contracts of the first name that has any price on the day.
     *
     * @param names names to look up, the most particular first
     * @param unit what is bought by; contracts in another unit don't count
     * @return the rows in file order; empty where there is no contract
     */
    public List<PriceRow> contracts(List<String> names, PackUnit unit) {
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
