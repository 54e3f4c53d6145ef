package costrel.cost;

import costrel.buying.UnitPrice;
import costrel.figures.Figures;
import costrel.packaging.ContainerKind;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The rates that apply on the day of a sheet, and the lines they make. */
final class RateCard {
    private final List<Rate> onTheDay;
    private final List<Rate> all;
    private final Batch batch;
    private final CurrencyUnit currency;

    RateCard(List<Rate> rates, Batch batch, CurrencyUnit currency) {
        this.all = rates;
        this.onTheDay =
                rates.stream().filter(rate -> rate.holdsOn(batch.costedOn())).toList();
        this.batch = batch;
        this.currency = currency;
        record Told(String foldedItem, RateGroup group, RateBasis basis) {}
        Map<Told, Rate> seen = new HashMap<>();
        for (Rate rate : onTheDay) {
            if (!rate.currency().equals(currency)) {
                throw new IllegalArgumentException(rate.origin() + ": rate of " + rate.item() + " is in "
                        + rate.currency() + ", the sheet is in " + currency + "; supply it in " + currency);
            }
            Rate other = seen.put(new Told(Names.folded(rate.item()), rate.group(), rate.basis()), rate);
            if (other != null) {
                throw new IllegalArgumentException("two rates that both apply on " + batch.costedOn() + ": "
                        + other.origin() + " and " + rate.origin() + ", " + rate.item() + " "
                        + rate.basis().label() + "; end the earlier one before the later one begins");
            }
        }
    }

    /** The lines that the gyle bears as a whole. */
    List<CostLine> gyleLines(List<String> leftOut) {
        List<CostLine> lines = new ArrayList<>();
        for (Rate rate : onTheDay) {
            if (rate.basis().countsContainers()) {
                continue;
            }
            if (rate.basis() == RateBasis.PER_TANK_DAY && batch.tankDays().isEmpty()) {
                leftOut.add(rate.item() + ": charged per tank-day, and the days in tank are not given");
                continue;
            }
            lines.add(line(rate, amount(rate.basis())));
        }
        return lines;
    }

    /** The lines that containers of a kind bear. */
    List<CostLine> containerLines(ContainerKind kind, int count) {
        return onTheDay.stream()
                .filter(rate -> rate.basis().covers(kind))
                .map(rate -> line(rate, BigDecimal.valueOf(count)))
                .toList();
    }

    /** Groups for which no rate applies, in words. */
    List<String> leftOut() {
        Set<RateGroup> missing = EnumSet.complementOf(EnumSet.of(RateGroup.PACKAGING));
        onTheDay.forEach(rate -> missing.remove(rate.group()));
        List<String> words = new ArrayList<>();
        for (RateGroup group : missing) {
            words.add(all.stream()
                    .filter(rate -> rate.group() == group)
                    .findFirst()
                    .map(rate -> group.label() + ": no rate applies on " + batch.costedOn() + "; " + rate.origin()
                            + " holds " + Figures.span(rate.validFrom(), rate.validUntil()))
                    .orElse(group.label() + ": no rate given"));
        }
        return words;
    }

    private CostLine line(Rate rate, BigDecimal amount) {
        BigDecimal signed = rate.group() == RateGroup.CREDIT ? rate.amount().negate() : rate.amount();
        UnitPrice price = new UnitPrice(signed, BigDecimal.ONE, rate.basis().unit());
        Money value = Money.of(currency, price.times(amount, currency.getDecimalPlaces()));
        return CostLine.charged(CostGroup.of(rate.group()), rate, amount, price, value);
    }

    private BigDecimal amount(RateBasis basis) {
        return switch (basis) {
            case PER_GYLE -> BigDecimal.ONE;
            case PER_HL_COLLECTED -> BigDecimal.valueOf(batch.collectedL()).movePointLeft(2);
            case PER_HL_RACKED -> BigDecimal.valueOf(batch.rackedL()).movePointLeft(2);
            case PER_KG_OF_GRIST -> BigDecimal.valueOf(batch.gristKg());
            case PER_TANK_DAY -> BigDecimal.valueOf(batch.tankDays().orElse(0));
            case PER_CONTAINER, PER_CASK, PER_KEG, PER_BOTTLE, PER_CAN -> BigDecimal.ZERO;
        };
    }
}
