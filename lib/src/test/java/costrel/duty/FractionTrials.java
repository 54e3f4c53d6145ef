package costrel.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Random;

/** Seeded cases whose figures are held to whole fractions. */
final class FractionTrials {

    private FractionTrials() {}

    /** One case, from its own seed. */
    interface Trial {
        void run(Random random);
    }

    /** So many cases, each from the seed that its failure names. */
    static void each(long first, int cases, Trial trial) {
        for (int i = 0; i < cases; i++) {
            long seed = first + i;
            try {
                trial.run(new Random(seed));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("-Dseed=" + seed + ": " + e.getMessage(), e);
            }
        }
    }

    static void assertExactly(Fraction expected, BigDecimal found, String what) {
        assertEquals(expected, Fraction.of(found), () -> what + ": found " + found);
    }

    static BigDecimal random(Random random, int most, int places) {
        long range = (long) most * (long) Math.pow(10, places);
        return BigDecimal.valueOf(1 + (long) (random.nextDouble() * range), places);
    }
}
