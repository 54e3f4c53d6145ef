package costrel.repl;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What stands between the brackets of the words and of what may follow them. */
final class Calls {

    /** What a text between brackets names. */
    enum Kind {
        /** A beer of the brewery. */
        BEER("beer"),
        /** One of its plants. */
        PLANT("plant"),
        /** A volume of cold wort. */
        LENGTH("brew length, such as 30 brl"),
        /** A hop variety with a lot in store. */
        VARIETY("hop variety"),
        /** A hop lot of the variety named before it. */
        LOT("hop lot"),
        /** A container that the brewery fills. */
        CONTAINER("container"),
        /** Something that is bought, or a part of the cost sheet. */
        ITEM("item or part"),
        /** A gyle of the brewing plan. */
        GYLE("gyle"),
        /** What the best harvest plan is. */
        OBJECTIVE("objective"),
        /** A word of the console. */
        WORD("word"),
        /** A date. */
        DAY("day, such as 2026-11-25"),
        /** A share. */
        SHARE("share, such as 35 %"),
        /** A price or a sum. */
        MONEY("money, such as £95.00"),
        /** An amount with its unit. */
        AMOUNT("amount, such as 2 oz/brl"),
        /** A unit. */
        UNIT("unit, such as g/hL"),
        /** A gravity. */
        GRAVITY("present gravity, such as 1.0115"),
        /** Condition. */
        VOLUMES("condition, such as 1.2 volumes"),
        /** Steps of discounts. */
        STEPS("steps, such as 10: 5 %"),
        /** The name of a script. */
        SCRIPT("script, such as monday.jsh"),
        /** A step of the tour. */
        STEP("step, 1 to 5"),
        /** The name of a currency. */
        CURRENCY("currency, such as EUR");

        private final String hint;

        Kind(String hint) {
            this.hint = hint;
        }

        /** What is to be typed, in words. */
        String hint() {
            return hint;
        }
    }

    private static final Map<String, List<Kind>> ALL = Stream.of(
                    call("brew", Kind.BEER),
                    call("on", Kind.PLANT),
                    call("length", Kind.LENGTH),
                    call("lot", Kind.VARIETY, Kind.LOT),
                    call("day", Kind.DAY),
                    call("dutyDay", Kind.DAY),
                    call("recipe", Kind.BEER),
                    call("plant", Kind.PLANT),
                    call("packagingPlan", Kind.BEER),
                    call("margin", Kind.SHARE),
                    call("marginWithoutDuty", Kind.SHARE),
                    call("markUp", Kind.SHARE),
                    call("contributionPerHl", Kind.MONEY),
                    call("contributionPerTankDay", Kind.MONEY),
                    call("at", Kind.CONTAINER, Kind.MONEY),
                    call("pub", Kind.CONTAINER, Kind.MONEY, Kind.SHARE),
                    call("pumpAt", Kind.CONTAINER, Kind.MONEY, Kind.MONEY),
                    call("mostFor", Kind.CONTAINER, Kind.MONEY, Kind.SHARE),
                    call("breakEven", Kind.CONTAINER, Kind.MONEY, Kind.MONEY),
                    call("discounts", Kind.CONTAINER, Kind.MONEY, Kind.STEPS),
                    call("strengths", Kind.SHARE, Kind.SHARE, Kind.SHARE),
                    call("price", Kind.ITEM, Kind.SHARE),
                    call("alpha", Kind.SHARE),
                    call("efficiency", Kind.SHARE),
                    call("loss", Kind.SHARE),
                    call("exchangeRate", Kind.CURRENCY, Kind.SHARE),
                    call("target", Kind.CONTAINER, Kind.MONEY, Kind.SHARE),
                    call("racking.at", Kind.GRAVITY),
                    call("held", Kind.VOLUMES),
                    call("rating", Kind.CONTAINER, Kind.VOLUMES),
                    call("objective", Kind.OBJECTIVE),
                    call("allow", Kind.VARIETY, Kind.VARIETY),
                    call("beer", Kind.BEER),
                    call("gyle", Kind.GYLE),
                    call("substitutes", Kind.VARIETY),
                    call("convert", Kind.AMOUNT, Kind.UNIT),
                    call("help", Kind.WORD),
                    call("tour", Kind.STEP),
                    call("save", Kind.SCRIPT))
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (one, other) -> one, LinkedHashMap::new));

    private Calls() {}

    private static Map.Entry<String, List<Kind>> call(String name, Kind... between) {
        return Map.entry(name, List.of(between));
    }

    /**
     * The name under which a call is known here: one that means something else behind {@code racking(...)} has a name of its
     * own.
     *
     * @param before the input up to the call
     * @param call the call as typed
     */
    static String known(String before, String call) {
        return call.equals("at") && before.lastIndexOf("racking(") > before.lastIndexOf(';') ? "racking.at" : call;
    }

    /** All calls with what stands between their brackets. */
    static Map<String, List<Kind>> all() {
        return ALL;
    }

    /** What stands at a place between the brackets of a call; empty if that isn't known. */
    static Optional<Kind> at(String call, int place) {
        List<Kind> between = ALL.getOrDefault(call, List.of());
        return place < between.size() ? Optional.of(between.get(place)) : Optional.empty();
    }

    /** Whether anything may follow in the brackets behind a place. */
    static boolean goesOn(String call, int place) {
        return place + 1 < ALL.getOrDefault(call, List.of()).size();
    }

    /** A call with what stands between its brackets, such as {@code lot(hop variety, hop lot)}. */
    static String shown(String call) {
        return !ALL.containsKey(call)
                ? call + "(...)"
                : call + "("
                        + ALL.getOrDefault(call, List.of()).stream()
                                .map(kind -> kind.hint().replaceFirst(", such as.*", ""))
                                .collect(Collectors.joining(", "))
                        + ")";
    }
}
