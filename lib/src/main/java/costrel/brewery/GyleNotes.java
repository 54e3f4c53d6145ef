package costrel.brewery;

import costrel.harvest.DryHopNotes;
import costrel.hops.HopOnTheDay;
import costrel.recipe.Catalogue;
import costrel.recipe.Names;
import costrel.scaling.Finding;
import costrel.scaling.Gyle;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** What a brewer must know of a gyle beside the limits of the plant: hops that the store doesn't hold, and dry hops. */
final class GyleNotes {

    private GyleNotes() {}

    static List<Finding> of(Gyle gyle, Catalogue catalogue) {
        List<Finding> notes = shortOfHops(gyle, catalogue);
        notes.addAll(standIns(gyle));
        gyle.hops().stream()
                .filter(hop -> hop.use().isDryHop() && hop.kg() > 0)
                .flatMap(
                        hop -> DryHopNotes.of(
                                hop.hop().form(), hop.gramsPerHl(), OptionalDouble.empty(), OptionalDouble.empty())
                                .stream())
                .distinct()
                .forEach(note -> notes.add(new Finding(Finding.Weight.NOTE, "dry hops: " + note, "")));
        return notes;
    }

    /** Hops of another variety than the recipe's, which only a person can have asked for. */
    private static List<Finding> standIns(Gyle gyle) {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (int i = 0; i < gyle.hops().size(); i++) {
            HopOnTheDay now = gyle.hops().get(i).hop();
            String asked = gyle.intent().hops().get(i).asRead().variety();
            if (!Names.folded(now.variety()).equals(Names.folded(asked)) && told.add(now.lot() + " " + asked)) {
                findings.add(new Finding(
                        Finding.Weight.CAUTION,
                        now.variety() + " lot " + now.lot() + " stands in for " + asked,
                        "the bitterness is held; the character is for you to judge"));
            }
        }
        return findings;
    }

    /** Lots of which the gyle takes more than is in store. */
    private static List<Finding> shortOfHops(Gyle gyle, Catalogue catalogue) {
        Map<String, Double> wanted = new TreeMap<>();
        gyle.hops().forEach(hop -> wanted.merge(hop.hop().lot(), hop.weighedKg(), Double::sum));
        List<Finding> findings = new ArrayList<>();
        wanted.forEach((id, kg) -> Names.find(catalogue.hopLots(), id)
                .filter(lot -> lot.stockKg().isPresent() && kg > lot.stockKg().getAsDouble() + 1e-9)
                .ifPresent(lot -> findings.add(new Finding(
                        Finding.Weight.CAUTION,
                        String.format(
                                Locale.ROOT,
                                "%s lot %s: %.2f kg wanted, %.2f kg in store",
                                lot.variety(),
                                id,
                                kg,
                                lot.stockKg().getAsDouble()),
                        "take another lot for part of it, or brew less"))));
        return findings;
    }
}
