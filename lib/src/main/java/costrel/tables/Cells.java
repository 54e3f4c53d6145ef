package costrel.tables;

import costrel.measure.Amounts;
import costrel.measure.QuantityText;
import costrel.measure.Share;
import costrel.measure.Units;
import costrel.wort.Colour;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the cells of our tables hold. Figures come out in the units of calculations: kg, L, min, °C, L/kg, L°/kg. */
final class Cells {

    static final CellKind<Double> KILOGRAMS =
            figure("a mass such as 25 kg", text -> Amounts.kilograms(QuantityText.mass(text)));
    static final CellKind<Double> LITRES =
            figure("a volume such as 30 brl", text -> Amounts.litres(QuantityText.volume(text)));
    static final CellKind<Double> MINUTES =
            figure("a time such as 90 min", text -> Amounts.minutes(QuantityText.time(text)));
    static final CellKind<Double> DAYS =
            figure("a time such as 6 d", text -> Amounts.value(QuantityText.time(text), Units.DAY));
    static final CellKind<Double> LITRES_PER_KILOGRAM = figure(
            "litres for each kilogram such as 2.5 L/kg",
            text -> Amounts.litresPerKilogram(QuantityText.specificVolume(text)));
    static final CellKind<Double> LITRES_PER_HOUR =
            figure("a flow such as 140 L/h", text -> Amounts.litresPerHour(QuantityText.flowRate(text)));
    static final CellKind<Double> LITRE_DEGREES_PER_KILOGRAM = figure(
            "a hot water extract such as 300 L°/kg",
            text -> Amounts.litreDegreesPerKilogram(QuantityText.specificExtract(text)));
    static final CellKind<Double> CELSIUS =
            CellKind.of("a temperature such as 66 °C", text -> Amounts.celsius(QuantityText.temperature(text)));

    /** A share from nothing to the whole, as a fraction. */
    static final CellKind<Double> PART = CellKind.of("a share from 0 % to 100 % such as 7.9 %", Cells::part);

    static final CellKind<Double> EBC =
            CellKind.of("a colour such as 5 EBC", text -> Colour.parse(text).ebc());
    static final CellKind<Gravity> GRAVITY = CellKind.of("a gravity such as 1.040", Gravity::parse);
    static final CellKind<Double> DEGREES =
            CellKind.of("a gravity such as 1.040", text -> Gravity.parse(text).excessDegrees());

    static final CellKind<LocalDate> DATE = CellKind.of("a date, year first, such as 2026-11-25", Cells::date);
    static final CellKind<Boolean> YES_NO = CellKind.of("yes or no", Cells::yesNo);
    static final CellKind<Integer> YEAR = CellKind.of("a year such as 2026", Cells::year);

    /** A number that has no unit, such as a ratio. */
    static final CellKind<Double> NUMBER =
            figure("a number such as 0.28", text -> decimal(text).doubleValue());

    static final CellKind<Double> KELVIN = CellKind.of(
            "a difference of temperatures such as 1.5 °C",
            text -> before(text, "°C", "K").doubleValue());

    /** Carbon dioxide in volumes of gas to one of beer. */
    static final CellKind<Double> VOLUMES_OF_GAS = figure(
            "condition such as 2.0 volumes",
            text -> before(text, "volumes", "volume", "vol", "vols").doubleValue());

    /** Oil of hops, mL in 100 g. */
    static final CellKind<Double> OIL = figure(
            "an oil content such as 0.85 mL/100 g",
            text -> before(text, "mL/100 g", "mL/100g").doubleValue());

    /** Equivalents of an acid in a litre. */
    static final CellKind<Double> NORMALITY = figure(
            "a normality such as 11.642 eq/L", text -> before(text, "eq/L", "N").doubleValue());

    /** Yeast cells in a kilogram. */
    static final CellKind<Double> CELLS_PER_KILOGRAM = figure(
            "cells such as 7500 billion/kg",
            text -> before(text, "billion/kg").movePointRight(9).doubleValue());

    /** Words separated by semicolons, such as allergens. */
    static final CellKind<List<String>> LIST = new CellKind<>("words separated by ';'", Cells::list, true);

    private static final Pattern DECIMAL = Pattern.compile("[+-]?\\d{1,30}(?:\\.\\d{1,30})?");
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([+-]?\\d{1,30}(?:\\.\\d{1,30})?)[ \\u00a0]*(.*)");
    private static final Pattern ISO_DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    private Cells() {}

    /** A number without unit, exactly. */
    static BigDecimal decimal(String text) {
        if (!DECIMAL.matcher(text).matches()) {
            throw new IllegalArgumentException(text);
        }
        return new BigDecimal(text);
    }

    /** The number before one of these units, exactly. */
    static BigDecimal before(String text, String... units) {
        Matcher matcher = NUMBER_AND_UNIT.matcher(text);
        if (!matcher.matches() || !List.of(units).contains(matcher.group(2))) {
            throw new IllegalArgumentException(text);
        }
        return new BigDecimal(matcher.group(1));
    }

    private static CellKind<Double> figure(String expected, ToDoubleFunction<String> parser) {
        return CellKind.of(expected, text -> {
            double value = parser.applyAsDouble(text);
            if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "expected " + expected + ", 0 or more, found " + TableProblem.quoted(text));
            }
            return value + 0.0;
        });
    }

    private static double part(String text) {
        double share = Share.parse(text).fraction();
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException(text);
        }
        return share;
    }

    private static LocalDate date(String text) {
        if (!ISO_DATE.matcher(text).matches()) {
            throw new IllegalArgumentException(text);
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "expected a day that the calendar has, found " + TableProblem.quoted(text), e);
        }
    }

    private static boolean yesNo(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> throw new IllegalArgumentException(text);
        };
    }

    private static int year(String text) {
        if (!text.matches("\\d{4}")) {
            throw new IllegalArgumentException(text);
        }
        return Integer.parseInt(text);
    }

    private static List<String> list(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.split(";", -1)) {
            String stripped = word.strip();
            if (stripped.isEmpty()) {
                throw new IllegalArgumentException(text);
            }
            words.add(stripped);
        }
        return List.copyOf(words);
    }
}
