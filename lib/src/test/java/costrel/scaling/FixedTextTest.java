package costrel.scaling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import costrel.Cases;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Figures and steps by short ways, held against the JDK's own formatter and exact decimals. */
class FixedTextTest {
    private static final long SEED = Long.getLong("seed", 7L);

    @Test
    void a_figure_reads_as_a_formatter_writes_it() {
        Random random = new Random(SEED);
        for (int i = 0; i < Cases.upTo(50_000); i++) {
            double value = i % 3 == 0 ? random.nextInt(2000) / 20.0 : random.nextDouble() * Math.pow(10, i % 8);
            for (int places = 0; places <= 3; places++) {
                assertEquals(
                        String.format(Locale.ROOT, "%." + places + "f", value),
                        FixedText.of(value, places),
                        value + ", seed " + SEED);
            }
        }
        assertEquals("0.3", FixedText.of(0.25, 1));
        assertEquals("-1.5", FixedText.of(-1.5, 1));
        assertEquals("040", FixedText.padded("40", 3));
    }

    @Test
    void a_weight_in_steps_is_the_double_next_to_the_decimal() {
        Random random = new Random(SEED);
        for (double step : new double[] {0.1, 0.001, 0.01, 0.5, 0.25, 0.2, 0.05, 0.02, 1, 12.5, 25, 0.3}) {
            for (int i = 0; i < 5_000; i++) {
                double amount = random.nextDouble() * 3000;
                BigDecimal steps = BigDecimal.valueOf(Math.floor(amount / step + 0.5));
                assertEquals(
                        BigDecimal.valueOf(step).multiply(steps).doubleValue(),
                        Weighing.toStep(amount, step),
                        step + " of " + amount + ", seed " + SEED);
            }
        }
    }
}
