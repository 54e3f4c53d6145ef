package costrel.wort;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How hot a wort is, minute by minute: segments one after another, each held, straight or cooling by Newton's law. It
 * may be empty, which is written {@code none}.
 *
 * <p>As text the segments are joined by a semicolon:
 *
 * <pre>
 * hold 98 °C 20 min; linear 98 °C to 80 °C 30 min; newton 80 °C towards 20 °C 0.005 /min 30 min
 * </pre>
 *
 * @param segments the segments from first to last
 */
public record TemperatureCourse(List<Segment> segments) {
    private static final String EMPTY = "none";
    private static final int MOST_SEGMENTS = 1000;

    /** Sums of minutes carry rounding; a tail longer than the course by less than this is the course. */
    private static final double MINUTE_NOISE = 1e-9;

    public TemperatureCourse {
        segments = List.copyOf(segments);
        if (segments.size() > MOST_SEGMENTS) {
            throw new IllegalArgumentException(
                    "temperature course: expected at most 1000 segments, found " + segments.size());
        }
    }

    /** One stretch of a course. */
    public sealed interface Segment permits Hold, Linear, Newton {
        /**
         * How long it lasts.
         *
         * @return minutes, more than 0
         */
        double minutes();

        /**
         * The temperature at the start.
         *
         * @return °C
         */
        double fromCelsius();

        /**
         * The temperature within the segment.
         *
         * @param minute minutes from its start, 0 to its length
         * @return °C
         */
        double celsiusAt(double minute);

        /**
         * The end of this segment.
         *
         * @param minutes how much of it, more than 0 and not above its length
         * @return a segment of that length that ends as this one does
         */
        Segment tail(double minutes);
    }

    /**
     * A temperature held.
     *
     * @param celsius °C, -20 to 150
     * @param minutes minutes, more than 0
     */
    public record Hold(double celsius, double minutes) implements Segment {
        public Hold {
            celsius = requireTemperature("temperature", celsius);
            requireMinutes(minutes);
        }

        @Override
        public double fromCelsius() {
            return celsius;
        }

        @Override
        public double celsiusAt(double minute) {
            return celsius;
        }

        @Override
        public Segment tail(double minutes) {
            return new Hold(celsius, minutes);
        }

        @Override
        public String toString() {
            return "hold " + ScaleText.plain(celsius) + " °C " + ScaleText.plain(minutes) + " min";
        }
    }

    /**
     * A temperature that rises or falls in a straight line.
     *
     * @param fromC °C at the start, -20 to 150
     * @param toC °C at the end, -20 to 150
     * @param minutes minutes, more than 0
     */
    public record Linear(double fromC, double toC, double minutes) implements Segment {
        public Linear {
            fromC = requireTemperature("temperature at the start", fromC);
            toC = requireTemperature("temperature at the end", toC);
            requireMinutes(minutes);
        }

        @Override
        public double fromCelsius() {
            return fromC;
        }

        @Override
        public double celsiusAt(double minute) {
            return fromC + (toC - fromC) * (minute / minutes);
        }

        @Override
        public Segment tail(double minutes) {
            return new Linear(celsiusAt(this.minutes - minutes), toC, minutes);
        }

        @Override
        public String toString() {
            return "linear " + ScaleText.plain(fromC) + " °C to " + ScaleText.plain(toC) + " °C "
                    + ScaleText.plain(minutes) + " min";
        }
    }

    /**
     * A temperature that goes towards that of the surroundings, T = Ts + (T₀ − Ts) e^(−k t).
     *
     * @param fromC °C at the start, -20 to 150
     * @param surroundingsC °C it goes towards, -20 to 150
     * @param ratePerMinute k in 1/min, more than 0
     * @param minutes minutes, more than 0
     */
    public record Newton(double fromC, double surroundingsC, double ratePerMinute, double minutes) implements Segment {
        public Newton {
            fromC = requireTemperature("temperature at the start", fromC);
            surroundingsC = requireTemperature("temperature of the surroundings", surroundingsC);
            Limits.above("rate", ratePerMinute, 0, " /min");
            requireMinutes(minutes);
        }

        @Override
        public double fromCelsius() {
            return fromC;
        }

        @Override
        public double celsiusAt(double minute) {
            return surroundingsC + (fromC - surroundingsC) * Math.exp(-ratePerMinute * minute);
        }

