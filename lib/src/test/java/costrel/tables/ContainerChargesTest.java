package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import costrel.cost.ContainerCharges.PackagingFee;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
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
