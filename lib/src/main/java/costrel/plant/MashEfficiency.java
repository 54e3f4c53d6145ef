package costrel.plant;

import java.util.Locale;

/** Litre-degrees in the full copper from mashed goods, over the potential of the mashed goods. */
public sealed interface MashEfficiency {

    /**
     * One figure for every gravity.
     *
     * @param share over 0 and under 1
     */
    record Constant(double share) implements MashEfficiency {
        public Constant {
            check(share);
        }

        @Override
        public String text() {
            return percent(share);
        }
    }

    /**
     * Falls with the cast gravity: E = E₀ − s·(G − G₀).
     *
     * @param share E₀, at the reference gravity
     * @param slope s, loss of share for each excess degree
     * @param referenceDegrees G₀, excess degrees at cast
     * @param lowestDegrees least gravity among the gyles it was fitted to
     * @param highestDegrees greatest gravity among the gyles it was fitted to
     */
    record Linear(double share, double slope, double referenceDegrees, double lowestDegrees, double highestDegrees)
            implements MashEfficiency {
        public Linear {
            check(share);
            if (!(Math.abs(slope) < 0.1) || !(lowestDegrees <= highestDegrees)) {
                throw new IllegalArgumentException(
                        "mash efficiency: expected a slope under 0.1 for each degree and a range"
                                + " from low to high, found " + slope + ", " + lowestDegrees + " to " + highestDegrees);
            }
        }

        @Override
        public String text() {
            return String.format(
                    Locale.ROOT,
                    "%.1f %% at %.0f°, less %.2f %% a degree above",
                    share * 100,
                    referenceDegrees,
                    slope * 100);
        }
    }

    /**
     * Stated as extract efficiency to the fermenting vessel of a reference gyle; turned into a mash efficiency on that gyle.
     *
     * @param extractEfficiency B·G over the potential of all materials of the reference gyle, over 0 and under 1
     * @param referenceBeer the recipe, brewed on this plant, that is the reference gyle
     */
    record OfReference(double extractEfficiency, String referenceBeer) implements MashEfficiency {
        public OfReference {
            if (!(extractEfficiency > 0 && extractEfficiency < 1)) {
                throw new IllegalArgumentException(
                        "extract efficiency: expected over 0 % and under 100 %, found " + percent(extractEfficiency));
            }
        }

        @Override
        public String text() {
            return percent(extractEfficiency) + " to FV on " + referenceBeer;
        }
    }

    /**
     * The efficiency in words, for a sheet.
     *
     * @return such as "91.0 %"
     */
    String text();

    private static void check(double share) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException(
                    "mash efficiency: expected over 0 % and under 100 %, found " + percent(share));
        }
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", share * 100);
    }
}
