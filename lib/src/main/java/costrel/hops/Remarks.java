package costrel.hops;

import java.util.ArrayList;
import java.util.List;

/** Gathers what must be said about one figure. */
final class Remarks {

    private final List<String> said = new ArrayList<>();

    void addIf(boolean applies, String remark) {
        if (applies) {
            said.add(remark);
        }
    }

    /**
     * What conventions without a figure of their own for first wort and mash hops say about them. The fifth is 9.1 % against
     * 44.0 % of hops boiled 60 min: A. Justus, MBAA Technical Quarterly 55(3), 2018.
     */
    void addBoiledFromTheStart(HopUse use) {
        addIf(use instanceof HopUse.FirstWort, "counted as added at the start of the boil");
        addIf(
                use instanceof HopUse.Mash,
                "counted as added at the start of the boil: mash hops were found to give about a fifth of that");
    }

    String text() {
        return String.join("; ", said);
    }
}
