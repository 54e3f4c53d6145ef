package costrel.pricing;

import java.util.Arrays;

/**
 * Ranks and their correlation, fast enough for a million draws: a value's leading 44 bits and its place go into one whole
 * number, and those are sorted. Values that agree in nine digits are ranked by place, which moves a correlation by less than
 * its last printed digit.
 */
final class Ranks {
    private static final int PLACE_BITS = 20;
    private static final long PLACE = (1L << PLACE_BITS) - 1;

    private Ranks() {}

    /** The rank of each value, the least 0; up to 2²⁰ values. */
    static int[] of(double[] values) {
        long[] packed = new long[values.length];
        for (int i = 0; i < values.length; i++) {
            long bits = Double.doubleToLongBits(values[i] + 0.0);
            long ordered = bits ^ ((bits >> 63) & Long.MAX_VALUE);
            packed[i] = (ordered & ~PLACE) | i;
        }
        Arrays.sort(packed);
        int[] ranks = new int[values.length];
        for (int rank = 0; rank < packed.length; rank++) {
            ranks[(int) (packed[rank] & PLACE)] = rank;
        }
        return ranks;
    }

    /** Spearman's correlation of two rankings without ties: 1 − 6 Σd² / (n (n² − 1)). */
    static double correlation(int[] first, int[] second) {
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            double difference = (double) first[i] - second[i];
            sum += difference * difference;
        }
        double n = first.length;
        return 1 - 6 * sum / (n * (n * n - 1));
    }
}
