package costrel.pricing;

/**
 * Ranks and their correlation, fast enough for a million draws: a value's leading 44 bits and its place go into one whole
 * number, and those are sorted. Values that agree in nine digits are ranked by place, which moves a correlation by less than
 * its last printed digit.
 */
final class Ranks {
    private static final int PLACE_BITS = 20;
    private static final long PLACE = (1L << PLACE_BITS) - 1;
    private static final int DIGIT_BITS = 11;
    private static final int DIGIT = (1 << DIGIT_BITS) - 1;

    private Ranks() {}

    /** The rank of each value, the least 0; up to 2²⁰ values. */
    static int[] of(double[] values) {
        long[] packed = new long[values.length];
        for (int i = 0; i < values.length; i++) {
            long bits = Double.doubleToLongBits(values[i] + 0.0);
            long ordered = bits ^ ((bits >> 63) & Long.MAX_VALUE);
            packed[i] = (ordered & ~PLACE) | i;
        }
        packed = sorted(packed);
        int[] ranks = new int[values.length];
        for (int rank = 0; rank < packed.length; rank++) {
            ranks[(int) (packed[rank] & PLACE)] = rank;
        }
        return ranks;
    }

    /** Sorts by the bits above the place, eleven at a time from the last on: each round keeps the order of the one before. */
    private static long[] sorted(long[] packed) {
        long[] from = packed;
        long[] to = new long[packed.length];
        for (int shift = PLACE_BITS; shift < Long.SIZE; shift += DIGIT_BITS) {
            int[] next = new int[DIGIT + 2];
            for (long value : from) {
                next[digit(value, shift) + 1]++;
            }
            for (int digit = 0; digit < DIGIT; digit++) {
                next[digit + 1] += next[digit];
            }
            for (long value : from) {
                to[next[digit(value, shift)]++] = value;
            }
            long[] done = from;
            from = to;
            to = done;
        }
        return from;
    }

    /** Eleven bits of a number, with the sign turned so that numbers below 0 come first. */
    private static int digit(long value, int shift) {
        return (int) ((value ^ Long.MIN_VALUE) >>> shift) & DIGIT;
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
