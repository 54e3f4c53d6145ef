package costrel.wort;

import java.util.List;
import java.util.Locale;

/**
 * A published rule for the colour of wort from the colour of its grist. No rule is good to better than a quarter, and
 * the two here part by more than a factor of two on dark beers, so a result always names its rule.
 */
public interface ColourRule {
    /**
     * The curve fitted by D. Morey ("Beer's Law", BrewingTechniques): SRM = 1.4922 · MCU^0.6859, with MCU =
     * 4.2362 · kg·EBC in a litre and EBC = 1.97 · SRM; published for SRM below 50.
     */
    ColourRule MOREY = new PublishedColourRule(
            "morey",
            "D. Morey, Beer's Law, BrewingTechniques: SRM = 1.4922 MCU^0.6859, EBC = 1.97 SRM, for SRM below 50",
            1.97 * 50,
            kgEbcPerL -> 1.97 * 1.4922 * Math.pow(4.2362 * kgEbcPerL, 0.6859));

    /**
     * Proportional to the grist, Σ (kg in a hectolitre · EBC) / 10: it follows from malt colour being read in a
     * laboratory wort of 50 g in 515 mL, 9.7 kg in a hectolitre. Rule of thumb with no published limit.
     */
    ColourRule LINEAR = new PublishedColourRule(
            "linear",
            "proportional, kg/hL x EBC / 10, from the laboratory wort of 50 g in 515 mL; rule of thumb",
            Double.POSITIVE_INFINITY,
            kgEbcPerL -> 100 * kgEbcPerL / 10);

    /**
     * What the rule is called in files and results.
     *
     * @return morey or linear
     */
    String name();

    /**
     * Where the rule was published.
     *
     * @return author, publication and formula
     */
    String source();

    /**
     * Colour of the wort; a figure past the limit is still returned, see {@link #within}.
     *
     * @param sumKgEbc kg of each coloured material times its EBC colour, summed, 0 or more
     * @param litres litres of wort at 20 °C, more than 0
     * @return the colour
     * @throws IllegalArgumentException outside those ranges
     */
    Colour of(double sumKgEbc, double litres);

    /**
     * Whether a colour lies where the rule was published to hold.
     *
     * @param colour a colour this rule gave
     * @return false when the figure is an extrapolation that needs a word of caution
     */
    boolean within(Colour colour);

    /**
     * How far a predicted colour may be off, as a share of it.
     *
     * @return 0.25
     */
    double uncertaintyShare();

    /**
     * The rule of a name, in small or capital letters.
     *
     * @param name morey or linear
     * @return the rule
     * @throws IllegalArgumentException when no rule is called so
     */
    static ColourRule named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        for (ColourRule rule : List.of(MOREY, LINEAR)) {
            if (rule.name().equals(wanted)) {
                return rule;
            }
        }
        throw new IllegalArgumentException(
                "colour rule: expected morey or linear, found '" + ScaleText.shown(name) + "'");
    }
}
