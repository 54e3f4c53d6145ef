package costrel.buying;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.joda.money.CurrencyUnit;

/**
 * A dated table of rates of exchange. The newest rate on or before the day is taken; a rate that is quoted the other way
 * round serves by division. No rate is made of two others.
 *
 * @param rates the rates, one for each pair and day
 * @param greatestAgeDays how many days old a rate may be; empty where any age will do
 */
public record ExchangeRates(List<ExchangeRate> rates, OptionalInt greatestAgeDays) {

    private record Quoted(CurrencyUnit from, CurrencyUnit to, LocalDate day) {}

    public ExchangeRates {
        rates = List.copyOf(rates);
        if (greatestAgeDays.isPresent() && greatestAgeDays.getAsInt() < 0) {
            throw new IllegalArgumentException(
                    "age of a rate of exchange: expected 0 days or more, found " + greatestAgeDays.getAsInt());
        }
        Map<Quoted, ExchangeRate> seen = new HashMap<>();
        for (ExchangeRate rate : rates) {
            ExchangeRate other = seen.put(new Quoted(rate.from(), rate.to(), rate.day()), rate);
            if (other != null) {
                throw new IllegalArgumentException(rate.origin() + ": rate of exchange from " + rate.from() + " to "
                        + rate.to() + " on " + rate.day() + ": expected one, found another in " + other.origin());
            }
        }
    }

    /**
     * No rates: prices in another currency than the sheet's can't be compared.
     *
     * @return an empty table
     */
    public static ExchangeRates none() {
        return new ExchangeRates(List.of(), OptionalInt.empty());
    }

    /**
     * The rate of a day.
     *
     * @param from the currency that is turned
     * @param to the currency that it is turned into
     * @param day the day
     * @return the newest rate on or before the day, as it is quoted: from the one to the other or the other way round
     * @throws IllegalArgumentException when there is none, or it is older than the table allows, naming what to supply
     */
    public ExchangeRate on(CurrencyUnit from, CurrencyUnit to, LocalDate day) {
        String pair = "rate of exchange from " + from + " to " + to + ": ";
        ExchangeRate newest = newest(from, to, day)
                .or(() -> newest(to, from, day))
                .orElseThrow(() -> new IllegalArgumentException(
                        pair + "none on or before " + day + first(from, to) + "; supply the rate of " + day));
        long age = ChronoUnit.DAYS.between(newest.day(), day);
        if (greatestAgeDays.isPresent() && age > greatestAgeDays.getAsInt()) {
            throw new IllegalArgumentException(pair + "the newest on or before " + day + " is of " + newest.day() + " ("
                    + newest.origin() + "), " + age + " days old; expected no more than " + greatestAgeDays.getAsInt()
                    + " days; supply the rate of " + day);
        }
        return newest;
    }

    private Optional<ExchangeRate> newest(CurrencyUnit from, CurrencyUnit to, LocalDate day) {
        return rates.stream()
                .filter(rate -> rate.from().equals(from) && rate.to().equals(to))
                .filter(rate -> !rate.day().isAfter(day))
                .max((a, b) -> a.day().compareTo(b.day()));
    }

    private String first(CurrencyUnit from, CurrencyUnit to) {
        return rates.stream()
                .filter(rate -> (rate.from().equals(from) && rate.to().equals(to))
                        || (rate.from().equals(to) && rate.to().equals(from)))
                .map(ExchangeRate::day)
                .min(LocalDate::compareTo)
                .map(day -> "; the first is of " + day)
                .orElse("");
    }

    /**
     * A unit price in another currency, exact.
     *
     * @param price the price
     * @param from the currency it is in
     * @param to the currency it is turned into
     * @param day the day of the rate
     * @return amount or content times the rate, as it is quoted
     * @throws IllegalArgumentException as {@link #on}
     */
    public UnitPrice turned(UnitPrice price, CurrencyUnit from, CurrencyUnit to, LocalDate day) {
        if (from.equals(to)) {
            return price;
        }
        ExchangeRate rate = on(from, to, day);
        return rate.from().equals(from)
                ? new UnitPrice(price.amount().multiply(rate.rate()), price.content(), price.unit())
                : new UnitPrice(price.amount(), price.content().multiply(rate.rate()), price.unit());
    }
}
