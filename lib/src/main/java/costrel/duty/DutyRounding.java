package costrel.duty;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A rounding that a country's law asks for.
 *
 * @param places decimals kept, 0 to 9
 * @param mode how: down, up or halves up
 */
public record DutyRounding(int places, RoundingMode mode) {

    public DutyRounding {
        if (places < 0 || places > 9) {
            throw new IllegalArgumentException("rounding: expected 0 to 9 decimals, found " + places);
        }
        words(mode);
    }

    /**
     * Reads a rounding as tables have it.
     *
     * @param text such as "down to 2" or "half up to 5"
     * @return the rounding
     * @throws IllegalArgumentException when it is written otherwise
     */
    public static DutyRounding parse(String text) {
        for (RoundingMode mode : new RoundingMode[] {RoundingMode.DOWN, RoundingMode.UP, RoundingMode.HALF_UP}) {
            String start = words(mode) + " to ";
            if (text.startsWith(start) && text.substring(start.length()).matches("[0-9]")) {
                return new DutyRounding(Integer.parseInt(text.substring(start.length())), mode);
            }
        }
        throw new IllegalArgumentException(
                "rounding: expected one such as down to 2 or half up to 5, found '" + text + "'");
    }

    /**
     * The rounding as tables have it.
     *
     * @return such as "down to 2"
     */
    public String label() {
        return words(mode) + " to " + places;
    }

    BigDecimal of(BigDecimal value) {
        return value.setScale(places, mode);
    }

    private static String words(RoundingMode mode) {
        return switch (mode) {
            case DOWN -> "down";
            case UP -> "up";
            case HALF_UP -> "half up";
            default -> throw new IllegalArgumentException("rounding: expected down, up or half up, found " + mode);
        };
    }
}
