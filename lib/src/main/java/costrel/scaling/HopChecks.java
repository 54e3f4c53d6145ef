package costrel.scaling;

import costrel.hops.AlphaBalance;
import costrel.hops.AlphaMethod;
import costrel.hops.HopForm;
import costrel.recipe.Holds;
import costrel.scaling.BrewSolver.BrewState;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

/** Holds the hops of a gyle against what dissolves, what strains and what the models were made for. */
final class HopChecks {

    /** Beyond this, measured bitterness no longer follows alpha acid: judgement, no source. */
    private static final double BITTER_LIMIT_EBU = 60;

    /** An alpha acid that any factor leaves under the whole. */
    private static final double ONE_PER_CENT = 0.01;

    private HopChecks() {}

    static List<Finding> of(Gyle gyle, BrewState state, Scaler.Options options) {
        List<Finding> findings = new ArrayList<>();
        bitterness(gyle, state, findings);
        leafBed(gyle, findings);
        Set<String> remarks = new LinkedHashSet<>();
        for (int i = 0; i < gyle.hops().size(); i++) {
            Gyle.Hop hop = gyle.hops().get(i);
            Intent.Hop intent = gyle.intent().hops().get(i);
            double alphaMgL = AlphaBalance.alphaMgPerL(hop.kg(), hop.hop().alpha(), gyle.collectedL());
            if (hop.use().holdsWort() && alphaMgL > AlphaBalance.DISSOLVES_MG_PER_L) {
                findings.add(Finding.caution(
                        String.format(
                                Locale.ROOT,
                                "%s in the %s brings %.0f mg/L of alpha acid; about %.0f mg/L dissolves",
                                hop.hop().variety(),
                                hop.use().text(),
                                alphaMgL,
                                AlphaBalance.DISSOLVES_MG_PER_L),
                        "split the addition"));
            }
            if (hop.use().isDryHop() && hop.gramsPerHl() > AlphaBalance.DRY_HOP_CAUTION_G_PER_HL) {
                findings.add(Finding.caution(
                        String.format(
                                Locale.ROOT,
                                "dry hops at %.0f g/hL: from about %.0f g/hL they change the bitterness, which is counted as 0 here",
                                hop.gramsPerHl(),
                                AlphaBalance.DRY_HOP_CAUTION_G_PER_HL),
                        "have the beer analysed"));
            }
            if (!hop.remark().isEmpty()) {
                remarks.add(hop.use().text() + ": " + hop.remark());
            }
            methods(intent, options, findings);
        }
        remarks.forEach(remark -> findings.add(Finding.note("utilisation, " + remark, "")));
        if (gyle.bitterness().upperBound()) {
            findings.add(
                    options.insistOnUpperBound()
                            ? Finding.caution(
                                    "the bitterness is only an upper bound: no recovery has been fitted for "
                                            + gyle.plant().name(),
                                    "have a gyle analysed and state the plant's isomerisation recovery")
                            : Finding.limit(
                                    "the bitterness is only an upper bound, about twice what breweries measure; weights are not to be"
                                            + " weighed out",
                                    "state the plant's isomerisation recovery, or insist"));
        }
        if (gyle.bitterness().byHome().isPresent()) {
            findings.add(Finding.caution(
                    String.format(
                            Locale.ROOT,
                            "the beer was read by the %s convention and is brewed by the %s convention: %.1f EBU there reads"
                                    + " %.1f EBU here",
                            gyle.bitterness().homeConvention(),
                            gyle.bitterness().convention(),
                            gyle.bitterness().byHome().getAsDouble(),
                            gyle.bitterness().ebu()),
                    "the figure was held; have both beers analysed before trusting it"));
        }
        return findings;
    }

    private static void bitterness(Gyle gyle, BrewState state, List<Finding> findings) {
        double unmet = state.hops().unmet();
        if (Math.abs(unmet) > 1e-9) {
            boolean bittering = gyle.hops().stream().anyMatch(hop -> hop.holds() == Holds.BITTERNESS);
            findings.add(Finding.limit(
                    String.format(
                            Locale.ROOT,
                            "bitterness comes out at %.1f EBU for %.1f EBU wanted: %s",
                            gyle.bitterness().ebu(),
                            gyle.intent().ebu(),
                            bittering
                                    ? "the additions that keep their dose bring all of it and more, so the bittering is 0"
                                    : "no addition holds bitterness"),
                    bittering ? "lower a late dose" : "let a copper addition hold bitterness"));
        }
        if (gyle.bitterness().ebu() > BITTER_LIMIT_EBU) {
            findings.add(Finding.caution(
                    String.format(
                            Locale.ROOT,
                            "bitterness of %.0f EBU is beyond what the conventions were made for (about %.0f EBU)",
                            gyle.bitterness().ebu(),
                            BITTER_LIMIT_EBU),
                    "have the beer analysed"));
        }
    }

    private static void leafBed(Gyle gyle, List<Finding> findings) {
        OptionalDouble least = gyle.plant().hopback().leastLeafKg();
        if (least.isEmpty()) {
            return;
        }
        double leafKg = gyle.hops().stream()
                .filter(hop -> hop.use().holdsWort() && hop.hop().form() == HopForm.LEAF)
                .mapToDouble(Gyle.Hop::kg)
                .sum();
        if (leafKg < least.getAsDouble()) {
            findings.add(Finding.limit(
                    String.format(
                            Locale.ROOT,
                            "%.1f kg of leaf hops reach the hopback; it needs %.1f kg for a bed that holds the hot break",
                            leafKg,
                            least.getAsDouble()),
                    "put more low-alpha leaf hops in the copper"));
        }
    }

    private static void methods(Intent.Hop hop, Scaler.Options options, List<Finding> findings) {
        AlphaMethod read = hop.asRead().method();
        AlphaMethod now = hop.now().method();
        if (read == now || hop.holds() != Holds.BITTERNESS) {
            return;
        }
        String pair = hop.now().lot() + " (" + now.label() + ") in place of "
                + hop.asRead().lot() + " (" + read.label() + ")";
        if (read == AlphaMethod.UNSTATED || now == AlphaMethod.UNSTATED) {
            findings.add(Finding.caution(
                    "alpha figures of unlike methods meet: " + pair + ", taken as they are",
                    "ask the merchant for the method"));
        } else {
            findings.add(Finding.note(
                    String.format(
                            Locale.ROOT,
                            "alpha of %s brought to one method with the stated factor %.3f",
                            pair,
                            options.factors().convert(ONE_PER_CENT, now, read) / ONE_PER_CENT),
                    ""));
        }
    }
}
