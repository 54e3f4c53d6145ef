package costrel.brewery;

import costrel.tables.CsvIn;
import costrel.tables.CsvOut;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Writes the same figures in other units: every cell of a brewery's folder that holds an amount may come out in any unit of its
 * kind. Factors are whole fractions written down afresh: Weights and Measures Act 1985 Sch. 1 (pound 0.45359237 kg, gallon
 * 4.54609 L), 27 CFR 25.11 (US gallon of 231 cubic inches, beer barrel of 31), Hough et al., Malting and Brewing Science,
 * appendix on units (barrel of 36 gallons, malt quarter of 336 lb, barrel of water of 360 lb), and the degree Fahrenheit.
 */
final class OtherUnits {
    private static final BigDecimal POUND_KG = new BigDecimal("0.45359237");
    private static final BigDecimal GALLON_L = new BigDecimal("4.54609");
    private static final BigDecimal BARREL_L = GALLON_L.multiply(BigDecimal.valueOf(36));
    private static final BigDecimal QUARTER_KG = POUND_KG.multiply(BigDecimal.valueOf(336));
    private static final BigDecimal US_GALLON_L =
            new BigDecimal("2.54").pow(3).multiply(BigDecimal.valueOf(231)).movePointLeft(3);

    private static final MathContext DIGITS = new MathContext(16);

    /** Units of one kind in one row: each with how much of the first it is, as a fraction. */
    private static final List<Map<String, Fraction>> KINDS = List.of(
            Map.of(
                    "kg", of("1"),
                    "g", of("0.001"),
                    "mg", of("0.000001"),
                    "t", of("1000"),
                    "lb", of(POUND_KG),
                    "oz", over(POUND_KG, "16"),
                    "st", times(POUND_KG, "14"),
                    "cwt", times(POUND_KG, "112"),
                    "qr", of(QUARTER_KG)),
            Map.of(
                    "L", of("1"),
                    "mL", of("0.001"),
                    "hL", of("100"),
                    "m³", of("1000"),
                    "gal", of(GALLON_L),
                    "pt", over(GALLON_L, "8"),
                    "firkin", times(GALLON_L, "9"),
                    "brl", of(BARREL_L),
                    "US gal", of(US_GALLON_L),
                    "US bbl", times(US_GALLON_L, "31")),
            Map.of("s", of("1"), "min", of("60"), "h", of("3600"), "d", of("86400")),
            Map.of(
                    "g/hL", of("1"),
                    "kg/hL", of("1000"),
                    "mg/L", of("0.1"),
                    "g/L", of("100"),
                    "oz/brl", fraction(POUND_KG.multiply(new BigDecimal("6250")), BARREL_L),
                    "lb/brl", fraction(POUND_KG.multiply(new BigDecimal("100000")), BARREL_L)),
            Map.of("L/kg", of("1"), "brl/qr", fraction(BARREL_L, QUARTER_KG)),
            Map.of("mL/hL", of("1"), "L/hL", of("1000"), "pt/brl", fraction(new BigDecimal("100000"), dec("288"))),
            Map.of(
                    "L°/kg",
                    of("1"),
                    "lb/qr",
                    fraction(BARREL_L.multiply(dec("1000")), QUARTER_KG.multiply(dec("360")))),
            Map.of("L/h", of("1"), "hL/h", of("100"), "brl/h", of(BARREL_L)));

    /** What is cut down, rounded up or used to the last kilogram stays exact, in units where it is a finite decimal. */
    private static final Set<String> EXACT_FILES = Set.of("containers.csv", "production.csv", "stock.csv");

    private static final Pattern AMOUNT = Pattern.compile("(\\d+(?:\\.\\d+)?) (.+)");
    private static final Pattern PRICE = Pattern.compile("([£€])(\\d+(?:\\.\\d+)?)/(kg)");
    private static final Pattern GRAVITY = Pattern.compile("1\\.0\\d{2,4}");

    private final Random random;
    private int changed;

    OtherUnits(Random random) {
        this.random = random;
    }

    /** How many cells came out in another unit. */
    int changed() {
        return changed;
    }

    private record Fraction(BigDecimal above, BigDecimal below) {}

    private static BigDecimal dec(String text) {
        return new BigDecimal(text);
    }

    private static Fraction fraction(BigDecimal above, BigDecimal below) {
        return new Fraction(above, below);
    }

    private static Fraction of(String whole) {
        return of(dec(whole));
    }

    private static Fraction of(BigDecimal whole) {
        return new Fraction(whole, BigDecimal.ONE);
    }

