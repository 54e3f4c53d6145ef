package costrel.repl;

import costrel.brewery.Brewery;
import java.time.LocalDate;
import java.util.List;

/** Five steps through the whole job, with the names of the brewery that is open. */
final class Tour {

    static final int STEPS = 5;

    /**
     * A step.
     *
     * @param title what it is about
     * @param lines what to type
     * @param look what to look at
     */
    record Step(String title, List<String> lines, String look) {}

    private Tour() {}

    /**
     * A step by its number as typed.
     *
     * @throws IllegalArgumentException if there is no such step
     */
    static int number(String typed) {
        String step = typed.strip();
        if (!step.matches("[1-5]")) {
            throw new IllegalArgumentException("tour: expected a step from 1 to " + STEPS + ", found '" + typed + "'");
        }
        return Integer.parseInt(step);
    }

    /**
     * A step as it is printed.
     *
     * @throws IllegalArgumentException if the brewery has no beer to show it on
     */
    static String step(int number, Brewery brewery, LocalDate day) {
        Step step = of(brewery, day).get(number - 1);
        StringBuilder text = new StringBuilder();
        text.append("Step ").append(number).append(" of ").append(STEPS).append(": ");
        text.append(step.title()).append("\ntype\n");
        step.lines().forEach(line -> text.append("  ").append(line).append('\n'));
        text.append("look at\n  ").append(step.look().replace("\n", "\n  ")).append('\n');
        return text.append(number < STEPS ? "tour goes on." : "That was the tour. help lists the words.")
                .toString();
    }

    /** The five steps. */
    static List<Step> of(Brewery brewery, LocalDate day) {
        if (brewery.recipes().isEmpty()) {
            throw new IllegalArgumentException(
                    "tour: expected a beer in the folder's recipes, found none; samples/lanternfold has six");
        }
        Own own = Own.of(brewery, day);
        boolean hops = brewery.catalogue().hopLots().values().stream()
                .anyMatch(lot -> !lot.analyses().get(0).date().isAfter(day));
        return List.of(
                new Step(
                        "what is in the folder",
                        List.of("beers", "plants", "lots"),
                        "the beers with their home plant, the vessels, the hops and their alpha acid on the day.\n"
                                + "The day is " + day + "; day(\"" + day.plusMonths(1) + "\") would set another."),
                new Step(
                        "a beer on a plant at a brew length",
                        List.of(own.in("b = brew(\"{beer}\").on(\"{plant}\").length(\"{length}\")"), "b"),
                        "the OG and the EBU, which stay those of the beer, and the weights, which don't.\n"
                                + "After brew(\" the Tab key offers the beers, after .on(\" the plants."),
                new Step(
                        "the hops",
                        List.of(own.in(hops ? "b.lot(\"{variety}\", \"{lot}\").gyle()" : "b.sameHops().gyle()")),
                        "the bittering hops: their weight goes by the alpha acid of the lot. Late and dry hops\n"
                                + "keep their dose. What doesn't fit a vessel stands there as a finding."),
                new Step(
                        "what it costs",
                        List.of("b.cost()"),
                        "the pence per pint, the duty, and that the lines add up to the total.\n"
                                + "explain(b.cost()) shows where a figure comes from."),
                new Step(
                        "what to charge",
                        List.of("b.pricing().margin(\"35 %\")"),
                        "the price of each container at a margin of 35 %, without VAT and with it.\n"
                                + "undo takes b back, save(\"monday.jsh\") keeps these lines as a script."));
    }
}
