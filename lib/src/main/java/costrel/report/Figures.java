package costrel.report;

import costrel.measure.Amounts;
import costrel.measure.Units;
import java.util.Locale;
import java.util.OptionalDouble;

/** Figures as sheets print them. Rounding here is for reading only. */
final class Figures {

    private static final double LITRES_PER_BARREL = Amounts.litres(Amounts.of(1, Units.UK_BARREL));

    private Figures() {}

    static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    static String fixed(OptionalDouble value, int decimals) {
        return value.isPresent() ? fixed(value.getAsDouble(), decimals) : "";
    }

    static String percent(double share, int decimals) {
        return fixed(share * 100, decimals) + " %";
    }

    static String degrees(double excess) {
        return fixed(1 + excess / 1000, 4);
    }

    /** Litres, and barrels beside them. */
    static String brewLength(double litres) {
        String barrels = fixed(litres / LITRES_PER_BARREL, 2).replaceAll("\\.?0+$", "");
        return barrels + " brl (" + fixed(litres, 0) + " L)";
    }

    /** Words joined and folded at a width, every line indented. */
    static String folded(String text, int indent, int width) {
        StringBuilder all = new StringBuilder();
        StringBuilder line = new StringBuilder(" ".repeat(indent));
        int used = 0;
        for (String word : text.split(" ", -1)) {
            if (used > 0 && line.length() + 1 + word.length() > width) {
                all.append(line).append('\n');
                line = new StringBuilder(" ".repeat(indent + 2));
                used = 0;
            }
            if (used++ > 0) {
                line.append(' ');
            }
            line.append(word);
        }
        return all.append(line).append('\n').toString();
    }

    /** A name with a capital, as the name of a rule is printed. */
    static String capital(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }
}
