package costrel.cost;

import costrel.explain.CostFinding;
import costrel.figures.Figures;
import costrel.packaging.PackagingRun;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What a cost sheet says in words beside its figures. */
final class SheetNotes {
    private static final BigDecimal STEP_OF_LABEL_TOLERANCE = new BigDecimal("5.5");
    private static final BigDecimal TOLERANCE_UP_TO_STEP = new BigDecimal("0.5");

    private SheetNotes() {}

    static List<CostFinding> findings(
            Batch batch, PackagingRun run, Collection<CostFinding> ofPrices, List<ContainerCost> containers) {
        Set<CostFinding> findings = new LinkedHashSet<>(ofPrices);
        for (PackagingRun.Filled filled : run.filled()) {
            String name = filled.plan().container().name();
            if (filled.count() == 0) {
                findings.add(new CostFinding(
                        name + ": " + litres(filled.ownL().add(filled.carriedInL())) + " fills not one",
                        filled.carriedTo()
                                .map(to -> "the beer goes on to " + to + " and its share of the cost with it")
                                .orElse("its share of the cost is borne by the other containers")));
            } else if (filled.remainderL().signum() > 0 && filled.carriedTo().isPresent()) {
                findings.add(new CostFinding(
                        name + ": " + litres(filled.remainderL()) + " is left that fills not one more",
                        "it goes on to " + filled.carriedTo().get()));
            }
        }
        if (run.leftL().signum() > 0) {
            findings.add(new CostFinding(
                    litres(run.leftL()) + " is left after the smallest container and is lost",
                    "brew a little less, or plan a smaller container"));
        }
        containers.forEach(container -> findings.addAll(container.duty().findings()));
        batch.declaredStrength().ifPresent(declared -> labelTolerance(declared, containers, findings));
        return List.copyOf(findings);
    }

    /** Regulation (EU) No 1169/2011 Annex XII: 0.5 either way up to 5.5 % vol, 1.0 above. */
    private static void labelTolerance(BigDecimal declared, List<ContainerCost> containers, Set<CostFinding> findings) {
        BigDecimal tolerance = tolerance(declared);
        BigDecimal expected = containers.get(0).duty().expected().unroundedStrength();
        if (declared.subtract(expected).abs().compareTo(tolerance) > 0) {
            findings.add(new CostFinding(
                    "the declared " + Figures.plain(declared) + " % is more than " + Figures.plain(tolerance)
                            + " from the expected " + Figures.rounded(expected, 2) + " %",
                    "labels must be right within that: have the strength measured"));
        }
    }

    private static BigDecimal tolerance(BigDecimal declared) {
        return declared.compareTo(STEP_OF_LABEL_TOLERANCE) > 0 ? BigDecimal.ONE : TOLERANCE_UP_TO_STEP;
    }

    static List<CostFinding> cautions(Batch batch, List<ContainerCost> containers) {
        Set<CostFinding> cautions = new LinkedHashSet<>();
        cautions.add(new CostFinding(
                "an estimate for costing and pricing, not a duty return or tax advice",
                "duty, reliefs and value added tax depend on your approval, records, premises and the law on the day:"
                        + " confirm with the revenue authority (in the UK, HM Revenue & Customs) and an accountant"));
        cautions.add(new CostFinding("value added tax is in no figure of this sheet", ""));
        containers.forEach(container -> cautions.addAll(container.duty().cautions()));
        for (ContainerCost container : containers) {
            BigDecimal sedimentL = container.container().sedimentL();
            cautions.add(new CostFinding(
                    container.container().name() + ": "
                            + (sedimentL.signum() == 0 ? "no sediment" : litres(sedimentL) + " of sediment")
                            + " is taken off what can be sold",
                    "check it against what comes out of a container in the cellar"));
        }
        batch.declaredStrength()
                .ifPresent(declared -> cautions.add(new CostFinding(
                        "a label of " + Figures.plain(declared) + " % must be within "
                                + Figures.plain(tolerance(declared)) + " of the measured strength",
                        "Regulation (EU) No 1169/2011 Annex XII; check what holds where the beer is sold")));
        List<String> allergens = allergens(batch);
        cautions.add(new CostFinding(
                allergens.isEmpty()
                        ? "allergens: none are entered for these ingredients"
                        : "allergens to declare: " + String.join(", ", allergens),
                "check every ingredient's own papers: a list is only as good as what was entered"));
        return List.copyOf(cautions);
    }

    static List<String> defaultsUsed(Batch batch, List<String> ofStock) {
        List<String> defaults = new ArrayList<>();
        batch.packaging().forEach(share -> defaults.addAll(share.container().defaultsUsed()));
        if (batch.declaredStrength().isEmpty()) {
            defaults.add("declared strength: none given, the expected strength taken");
        }
        defaults.addAll(ofStock);
        return List.copyOf(new LinkedHashSet<>(defaults));
    }

    static List<String> allergens(Batch batch) {
        Set<String> allergens = new LinkedHashSet<>(batch.allergens());
        batch.packaging().forEach(share -> allergens.addAll(share.container().allergens()));
        return List.copyOf(allergens);
    }

    private static String litres(BigDecimal value) {
        return Figures.rounded(value, 2) + " L";
    }
}
