package costrel.repl;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import jdk.jshell.Diag;

/** Faults that the compiler finds before an input runs, in words that say what would be right. */
final class InputFaults {

    private static final Pattern SYMBOL = Pattern.compile("symbol:\\s+(\\w+)\\s+([^\\s(<]+)");
    private static final Pattern NO_PACKAGE = Pattern.compile("package (\\S+) does not exist");
    private static final Pattern CONVERTED = Pattern.compile("incompatible types: (.+) cannot be converted to (.+)");
    private static final Pattern LOSSY =
            Pattern.compile("incompatible types: possible lossy conversion from (\\S+) to (\\S+)");
    private static final Pattern ONE_FORM = Pattern.compile("required:\\s*(.*)\\n\\s*found:\\s*(.*)\\n");
    private static final Pattern MANY_FORMS = Pattern.compile("no suitable \\w+ found for [^(]*\\((.*)\\)");
    private static final Pattern FORM =
            Pattern.compile("(?:method|constructor) [^(\\n]*\\(([^\\n]*)\\) is not applicable");
    private static final Pattern OPERANDS =
            Pattern.compile("operator '(.+?)'\\n\\s*first type:\\s*(.+)\\n\\s*second type:\\s*(.+)");
    private static final Pattern UNARY = Pattern.compile("bad operand type (.+) for unary operator '(.+)'");
    private static final Pattern COMPARED = Pattern.compile("incomparable types: (.+) and (.+)");
    private static final Pattern DEREFERENCED = Pattern.compile("(.+) cannot be dereferenced");
    private static final Pattern TYPE = Pattern.compile("(?:[\\p{L}_$][\\w$]*\\.)*([\\p{L}_$][\\w$]*)(\\[\\])*");
    private static final Pattern WORD_AT_END = Pattern.compile("[\\p{L}_][\\p{L}\\d_]*+$");
    private static final Pattern CALL = Pattern.compile("(\\w+)\\(\\s*(\\S)");
    private static final Pattern TEXT_AT_START = Pattern.compile("\"[^\"]*\"");
    private static final Pattern PACKAGES = Pattern.compile("\\b(?:[a-z_]\\w*\\.)+(?=[A-Z])");
    private static final int FORMS_SHOWN = 4;
    private static final String LIST_IN_BRACES = "a list is written with List.of( and ), not with braces";

    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("String", "text"),
            Map.entry("CharSequence", "text"),
            Map.entry("char", "a single letter"),
            Map.entry("int", "a whole number"),
            Map.entry("Integer", "a whole number"),
            Map.entry("long", "a whole number"),
            Map.entry("Long", "a whole number"),
            Map.entry("double", "a number"),
            Map.entry("Double", "a number"),
            Map.entry("float", "a number"),
            Map.entry("BigDecimal", "an exact number"),
            Map.entry("boolean", "true or false"),
            Map.entry("Boolean", "true or false"),
            Map.entry("Object", "anything"),
            Map.entry("<null>", "nothing"));

    private final Session session;

    InputFaults(Session session) {
        this.session = session;
    }

    /** A list was written as Java writes an array. */
    static Fault listInBraces(Piece expression) {
        return new Fault(Fault.Kind.INPUT, LIST_IN_BRACES, expression.place(0));
    }

    /** What is to be kept under a name gives no value. */
    static Fault noValue(String name, Piece expression) {
        return new Fault(Fault.Kind.INPUT, "this gives nothing to keep as " + name, expression.place(0));
    }

    /** A declaration whose first word is no type: most often a word that was to be used on the second. */
    Fault unknownType(Piece piece, String type, List<Diag> diagnostics) {
        boolean bare = type.chars().allMatch(Character::isJavaIdentifierPart);
        int at = piece.text().indexOf(type);
        if (!bare || at < 0) {
            return fault(piece, diagnostics);
        }
        String second =
                piece.text().substring(at + type.length()).split("[;=,]", 2)[0].strip();
        String near = offer(type, names(piece.text(), at, false));
        return new Fault(
                Fault.Kind.INPUT,
                "'" + type + "' isn't known as a kind of thing" + near
                        + (second.matches("\\w+")
                                ? "; to use it on " + second + ", write " + type + "(" + second + ")"
                                : ""),
                piece.place(at));
    }

    /** The first of the compiler's complaints. */
    Fault fault(Piece piece, List<Diag> diagnostics) {
        Diag first = diagnostics.stream().filter(Diag::isError).findFirst().orElse(null);
        if (first == null) {
            return new Fault(Fault.Kind.INPUT, "this can't be understood", piece.place(0));
        }
        String source = piece.text();
        int position = (int) Math.max(0, Math.min(first.getPosition(), source.length()));
        if (position < source.length() && source.charAt(position) == '.') {
            position++;
        }
        int next = position;
        while (next < source.length() && source.charAt(next) == ' ') {
            next++;
        }
        if (next < source.length() && source.charAt(next) != '\n') {
            position = next;
        }
        Optional<Fault> quote =
                first.getCode().contains("expected") || first.getCode().contains("unclosed.str.lit")
                        ? Unquoted.notClosed(piece)
                        : Optional.empty();
        if (quote.isEmpty() && first.getCode().contains("expected")) {
            quote = Unquoted.betweenBrackets(piece, position);
        }
        if (quote.isPresent()) {
            return quote.get();
        }
        return new Fault(Fault.Kind.INPUT, message(first, source, position), piece.place(position));
    }

    private String message(Diag diagnostic, String source, int position) {
        String code = diagnostic.getCode().replaceFirst("^compiler\\.err\\.", "");
        String text = diagnostic.getMessage(Locale.ROOT);
        String fallback = PACKAGES.matcher(text.lines().findFirst().orElse("this can't be understood"))
                .replaceAll("");
        if (code.startsWith("cant.resolve") || code.equals("doesnt.exist")) {
            return unknownName(code, text, source, position);
        }
        if (code.startsWith("expected")) {
            return expected(fallback, source, position);
        }
        return switch (code) {
            case "unclosed.str.lit" -> "the closing \" is missing";
            case "unclosed.text.block" -> "the closing \"\"\" is missing";
            case "unclosed.char.lit", "empty.char.lit" -> "text stands between double quotes, \"like this\"";
            case "illegal.char" -> illegalLetter(source, position);
            case "illegal.start.of.expr" -> "something is missing here";
            case "premature.eof" -> "the input ends too early";
            case "not.stmt" -> "this says nothing to do";
            case "int.number.too.large" -> "this whole number is too large; with a decimal point it may be larger";
            case "illegal.initializer.for.type" -> LIST_IN_BRACES;
            case "prob.found.req" ->
                wrongKind(text, fallback)
                        + Unquoted.expectedAt(source, position)
                                .map(hint -> "; in the brackets stands a text: \"" + hint + "\"")
                                .orElse("");
            case "cant.apply.symbol" -> wrongForm(text, fallback) + textMeant(source, position);
            case "cant.apply.symbols" -> noForm(text, fallback) + textMeant(source, position);
            case "operator.cant.be.applied.1" ->
                find(
                        OPERANDS,
                        text,
                        m -> m.group(1).matches("[=!]=")
                                ? "can't compare " + words(m.group(2)) + " with " + words(m.group(3))
                                : "'" + m.group(1) + "' doesn't go between " + words(m.group(2)) + " and "
                                        + words(m.group(3)),
                        fallback);
            case "operator.cant.be.applied" ->
                find(UNARY, text, m -> "'" + m.group(2) + "' doesn't go before " + words(m.group(1)), fallback);
            case "incomparable.types" ->
                find(
                        COMPARED,
                        text,
                        m -> "can't compare " + words(m.group(1)) + " with " + words(m.group(2)),
                        fallback);
            case "cant.deref" ->
                find(DEREFERENCED, text, m -> "nothing can be asked of " + words(m.group(1)), fallback);
            default -> fallback;
        };
    }

    /** Where a word of ours was given something else than text: what the text is to be. */
    private static String textMeant(String source, int position) {
        Matcher call = CALL.matcher(source).region(position, source.length());
        return call.lookingAt() && !call.group(2).startsWith("\"")
                ? Calls.at(call.group(1), 0)
                        .map(kind -> "; in the brackets stands a text: \"" + kind.hint() + "\"")
                        .orElse("")
                : "";
    }

    private static String find(Pattern pattern, String text, Function<MatchResult, String> words, String fallback) {
        Matcher matcher = pattern.matcher(text);
        return matcher.find() ? words.apply(matcher.toMatchResult()) : fallback;
    }

    private String unknownName(String code, String complaint, String source, int position) {
        Matcher symbol = (code.equals("doesnt.exist") ? NO_PACKAGE : SYMBOL).matcher(complaint);
        String name = symbol.find() ? symbol.group(symbol.groupCount()) : source.substring(position);
        if (name.matches("[£€¥]\\d*")) {
            return "money is written as text, such as \"" + name.charAt(0) + "12.50\"";
        }
        int at = source.startsWith(name, position) ? position : source.indexOf(name);
        Collection<String> known = names(source, Math.max(0, at), true);
        if (known.contains(name + "(")) {
            return "'" + name + "' is asked with brackets: " + name + "()";
        }
        boolean method = complaint.contains("symbol:   method");
        String shown = method ? name + "()" : name;
        Optional<String> text = method ? Optional.empty() : Unquoted.expectedAt(source, Math.max(0, at));
        if (text.isPresent()) {
            return "'" + name + "' isn't known; the " + text.get().replaceFirst(",.*", "") + " is written as text: \""
                    + name + "\"";
        }
        return "'" + shown + "' isn't known" + (at > 0 && source.charAt(at - 1) == '.' ? " here" : "")
                + offer(name, known);
    }

    /** The names that could stand at a place; those of methods with a bracket if asked for. */
    private Collection<String> names(String source, int at, boolean brackets) {
        return session.completions(source.substring(0, at), at).words().stream()
                .filter(word -> !word.endsWith("."))
                .map(word -> brackets && word.contains("(")
                        ? word.substring(0, word.indexOf('(') + 1)
                        : word.replaceAll("\\(.*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String offer(String name, Collection<String> known) {
        List<String> bare =
                known.stream().map(word -> word.replace("(", "")).distinct().toList();
        List<String> nearest = Nearest.to(name, bare);
        return nearest.isEmpty() ? "" : "; nearest: " + String.join(", ", nearest);
    }

    private static String expected(String fallback, String source, int position) {
        String before = source.substring(0, position).stripTrailing();
        boolean afterDigit = !before.isEmpty() && Character.isDigit(before.charAt(before.length() - 1));
        String rest = source.substring(position);
        if (fallback.startsWith("';'")) {
            if (afterDigit && rest.matches("(?s)\\s*[\\p{L}%°].*")) {
                return "an amount with its unit is written as text, such as \"12 kg\"";
            }
            if (afterDigit && rest.matches("(?s),\\d.*")) {
                return "a decimal point is a full stop";
            }
            Matcher word = WORD_AT_END.matcher(before);
            Matcher text = TEXT_AT_START.matcher(rest);
            if (word.find() && text.lookingAt()) {
                return "'" + word.group() + "' is asked with brackets: " + word.group() + "(" + text.group() + ")";
            }
            return "something is missing here, or too much";
        }
        String tokens =
                fallback.replace(" expected", "").replaceAll("^<|>$", "").replace("identifier", "a name");
        return "expected " + tokens + " here";
    }

    private static String illegalLetter(String source, int position) {
        if (position >= source.length()) {
            return "something is missing here";
        }
        int letter = source.codePointAt(position);
        return "“”‘’„«»".indexOf(letter) >= 0
                ? "text stands between straight double quotes, \"like this\""
                : "'" + Character.toString(letter) + "' can't stand here";
    }

    private static String wrongKind(String text, String fallback) {
        Matcher lossy = LOSSY.matcher(text);
        if (lossy.find()) {
            return "expected " + words(lossy.group(2)) + ", found one with decimals or too large for it";
        }
        return find(CONVERTED, text, m -> "expected " + words(m.group(2)) + ", found " + words(m.group(1)), fallback);
    }

    private static String wrongForm(String text, String fallback) {
        return find(
                ONE_FORM,
                text,
                m -> "expected (" + inBrackets(m.group(1)) + "), found (" + inBrackets(m.group(2)) + ")",
                fallback);
    }

    private static String noForm(String text, String fallback) {
        Matcher found = MANY_FORMS.matcher(text);
        List<String> forms = FORM.matcher(text)
                .results()
                .map(form -> "(" + inBrackets(form.group(1)) + ")")
                .distinct()
                .limit(FORMS_SHOWN)
                .toList();
        return found.find() && !forms.isEmpty()
                ? "expected " + String.join(" or ", forms) + ", found (" + inBrackets(found.group(1)) + ")"
                : fallback;
    }

    private static String inBrackets(String types) {
        return types.strip().equals("no arguments") ? "" : words(types.strip()).replaceAll(",(?! )", ", ");
    }

    /** Types as words, with no packages. */
    private static String words(String types) {
        return TYPE.matcher(types.replace("<null>", "nothing"))
                .replaceAll(match -> {
                    String name = match.group(1);
                    String word = WORDS.getOrDefault(name, name);
                    return Matcher.quoteReplacement(match.group(2) == null ? word : "a list of " + name);
                })
                .replace('$', '.');
    }
}
