package costrel.measure;

import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;

/**
 * Amounts as text, the same in every country: read strictly, printed so that they read back to the same number.
 *
 * <p>An amount is a number and a unit, with or without spaces around and between (no-break and narrow ones too). The
 * number is written in digits 0 to 9 with a point for decimals: no comma, no thousands mark, no exponent. It may have a
 * sign, and may be or end in one of ¼ ½ ¾ ⅛ ⅜ ⅝ ⅞. The whole text must be read, or it is refused with a
 * {@link QuantityTextException} that says what was expected. A mass, a volume or a time may come in several parts, each in
 * a smaller unit than the one before: "4 lb 6 oz", "20 brl 3 gal", "1 h 30 min"; it is then held in the smallest of these
 * units. Negative amounts are read; whoever asked decides whether they make sense.
 *
 * <table>
 * <caption>Every unit that is read, by the symbol it is printed with</caption>
 * <thead><tr><th>kind</th><th>symbols</th><th>also read</th><th>UN/ECE Recommendation 20</th></tr></thead>
 * <tbody>
 * <tr><td>mass</td><td>kg, g, mg, t, lb, oz, st, cwt (112 lb), qr (malt quarter of 336 lb)</td>
 *     <td>kilogram, gram, milligram, tonne, pound, lbs, ounce, stone, hundredweight, quarter</td>
 *     <td>KGM, GRM, MGM, TNE, LBR, ONZ, STI, CWI</td></tr>
 * <tr><td>volume</td><td>L, mL, hL, m³, fl oz, pt, qt, gal (all imperial), pin, firkin, kilderkin, brl (36 gal), hogshead,
 *     US gal, US bbl (beer, 31 US gal)</td>
 *     <td>litre, millilitre, hectolitre, m3, pint, quart, gallon, kil, barrel, hhd, US gallon, US brl, US barrel</td>
 *     <td>LTR, MLT, HLT, MTQ, OZI, PTI, QTI, GLI, GLL</td></tr>
 * <tr><td>time</td><td>min, s, h, d</td><td>minute, mins, second, sec, hour, hr, hrs, day</td>
 *     <td>MIN, SEC, HUR, DAY</td></tr>
 * <tr><td>temperature</td><td>°C, °F</td><td>degC, degF</td><td>CEL, FAH</td></tr>
 * <tr><td>weight per volume</td><td>g/hL, kg/hL, mg/L, g/L, oz/brl, lb/brl</td><td></td><td>M1 (mg/L), GL (g/L)</td></tr>
 * <tr><td>volume per weight</td><td>L/kg, mL/100 g, brl/qr</td>
 *     <td>hL/100 kg, brl/quarter</td><td></td></tr>
 * <tr><td>volume per volume</td><td>mL/hL, L/hL, pt/brl</td><td></td><td></td></tr>
 * <tr><td>extract</td><td>L°</td><td>L deg</td><td></td></tr>
 * <tr><td>extract per weight</td><td>L°/kg, lb/qr</td><td>L deg/kg, lb/quarter</td><td></td></tr>
 * <tr><td>flow</td><td>L/h, hL/h, brl/h</td><td></td><td></td></tr>
 * </tbody>
 * </table>
 *
 * <p>Words are read in the plural too. A small l does for L wherever it stands for litre, and the space in "/100 kg" and
 * "/100 g" may be left out. Words and abbreviations of three
 * letters or more are read in capitals as well, shorter symbols and codes only as they stand here: Mg is not mg. Petroleum
 * barrels (BLL, BLD, J57) are refused, and so is a bare bbl.
 */
public final class QuantityText {

    private static final int CONVERTED_DIGITS = 9;
    private static final int MOST_DECIMALS = 15;

    private QuantityText() {}

    /**
     * Mass from text such as "4 lb 6 oz".
     *
     * @param text a number and a unit
     * @return the amount in the unit written
     * @throws QuantityTextException if the text is anything else
     */
    public static Quantity<Mass> mass(String text) {
        return QuantityReader.read(text, Kind.MASS);
    }

    /**
     * Volume from text such as "30 brl".
     *
     * @param text a number and a unit
     * @return the amount in the unit written
     * @throws QuantityTextException if the text is anything else
     */
    public static Quantity<Volume> volume(String text) {
        return QuantityReader.read(text, Kind.VOLUME);
    }

    /**
     * Time from text such as "90 min".
     *
     * @param text a number and a unit
     * @return the amount in the unit written
     * @throws QuantityTextException if the text is anything else
     */
    public static Quantity<Time> time(String text) {
        return QuantityReader.read(text, Kind.TIME);
    }

    /**
     * Temperature from text such as "21 °C".
     *
     * @param text a number and a unit
     * @return the amount in the unit written
     * @throws QuantityTextException if the text is anything else
     */
    public static Quantity<Temperature> temperature(String text) {
        return QuantityReader.read(text, Kind.TEMPERATURE);
    }

    /**
     * Weight per volume from text such as "1.5 oz/brl".
     *
     * @param text a number and a unit
     * @return the amount in the unit written
     * @throws QuantityTextException if the text is anything else
     */
    public static Quantity<MassConcentration> massConcentration(String text) {
        return QuantityReader.read(text, Kind.MASS_CONCENTRATION);
    }

