package costrel.report;

import costrel.brewery.Brew;
import costrel.packaging.ContainerKind;
import costrel.packaging.PackagingRun;
import costrel.packaging.PackagingShare;
import costrel.plant.DipTable;
import costrel.recipe.Names;
import costrel.recipe.Recipe;
import costrel.scaling.Gyle;
import costrel.scaling.LiquorPlan;
import costrel.wort.WaterDensity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The sheet for the brewhouse wall: one A4 page with what to weigh, draw and add, what to expect, and boxes for what came of
 * it. Figures carry a {@code data-key}, so that a program can read them back.
 */
public final class BrewSheetHtml {

    private BrewSheetHtml() {}

    /**
     * The sheet of a brew.
     *
     * @param brew what is to be brewed, with its plant and brew length
     * @param clock when the boil starts or ends; empty leaves boxes for the times
     * @return a page of HTML that needs no other file
     * @throws IllegalArgumentException if the brew lacks something it needs, or may not be weighed out
     */
    public static String of(Brew brew, Optional<BoilClock> clock) {
        Gyle gyle = brew.gyle();
        if (gyle.weighed().isEmpty()) {
            throw new IllegalArgumentException(gyle.beerName() + " on "
                    + gyle.plant().name()
                    + ": expected weights for a brew sheet, but they rest on an upper bound of the bitterness;"
                    + " state the plant's isomerisation recovery, or insist");
        }
        Html html = Html.page(gyle.beerName() + ", brew sheet", SheetStyle.BREW_SHEET);
        html.open("main");
        heading(html, brew, gyle);
        html.open("div", "class", "row").open("div", "class", "left");
        grist(html, gyle);
        html.close("div").open("div", "class", "right");
        liquor(html, gyle);
        html.close("div").close("div").open("div", "class", "row");
        day(html, gyle, clock);
        html.close("div").open("div", "class", "row").open("div", "class", "left");
        expected(html, gyle);
        html.close("div").open("div", "class", "right");
        others(html, gyle);
        html.close("div").close("div").open("div", "class", "row");
        packaging(html, brew, gyle);
        BrewCare.write(html, gyle, allergens(brew, gyle), bottled(brew, gyle));
        return html.close("div").close("main").finished();
    }

    private static void heading(Html html, Brew brew, Gyle gyle) {
        html.leaf("p", brew.brewery().name() + ": brew sheet").leaf("h1", gyle.beerName(), "data-key", "beer");
        html.open("table", "class", "facts").open("tbody").open("tr");
        html.leaf("th", "plant", "scope", "row").words("plant", gyle.plant().name());
        html.leaf("th", "brew length", "scope", "row").words("length", Figures.brewLength(gyle.collectedL()));
        html.leaf("th", "gyle number", "scope", "row").box("gyle number");
        html.leaf("th", "brewer", "scope", "row").box("brewer");
        html.close("tr").open("tr");
        html.leaf("th", "brewed", "scope", "row");
        date(html, "brewed", brew.day());
        html.leaf("th", "racked, expected", "scope", "row");
        date(html, "racked", racked(brew, gyle));
        html.leaf("th", "racked", "scope", "row").box("day racked");
        html.leaf("th", "ready", "scope", "row").box("day ready");
        html.close("tr").open("tr");
        for (String line : List.of("mashed in", "FV", "pitched", "pitching heat °C")) {
            html.leaf("th", line, "scope", "row").box(line);
        }
        html.close("tr").endTable();
        html.open("p").leaf("span", aims(gyle), "data-key", "aims").close("p");
    }

    /** The day on which the tank is free again by the recipe's tank time. */
    private static Optional<LocalDate> racked(Brew brew, Gyle gyle) {
        OptionalDouble days = gyle.intent().recipe().method().tankDays();
        return days.isEmpty() ? Optional.empty() : brew.day().map(day -> day.plusDays(Math.round(days.getAsDouble())));
    }

    private static void date(Html html, String key, Optional<LocalDate> day) {
        if (day.isPresent()) {
            html.words(key, day.get().toString());
        } else {
            html.box("day " + key);
        }
    }

