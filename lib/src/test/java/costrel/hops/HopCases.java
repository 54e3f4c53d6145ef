package costrel.hops;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.wort.TemperatureCourse;
import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.function.Executable;

/** What several tests of hops share: a boil, an analysis, seeded random cases, and what a refusal must say. */
final class HopCases {
    private static final long USUAL_SEED = 18160401;

    private HopCases() {}

    /** Runs the check on so many random cases; {@code -Dseed=} repeats those of a failure. */
    static void cases(int count, Consumer<Random> check) {
        long seed = Long.getLong("seed", USUAL_SEED);
        Random random = new Random(seed);
        for (int i = 0; i < count; i++) {
            try {
                check.accept(random);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("-Dseed=" + seed + ", case " + i + ": " + e.getMessage(), e);
            }
        }
    }

    static double between(Random random, double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    /** The attempt is refused, and the message has all the words. */
    static void refused(Executable attempt, String... words) {
        String message = String.valueOf(
                assertThrows(IllegalArgumentException.class, attempt).getMessage());
        for (String word : words) {
            assertTrue(message.contains(word), () -> "expected a message with '" + word + "', found: " + message);
        }
    }

    /** A boil of 60 minutes at 100 °C, 1.040 to 1.044, with a stand and with all of the wort collected. */
    static BoilContext boil(TemperatureCourse stand) {
        return new BoilContext(60, 100, 40, 44, stand, 15, 95, 1);
    }

    static HopAnalysis alpha(String date, double alpha) {
        return analysis(date, OptionalDouble.of(alpha), OptionalDouble.empty());
    }

    static HopAnalysis alphaAndIndex(String date, double alpha, double storageIndex) {
        return analysis(date, OptionalDouble.of(alpha), OptionalDouble.of(storageIndex));
    }

    static HopAnalysis index(String date, double storageIndex) {
        return analysis(date, OptionalDouble.empty(), OptionalDouble.of(storageIndex));
    }

    private static HopAnalysis analysis(String date, OptionalDouble alpha, OptionalDouble storageIndex) {
        return new HopAnalysis(
                LocalDate.parse(date),
                alpha,
                AlphaMethod.HPLC,
                MoistureBasis.AS_IS,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                storageIndex);
    }
}
