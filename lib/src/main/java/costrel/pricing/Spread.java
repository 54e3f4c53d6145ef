package costrel.pricing;

/**
 * How far a figure may come out from what was reckoned with: a stated distribution, read off by standard normal scores, so
 * that figures can go together.
 */
public sealed interface Spread {

    /**
     * The value at a standard normal score: as much of the distribution lies under it as of the normal one under the
     * score.
     *
     * @param score the score, 0 for the median
     * @return the value
     */
    double at(double score);

    /**
     * Whether the figure always comes out the same.
     *
     * @return true where nothing is spread
     */
    boolean isCertain();

    /**
     * The normal distribution.
     *
     * @param mean the mean
     * @param deviation the standard deviation, 0 or more
     */
    record Normal(double mean, double deviation) implements Spread {
        public Normal {
            requireFinite("normal: mean", mean);
            if (!(deviation >= 0 && deviation < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("normal: deviation: expected 0 or more, found " + deviation);
            }
        }

        @Override
        public double at(double score) {
            return mean + deviation * score;
        }

        @Override
        public boolean isCertain() {
            return deviation == 0;
        }
    }

    /**
     * The lognormal distribution: a figure that is as likely to be doubled as to be halved.
     *
     * @param median the median, more than 0
     * @param logDeviation the standard deviation of the natural logarithm, 0 or more; 0.1 is about 10 %
     */
    record Lognormal(double median, double logDeviation) implements Spread {
        public Lognormal {
            if (!(median > 0 && median < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("lognormal: median: expected more than 0, found " + median);
            }
            if (!(logDeviation >= 0 && logDeviation < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("lognormal: deviation: expected 0 or more, found " + logDeviation);
            }
        }

        @Override
        public double at(double score) {
            return median * Math.exp(logDeviation * score);
        }

        @Override
        public boolean isCertain() {
            return logDeviation == 0;
        }
    }

    /**
     * The triangular distribution: least, likeliest and most.
     *
     * @param least the least
     * @param likeliest the likeliest, not under the least
     * @param most the most, not under the likeliest
     */
    record Triangular(double least, double likeliest, double most) implements Spread {
        public Triangular {
            requireFinite("triangular: least", least);
            requireFinite("triangular: most", most);
            if (!(least <= likeliest && likeliest <= most)) {
                throw new IllegalArgumentException("triangular: expected least, likeliest, most in that order, found "
                        + least + ", " + likeliest + ", " + most);
            }
        }

        @Override
        public double at(double score) {
            if (isCertain()) {
                return likeliest;
            }
            double under = NormalShare.under(score);
            double risen = (likeliest - least) / (most - least);
            return under < risen
                    ? least + Math.sqrt(under * (most - least) * (likeliest - least))
                    : most - Math.sqrt((1 - under) * (most - least) * (most - likeliest));
        }

        @Override
        public boolean isCertain() {
            return least == most;
        }
    }

    /**
     * The uniform distribution: anything between two values is as likely.
     *
     * @param least the least
     * @param most the most, not under the least
     */
    record Uniform(double least, double most) implements Spread {
        public Uniform {
            requireFinite("uniform: least", least);
            requireFinite("uniform: most", most);
            if (!(least <= most)) {
                throw new IllegalArgumentException(
                        "uniform: expected least and most in that order, found " + least + ", " + most);
            }
        }

        @Override
        public double at(double score) {
            return least + (most - least) * NormalShare.under(score);
        }

        @Override
        public boolean isCertain() {
            return least == most;
        }
    }

    private static void requireFinite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + ": expected a number, found " + value);
        }
    }
}
