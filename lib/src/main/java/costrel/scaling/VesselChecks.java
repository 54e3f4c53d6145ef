package costrel.scaling;

import costrel.plant.MashEfficiency;
import costrel.plant.Plant;
import costrel.wort.WaterDensity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Holds a gyle against what the vessels take. A limit met is a finding with its figures, not an error. */
final class VesselChecks {

    private VesselChecks() {}

    static List<Finding> of(Gyle gyle) {
        Plant plant = gyle.plant();
        List<Finding> findings = new ArrayList<>();
        findings.addAll(overflows(gyle));
        gyle.liquor().ifPresent(liquor -> {
            if (liquor.spargeL() < 0) {
                findings.add(Finding.limit(
                        String.format(
                                Locale.ROOT,
                                "the mash liquor alone is %.0f L more than the copper needs; no sparge is left",
                                -liquor.spargeL()),
                        "mash thicker, or boil longer"));
            }
            if (liquor.strikeC().isPresent() && liquor.strikeC().getAsDouble() >= 100) {
                findings.add(Finding.limit(
                        String.format(
                                Locale.ROOT,
                                "strike heat comes out at %.1f °C",
                                liquor.strikeC().getAsDouble()),
                        "mash thinner, or warm the grist"));
            }
            if (liquor.strikeC().isEmpty()) {
                findings.add(Finding.note(
                        "strike heat left out: initial heat or the temperature of the grist is not stated",
                        "state the recipe's initial heat and the plant's grist temperature"));
            } else {
                findings.add(Finding.caution(
                        "hot liquor at " + FixedText.of(liquor.strikeC().getAsDouble(), 1)
                                + " °C and boiling wort scald",
                        "follow the site's own rules for hot work and the vessels' instructions"));
            }
        });
        if (gyle.liquor().isEmpty()) {
            findings.add(Finding.note(
                    "liquor plan left out: the recipe states no liquor:grist ratio", "add one, such as 2.5 L/kg"));
        }
        if (plant.efficiency() instanceof MashEfficiency.Linear linear
                && !(gyle.castDegrees() >= linear.lowestDegrees() && gyle.castDegrees() <= linear.highestDegrees())) {
            findings.add(Finding.caution(
                    "mash efficiency was fitted to gyles of 1"
                            + FixedText.padded(FixedText.of(linear.lowestDegrees(), 0), 3) + " to 1"
                            + FixedText.padded(FixedText.of(linear.highestDegrees(), 0), 3) + "; this one is cast at 1"
                            + FixedText.padded(FixedText.of(gyle.castDegrees(), 1), 5),
                    "expect the OG to miss by more than usual"));
        }
        double homeBack = 1 - gyle.intent().castShare();
        if (homeBack > 0) {
            findings.add(Finding.note(
                    String.format(
                            Locale.ROOT,
                            "%.1f %% of the collected wort is liquor added after the boil, as the beer was brewed; gravity by the"
                                    + " linear rule, which reads up to 0.2 degrees low",
                            homeBack * 100),
                    ""));
        }
        return findings;
    }

    /** Whether a vessel is too small, which two gyles would mend. */
    static boolean overfull(Gyle gyle) {
        return !overflows(gyle).isEmpty();
    }

    private static List<Finding> overflows(Gyle gyle) {
        Plant plant = gyle.plant();
        List<Finding> findings = new ArrayList<>();
        double gristKg = gyle.mashedKg();
        OptionalDouble greatest = plant.mashTun().greatestGristKg();
        if (greatest.isPresent() && gristKg > greatest.getAsDouble()) {
            findings.add(over("grist", gristKg, greatest.getAsDouble(), "kg", "the mash tun takes"));
        }
        OptionalDouble tun = plant.mashTun().volumeL();
        gyle.liquor().ifPresent(liquor -> {
            if (tun.isPresent() && liquor.mashHotL() > tun.getAsDouble()) {
                findings.add(over("mash", liquor.mashHotL(), tun.getAsDouble(), "L", "the mash tun holds"));
            }
        });
        OptionalDouble copper = plant.copper().volumeL();
        double upHotL = copperUpHotL(gyle);
        if (copper.isPresent()) {
            double usable = copper.getAsDouble() * (1 - plant.copper().headspaceShare());
            if (upHotL > usable) {
                findings.add(over("copper up hot", upHotL, usable, "L", "under its headspace the copper holds"));
            }
        }
        OptionalDouble fv = plant.fv().volumeL();
        if (fv.isPresent()) {
            double usable = fv.getAsDouble() * (1 - plant.fv().headspaceShare());
            if (gyle.collectedL() > usable) {
                findings.add(over("brew length", gyle.collectedL(), usable, "L", "under its headspace the FV holds"));
            }
        }
        return findings;
    }

    /** Litres of the full copper at the boil. */
    static double copperUpHotL(Gyle gyle) {
        double upL =
                gyle.volume().amount("run-off from the mash") + gyle.volume().amount("copper sugars");
        return WaterDensity.volumeAt(upL, gyle.plant().copper().boilingCelsius());
    }

    private static Finding over(String what, double amount, double limit, String unit, String holds) {
        int gyles = (int) Math.ceil(amount / limit - 1e-9);
        return Finding.limit(
                String.format(Locale.ROOT, "%s of %.0f %s: %s %.0f %s", what, amount, unit, holds, limit, unit),
                "brew shorter, or in " + gyles + " gyles");
    }
}
