package costrel.cost;

import costrel.buying.UnitPrice;
import costrel.figures.Figures;
import costrel.figures.Rounded;
import costrel.packaging.ContainerKind;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
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
    private final BigDecimal collectedL;
    private final BigDecimal rackedL;
    private final CurrencyUnit currency;

    RateCard(List<Rate> rates, Batch batch, BigDecimal collectedL, BigDecimal rackedL, CurrencyUnit currency) {
        this.all = rates;
        this.batch = batch;
        this.collectedL = collectedL;
        this.rackedL = rackedL;
        this.currency = currency;
        this.onTheDay = new ArrayList<>();
        for (Rate rate : rates) {
            if (rate.holdsOn(batch.costedOn())) {
                take(rate);
            }
        }
    }

    private void take(Rate rate) {
        if (!rate.currency().equals(currency)) {
            throw new IllegalArgumentException(rate.origin() + ": rate of " + rate.item() + " is in " + rate.currency()
                    + ", the sheet is in " + currency + "; supply it in " + currency);
        }
        for (Rate other : onTheDay) {
            if (other.group() == rate.group()
                    && other.basis() == rate.basis()
                    && Names.same(other.item(), rate.item())) {
                throw new IllegalArgumentException("two rates that both apply on " + batch.costedOn() + ": "
                        + other.origin() + " and " + rate.origin() + ", " + rate.item() + " "
                        + rate.basis().label() + "; end the earlier one before the later one begins");
            }
        }
        onTheDay.add(rate);
    }

    /** The lines that the gyle bears as a whole. */
    List<CostLine> gyleLines(List<String> leftOut) {
        List<CostLine> lines = new ArrayList<>();
        Map<RateBasis, BigDecimal> amounts = new EnumMap<>(RateBasis.class);
        for (Rate rate : onTheDay) {
            if (rate.basis().countsContainers()) {
                continue;
            }
            if (rate.basis() == RateBasis.PER_TANK_DAY && batch.tankDays().isEmpty()) {
                leftOut.add(rate.item() + ": charged per tank-day, and the days in tank are not given");
                continue;
            }
            lines.add(line(rate, amounts.computeIfAbsent(rate.basis(), this::amount)));
        }
        return lines;
    }

    /** Adds the lines that containers of a kind bear. */
    void addContainerLines(ContainerKind kind, int count, List<CostLine> lines) {
        for (Rate rate : onTheDay) {
            if (rate.basis().covers(kind)) {
                lines.add(line(rate, BigDecimal.valueOf(count)));
            }
        }
    }

    /** Groups for which no rate applies, in words. */
    List<String> leftOut() {
        Set<RateGroup> missing = EnumSet.complementOf(EnumSet.of(RateGroup.PACKAGING));
        onTheDay.forEach(rate -> missing.remove(rate.group()));
        if (missing.isEmpty()) {
            return List.of();
        }
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
            case PER_HL_COLLECTED -> collectedL.movePointLeft(2);
            case PER_HL_RACKED -> rackedL.movePointLeft(2);
            case PER_KG_OF_GRIST -> Rounded.decimal(batch.gristKg());
            case PER_TANK_DAY -> Rounded.decimal(batch.tankDays().orElse(0));
            case PER_CONTAINER, PER_CASK, PER_KEG, PER_BOTTLE, PER_CAN -> BigDecimal.ZERO;
        };
    }
}
