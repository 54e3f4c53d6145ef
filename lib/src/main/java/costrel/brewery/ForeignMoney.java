package costrel.brewery;

import costrel.buying.Carriage;
import costrel.buying.ExchangeRate;
import costrel.buying.PriceRow;
import costrel.buying.PriceTerms;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.pricing.CurrencyMove;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;

/** What two sheets of a brewery pay for in foreign money, and how that money moved between their days. */
final class ForeignMoney {

    private ForeignMoney() {}

    /**
     * The currencies that moved. An item that is paid in two currencies, on one sheet or between them, is left out: its
     * difference is one of price.
     */
    static List<CurrencyMove> moves(Brewery brewery, CostSheet before, CostSheet after) {
        CurrencyUnit own = after.gyleCost().getCurrencyUnit();
        Map<String, CurrencyUnit> byOrigin = new HashMap<>();
        PriceTerms terms = brewery.prices().terms();
        for (PriceRow row : brewery.prices().rows()) {
            byOrigin.put(row.origin(), row.currency());
        }
        for (Carriage carriage : terms.carriages()) {
            byOrigin.put(carriage.origin(), carriage.currency());
        }
        Map<String, CurrencyUnit> ofItem = new LinkedHashMap<>();
        Set<String> mixed = new HashSet<>();
        for (CostSheet sheet : List.of(before, after)) {
            for (CostLine line : sheet.lines()) {
                CurrencyUnit paidIn = byOrigin.getOrDefault(line.origin(), own);
                CurrencyUnit other = ofItem.put(line.item(), paidIn);
                if (other != null && !other.equals(paidIn)) {
                    mixed.add(line.item());
                }
            }
        }
        Map<CurrencyUnit, Set<String>> items = new TreeMap<>();
        ofItem.forEach((item, currency) -> {
            if (!currency.equals(own) && !mixed.contains(item)) {
                items.computeIfAbsent(currency, any -> new LinkedHashSet<>()).add(item);
            }
        });
        List<CurrencyMove> moves = new ArrayList<>();
        items.forEach((currency, paid) -> moves.add(new CurrencyMove(
                currency,
                rate(terms, currency, own, before.batch().costedOn()),
                rate(terms, currency, own, after.batch().costedOn()),
                paid)));
        return moves;
    }

    private static BigDecimal rate(PriceTerms terms, CurrencyUnit from, CurrencyUnit to, LocalDate day) {
        ExchangeRate rate = terms.exchange().on(from, to, day);
        return rate.from().equals(from) ? rate.rate() : BigDecimal.ONE.divide(rate.rate(), MathContext.DECIMAL128);
    }
}
