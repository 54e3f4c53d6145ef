package costrel.tables;

import costrel.pricing.ListPrice;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Reads list-prices.csv: beer, container, price, plant, brew length, sold. One row for each beer and container that is sold; sold
 * is how many of the container go out in a year.
 */
public final class ListPriceReader {

    static final Columns COLUMNS = Columns.required("beer", "container", "price", "plant", "brew length", "sold")
            .optional("currency");

    private static final CellKind<Integer> COUNT = CellKind.of("a whole number such as 2600", ListPriceReader::count);

    private ListPriceReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @return the prices in the order of the file, or what is wrong
     */
    public static Loaded<List<ListPrice>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<ListPrice> prices = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                Optional<String> beer = row.need("beer", CellKind.TEXT);
                Optional<String> container = row.need("container", CellKind.TEXT);
                Optional<Money> price = price(row);
                Optional<String> plant = row.need("plant", CellKind.TEXT);
                Optional<Double> litres = row.need("brew length", Cells.LITRES);
                Optional<Integer> sold = row.need("sold", COUNT);
                if (beer.isPresent() && container.isPresent()) {
                    row.once(seen, "container", Names.folded(beer.get()) + "|" + Names.folded(container.get()));
                }
                row.build(
                                "price",
                                () -> new ListPrice(
                                        beer.orElseThrow(),
                                        container.orElseThrow(),
                                        price.orElseThrow(),
                                        plant.orElseThrow(),
                                        litres.orElseThrow(),
                                        sold.orElseThrow()))
                        .ifPresent(prices::add);
            }
            return table.loaded(() -> List.copyOf(prices));
        }
    }

    private static Optional<Money> price(CsvRow row) {
        Optional<Exact.Cash> cash = row.need("price", Exact.CASH);
        Optional<CurrencyUnit> currency = MoneyCells.currency(row, "price", cash);
        if (cash.isEmpty() || currency.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal amount = cash.get().amount();
        if (cash.get().per().isPresent()
                || amount.stripTrailingZeros().scale() > currency.get().getDecimalPlaces()) {
            row.problem(
                    "price",
                    TableProblem.quoted(row.cell("price")),
                    "the price of one container, to the smallest coin");
            return Optional.empty();
        }
        return Optional.of(Money.of(currency.get(), amount.stripTrailingZeros()));
    }

    private static int count(String text) {
        if (!text.matches("[0-9]{1,9}")) {
            throw new IllegalArgumentException(text);
        }
        return Integer.parseInt(text);
    }
}
