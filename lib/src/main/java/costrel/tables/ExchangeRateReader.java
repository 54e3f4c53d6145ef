package costrel.tables;

import costrel.buying.ExchangeRate;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Reads exchange-rates.csv: from, to, date, rate. The rate is how much of the second currency one unit of the first buys. */
public final class ExchangeRateReader {

    private static final Columns COLUMNS = Columns.required("from", "to", "date", "rate");

    private static final CellKind<BigDecimal> RATE =
            CellKind.of("a number over 0 such as 1.1634", ExchangeRateReader::rate);

    private ExchangeRateReader() {}

    /**
     * Reads the table. Two rates of one pair on a day are a problem.
     *
     * @param source the file
     * @return the rates in file order, or what is wrong
     */
    public static Loaded<List<ExchangeRate>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<ExchangeRate> rates = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                Optional<CurrencyUnit> from = row.need("from", Exact.CURRENCY);
                Optional<CurrencyUnit> to = row.need("to", Exact.CURRENCY);
                Optional<LocalDate> day = row.need("date", Cells.DATE);
                Optional<BigDecimal> rate = row.need("rate", RATE);
                if (from.isPresent() && to.isPresent() && from.equals(to)) {
                    row.problem("to", TableProblem.quoted(row.cell("to")), "another currency than in from");
                }
                if (from.isPresent() && to.isPresent() && day.isPresent()) {
                    row.once(seen, "date", from.get() + "|" + to.get() + "|" + day.get());
                }
                row.build(
                                "rate",
                                () -> new ExchangeRate(
                                        from.orElseThrow(),
                                        to.orElseThrow(),
                                        day.orElseThrow(),
                                        rate.orElseThrow(),
                                        source.name() + ":" + row.line()))
                        .ifPresent(rates::add);
            }
            return table.loaded(() -> List.copyOf(rates));
        }
    }

    private static BigDecimal rate(String text) {
        BigDecimal rate = Cells.decimal(text);
        if (rate.signum() <= 0) {
            throw new IllegalArgumentException(text);
        }
        return rate;
    }
}
