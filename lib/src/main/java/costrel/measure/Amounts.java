package costrel.measure;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.quantity.Quantities;

/**
 * The one door between quantities and the plain numbers that calculations use.
 *
 * <p>Each kind of amount has one unit in which everything is worked: litres, kilograms, minutes, °C, g/hL, L/kg, mL/hL,
 * litre-degrees, L°/kg, L/h. A quantity is converted once, here, by an exact factor; NaN and infinities don't pass. A
 * temperature is a point on a scale: a difference of temperatures is refused.
 */
public final class Amounts {

    private static final double ABSOLUTE_ZERO_CELSIUS = -273.15;

    private Amounts() {}

    /**
     * A volume in L.
     *
     * @param volume in any unit
     * @return L
     * @throws IllegalArgumentException if the value is not finite
     */
    public static double litres(Quantity<Volume> volume) {
        return canonical(volume, Kind.VOLUME);
    }

    /**
     * A mass in kg.
     *
     * @param mass in any unit
     * @return kg
     * @throws IllegalArgumentException if the value is not finite
     */
    public static double kilograms(Quantity<Mass> mass) {
        return canonical(mass, Kind.MASS);
    }

    /**
     * A time in min.
     *
     * @param time in any unit
     * @return min
     * @throws IllegalArgumentException if the value is not finite
     */
    public static double minutes(Quantity<Time> time) {
        return canonical(time, Kind.TIME);
    }

    /**
     * A temperature in °C.
     *
     * @param temperature in any unit
     * @return °C
     * @throws IllegalArgumentException if the value is not finite, or it is a difference of temperatures
     */
    public static double celsius(Quantity<Temperature> temperature) {
        return canonical(temperature, Kind.TEMPERATURE);
    }

    /**
     * A weight per volume in g/hL.
     *
     * @param rate in any unit
     * @return g/hL
     * @throws IllegalArgumentException if the value is not finite
     */
    public static double gramsPerHectolitre(Quantity<MassConcentration> rate) {
        return canonical(rate, Kind.MASS_CONCENTRATION);
    }

    /**
     * A volume per weight in L/kg.
     *
     * @param ratio in any unit
     * @return L/kg
     * @throws IllegalArgumentException if the value is not finite
     */
    public static double litresPerKilogram(Quantity<SpecificVolume> ratio) {
        return canonical(ratio, Kind.SPECIFIC_VOLUME);
    }

    /**
     * A volume per volume in mL/hL.
     *
     * @param rate in any unit
     * @return mL/hL
     * @throws IllegalArgumentException if the value is not finite
     */
    public static double millilitresPerHectolitre(Quantity<VolumeRatio> rate) {
        return canonical(rate, Kind.VOLUME_RATIO);
    }

    /**
     * An amount of extract in L°.
     *
     * @param extract in any unit
     * @return L°
     * @throws IllegalArgumentException if the value is not finite
     */
    public static double litreDegrees(Quantity<ExtractAmount> extract) {
        return canonical(extract, Kind.EXTRACT_AMOUNT);
    }

    /**
     * An extract per weight in L°/kg.
     *
     * @param extract in any unit
     * @return L°/kg
     * @throws IllegalArgumentException if the value is not finite
     */
    public static double litreDegreesPerKilogram(Quantity<SpecificExtract> extract) {
        return canonical(extract, Kind.SPECIFIC_EXTRACT);
    }

    /**
     * A flow in L/h.
     *
     * @param flow in any unit
     * @return L/h
     * @throws IllegalArgumentException if the value is not finite
     */
    public static double litresPerHour(Quantity<FlowRate> flow) {
        return canonical(flow, Kind.FLOW_RATE);
    }

    /**
     * A volume of so many L.
     *
     * @param litres L, finite
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Quantity<Volume> ofLitres(double litres) {
        return of(litres, Units.LITRE);
    }

    /**
     * A mass of so many kg.
     *
     * @param kilograms kg, finite
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Quantity<Mass> ofKilograms(double kilograms) {
        return of(kilograms, Units.KILOGRAM);
    }

    /**
     * A time of so many min.
     *
     * @param minutes min, finite
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Quantity<Time> ofMinutes(double minutes) {
        return of(minutes, Units.MINUTE);
    }

    /**
     * A temperature of so many °C.
     *
     * @param celsius °C, finite
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Quantity<Temperature> ofCelsius(double celsius) {
        return of(celsius, Units.CELSIUS);
    }

    /**
     * A weight per volume of so many g/hL.
     *
     * @param gramsPerHectolitre g/hL, finite
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Quantity<MassConcentration> ofGramsPerHectolitre(double gramsPerHectolitre) {
        return of(gramsPerHectolitre, Units.GRAM_PER_HECTOLITRE);
    }

    /**
     * A volume per weight of so many L/kg.
     *
     * @param litresPerKilogram L/kg, finite
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Quantity<SpecificVolume> ofLitresPerKilogram(double litresPerKilogram) {
        return of(litresPerKilogram, Units.LITRE_PER_KILOGRAM);
    }

    /**
     * A volume per volume of so many mL/hL.
     *
     * @param millilitresPerHectolitre mL/hL, finite
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Quantity<VolumeRatio> ofMillilitresPerHectolitre(double millilitresPerHectolitre) {
        return of(millilitresPerHectolitre, Units.MILLILITRE_PER_HECTOLITRE);
    }

    /**
     * An amount of extract of so many L°.
     *
     * @param litreDegrees L°, finite
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Quantity<ExtractAmount> ofLitreDegrees(double litreDegrees) {
        return of(litreDegrees, Units.LITRE_DEGREE);
    }

    /**
     * An extract per weight of so many L°/kg.
     *
     * @param litreDegreesPerKilogram L°/kg, finite
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Quantity<SpecificExtract> ofLitreDegreesPerKilogram(double litreDegreesPerKilogram) {
        return of(litreDegreesPerKilogram, Units.LITRE_DEGREE_PER_KILOGRAM);
    }

    /**
     * A flow of so many L/h.
     *
     * @param litresPerHour L/h, finite
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Quantity<FlowRate> ofLitresPerHour(double litresPerHour) {
        return of(litresPerHour, Units.LITRE_PER_HOUR);
    }

    /**
     * An amount in any unit.
     *
     * @param <Q> the kind of amount
     * @param value finite
     * @param unit its unit, such as {@link Units#UK_BARREL}
     * @return the quantity
     * @throws IllegalArgumentException if the value is not finite
     */
    public static <Q extends Quantity<Q>> Quantity<Q> of(double value, Unit<Q> unit) {
        return Quantities.getQuantity(finite(value, unit), unit);
    }

