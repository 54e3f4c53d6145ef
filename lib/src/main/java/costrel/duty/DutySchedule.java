package costrel.duty;

import costrel.figures.Figures;
import costrel.wort.StrengthFactorTable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.joda.money.CurrencyUnit;

/**
 * The law on beer duty of one country, as dated tables. Nothing here is in code: a new rate set, or another country, is
 * further rows.
 */
public final class DutySchedule {
    /** So many days are kept at once: a year of them and a day more than a leap year has. */
    private static final int MOST_DAYS = 367;

    private final String country;
    private final CurrencyUnit currency;
    private final List<DutyRate> rates;
    private final List<ReliefBand> bands;
    private final List<StrengthFactorTable> factors;
    private final DutyBasis basis;
    private final Map<LocalDate, DutyOnDay> days = new ConcurrentHashMap<>();

    /**
     * A country.
     *
     * @param country what the country is called in the tables
     * @param currency what rates and discounts are in
     * @param rates the rates, in any order; no two may claim the same beer on the same day
     * @param bands the bands of the small producer's discount, in any order; may be empty
     * @param factors the tables that turn a fall in gravity into strength; may be empty where every strength is stated
     * @param basis what the country charges by and where it rounds
     * @throws IllegalArgumentException when two rates or two bands both apply, or the tables don't fit the basis
     */
    public DutySchedule(
            String country,
            CurrencyUnit currency,
            List<DutyRate> rates,
            List<ReliefBand> bands,
            List<StrengthFactorTable> factors,
            DutyBasis basis) {
        this.country = Figures.named("duty: country", country);
        this.currency = currency;
        this.rates = List.copyOf(rates);
        this.bands = List.copyOf(bands);
        this.factors = List.copyOf(factors);
        this.basis = basis;
        if (rates.isEmpty()) {
            throw new IllegalArgumentException("duty of " + country + ": expected a rate or more, found none");
        }
        if (!basis.equals(DutyBasis.PURE_ALCOHOL) && !bands.isEmpty()) {
            throw new IllegalArgumentException("duty of " + country
                    + ": expected tiers by the beer of a year in place of bands of a discount, found bands");
        }
        if (basis.equals(DutyBasis.PURE_ALCOHOL)
                && rates.stream().anyMatch(rate -> rate.tier().isPresent())) {
            throw new IllegalArgumentException("duty of " + country
                    + ": expected no tiers by the beer of a year where duty goes by the British rules, found some");
        }
        for (int i = 0; i < rates.size(); i++) {
            for (DutyRate other : rates.subList(i + 1, rates.size())) {
                refuseTwo(country, rates.get(i), other);
            }
        }
        for (int i = 0; i < bands.size(); i++) {
            for (ReliefBand other : bands.subList(i + 1, bands.size())) {
                refuseTwo(country, bands.get(i), other);
            }
        }
    }

    /**
     * A country that charges by the litre of pure alcohol, as the United Kingdom does.
     *
     * @param country what the country is called in the tables
     * @param currency what rates and discounts are in
     * @param rates the rates
     * @param bands the bands of the small producer's discount; may be empty
     * @param factors the tables that turn a fall in gravity into strength
     */
    public DutySchedule(
            String country,
            CurrencyUnit currency,
            List<DutyRate> rates,
            List<ReliefBand> bands,
            List<StrengthFactorTable> factors) {
        this(country, currency, rates, bands, factors, DutyBasis.PURE_ALCOHOL);
    }

    private static boolean sameTier(DutyRate a, DutyRate b) {
        if (a.tier().isEmpty() || b.tier().isEmpty()) {
            return a.tier().isEmpty() && b.tier().isEmpty();
        }
        YearTier first = a.tier().get();
        YearTier second = b.tier().get();
        return first.producerUpTo().equals(second.producerUpTo()) && first.overlaps(second);
    }

    private static void refuseTwo(String country, DutyRate a, DutyRate b) {
        boolean sameBeer =
                a.draught() == b.draught() || a.draught() == DraughtRule.ANY || b.draught() == DraughtRule.ANY;
        if (sameBeer
                && sameTier(a, b)
                && (a.holdsOn(b.validFrom()) || b.holdsOn(a.validFrom()))
                && (a.holds(b.strengthFrom()) || b.holds(a.strengthFrom()))) {
            throw new IllegalArgumentException("duty of " + country + ": two rates that both apply: from "
                    + Figures.plain(a.strengthFrom()) + " % valid " + Figures.span(a.validFrom(), a.validUntil())
                    + " and from " + Figures.plain(b.strengthFrom()) + " % valid "
                    + Figures.span(b.validFrom(), b.validUntil()) + "; end the earlier before the later begins");
        }
    }

