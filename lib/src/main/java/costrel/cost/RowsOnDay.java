package costrel.cost;

import costrel.recipe.Names;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rows of a price list on one day; each name is looked up once, however often it is asked for. */
final class RowsOnDay {

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

    RowsOnDay(PriceList prices, LocalDate day) {
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
