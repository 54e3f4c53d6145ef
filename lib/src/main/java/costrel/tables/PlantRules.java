package costrel.tables;

import costrel.hops.FixedFigures;
import costrel.hops.Kinetic;
import costrel.hops.Tinseth;
import costrel.hops.Utilisation;
import costrel.measure.Share;
import costrel.plant.MashEfficiency;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The two rules of a plant that its rows describe in one of several ways: its mash efficiency and its hop utilisation. */
final class PlantRules {

    private static final String MASH = "mash efficiency";
    private static final String SLOPE = "mash efficiency slope";
    private static final String REFERENCE = "mash efficiency reference gravity";
    private static final String LOWEST = "mash efficiency lowest gravity";
    private static final String HIGHEST = "mash efficiency highest gravity";
    private static final String EXTRACT = "extract efficiency";
    private static final String GYLE = "reference gyle";
    private static final String UTILISATION = "utilisation";
    private static final String RECOVERY = "isomerisation recovery";
    private static final List<String> USES = List.of("first wort", "mash", "hot stand", "hopback");

    /** The properties read here, other than points of copper utilisation. */
    static final List<String> WORDS = List.of(
            MASH,
            SLOPE,
            REFERENCE,
            LOWEST,
            HIGHEST,
            EXTRACT,
            GYLE,
            UTILISATION,
            RECOVERY,
            "utilisation first wort",
            "utilisation mash",
            "utilisation hot stand",
            "utilisation hopback");

    private static final Pattern COPPER_POINT =
            Pattern.compile("utilisation\\s+copper\\s+(\\d{1,3}(?:\\.\\d{1,6})?)\\s*min", Pattern.CASE_INSENSITIVE);

    private static final CellKind<String> CONVENTION =
            CellKind.oneOf(new String[] {"plant", "tinseth", "kinetic"}, word -> word);

    /** Loss of share for each degree of gravity. */
    private static final CellKind<Double> SHARE_A_DEGREE =
            CellKind.of("a share for each degree such as 0.2 %", PlantRules::slope);

    private final Properties of;

    PlantRules(Properties of) {
        this.of = of;
    }

    static boolean isCopperPoint(String property) {
        return COPPER_POINT.matcher(property).matches();
    }

    /** The property by the name under which messages of the hops package speak of it. */
    static String copperPoint(String property) {
        return "utilisation copper " + CsvOut.number(minutes(property)) + " min";
    }

    private static double minutes(String property) {
        Matcher matcher = COPPER_POINT.matcher(property);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(property);
        }
        return Double.parseDouble(matcher.group(1));
    }

    /** Mash efficiency as one figure, as a line over gravity, or by the extract efficiency of a reference gyle. */
    Optional<MashEfficiency> efficiency() {
        OptionalDouble share = of.mayFigure(MASH, Cells.PART);
        OptionalDouble extract = of.mayFigure(EXTRACT, Cells.PART);
        Optional<String> gyle = of.may(GYLE, CellKind.TEXT);
        if (of.has(EXTRACT) || of.has(GYLE)) {
            if (of.has(MASH)) {
                of.problem(
                        MASH,
                        of.shown(MASH),
                        "either mash efficiency, or extract efficiency with its reference gyle, not both");
            }
            if (!of.has(EXTRACT)) {
                of.missing(EXTRACT, Cells.PART.expected());
            }
            if (!of.has(GYLE)) {
                of.missing(GYLE, "the name of a beer brewed on this plant");
            }
            return of.build(() -> new MashEfficiency.OfReference(extract.orElseThrow(), gyle.orElseThrow()));
        }
        if (!of.has(MASH)) {
            of.missing(MASH, Cells.PART.expected());
            return Optional.empty();
        }
        if (!of.has(SLOPE)) {
            for (String without : List.of(REFERENCE, LOWEST, HIGHEST)) {
                if (of.has(without)) {
                    of.problem(without, of.shown(without), "a row '" + SLOPE + "' with it, or nothing");
                }
            }
            return of.build(() -> new MashEfficiency.Constant(share.orElseThrow()));
        }
        OptionalDouble slope = of.mayFigure(SLOPE, SHARE_A_DEGREE);
        OptionalDouble reference = of.needFigure(REFERENCE, Cells.DEGREES);
        OptionalDouble lowest = of.needFigure(LOWEST, Cells.DEGREES);
        OptionalDouble highest = of.needFigure(HIGHEST, Cells.DEGREES);
        return of.build(() -> new MashEfficiency.Linear(
                share.orElseThrow(),
                slope.orElseThrow(),
                reference.orElseThrow(),
                lowest.orElseThrow(),
                highest.orElseThrow()));
    }

    /** The plant's utilisation: its own figures, or a published convention. */
    Optional<Utilisation> utilisation() {
        Map<String, Double> byUse = new HashMap<>();
        List<FixedFigures.Point> copper = new ArrayList<>();
        for (String use : USES) {
            of.mayFigure(UTILISATION + " " + use, Cells.PART).ifPresent(share -> byUse.put(use, share));
        }
        for (String property : of.names()) {
            if (isCopperPoint(property)) {
                of.mayFigure(property, Cells.PART)
                        .ifPresent(share -> of.build(() -> new FixedFigures.Point(minutes(property), share))
                                .ifPresent(copper::add));
            }
        }
        OptionalDouble recovery = of.mayFigure(RECOVERY, Cells.PART);
        Optional<String> convention = of.need(UTILISATION, CONVENTION);
        if (convention.isEmpty()) {
            return Optional.empty();
        }
        return switch (convention.get()) {
            case "tinseth" -> Optional.of(new Tinseth());
            case "kinetic" -> of.build(() -> new Kinetic(recovery));
            default -> fixed(byUse, copper);
        };
    }

    private Optional<Utilisation> fixed(Map<String, Double> byUse, List<FixedFigures.Point> copper) {
        if (copper.isEmpty()) {
            of.problem(
                    UTILISATION,
                    of.shown(UTILISATION) + " without a row such as 'utilisation copper 90 min'",
                    "the plant's own figures with it");
            return Optional.empty();
        }
        return of.build(() -> new FixedFigures(byUse, copper));
    }

    private static double slope(String text) {
        String share = text.replaceAll("[ \\u00a0]*per[ \\u00a0]*(?:°|degree)$", "");
        double slope = Share.parse(share).fraction();
        if (!(Math.abs(slope) < 0.1)) {
            throw new IllegalArgumentException(text);
        }
        return slope;
    }
}
