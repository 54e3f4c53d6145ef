package costrel.tables;

import costrel.hops.HopUse;
import costrel.recipe.Amount;
import costrel.recipe.Holds;
import costrel.recipe.Recipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The rows of a recipe other than those about the beer, as they come in. */
final class RecipeLines {

    static final String ALPHA = "alpha";

    /** The word for minutes that reach back to the start of the boil. */
    static final String START = "start";

    /** What a cell "time" says: minutes before the end; without them, from the start. */
    private record Time(OptionalDouble minutes) {}

    /** What a cell "lot" of a hop addition says. */
    private record Lot(Optional<String> id, OptionalDouble alpha) {}

    /** What a row of a recipe is about. */
    enum Part {
        BEER("beer"),
        GRIST("grist"),
        HOPS("hops"),
        YEAST("yeast"),
        LIQUOR("liquor"),
        AID("aid"),
        PRIMINGS("primings");

        private final String label;

        Part(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    /** A share of time that rounding may add to minutes equal to the boil. */
    private static final double MINUTE_NOISE = 1e-9;

    /** Shares of a grist may miss the whole by this much, the rounding of what people write. */
    private static final double WHOLE = 1e-6;

    private static final Pattern LOT = Pattern.compile("(?:(.*?)[ \\u00a0]*;[ \\u00a0]*)?" + ALPHA + "[ \\u00a0]+(.*)");

    static final CellKind<Part> PART = CellKind.oneOf(Part.values(), Part::label);

    private static final CellKind<Holds> HOLDS = CellKind.oneOf(Holds.values(), Holds::label);
    private static final CellKind<String> COLOUR = CellKind.oneOf(new String[] {"colour"}, word -> word);
    private static final CellKind<String> GRIST_USE = CellKind.oneOf(new String[] {"mash", "copper"}, word -> word);
    private static final CellKind<String> PRIMINGS_USE =
            CellKind.oneOf(new String[] {Recipe.Into.PRIMINGS.label()}, word -> word);
    private static final CellKind<Time> TIME =
            CellKind.of("minutes before cast such as 90 min, or " + START, RecipeLines::time);
    private static final CellKind<Lot> LOT_OR_ALPHA =
            new CellKind<>("a lot number, or alpha acid such as " + ALPHA + " 5.5 %", RecipeLines::lot, true);
    private static final CellKind<HopUse> HOP_USE = CellKind.oneOf(
            new HopUse[] {
                new HopUse.Mash(),
                new HopUse.FirstWort(),
                new HopUse.Copper(0),
                new HopUse.HotStand(Double.POSITIVE_INFINITY),
                new HopUse.Hopback(),
                new HopUse.DryHopTank(),
                new HopUse.DryHopCask()
            },
            HopUse::label);
    private static final CellKind<Recipe.Into> LIQUOR_USE = CellKind.oneOf(
            new Recipe.Into[] {
                Recipe.Into.MASH_LIQUOR, Recipe.Into.SPARGE_LIQUOR, Recipe.Into.ALL_LIQUOR, Recipe.Into.LIQUORING_BACK
            },
            Recipe.Into::label);
    private static final CellKind<Recipe.Into> AID_USE = CellKind.oneOf(
            new Recipe.Into[] {Recipe.Into.COPPER, Recipe.Into.FV, Recipe.Into.TANK, Recipe.Into.CASK},
            Recipe.Into::label);

    private final List<Recipe.Grist> grist = new ArrayList<>();
    private final List<Recipe.Hop> hops = new ArrayList<>();
    private final List<Recipe.Yeast> yeasts = new ArrayList<>();
    private final List<Recipe.Addition> additions = new ArrayList<>();

    /** Hop rows that wait for the length of the boil. */
    private final List<Consumer<OptionalDouble>> waiting = new ArrayList<>();

    /** The rows of the grist with what each says how much; empty where it could not be read. */
    private final List<GristRow> gristRows = new ArrayList<>();

    private record GristRow(CsvRow row, Optional<Amount> amount) {}

    /** Takes a row in, of any part but the beer itself. */
    void take(CsvRow row, Part part) {
        Optional<String> item = row.need("item", CellKind.TEXT);
        Optional<Amount> amount = row.need("amount", AmountText.ANY);
        switch (part) {
            case BEER -> throw new IllegalArgumentException("part: expected another part of a recipe, found 'beer'");
            case GRIST -> grist(row, item, amount);
            case HOPS -> hops(row, item, amount);
            case YEAST -> {
                RecipeReader.nothingIn(row, "use", "time", "holds", "lot");
                row.build("amount", () -> new Recipe.Yeast(item.orElseThrow(), amount.orElseThrow()))
                        .ifPresent(yeasts::add);
            }
            case LIQUOR -> addition(row, item, amount, row.need("use", LIQUOR_USE));
            case AID -> addition(row, item, amount, row.need("use", AID_USE));
            case PRIMINGS -> {
                row.may("use", PRIMINGS_USE);
                addition(row, item, amount, Optional.of(Recipe.Into.PRIMINGS));
            }
        }
    }

    /** Reads the hop rows, now that the length of the boil is known. */
    void finish(OptionalDouble boilMinutes) {
        waiting.forEach(row -> row.accept(boilMinutes));
        waiting.clear();
        refusePartOfAGrist();
    }

    /** Refuses masses and shares in one grist, and shares that are not a whole one; nothing where a row can't be read. */
    private void refusePartOfAGrist() {
        double sum = 0;
        for (GristRow line : gristRows) {
            if (line.amount().isEmpty()) {
                return;
            }
            Amount amount = line.amount().get();
            boolean share = amount instanceof Amount.OfGrist;
            if (share != (gristRows.get(0).amount().orElseThrow() instanceof Amount.OfGrist)) {
                line.row()
                        .problem(
                                "amount",
                                TableProblem.quoted(line.row().cell("amount")),
                                "all grist materials by mass or all as shares of the grist");
                return;
            }
            sum += amount instanceof Amount.OfGrist of ? of.share() : 0;
        }
        if (!gristRows.isEmpty() && sum != 0 && !(Math.abs(sum - 1) <= WHOLE)) {
            CsvRow last = gristRows.get(gristRows.size() - 1).row();
            last.problem("amount", Math.round(sum * 1e6) / 1e4 + " %", "shares of the grist that add up to 100 %");
        }
    }

    List<Recipe.Grist> grist() {
        return grist;
    }

    List<Recipe.Hop> hops() {
        return hops;
    }

    List<Recipe.Yeast> yeasts() {
        return yeasts;
    }

    List<Recipe.Addition> additions() {
        return additions;
    }

    private void grist(CsvRow row, Optional<String> item, Optional<Amount> amount) {
        Optional<String> use = row.may("use", GRIST_USE);
        Optional<Time> time = row.may("time", TIME);
        boolean forColour = row.may("holds", COLOUR).isPresent();
        gristRows.add(new GristRow(row, amount));
        RecipeReader.nothingIn(row, "lot");
        if (use.isPresent() && use.get().equals("mash") && time.isPresent()) {
            row.problem("time", TableProblem.quoted(row.cell("time")), "nothing for what is mashed");
        }
        OptionalDouble minutes = time.map(Time::minutes).orElse(OptionalDouble.empty());
        row.build("amount", () -> new Recipe.Grist(item.orElseThrow(), amount.orElseThrow(), minutes, forColour))
                .ifPresent(grist::add);
    }

    private void hops(CsvRow row, Optional<String> item, Optional<Amount> amount) {
        Optional<HopUse> use = row.need("use", HOP_USE);
        Optional<Time> time = row.may("time", TIME);
        Optional<Holds> holds = row.may("holds", HOLDS);
        Lot lot = row.may("lot", LOT_OR_ALPHA).orElse(new Lot(Optional.empty(), OptionalDouble.empty()));
        boolean dry = use.isPresent() && use.get().isDryHop();
        if (dry && amount.isPresent() && amount.get() instanceof Amount.OfBitterness) {
            row.problem("amount", TableProblem.quoted(row.cell("amount")), "a mass, a rate or hop oil for dry hops");
        }
        use.ifPresent(where -> waiting.add(boil -> timed(row, where, time, boil)
                .flatMap(when -> row.build(
                        "amount",
                        () -> new Recipe.Hop(
                                item.orElseThrow(),
                                lot.id(),
                                lot.alpha(),
                                when,
                                amount.orElseThrow(),
                                holds.orElseGet(() -> Recipe.Hop.defaultFor(when)))))
                .ifPresent(hops::add)));
    }

    /** The use with its minutes; the boil decides how early copper hops can be. */
    private static Optional<HopUse> timed(CsvRow row, HopUse use, Optional<Time> time, OptionalDouble boil) {
        if (!(use instanceof HopUse.Copper) && !(use instanceof HopUse.HotStand)) {
            RecipeReader.nothingIn(row, "time");
            return Optional.of(use);
        }
        if (use instanceof HopUse.Copper && row.cell("time").isEmpty()) {
            row.problem("time", "nothing", TIME.expected());
        }
        if (time.isEmpty()) {
            return row.sound() ? Optional.of(use) : Optional.empty();
        }
        if (use instanceof HopUse.HotStand) {
            return row.build(
                    "time", () -> new HopUse.HotStand(time.get().minutes().orElse(Double.POSITIVE_INFINITY)));
        }
        if (boil.isEmpty()) {
            return Optional.empty();
        }
        double minutes = time.get().minutes().orElse(boil.getAsDouble());
        if (minutes > boil.getAsDouble() + MINUTE_NOISE) {
            row.problem(
                    "time",
                    TableProblem.quoted(row.cell("time")),
                    "at most the boil of " + CsvOut.number(boil.getAsDouble()) + " min");
            return Optional.empty();
        }
        return row.build("time", () -> new HopUse.Copper(minutes));
    }

    private void addition(CsvRow row, Optional<String> item, Optional<Amount> amount, Optional<Recipe.Into> into) {
        RecipeReader.nothingIn(row, "time", "holds", "lot");
        row.build("amount", () -> new Recipe.Addition(item.orElseThrow(), into.orElseThrow(), amount.orElseThrow()))
                .ifPresent(additions::add);
    }

    private static Time time(String text) {
        return text.equalsIgnoreCase(START)
                ? new Time(OptionalDouble.empty())
                : new Time(OptionalDouble.of(Cells.MINUTES.read(text)));
    }

    /** The lot number in a cell "lot", where it has one beside or instead of alpha acid. */
    static Optional<String> lotNumber(String cell) {
        Matcher matcher = LOT.matcher(cell);
        String number = matcher.matches() ? matcher.group(1) : cell;
        return number == null || number.isEmpty() ? Optional.empty() : Optional.of(number);
    }

    private static Lot lot(String text) {
        Matcher matcher = LOT.matcher(text);
        OptionalDouble alpha =
                matcher.matches() ? OptionalDouble.of(Cells.PART.read(matcher.group(2))) : OptionalDouble.empty();
        return new Lot(lotNumber(text).map(CellKind.TEXT.parser()), alpha);
    }
}