    /**
     * The number of some unit that make an amount.
     *
     * @param <Q> the kind of amount
     * @param quantity any amount
     * @param unit the unit wanted
     * @return the number; 1 brl is exactly 288 pt
     * @throws IllegalArgumentException if the value is not finite, or the unit is of another kind
     */
    public static <Q extends Quantity<Q>> double value(Quantity<Q> quantity, Unit<Q> unit) {
        Unit<Q> given = quantity.getUnit();
        double value = checked(quantity);
        KnownUnit<Q> from = UnitTable.find(given);
        KnownUnit<Q> to = UnitTable.find(unit);
        if (from == null || to == null || !from.kind().equals(to.kind())) {
            return given.equals(unit) ? value : converted(quantity, unit);
        }
        return finite(from.to(to, value), unit);
    }

    /**
     * Whether two amounts are the same but for a small difference, whatever their units: 1 L is 1000 mL.
     *
     * @param <Q> the kind of amount
     * @param one an amount
     * @param other another
     * @param relativeTolerance the greatest difference as a fraction of the larger, 0 to 1; temperatures are compared as
     *     kelvin
     * @return whether they differ by no more than that
     * @throws IllegalArgumentException if a value is not finite, or the tolerance is out of range
     */
    public static <Q extends Quantity<Q>> boolean same(Quantity<Q> one, Quantity<Q> other, double relativeTolerance) {
        if (!(relativeTolerance >= 0 && relativeTolerance <= 1)) {
            throw new IllegalArgumentException("relative tolerance: expected 0 to 1, found " + relativeTolerance);
        }
        KnownUnit<Q> known = UnitTable.find(one.getUnit());
        Unit<Q> unit = known == null ? one.getUnit() : known.kind().canonical();
        double zero = unit.equals(Units.CELSIUS) ? ABSOLUTE_ZERO_CELSIUS : 0;
        double a = value(one, unit) - zero;
        double b = value(other, unit) - zero;
        return Math.abs(a - b) <= relativeTolerance * Math.max(Math.abs(a), Math.abs(b));
    }

    private static <Q extends Quantity<Q>> double canonical(Quantity<Q> quantity, Kind<Q> kind) {
        double value = checked(quantity);
        Unit<Q> given = quantity.getUnit();
        KnownUnit<Q> known = UnitTable.find(given);
        if (known == null || !known.kind().equals(kind)) {
            return converted(quantity, kind.canonical());
        }
        return finite(known.toCanonical(value), kind.canonical());
    }

    /** A unit from outside the table, such as pounds of an embedding program's own: by its own converter. */
    private static <Q extends Quantity<Q>> double converted(Quantity<Q> quantity, Unit<Q> unit) {
        Unit<Q> given = quantity.getUnit();
        if (!given.isCompatible(unit)) {
            throw new IllegalArgumentException("expected an amount that can be told in " + UnitTable.symbol(unit)
                    + ", found " + quantity.getValue() + " " + UnitTable.symbol(given));
        }
        return finite(given.getConverterTo(unit).convert(quantity.getValue()).doubleValue(), unit);
    }

    private static <Q extends Quantity<Q>> double checked(Quantity<Q> quantity) {
        Unit<Q> unit = quantity.getUnit();
        if (quantity.getScale() == Quantity.Scale.RELATIVE && unit.isCompatible(Units.CELSIUS)) {
            throw new IllegalArgumentException("expected a temperature, found a difference of " + quantity.getValue()
                    + " " + UnitTable.symbol(unit));
        }
        return finite(quantity.getValue().doubleValue(), unit);
    }

    private static double finite(double value, Unit<?> unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "expected a finite number of " + UnitTable.symbol(unit) + ", found " + value);
        }
        return value;
    }
}
