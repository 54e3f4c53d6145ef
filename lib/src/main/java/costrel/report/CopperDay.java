package costrel.report;

import costrel.hops.HopUse;
import costrel.recipe.Recipe;
import costrel.scaling.Gyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What happens to a gyle from mash to cask, in the order of the day: the boil and its end, copper sugars and hops. */
final class CopperDay {

    private static final double FIRST = 1e6;
    private static final double AFTER_THE_STAND = -1e5;
    private static final double IN_THE_TANK = -1e6;
    private static final double IN_THE_CASK = -2e6;

    private CopperDay() {}

    /**
     * One thing to do.
     *
     * @param key what a program finds it by
     * @param order minutes before the cast; stand-ins far before and after for what has no clock
     * @param clocked whether order is minutes before the cast
     * @param when in words
     * @param hop the hops that go in
     * @param grist the sugar that goes in
     */
    record Step(
            String key,
            double order,
            boolean clocked,
            String when,
            Optional<Gyle.Hop> hop,
            Optional<Gyle.Grist> grist) {

        /** The boil begins, or ends. */
        boolean event() {
            return hop.isEmpty() && grist.isEmpty();
        }
    }

    static List<Step> of(Gyle gyle) {
        Recipe.Method method = gyle.intent().recipe().method();
        double boil = method.boilMinutes();
        double stand = method.stand().orElse(gyle.plant().stand()).minutes();
        List<Step> steps = new ArrayList<>();
        steps.add(event("boil", boil, "the boil starts"));
        for (int i = 0; i < gyle.grist().size(); i++) {
            Gyle.Grist line = gyle.grist().get(i);
            if (!line.material().mashed()) {
                OptionalDouble left = line.minutesBeforeCast();
                double minutes = left.orElse(boil);
                String when = left.isPresent() ? beforeCast(minutes) : "start of the boil";
                steps.add(new Step("grist." + i, minutes, true, when, Optional.empty(), Optional.of(line)));
            }
        }
        for (int i = 0; i < gyle.hops().size(); i++) {
            steps.add(step("hop." + i, gyle.hops().get(i), stand));
        }
        steps.add(event("cast", 0, "cast: the boil ends"));
        // The start of the boil goes before what goes in with it; the cast after what goes in at 0 min.
        steps.sort(Comparator.comparingDouble((Step step) -> -step.order())
                .thenComparing(
                        step -> step.key().equals("boil") ? 0 : step.key().equals("cast") ? 2 : 1));
        return List.copyOf(steps);
    }

    private static Step event(String key, double minutes, String when) {
        return new Step(key, minutes, true, when, Optional.empty(), Optional.empty());
    }

    private static Step step(String key, Gyle.Hop hop, double standMinutes) {
        HopUse use = hop.use();
        if (use instanceof HopUse.Copper copper) {
            return clocked(key, hop, copper.minutesBeforeCast(), beforeCast(copper.minutesBeforeCast()));
        }
        if (use instanceof HopUse.HotStand hot) {
            double after = Math.max(0, standMinutes - hot.minutes());
            // A hair after the cast, so that it stands under it.
            return clocked(key, hop, -after - 1e-6, "hot stand, " + minutes(standMinutes - after) + " of it left");
        }
        if (use instanceof HopUse.Mash) {
            return unclocked(key, hop, 2 * FIRST, "with the mash");
        }
        if (use instanceof HopUse.FirstWort) {
            return unclocked(key, hop, FIRST, "first wort, as the copper fills");
        }
        if (use instanceof HopUse.Hopback) {
            return unclocked(key, hop, AFTER_THE_STAND, "hopback, laid in before the run");
        }
        return use instanceof HopUse.DryHopTank
                ? unclocked(key, hop, IN_THE_TANK, "dry hop in tank")
                : unclocked(key, hop, IN_THE_CASK, "dry hop in cask");
    }

    private static Step clocked(String key, Gyle.Hop hop, double order, String when) {
        return new Step(key, order, true, when, Optional.of(hop), Optional.empty());
    }

    private static Step unclocked(String key, Gyle.Hop hop, double order, String when) {
        return new Step(key, order, false, when, Optional.of(hop), Optional.empty());
    }

    private static String beforeCast(double minutes) {
        return minutes == 0 ? "at cast" : minutes(minutes) + " before cast";
    }

    private static String minutes(double minutes) {
        return Figures.fixed(minutes, minutes == Math.rint(minutes) ? 0 : 1) + " min";
    }
}