    private static void refuseTwo(String country, ReliefBand a, ReliefBand b) {
        if ((a.holdsOn(b.validFrom()) || b.holdsOn(a.validFrom()))
                && (a.holds(b.strengthFrom(), b.draught()) || b.holds(a.strengthFrom(), a.draught()))
                && a.overHl().compareTo(b.upToHl()) < 0
                && b.overHl().compareTo(a.upToHl()) < 0) {
            throw new IllegalArgumentException("duty of " + country + ": two relief bands that both apply: over "
                    + Figures.plain(a.overHl()) + " hL and over " + Figures.plain(b.overHl()) + " hL, from "
                    + Figures.plain(a.strengthFrom()) + " %, valid from " + a.validFrom() + " and " + b.validFrom());
        }
    }

    /**
     * What the country is called in the tables.
     *
     * @return the name
     */
    public String country() {
        return country;
    }

    /**
     * What rates and discounts are in.
     *
     * @return the currency
     */
    public CurrencyUnit currency() {
        return currency;
    }

    /**
     * The rates.
     *
     * @return in the order they were given
     */
    public List<DutyRate> rates() {
        return rates;
    }

    /**
     * The bands of the small producer's discount.
     *
     * @return in the order they were given, empty where there are none
     */
    public List<ReliefBand> bands() {
        return bands;
    }

    /**
     * The tables that turn a fall in gravity into strength.
     *
     * @return empty where every strength is stated
     */
    public List<StrengthFactorTable> factors() {
        return factors;
    }

    /**
     * What the country charges by and where it rounds.
     *
     * @return the basis
     */
    public DutyBasis basis() {
        return basis;
    }

    /**
     * The tables on one day. What holds on a day is looked up once and kept for the next who asks.
     *
     * @param dutyOn the day of the duty point
     * @return what holds on that day
     */
    public DutyOnDay on(LocalDate dutyOn) {
        DutyOnDay known = days.get(dutyOn);
        if (known != null) {
            return known;
        }
        if (days.size() >= MOST_DAYS) {
            days.clear();
        }
        DutyOnDay fresh = new DutyOnDay(this, dutyOn);
        days.put(dutyOn, fresh);
        return fresh;
    }

    /**
     * The full rate for beer of a strength.
     *
     * @param dutyOn the day of the duty point
     * @param strength per cent by volume, cut down to one decimal
     * @param draught whether draught relief is claimed
     * @return the one rate that applies
     * @throws IllegalArgumentException when the day or the strength is outside the tables, naming what to supply
     */
    public DutyRate rate(LocalDate dutyOn, BigDecimal strength, boolean draught) {
        return on(dutyOn).rate(strength, draught);
    }

    /**
     * The day the tables begin.
     *
     * @return the earliest day of any rate
     */
    public LocalDate begins() {
        return rates.stream().map(DutyRate::validFrom).min(LocalDate::compareTo).orElseThrow();
    }

    /**
     * The day the newest known set of rates begins.
     *
     * @return the latest first day of any rate
     */
    public LocalDate newest() {
        return rates.stream().map(DutyRate::validFrom).max(LocalDate::compareTo).orElseThrow();
    }

    /** The strengths at which the rate changes on a day, lowest first, without 0. */
    NavigableSet<BigDecimal> stepsOn(LocalDate dutyOn) {
        NavigableSet<BigDecimal> steps = new TreeSet<>();
        for (DutyRate rate : rates) {
            if (rate.holdsOn(dutyOn)) {
                steps.add(rate.strengthFrom());
                Optional<BigDecimal> under = rate.strengthUnder();
                under.ifPresent(steps::add);
            }
        }
        steps.removeIf(step -> step.signum() == 0);
        return steps;
    }

    /**
     * The country in words.
     *
     * @return such as "duty of UK"
     */
    @Override
    public String toString() {
        return "duty of " + country;
    }
}
