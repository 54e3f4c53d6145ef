package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;

import costrel.wort.TemperatureCourse.Hold;
import costrel.wort.TemperatureCourse.Linear;
import costrel.wort.TemperatureCourse.Newton;
import costrel.wort.TemperatureCourse.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TemperatureCourseTest {
    private static final double CLOSE = 1e-9;
    private static final TemperatureCourse STAND =
            TemperatureCourse.of(new Hold(98, 20), new Linear(98, 80, 30), new Newton(80, 20, Math.log(2) / 30, 30));

    @Test
    void the_temperature_follows_each_segment_in_turn() {
        assertEquals(80, STAND.minutes());
        assertEquals(98, STAND.celsiusAt(0));
        assertEquals(98, STAND.celsiusAt(19.9));
        assertEquals(89, STAND.celsiusAt(35), CLOSE);
        // The excess over the surroundings halves in a half-life: 80 towards 20 is 50 after it.
        assertEquals(50, STAND.celsiusAt(80), CLOSE);
        assertEquals(98, STAND.maxCelsius());
        assertEquals(90, TemperatureCourse.of(new Newton(20, 90, 5, 60)).maxCelsius(), CLOSE);
    }

    @Test
    void where_two_segments_meet_the_later_has_begun() {
        TemperatureCourse step = TemperatureCourse.of(new Hold(100, 10), new Hold(80, 10));
        assertEquals(80, step.celsiusAt(10));
        assertEquals(80, step.celsiusAt(20));
    }

    @Test
    void the_tail_of_a_course_ends_as_the_course_does() {
        TemperatureCourse tail = STAND.tail(45);
        assertEquals(45, tail.minutes(), CLOSE);
        assertEquals(new Linear(89, 80, 15), tail.segments().get(0));
        assertEquals(STAND.segments().get(2), tail.segments().get(1));
        assertEquals(STAND, STAND.tail(80));
        assertEquals(TemperatureCourse.of(), STAND.tail(0));
        Seeded.cases(500, random -> {
            TemperatureCourse course = any(random);
            double minutes = Seeded.between(random, 0, course.minutes());
            TemperatureCourse end = course.tail(minutes);
            assertEquals(minutes, end.minutes(), CLOSE);
            // Away from the joins, where rounding may put the moment in either segment.
            double before = Seeded.between(random, 0, minutes);
            if (isAwayFromJoins(course, course.minutes() - before)) {
                assertEquals(course.celsiusAt(course.minutes() - before), end.celsiusAt(minutes - before), 1e-7);
            }
        });
    }

    private static boolean isAwayFromJoins(TemperatureCourse course, double minute) {
        double start = 0;
        for (Segment segment : course.segments()) {
            if (Math.abs(start - minute) < 1e-6) {
                return false;
            }
            start += segment.minutes();
        }
        return true;
    }

    @Test
    void one_course_follows_another() {
        TemperatureCourse boil = TemperatureCourse.of(new Hold(100, 60));
        TemperatureCourse both = boil.then(STAND);
        assertEquals(140, both.minutes());
        assertEquals(100, both.celsiusAt(59));
        assertEquals(98, both.celsiusAt(60));
        assertEquals(STAND, both.tail(80));
        assertEquals(STAND, TemperatureCourse.of().then(STAND));
    }

    @Test
    void a_course_is_written_as_it_is_read() {
        String text = "hold 98 °C 20 min; linear 98 °C to 80 °C 30 min; newton 100 °C towards 20 °C 0.005 /min 30 min";
        TemperatureCourse course = TemperatureCourse.parse(text);
        assertEquals(
                List.of(new Hold(98, 20), new Linear(98, 80, 30), new Newton(100, 20, 0.005, 30)), course.segments());
        assertEquals(text, course.toString());
        assertEquals(
                course,
                TemperatureCourse.parse(" hold 98°C 20min;linear 98.0 °C  to +80 °C 30 min ; "
                        + "newton 100 °C towards 20 °C 0.005/min 30 min "));
        assertEquals("none", TemperatureCourse.of().toString());
        assertEquals(TemperatureCourse.of(), TemperatureCourse.parse(" none "));
        assertEquals(0, TemperatureCourse.of().minutes());
        Seeded.cases(500, random -> {
            TemperatureCourse any = any(random);
            assertEquals(any, TemperatureCourse.parse(any.toString()));
        });
    }

    private static TemperatureCourse any(Random random) {
        List<Segment> segments = new ArrayList<>();
        int count = 1 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            double from = Seeded.between(random, -20, 150);
            double to = Seeded.between(random, -20, 150);
            double minutes = Seeded.between(random, 0.001, 120);
            segments.add(
                    switch (random.nextInt(3)) {
                        case 0 -> new Hold(from, minutes);
                        case 1 -> new Linear(from, to, minutes);
                        default -> new Newton(from, to, Seeded.between(random, 1e-6, 1), minutes);
                    });
        }
        return new TemperatureCourse(segments);
    }

    @Test
    void a_faulty_segment_is_named() {
        Refusal.says(
                "temperature course: segment 2: expected 'hold 98 °C 20 min'",
                () -> TemperatureCourse.parse("hold 98 °C 20 min; cool 98 °C 20 min"));
        Refusal.says(
                "found 'cool 98 °C 20 min'", () -> TemperatureCourse.parse("hold 98 °C 20 min; cool 98 °C 20 min"));
        Refusal.says(
                "segment 1 'hold 980 °C 20 min': temperature: expected -20 to 150 °C, found 980",
                () -> TemperatureCourse.parse("hold 980 °C 20 min"));
        Refusal.says(
                "segment 1 'newton 98 °C towards 20 °C 0 /min 20 min': rate: expected more than 0 /min",
                () -> TemperatureCourse.parse("newton 98 °C towards 20 °C 0 /min 20 min"));
        for (String text : List.of(
                "",
                ";",
                "hold 98 °C 20 min;",
                "hold 98 20 min",
                "hold 98 °F 20 min",
                "hold 98,5 °C 20 min",
                "hold NaN °C 20 min",
                "hold 98 °C 20 min linear 98 °C to 80 °C 30 min",
                "none; hold 98 °C 20 min",
                "HOLD 98 °C 20 min")) {
            Refusal.says("temperature course: segment ", () -> TemperatureCourse.parse(text));
        }
    }

    @Test
    void what_cannot_be_is_refused() {
        Refusal.says("time: expected more than 0 min, found 0", () -> new Hold(98, 0));
        Refusal.says("time: expected more than 0 min, found NaN", () -> new Linear(98, 80, Double.NaN));
        Refusal.says("temperature at the start: expected -20 to 150 °C", () -> new Linear(Double.NaN, 80, 1));
        Refusal.says("temperature at the end", () -> new Linear(80, 1000, 1));
        Refusal.says("temperature of the surroundings", () -> new Newton(80, -300, 0.1, 1));
        Refusal.says("rate: expected more than 0 /min, found -0.1", () -> new Newton(80, 20, -0.1, 1));
        Refusal.says("expected a time of 0 to 80 min, found 81", () -> STAND.celsiusAt(81));
        Refusal.says("expected a time of 0 to 80 min, found NaN", () -> STAND.celsiusAt(Double.NaN));
        Refusal.says("expected a tail of 0 to 80 min, found 90", () -> STAND.tail(90));
        Refusal.says(
                "expected a segment or more, found none",
                () -> TemperatureCourse.of().celsiusAt(0));
        Refusal.says(
                "expected a segment or more, found none",
                () -> TemperatureCourse.of().maxCelsius());
        Refusal.says(
                "expected at most 1000 segments",
                () -> TemperatureCourse.parse("hold 98 °C 1 min; ".repeat(1000) + "hold 98 °C 1 min"));
    }
}
