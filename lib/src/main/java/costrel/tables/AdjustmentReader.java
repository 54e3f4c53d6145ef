package costrel.tables;

import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.buying.PriceAdjustment;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * Reads surcharges.csv: name, supplier, item, kind (surcharge, rebate), amount, valid from, valid until, currency. An amount is a share
 * of the price such as 4 %, or money by the unit such as £12.00/t.
 */
public final class AdjustmentReader {

    static final Columns COLUMNS = Columns.required("name", "supplier", "kind", "amount", "valid from")
            .optional("item", "valid until", "currency");

    private static final CellKind<String> KIND = CellKind.oneOf(new String[] {"surcharge", "rebate"}, word -> word);
    private static final String AMOUNT = "a share of the price such as 4 %, or money by the unit such as £12.00/t";
    private static final CellKind<Exact.Cash> CASH = CellKind.of(AMOUNT, Exact.CASH::read);

    /** Digits of an amount by a unit that doesn't divide out, such as by the pound. */
    private static final MathContext DIGITS = MathContext.DECIMAL128;

    private AdjustmentReader() {}

    /** What a row puts on a price; exactly one of the two figures isn't 0. */
    private record Amount(
            BigDecimal percent, BigDecimal perUnit, Optional<PackUnit> unit, Optional<CurrencyUnit> currency) {

        Amount negated() {
            return new Amount(percent.negate(), perUnit.negate(), unit, currency);
        }
    }

    private record Seen(PriceAdjustment adjustment, Spans.Span days) {

        /** Whether both could be put on one price on one day. */
        boolean meets(Seen other) {
            Optional<String> item = adjustment.item().map(Names::folded);
            Optional<String> otherItem = other.adjustment.item().map(Names::folded);
            Optional<PackUnit> unit = adjustment.unit();
            Optional<PackUnit> otherUnit = other.adjustment.unit();
            return days.meets(other.days)
                    && (item.isEmpty() || otherItem.isEmpty() || item.equals(otherItem))
                    && (unit.isEmpty() || otherUnit.isEmpty() || unit.equals(otherUnit));
        }
    }

    /**
     * Reads the table. Two rows of one name and supplier that could both apply to a price on a day are a problem.
     *
     * @param source the file
     * @return the surcharges and rebates in file order, or what is wrong
     */
    public static Loaded<List<PriceAdjustment>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<PriceAdjustment> adjustments = new ArrayList<>();
            Map<String, List<Seen>> seen = new HashMap<>();
            for (CsvRow row : table) {
                adjustment(row, source.name() + ":" + row.line()).ifPresent(adjustment -> {
                    once(
                            row,
                            seen.computeIfAbsent(
                                    Names.folded(adjustment.name()) + "|" + Names.folded(adjustment.supplier()),
                                    key -> new ArrayList<>()),
                            adjustment);
                    adjustments.add(adjustment);
                });
            }
            return table.loaded(() -> List.copyOf(adjustments));
        }
    }

    private static void once(CsvRow row, List<Seen> before, PriceAdjustment adjustment) {
        Seen own = new Seen(adjustment, new Spans.Span(row.line(), adjustment.validFrom(), adjustment.validUntil()));
        before.stream()
                .filter(own::meets)
                .findFirst()
                .ifPresent(other -> row.problem(
                        "valid from",
                        TableProblem.quoted(row.cell("valid from")) + ", while line "
                                + other.days().line() + " still applies",
                        "one surcharge or rebate of a name, supplier and item on a day"));
        before.add(own);
    }

    private static Optional<PriceAdjustment> adjustment(CsvRow row, String origin) {
        Optional<String> name = row.need("name", CellKind.TEXT);
        Optional<String> supplier = row.need("supplier", CellKind.TEXT);
        Optional<String> item = row.may("item", CellKind.TEXT);
        Optional<String> kind = row.need("kind", KIND);
        Optional<Amount> stated = amount(row);
        Optional<LocalDate> from = row.need("valid from", Cells.DATE);
        Optional<LocalDate> until = MoneyCells.until(row, from);
        return row.build("amount", () -> {
            Amount amount =
                    kind.orElseThrow().equals("rebate") ? stated.orElseThrow().negated() : stated.orElseThrow();
            return new PriceAdjustment(
                    name.orElseThrow(),
                    supplier.orElseThrow(),
                    item,
                    amount.percent(),
                    amount.perUnit(),
                    amount.unit(),
                    amount.currency(),
                    from.orElseThrow(),
                    until,
                    origin);
        });
    }

    private static Optional<Amount> amount(CsvRow row) {
        String cell = row.cell("amount");
        if (cell.endsWith("%")) {
            return positive(row, row.need("amount", Exact.PERCENT))
                    .map(percent -> new Amount(percent, BigDecimal.ZERO, Optional.empty(), Optional.empty()));
        }
        Optional<Exact.Cash> cash = row.need("amount", CASH);
        if (cash.isEmpty()) {
            return Optional.empty();
        }
        Optional<CurrencyUnit> currency = MoneyCells.currency(row, "amount", cash);
        if (cash.get().per().isEmpty()) {
            row.problem("amount", TableProblem.quoted(cell), AMOUNT);
            return Optional.empty();
        }
        Pack per = cash.get().per().get();
        return positive(row, cash.map(Exact.Cash::amount))
                .map(amount -> new Amount(
                        BigDecimal.ZERO, amount.divide(per.content(), DIGITS), Optional.of(per.unit()), currency));
    }

    private static Optional<BigDecimal> positive(CsvRow row, Optional<BigDecimal> amount) {
        if (amount.isPresent() && amount.get().signum() <= 0) {
            row.problem(
                    "amount",
                    TableProblem.quoted(row.cell("amount")),
                    "an amount over 0; a rebate is positive too and has its word in kind");
            return Optional.empty();
        }
        return amount;
    }
}