    private static String aims(Gyle gyle) {
        StringBuilder line = new StringBuilder();
        line.append("OG ").append(Figures.degrees(gyle.og().excessDegrees()));
        gyle.beer().fg().ifPresent(fg -> line.append(", FG ").append(Figures.degrees(fg.excessDegrees())));
        line.append(", ").append(Figures.fixed(gyle.bitterness().ebu(), 1)).append(" EBU");
        line.append(" (").append(gyle.bitterness().convention()).append(" convention)");
        gyle.colours().stream()
                .findFirst()
                .ifPresent(colour -> line.append(", ")
                        .append(Figures.fixed(colour.colour().ebc(), 0))
                        .append(" EBC"));
        OptionalDouble label = gyle.intent().recipe().targets().declaredStrength();
        if (label.isPresent()) {
            line.append(", label ").append(Figures.fixed(label, 1)).append(" % vol");
        }
        line.append(", mash efficiency ").append(Figures.percent(gyle.mashEfficiency(), 1));
        return line.toString();
    }

    private static void grist(Html html, Gyle gyle) {
        html.table("Grist", "material", "#weigh out kg", "sacks", "weighed kg");
        PaperSum kg = new PaperSum(2);
        for (int i = 0; i < gyle.grist().size(); i++) {
            Gyle.Grist line = gyle.grist().get(i);
            boolean mashed = line.material().mashed();
            html.open("tr").cell(line.material().name() + (mashed ? "" : " (copper)"));
            html.figure("grist." + i + ".kg", kg.add(line.weighedKg()));
            html.words("grist." + i + ".sacks", mashed ? GyleText.sacks(line.weighedKg(), gyle.plant()) : "");
            html.box("weighed " + line.material().name()).close("tr");
        }
        html.open("tr", "class", "total")
                .cell("in all")
                .figure("grist.kg", kg.total())
                .cell("")
                .cell("");
        html.close("tr").endTable();
    }

    private static void liquor(Html html, Gyle gyle) {
        html.table("Liquor", "", "#L at 20 °C", "#°C", "actual");
        if (gyle.liquor().isEmpty()) {
            for (String line : List.of("mash liquor", "initial heat", "sparge liquor")) {
                html.open("tr").cell(line).cell("").cell("").box(line).close("tr");
            }
            html.endTable();
            return;
        }
        LiquorPlan plan = gyle.liquor().get();
        PaperSum litres = new PaperSum(0);
        html.open("tr").cell("mash liquor, strike").figure("liquor.mash", litres.add(plan.mashL()));
        html.figure("liquor.strike", Figures.fixed(plan.strikeC(), 1))
                .box("mash liquor")
                .close("tr");
        if (plan.meteredL().isPresent()) {
            html.open("tr").cell("on the meter, hot").figure("liquor.metered", Figures.fixed(plan.meteredL(), 0));
            html.cell("").box("meter").close("tr");
        }
        html.open("tr").cell("the mash, initial heat").figure("liquor.mashed", Figures.fixed(plan.mashVolumeL(), 0));
        html.figure("liquor.initial", Figures.fixed(plan.initialC(), 1))
                .box("initial heat")
                .close("tr");
        html.open("tr").cell("sparge liquor").figure("liquor.sparge", litres.add(plan.spargeL()));
        html.cell("").box("sparge liquor").close("tr");
        if (plan.backL() > 0) {
            html.open("tr").cell("liquoring back").figure("liquor.back", litres.add(plan.backL()));
            html.cell("").box("liquoring back").close("tr");
        }
        html.open("tr", "class", "total").cell("to draw in all").figure("liquor.total", litres.total());
        html.cell("").cell("").close("tr").endTable();
    }

