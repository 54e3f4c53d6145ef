package costrel.measure;

import static tech.units.indriya.function.MultiplyConverter.ofRational;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.function.AddConverter;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.BaseUnit;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.UnitDimension;

/**
 * The units of a British brewery, each by its exact factor.
 *
 * <p>Imperial measures follow the Weights and Measures Act 1985, Schedule 1: the gallon is 4.54609 cubic decimetres and
 * the pound 0.45359237 kg, both exactly. Scales such as SG, °Plato, EBC and EBU are not units and are not here.
 */
public final class Units {

    // ---- volumes -------------------------------------------------------------------------------------------------

    /** Litre, a cubic decimetre. */
    public static final Unit<Volume> LITRE = tech.units.indriya.unit.Units.LITRE;

    /** Millilitre, 1/1000 L. */
    public static final Unit<Volume> MILLILITRE = litres("mL", "millilitre", 1, 1000);

    /** Hectolitre, 100 L. */
    public static final Unit<Volume> HECTOLITRE = litres("hL", "hectolitre", 100, 1);

    /** Cubic metre, 1000 L. */
    public static final Unit<Volume> CUBIC_METRE = tech.units.indriya.unit.Units.CUBIC_METRE;

    /** Imperial gallon, 4.54609 L (Weights and Measures Act 1985, Schedule 1). */
    public static final Unit<Volume> IMPERIAL_GALLON = litres("gal", "imperial gallon", 454_609, 100_000);

    /** Imperial quart, a quarter of a gallon (Weights and Measures Act 1985, Schedule 1). */
    public static final Unit<Volume> IMPERIAL_QUART = gallons("qt", "imperial quart", 1, 4);

    /** Imperial pint, an eighth of a gallon, 0.56826125 L (Weights and Measures Act 1985, Schedule 1). */
    public static final Unit<Volume> IMPERIAL_PINT = gallons("pt", "imperial pint", 1, 8);

    /** Imperial fluid ounce, a twentieth of a pint (Weights and Measures Act 1985, Schedule 1). */
    public static final Unit<Volume> IMPERIAL_FLUID_OUNCE = gallons("fl oz", "imperial fluid ounce", 1, 160);

    /** Pin, a cask of 4½ gallons (20.46 L in St Austell Brewery's statement of duty on casks). */
    public static final Unit<Volume> PIN = gallons("pin", "pin", 9, 2);

    /** Firkin, a cask of 9 gallons, 40.91481 L (40.91 L in St Austell Brewery's statement of duty on casks). */
    public static final Unit<Volume> FIRKIN = gallons("firkin", "firkin", 9, 1);

    /** Kilderkin, a cask of 18 gallons (81.83 L in St Austell Brewery's statement of duty on casks). */
    public static final Unit<Volume> KILDERKIN = gallons("kilderkin", "kilderkin", 18, 1);

    /**
     * UK beer barrel of 36 gallons, 288 pints, 163.65924 L (Hough et al., Malting and Brewing Science, appendix on units
     * of measurement).
     */
    public static final Unit<Volume> UK_BARREL = gallons("brl", "UK beer barrel", 36, 1);

    /** Hogshead, a cask of 54 gallons (common practice, no source). */
    public static final Unit<Volume> HOGSHEAD = gallons("hogshead", "hogshead", 54, 1);

    /** US gallon of 231 cubic inches of 2.54 cm, 3.785411784 L (27 CFR 25.11). */
    public static final Unit<Volume> US_GALLON = litres("US gal", "US gallon", 3_785_411_784L, 1_000_000_000L);

    /** US beer barrel of 31 US gallons, 117.347765304 L (27 CFR 25.11). The petroleum barrel of 42 is not here. */
    public static final Unit<Volume> US_BEER_BARREL =
            litres("US bbl", "US beer barrel", 31 * 3_785_411_784L, 1_000_000_000L);

    // ---- weights -------------------------------------------------------------------------------------------------

    /** Kilogram. */
    public static final Unit<Mass> KILOGRAM = tech.units.indriya.unit.Units.KILOGRAM;

    /** Gram, 1/1000 kg. */
    public static final Unit<Mass> GRAM = tech.units.indriya.unit.Units.GRAM;

    /** Milligram, a millionth of a kg. */
    public static final Unit<Mass> MILLIGRAM = kilograms("mg", "milligram", 1, 1_000_000);

    /** Tonne, 1000 kg. The long and the short ton are not here. */
    public static final Unit<Mass> TONNE = kilograms("t", "tonne", 1000, 1);

