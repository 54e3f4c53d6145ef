package costrel.hops;

import costrel.wort.TemperatureCourse;
import costrel.wort.TemperatureCourse.Hold;
import java.util.OptionalDouble;

/**
 * The convention {@code kinetic}: {@link Isomerisation} followed from the addition to the end of the stand, so that every
 * copper addition goes on isomerising while the wort stands.
 *
 * <pre>
 * U = I_end/α₀ · recovery · V_s/V_out
 * </pre>
 *
 * <p>First wort and mash hops are taken as added at the start of the boil. That counts first wort hops too low by what
 * isomerises while the copper fills and heats, and mash hops far too high, since most of their alpha acid stays in the grains
 * (A. Justus, <em>MBAA Technical Quarterly</em> 55(3), 2018: 9.1 % of mash hops against 44.0 % of hops boiled 60 min): a plant
 * that uses them does better with figures of its own. Hops in the hopback see its contact time and temperature and nothing
 * else. Dry hops count nothing.
 *
 * <p>Recovery stands for what the kinetics leave out: alpha acid that isn't extracted, and iso-alpha acid lost with break, hops
 * and yeast. It belongs to the plant and is fitted to laboratory bitterness. Without it the figure is an upper bound, which is
 * unfit for weighing out hops.
 *
 * @param recovery share of the computed iso-alpha acid that is found, over 0 and at most 1; empty where none was fitted
 */
public record Kinetic(OptionalDouble recovery) implements Utilisation {

    public Kinetic {
        if (recovery.isPresent()) {
            Limits.shareOverZero("isomerisation recovery", recovery.getAsDouble());
        }
    }

    @Override
    public String name() {
        return "kinetic";
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
        Remarks remarks = new Remarks();
        TemperatureCourse course = course(use, boil, remarks);
        remarks.addIf(
                !Isomerisation.withinStudy(course),
                "rates extrapolated: the wort is not at 90 to 130 °C, where they were measured, all the time");
        remarks.addIf(
                recovery.isEmpty(),
                "upper bound: no recovery was fitted to laboratory bitterness; breweries measure about half");
        double iso = Isomerisation.run(Isomerisation.FRESH, course).iso();
        return new UtilisationFigure(
                iso * recovery.orElse(1) * boil.collectedShare(), recovery.isEmpty(), remarks.text());
    }

    private static TemperatureCourse course(HopUse use, BoilContext boil, Remarks remarks) {
        if (use instanceof HopUse.HotStand stand) {
            double standMinutes = boil.stand().minutes();
            remarks.addIf(
                    !Double.isInfinite(stand.minutes()) && stand.minutes() > standMinutes,
                    "hot stand of " + Limits.rounded(stand.minutes(), 1) + " min: the wort stands only "
                            + Limits.rounded(standMinutes, 1) + " min, which are counted");
            return stand.minutes() < standMinutes ? boil.stand().tail(stand.minutes()) : boil.stand();
        }
        if (use instanceof HopUse.Hopback) {
            return held(boil.hopbackCelsius(), boil.hopbackMinutes());
        }
        remarks.addBoiledFromTheStart(use);
        return held(boil.boilingCelsius(), boil.boiledMinutes(use)).then(boil.stand());
    }

    private static TemperatureCourse held(double celsius, double minutes) {
        return minutes == 0 ? TemperatureCourse.of() : TemperatureCourse.of(new Hold(celsius, minutes));
    }
}