        @Override
        public Segment tail(double minutes) {
            return new Newton(celsiusAt(this.minutes - minutes), surroundingsC, ratePerMinute, minutes);
        }

        @Override
        public String toString() {
            return "newton " + ScaleText.plain(fromC) + " °C towards " + ScaleText.plain(surroundingsC) + " °C "
                    + ScaleText.plain(ratePerMinute) + " /min " + ScaleText.plain(minutes) + " min";
        }
    }

    /**
     * A course of segments.
     *
     * @param segments the segments from first to last; none at all is the empty course
     * @return the course
     * @throws IllegalArgumentException when there are over 1000
     */
    public static TemperatureCourse of(Segment... segments) {
        return new TemperatureCourse(List.of(segments));
    }

    /**
     * Reads a course as {@link #toString} writes it.
     *
     * @param text segments joined by semicolons, or {@code none}
     * @return the course
     * @throws IllegalArgumentException when a segment is written or valued otherwise; the message names the segment
     */
    public static TemperatureCourse parse(String text) {
        return CourseText.parse(text);
    }

    /**
     * How long the course lasts.
     *
     * @return minutes, 0 when it is empty
     */
    public double minutes() {
        double sum = 0;
        for (Segment segment : segments) {
            sum += segment.minutes();
        }
        return sum;
    }

    /**
     * The temperature at a time; where two segments meet, the later one has begun.
     *
     * @param minute minutes from the start, 0 to the length of the course
     * @return °C
     * @throws IllegalArgumentException when the course is empty or the time lies outside it
     */
    public double celsiusAt(double minute) {
        requireSegment();
        if (!(minute >= 0 && minute <= minutes() + MINUTE_NOISE)) {
            throw new IllegalArgumentException("temperature course: expected a time of 0 to "
                    + ScaleText.plain(minutes()) + " min, found " + ScaleText.plain(minute));
        }
        double start = 0;
        for (Segment segment : segments) {
            if (minute < start + segment.minutes()) {
                return segment.celsiusAt(minute - start);
            }
            start += segment.minutes();
        }
        Segment last = segments.get(segments.size() - 1);
        return last.celsiusAt(last.minutes());
    }

    /**
     * The highest temperature of the course.
     *
     * @return °C
     * @throws IllegalArgumentException when the course is empty
     */
    public double maxCelsius() {
        requireSegment();
        double most = Double.NEGATIVE_INFINITY;
        for (Segment segment : segments) {
            most = Math.max(most, Math.max(segment.fromCelsius(), segment.celsiusAt(segment.minutes())));
        }
        return most;
    }

    /**
     * The last minutes of the course: what an addition so long before its end still goes through.
     *
     * @param minutes minutes, 0 to the length of the course
     * @return the end of the course; a segment that begins earlier is split
     * @throws IllegalArgumentException when the course isn't so long
     */
    public TemperatureCourse tail(double minutes) {
        if (!(minutes >= 0 && minutes <= minutes() + MINUTE_NOISE)) {
            throw new IllegalArgumentException("temperature course: expected a tail of 0 to "
                    + ScaleText.plain(minutes()) + " min, found " + ScaleText.plain(minutes));
        }
        List<Segment> kept = new ArrayList<>();
        double left = minutes;
        for (int i = segments.size() - 1; i >= 0 && left > 0; i--) {
            Segment segment = segments.get(i);
            kept.add(left < segment.minutes() ? segment.tail(left) : segment);
            left -= segment.minutes();
        }
        Collections.reverse(kept);
        return new TemperatureCourse(kept);
    }

    /**
     * This course and then another.
     *
     * @param next what follows
     * @return both as one course
     * @throws IllegalArgumentException when they have over 1000 segments together
     */
    public TemperatureCourse then(TemperatureCourse next) {
        List<Segment> both = new ArrayList<>(segments);
        both.addAll(next.segments);
        return new TemperatureCourse(both);
    }

    /**
     * The course as text.
     *
     * @return the text, which {@link #parse} reads back to an equal course
     */
    @Override
    public String toString() {
        return segments.isEmpty()
                ? EMPTY
                : segments.stream().map(Segment::toString).collect(Collectors.joining("; "));
    }

    private void requireSegment() {
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("temperature course: expected a segment or more, found none");
        }
    }

    private static double requireTemperature(String what, double celsius) {
        return Limits.within(what, celsius, -20, 150, " °C");
    }

    private static void requireMinutes(double minutes) {
        Limits.above("time", minutes, 0, " min");
    }
}
