package costrel.measure;

import static java.util.Map.entry;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * The closed table of units: symbols, other spellings, and codes of UN/ECE Recommendation 20. Filled once, then only
 * read.
 */
final class UnitTable {

    private static final int SHORTEST_WORD = 3;

    /** What looks like a unit and is refused, each with why. */
    private static final Map<String, String> REFUSED = Map.ofEntries(
            entry("BLL", "BLL is the petroleum barrel of 42 US gal, not a beer barrel; write brl or US bbl"),
            entry("BLD", "BLD is a US dry barrel, not a beer barrel; write brl or US bbl"),
            entry("J57", "J57 is the UK petroleum barrel, not a beer barrel; write brl"),
            entry("QTR", "QTR is the quarter of 28 lb, not the malt quarter of 336 lb; write lb or qr"),
            entry("bbl", "bbl may be a UK, a US or a petroleum barrel; write brl or US bbl"),
            entry("bbls", "bbls may be UK, US or petroleum barrels; write brl or US bbl"),
            entry("ton", "a ton may be long, short or metric; write t, cwt or lb"),
            entry("tons", "a ton may be long, short or metric; write t, cwt or lb"),
            entry("c", "write °C or degC"),
            entry("f", "write °F or degF"),
            entry("ºc", "write °C or degC"),
            entry("ºf", "write °F or degF"));

    private static final Map<Unit<?>, KnownUnit<?>> BY_UNIT;

    /** The units of {@link Units} themselves: to tell equal ones by their definitions takes far longer. */
    private static final Instances BY_INSTANCE;

    private static final Map<String, KnownUnit<?>> BY_SPELLING;
    private static final Map<String, KnownUnit<?>> BY_CODE;
    private static final Map<String, KnownUnit<?>> BY_WORD;

    static {
        Filling filling = new Filling();
        filling.masses();
        filling.volumes();
        filling.timesAndTemperatures();
        filling.rates();
        BY_UNIT = Map.copyOf(filling.byUnit);
        BY_INSTANCE = new Instances(filling.byUnit);
        BY_SPELLING = Collections.unmodifiableMap(filling.bySpelling);
        BY_CODE = Map.copyOf(filling.byCode);
        BY_WORD = Map.copyOf(filling.byWord);
    }

    private UnitTable() {}

    /** Units looked up by being the same object, filled once. */
    private static final class Instances {
        private final IdentityHashMap<Unit<?>, KnownUnit<?>> known = new IdentityHashMap<>();

        Instances(Map<Unit<?>, KnownUnit<?>> units) {
            units.forEach(known::put);
        }

        @Nullable
        KnownUnit<?> get(Unit<?> unit) {
            return known.get(unit);
        }
    }

    /** All units, each once. */
    static Collection<KnownUnit<?>> all() {
        return BY_UNIT.values();
    }

    /** The unit of the table that equals this one. */
    @SuppressWarnings("unchecked") // A known unit of Unit<Q> is only ever made for Q.
    static <Q extends Quantity<Q>> @Nullable KnownUnit<Q> find(Unit<Q> unit) {
        KnownUnit<?> known = BY_INSTANCE.get(unit);
        return (KnownUnit<Q>) (known == null ? BY_UNIT.get(unit) : known);
    }

    /** The unit of the table that equals this one, whatever its kind. */
    static KnownUnit<?> require(Unit<?> unit) {
        KnownUnit<?> known = BY_UNIT.get(unit);
        if (known == null) {
            throw new IllegalArgumentException("unit: expected one with a symbol, such as kg, found " + unit);
        }
        return known;
    }

    /** The code of UN/ECE Recommendation 20. */
    static Optional<String> code(Unit<?> unit) {
        KnownUnit<?> known = BY_UNIT.get(unit);
        return known == null || known.code().isEmpty() ? Optional.empty() : Optional.of(known.code());
    }

    /** What a unit of the table is printed as; one from outside, as it prints itself. */
    static String symbol(Unit<?> unit) {
        KnownUnit<?> known = BY_UNIT.get(unit);
        return known == null ? unit.toString() : known.symbol();
    }

    /** The unit that is spelt like this, or has this code. */
    static @Nullable KnownUnit<?> find(String spelling) {
        KnownUnit<?> known = BY_SPELLING.get(spelling);
        if (known == null) {
            known = BY_CODE.get(spelling);
        }
        if (known == null && isWord(spelling)) {
            known = BY_WORD.get(spelling.toLowerCase(Locale.ROOT));
        }
        return known;
    }

