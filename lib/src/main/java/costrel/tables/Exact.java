package costrel.tables;

import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.measure.Amounts;
import costrel.measure.QuantityText;
import costrel.measure.Units;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/** Cells that must stay exact decimals: money, packs, and the litres and percentages that duty and prices go by. */
final class Exact {

    /** Percentages as written: 3.5 for "3.5 %". */
    static final CellKind<BigDecimal> PERCENT =
            CellKind.of("a percentage such as 3.5 %", text -> Cells.before(text, "%", "% vol"));

    static final CellKind<BigDecimal> LITRES = CellKind.of("a volume such as 40.91 L", Exact::litres);
    static final CellKind<BigDecimal> HECTOLITRES =
            CellKind.of("a volume such as 412.5 hL", text -> plain(litres(text).movePointLeft(2)));

    /** Kilograms, exactly. */
    static final CellKind<BigDecimal> KILOGRAMS = CellKind.of("a mass over 0 such as 420 g", Exact::kilograms);

    /** What is bought or used: 25 kg, 20 L, 1000 each, 1 kWh, 1 h. */
    static final CellKind<Pack> PACK = CellKind.of("a pack such as 25 kg, 20 L or 1000 each", Exact::pack);

    static final CellKind<Cash> CASH = CellKind.of("an amount such as £12.50", Exact::cash);
    static final CellKind<CurrencyUnit> CURRENCY = CellKind.of("a currency such as GBP", Exact::currency);
    static final CellKind<PerContainers> PER_CONTAINERS =
            CellKind.of("a quantity such as 1 each, or 1/12 each for one to twelve containers", Exact::perContainers);

    private static final Pattern COUNT = Pattern.compile("(\\d{1,15}(?:\\.\\d{1,15})?)[ \\u00a0]*(each|kWh)");
    private static final Pattern FRACTION = Pattern.compile("(\\d{1,9})/(\\d{1,9})[ \\u00a0]*(.+)");
    private static final Pattern CASH_TEXT =
            Pattern.compile("(-?)(?:([£€])|([A-Z]{3})[ \\u00a0])?(-?)(\\d{1,15}(?:\\.\\d{1,15})?)"
                    + "(?:[ \\u00a0]?([A-Z]{3}))?(?:[ \\u00a0]?(?:/|per )[ \\u00a0]?(.{1,20}))?");

    private Exact() {}

    /**
     * Money as a cell states it.
     *
     * @param amount the number, exactly
     * @param currency the currency, where the cell says it
     * @param per what it buys, where the cell says it, such as 1 kg for £12.40/kg
     */
    record Cash(BigDecimal amount, Optional<CurrencyUnit> currency, Optional<Pack> per) {}

    /**
     * How much of something goes to how many containers.
     *
     * @param quantity how much
     * @param containers for how many, 1 unless the cell has a fraction
     */
    record PerContainers(Pack quantity, BigDecimal containers) {}

    private static BigDecimal litres(String text) {
        BigDecimal litres = in(QuantityText.volume(text), Units.LITRE);
        if (litres.signum() < 0) {
            throw new IllegalArgumentException(text);
        }
        return litres;
    }

    private static BigDecimal kilograms(String text) {
        BigDecimal kilograms = in(QuantityText.mass(text), Units.KILOGRAM);
        if (kilograms.signum() <= 0) {
            throw new IllegalArgumentException(text);
        }
        return kilograms;
    }

    /** An amount in a unit as an exact product: the number as written times the factor of its unit. */
    private static <Q extends Quantity<Q>> BigDecimal in(Quantity<Q> quantity, Unit<Q> unit) {
        BigDecimal number = BigDecimal.valueOf(quantity.getValue().doubleValue());
        BigDecimal factor = BigDecimal.valueOf(Amounts.value(Amounts.of(1, quantity.getUnit()), unit));
        return plain(number.multiply(factor));
    }

    /** Without idle decimals, and without the exponent that stripping gives to whole tens. */
    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    static Pack pack(String text) {
        Matcher count = COUNT.matcher(text);
        if (count.matches()) {
            PackUnit unit = count.group(2).equals(PackUnit.EACH.label()) ? PackUnit.EACH : PackUnit.KILOWATT_HOUR;
            return new Pack(new BigDecimal(count.group(1)), unit);
        }
        Unit<?> unit = QuantityText.any(text).getUnit();
        if (unit.isCompatible(Units.KILOGRAM)) {
            return new Pack(in(QuantityText.mass(text), Units.KILOGRAM), PackUnit.KILOGRAM);
        }
        if (unit.isCompatible(Units.LITRE)) {
            return new Pack(in(QuantityText.volume(text), Units.LITRE), PackUnit.LITRE);
        }
        if (unit.isCompatible(Units.HOUR)) {
            return new Pack(in(QuantityText.time(text), Units.HOUR), PackUnit.HOUR);
        }
        throw new IllegalArgumentException(text);
    }

    private static PerContainers perContainers(String text) {
        Matcher fraction = FRACTION.matcher(text);
        if (!fraction.matches()) {
            return new PerContainers(pack(text), BigDecimal.ONE);
        }
        BigDecimal containers = new BigDecimal(fraction.group(2));
        if (containers.signum() == 0) {
            throw new IllegalArgumentException(text);
        }
        return new PerContainers(pack(fraction.group(1) + " " + fraction.group(3)), containers);
    }

    private static Cash cash(String text) {
        Matcher matcher = CASH_TEXT.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(text);
        }
        String sign = matcher.group(2);
        String before = matcher.group(3);
        String after = matcher.group(6);
        boolean twice = (sign == null ? 0 : 1) + (before == null ? 0 : 1) + (after == null ? 0 : 1) > 1;
        boolean bothSigns = !matcher.group(1).isEmpty() && !matcher.group(4).isEmpty();
        if (twice || bothSigns) {
            throw new IllegalArgumentException(text);
        }
        Optional<CurrencyUnit> currency = Optional.empty();
        if (sign != null) {
            currency = Optional.of(sign.equals("£") ? CurrencyUnit.GBP : CurrencyUnit.EUR);
        } else if (before != null || after != null) {
            currency = Optional.of(currency(before != null ? before : String.valueOf(after)));
        }
        BigDecimal number = new BigDecimal(matcher.group(5));
        boolean negative = !matcher.group(1).isEmpty() || !matcher.group(4).isEmpty();
        String unit = matcher.group(7);
        Optional<Pack> per = unit == null ? Optional.empty() : Optional.of(pack("1 " + unit));
        return new Cash(negative ? number.negate() : number, currency, per);
    }

    private static CurrencyUnit currency(String text) {
        try {
            return CurrencyUnit.of(text);
        } catch (IllegalCurrencyException e) {
            throw new IllegalArgumentException(text, e);
        }
    }
}
