package costrel.repl;

import costrel.report.Sheet;
import costrel.report.TextForm;
import java.lang.reflect.Array;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Turns results into the text that is printed. Kinds of result that have a form of their own are given at the start. */
final class Rendering {

    private static final MathContext DIGITS = new MathContext(12);
    private static final int LONGEST_PLAIN_SCALE = 50;
    private static final int MOST_ON_A_LINE = 8;
    private static final int FIRST_OF_MANY = 3;

    private static final Map<String, String> AS_WRITTEN = Map.ofEntries(
            Map.entry("celsius", "°C"),
            Map.entry("ebc", "EBC"),
            Map.entry("ebu", "EBU"),
            Map.entry("fg", "FG"),
            Map.entry("fv", "FV"),
            Map.entry("hl", "hL"),
            Map.entry("hwe", "HWE"),
            Map.entry("k", "K"),
            Map.entry("l", "L"),
            Map.entry("lpa", "LPA"),
            Map.entry("ml", "mL"),
            Map.entry("og", "OG"),
            Map.entry("vat", "VAT"));

    private final List<Kind<?>> kinds;
    private final Form form;
    private final IntSupplier width;

    /**
     * A kind of result with a form of its own, such as a sheet.
     *
     * @param <T> its type
     * @param type its type
     * @param text how it is printed in lines of a width
     * @param sheet how it is set out for programs
     * @param needsAPerson whether it holds findings that a person must decide on
     */
    record Kind<T>(
            Class<T> type, BiFunction<T, Integer, String> text, Function<T, Sheet> sheet, Predicate<T> needsAPerson) {

        Kind(Class<T> type, Function<T, String> text, Predicate<T> needsAPerson) {
            this(type, (value, width) -> text.apply(value), value -> AnswerSheet.of(text.apply(value)), needsAPerson);
        }

        /** A kind that prints as its sheet, folded at a width. */
        static <T> Kind<T> sheet(Class<T> type, Function<T, Sheet> sheet, Predicate<T> needsAPerson) {
            return new Kind<>(type, (value, width) -> TextForm.of(sheet.apply(value), width), sheet, needsAPerson);
        }

        private Sheet sheetOf(Object value) {
            return sheet.apply(type.cast(value));
        }

        private String textOf(Object value, int width) {
            return text.apply(type.cast(value), width);
        }

        private boolean personFor(Object value) {
            return needsAPerson.test(type.cast(value));
        }
    }

    /**
     * Gives some kinds of result a form of their own; of several that fit, the first is taken.
     *
     * @param kinds the kinds
     */
    Rendering(List<Kind<?>> kinds) {
        this(kinds, Form.TEXT, () -> Integer.MAX_VALUE);
    }

    private Rendering(List<Kind<?>> kinds, Form form, IntSupplier width) {
        this.kinds = List.copyOf(kinds);
        this.form = form;
        this.width = width;
    }

    /** The same kinds of result in another form. */
    Rendering in(Form other) {
        return new Rendering(kinds, other, width);
    }

    /** The same kinds of result in lines of a width, asked for at each answer. */
    Rendering within(IntSupplier characters) {
        return new Rendering(kinds, form, characters);
    }

    /** A result set out for programs: its own sheet where it has one, else its values. */
    Sheet sheet(@Nullable Object value) {
        if (value instanceof Optional<?> optional && optional.isPresent()) {
            return sheet(optional.get());
        }
        if (value instanceof Collection<?> many) {
            return AnswerSheet.of(many, this::inline);
        }
        if (value != null && value.getClass().isArray()) {
            return AnswerSheet.of(elements(value), this::inline);
        }
        return value == null
                ? AnswerSheet.of(single(value))
                : kindOf(value)
                        .map(kind -> kind.sheetOf(value))
                        .orElseGet(() -> AnswerSheet.of(clean(block(value)).stripTrailing()));
    }

    /**
     * The text of a result: a form of its own where it has one; of many things, one a line; of a thing with named parts,
     * one part a line.
     */
    String text(@Nullable Object value) {
        return form != Form.TEXT ? form.of(sheet(value)) : clean(block(value)).stripTrailing();
    }

    /** Whether a result, or one of the things in it, holds findings that a person must decide on. */
    boolean needsAPerson(@Nullable Object value) {
        if (value instanceof Collection<?> many) {
            return many.stream().anyMatch(this::needsAPerson);
        }
        return value != null && kindOf(value).map(kind -> kind.personFor(value)).orElse(false);
    }

