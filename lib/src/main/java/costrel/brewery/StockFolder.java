package costrel.brewery;

import costrel.stock.Movement;
import costrel.stock.StockLedger;
import costrel.stock.UnitCost;
import costrel.tables.CsvSource;
import costrel.tables.Loaded;
import costrel.tables.StandardCostReader;
import costrel.tables.StockReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Reads what a brewery has in store and what its goods are set to cost. */
final class StockFolder {

    private StockFolder() {}

    /**
     * One ledger of all its files; what is wrong goes to the reader.
     *
     * @param reader the folder's reader
     * @param currency what the ledger is kept in; empty where brewery.csv doesn't say it
     * @return the ledger; empty where there is no file, or one with a fault
     */
    static Optional<StockLedger> ledger(FolderReader reader, Optional<CurrencyUnit> currency) {
        List<Path> files = reader.files("stock*.csv");
        List<Movement> movements = new ArrayList<>();
        boolean sound = true;
        for (Path file : files) {
            Loaded<List<Movement>> loaded = StockReader.read(CsvSource.file(file));
            sound &= loaded.sound();
            reader.take(loaded).ifPresent(movements::addAll);
        }
        if (files.isEmpty() || !sound || currency.isEmpty()) {
            return Optional.empty();
        }
        return reader.take(StockReader.ledger(currency.get(), movements));
    }

    /**
     * The standard costs; what is wrong goes to the reader.
     *
     * @param reader the folder's reader
     * @param currency what they are in; empty where brewery.csv doesn't say it
     * @param ledger the ledger whose goods they value; empty where there is none
     * @return the costs in file order; none where there is no file, or one with a fault
     */
    static List<UnitCost> standardCosts(
            FolderReader reader, Optional<CurrencyUnit> currency, Optional<StockLedger> ledger) {
        return reader.wanted(
                "standard-costs.csv", source -> StandardCostReader.read(source, currency, ledger), List::of);
    }
}