    /**
     * Volume per weight from text such as "2.5 L/kg".
     *
     * @param text a number and a unit
     * @return the amount in the unit written
     * @throws QuantityTextException if the text is anything else
     */
    public static Quantity<SpecificVolume> specificVolume(String text) {
        return QuantityReader.read(text, Kind.SPECIFIC_VOLUME);
    }

    /**
     * Volume per volume from text such as "350 mL/hL".
     *
     * @param text a number and a unit
     * @return the amount in the unit written
     * @throws QuantityTextException if the text is anything else
     */
    public static Quantity<VolumeRatio> volumeRatio(String text) {
        return QuantityReader.read(text, Kind.VOLUME_RATIO);
    }

    /**
     * Extract from text such as "36000 L°".
     *
     * @param text a number and a unit
     * @return the amount in the unit written
     * @throws QuantityTextException if the text is anything else
     */
    public static Quantity<ExtractAmount> extractAmount(String text) {
        return QuantityReader.read(text, Kind.EXTRACT_AMOUNT);
    }

    /**
     * Extract per weight from text such as "300 L°/kg".
     *
     * @param text a number and a unit
     * @return the amount in the unit written
     * @throws QuantityTextException if the text is anything else
     */
    public static Quantity<SpecificExtract> specificExtract(String text) {
        return QuantityReader.read(text, Kind.SPECIFIC_EXTRACT);
    }

    /**
     * Flow from text such as "140 L/h".
     *
     * @param text a number and a unit
     * @return the amount in the unit written
     * @throws QuantityTextException if the text is anything else
     */
    public static Quantity<FlowRate> flowRate(String text) {
        return QuantityReader.read(text, Kind.FLOW_RATE);
    }

    /**
     * An amount of any kind, known by its unit.
     *
     * @param text a number and a unit
     * @return the amount in the unit written
     * @throws QuantityTextException if the text is anything else
     */
    public static Quantity<?> any(String text) {
        return QuantityReader.read(text);
    }

    /**
     * An amount in its own unit, in as few digits as give back the same number; {@link #any} reads it.
     *
     * @param quantity an amount in a unit of the table
     * @return text such as "4.375 lb"
     * @throws IllegalArgumentException if the unit is not in the table, or the value is not finite
     */
    public static String print(Quantity<?> quantity) {
        return printed(quantity);
    }

    /**
     * An amount in a unit of choice, rounded half up.
     *
     * @param <Q> the kind of amount
     * @param quantity any amount
     * @param unit a unit of the table
     * @param decimals 0 to 15, all of them printed
     * @return text such as "30.0 brl"
     * @throws IllegalArgumentException if the unit is not in the table, the value is not finite, or the decimals are out of
     *     range
     */
    public static <Q extends Quantity<Q>> String print(Quantity<Q> quantity, Unit<Q> unit, int decimals) {
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException("decimals: expected 0 to " + MOST_DECIMALS + ", found " + decimals);
        }
        double value = Amounts.value(quantity, unit);
        String number = Decimals.shortest(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
        return UnitTable.require(unit).after(number);
    }

    /**
     * The code of a unit in UN/ECE Recommendation 20, Codes for Units of Measure Used in International Trade.
     *
     * @param unit any unit
     * @return a code such as KGM, or empty where the unit has none
     */
    public static Optional<String> code(Unit<?> unit) {
        return UnitTable.code(unit);
    }

    /**
     * The symbol a unit is printed with.
     *
     * @param unit a unit of the table
     * @return a symbol such as "g/hL"
     * @throws IllegalArgumentException if the unit is not in the table
     */
    public static String symbol(Unit<?> unit) {
        return UnitTable.require(unit).symbol();
    }

    /**
     * An amount in another unit of its kind, in at most nine significant digits.
     *
     * @param amount such as "2 oz/brl"
     * @param unit the symbol of a unit, such as "g/hL"
     * @return text such as "34.6445738 g/hL"
     * @throws QuantityTextException if either is anything else
     * @throws IllegalArgumentException if the two don't measure the same
     */
    public static String convert(String amount, String unit) {
        Quantity<?> from = any(amount);
        Unit<?> to = any("1 " + unit).getUnit();
        if (!from.getUnit().isCompatible(to)) {
            throw new IllegalArgumentException(
                    "unit: expected one for what '" + amount + "' measures, found '" + unit + "'");
        }
        return converted(from, to);
    }

    @SuppressWarnings("unchecked") // the units were found compatible
    private static <Q extends Quantity<Q>> String converted(Quantity<Q> from, Unit<?> to) {
        Unit<Q> unit = (Unit<Q>) to;
        double value = Amounts.value(from, unit);
        String number = Decimals.shortest(value)
                .round(new MathContext(CONVERTED_DIGITS))
                .stripTrailingZeros()
                .toPlainString();
        return UnitTable.require(unit).after(number);
    }

    private static <Q extends Quantity<Q>> String printed(Quantity<Q> quantity) {
        Unit<Q> unit = quantity.getUnit();
        String number = Decimals.shortest(Amounts.value(quantity, unit)).toPlainString();
        return UnitTable.require(unit).after(number);
    }
}
