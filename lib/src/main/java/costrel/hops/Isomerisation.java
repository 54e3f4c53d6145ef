package costrel.hops;

import costrel.wort.TemperatureCourse;
import costrel.wort.TemperatureCourse.Hold;
import costrel.wort.TemperatureCourse.Linear;
import costrel.wort.TemperatureCourse.Newton;
import costrel.wort.TemperatureCourse.Segment;

/**
 * How alpha acid turns into iso-alpha acid in hot wort, and how that is lost again: two reactions of the first order,
 * one after the other.
 *
 * <pre>
 * dα/dt = −k₁ α        dI/dt = k₁ α − k₂ I
 * k₁ = 7.9·10¹¹ exp(−11858/T)        k₂ = 4.1·10¹² exp(−12994/T)        per minute, T in kelvin
 * </pre>
 *
 * <p>Source: M. G. Malowicki and T. H. Shellhammer, <em>J. Agric. Food Chem.</em> 53, 4434-4439 (2005), measured at 90 to
 * 130 °C in a buffer of pH 5.2. The constants carry two figures, which leaves ± 0.6 % of k₁ and ± 1.2 % of k₂. Outside
 * those temperatures the rates are extrapolated; {@link #withinStudy} tells.
 *
 * <p>The figures speak of dissolved alpha acid. A brewery finds about half of it in the beer, since hops aren't wholly
 * extracted and break, hops and yeast carry much away.
 */
public final class Isomerisation {

    /** Lowest temperature of the study, °C. */
    public static final double STUDY_LEAST_CELSIUS = 90;

    /** Highest temperature of the study, °C. */
    public static final double STUDY_MOST_CELSIUS = 130;

    /** All of it still alpha acid: the moment of the addition. */
    public static final State FRESH = new State(1, 0);

    private static final double KELVIN_AT_0_CELSIUS = 273.15;
    private static final double LEAST_CELSIUS = -20;
    private static final double MOST_CELSIUS = 150;

    /** A step of the integration changes the temperature by no more than this, K: the rates by about 2 %. */
    private static final double STEP_KELVIN = 0.25;

    private static final double STEP_DECAY = 0.1;
    private static final double NOTHING_LEFT_KELVIN = 1e-9;

    /** A step of the integration takes away no more than this share of the alpha acid. */
    private static final double STEP_SHARE = 0.01;

    /** Where less than this share is left of both, a double has no digit to show for it. */
    private static final double NOTHING_LEFT = 1e-18;

    private Isomerisation() {}

    /**
     * What has become of the alpha acid of an addition, as shares of what was added.
     *
     * @param alpha still alpha acid
     * @param iso iso-alpha acid
     */
    public record State(double alpha, double iso) {
        public State {
            alpha = Limits.share("share of alpha acid left", alpha);
            iso = Limits.share("share of iso-alpha acid", iso);
            if (!(alpha + iso <= 1 + 1e-9)) {
                throw new IllegalArgumentException("alpha and iso-alpha acid: expected at most 100 % together, found "
                        + Limits.exactPercent(alpha + iso));
            }
        }

        /**
         * Lost to further products.
         *
         * @return share of what was added
         */
        public double degraded() {
            return Math.max(0, 1 - alpha - iso);
        }
    }

    /**
     * The rate k₁ at which alpha acid becomes iso-alpha acid.
     *
     * @param celsius temperature, −20 to 150 °C
     * @return share in a minute
     * @throws IllegalArgumentException outside that range
     */
    public static double isomerisationRate(double celsius) {
        return 7.9e11 * Math.exp(-11858 / kelvin(celsius));
    }

    /**
     * The rate k₂ at which iso-alpha acid is lost.
     *
     * @param celsius temperature, −20 to 150 °C
     * @return share in a minute
     * @throws IllegalArgumentException outside that range
     */
    public static double lossRate(double celsius) {
        return 4.1e12 * Math.exp(-12994 / kelvin(celsius));
    }

    /**
     * What a temperature course makes of a state. Held temperatures are solved in closed form, the others in steps of the
     * fourth order, to better than 1e-8 of what was added.
     *
     * @param start what there is at its start, {@link #FRESH} for a new addition
     * @param course the temperatures from then on; an empty course changes nothing
     * @return what there is at its end
     */
    public static State run(State start, TemperatureCourse course) {
        State state = start;
        for (Segment segment : course.segments()) {
            state = segment instanceof Hold hold
                    ? afterHold(state, isomerisationRate(hold.celsius()), lossRate(hold.celsius()), hold.minutes())
                    : inSteps(state, segment);
        }
        return state;
    }

