package costrel.harvest;

import static costrel.ReferenceTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.harvest.Cover.Contract;
import costrel.harvest.Cover.Month;
import costrel.harvest.Cover.Stock;
import costrel.harvest.Cover.VarietyCover;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class CoverTest {

    private static final double SAME = 1e-9;

    /** The factors are printed to four decimals. */
    private static final double PRINTED = 0.00005;

    private static final long USUAL_SEED = 18490901;

    private static final LocalDate JANUARY_4 = LocalDate.of(2027, 1, 4);
    private static final LocalDate JANUARY_25 = LocalDate.of(2027, 1, 25);
    private static final LocalDate MARCH_1 = LocalDate.of(2027, 3, 1);

    @Test
    void a_variety_runs_out_on_the_first_day_it_does_not_last_through() {
        // by hand: 60 kg at 5 % and 40 kg at 4 % are 4.6 kg of alpha acid in 100 kg; 30 + 40 + 50 kg are needed
        VarietyCover fuggle = only(Cover.of(
                Map.of("Fuggle", need(JANUARY_4, 30, JANUARY_25, 40, MARCH_1, 50)),
                List.of(new Stock("F1", "Fuggle", 60, 0.05), new Stock("F2", "Fuggle", 40, 0.04))));
        assertEquals(Optional.of(MARCH_1), fuggle.runsOutOn());
        assertEquals(120, fuggle.totalNeedKg(), SAME);
        assertEquals(100, fuggle.onHandKg(), SAME);
        assertEquals(4.6, fuggle.onHandAlphaKg(), SAME);
        assertEquals(5.52, fuggle.needAlphaKg().orElseThrow(), SAME);
        assertEquals(20, fuggle.shortKg(), SAME);
        assertEquals(-20, fuggle.leftKg(), SAME);
        assertEquals(
                List.of(YearMonth.of(2027, 1), YearMonth.of(2027, 3)),
                List.copyOf(fuggle.needKg().keySet()));
        assertEquals(70, Objects.requireNonNull(fuggle.needKg().get(YearMonth.of(2027, 1))), SAME);
        assertEquals(2, fuggle.months().size());
        month(fuggle.months().get(0), YearMonth.of(2027, 1), 70, 3.22, 100, 4.6, 0);
        month(fuggle.months().get(1), YearMonth.of(2027, 3), 50, 2.3, 30, 1.38, 20);
    }

    @Test
    void stock_used_to_the_last_gram_has_not_run_out() {
        // three times a tenth is not quite three tenths in binary figures
        VarietyCover cover = only(Cover.of(
                Map.of("Fuggle", need(JANUARY_4, 0.1, JANUARY_25, 0.1, MARCH_1, 0.1)),
                List.of(new Stock("F1", "Fuggle", 0.3, 0.05))));
        assertEquals(Optional.empty(), cover.runsOutOn());
        assertEquals(0, cover.shortKg());
        assertEquals(0, cover.leftKg(), SAME);
    }

    @Test
    void days_count_by_the_calendar_whatever_order_they_come_in() {
        SortedMap<LocalDate, Double> backwards = new TreeMap<>(Comparator.reverseOrder());
        backwards.putAll(need(JANUARY_4, 30, JANUARY_25, 40, MARCH_1, 50));
        List<Stock> stock = List.of(new Stock("F1", "Fuggle", 100, 0.05));
        assertEquals(
                Optional.of(MARCH_1),
                only(Cover.of(Map.of("Fuggle", backwards), stock)).runsOutOn());
    }

    @Test
    void a_variety_with_nothing_on_hand_is_short_from_its_first_gyle() {
        VarietyCover cover =
                only(Cover.of(Map.of("Target", need(JANUARY_4, 0, JANUARY_25, 12, MARCH_1, 8)), List.of()));
        assertEquals(Optional.of(JANUARY_25), cover.runsOutOn());
        assertEquals(20, cover.shortKg(), SAME);
        assertEquals(OptionalDouble.empty(), cover.alphaMean());
        assertEquals(OptionalDouble.empty(), cover.needAlphaKg());
        assertEquals(OptionalDouble.empty(), cover.months().get(0).needAlphaKg());
    }

    @Test
    void a_variety_that_nobody_brews_with_is_left_whole() {
        List<VarietyCover> covers = Cover.of(
                Map.of("Target", need(JANUARY_4, 1, JANUARY_25, 1, MARCH_1, 1)),
                List.of(new Stock("T1", "Target", 5, 0.12), new Stock("C1", "Challenger", 25, 0)));
        assertEquals(
                List.of("Challenger", "Target"),
                covers.stream().map(VarietyCover::variety).toList());
        VarietyCover challenger = covers.get(0);
        assertEquals(25, challenger.leftKg(), SAME);
        assertEquals(List.of(), challenger.months());
        assertEquals(Optional.empty(), challenger.runsOutOn());
        // alpha acid 0 is a figure, and not the same as none known
        assertEquals(OptionalDouble.of(0), challenger.needAlphaKg());
    }

    @Test
    void hops_are_neither_made_nor_lost() {
        long seed = Long.getLong("seed", USUAL_SEED);
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            String fault = "-Dseed=" + seed + ", case " + i;
            SortedMap<LocalDate, Double> need = new TreeMap<>();
            for (int gyle = random.nextInt(40); gyle > 0; gyle--) {
                need.put(JANUARY_4.plusDays(random.nextInt(365)), random.nextDouble() * 20);
            }
            List<Stock> stocks = new ArrayList<>();
            for (int lot = random.nextInt(5); lot > 0; lot--) {
                stocks.add(new Stock("L" + lot, "Fuggle", random.nextDouble() * 150, random.nextDouble() * 0.1));
            }
            for (VarietyCover cover : Cover.of(Map.of("Fuggle", need), stocks)) {
                double total =
                        need.values().stream().mapToDouble(Double::doubleValue).sum();
                assertEquals(
                        total - cover.onHandKg(), cover.shortKg() - Math.max(0, cover.leftKg()), SAME * 1000, fault);
                assertEquals(cover.shortKg() > 0, cover.runsOutOn().isPresent(), fault);
                assertEquals(sum(cover.months(), true), total, SAME * 1000, fault);
                assertEquals(sum(cover.months(), false), cover.shortKg(), SAME * 1000, fault);
                cover.runsOutOn().ifPresent(day -> {
                    assertTrue(sumTo(need, day) <= cover.onHandKg() * (1 + SAME), fault);
                    assertTrue(sumTo(need, day.plusDays(1)) > cover.onHandKg(), fault);
                });
            }
        }
    }

    @Test
    void a_contract_spreads_as_the_published_crop_years_do() {
        // USDA-ARS Corvallis: mean over least and mean over most alpha acid, 2.1250 and 0.8361 for Fuggle, and six more
        for (Map<String, String> row : ReferenceTable.read("hops/crop_years.csv")) {
            CropYearAlpha years = published(row);
            Contract contract = Cover.contract(100, years.mean(), 0, years);
            assertEquals(100, contract.meanKg(), SAME, row.toString());
            assertEquals(100 * number(row, "factor at least"), contract.mostKg(), 100 * PRINTED, row.toString());
            assertEquals(100 * number(row, "factor at most"), contract.leastKg(), 100 * PRINTED, row.toString());
            assertEquals(number(row, "factor at least"), years.massFactor(years.low()), PRINTED, row.toString());
            assertEquals(number(row, "factor at most"), years.massFactor(years.high()), PRINTED, row.toString());
            // whatever the year brings, the alpha acid in the copper is the same
            assertEquals(contract.alphaKg(), contract.mostKg() * years.low(), SAME, row.toString());
            assertEquals(contract.alphaKg(), contract.leastKg() * years.high(), SAME, row.toString());
        }
    }

    @Test
    void what_is_left_is_not_contracted_for_again() {
        // by hand: 120 kg at 5 % less 20 kg left are 5 kg of alpha acid; Fuggle of Corvallis 2.4, 5.1 and 6.1 %
        CropYearAlpha fuggle = new CropYearAlpha("Fuggle", 13, 0.024, 0.051, 0.061, "USDA 19209");
        Contract contract = Cover.contract(120, 0.05, 20, fuggle);
        assertEquals(5, contract.alphaKg(), SAME);
        assertEquals("Fuggle", contract.variety());
        assertEquals(5 / 0.061, contract.leastKg(), SAME);
        assertEquals(5 / 0.051, contract.meanKg(), SAME);
        assertEquals(5 / 0.024, contract.mostKg(), SAME);
        for (String words : List.of("5.00 kg of alpha acid", "13 crop years", "2.40 % to 6.10 %", "USDA 19209")) {
            assertTrue(contract.basis().contains(words), contract.basis());
        }
        // the same from the year's cover: 120 kg needed of 140 kg in store at 5 %
        VarietyCover cover = only(Cover.of(
                Map.of("Fuggle", need(JANUARY_4, 40, JANUARY_25, 40, MARCH_1, 40)),
                List.of(new Stock("F1", "Fuggle", 140, 0.05))));
        assertEquals(contract.mostKg(), Cover.contract(cover, fuggle).mostKg(), SAME);
        Contract none = Cover.contract(20, 0.05, 30, fuggle);
        assertEquals(0, none.mostKg());
        assertEquals("what is left is enough", none.basis());
    }

    @Test
    void figures_that_cannot_be_are_refused() {
        CropYearAlpha fuggle = new CropYearAlpha("Fuggle", 13, 0.024, 0.051, 0.061, "USDA 19209");
        refused("stock of lot F1", () -> new Stock("F1", "Fuggle", Double.NaN, 0.05));
        refused("stock of lot F1", () -> new Stock("F1", "Fuggle", -1, 0.05));
        refused("alpha acid of lot F1", () -> new Stock("F1", "Fuggle", 1, 5));
        refused("hop lot", () -> new Stock(" ", "Fuggle", 1, 0.05));
        Stock lot = new Stock("F1", "Fuggle", 1, 0.05);
        refused("hop lot F1: expected every lot once", () -> Cover.of(Map.of(), List.of(lot, lot)));
        refused(
                "need of Fuggle on 2027-01-04",
                () -> Cover.of(Map.of("Fuggle", need(JANUARY_4, -1, JANUARY_25, 1, MARCH_1, 1)), List.of()));
        refused("need of Fuggle", () -> Cover.contract(-1, 0.05, 0, fuggle));
        refused("alpha acid of the need", () -> Cover.contract(1, 0, 0, fuggle));
        refused("alpha acid of the need", () -> Cover.contract(1, 5.1, 0, fuggle));
        refused("expected those of Target, found those of Fuggle", () -> Cover.contract(cover("Target", 0.05), fuggle));
        refused("expected some alpha acid on hand", () -> Cover.contract(cover("Fuggle", 0), fuggle));
        refused("left of Fuggle", () -> Cover.contract(1, 0.05, Double.NaN, fuggle));
        refused("rising order", () -> new CropYearAlpha("Fuggle", 13, 0.051, 0.024, 0.061, "USDA 19209"));
        refused("rising order", () -> new CropYearAlpha("Fuggle", 13, 0, 0.024, 0.061, "USDA 19209"));
        refused("rising order", () -> new CropYearAlpha("Fuggle", 13, 2.4, 5.1, 6.1, "USDA 19209"));
        refused("years", () -> new CropYearAlpha("Fuggle", 0, 0.024, 0.051, 0.061, "USDA 19209"));
        refused("source", () -> new CropYearAlpha("Fuggle", 13, 0.024, 0.051, 0.061, ""));
        refused("alpha acid of Fuggle", () -> fuggle.massFactor(0));
        refused("alpha acid of Fuggle", () -> fuggle.massFactor(5.1));
    }

    private static CropYearAlpha published(Map<String, String> row) {
        return new CropYearAlpha(
                Objects.requireNonNull(row.get("variety")),
                10,
                number(row, "least") / 100,
                number(row, "mean") / 100,
                number(row, "most") / 100,
                "USDA " + row.get("accession"));
    }

    private static SortedMap<LocalDate, Double> need(
            LocalDate first, double firstKg, LocalDate second, double secondKg, LocalDate third, double thirdKg) {
        return new TreeMap<>(Map.of(first, firstKg, second, secondKg, third, thirdKg));
    }

    private static VarietyCover cover(String variety, double alpha) {
        return only(Cover.of(Map.of(), List.of(new Stock("L1", variety, 10, alpha))));
    }

    private static VarietyCover only(List<VarietyCover> covers) {
        assertEquals(1, covers.size());
        return covers.get(0);
    }

    private static void month(
            Month found,
            YearMonth month,
            double kg,
            double alphaKg,
            double onHand,
            double onHandAlpha,
            double shortKg) {
        assertEquals(month, found.month());
        assertEquals(kg, found.needKg(), SAME);
        assertEquals(alphaKg, found.needAlphaKg().orElseThrow(), SAME);
        assertEquals(onHand, found.onHandKg(), SAME);
        assertEquals(onHandAlpha, found.onHandAlphaKg(), SAME);
        assertEquals(shortKg, found.shortKg(), SAME);
    }

    private static double sum(List<Month> months, boolean need) {
        return months.stream()
                .mapToDouble(month -> need ? month.needKg() : month.shortKg())
                .sum();
    }

    private static double sumTo(SortedMap<LocalDate, Double> need, LocalDate day) {
        return need.headMap(day).values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    private static void refused(String words, Executable attempt) {
        String message = String.valueOf(
                assertThrows(IllegalArgumentException.class, attempt).getMessage());
        assertTrue(message.contains(words), () -> "expected a message with '" + words + "', found: " + message);
    }
}
