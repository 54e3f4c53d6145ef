package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.wort.Dilution.Portion;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The ends of each range belong to it where its description says so, and what lies just outside is refused. */
class RangeEndsTest {
    private static final double CLOSED = 1e-9;
    private static final Gravity BITTER = Gravity.ofDegrees(40);

    @Test
    void from_no_attenuation_to_a_fifth_past_the_whole() {
        // By hand: og × (1 - share).
        assertEquals(40, Attenuation.fgFrom(BITTER, 0).excessDegrees(), CLOSED);
        assertEquals(-8, Attenuation.fgFrom(BITTER, 1.2).excessDegrees(), CLOSED);
        Refusal.says("found 1.21", () -> Attenuation.fgFrom(BITTER, 1.21));
        Refusal.says(
                "original gravity: expected more than that of water",
                () -> Attenuation.fgFrom(Gravity.ofDegrees(0), 0.75));
    }

    @Test
    void a_bottle_at_its_rating_passes_and_one_without_a_rating_is_refused_from_four_volumes() {
        OptionalDouble unrated = OptionalDouble.empty();
        assertEquals(BottleVerdict.WITHIN, Condition.bottleVerdict(2.99, unrated));
        assertEquals(BottleVerdict.CAUTION, Condition.bottleVerdict(3, unrated));
        assertEquals(BottleVerdict.CAUTION, Condition.bottleVerdict(3.99, unrated));
        assertEquals(BottleVerdict.REFUSED, Condition.bottleVerdict(4, unrated));
        assertEquals(BottleVerdict.CAUTION, Condition.bottleVerdict(5, OptionalDouble.of(5)));
        assertEquals(BottleVerdict.REFUSED, Condition.bottleVerdict(5.01, OptionalDouble.of(5)));
    }

    @Test
    void gas_is_reckoned_from_minus_five_to_forty_degrees() {
        Refusal.says(
                "temperature of beer: expected -5 to 40 °C, found -5.1",
                () -> Condition.equilibriumGramsPerLitreExtrapolated(-5.1, 0));
        Refusal.says("found 40.1", () -> Condition.equilibriumGramsPerLitreExtrapolated(40.1, 0));
        assertFalse(HeldGas.atWarmest(25).how().contains("over 25 °C"));
        assertTrue(HeldGas.atWarmest(25.1).how().contains("over 25 °C"));
    }

    @Test
    void each_piece_of_a_course_starts_where_it_is_said_to() {
        assertEquals(66, new TemperatureCourse.Hold(66, 10).fromCelsius());
        assertEquals(66, new TemperatureCourse.Linear(66, 76, 10).fromCelsius());
        assertEquals(95, new TemperatureCourse.Newton(95, 20, 0.05, 30).fromCelsius());
        Refusal.says("time: expected more than 0 min, found 0", () -> new TemperatureCourse.Newton(95, 20, 0.05, 0));
    }

    @Test
    void the_whole_of_a_course_is_its_own_end_and_nothing_of_it_is_empty() {
        TemperatureCourse course = new TemperatureCourse(
                List.of(new TemperatureCourse.Hold(66, 10), new TemperatureCourse.Linear(66, 76, 10)));
        assertEquals(course, course.tail(20));
        assertEquals(List.of(), course.tail(0).segments());
        assertEquals(1, course.tail(10).segments().size());
        assertEquals(66, course.celsiusAt(0));
        assertEquals(76, course.celsiusAt(20), CLOSED);
    }

    @Test
    void grist_from_bone_dry_to_eight_per_cent_and_from_minus_thirty() {
        assertTrue(MashHeat.strikeHeat(66, 15, 2.5, 0.08, 0) > MashHeat.strikeHeat(66, 15, 2.5, 0, 0));
        Refusal.says("moisture of the grist", () -> MashHeat.strikeHeat(66, 15, 2.5, 0.081, 0));
        Refusal.says("moisture of the grist", () -> MashHeat.strikeHeat(66, 15, 2.5, -0.001, 0));
        Refusal.says("heat of the grist: expected -30", () -> MashHeat.strikeHeat(66, -31, 2.5, 0.03, 0));
    }

    @Test
    void nothing_boiled_away_leaves_the_wort_as_it_was() {
        Portion wort = new Portion(1000, Gravity.ofDegrees(45));
        assertEquals(1000, Dilution.evaporateExact(wort, 0).volumeL(), 1e-6);
        assertEquals(1000, Dilution.evaporate(wort, 0).volumeL(), CLOSED);
        assertEquals(0, Dilution.evaporationShare(10, 10), CLOSED);
        Refusal.says("found 1", () -> Dilution.evaporate(wort, 1));
        Refusal.says("volume after the boil", () -> Dilution.evaporationShare(10, 0));
        Refusal.says("reckoning by mass", () -> Dilution.evaporateExact(new Portion(10, Gravity.ofDegrees(190)), 1));
    }

    @Test
    void a_thousand_litres_at_1045_have_928_litres_of_water() {
        // By hand: 11.196 °P by the ASBC cubic, 1043.1 kg of which 926.3 kg are water, at 0.9982 kg/L 928.0 L.
        Portion wort = new Portion(1000, Gravity.ofDegrees(45));
        Refusal.says("extract: expected 0 to 40 °P", () -> Dilution.evaporateExact(wort, 926.5));
        Refusal.says("L of water in the wort, found 929", () -> Dilution.evaporateExact(wort, 929));
    }

    @Test
    void gravities_and_extracts_reach_to_their_ends() {
        assertEquals(-10, Gravity.of(0.990).excessDegrees(), CLOSED);
        assertEquals(200, Gravity.of(1.200).excessDegrees(), CLOSED);
        assertEquals(200, Gravity.parse("1200").excessDegrees(), CLOSED);
        assertEquals(-10, Gravity.parse("0.990").excessDegrees(), CLOSED);
        Refusal.says("", () -> Gravity.parse("2"));
        // By hand: (79 - 1.705) / 0.2586 and (83 - 1.705) / 0.2586.
        assertEquals(298.898, MaltExtract.baseMaltHweFromEbcPercent(79), 0.001);
        assertEquals(314.366, MaltExtract.baseMaltHweFromEbcPercent(83), 0.001);
        assertEquals(300, MaltExtract.asIsFromDry(300, 0), CLOSED);
        assertEquals(300, MaltExtract.dryFromAsIs(300, 0), CLOSED);
        Refusal.says("moisture", () -> MaltExtract.dryFromAsIs(300, 1));
    }

    @Test
    void a_factor_of_strength_lies_between_nothing_and_one() {
        Refusal.says("strength factor", () -> new StrengthFactor(0, 6.9, 0));
        Refusal.says("strength factor", () -> new StrengthFactor(0, 6.9, 1));
    }
}