    /**
     * Minutes at 100 °C that isomerise as much alpha acid as the course: ∫k₁(T(t))dt / k₁(100 °C).
     *
     * @param course the temperatures
     * @return minutes, 0 for an empty course
     */
    public static double equivalentMinutesAt100(TemperatureCourse course) {
        double turnover = 0;
        for (Segment segment : course.segments()) {
            double minute = 0;
            while (minute < segment.minutes()) {
                double step = Math.min(segment.minutes() - minute, longestStep(segment, minute));
                // Simpson's rule
                turnover += step
                        / 6
                        * (isomerisationRate(segment.celsiusAt(minute))
                                + 4 * isomerisationRate(segment.celsiusAt(minute + step / 2))
                                + isomerisationRate(segment.celsiusAt(minute + step)));
                minute += step;
            }
        }
        return turnover / isomerisationRate(100);
    }

    /**
     * Whether the rates were measured at all temperatures of a course.
     *
     * @param course the temperatures
     * @return true where no temperature is under 90 °C or over 130 °C; true for an empty course
     */
    public static boolean withinStudy(TemperatureCourse course) {
        return course.segments().stream()
                .allMatch(segment -> inStudy(segment.fromCelsius()) && inStudy(segment.celsiusAt(segment.minutes())));
    }

    /**
     * The closed form for constant rates. I = I₀ e^(−k₂t) + α₀ k₁ (e^(−k₁t) − e^(−k₂t))/(k₂ − k₁), written so that nothing
     * cancels where the two rates are nearly the same.
     */
    static State afterHold(State start, double k1, double k2, double minutes) {
        double alpha = start.alpha() * Math.exp(-k1 * minutes);
        double exponent = (k2 - k1) * minutes;
        double mean = exponent == 0 ? 1 : Math.expm1(exponent) / exponent;
        double iso = (start.iso() + start.alpha() * k1 * minutes * mean) * Math.exp(-k2 * minutes);
        return state(alpha, iso);
    }

    /** Runge and Kutta's rule of the fourth order. */
    private static State inSteps(State start, Segment segment) {
        double alpha = start.alpha();
        double iso = start.iso();
        double minute = 0;
        while (minute < segment.minutes() && alpha + iso > NOTHING_LEFT) {
            double k1 = isomerisationRate(segment.celsiusAt(minute));
            double step = Math.min(segment.minutes() - minute, Math.min(longestStep(segment, minute), STEP_SHARE / k1));
            double k2 = lossRate(segment.celsiusAt(minute));
            double k1Middle = isomerisationRate(segment.celsiusAt(minute + step / 2));
            double k2Middle = lossRate(segment.celsiusAt(minute + step / 2));
            double k1End = isomerisationRate(segment.celsiusAt(minute + step));
            double k2End = lossRate(segment.celsiusAt(minute + step));

            double alphaA = -k1 * alpha;
            double isoA = k1 * alpha - k2 * iso;
            double alphaB = -k1Middle * (alpha + step / 2 * alphaA);
            double isoB = -alphaB - k2Middle * (iso + step / 2 * isoA);
            double alphaC = -k1Middle * (alpha + step / 2 * alphaB);
            double isoC = -alphaC - k2Middle * (iso + step / 2 * isoB);
            double alphaD = -k1End * (alpha + step * alphaC);
            double isoD = -alphaD - k2End * (iso + step * isoC);
            alpha += step / 6 * (alphaA + 2 * alphaB + 2 * alphaC + alphaD);
            iso += step / 6 * (isoA + 2 * isoB + 2 * isoC + isoD);
            minute += step;
        }
        return state(alpha, iso);
    }

    /**
     * The longest step over which rates stay smooth: a quarter of a kelvin, and a tenth of the time in which Newton's cooling
     * comes nearer to the surroundings by a factor of e, until there is nothing left to cool. No segment grows steeper.
     */
    private static double longestStep(Segment segment, double minute) {
        if (segment instanceof Linear linear) {
            return STEP_KELVIN / Math.abs(linear.toC() - linear.fromC()) * linear.minutes();
        }
        if (segment instanceof Newton newton) {
            double kelvinLeft = Math.abs(newton.celsiusAt(minute) - newton.surroundingsC());
            return kelvinLeft < NOTHING_LEFT_KELVIN
                    ? Double.POSITIVE_INFINITY
                    : Math.min(STEP_KELVIN / kelvinLeft, STEP_DECAY) / newton.ratePerMinute();
        }
        return Double.POSITIVE_INFINITY;
    }

    private static State state(double alpha, double iso) {
        return new State(Math.min(1, Math.max(0, alpha)), Math.min(1, Math.max(0, iso)));
    }

    private static boolean inStudy(double celsius) {
        return celsius >= STUDY_LEAST_CELSIUS && celsius <= STUDY_MOST_CELSIUS;
    }

    private static double kelvin(double celsius) {
        return Limits.within("temperature", celsius, LEAST_CELSIUS, MOST_CELSIUS, " °C") + KELVIN_AT_0_CELSIUS;
    }
}