    private static Fraction over(BigDecimal whole, String below) {
        return new Fraction(whole, dec(below));
    }

    private static Fraction times(BigDecimal whole, String by) {
        return of(whole.multiply(dec(by)));
    }

    /** Rewrites every file of a folder. */
    void rewrite(Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(file -> file.toString().endsWith(".csv"))
                    .sorted()
                    .toList();
        }
        for (Path file : files) {
            String name = String.valueOf(file.getFileName());
            CsvOut out = new CsvOut();
            for (List<String> row : CsvIn.rows(withoutRemarks(file))) {
                out.row(row.stream()
                        .map(cell -> cell(
                                cell,
                                row,
                                EXACT_FILES.contains(name) || row.toString().contains("weighed to")))
                        .toArray());
            }
            Files.writeString(file, out.text());
        }
    }

    private static String withoutRemarks(Path file) throws IOException {
        return Files.readAllLines(file).stream()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /** A cell in another unit, or as it is where nothing in it has one. */
    String cell(String cell, List<String> row, boolean exact) {
        boolean difference = row.contains("mash heat allowance");
        String other =
                difference ? cell : written(cell, row.toString().contains("gravity") || row.contains("OG"), exact);
        changed += other.equals(cell) ? 0 : 1;
        return other;
    }

    private String written(String cell, boolean gravity, boolean exact) {
        if (gravity && GRAVITY.matcher(cell).matches()) {
            return gravity(dec(cell));
        }
        Matcher price = PRICE.matcher(cell);
        if (price.matches()) {
            BigDecimal perLb = dec(price.group(2)).multiply(POUND_KG);
            return random.nextBoolean()
                    ? price.group(1) + perLb.stripTrailingZeros().toPlainString() + "/lb"
                    : price.group(1) + dec(price.group(2)).movePointLeft(3).toPlainString() + "/g";
        }
        Matcher amount = AMOUNT.matcher(cell);
        if (!amount.matches()) {
            return cell;
        }
        BigDecimal number = dec(amount.group(1));
        String unit = amount.group(2);
        if (unit.equals("°C")) {
            BigDecimal fahrenheit = number.multiply(dec("1.8")).add(dec("32"));
            return random.nextBoolean() ? cell : fahrenheit.toPlainString() + " °F";
        }
        for (Map<String, Fraction> kind : KINDS) {
            Fraction from = kind.get(unit);
            if (from != null) {
                return converted(number, from, kind, exact);
            }
        }
        return cell;
    }

    private String converted(BigDecimal number, Fraction from, Map<String, Fraction> kind, boolean exact) {
        List<String> units = kind.keySet().stream().sorted().toList();
        while (true) {
            String unit = units.get(random.nextInt(units.size()));
            Fraction to = kind.getOrDefault(unit, from);
            BigDecimal above = number.multiply(from.above()).multiply(to.below());
            BigDecimal below = from.below().multiply(to.above());
            BigDecimal quotient = above.divide(below, DIGITS);
            boolean whole = quotient.multiply(below).compareTo(above) == 0;
            if (whole || !exact) {
                return text(quotient, unit);
            }
        }
    }

    /** With or without a space, and pounds sometimes as pounds and ounces. */
    private String text(BigDecimal number, String unit) {
        if (unit.equals("lb") && number.signum() > 0 && random.nextBoolean()) {
            BigInteger pounds = number.toBigInteger();
            BigDecimal ounces = number.subtract(new BigDecimal(pounds)).multiply(dec("16"));
            return pounds + " lb " + plain(ounces) + " oz";
        }
        return plain(number) + (random.nextBoolean() ? " " : "") + unit;
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    /** As SG, as spoken, in degrees, in brewers' pounds or in °P by the cubic of the American Society of Brewing Chemists. */
    private String gravity(BigDecimal sg) {
        BigDecimal degrees = sg.subtract(BigDecimal.ONE).movePointRight(3);
        return switch (random.nextInt(5)) {
            case 0 -> sg.toPlainString();
            case 1 -> sg.movePointRight(3).toPlainString();
            case 2 -> degrees.toPlainString() + " °";
            case 3 -> degrees.multiply(dec("0.36")).toPlainString() + " lb/brl";
            default -> {
                BigDecimal plato = sg.multiply(dec("135.997"))
                        .subtract(dec("630.272"))
                        .multiply(sg)
                        .add(dec("1111.14"))
                        .multiply(sg)
                        .subtract(dec("616.868"));
                yield plain(plato.round(DIGITS)) + " °P";
            }
        };
    }
}