    /** Why a spelling that looks like a unit is refused, if it is one of these. */
    static Optional<String> refusal(String spelling) {
        String why = REFUSED.get(spelling);
        return Optional.ofNullable(why != null ? why : REFUSED.get(spelling.toLowerCase(Locale.ROOT)));
    }

    /** The spelling nearest to an unknown one, among those of a kind or, without a kind, among all. */
    static Optional<String> nearest(String unknown, @Nullable Kind<?> kind) {
        String wanted = unknown.toLowerCase(Locale.ROOT);
        String nearest = null;
        int least = 3 * Math.max(1, wanted.length() / 3);
        for (Map.Entry<String, KnownUnit<?>> candidate : BY_SPELLING.entrySet()) {
            if (kind != null && !candidate.getValue().kind().equals(kind)) {
                continue;
            }
            String spelling = candidate.getKey();
            String folded = spelling.toLowerCase(Locale.ROOT);
            // Another first letter counts for more than any other slip.
            int difference = 3 * distance(folded, wanted) + (folded.charAt(0) == wanted.charAt(0) ? 0 : 1);
            if (difference < least || (nearest == null && difference == least)) {
                least = difference;
                nearest = spelling;
            }
        }
        return Optional.ofNullable(nearest);
    }

    private static boolean isWord(String spelling) {
        return spelling.length() >= SHORTEST_WORD
                && spelling.chars().allMatch(c -> (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'));
    }

    private static int distance(String a, String b) {
        int[] previous = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            previous[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] current = new int[b.length() + 1];
            current[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                current[j] = Math.min(change, Math.min(previous[j], current[j - 1]) + 1);
            }
            previous = current;
        }
        return previous[b.length()];
    }

    /** The table while it is being filled. */
    private static final class Filling {

        private final Map<Unit<?>, KnownUnit<?>> byUnit = new HashMap<>();
        private final Map<String, KnownUnit<?>> bySpelling = new LinkedHashMap<>();
        private final Map<String, KnownUnit<?>> byCode = new HashMap<>();
        private final Map<String, KnownUnit<?>> byWord = new HashMap<>();

        void masses() {
            add(Kind.MASS, Units.KILOGRAM, "kg", "KGM", "kilogram", "kilograms");
            add(Kind.MASS, Units.GRAM, "g", "GRM", "gram", "grams");
            add(Kind.MASS, Units.MILLIGRAM, "mg", "MGM", "milligram", "milligrams");
            add(Kind.MASS, Units.TONNE, "t", "TNE", "tonne", "tonnes");
            add(Kind.MASS, Units.POUND, "lb", "LBR", "lbs", "pound", "pounds");
            add(Kind.MASS, Units.OUNCE, "oz", "ONZ", "ounce", "ounces");
            add(Kind.MASS, Units.STONE, "st", "STI", "stone", "stones");
            add(Kind.MASS, Units.HUNDREDWEIGHT, "cwt", "CWI", "hundredweight", "hundredweights");
            add(Kind.MASS, Units.QUARTER, "qr", "", "quarter", "quarters");
        }

        void volumes() {
            add(Kind.VOLUME, Units.LITRE, "L", "LTR", "litre", "litres");
            add(Kind.VOLUME, Units.MILLILITRE, "mL", "MLT", "millilitre", "millilitres");
            add(Kind.VOLUME, Units.HECTOLITRE, "hL", "HLT", "hectolitre", "hectolitres");
            add(Kind.VOLUME, Units.CUBIC_METRE, "m³", "MTQ", "m3");
            add(Kind.VOLUME, Units.IMPERIAL_FLUID_OUNCE, "fl oz", "OZI");
            add(Kind.VOLUME, Units.IMPERIAL_PINT, "pt", "PTI", "pint", "pints");
            add(Kind.VOLUME, Units.IMPERIAL_QUART, "qt", "QTI", "quart", "quarts");
            add(Kind.VOLUME, Units.IMPERIAL_GALLON, "gal", "GLI", "gallon", "gallons");
            addCask(Units.PIN, "pin", "pins");
            addCask(Units.FIRKIN, "firkin", "firkins");
            addCask(Units.KILDERKIN, "kilderkin", "kilderkins", "kil");
            add(Kind.VOLUME, Units.UK_BARREL, "brl", "", "barrel", "barrels");
            addCask(Units.HOGSHEAD, "hogshead", "hogsheads", "hhd");
            add(Kind.VOLUME, Units.US_GALLON, "US gal", "GLL", "US gallon", "US gallons");
            add(Kind.VOLUME, Units.US_BEER_BARREL, "US bbl", "", "US brl", "US barrel", "US barrels");
        }

        void timesAndTemperatures() {
            add(Kind.TIME, Units.MINUTE, "min", "MIN", "mins", "minute", "minutes");
            add(Kind.TIME, Units.SECOND, "s", "SEC", "sec", "second", "seconds");
            add(Kind.TIME, Units.HOUR, "h", "HUR", "hr", "hrs", "hour", "hours");
            add(Kind.TIME, Units.DAY, "d", "DAY", "day", "days");
            add(Kind.TEMPERATURE, Units.CELSIUS, "°C", "CEL", "degC");
            add(Kind.TEMPERATURE, Units.FAHRENHEIT, "°F", "FAH", "degF");
        }

        void rates() {
            add(Kind.MASS_CONCENTRATION, Units.GRAM_PER_HECTOLITRE, "g/hL", "");
            add(Kind.MASS_CONCENTRATION, Units.KILOGRAM_PER_HECTOLITRE, "kg/hL", "");
            add(Kind.MASS_CONCENTRATION, Units.MILLIGRAM_PER_LITRE, "mg/L", "M1");
            add(Kind.MASS_CONCENTRATION, Units.GRAM_PER_LITRE, "g/L", "GL");
            add(Kind.MASS_CONCENTRATION, Units.OUNCE_PER_BARREL, "oz/brl", "");
            add(Kind.MASS_CONCENTRATION, Units.POUND_PER_BARREL, "lb/brl", "");
            add(Kind.SPECIFIC_VOLUME, Units.LITRE_PER_KILOGRAM, "L/kg", "", "hL/100 kg", "hL/100kg");
            add(Kind.SPECIFIC_VOLUME, Units.MILLILITRE_PER_100_GRAM, "mL/100 g", "", "mL/100g");
            add(Kind.SPECIFIC_VOLUME, Units.BARREL_PER_QUARTER, "brl/qr", "", "brl/quarter");
            add(Kind.VOLUME_RATIO, Units.MILLILITRE_PER_HECTOLITRE, "mL/hL", "");
            add(Kind.VOLUME_RATIO, Units.LITRE_PER_HECTOLITRE, "L/hL", "");
            add(Kind.VOLUME_RATIO, Units.PINT_PER_BARREL, "pt/brl", "");
            add(Kind.EXTRACT_AMOUNT, Units.LITRE_DEGREE, "L°", "", "L deg");
            add(Kind.SPECIFIC_EXTRACT, Units.LITRE_DEGREE_PER_KILOGRAM, "L°/kg", "", "L deg/kg");
            add(Kind.SPECIFIC_EXTRACT, Units.POUND_PER_QUARTER, "lb/qr", "", "lb/quarter");
            add(Kind.FLOW_RATE, Units.LITRE_PER_HOUR, "L/h", "");
            add(Kind.FLOW_RATE, Units.HECTOLITRE_PER_HOUR, "hL/h", "");
            add(Kind.FLOW_RATE, Units.BARREL_PER_HOUR, "brl/h", "");
        }

        private void addCask(Unit<Volume> unit, String name, String plural, String... more) {
            KnownUnit<?> known = KnownUnit.of(unit, Kind.VOLUME, name, plural, "");
            byUnit.put(unit, known);
            put(known, name);
            put(known, plural);
            for (String spelling : more) {
                put(known, spelling);
            }
        }

        private <Q extends Quantity<Q>> void add(
                Kind<Q> kind, Unit<Q> unit, String symbol, String code, String... more) {
            KnownUnit<Q> known = KnownUnit.of(unit, kind, symbol, symbol, code);
            byUnit.put(unit, known);
            if (!code.isEmpty()) {
                byCode.put(code, known);
            }
            put(known, symbol);
            for (String spelling : more) {
                put(known, spelling);
            }
        }

        private void put(KnownUnit<?> known, String spelling) {
            bySpelling.put(spelling, known);
            if (spelling.indexOf('L') >= 0) {
                bySpelling.put(spelling.replace('L', 'l'), known);
            }
            if (isWord(spelling)) {
                byWord.put(spelling.toLowerCase(Locale.ROOT), known);
            }
        }
    }
}