    private static void day(Html html, Gyle gyle, Optional<BoilClock> clock) {
        double boil = gyle.intent().recipe().method().boilMinutes();
        html.table(
                "Copper and hops by the clock",
                "clock",
                "when",
                "item",
                "lot",
                "#alpha %",
                "#weigh out kg",
                "added kg");
        PaperSum kg = new PaperSum(2);
        for (CopperDay.Step step : CopperDay.of(gyle)) {
            html.open("tr", "class", step.event() ? "event" : "step");
            if (!step.clocked()) {
                html.cell("");
            } else if (clock.isPresent()) {
                html.words(step.key() + ".clock", clock.get().beforeCast(step.order(), boil));
            } else {
                html.box("time of " + step.when());
            }
            html.words(step.key() + ".when", step.when());
            step.grist().ifPresent(line -> {
                html.cell(line.material().name()).cell("").cell("");
                html.figure(step.key() + ".copper", Figures.fixed(line.weighedKg(), 2))
                        .box("sugar added");
            });
            step.hop().ifPresent(hop -> {
                html.cell(hop.hop().variety() + " " + hop.hop().form().label());
                html.words(step.key() + ".lot", hop.hop().lot());
                html.figure(step.key() + ".alpha", Figures.fixed(hop.hop().alpha() * 100, 2));
                html.figure(step.key() + ".kg", kg.add(hop.weighedKg()))
                        .box(hop.hop().lot() + " added");
            });
            if (step.event()) {
                html.cell("").cell("").cell("").cell("").cell("");
            }
            html.close("tr");
        }
        html.open("tr", "class", "total")
                .cell("")
                .cell("")
                .cell("hops in all")
                .cell("")
                .cell("");
        html.figure("hops.kg", kg.total()).cell("").close("tr").endTable();
    }

    private static void expected(Html html, Gyle gyle) {
        double boiling = gyle.plant().copper().boilingCelsius();
        double runOff = gyle.volume().amount("run-off from the mash");
        double up = runOff + gyle.volume().amount("copper sugars");
        double cast = up - gyle.volume().amount("boiled off");
        DipTable copper = gyle.plant().copperDips();
        String upDip = dip(copper, WaterDensity.volumeAt(up, boiling));
        String castDip = dip(copper, WaterDensity.volumeAt(cast, boiling));
        String fvDip = dip(gyle.plant().fvDips(), gyle.collectedL());
        html.table("What to expect", "", "#L at 20 °C", "#L hot", "#dip cm", "#gravity", "actual", "actual gravity");
        row(html, "run-off", "run-off from the mash", runOff, "", "", "");
        row(html, "up", "copper up", up, hot(up, boiling), upDip, Figures.degrees(gyle.copperUpDegrees()));
        row(
                html,
                "cast",
                "in the copper at cast",
                cast,
                hot(cast, boiling),
                castDip,
                Figures.degrees(gyle.castDegrees()));
        row(
                html,
                "collected",
                "collected in the FV",
                gyle.collectedL(),
                "",
                fvDip,
                Figures.degrees(gyle.og().excessDegrees()));
        row(
                html,
                "racked",
                "racked, racking gravity",
                gyle.beer().rackedL(),
                "",
                "",
                gyle.beer()
                        .rackingGravity()
                        .map(gravity -> Figures.degrees(gravity.excessDegrees()))
                        .orElse(""));
        html.open("tr").cell("final gravity").cell("").cell("").cell("");
        html.figure(
                "expect.final.gravity",
                gyle.beer()
                        .fg()
                        .map(gravity -> Figures.degrees(gravity.excessDegrees()))
                        .orElse(""));
        html.cell("").box("final gravity").close("tr");
        html.endTable();
        html.leaf(
                "p",
                "Hot litres and dips of the copper are at " + Figures.fixed(boiling, 0) + " °C."
                        + (upDip.isEmpty() || castDip.isEmpty() || fvDip.isEmpty()
                                ? " Where no dip is given, the plant's dip table does not reach: read your own."
                                : ""));
    }

    private static String dip(DipTable table, double litres) {
        return Figures.fixed(table.at(litres), 1);
    }

    private static String hot(double litres, double celsius) {
        return Figures.fixed(WaterDensity.volumeAt(litres, celsius), 0);
    }

    private static void row(
            Html html, String key, String label, double litres, String hot, String dip, String gravity) {
        html.open("tr").cell(label).figure("expect." + key + ".l", Figures.fixed(litres, 0));
        html.figure("expect." + key + ".hot", hot).figure("expect." + key + ".dip", dip);
        html.figure("expect." + key + ".gravity", gravity);
        html.box("volume, " + label).box("gravity, " + label).close("tr");
    }

