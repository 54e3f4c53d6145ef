package costrel.tables;

import costrel.cost.ContainerCharges.TripLoss;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Reads container-losses.csv: container, value, lost per trip, valid from, valid until, currency. Value is what a new container
 * costs; lost per trip is the share of those sent out that never comes back.
 */
public final class ContainerLossReader {

    static final Columns COLUMNS = Columns.required("container", "value", "lost per trip", "valid from")
            .optional("valid until", "currency");

    private static final CellKind<BigDecimal> SHARE =
            CellKind.of("a share over 0 % and under 100 % such as 2 %", ContainerLossReader::share);

    private ContainerLossReader() {}

    /**
     * Reads the table. Two rows of a container that both apply on a day are a problem.
     *
     * @param source the file
     * @return the losses in the order of the file, or what is wrong
     */
    public static Loaded<List<TripLoss>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<TripLoss> losses = new ArrayList<>();
            Map<String, List<Spans.Span>> seen = new HashMap<>();
            for (CsvRow row : table) {
                loss(row, source.name() + ":" + row.line()).ifPresent(loss -> {
                    Spans.add(
                            row,
                            seen.computeIfAbsent(Names.folded(loss.container()), any -> new ArrayList<>()),
                            loss.validFrom(),
                            loss.validUntil());
                    losses.add(loss);
                });
            }
            return table.loaded(() -> List.copyOf(losses));
        }
    }

    private static Optional<TripLoss> loss(CsvRow row, String origin) {
        Optional<String> container = row.need("container", CellKind.TEXT);
        Optional<Money> value = value(row);
        Optional<BigDecimal> share = row.need("lost per trip", SHARE);
        Optional<LocalDate> from = row.need("valid from", Cells.DATE);
        Optional<LocalDate> until = MoneyCells.until(row, from);
        return row.build(
                "value",
                () -> new TripLoss(
                        container.orElseThrow(),
                        value.orElseThrow(),
                        share.orElseThrow(),
                        from.orElseThrow(),
                        until,
                        origin));
    }

    private static Optional<Money> value(CsvRow row) {
        Optional<Exact.Cash> cash = row.need("value", Exact.CASH);
        Optional<CurrencyUnit> currency = MoneyCells.currency(row, "value", cash);
        if (cash.isEmpty() || currency.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal amount = cash.get().amount().stripTrailingZeros();
        if (cash.get().per().isPresent()
                || amount.signum() <= 0
                || amount.scale() > currency.get().getDecimalPlaces()) {
            row.problem(
                    "value",
                    TableProblem.quoted(row.cell("value")),
                    "what a new container costs, more than 0, to the smallest coin, such as £65.00");
            return Optional.empty();
        }
        return Optional.of(Money.of(currency.get(), amount));
    }

    private static BigDecimal share(String text) {
        BigDecimal share = Cells.before(text, "%").movePointLeft(2);
        if (share.signum() <= 0 || share.compareTo(BigDecimal.ONE) >= 0) {
            throw new IllegalArgumentException(text);
        }
        return share;
    }
}
