package costrel.tables;

import costrel.cost.ContainerCharges;
import costrel.cost.ContainerCharges.PackageWeight;
import costrel.cost.ContainerCharges.PackagingFee;
import costrel.cost.ContainerCharges.TripLoss;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Puts together what a brewery's containers cost beside what is bought for them, of three files that may each be left out. */
public final class ContainerChargesReader {

    private ContainerChargesReader() {}

    /**
     * Reads the files. The built-in fees hold on every day that the brewery's own don't cover.
     *
     * @param losses container-losses.csv
     * @param weights packaging-weights.csv
     * @param fees packaging-fees.csv
     * @param containers the containers there are
     * @return the charges, or everything that is wrong with any of the files, unknown names too
     */
    public static Loaded<ContainerCharges> read(
            Optional<CsvSource> losses,
            Optional<CsvSource> weights,
            Optional<CsvSource> fees,
            Collection<String> containers) {
        List<TableProblem> problems = new ArrayList<>();
        List<TripLoss> readLosses = rows(losses.map(ContainerLossReader::read), problems);
        losses.ifPresent(file -> problems.addAll(NameCheck.containerLosses(file, containers)));
        List<PackagingFee> readFees = fees.isPresent()
                ? rows(fees.map(IngredientTables::packagingFees), problems)
                : IngredientTables.packagingFees();
        List<PackageWeight> readWeights = rows(weights.map(PackagingWeightReader::read), problems);
        // A material may stand in a file of fees that can't be read; then it isn't called unknown.
        List<String> materials =
                readFees.stream().map(PackagingFee::material).distinct().toList();
        if (!materials.isEmpty()) {
            weights.ifPresent(file -> problems.addAll(NameCheck.packagingWeights(file, containers, materials)));
        }
        return problems.isEmpty()
                ? Loaded.of(new ContainerCharges(readLosses, readWeights, readFees), List.of())
                : Loaded.refused(problems);
    }

    private static <T> List<T> rows(Optional<Loaded<List<T>>> file, List<TableProblem> problems) {
        if (file.isEmpty()) {
            return List.of();
        }
        problems.addAll(file.get().problems());
        return file.get().sound() ? file.get().orThrow() : List.of();
    }
}