    private static void others(Html html, Gyle gyle) {
        if (gyle.yeasts().isEmpty() && gyle.additions().isEmpty()) {
            return;
        }
        html.table("Also weigh out", "item", "into", "#amount", "unit");
        for (int i = 0; i < gyle.yeasts().size(); i++) {
            Gyle.Weight yeast = gyle.yeasts().get(i);
            html.open("tr").cell(yeast.name()).cell("FV");
            html.figure("yeast." + i, Figures.fixed(yeast.weighedAmount(), 2))
                    .cell("kg")
                    .close("tr");
        }
        for (int i = 0; i < gyle.additions().size(); i++) {
            Gyle.Weight line = gyle.additions().get(i);
            boolean small = line.weighedAmount() < 1;
            html.open("tr")
                    .cell(line.name())
                    .cell(line.into().map(Recipe.Into::label).orElse(""));
            html.figure(
                    "addition." + i,
                    small ? Figures.fixed(line.weighedAmount() * 1000, 0) : Figures.fixed(line.weighedAmount(), 2));
            html.cell(line.byVolume() ? (small ? "mL" : "L") : (small ? "g" : "kg"))
                    .close("tr");
        }
        html.endTable();
    }

    /** What it is to be filled into, where the brewery plans it. */
    static Optional<PackagingRun> run(Brew brew, Gyle gyle) {
        if (Names.find(brew.brewery().plans(), gyle.beerName()).isEmpty()) {
            return Optional.empty();
        }
        List<PackagingShare> shares = brew.brewery().packagingPlan(gyle.beerName()).entrySet().stream()
                .map(entry -> new PackagingShare(
                        entry.getKey(),
                        entry.getValue(),
                        gyle.plant().losses().fillLoss(entry.getKey().name())))
                .toList();
        return Optional.of(PackagingRun.of(gyle.beer().rackedL(), shares));
    }

    private static void packaging(Html html, Brew brew, Gyle gyle) {
        html.table("Racking and packaging", "container", "#share %", "#L each", "#to fill", "filled");
        List<PackagingRun.Filled> all =
                run(brew, gyle).map(PackagingRun::filled).orElse(List.of());
        for (int i = 0; i < all.size(); i++) {
            PackagingRun.Filled filled = all.get(i);
            String name = filled.plan().container().name();
            html.open("tr")
                    .cell(name)
                    .figure("fill." + i + ".share", Figures.fixed(filled.plan().share() * 100, 0));
            html.figure(
                    "fill." + i + ".l",
                    CostText.number(filled.plan().container().nominalL(), 3));
            html.figure("fill." + i + ".count", String.valueOf(filled.count()))
                    .box("filled " + name)
                    .close("tr");
        }
        if (all.isEmpty()) {
            html.open("tr")
                    .box("container")
                    .box("share")
                    .box("litres")
                    .box("to fill")
                    .box("filled")
                    .close("tr");
        }
        html.endTable();
    }

    private static boolean bottled(Brew brew, Gyle gyle) {
        return run(brew, gyle).stream()
                .flatMap(run -> run.filled().stream())
                .anyMatch(filled -> filled.plan().container().kind() == ContainerKind.BOTTLE);
    }

    private static List<String> allergens(Brew brew, Gyle gyle) {
        Set<String> found = allergens(gyle);
        run(brew, gyle)
                .ifPresent(run -> run.filled()
                        .forEach(
                                filled -> found.addAll(filled.plan().container().allergens())));
        return new ArrayList<>(found);
    }

    /** Allergens of what goes into a gyle, in the order of the bill. */
    static Set<String> allergens(Gyle gyle) {
        Set<String> found = new LinkedHashSet<>();
        gyle.grist().forEach(line -> found.addAll(line.material().allergens()));
        gyle.yeasts().forEach(line -> found.addAll(line.allergens()));
        gyle.additions().forEach(line -> found.addAll(line.allergens()));
        return found;
    }
}
