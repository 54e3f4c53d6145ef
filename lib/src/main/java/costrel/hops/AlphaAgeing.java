package costrel.hops;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Alpha acid of a hop lot on the brewing day. The routes, of which the first that applies is taken and named in words:
 *
 * <ol>
 *   <li>a storage index read after the newest alpha figure, where the analysis of that figure has one too: the step from
 *       the one index to the other;
 *   <li>a re-analysis: its alpha as it is;
 *   <li>the storage model, for baled leaf from its certificate on;
 *   <li>the certificate as it is.
 * </ol>
 *
 * <p>Every route starts from the newest alpha figure of the day and is the only one, so that no loss is counted twice. What
 * is lost between that figure, or the newest storage index, and the brewing day isn't counted on the first two routes.
 */
public final class AlphaAgeing {

    /** Points of loss for a tenfold storage index; the crops of 1969 to 1977 gave 101.8 to 114.6 (Nickerson and Likens). */
    private static final double LOSS_SLOPE = 1.10;

    private static final double FRESH_STORAGE_INDEX = 0.25;
    private static final double SIX_MONTHS_DAYS = 180;
    private static final double DAYS_PER_YEAR = 365;
    private static final double REFERENCE_CELSIUS = 20;
    private static final double HALVING_KELVIN = 15;

    private AlphaAgeing() {}

    /**
     * The hops of a lot as they are on a day. Analyses of a later date count as not yet made. Oil is that of the newest
     * analysis that has it and isn't aged.
     *
     * @param lot the lot
     * @param variety the variety's published figures, for the storage model; empty where there are none
     * @param day the brewing day
     * @return the hops on that day, with the route in words
     * @throws IllegalArgumentException if no analysis has alpha acid, if all that have are dated after the day, or for a storage
     *     index beyond the rule
     */
    public static HopOnTheDay onTheDay(HopLot lot, Optional<HopVariety> variety, LocalDate day) {
        List<HopAnalysis> known = lot.analyses().stream()
                .filter(analysis -> !analysis.date().isAfter(day))
                .toList();
        List<HopAnalysis> withAlpha =
                known.stream().filter(analysis -> analysis.alpha().isPresent()).toList();
        if (withAlpha.isEmpty()) {
            throw noAlpha(lot, day);
        }
        HopAnalysis certificate = withAlpha.get(0);
        HopAnalysis newest = newest(withAlpha);
        double stated = newest.alphaAsIs().orElseThrow();
        Aged aged = aged(lot, variety, day, known, certificate, newest);
        OptionalDouble oil = known.stream()
                .filter(analysis -> analysis.oilMlPer100g().isPresent())
                .reduce((older, newer) -> newer)
                .map(HopAnalysis::oilMlPer100g)
                .orElse(OptionalDouble.empty());
        return new HopOnTheDay(
                lot.id(), lot.variety(), lot.form(), stated * aged.left(), newest.method(), oil, aged.route());
    }

    /**
     * Loss of alpha and beta acids since the harvest by the hop storage index: 1.10 · log₁₀(index/0.25).
     *
     * <p>Source: G. B. Nickerson and S. T. Likens, <em>J. Am. Soc. Brew. Chem.</em> 37, 184-187 (1979); 110 and 0.25 as M. Garetz,
     * <em>BrewingTechniques</em> 2(1), 1994, has them. Laboratories differ by 2.8 % of the index, which is 1.3 points of loss.
     *
     * @param storageIndex A275/A325, over 0; fresh hops may read under 0.25, which counts as no loss
     * @return share lost, 0 to under 1
     * @throws IllegalArgumentException for an index outside the rule, from 2.03 on, where it finds nothing left
     */
    public static double lossFromStorageIndex(double storageIndex) {
        double loss = LOSS_SLOPE * Math.log10(storageIndex / FRESH_STORAGE_INDEX);
        if (!(storageIndex > 0 && loss < 1)) {
            throw new IllegalArgumentException("storage index: expected more than 0 and less than "
                    + Limits.rounded(storageIndex(1), 2) + ", found " + Limits.plain(storageIndex));
        }
        return Math.max(0, loss);
    }

    /**
     * The hop storage index of a loss, the inverse of {@link #lossFromStorageIndex}.
     *
     * @param loss share of alpha and beta acids lost, 0 to under 1
     * @return A275/A325, 0.25 for no loss
     * @throws IllegalArgumentException outside that range
     */
    public static double storageIndexFor(double loss) {
        return storageIndex(Limits.shareUnderOne("loss", loss));
    }

    /**
     * Rate k of the storage model: −ln(retained)/180 a day.
     *
     * <p>Source: M. Garetz, <em>BrewingTechniques</em> 2(1), 1994, notes to the tables; where these print "(100*%Lost)", (100 − %Lost) is
     * meant. Published shares of one variety differ by up to ten points.
     *
     * @param retained share of the alpha acid left in baled hops after six months at 20 °C, over 0 and at most 1
     * @return share lost in a day at 20 °C
     * @throws IllegalArgumentException outside that range
     */
    public static double storageRate(double retained) {
        return -Math.log(Limits.shareOverZero("share left after six months", retained)) / SIX_MONTHS_DAYS + 0.0;
    }

    /**
     * How much slower or faster hops age than at 20 °C: half as fast for each 15 °C less. Published up to 20 °C (Garetz, as for
     * {@link #storageRate}); above, the rule is extrapolated.
     *
     * @param celsius temperature of the store, −40 to 50 °C
     * @return 1 at 20 °C
     * @throws IllegalArgumentException outside that range
     */
    public static double temperatureFactor(double celsius) {
        Limits.within("temperature of the store", celsius, -40, 50, " °C");
        return Math.pow(2, (celsius - REFERENCE_CELSIUS) / HALVING_KELVIN);
    }

