package costrel.harvest;

import costrel.hops.AlphaBalance;
import costrel.hops.HopForm;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What is published on dry hops, said beside a dose. None of it is scaled into the beer's figures. */
public final class DryHopNotes {

    private static final String MURPHY = "Murphy & Son, Hop Requirements";

    /** Usual and whole range of British cask beer, g/hL: 0.5 to 2 and 0.5 to 8 oz/brl, Murphy & Son. */
    private static final double USUAL_LEAST = 9;

    private static final double USUAL_MOST = 35;
    private static final double WHOLE_MOST = 140;

    /** Contact for the most flavour, days: Murphy & Son. */
    private static final double FULL_FLAVOUR_DAYS = 21;

    /** Beer held by pellets, L/kg: supplier's trial of 2019, 2 % of the beer at 250 g/hL; 14 % at 2000 g/hL makes 7. */
    private static final double PELLETS_HOLD = 8;

    private static final double PELLETS_HOLD_LEAST = 7;

    /** Most beer held by pellets, L/kg: BarthHaas. */
    private static final double PELLETS_HOLD_MOST = 14;

    /** Dose, g/hL, and temperature, °C, of the trial with hop enzymes: Kirkpatrick & Shellhammer 2018. */
    private static final double ENZYME_TRIAL_DOSE = 1000;

    private static final double ENZYME_TRIAL_CELSIUS = 20;

    private static final double GRAMS_PER_KG = 1000;

    private DryHopNotes() {}

    /**
     * Notes on a dose of dry hops.
     *
     * @param form form of the hops
     * @param gramsPerHl dose, g/hL, 0 or more
     * @param celsius temperature of the beer on the hops, °C, −10 to 40, where known
     * @param days days of contact, 0 or more, where known
     * @return notes, each with its source in brackets; none for no hops
     * @throws IllegalArgumentException outside those ranges
     */
    public static List<String> of(HopForm form, double gramsPerHl, OptionalDouble celsius, OptionalDouble days) {
        Figures.notNegative("dose of dry hops", gramsPerHl, " g/hL");
        days.ifPresent(found -> Figures.notNegative("contact of dry hops", found, " days"));
        celsius.ifPresent(DryHopNotes::requireCellar);
        if (gramsPerHl == 0) {
            return List.of();
        }
        if (form == HopForm.CO2_EXTRACT || form == HopForm.ISOMERISED_EXTRACT) {
            return List.of(note(
                    form.label() + " holds no beer back; published dry-hop rates and times are for leaf and pellets and"
                            + " say nothing of it: go by its maker",
                    "common practice, no source"));
        }
        List<String> notes = new ArrayList<>();
        notes.add(held(form, gramsPerHl));
        if (!(gramsPerHl >= USUAL_LEAST && gramsPerHl <= USUAL_MOST)) {
            notes.add(rate(gramsPerHl));
        }
        days.ifPresent(found -> notes.add(contact(found)));
        notes.add(enzymes(gramsPerHl, celsius));
        if (gramsPerHl >= AlphaBalance.DRY_HOP_CAUTION_G_PER_HL) {
            notes.add(note(
                    "from about " + Figures.fixed(AlphaBalance.DRY_HOP_CAUTION_G_PER_HL, 0)
                            + " g/hL dry hops move the bitterness, up in mild beers and down in bitter ones; they are"
                            + " counted as 0 EBU here, so have the beer analysed",
                    "Hopsteiner in Brauwelt; Maye, Brauwelt International 2018; Parkin & Shellhammer 2017"));
        }
        return List.copyOf(notes);
    }

    private static String held(HopForm form, double gramsPerHl) {
        if (form == HopForm.LEAF) {
            return note(
                    "no figure is published for beer held by dry leaf hops; drained from the copper they hold about 6 L/kg of"
                            + " wort. In a cask that beer stays behind when the cask is empty",
                    "W. Black, A Practical Treatise on Brewing, 1849: 5.76 and 5.97 L/kg");
        }
        double kgPerHl = gramsPerHl / GRAMS_PER_KG;
        return note(
                form.label() + " pellets hold about " + Figures.fixed(PELLETS_HOLD, 0) + " L of beer a kg, published "
                        + Figures.fixed(PELLETS_HOLD_LEAST, 0) + " to " + Figures.fixed(PELLETS_HOLD_MOST, 0)
                        + ": at this dose about " + Figures.fixed(kgPerHl * PELLETS_HOLD, 1) + " L of each hL, "
                        + Figures.fixed(kgPerHl * PELLETS_HOLD_LEAST, 1) + " to "
                        + Figures.fixed(kgPerHl * PELLETS_HOLD_MOST, 1)
                        + "; what your own vessel loses counts for more",
                "Totally Natural Solutions, trial of 2019; BarthHaas");
    }

    private static String rate(double gramsPerHl) {
        String usual = "the usual " + Figures.fixed(USUAL_LEAST, 0) + " to " + Figures.fixed(USUAL_MOST, 0)
                + " g/hL of British cask beer";
        String dose = Figures.fixed(gramsPerHl, 1) + " g/hL ";
        if (gramsPerHl < USUAL_LEAST) {
            return note(dose + "is under " + usual, MURPHY);
        }
        String most = gramsPerHl <= WHOLE_MOST ? ", though up to " : ", and over the ";
        return note(
                dose + "is over " + usual + most + Figures.fixed(WHOLE_MOST, 0) + " g/hL that are met with", MURPHY);
    }

    private static String contact(double days) {
        return note(
                "flavour is at its most by about " + Figures.fixed(FULL_FLAVOUR_DAYS, 0) + " days of contact; at "
                        + Figures.plain(days) + (days == 1 ? " day " : " days ")
                        + (days < FULL_FLAVOUR_DAYS ? "there is more to come" : "it is there"),
                MURPHY);
    }

    private static String enzymes(double gramsPerHl, OptionalDouble celsius) {
        String here = Figures.fixed(gramsPerHl, 0) + " g/hL"
                + (celsius.isPresent() ? " and " + Figures.plain(celsius.getAsDouble()) + " °C" : "");
        return note(
                "caution: enzymes of hops can make dextrins fermentable, so that gravity falls further and strength and"
                        + " condition rise; in a trial at " + Figures.fixed(ENZYME_TRIAL_DOSE, 0) + " g/hL and "
                        + Figures.fixed(ENZYME_TRIAL_CELSIUS, 0)
                        + " °C with yeast real extract fell by 1 °P in 5 days and"
                        + " about 2 in 40. This is not scaled to " + here
                        + ": check that the gravity stands still before"
                        + " racking and above all before bottling, since too much condition bursts bottles, and declare the"
                        + " strength that the beer ends at by the rules of your authority",
                "Kirkpatrick & Shellhammer, Journal of Agricultural and Food Chemistry, 2018");
    }

    private static void requireCellar(double celsius) {
        if (!(celsius >= -10 && celsius <= 40)) {
            throw new IllegalArgumentException("temperature of the beer on dry hops: expected -10 to 40 °C, found "
                    + Figures.plain(celsius) + " °C");
        }
    }

    private static String note(String words, String source) {
        return words + " (" + source + ")";
    }
}
