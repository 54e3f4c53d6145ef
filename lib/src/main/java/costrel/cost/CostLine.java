package costrel.cost;

import costrel.buying.Choice;
import costrel.buying.PackUnit;
import costrel.buying.UnitPrice;
import costrel.duty.DutyBasis;
import costrel.duty.DutyFigure;
import costrel.duty.DutySlice;
import costrel.figures.Figures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * One printed line of a cost sheet: amount × unit price, rounded once to the penny.
 *
 * @param group the part of the sheet
 * @param item what it pays for
 * @param amount how much of it, in the unit
 * @param unit what the amount is counted in
 * @param unitPrice the exact price of one unit with delivery; empty where the line isn't a product of the two
 * @param supplier who sells it, or empty
 * @param origin the row the price was read from, or the Act, or empty
 * @param value what enters the sum
 * @param beside a value to show that doesn't enter the sum, as for beer that is lost
 * @param fixed whether it is there however much is brewed; else it varies with output
 * @param remark anything to show beside it, or empty
 * @param passedOver prices that were not chosen and why
 */
public record CostLine(
        CostGroup group,
        String item,
        BigDecimal amount,
        String unit,
        Optional<UnitPrice> unitPrice,
        String supplier,
        String origin,
        Money value,
        Optional<Money> beside,
        boolean fixed,
        String remark,
        List<Choice.PassedOver> passedOver) {

    public CostLine {
        passedOver = List.copyOf(passedOver);
    }

    static CostLine bought(CostGroup group, String item, BigDecimal amount, Choice choice, Money value, String remark) {
        return new CostLine(
                group,
                item,
                amount,
                choice.unitPrice().unit(),
                Optional.of(choice.unitPrice()),
                choice.row().supplier(),
                choice.row().origin(),
                value,
                Optional.empty(),
                false,
                choice.notes().isEmpty() ? remark : remarks(remark, choice.notes()),
                choice.passedOver());
    }

    private static String remarks(String remark, List<String> notes) {
        String joined = String.join("; ", notes);
        return remark.isEmpty() ? joined : remark + "; " + joined;
    }

    static CostLine charged(CostGroup group, Rate rate, BigDecimal amount, UnitPrice price, Money value) {
        return new CostLine(
                group,
                rate.item(),
                amount,
                price.unit(),
                Optional.of(price),
                "",
                rate.origin(),
                value,
                Optional.empty(),
                rate.fixed(),
                rate.basis().label(),
                List.of());
    }

    static CostLine lost(String item, BigDecimal litres, Money worth) {
        return new CostLine(
                CostGroup.LOSSES,
                item,
                litres,
                PackUnit.LITRE.label(),
                Optional.empty(),
                "",
                "",
                Money.zero(worth.getCurrencyUnit()),
                Optional.of(worth),
                false,
                "worth " + Figures.text(worth) + ", carried by the beer that is sold",
                List.of());
    }

    static CostLine duty(DutyFigure duty) {
        return duty.basis().equals(DutyBasis.PURE_ALCOHOL) ? byPureAlcohol(duty) : byVolume(duty);
    }

    /** Duty by hL or barrel: volume × what one bears; without a unit price where parts of the run bear different rates. */
    private static CostLine byVolume(DutyFigure duty) {
        String unit = duty.basis().unit().volumeUnit();
        List<String> parts = new ArrayList<>();
        for (DutySlice slice : duty.slices()) {
            parts.add(Figures.rounded(slice.volume(), 5) + " " + unit + " at " + Figures.rounded(slice.perVolume(), 6));
        }
        return new CostLine(
                CostGroup.DUTY,
                switch (duty.basis().unit()) {
                    case HL_PLATO -> "beer duty at " + Figures.plain(duty.multiplier()) + " °P";
                    case US_BARREL -> "beer duty";
                    case HL_PERCENT, PURE_ALCOHOL -> "beer duty at " + Figures.plain(duty.multiplier()) + " %";
                },
                duty.volume(),
                unit,
                duty.slices().size() == 1
                        ? Optional.of(new UnitPrice(duty.slices().get(0).perVolume(), BigDecimal.ONE, unit))
                        : Optional.empty(),
                "",
                duty.rate().source(),
                duty.duty(),
                Optional.empty(),
                false,
                String.join(", ", parts) + "; rounded " + duty.basis().duty().label() + " decimals",
                List.of());
    }

    private static CostLine byPureAlcohol(DutyFigure duty) {
        return new CostLine(
                CostGroup.DUTY,
                "beer duty at " + Figures.plain(duty.strength()) + " %",
                duty.pureAlcoholL(),
                "L of pure alcohol",
                Optional.of(new UnitPrice(duty.payableRate(), BigDecimal.ONE, "L of pure alcohol")),
                "",
                duty.rate().source(),
                duty.duty(),
                Optional.empty(),
                false,
                "rounded down to the penny",
                List.of());
    }
}
