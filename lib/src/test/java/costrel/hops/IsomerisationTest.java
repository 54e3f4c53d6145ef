package costrel.hops;

import static costrel.ReferenceTable.number;
import static costrel.hops.HopCases.between;
import static costrel.hops.HopCases.cases;
import static costrel.hops.HopCases.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.hops.Isomerisation.State;
import costrel.wort.TemperatureCourse;
import costrel.wort.TemperatureCourse.Hold;
import costrel.wort.TemperatureCourse.Linear;
import costrel.wort.TemperatureCourse.Newton;
import costrel.wort.TemperatureCourse.Segment;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class IsomerisationTest {
    /** Half a unit in the sixth decimal, as the tables are printed, and a little for what a decimal can't hold. */
    private static final double SIX_PLACES = 0.5e-6 + 1e-12;

    private static final double INTEGRATION = 1e-8;

    @Test
    void rates_agree_with_the_published_constants() {
        for (Map<String, String> row : ReferenceTable.read("hops/isomerisation_rates.csv")) {
            double celsius = number(row, "celsius");
            double k1 = Isomerisation.isomerisationRate(celsius);
            double k2 = Isomerisation.lossRate(celsius);
            assertEquals(1, k1 / number(row, "k1"), 1e-6, row.toString());
            assertEquals(1, k2 / number(row, "k2"), 1e-6, row.toString());
            assertEquals(number(row, "half life min"), Math.log(2) / k1, 0.0006, row.toString());
            assertEquals(number(row, "k1 relative to 100"), k1 / Isomerisation.isomerisationRate(100), 6e-6);
            assertEquals(
                    number(row, "most iso"),
                    hold(celsius, number(row, "minutes to most iso")).iso(),
                    6e-6);
        }
    }

    @Test
    void rates_rise_with_temperature_as_the_published_activation_energies_say() {
        // Malowicki and Shellhammer 2005, abstract: 98.6 and 108.0 kJ/mol. Gas constant: 8.314462618 J/(mol K), CODATA.
        double warmer = 1 / 363.15 - 1 / 403.15;
        double first = Math.log(Isomerisation.isomerisationRate(130) / Isomerisation.isomerisationRate(90));
        double second = Math.log(Isomerisation.lossRate(130) / Isomerisation.lossRate(90));
        assertEquals(98.6, 8.314462618e-3 * first / warmer, 0.05);
        assertEquals(108.0, 8.314462618e-3 * second / warmer, 0.05);
    }

    @Test
    void yields_of_a_held_temperature_agree_with_the_closed_form() {
        for (Map<String, String> row : ReferenceTable.read("hops/isomerisation_yields.csv")) {
            State end = hold(number(row, "celsius"), number(row, "minutes"));
            assertEquals(number(row, "alpha"), end.alpha(), SIX_PLACES, row.toString());
            assertEquals(number(row, "iso"), end.iso(), SIX_PLACES, row.toString());
            assertEquals(number(row, "degraded"), end.degraded(), SIX_PLACES, row.toString());
        }
    }

    @Test
    void a_cooling_stand_agrees_with_an_integration_by_another_program() {
        for (Map<String, String> row : ReferenceTable.read("hops/hot_stand.csv")) {
            TemperatureCourse course = TemperatureCourse.parse(row.getOrDefault("course", ""));
            State end = Isomerisation.run(Isomerisation.FRESH, course);
            assertEquals(number(row, "alpha"), end.alpha(), SIX_PLACES, row.toString());
            assertEquals(number(row, "iso"), end.iso(), SIX_PLACES, row.toString());
            assertEquals(number(row, "degraded"), end.degraded(), SIX_PLACES, row.toString());
            assertEquals(
                    number(row, "minutes at 100"),
                    Isomerisation.equivalentMinutesAt100(course),
                    0.00006,
                    row.toString());
        }
    }

    @Test
    void any_course_agrees_with_many_short_holds() {
        cases(12, random -> {
            Segment segment = anySegment(random);
            State start = anyState(random);
            State expected = inShortHolds(start, segment);
            State found = Isomerisation.run(start, TemperatureCourse.of(segment));
            assertEquals(expected.alpha(), found.alpha(), INTEGRATION, segment.toString());
            assertEquals(expected.iso(), found.iso(), INTEGRATION, segment.toString());
        });
    }

    @Test
    void alpha_left_is_what_the_equivalent_minutes_at_100_leave() {
        cases(200, random -> {
            TemperatureCourse course = TemperatureCourse.of(anySegment(random), anySegment(random));
            double left = Isomerisation.run(Isomerisation.FRESH, course).alpha();
            double minutes = Isomerisation.equivalentMinutesAt100(course);
            assertEquals(
                    Math.exp(-Isomerisation.isomerisationRate(100) * minutes), left, INTEGRATION, course.toString());
        });
    }

    @Test
    void a_course_may_be_cut_anywhere() {
        cases(200, random -> {
            TemperatureCourse course = TemperatureCourse.of(anySegment(random), anySegment(random));
            Segment first = course.segments().get(0);
            double rest = between(random, 0, course.segments().get(1).minutes());
            TemperatureCourse tail = course.tail(rest);
            Segment second = course.segments().get(1);
            Segment head = cutShort(second, second.minutes() - rest);
            State start = anyState(random);
            State whole = Isomerisation.run(start, course);
            State inParts = Isomerisation.run(Isomerisation.run(start, TemperatureCourse.of(first, head)), tail);
            assertEquals(whole.alpha(), inParts.alpha(), INTEGRATION, course.toString());
            assertEquals(whole.iso(), inParts.iso(), INTEGRATION, course.toString());
        });
    }

    @Test
    void a_slope_that_does_not_slope_is_a_hold() {
        State hold = hold(96, 40);
        TemperatureCourse level = TemperatureCourse.of(new Linear(96, 96, 40));
        TemperatureCourse noCooling = TemperatureCourse.of(new Newton(96, 96, 0.01, 40));
        for (TemperatureCourse course : new TemperatureCourse[] {level, noCooling}) {
            assertEquals(
                    hold.alpha(), Isomerisation.run(Isomerisation.FRESH, course).alpha(), INTEGRATION);
            assertEquals(
                    hold.iso(), Isomerisation.run(Isomerisation.FRESH, course).iso(), INTEGRATION);
        }
    }

    @Test
    void rates_that_are_alike_have_a_closed_form_too() {
        // With k1 = k2 = k the iso-alpha acid is k t e^(-k t), the limit of the closed form.
        assertEquals(
                0.9 * Math.exp(-0.9),
                Isomerisation.afterHold(Isomerisation.FRESH, 0.01, 0.01, 90).iso(),
                1e-15);
        double apart = 0.01 * (1 + 1e-10);
        assertEquals(
                0.9 * Math.exp(-0.9),
                Isomerisation.afterHold(Isomerisation.FRESH, 0.01, apart, 90).iso(),
                1e-10);
    }

    @Test
    void over_a_fifth_of_iso_alpha_acid_is_lost_in_a_long_boil() {
        // S. Kappler et al., J. Inst. Brew. 116(4), 332-338 (2010): over 20 % of dosed iso-alpha acid gone after 90
        // min.
        State boiled = Isomerisation.run(new State(0, 1), TemperatureCourse.of(new Hold(100, 90)));
        assertTrue(boiled.degraded() > 0.20 && boiled.degraded() < 0.30, boiled.toString());
    }

    @Test
    void the_kinetics_stand_above_what_a_brewery_measured_and_not_far() {
        // A. Justus, MBAA Technical Quarterly 55(3), 67-74 (2018): 44.0 % of hops boiled 60 min, measured in wort.
        double computed = hold(100, 60).iso();
        assertTrue(computed > 0.440 && computed < 0.50, "found " + computed);
    }

    @Test
    void nothing_happens_in_no_time() {
        State start = new State(0.4, 0.3);
        assertEquals(start, Isomerisation.run(start, TemperatureCourse.of()));
        assertEquals(0, Isomerisation.equivalentMinutesAt100(TemperatureCourse.of()));
    }

    @Test
    void a_stand_without_end_leaves_nothing() {
        State end = Isomerisation.run(
                Isomerisation.FRESH, TemperatureCourse.of(new Linear(100, 99, 1e9), new Newton(99, 98, 1, 1e9)));
        assertEquals(0, end.alpha() + end.iso(), 1e-15);
        assertEquals(1, end.degraded(), 1e-15);
    }

    @Test
    void the_study_reached_from_90_to_130() {
        assertTrue(Isomerisation.withinStudy(TemperatureCourse.of()));
        assertTrue(Isomerisation.withinStudy(TemperatureCourse.of(new Hold(90, 1), new Linear(90, 130, 1))));
        assertFalse(Isomerisation.withinStudy(TemperatureCourse.of(new Hold(100, 60), new Linear(100, 89.9, 1))));
        assertFalse(Isomerisation.withinStudy(TemperatureCourse.of(new Hold(130.1, 1))));
        assertFalse(Isomerisation.withinStudy(TemperatureCourse.of(new Newton(80, 95, 1, 60))));
    }

    @Test
    void figures_beyond_sense_are_refused() {
        refused(() -> Isomerisation.isomerisationRate(Double.NaN), "temperature", "-20 to 150 °C");
        refused(() -> Isomerisation.lossRate(151), "151 °C");
        refused(() -> new State(0.6, 0.5), "at most 100 %", "110 %");
        refused(() -> new State(-0.1, 0.5), "alpha acid left");
    }

    private static State hold(double celsius, double minutes) {
        return Isomerisation.run(Isomerisation.FRESH, TemperatureCourse.of(new Hold(celsius, minutes)));
    }

    private static State anyState(Random random) {
        double alpha = random.nextDouble();
        return new State(alpha, random.nextDouble() * (1 - alpha));
    }

    private static Segment anySegment(Random random) {
        double from = between(random, 60, 105);
        double minutes = between(random, 1, 120);
        return random.nextBoolean()
                ? new Linear(from, between(random, 15, 105), minutes)
                : new Newton(from, between(random, 5, 30), between(random, 0.001, 0.2), minutes);
    }

    private static Segment cutShort(Segment segment, double minutes) {
        return segment instanceof Newton newton
                ? new Newton(newton.fromC(), newton.surroundingsC(), newton.ratePerMinute(), minutes)
                : new Linear(segment.fromCelsius(), segment.celsiusAt(minutes), minutes);
    }

    /** The course as 40,000 holds at the temperature in the middle of each, every one in closed form. */
    private static State inShortHolds(State start, Segment segment) {
        int parts = 40_000;
        double minutes = segment.minutes() / parts;
        State state = start;
        for (int i = 0; i < parts; i++) {
            double celsius = segment.celsiusAt((i + 0.5) * minutes);
            state = Isomerisation.run(state, TemperatureCourse.of(new Hold(celsius, minutes)));
        }
        return state;
    }
}
