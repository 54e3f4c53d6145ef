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

    private PriceReader() {}

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
            List<PriceRow> rows = new ArrayList<>();
            for (CsvRow row : table) {
                price(row, new Origin(source.name(), Math.toIntExact(row.line())))
                        .ifPresent(rows::add);
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

    private static Optional<PriceRow> price(CsvRow row, Origin place) {
        Optional<String> item = row.need("item", CellKind.TEXT);
        Optional<String> supplier = row.need("supplier", CellKind.TEXT);
        Optional<Offer> offer = offer(row);
        Optional<LocalDate> from = row.need("valid from", Cells.DATE);
        Optional<LocalDate> until = MoneyCells.until(row, from);
        BigDecimal least = quantity(row, "minimum quantity", offer).orElse(BigDecimal.ZERO);
        BigDecimal delivery = delivery(row, offer);
        Optional<PriceVat> vat = vat(row);
        Optional<BigDecimal> contract = quantity(row, "contract quantity", offer);
        return row.build(
                "price",
                () -> new PriceRow(
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
                        place));
    }

    private static Optional<Offer> offer(CsvRow row) {
        Optional<Pack> pack = row.may("pack", Exact.PACK);
        Optional<Exact.Cash> cash = row.need("price", Exact.CASH);
        Optional<CurrencyUnit> currency = MoneyCells.currency(row, "price", cash);
        if (cash.isEmpty() || currency.isEmpty()) {
            return Optional.empty();
        }
        if (cash.get().amount().signum() <= 0) {
            row.problem("price", TableProblem.quoted(row.cell("price")), "an amount over 0 such as £12.50");
            return Optional.empty();
        }
        Optional<Pack> per = cash.get().per();
        if (per.isEmpty()) {
            if (pack.isEmpty() && row.cell("pack").isEmpty()) {
                row.problem("pack", "nothing", Exact.PACK.expected() + ", or a price such as £12.40/kg");
            }
            return pack.map(content -> new Offer(content, cash.get().amount(), currency.get()));
        }
        if (row.cell("pack").isEmpty()) {
            return Optional.of(new Offer(per.get(), cash.get().amount(), currency.get()));
        }
        return pack.flatMap(
                content -> byUnit(row, content, per.get(), cash.get().amount(), currency.get()));
    }

    /** A pack whose price is stated by the unit: £12.40/kg and 25 kg. */
    private static Optional<Offer> byUnit(CsvRow row, Pack pack, Pack per, BigDecimal price, CurrencyUnit currency) {
        if (per.unit() != pack.unit() || per.content().compareTo(BigDecimal.ONE) != 0) {
            row.problem(
                    "price",
                    TableProblem.quoted(row.cell("price")),
                    "a price of the pack, or one by the " + pack.unit().label() + " as the pack is");
            return Optional.empty();
        }
        return Optional.of(new Offer(pack, price.multiply(pack.content()), currency));
    }

    /** A quantity of what the row sells, in the unit of its pack. */
    private static Optional<BigDecimal> quantity(CsvRow row, String column, Optional<Offer> offer) {
        Optional<Pack> quantity = row.may(column, Exact.PACK);
        if (quantity.isPresent()
                && offer.isPresent()
                && offer.get().pack().unit() != quantity.get().unit()) {
            row.problem(
                    column,
                    TableProblem.quoted(row.cell(column)),
                    "a quantity in " + offer.get().pack().unit().label() + " as the pack is");
        }
        return quantity.map(Pack::content);
    }

    /** The tax of a row; a price without it that can be recovered needs no rate, since nothing is done with it. */
    private static Optional<PriceVat> vat(CsvRow row) {
        Optional<BigDecimal> percent = row.may("VAT", Exact.PERCENT);
        boolean included = row.may("price with VAT", Cells.YES_NO).orElse(false);
        boolean recoverable = row.may("VAT recoverable", Cells.YES_NO).orElse(true);
        if (percent.isPresent() && (percent.get().signum() < 0 || percent.get().compareTo(HUNDRED) > 0)) {
            row.problem("VAT", TableProblem.quoted(row.cell("VAT")), "0 % to 100 %");
            return Optional.empty();
        }
        if (row.cell("VAT").isEmpty() && (included || !recoverable)) {
            row.problem(
                    "VAT",
                    "nothing",
                    "the rate such as 20 %, since the price "
                            + (included ? "is with VAT" : "bears VAT that can't be recovered"));
        }
        return percent.map(rate -> new PriceVat(rate, included, recoverable));
    }

    private static BigDecimal delivery(CsvRow row, Optional<Offer> offer) {
        Optional<Exact.Cash> cash = row.may("delivery", Exact.CASH);
        if (cash.isEmpty()) {
            return BigDecimal.ZERO;
        }
        Optional<CurrencyUnit> own = cash.get().currency();
        boolean other = offer.isPresent()
                && own.isPresent()
                && !own.get().equals(offer.get().currency());
        if (other || cash.get().amount().signum() < 0 || cash.get().per().isPresent()) {
            row.problem(
                    "delivery",
                    TableProblem.quoted(row.cell("delivery")),
                    "an amount for each pack, 0 or more, in the currency of the price");
        }
        return cash.get().amount();
    }
}