    /**
     * The storage model: exp(−k · TF · days). It holds for baled hops in air; of sealed pellets it would count far too much
     * lost.
     *
     * @param retained share of the alpha acid left in baled hops after six months at 20 °C, over 0 and at most 1
     * @param celsius temperature of the store, −40 to 50 °C
     * @param days days in store, 0 or more
     * @return share of the alpha acid left
     * @throws IllegalArgumentException outside those ranges
     */
    public static double leftAfterStorage(double retained, double celsius, double days) {
        return Math.exp(-storageRate(retained)
                * temperatureFactor(celsius)
                * Limits.within("days in store", days, 0, 100_000, ""));
    }

    private record Aged(double left, String route) {}

    private static Aged aged(
            HopLot lot,
            Optional<HopVariety> variety,
            LocalDate day,
            List<HopAnalysis> known,
            HopAnalysis certificate,
            HopAnalysis newest) {
        boolean reanalysed = newest.date().isAfter(certificate.date());
        String from = (reanalysed ? "re-analysis of " : "certificate of ") + newest.date();
        Optional<HopAnalysis> index = known.stream()
                .filter(analysis -> analysis.date().isAfter(newest.date()))
                .filter(analysis -> analysis.storageIndex().isPresent())
                .reduce((older, newer) -> newer);
        if (index.isPresent() && newest.storageIndex().isPresent()) {
            return storageIndexStep(from, newest.storageIndex().getAsDouble(), index.get());
        }
        if (reanalysed) {
            return new Aged(1, from);
        }
        long days = ChronoUnit.DAYS.between(newest.date(), day);
        if (lot.statedYearlyLoss().isPresent() && days > 0) {
            double left = Math.pow(1 - lot.statedYearlyLoss().getAsDouble(), days / DAYS_PER_YEAR);
            return new Aged(
                    left,
                    "supplier-stated loss of "
                            + Limits.percent(lot.statedYearlyLoss().getAsDouble()) + " a year from the " + from + ": "
                            + days
                            + (days == 1 ? " day" : " days") + ", " + Limits.percent(1 - left) + " lost");
        }
        if (lot.form() != HopForm.LEAF || days == 0) {
            return new Aged(1, from);
        }
        if (lot.packing() == HopLot.Packing.INERT) {
            return new Aged(1, from + ", not aged: the pack is inert");
        }
        OptionalDouble retained = variety.map(HopVariety::retainedSixMonths).orElse(OptionalDouble.empty());
        if (lot.storeCelsius().isEmpty() || retained.isEmpty()) {
            return new Aged(1, from + ", not aged: " + missing(lot, retained) + " not stated");
        }
        return storage(
                lot, from, days, retained.getAsDouble(), lot.storeCelsius().getAsDouble());
    }

    /** α · (1 − L_now)/(1 − L_then), where a loss that would be a gain is none. */
    private static Aged storageIndexStep(String from, double indexThen, HopAnalysis now) {
        double indexNow = now.storageIndex().orElseThrow();
        double left = Math.min(1, (1 - lossFromStorageIndex(indexNow)) / (1 - lossFromStorageIndex(indexThen)));
        return new Aged(
                left,
                "storage index " + Limits.plain(indexNow) + " of " + now.date() + " after " + Limits.plain(indexThen)
                        + " on the " + from + ": " + Limits.percent(1 - left) + " lost");
    }

    private static Aged storage(HopLot lot, String from, long days, double retained, double celsius) {
        double left = leftAfterStorage(retained, celsius, (double) days);
        String packed = lot.packing() == HopLot.Packing.UNSTATED ? ", packing not stated and taken as baled" : "";
        return new Aged(
                left,
                "storage model from the " + from + ": " + days + (days == 1 ? " day" : " days") + " at "
                        + Limits.plain(celsius) + " °C, " + Limits.percent(retained)
                        + " left after six months at 20 °C" + packed + ": " + Limits.percent(1 - left) + " lost");
    }

    private static String missing(HopLot lot, OptionalDouble retained) {
        List<String> missing = new ArrayList<>();
        if (lot.storeCelsius().isEmpty()) {
            missing.add("temperature of the store");
        }
        if (retained.isEmpty()) {
            missing.add("share of the alpha acid of " + lot.variety() + " left after six months");
        }
        return String.join(" and ", missing);
    }

    /** The analysis of the newest date; of several on one day the first, as of several certificates. */
    private static HopAnalysis newest(List<HopAnalysis> sorted) {
        LocalDate date = sorted.get(sorted.size() - 1).date();
        return sorted.stream()
                .filter(analysis -> analysis.date().equals(date))
                .findFirst()
                .orElseThrow();
    }

    private static IllegalArgumentException noAlpha(HopLot lot, LocalDate day) {
        return lot.analyses().stream()
                .filter(analysis -> analysis.alpha().isPresent())
                .findFirst()
                .map(later -> new IllegalArgumentException("hop lot " + lot.id() + ": the certificate is dated "
                        + later.date() + ", after the brewing day " + day))
                .orElseGet(() -> new IllegalArgumentException(
                        "hop lot " + lot.id() + ": expected an analysis with alpha acid, found none"));
    }

    private static double storageIndex(double loss) {
        return FRESH_STORAGE_INDEX * Math.pow(10, loss / LOSS_SLOPE);
    }
}
