package costrel.harvest;

import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A requirement that no plan can meet, and what would mend it.
 *
 * @param what the requirement in words, with its figures
 * @param month the month of brewing in which it fails; empty for a rule of the whole year
 * @param kg kilograms of hops that are short; empty where hops are not what is short
 * @param alphaKg kilograms of alpha acid that are short; empty where it isn't known or not what is short
 * @param mend what would mend it
 */
public record Shortfall(
        String what, Optional<YearMonth> month, OptionalDouble kg, OptionalDouble alphaKg, String mend) {

    public Shortfall {
        Figures.named("shortfall", what);
    }

    /**
     * The shortfall in one line.
     *
     * @return what, and what would mend it
     */
    public String text() {
        return what + "; " + mend;
    }
}
