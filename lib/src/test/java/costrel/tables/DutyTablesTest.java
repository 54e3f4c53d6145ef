package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.duty.Duty;
import costrel.duty.DutyFigure;
import costrel.duty.DutyInput;
import costrel.duty.DutySchedule;
import costrel.duty.ProductionYears;
import costrel.duty.YearVolume;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Duty of every country in the tables that ship, and of those that a brewery adds to them. */
class DutyTablesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static DutySchedule country(Map<String, DutySchedule> duty, String name) {
        return Objects.requireNonNull(duty.get(name), name);
    }

    private static DutyFigure run(
            DutySchedule schedule,
            String litres,
            int count,
            double plato,
            String strength,
            LocalDate dutyOn,
            Optional<YearVolume> year) {
        return Duty.of(
                new DutyInput(
                        new Container(
                                litres + " L",
                                ContainerKind.KEG,
                                new BigDecimal(litres),
                                new BigDecimal(litres),
                                BigDecimal.ZERO,
                                BigDecimal.ZERO,
                                false,
                                false,
                                List.of(),
                                List.of()),
                        count,
                        Gravity.ofPlato(plato),
                        Gravity.ofDegrees(10),
                        Optional.of(new BigDecimal(strength)),
                        DAY,
                        dutyOn,
                        DAY,
                        ProductionYears.unknown(),
                        true,
                        Optional.empty(),
                        year),
                schedule);
    }

    static List<Map<String, String>> published() {
        return ReferenceTable.read("duty/duty_elsewhere.csv");
    }

    @ParameterizedTest
    @MethodSource("published")
    void the_tables_that_ship_give_the_duty_of_each_country(Map<String, String> row) {
        DutyFigure found = run(
                country(IngredientTables.duty(), String.valueOf(row.get("country"))),
                String.valueOf(row.get("litres")),
                (int) ReferenceTable.number(row, "count"),
                ReferenceTable.number(row, "plato"),
                String.valueOf(row.get("strength")),
                DAY,
                Optional.empty());
        assertEquals(
                0,
                new BigDecimal(row.get("duty")).compareTo(found.duty().getAmount()),
                () -> row + ": " + found.duty());
    }

    @Test
    void a_small_american_brewery_pays_the_lowest_rate_on_its_first_barrels() {
        // 27 CFR 25.156: 50 L are 0.42608 barrels; 26 USC 5051: $3.50; 42.61 barrels of a hundred kegs.
        DutyFigure found = run(
                country(IngredientTables.duty(), "US"),
                "50",
                100,
                12,
                "5.0",
                DAY,
                Optional.of(new YearVolume(new BigDecimal("1200"), BigDecimal.ZERO)));
        assertEquals(new BigDecimal("149.14"), found.duty().getAmount());
    }

    @Test
    void a_country_is_found_by_what_else_it_is_called() {
        Map<String, DutySchedule> duty = IngredientTables.duty();
        assertSame(country(duty, "United States"), country(duty, "US"));
        assertSame(country(duty, "United States"), country(duty, "USA"));
        assertSame(country(duty, "EU minimum by % vol"), country(duty, "EU"));
    }

    @Test
    void rates_of_a_brewery_take_the_place_of_the_known_ones_from_their_first_day() {
        Map<String, DutySchedule> duty = IngredientTables.duty(new DutyFiles(
                        Optional.of(CsvSource.text("duty-rates.csv", """
                                country,valid from,valid until,strength from,strength under,draught,rate,source
                                uk,2027-02-01,,0 %,1.3 %,any,0.00 GBP,an Act of 2027
                                uk,2027-02-01,,1.3 %,,any,25.00 GBP,an Act of 2027
                                """)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(CsvSource.text("duty-rates-by-volume.csv", """
                                country,valid from,valid until,strength from,draught,rate,source
                                Germany,2026-06-01,2026-06-30,0 %,any,1.00 EUR,a law for June
                                """))))
                .orThrow();
        DutySchedule uk = country(duty, "UK");
        BigDecimal strength = new BigDecimal("4.2");
        // Finance Act 2026 s.89 to the day before.
        assertEquals(
                new BigDecimal("22.58"),
                uk.rate(LocalDate.of(2027, 1, 31), strength, false).ratePerLpa());
        assertEquals(
                new BigDecimal("25.00"),
                uk.rate(LocalDate.of(2027, 2, 1), strength, true).ratePerLpa());
        assertTrue(uk.bands().size() > 10, "the bands of relief are not touched");
        DutySchedule germany = country(duty, "Germany");
        // Biersteuergesetz 2009 § 2 before and after a month of another rate.
        Map.of(
                        LocalDate.of(2026, 5, 31), "0.787",
                        LocalDate.of(2026, 6, 1), "1.00",
                        LocalDate.of(2026, 6, 30), "1.00",
                        LocalDate.of(2026, 7, 1), "0.787")
                .forEach((day, rate) -> assertEquals(
                        new BigDecimal(rate), germany.rate(day, strength, false).ratePerLpa(), day.toString()));
    }

    @Test
    void a_country_keeps_its_names_when_a_brewery_changes_how_it_rounds() {
        Map<String, DutySchedule> duty = IngredientTables.duty(new DutyFiles(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(CsvSource.text("duty-bases.csv", """
                                country,charged by,duty,also called,source
                                usa,US barrel,up to 0,Uncle Sam,a law
                                """)),
                        Optional.empty()))
                .orThrow();
        for (String name : List.of("US", "USA", "Uncle Sam")) {
            assertSame(country(duty, "United States"), country(duty, name));
        }
        // 26 USC 5051: $18 on the barrel of 31 gallons of 3.785411784 L, up to the whole dollar as the row above says.
        assertEquals(
                new BigDecimal("18.00"),
                run(country(duty, "US"), "117.347765304", 1, 12, "5.0", DAY, Optional.empty())
                        .duty()
                        .getAmount());
    }

    @Test
    void a_hole_between_two_sets_of_rates_is_told_on_the_day_it_matters() {
        DutySchedule nowhere = country(
                IngredientTables.duty(new DutyFiles(
                                Optional.of(CsvSource.text("duty-rates.csv", """
                                        country,valid from,valid until,strength from,draught,rate,source
                                        Nowhere,2026-01-01,2026-01-31,0 %,any,10 CHF,an Act
                                        nowhere,2026-03-01,,0 %,any,11 CHF,another Act
                                        """)),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty()))
                        .orThrow(),
                "Nowhere");
        BigDecimal strength = new BigDecimal("4.2");
        assertEquals(
                new BigDecimal("11"),
                nowhere.rate(LocalDate.of(2026, 3, 1), strength, true).ratePerLpa());
        String refusal = String.valueOf(assertThrows(
                        IllegalArgumentException.class, () -> nowhere.rate(LocalDate.of(2026, 2, 1), strength, true))
                .getMessage());
        assertTrue(refusal.contains("2026-02-01") && refusal.contains("supply the rates"), refusal);
    }

    @Test
    void a_country_that_charges_by_pure_alcohol_may_round_in_its_own_way() {
        Map<String, DutySchedule> duty = IngredientTables.duty(new DutyFiles(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(CsvSource.text("duty-bases.csv", """
                                country,charged by,strength,duty,also called,source
                                Nowhere,litre of pure alcohol,down to 0,up to 0,The Nowhere; NW,Beer Act of Nowhere s.1
                                """)),
                        Optional.of(CsvSource.text("duty-rates-by-volume.csv", """
                                country,valid from,strength from,draught,rate,source
                                Nowhere,2026-01-01,0 %,any,20 CHF,Beer Act of Nowhere s.2
                                """))))
                .orThrow();
        // 30 L × 10 × 4 % = 12 L of pure alcohol at 20 CHF; a strength of 4.9 % counts as 4 %.
        DutyFigure found = run(country(duty, "NW"), "30", 10, 12, "4.9", DAY, Optional.empty());
        assertEquals(new BigDecimal("240.00"), found.duty().getAmount());
        assertEquals("CHF", found.duty().getCurrencyUnit().getCode());
    }
}
