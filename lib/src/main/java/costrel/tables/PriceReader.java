package costrel.tables;

import costrel.buying.Origin;
import costrel.buying.Pack;
import costrel.buying.PriceList;
import costrel.buying.PriceRow;
import costrel.buying.PriceVat;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * Reads a price list: item, supplier, pack, price, currency, valid from, valid until, minimum quantity, delivery, VAT,
 * price with VAT, VAT recoverable, contract quantity. A price is that of the pack; one such as £12.40/kg is that of a kilogram, and
 * the pack may then be left blank.
 */
public final class PriceReader {

    private static final Columns COLUMNS = Columns.required("item", "supplier", "price", "valid from")
            .optional(
                    "pack",
                    "currency",
                    "valid until",
                    "minimum quantity",
                    "delivery",
                    "VAT",
                    "price with VAT",
                    "VAT recoverable",
                    "contract quantity");

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final String file;
    private final CsvColumn<String> itemColumn;
    private final CsvColumn<String> supplierColumn;
    private final CsvColumn<Pack> packColumn;
    private final CsvColumn<Exact.Cash> priceColumn;
    private final CsvColumn<CurrencyUnit> currencyColumn;
    private final CsvColumn<LocalDate> fromColumn;
    private final CsvColumn<LocalDate> untilColumn;
    private final CsvColumn<Pack> minimumColumn;
    private final CsvColumn<Exact.Cash> deliveryColumn;
    private final CsvColumn<BigDecimal> vatColumn;
    private final CsvColumn<Boolean> includedColumn;
    private final CsvColumn<Boolean> recoverableColumn;
    private final CsvColumn<Pack> contractColumn;

    private PriceReader(CsvTable table) {
        this.file = table.problems().file();
        this.itemColumn = table.column("item", CellKind.TEXT);
        this.supplierColumn = table.column("supplier", CellKind.TEXT);
        this.packColumn = table.column("pack", Exact.PACK);
        this.priceColumn = table.column("price", Exact.CASH);
        this.currencyColumn = table.column("currency", Exact.CURRENCY);
        this.fromColumn = table.column("valid from", Cells.DATE);
        this.untilColumn = table.column("valid until", Cells.DATE);
        this.minimumColumn = table.column("minimum quantity", Exact.PACK);
        this.deliveryColumn = table.column("delivery", Exact.CASH);
        this.vatColumn = table.column("VAT", Exact.PERCENT);
        this.includedColumn = table.column("price with VAT", Cells.YES_NO);
        this.recoverableColumn = table.column("VAT recoverable", Cells.YES_NO);
        this.contractColumn = table.column("contract quantity", Exact.PACK);
    }

    /** What a row's price buys, and for how much. */
    private record Offer(Pack pack, BigDecimal price, CurrencyUnit currency) {}

    /**
     * Reads the list. Two of its rows that both apply are a problem, and so is a larger order that costs more a unit; whether
     * rows of two lists do so is for {@link PriceList#overlaps} and {@link PriceList#breaksOutOfOrder}.
     *
     * @param source the file
     * @return the rows in file order, or what is wrong
     */
    public static Loaded<List<PriceRow>> read(CsvSource source) {
        return list(source).map(PriceList::rows);
    }

