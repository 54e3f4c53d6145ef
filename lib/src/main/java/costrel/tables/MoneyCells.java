package costrel.tables;

import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** What several tables of money have in common: the currency of a row, and the days it is valid. */
final class MoneyCells {

    private MoneyCells() {}

    /** The currency of a row, from the amount itself or from a column "currency"; both must agree, one must be there. */
    static Optional<CurrencyUnit> currency(CsvRow row, String column, Optional<Exact.Cash> cash) {
        return currency(row, row.column("currency", Exact.CURRENCY), row.column(column, Exact.CASH), cash);
    }

    /** The same of columns that were looked up before. */
    static Optional<CurrencyUnit> currency(
            CsvRow row, CsvColumn<CurrencyUnit> currency, CsvColumn<Exact.Cash> column, Optional<Exact.Cash> cash) {
        Optional<CurrencyUnit> stated = row.may(currency);
        if (cash.isEmpty() || (stated.isEmpty() && !row.cell(currency).isEmpty())) {
            return Optional.empty();
        }
        Optional<CurrencyUnit> own = cash.get().currency();
        if (own.isPresent() && stated.isPresent() && !own.get().equals(stated.get())) {
            row.problem(
                    column.name(),
                    TableProblem.quoted(row.cell(column)),
                    "an amount in " + stated.get() + ", as the row states it");
            return Optional.empty();
        }
        if (own.isEmpty() && stated.isEmpty()) {
            row.problem(
                    column.name(),
                    TableProblem.quoted(row.cell(column)),
                    "an amount with its currency such as £12.50, or a currency in its column");
        }
        return own.isPresent() ? own : stated;
    }

    /** The last day of a row's validity, which isn't before the first. */
    static Optional<LocalDate> until(CsvRow row, Optional<LocalDate> from) {
        return until(row, row.column("valid until", Cells.DATE), from);
    }

    /** The same of a column that was looked up before. */
    static Optional<LocalDate> until(CsvRow row, CsvColumn<LocalDate> column, Optional<LocalDate> from) {
        Optional<LocalDate> until = row.may(column);
        if (from.isPresent() && until.isPresent() && until.get().isBefore(from.get())) {
            row.problem(column.name(), TableProblem.quoted(row.cell(column)), "a day not before " + from.get());
        }
        return until;
    }
}
