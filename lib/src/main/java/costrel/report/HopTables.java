package costrel.report;

import costrel.hops.HopOnTheDay;
import costrel.scaling.Gyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The hop additions of a gyle as tables. */
final class HopTables {

    private HopTables() {}

    /** The additions to weigh out, the routes of their alpha acid, and what they come to as weighed. */
    static List<Block> additions(Gyle gyle) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(hopTable(gyle));
        routes(gyle).ifPresent(blocks::add);
        weighed(gyle).ifPresent(blocks::add);
        return blocks;
    }

    private static Table hopTable(Gyle gyle) {
        boolean weighed = gyle.weighed().isPresent();
        TextTable table = TextTable.keyed(
                "hops",
                "hop additions",
                Column.words("hop", "hops"),
                Column.words("lot", "lot"),
                Column.words("use", "use"),
                Column.words("holds", "holds"),
                Column.figures("alpha", "alpha %", "%"),
                Column.figures("doseWas", "was g/hL", "g/hL"),
                Column.figures("dose", "g/hL", "g/hL"),
                Column.figures("weight", "kg", "kg"),
                Column.figures("weighOut", weighed ? "weigh out kg" : "not for weighing", "kg"),
                Column.figures("ebu", "EBU", "EBU"));
        PaperSum kg = new PaperSum(3);
        PaperSum weighedKg = new PaperSum(3);
        PaperSum ebu = new PaperSum(2);
        for (Gyle.Hop hop : gyle.hops()) {
            table.row(
                    hop.hop().variety() + " " + hop.hop().form().label(),
                    hop.hop().lot(),
                    hop.use().text(),
                    hop.holds().label(),
                    Figures.fixed(hop.hop().alpha() * 100, 2),
                    Figures.fixed(hop.wasGramsPerHl(), 1),
                    Figures.fixed(hop.gramsPerHl(), 1),
                    kg.add(hop.kg()),
                    weighed ? weighedKg.add(hop.weighedKg()) : "",
                    ebu.add(hop.ebu()));
        }
        table.total("", "", "", "", "", "", "", kg.total(), weighed ? weighedKg.total() : "", ebu.total());
        return table.table();
    }

    /** The additions as they were and as they are now. */
    static List<Block> changed(Gyle gyle) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(hopChangeTable(gyle));
        routes(gyle).ifPresent(blocks::add);
        weighed(gyle).ifPresent(blocks::add);
        return blocks;
    }

    private static Table hopChangeTable(Gyle gyle) {
        boolean weighed = gyle.weighed().isPresent();
        TextTable table = TextTable.keyed(
                "hopChange",
                "hop additions as they were and as they are now",
                Column.words("hop", "hops"),
                Column.words("use", "use"),
                Column.words("holds", "holds"),
                Column.words("lotWas", "was lot"),
                Column.figures("alphaWas", "alpha %", "%"),
                Column.figures("doseWas", "g/hL", "g/hL"),
                Column.words("lot", "now lot"),
                Column.figures("alpha", "alpha %", "%"),
                Column.figures("dose", "g/hL", "g/hL"),
                Column.figures("weighOut", weighed ? "weigh out kg" : "kg, not for weighing", "kg"),
                Column.figures("ebu", "EBU", "EBU"));
        PaperSum kg = new PaperSum(3);
        PaperSum ebu = new PaperSum(2);
        for (int i = 0; i < gyle.hops().size(); i++) {
            Gyle.Hop hop = gyle.hops().get(i);
            HopOnTheDay was = gyle.intent().hops().get(i).asRead();
            table.row(
                    hop.hop().variety(),
                    hop.use().text(),
                    hop.holds().label(),
                    was.lot(),
                    Figures.fixed(was.alpha() * 100, 2),
                    Figures.fixed(hop.wasGramsPerHl(), 1),
                    hop.hop().lot(),
                    Figures.fixed(hop.hop().alpha() * 100, 2),
                    Figures.fixed(hop.gramsPerHl(), 1),
                    kg.add(hop.weighedKg()),
                    ebu.add(hop.ebu()));
        }
        table.total("", "", "", "", "", "", "", "", "", kg.total(), ebu.total());
        return table.table();
    }

    private static Optional<Block> routes(Gyle gyle) {
        List<String> routes = new ArrayList<>();
        for (Gyle.Hop hop : gyle.hops()) {
            String route = hop.hop().lot() + ": " + hop.hop().route();
            if (!routes.contains(route)) {
                routes.add(route);
            }
        }
        return routes.isEmpty()
                ? Optional.empty()
                : Optional.of(Block.Note.how("alpha on the day by " + String.join("; ", routes)));
    }

    private static Optional<Block> weighed(Gyle gyle) {
        return gyle.weighed().map(drift -> {
            List<Fact> facts = new ArrayList<>();
            facts.add(Fact.figure("weighedOg", "as weighed out: OG", Figures.degrees(drift.ogDegrees()), ""));
            facts.add(Fact.figure("weighedEbu", "", Figures.fixed(drift.ebu(), 2), "EBU"));
            if (drift.ebc().isPresent()) {
                facts.add(Fact.figure("weighedEbc", "", Figures.fixed(drift.ebc(), 1), "EBC"));
            }
            return new Block.Facts(facts);
        });
    }
}