    /**
     * Reads the list, as {@link #read} does, with its rows indexed by item.
     *
     * @param source the file
     * @return the list, or what is wrong
     */
    public static Loaded<PriceList> list(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            PriceReader reader = new PriceReader(table);
            List<PriceRow> rows = new ArrayList<>();
            for (CsvRow row : table) {
                PriceRow price = reader.price(row);
                if (price != null) {
                    rows.add(price);
                }
            }
            PriceList list = PriceList.ofShared(rows);
            list.overlaps().forEach(overlap -> {
                long first = overlap.first().place().line();
                long second = overlap.second().place().line();
                table.problems()
                        .add(
                                second,
                                "valid from",
                                "'" + overlap.second().validFrom() + "', while the price of "
                                        + overlap.second().item() + " from "
                                        + overlap.second().supplier() + " on line " + first + " still applies",
                                "one price of an item, supplier, pack and minimum quantity on a day");
            });
            list.breaksOutOfOrder()
                    .forEach(broken -> table.problems()
                            .add(
                                    broken.more().place().line(),
                                    "minimum quantity",
                                    "quantity breaks out of order: " + broken.text(),
                                    "a larger order that is no dearer by the unit"));
            return table.loaded(() -> list);
        }
    }

    /** The price of a row; none where something is wrong with it, which is then a problem already. */
    private @Nullable PriceRow price(CsvRow row) {
        Optional<String> item = row.need(itemColumn);
        Optional<String> supplier = row.need(supplierColumn);
        Optional<Offer> offer = offer(row);
        Optional<LocalDate> from = row.need(fromColumn);
        Optional<LocalDate> until = MoneyCells.until(row, untilColumn, from);
        BigDecimal least = quantity(row, minimumColumn, offer).orElse(BigDecimal.ZERO);
        BigDecimal delivery = delivery(row, offer);
        Optional<PriceVat> vat = vat(row);
        Optional<BigDecimal> contract = quantity(row, contractColumn, offer);
        if (!row.sound()) {
            return null;
        }
        try {
            return new PriceRow(
                    item.orElseThrow(),
                    supplier.orElseThrow(),
                    offer.orElseThrow().pack(),
                    offer.orElseThrow().price(),
                    offer.orElseThrow().currency(),
                    from.orElseThrow(),
                    until,
                    least,
                    delivery,
                    vat,
                    contract,
                    new Origin(file, Math.toIntExact(row.line())));
        } catch (IllegalArgumentException e) {
            row.problem(priceColumn.name(), e);
            return null;
        }
    }

    private Optional<Offer> offer(CsvRow row) {
        Optional<Pack> pack = row.may(packColumn);
        Optional<Exact.Cash> cash = row.need(priceColumn);
        Optional<CurrencyUnit> currency = MoneyCells.currency(row, currencyColumn, priceColumn, cash);
        if (cash.isEmpty() || currency.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal amount = cash.get().amount();
        if (amount.signum() <= 0) {
            row.problem(
                    priceColumn.name(), TableProblem.quoted(row.cell(priceColumn)), "an amount over 0 such as £12.50");
            return Optional.empty();
        }
        Optional<Pack> per = cash.get().per();
        boolean packStated = !row.cell(packColumn).isEmpty();
        if (per.isEmpty()) {
            if (!packStated) {
                row.problem(packColumn.name(), "nothing", Exact.PACK.expected() + ", or a price such as £12.40/kg");
            }
            return pack.isPresent() ? Optional.of(new Offer(pack.get(), amount, currency.get())) : Optional.empty();
        }
        if (!packStated) {
            return Optional.of(new Offer(per.get(), amount, currency.get()));
        }
        return pack.isPresent() ? byUnit(row, pack.get(), per.get(), amount, currency.get()) : Optional.empty();
    }

    /** A pack whose price is stated by the unit: £12.40/kg and 25 kg. */
    private Optional<Offer> byUnit(CsvRow row, Pack pack, Pack per, BigDecimal price, CurrencyUnit currency) {
        if (per.unit() != pack.unit() || per.content().compareTo(BigDecimal.ONE) != 0) {
            row.problem(
                    priceColumn.name(),
                    TableProblem.quoted(row.cell(priceColumn)),
                    "a price of the pack, or one by the " + pack.unit().label() + " as the pack is");
            return Optional.empty();
        }
        return Optional.of(new Offer(pack, price.multiply(pack.content()), currency));
    }

    /** A quantity of what the row sells, in the unit of its pack. */
    private static Optional<BigDecimal> quantity(CsvRow row, CsvColumn<Pack> column, Optional<Offer> offer) {
        Optional<Pack> quantity = row.may(column);
        if (quantity.isEmpty()) {
            return Optional.empty();
        }
        if (offer.isPresent() && offer.get().pack().unit() != quantity.get().unit()) {
            row.problem(
                    column.name(),
                    TableProblem.quoted(row.cell(column)),
                    "a quantity in " + offer.get().pack().unit().label() + " as the pack is");
        }
        return Optional.of(quantity.get().content());
    }

    /** The tax of a row; a price without it that can be recovered needs no rate, since nothing is done with it. */
    private Optional<PriceVat> vat(CsvRow row) {
        Optional<BigDecimal> percent = row.may(vatColumn);
        boolean included = row.may(includedColumn).orElse(false);
        boolean recoverable = row.may(recoverableColumn).orElse(true);
        if (percent.isPresent() && (percent.get().signum() < 0 || percent.get().compareTo(HUNDRED) > 0)) {
            row.problem(vatColumn.name(), TableProblem.quoted(row.cell(vatColumn)), "0 % to 100 %");
            return Optional.empty();
        }
        if (row.cell(vatColumn).isEmpty() && (included || !recoverable)) {
            row.problem(
                    vatColumn.name(),
                    "nothing",
                    "the rate such as 20 %, since the price "
                            + (included ? "is with VAT" : "bears VAT that can't be recovered"));
        }
        return percent.isPresent() ? Optional.of(new PriceVat(percent.get(), included, recoverable)) : Optional.empty();
    }

    private BigDecimal delivery(CsvRow row, Optional<Offer> offer) {
        Optional<Exact.Cash> cash = row.may(deliveryColumn);
        if (cash.isEmpty()) {
            return BigDecimal.ZERO;
        }
        Optional<CurrencyUnit> own = cash.get().currency();
        boolean other = offer.isPresent()
                && own.isPresent()
                && !own.get().equals(offer.get().currency());
        if (other || cash.get().amount().signum() < 0 || cash.get().per().isPresent()) {
            row.problem(
                    deliveryColumn.name(),
                    TableProblem.quoted(row.cell(deliveryColumn)),
                    "an amount for each pack, 0 or more, in the currency of the price");
        }
        return cash.get().amount();
    }
}
