package costrel.wort;

import java.util.function.DoubleUnaryOperator;

/**
 * Finds where a function crosses zero inside a bracket, by inverse quadratic interpolation where that is safe and by
 * halving where it is not.
 *
 * <p>Source: T. R. Chandrupatla, <em>Advances in Engineering Software</em> 28(3), 145-149 (1997).
 */
final class Roots {
    private static final int MOST_STEPS = 100;

    private Roots() {}

    /**
     * The crossing to within the tolerance. An end of the bracket counts as the crossing when the function is zero
     * there; without a change of sign, or after a hundred steps, the result is an error and never a guess.
     */
    static double between(String what, double low, double high, double tolerance, DoubleUnaryOperator function) {
        double a = high;
        double b = low;
        double fa = function.applyAsDouble(a);
        double fb = function.applyAsDouble(b);
        if (!(fa * fb <= 0)) {
            throw new ArithmeticException(
                    what + ": no solution between " + ScaleText.plain(low) + " and " + ScaleText.plain(high));
        }
        double share = 0.5;
        for (int step = 0; step < MOST_STEPS; step++) {
            double x = a + share * (b - a);
            double fx = function.applyAsDouble(x);
            // a is the newest point, b the other side of the crossing, c the point dropped last.
            double c;
            double fc;
            if (Math.signum(fx) == Math.signum(fa)) {
                c = a;
                fc = fa;
            } else {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            double best = Math.abs(fa) < Math.abs(fb) ? a : b;
            double least = (2 * Math.ulp(best) + tolerance / 2) / Math.abs(b - a);
            if (least > 0.5 || fa == 0 || fb == 0) {
                return best;
            }
            double xi = (a - b) / (c - b);
            double phi = (fa - fb) / (fc - fb);
            boolean safe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
            double wanted = safe
                    ? fa / (fb - fa) * (fc / (fb - fc)) + (c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb))
                    : 0.5;
            share = Math.min(1 - least, Math.max(least, wanted));
        }
        throw new ArithmeticException(what + ": no solution after " + MOST_STEPS + " steps");
    }
}
