package costrel.harvest;

import costrel.recipe.Names;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Hops on hand against what the year's gyles need, by variety and month: when a variety runs out, and what to contract for of
 * the next harvest. Each kilogram of a variety is taken to have the mean alpha acid of its lots on hand.
 */
public final class Cover {

    /** A need that passes the stock by less than this part of it is rounding, not a shortage. */
    private static final double ROUNDING = 1e-9;

    private Cover() {}

    /**
     * A lot on hand.
     *
     * @param lot lot number
     * @param variety its variety
     * @param kg kilograms on hand, 0 or more
     * @param alpha alpha acid, mass fraction as is, 0 to under 1
     */
    public record Stock(String lot, String variety, double kg, double alpha) {
        public Stock {
            Figures.named("hop lot", lot);
            Figures.named("variety of lot " + lot, variety);
            kg = Figures.notNegative("stock of lot " + lot, kg, " kg");
            alpha = Figures.shareUnderOne("alpha acid of lot " + lot, alpha);
        }
    }

    /**
     * A month in which a variety is brewed with.
     *
     * @param month the month
     * @param needKg kilograms that the month's gyles need
     * @param needAlphaKg kilograms of alpha acid in them; empty with nothing of the variety on hand to read it by
     * @param onHandKg kilograms on hand when the month begins
     * @param onHandAlphaKg kilograms of alpha acid on hand when the month begins
     * @param shortKg kilograms of the month's need that there are none for
     */
    public record Month(
            YearMonth month,
            double needKg,
            OptionalDouble needAlphaKg,
            double onHandKg,
            double onHandAlphaKg,
            double shortKg) {}

    /**
     * A variety over the year.
     *
     * @param variety the variety
     * @param months the months in which it is brewed with, in their order
     * @param onHandKg kilograms on hand
     * @param onHandAlphaKg kilograms of alpha acid on hand
     * @param runsOutOn the first brewing day that the stock doesn't last through; empty where it lasts
     */
    public record VarietyCover(
            String variety, List<Month> months, double onHandKg, double onHandAlphaKg, Optional<LocalDate> runsOutOn) {
        public VarietyCover {
            months = List.copyOf(months);
        }

        /**
         * Kilograms needed by month.
         *
         * @return the months in their order
         */
        public SortedMap<YearMonth, Double> needKg() {
            TreeMap<YearMonth, Double> need = new TreeMap<>();
            months.forEach(month -> need.put(month.month(), month.needKg()));
            return need;
        }

        /**
         * Kilograms needed in all.
         *
         * @return sum over the months
         */
        public double totalNeedKg() {
            return months.stream().mapToDouble(Month::needKg).sum();
        }

        /**
         * What is left when all is brewed.
         *
         * @return kg; negative where the variety is short
         */
        public double leftKg() {
            return onHandKg - totalNeedKg();
        }

        /**
         * What is wanting when all is brewed.
         *
         * @return kg, 0 where the stock lasts
         */
        public double shortKg() {
            return shortOf(onHandKg, totalNeedKg());
        }

        /**
         * Mean alpha acid of the lots on hand, each by its weight.
         *
         * @return mass fraction as is; empty with nothing on hand
         */
        public OptionalDouble alphaMean() {
            return onHandKg > 0 ? OptionalDouble.of(onHandAlphaKg / onHandKg) : OptionalDouble.empty();
        }

        /**
         * Alpha acid in all that is needed.
         *
         * @return kg of alpha acid; empty with nothing on hand to read it by
         */
        public OptionalDouble needAlphaKg() {
            return alphaMean().isPresent()
                    ? OptionalDouble.of(totalNeedKg() * alphaMean().getAsDouble())
                    : OptionalDouble.empty();
        }
    }

    /**
     * What to contract for of the next harvest.
     *
     * @param alphaKg kilograms of alpha acid that the contract is to bring
     * @param leastKg kilograms that do in a year as rich as the richest published
     * @param meanKg kilograms that do in a mean year
     * @param mostKg kilograms that are needed in a year as lean as the leanest published
     * @param published the crop years behind the range
     */
    public record Contract(double alphaKg, double leastKg, double meanKg, double mostKg, CropYearAlpha published) {

        /**
         * The variety.
         *
         * @return its name
         */
        public String variety() {
            return published.variety();
        }

        /**
         * What the range rests on, in words.
         *
         * @return the alpha acid wanted and the published crop years
         */
        public String basis() {
            return alphaKg == 0
                    ? "what is left is enough"
                    : Figures.kg(alphaKg) + " of alpha acid; " + published.text();
        }
    }

