package costrel.tables;

import costrel.measure.Amounts;
import costrel.measure.QuantityText;
import costrel.plant.DipTable;
import java.math.BigDecimal;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rows of plants.csv such as "copper dip 4000 L" with "92.5 cm": points of a vessel's dip table. */
final class DipPoints {

    /** As they are offered where a property is mistyped. */
    static final List<String> WORDS = List.of("copper dip 4000 L", "FV dip 4000 L");

    private static final Pattern POINT =
            Pattern.compile("(copper|FV)\\s+dip\\s+(\\d.{0,30})", Pattern.CASE_INSENSITIVE);

    private static final CellKind<Double> CENTIMETRES = CellKind.of("a dip such as 92.5 cm", DipPoints::centimetres);

    private DipPoints() {}

    static boolean isOne(String property) {
        Matcher point = POINT.matcher(property);
        if (!point.matches()) {
            return false;
        }
        try {
            QuantityText.volume(point.group(2).strip());
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** The property in its usual spelling, so that one volume has one row. */
    static String named(String property) {
        Matcher point = POINT.matcher(property);
        if (!point.matches()) {
            throw new IllegalArgumentException(property);
        }
        String vessel = point.group(1).equalsIgnoreCase("FV") ? "FV" : "copper";
        return vessel + " dip " + point.group(2).strip();
    }

    /** The table of a vessel; without points where none are stated. */
    static Optional<DipTable> of(Properties plant, String vessel) {
        NavigableMap<Double, Double> points = new TreeMap<>();
        boolean sound = true;
        String last = "";
        String start = vessel + " dip ";
        for (String property : plant.names()) {
            if (property.startsWith(start)) {
                double litres = Amounts.litres(QuantityText.volume(property.substring(start.length())));
                Optional<Double> reading = plant.may(property, CENTIMETRES);
                sound &= reading.isPresent();
                last = property;
                reading.ifPresent(cm -> points.put(litres, cm));
            }
        }
        if (!sound) {
            return Optional.empty();
        }
        try {
            return Optional.of(new DipTable(points));
        } catch (IllegalArgumentException e) {
            TableProblem told = TableProblem.from("", 0, "", String.valueOf(e.getMessage()));
            plant.problem(last, told.found(), told.expected() + " for the dips of the " + vessel);
            return Optional.empty();
        }
    }

    private static double centimetres(String text) {
        BigDecimal reading = text.endsWith("mm") ? Cells.before(text, "mm").movePointLeft(1) : Cells.before(text, "cm");
        if (reading.signum() < 0) {
            throw new IllegalArgumentException(text);
        }
        return reading.doubleValue();
    }
}
