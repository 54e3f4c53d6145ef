package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import costrel.cost.ContainerCharges;
import costrel.cost.ContainerCharges.PackagingFee;
import costrel.cost.ContainerCharges.TripLoss;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What casks lost on trips and packaging by weight cost, as a brewery's files state it. */
class ContainerChargesTest {

    /** Defra and PackUK, base fees of 2025-26 in GBP a tonne, as the trade press reported them in June 2025. */
    private static final Map<String, Integer> BASE_FEES = Map.of(
            "glass",
            192,
            "aluminium",
            266,
            "steel",
            259,
            "paper and card",
            196,
            "plastic",
            423,
            "fibre composite",
            461,
            "wood",
            280,
            "other",
            259);

    @Test
    void the_base_fees_are_the_published_ones() {
        List<PackagingFee> fees = IngredientTables.packagingFees();
        assertEquals(
                BASE_FEES,
                fees.stream()
                        .collect(Collectors.toMap(
                                PackagingFee::material, fee -> fee.perTonne().intValueExact())));
        for (PackagingFee fee : fees) {
            assertEquals("GBP", fee.currency().getCode());
            assertEquals(LocalDate.of(2025, 4, 1), fee.validFrom());
            assertEquals(Optional.of(LocalDate.of(2026, 3, 31)), fee.validUntil());
        }
    }

    @Test
    void fees_of_a_brewery_are_alone_on_their_days_and_the_known_ones_stay_on_the_others() {
        List<PackagingFee> fees = IngredientTables.packagingFees(CsvSource.text("packaging-fees.csv", """
                        material,valid from,valid until,fee,source
                        Glass,2025-06-01,2025-06-30,1 GBP,a notice for June
                        glass,2025-09-01,2025-09-30,2 GBP,a notice for September
                        glass,2026-04-01,,3 GBP,a notice for the year after
                        cork,2026-04-01,,4 GBP,a notice on cork
                        """))
                .orThrow();
        Map.of(
                        "2025-05-31", 192,
                        "2025-06-01", 1,
                        "2025-06-30", 1,
                        "2025-07-01", 192,
                        "2025-08-31", 192,
                        "2025-09-30", 2,
                        "2025-10-01", 192,
                        "2026-03-31", 192,
                        "2026-04-01", 3)
                .forEach((day, fee) -> assertEquals(List.of(fee), on(fees, "glass", LocalDate.parse(day)), day));
        assertEquals(List.of(4), on(fees, "cork", LocalDate.of(2026, 11, 25)));
        assertEquals(List.of(423), on(fees, "plastic", LocalDate.of(2025, 6, 15)));
    }

    private static final List<String> CONTAINERS = List.of("firkin", "500 mL bottle");

    @Test
    void a_brewerys_files_become_its_charges_to_the_gram_and_the_penny() {
        ContainerCharges charges = ContainerChargesReader.read(
                        Optional.of(CsvSource.text("container-losses.csv", """
                                container,value,lost per trip,valid from,valid until,currency
                                firkin,£65.00,2.5 %,2026-01-01,2026-06-30,
                                Firkin,70,2 %,2026-07-01,,GBP
                                """)),
                        Optional.of(CsvSource.text("packaging-weights.csv", """
                                container,material,weight,containers,part
                                500 mL bottle,glass,290 g,,
                                500 mL bottle,paper and card,0.24 kg,12,carton
                                500 mL bottle,paper and card,1 g,,label
                                500 mL bottle,cork,1 oz,,
                                """)),
                        Optional.of(CsvSource.text("packaging-fees.csv", """
                                material,valid from,fee,source
                                cork,2026-04-01,4 GBP,a notice on cork
                                """)),
                        CONTAINERS)
                .orThrow();
        assertEquals(
                List.of(
                        new TripLoss(
                                "firkin",
                                Money.parse("GBP 65.00"),
                                new BigDecimal("0.025"),
                                LocalDate.of(2026, 1, 1),
                                Optional.of(LocalDate.of(2026, 6, 30)),
                                "container-losses.csv:2"),
                        new TripLoss(
                                "Firkin",
                                Money.parse("GBP 70.00"),
                                new BigDecimal("0.02"),
                                LocalDate.of(2026, 7, 1),
                                Optional.empty(),
                                "container-losses.csv:3")),
                charges.losses());
        // Weights and Measures Act 1985 Sch. 1: the ounce is a sixteenth of 0.45359237 kg.
        assertEquals(
                List.of("0.29 1", "0.24 12", "0.001 1", "0.028349523125 1"),
                charges.weights().stream()
                        .map(weight -> weight.massKg().toPlainString() + " " + weight.forContainers())
                        .toList());
        assertEquals(9, charges.fees().size());
    }

    @Test
    void without_files_only_the_known_fees_are_there() {
        ContainerCharges charges = ContainerChargesReader.read(
                        Optional.empty(), Optional.empty(), Optional.empty(), CONTAINERS)
                .orThrow();
        assertEquals(new ContainerCharges(List.of(), List.of(), IngredientTables.packagingFees()), charges);
    }

    @Test
    void unknown_containers_and_materials_are_told_with_the_nearest() {
        List<TableProblem> problems = ContainerChargesReader.read(
                        Optional.of(CsvSource.text("container-losses.csv", """
                                container,value,lost per trip,valid from
                                firkn,£65.00,2 %,2026-01-01
                                """)),
                        Optional.of(CsvSource.text("packaging-weights.csv", """
                                container,material,weight
                                500 mL bottel,glass,290 g
                                firkin,plastik,12 g
                                """)),
                        Optional.empty(),
                        CONTAINERS)
                .problems();
        assertEquals(
                List.of(
                        "container-losses.csv:2: container: expected a known container, the nearest being firkin, "
                                + "found 'firkn'",
                        "packaging-weights.csv:2: container: expected a known container, the nearest being "
                                + "500 mL bottle, found '500 mL bottel'",
                        "packaging-weights.csv:3: material: expected a known material with a packaging fee, the "
                                + "nearest being plastic, found 'plastik'"),
                problems.stream().map(TableProblem::text).toList());
    }

    private static List<Integer> on(List<PackagingFee> fees, String material, LocalDate day) {
        return fees.stream()
                .filter(fee -> Names.folded(fee.material()).equals(material)
                        && !day.isBefore(fee.validFrom())
                        && (fee.validUntil().isEmpty()
                                || !day.isAfter(fee.validUntil().get())))
                .map(PackagingFee::perTonne)
                .map(BigDecimal::intValueExact)
                .toList();
    }
}
