package costrel.report;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The clock of a brewing day, hung up on the start of the boil or on the cast.
 *
 * @param time the hour and minute that is known
 * @param of which of the two happens then
 */
public record BoilClock(LocalTime time, Anchor of) {

    /** What happens at the time that is known. */
    public enum Anchor {
        /** The copper comes to the boil. */
        BOIL,
        /** The copper is cast. */
        CAST
    }

    private static final int MINUTES_OF_A_DAY = 24 * 60;
    private static final Pattern FORM = Pattern.compile("(?:(boil|cast)\\s+)?(\\d{1,2}:\\d{2})");

    /**
     * Reads a clock.
     *
     * @param text such as "boil 09:00" or "cast 10:15"; a bare "09:00" is the start of the boil
     * @return the clock
     * @throws IllegalArgumentException if it is none
     */
    public static BoilClock parse(String text) {
        Matcher form = FORM.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (form.matches()) {
            try {
                LocalTime time = LocalTime.parse(form.group(2), DateTimeFormatter.ofPattern("H:mm", Locale.ROOT));
                return new BoilClock(time, "cast".equals(form.group(1)) ? Anchor.CAST : Anchor.BOIL);
            } catch (DateTimeException e) {
                throw refused(text);
            }
        }
        throw refused(text);
    }

    private static IllegalArgumentException refused(String text) {
        return new IllegalArgumentException(
                "clock: expected a time of the boil or the cast, such as boil 09:00 or cast 10:15, found '" + text
                        + "'");
    }

    /**
     * The time of the clock at some minutes before the cast.
     *
     * @param minutes minutes before the cast, below 0 after it
     * @param boilMinutes length of the boil
     * @return hours and minutes, to the nearest minute; another day than that of the start of the boil is named
     */
    public String beforeCast(double minutes, double boilMinutes) {
        long start = Math.round(time.toSecondOfDay() / 60.0 - (of == Anchor.CAST ? boilMinutes : 0));
        long at = Math.round(time.toSecondOfDay() / 60.0 + (of == Anchor.CAST ? 0 : boilMinutes) - minutes);
        long days = Math.floorDiv(at, MINUTES_OF_A_DAY) - Math.floorDiv(start, MINUTES_OF_A_DAY);
        long minute = Math.floorMod(at, MINUTES_OF_A_DAY);
        String text = String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
        return days == 0 ? text : text + (days > 0 ? " next day" : " day before");
    }
}
