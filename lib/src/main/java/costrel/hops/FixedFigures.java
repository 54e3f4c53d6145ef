package costrel.hops;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The convention {@code plant}: utilisations that a brewery has found for itself, one for each use, and for copper
 * additions one for each of some times, joined by straight lines. Dry hops count nothing.
 *
 * @param shareByUse utilisation of "mash", "first wort", "hot stand" and "hopback" hops, 0 to 1, by {@link HopUse#label}; a
 *     use that is left out is refused when a recipe asks for it
 * @param copper utilisation of copper additions, sorted by minutes; outside the stated times the nearest figure is held
 */
public record FixedFigures(Map<String, Double> shareByUse, List<Point> copper) implements Utilisation {

    private static final Set<String> USES = Set.of("mash", "first wort", "hot stand", "hopback");

    /**
     * The utilisation of a copper addition at one time.
     *
     * @param minutesBeforeCast minutes of boil left, 0 to 600
     * @param share utilisation, 0 to 1
     */
    public record Point(double minutesBeforeCast, double share) {
        public Point {
            minutesBeforeCast = Limits.within("time of a copper utilisation", minutesBeforeCast, 0, 600, " min");
            share = Limits.share("utilisation copper " + Limits.plain(minutesBeforeCast) + " min", share);
        }
    }

    public FixedFigures {
        shareByUse = Map.copyOf(shareByUse);
        new TreeMap<>(shareByUse).forEach((use, share) -> {
            if (!USES.contains(use)) {
                throw new IllegalArgumentException(
                        "utilisation: expected mash, first wort, hot stand or hopback, found '" + use + "'");
            }
            Limits.share("utilisation " + use, share);
        });
        copper = copper.stream()
                .sorted(Comparator.comparingDouble(Point::minutesBeforeCast))
                .toList();
        for (int i = 1; i < copper.size(); i++) {
            if (copper.get(i).minutesBeforeCast() == copper.get(i - 1).minutesBeforeCast()) {
                throw new IllegalArgumentException("utilisation copper "
                        + Limits.plain(copper.get(i).minutesBeforeCast()) + " min: expected one figure, found two");
            }
        }
    }

    @Override
    public String name() {
        return "plant";
    }

    @Override
    public String speaksOf() {
        return "collected wort";
    }

    @Override
    public UtilisationFigure of(HopUse use, BoilContext boil) {
        if (use.isDryHop()) {
            return UtilisationFigure.NONE;
        }
        if (use instanceof HopUse.Copper) {
            return copper(boil.boiledMinutes(use));
        }
        Double share = shareByUse.get(use.label());
        if (share == null) {
            throw missing("utilisation " + use.label());
        }
        return new UtilisationFigure(share, false, "");
    }

    private UtilisationFigure copper(double minutes) {
        if (copper.isEmpty()) {
            throw missing("utilisation copper " + Limits.plain(minutes) + " min");
        }
        Point first = copper.get(0);
        Point last = copper.get(copper.size() - 1);
        if (minutes < first.minutesBeforeCast()) {
            return held(minutes, first);
        }
        if (minutes > last.minutesBeforeCast()) {
            return held(minutes, last);
        }
        int next = 0;
        while (copper.get(next).minutesBeforeCast() < minutes) {
            next++;
        }
        Point above = copper.get(next);
        Point below = copper.get(Math.max(0, next - 1));
        double width = above.minutesBeforeCast() - below.minutesBeforeCast();
        double along = width == 0 ? 1 : (minutes - below.minutesBeforeCast()) / width;
        return new UtilisationFigure(below.share() + along * (above.share() - below.share()), false, "");
    }

    private static UtilisationFigure held(double minutes, Point nearest) {
        return new UtilisationFigure(
                nearest.share(),
                false,
                "no figure for copper " + Limits.rounded(minutes, 1) + " min: the nearest, that of "
                        + Limits.rounded(nearest.minutesBeforeCast(), 1) + " min, is held");
    }

    private static IllegalArgumentException missing(String what) {
        return new IllegalArgumentException(
                what + ": expected a figure such as 30 % among those of the plant, found none");
    }
}
