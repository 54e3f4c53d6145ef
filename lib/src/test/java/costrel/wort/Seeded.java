package costrel.wort;

import java.util.Random;
import java.util.function.Consumer;

/** Random cases that can be had again: the seed stands in the failure, and {@code -Dseed=} repeats it. */
final class Seeded {
    private static final long USUAL_SEED = 19790405;

    private Seeded() {}

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
}
