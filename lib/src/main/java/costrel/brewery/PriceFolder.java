package costrel.brewery;

import costrel.buying.Carriage;
import costrel.buying.ExchangeRate;
import costrel.buying.ExchangeRates;
import costrel.buying.PriceAdjustment;
import costrel.buying.PriceList;
import costrel.buying.PriceRow;
import costrel.buying.PriceTerms;
import costrel.tables.AdjustmentReader;
import costrel.tables.CarriageReader;
import costrel.tables.CsvSource;
import costrel.tables.ExchangeRateReader;
import costrel.tables.Loaded;
import costrel.tables.NameCheck;
import costrel.tables.PriceReader;
import costrel.tables.TableProblem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads what a brewery buys at: price lists, surcharges and rebates, carriage, rates of exchange. */
final class PriceFolder {

    private static final String SURCHARGES = "surcharges.csv";
    private static final String CARRIAGE = "carriage.csv";

    private PriceFolder() {}

    /**
     * All prices under their terms; what is wrong goes to the reader.
     *
     * @param reader the folder's reader
     * @param greatestAgeDays how many days old a rate of exchange may be; empty where any age will do
     */
    static PriceList prices(FolderReader reader, OptionalInt greatestAgeDays) {
        List<PriceList> lists = new ArrayList<>();
        boolean sound = true;
        for (Path file : reader.files("prices*.csv")) {
            Loaded<PriceList> loaded = PriceReader.list(CsvSource.file(file));
            sound &= loaded.sound();
            reader.take(loaded).ifPresent(lists::add);
        }
        PriceList prices = PriceList.ofAll(lists);
        reader.problems(amongLists(prices));
        List<PriceAdjustment> adjustments = reader.wanted(SURCHARGES, AdjustmentReader::read, List::of);
        List<Carriage> carriages = reader.wanted(CARRIAGE, CarriageReader::read, List::of);
        List<ExchangeRate> rates = reader.wanted("exchange-rates.csv", ExchangeRateReader::read, List::of);
        if (sound) {
            checkNames(reader, prices.rows());
        }
        return prices.with(new PriceTerms(adjustments, carriages, new ExchangeRates(rates, greatestAgeDays)));
    }

    /** What one list has against another; what is wrong within a list its own reader has told. */
    private static List<TableProblem> amongLists(PriceList prices) {
        List<TableProblem> problems = new ArrayList<>();
        for (PriceList.Overlap overlap : prices.overlaps()) {
            problems.add(at(
                    overlap.second(),
                    "valid from",
                    overlap.second().validFrom().toString(),
                    "a day after the price of " + overlap.first().item() + " from "
                            + overlap.first().supplier() + " in "
                            + overlap.first().origin() + " ends"));
        }
        for (PriceList.Break broken : prices.breaksOutOfOrder()) {
            problems.add(at(
                    broken.more(),
                    "minimum quantity",
                    "quantity breaks out of order: " + broken.text(),
                    "a larger order that is no dearer by the unit"));
        }
        return problems;
    }

    private static TableProblem at(PriceRow row, String column, String found, String expected) {
        return new TableProblem(row.place().file(), row.place().line(), column, found, expected);
    }

    /** A surcharge or carriage of a supplier whose name is misspelt would be left out of every cost without a word. */
    private static void checkNames(FolderReader reader, List<PriceRow> rows) {
        Set<String> suppliers = rows.stream().map(PriceRow::supplier).collect(Collectors.toSet());
        if (reader.exists(SURCHARGES)) {
            Set<String> items = rows.stream().map(PriceRow::item).collect(Collectors.toSet());
            reader.problems(NameCheck.surcharges(reader.source(SURCHARGES), suppliers, items));
        }
        if (reader.exists(CARRIAGE)) {
            reader.problems(NameCheck.carriage(reader.source(CARRIAGE), suppliers));
        }
    }
}