    /**
     * Holds the lots on hand against the need.
     *
     * @param needKgByVariety kilograms by variety and brewing day, 0 or more
     * @param stocks the lots on hand, each once
     * @return a line for each variety that is needed or on hand, by name
     * @throws IllegalArgumentException for a need under 0, a variety without a name or a lot that is there twice
     */
    public static List<VarietyCover> of(
            Map<String, ? extends Map<LocalDate, Double>> needKgByVariety, Collection<Stock> stocks) {
        TreeMap<String, Map<LocalDate, Double>> needs = new TreeMap<>(needKgByVariety);
        TreeMap<String, List<Stock>> lots = new TreeMap<>();
        Set<String> seen = new HashSet<>();
        for (Stock stock : stocks) {
            if (!seen.add(stock.lot())) {
                throw new IllegalArgumentException(
                        "hop lot " + stock.lot() + ": expected every lot once, found it twice");
            }
            needs.putIfAbsent(stock.variety(), Map.of());
            lots.computeIfAbsent(stock.variety(), variety -> new ArrayList<>()).add(stock);
        }
        List<VarietyCover> covers = new ArrayList<>();
        needs.forEach((variety, need) -> covers.add(cover(variety, need, lots.getOrDefault(variety, List.of()))));
        return List.copyOf(covers);
    }

    private static VarietyCover cover(String variety, Map<LocalDate, Double> needKg, List<Stock> lots) {
        Figures.named("variety", variety);
        double stockKg = lots.stream().mapToDouble(Stock::kg).sum();
        double stockAlphaKg =
                lots.stream().mapToDouble(lot -> lot.kg() * lot.alpha()).sum();
        OptionalDouble alpha = stockKg > 0 ? OptionalDouble.of(stockAlphaKg / stockKg) : OptionalDouble.empty();
        TreeMap<YearMonth, Double> byMonth = new TreeMap<>();
        Optional<LocalDate> runsOutOn = Optional.empty();
        double usedKg = 0;
        TreeMap<LocalDate, Double> byDay = new TreeMap<>();
        byDay.putAll(needKg); // by the calendar, whatever order the caller sorts by
        for (Map.Entry<LocalDate, Double> day : byDay.entrySet()) {
            double kg = Figures.notNegative("need of " + variety + " on " + day.getKey(), day.getValue(), " kg");
            byMonth.merge(YearMonth.from(day.getKey()), kg, Double::sum);
            usedKg += kg;
            if (runsOutOn.isEmpty() && shortOf(stockKg, usedKg) > 0) {
                runsOutOn = Optional.of(day.getKey());
            }
        }
        List<Month> months = new ArrayList<>();
        double beforeKg = 0;
        for (Map.Entry<YearMonth, Double> month : byMonth.entrySet()) {
            double kg = month.getValue();
            double onHandKg = Math.max(0, stockKg - beforeKg);
            double shortKg = shortOf(stockKg, beforeKg + kg) - shortOf(stockKg, beforeKg);
            months.add(new Month(
                    month.getKey(),
                    kg,
                    alpha.isPresent() ? OptionalDouble.of(kg * alpha.getAsDouble()) : alpha,
                    onHandKg,
                    onHandKg * alpha.orElse(0),
                    shortKg));
            beforeKg += kg;
        }
        return new VarietyCover(variety, months, stockKg, stockAlphaKg, runsOutOn);
    }

    /** Kilograms wanting once so much is used, without what is only rounding. */
    private static double shortOf(double stockKg, double usedKg) {
        double shortKg = usedKg - stockKg;
        return shortKg > ROUNDING * stockKg ? shortKg : 0;
    }

    /**
     * What to contract for of the next harvest to brew as much again: the alpha acid needed, less what is left, over the alpha
     * acid of the published crop years. What is left is taken to keep its alpha acid; it won't, so a contract near to nothing
     * is to be looked at twice.
     *
     * @param needKg kilograms that the coming year needs, 0 or more
     * @param alphaMeanOfNeed alpha acid at which those kilograms were reckoned, mass fraction as is, over 0 and under 1
     * @param leftKg kilograms of this harvest that will be left at that alpha acid, 0 or more
     * @param published the crop years of the variety
     * @return the range
     * @throws IllegalArgumentException outside those ranges
     */
    public static Contract contract(double needKg, double alphaMeanOfNeed, double leftKg, CropYearAlpha published) {
        Figures.notNegative("need of " + published.variety(), needKg, " kg");
        Figures.positive("alpha acid of the need of " + published.variety(), alphaMeanOfNeed, "");
        Figures.shareUnderOne("alpha acid of the need of " + published.variety(), alphaMeanOfNeed);
        Figures.notNegative("left of " + published.variety(), leftKg, " kg");
        double alphaKg = Math.max(0, needKg - leftKg) * alphaMeanOfNeed;
        return new Contract(
                alphaKg, alphaKg / published.high(), alphaKg / published.mean(), alphaKg / published.low(), published);
    }

    /**
     * What to contract for of the next harvest to brew as much of a variety again.
     *
     * @param cover the variety this year
     * @param published its crop years
     * @return the range
     * @throws IllegalArgumentException if the crop years are another variety's, or no alpha acid is on hand to read the need by
     */
    public static Contract contract(VarietyCover cover, CropYearAlpha published) {
        if (!Names.folded(cover.variety()).equals(Names.folded(published.variety()))) {
            throw new IllegalArgumentException(
                    "crop years: expected those of " + cover.variety() + ", found those of " + published.variety());
        }
        if (!(cover.onHandAlphaKg() > 0)) {
            throw new IllegalArgumentException(
                    cover.variety() + ": expected some alpha acid on hand to read the need by, found none");
        }
        return contract(cover.totalNeedKg(), cover.alphaMean().orElseThrow(), Math.max(0, cover.leftKg()), published);
    }
}