    /**
     * A text without the signs that a terminal would obey instead of showing, since a cell of a table may hold them.
     * Each is replaced by one sign that stands for something unreadable.
     */
    static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.replace("\r\n", "\n").codePoints().forEach(c -> clean.appendCodePoint(shows(c) ? c : 0xFFFD));
        return clean.toString();
    }

    private static boolean shows(int c) {
        boolean turnsDirection = (c >= 0x202A && c <= 0x202E)
                || (c >= 0x2066 && c <= 0x2069)
                || c == 0x200E
                || c == 0x200F
                || c == 0x061C;
        return c == '\n' || c == '\t' || !(Character.isISOControl(c) || turnsDirection || (c >= 0xD800 && c <= 0xDFFF));
    }

    private String block(@Nullable Object value) {
        if (value instanceof Collection<?> many) {
            return lines(many);
        }
        if (value instanceof Map<?, ?> map) {
            return map.isEmpty()
                    ? "none"
                    : map.entrySet().stream()
                            .map(entry -> inline(entry.getKey()) + ": " + inline(entry.getValue()))
                            .collect(Collectors.joining("\n"));
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(this::block).orElse("none");
        }
        if (value != null && value.getClass().isArray()) {
            return lines(elements(value));
        }
        if (value instanceof Record thing && kindOf(thing).isEmpty()) {
            Optional<List<String>> parts = parts(thing);
            return parts.isPresent() ? String.join("\n", parts.get()) : thing.toString();
        }
        return single(value);
    }

    private String lines(Collection<?> many) {
        return many.isEmpty() ? "none" : many.stream().map(this::element).collect(Collectors.joining("\n"));
    }

    /** One of many things: a form of its own may take several lines, anything else takes one. */
    private String element(@Nullable Object value) {
        return value != null && kindOf(value).isPresent() ? single(value) : inline(value);
    }

    private String inline(@Nullable Object value) {
        if (value instanceof Collection<?> many) {
            return some(many.stream().map(this::inline), many.size());
        }
        if (value instanceof Map<?, ?> map) {
            return some(
                    map.entrySet().stream().map(entry -> inline(entry.getKey()) + ": " + inline(entry.getValue())),
                    map.size());
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(this::inline).orElse("none");
        }
        if (value != null && value.getClass().isArray()) {
            return inline(elements(value));
        }
        if (value instanceof Record thing && kindOf(thing).isEmpty()) {
            Optional<List<String>> parts = parts(thing);
            return parts.isPresent() ? String.join(", ", parts.get()) : thing.toString();
        }
        return single(value);
    }

    /** Things on one line: all of a few, the first of many and how many there are. */
    private static String some(Stream<String> things, int count) {
        return count <= MOST_ON_A_LINE
                ? things.collect(Collectors.joining(", ", "(", ")"))
                : things.limit(FIRST_OF_MANY).collect(Collectors.joining(", ", "(", ", … " + count + " in all)"));
    }

    private String single(@Nullable Object value) {
        if (value == null) {
            return "nothing";
        }
        Optional<Kind<?>> kind = kindOf(value);
        if (kind.isPresent()) {
            return kind.get().textOf(value, width.getAsInt());
        }
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? single(number.getAsDouble()) : "none";
        }
        if (value instanceof OptionalInt number) {
            return number.isPresent() ? single(number.getAsInt()) : "none";
        }
        if (value instanceof Enum<?> choice && choice.toString().equals(choice.name())) {
            return choice.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Double number) {
            return Double.isFinite(number) ? number(new BigDecimal(number).round(DIGITS)) : unbounded(number);
        }
        if (value instanceof Float number) {
            return Float.isFinite(number) ? number(new BigDecimal(number.toString())) : unbounded(number);
        }
        if (value instanceof BigDecimal exact) {
            return Math.abs(exact.scale()) > LONGEST_PLAIN_SCALE ? exact.toString() : exact.toPlainString();
        }
        return plain(value);
    }

    private static String number(BigDecimal value) {
        BigDecimal bare = value.stripTrailingZeros();
        int magnitude = bare.precision() - bare.scale();
        return magnitude > 15 || magnitude < -5 ? bare.toString() : bare.toPlainString();
    }

    private static String unbounded(Number number) {
        return Double.isNaN(number.doubleValue())
                ? "not a number"
                : number.doubleValue() > 0 ? "boundless" : "-boundless";
    }

    private Optional<List<String>> parts(Record thing) {
        List<String> parts = new ArrayList<>();
        for (RecordComponent component : thing.getClass().getRecordComponents()) {
            try {
                component.getAccessor().trySetAccessible();
                parts.add(words(component.getName()) + ": "
                        + inline(component.getAccessor().invoke(thing)));
            } catch (ReflectiveOperationException e) {
                return Optional.empty();
            }
        }
        return Optional.of(parts);
    }

    /** A name such as {@code greatestGristKg} as words, units and the trade's own letters as they are written. */
    private static String words(String name) {
        return Stream.of(name.split("(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])"))
                .map(word -> word.toLowerCase(Locale.ROOT))
                .map(word -> AS_WRITTEN.getOrDefault(word, word))
                .collect(Collectors.joining(" "));
    }

    /** A thing that has no text of its own shows what it is, such as a price list. */
    private static String plain(Object value) {
        String text = String.valueOf(value.toString());
        return text.startsWith(value.getClass().getName() + "@")
                ? words(value.getClass().getSimpleName())
                : text;
    }

    private Optional<Kind<?>> kindOf(Object value) {
        return kinds.stream().filter(kind -> kind.type().isInstance(value)).findFirst();
    }

    private static List<@Nullable Object> elements(Object array) {
        List<@Nullable Object> elements = new ArrayList<>();
        for (int i = 0; i < Array.getLength(array); i++) {
            elements.add(Array.get(array, i));
        }
        return elements;
    }
}