    /** Pound, 0.45359237 kg (Weights and Measures Act 1985, Schedule 1). */
    public static final Unit<Mass> POUND = kilograms("lb", "pound", 45_359_237, 100_000_000);

    /** Ounce avoirdupois, 1/16 lb (Weights and Measures Act 1985, Schedule 1). */
    public static final Unit<Mass> OUNCE = pounds("oz", "ounce", 1, 16);

    /** Stone, 14 lb (Weights and Measures Act 1985, Schedule 1). */
    public static final Unit<Mass> STONE = pounds("st", "stone", 14, 1);

    /** Hundredweight of 112 lb, 50.80234544 kg (Weights and Measures Act 1985, Schedule 1), not the 100 lb one. */
    public static final Unit<Mass> HUNDREDWEIGHT = pounds("cwt", "hundredweight", 112, 1);

    /**
     * The maltster's quarter: malt by weight at 336 lb (Hough et al., Malting and Brewing Science, appendix on units of
     * measurement). It is not the quarter of 28 lb that is a fourth of a hundredweight.
     */
    public static final Unit<Mass> QUARTER = pounds("qr", "malt quarter", 336, 1);

    // ---- times and temperatures ----------------------------------------------------------------------------------

    /** Minute. */
    public static final Unit<Time> MINUTE = tech.units.indriya.unit.Units.MINUTE;

    /** Second, 1/60 min. */
    public static final Unit<Time> SECOND = tech.units.indriya.unit.Units.SECOND;

    /** Hour, 60 min. */
    public static final Unit<Time> HOUR = tech.units.indriya.unit.Units.HOUR;

    /** Day, 24 h. */
    public static final Unit<Time> DAY = tech.units.indriya.unit.Units.DAY;

    /** Degree Celsius, a point on a scale and never a difference: add and subtract temperatures as numbers only. */
    public static final Unit<Temperature> CELSIUS = tech.units.indriya.unit.Units.CELSIUS;

    /** Degree Fahrenheit, 32 at 0 °C and 212 at 100 °C; a point on a scale and never a difference. */
    public static final Unit<Temperature> FAHRENHEIT = new TransformedUnit<>(
            "°F",
            "degree Fahrenheit",
            tech.units.indriya.unit.Units.KELVIN,
            ofRational(5, 9).concatenate(new AddConverter(RationalNumber.of(45_967, 100))));

    // ---- weights for a volume ------------------------------------------------------------------------------------

    /** Gram per hectolitre. */
    public static final Unit<MassConcentration> GRAM_PER_HECTOLITRE =
            ratio("g/hL", "gram per hectolitre", GRAM, HECTOLITRE, MassConcentration.class);

    /** Kilogram per hectolitre, 1000 g/hL. */
    public static final Unit<MassConcentration> KILOGRAM_PER_HECTOLITRE =
            ratio("kg/hL", "kilogram per hectolitre", KILOGRAM, HECTOLITRE, MassConcentration.class);

    /** Milligram per litre, 0.1 g/hL. */
    public static final Unit<MassConcentration> MILLIGRAM_PER_LITRE =
            ratio("mg/L", "milligram per litre", MILLIGRAM, LITRE, MassConcentration.class);

    /** Gram per litre, 100 g/hL. */
    public static final Unit<MassConcentration> GRAM_PER_LITRE =
            ratio("g/L", "gram per litre", GRAM, LITRE, MassConcentration.class);

    /** Ounce per UK barrel, 17.322287 g/hL. */
    public static final Unit<MassConcentration> OUNCE_PER_BARREL =
            ratio("oz/brl", "ounce per UK barrel", OUNCE, UK_BARREL, MassConcentration.class);

    /** Pound per UK barrel, 277.156591 g/hL: a weight in a volume, not the brewers' pounds of a saccharometer. */
    public static final Unit<MassConcentration> POUND_PER_BARREL =
            ratio("lb/brl", "pound per UK barrel", POUND, UK_BARREL, MassConcentration.class);

    // ---- volumes for a weight, volumes for a volume --------------------------------------------------------------

    /** Litre per kilogram, the same as a hectolitre for 100 kg. */
    public static final Unit<SpecificVolume> LITRE_PER_KILOGRAM =
            ratio("L/kg", "litre per kilogram", LITRE, KILOGRAM, SpecificVolume.class);

    /** Millilitre per 100 g, in which hop oil is stated; 0.01 L/kg. */
    public static final Unit<SpecificVolume> MILLILITRE_PER_100_GRAM =
            ratio("mL/100 g", "millilitre per 100 g", MILLILITRE, GRAM.multiply(100), SpecificVolume.class);

    /** UK barrel per malt quarter of 336 lb, 1.073830 L/kg. */
    public static final Unit<SpecificVolume> BARREL_PER_QUARTER =
            ratio("brl/qr", "UK barrel per malt quarter", UK_BARREL, QUARTER, SpecificVolume.class);

    /** Millilitre per hectolitre. */
    public static final Unit<VolumeRatio> MILLILITRE_PER_HECTOLITRE =
            ratio("mL/hL", "millilitre per hectolitre", MILLILITRE, HECTOLITRE, VolumeRatio.class);

    /** Litre per hectolitre, 1000 mL/hL. */
    public static final Unit<VolumeRatio> LITRE_PER_HECTOLITRE =
            ratio("L/hL", "litre per hectolitre", LITRE, HECTOLITRE, VolumeRatio.class);

    /** Imperial pint per UK barrel, 1/288 by volume, 347.2222 mL/hL. */
    public static final Unit<VolumeRatio> PINT_PER_BARREL =
            ratio("pt/brl", "imperial pint per UK barrel", IMPERIAL_PINT, UK_BARREL, VolumeRatio.class);

    // ---- extract -------------------------------------------------------------------------------------------------

    /** Litre-degree: a litre of wort at one degree of excess gravity (SG 1.001). */
    public static final Unit<ExtractAmount> LITRE_DEGREE =
            new BaseUnit<>("L°", "litre-degree", UnitDimension.parse('E'));

    /** Litre-degree per kilogram, in which hot water extract is stated. */
    public static final Unit<SpecificExtract> LITRE_DEGREE_PER_KILOGRAM =
            ratio("L°/kg", "litre-degree per kilogram", LITRE_DEGREE, KILOGRAM, SpecificExtract.class);

    /**
     * Pound of extract per malt quarter, 2.982861 L°/kg.
     *
     * <p>A quarter of 336 lb that fills one barrel of 36 gallons with wort one brewers' pound heavier than water gives 1
     * lb/qr. A barrel of water is reckoned at 360 lb, so that a brewers' pound is 1000/360 degrees of excess gravity
     * (Hough et al., Malting and Brewing Science, appendix on units of measurement).
     */
    public static final Unit<SpecificExtract> POUND_PER_QUARTER = new TransformedUnit<>(
            "lb/qr",
            "pound of extract per malt quarter",
            LITRE_DEGREE_PER_KILOGRAM,
            UK_BARREL
                    .getConverterTo(LITRE)
                    .concatenate(ofRational(1000, 360))
                    .concatenate(QUARTER.getConverterTo(KILOGRAM).inverse()));

    // ---- flow ----------------------------------------------------------------------------------------------------

    /** Litre per hour. */
    public static final Unit<FlowRate> LITRE_PER_HOUR = ratio("L/h", "litre per hour", LITRE, HOUR, FlowRate.class);

    /** Hectolitre per hour, 100 L/h. */
    public static final Unit<FlowRate> HECTOLITRE_PER_HOUR =
            ratio("hL/h", "hectolitre per hour", HECTOLITRE, HOUR, FlowRate.class);

    /** UK barrel per hour, 163.65924 L/h. */
    public static final Unit<FlowRate> BARREL_PER_HOUR =
            ratio("brl/h", "UK barrel per hour", UK_BARREL, HOUR, FlowRate.class);

    private Units() {}

    private static Unit<Volume> litres(String symbol, String name, long dividend, long divisor) {
        return new TransformedUnit<>(symbol, name, LITRE, ofRational(dividend, divisor));
    }

    private static Unit<Volume> gallons(String symbol, String name, long dividend, long divisor) {
        return new TransformedUnit<>(symbol, name, IMPERIAL_GALLON, ofRational(dividend, divisor));
    }

    private static Unit<Mass> kilograms(String symbol, String name, long dividend, long divisor) {
        return new TransformedUnit<>(symbol, name, KILOGRAM, ofRational(dividend, divisor));
    }

    private static Unit<Mass> pounds(String symbol, String name, long dividend, long divisor) {
        return new TransformedUnit<>(symbol, name, POUND, ofRational(dividend, divisor));
    }

    private static <Q extends Quantity<Q>> Unit<Q> ratio(
            String symbol, String name, Unit<?> above, Unit<?> below, Class<Q> kind) {
        return new TransformedUnit<>(symbol, name, above.divide(below).asType(kind), MultiplyConverter.identity());
    }
}
