package costrel.repl;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What Tab offers: inside a text the names that may stand there, elsewhere the console's words and the names given, then
 * all of Java.
 *
 * @param anchor where the word begins that an offer replaces
 * @param offers what may stand there
 */
record Offers(int anchor, List<Offer> offers) {

    private static final Pattern BARE = Pattern.compile("\\s*+(\\p{Lower}++) ++([^\"(=.]*+)");
    private static final Pattern ENDING = Pattern.compile("\\.([a-zA-Z]+)\\(");
    private static final Map<String, String> LINES = lines();

    /**
     * An offer.
     *
     * @param typed what is put into the line
     * @param shown what the list shows
     * @param figure what stands beside it, may be empty
     */
    record Offer(String typed, String shown, String figure) {}

    Offers {
        offers = List.copyOf(offers);
    }

    /**
     * What may stand at the cursor.
     *
     * @param session knows Java and the names given
     * @param line the whole input
     * @param cursor where the cursor stands in it
     */
    static Offers at(Session session, String line, int cursor) {
        String before = line.substring(0, cursor);
        Optional<Spot> spot = Spot.of(before);
        if (spot.isPresent() && spot.get().text().isPresent()) {
            return inText(spot.get(), line, cursor);
        }
        Matcher bare = BARE.matcher(before);
        if (bare.matches() && Words.all().containsKey(bare.group(1))) {
            Optional<Calls.Kind> kind = Calls.at(bare.group(1), 0);
            List<Offer> names = kind.map(known -> named(known, List.of(), "")).orElse(List.of());
            if (!names.isEmpty()) {
                return new Offers(bare.start(2), names);
            }
        }
        int start = wordStart(before);
        boolean member = start > 0 && before.charAt(start - 1) == '.';
        List<Offer> own = member ? List.of() : ownWords(session, before.substring(start));
        if (!own.isEmpty()) {
            return new Offers(start, own);
        }
        Completions java = session.completions(line, cursor);
        return new Offers(
                java.anchor(), java.words().stream().map(Offers::ofJava).toList());
    }

    private static Offers inText(Spot spot, String line, int cursor) {
        int from = spot.text().orElse(cursor);
        Optional<Calls.Kind> kind = Calls.at(spot.call(), spot.place());
        if (kind.isEmpty()) {
            return new Offers(cursor, List.of());
        }
        boolean closed = line.substring(cursor).startsWith("\"");
        String end = closed ? "" : Calls.goesOn(spot.call(), spot.place()) ? "\", \"" : "\")";
        return new Offers(from, named(kind.get(), spot.before(), end));
    }

    private static List<Offer> named(Calls.Kind kind, List<String> before, String end) {
        try {
            return Desk.larder().names(kind, before).stream()
                    .map(named -> new Offer(named.name() + end, named.name(), named.figure()))
                    .toList();
        } catch (RuntimeException unreadable) {
            return List.of();
        }
    }

    private static List<Offer> ownWords(Session session, String start) {
        List<Offer> own = new ArrayList<>();
        for (Words.Word word : Words.all().values()) {
            if (isStart(start, word.name())) {
                String typed = typed(word.name());
                String shown = typed.endsWith(")") ? typed : Calls.shown(word.name());
                own.add(new Offer(typed, shown, word.line()));
            }
        }
        for (String name : session.names()) {
            if (isStart(start, name)) {
                own.add(new Offer(name, name, ""));
            }
        }
        return own;
    }

    private static boolean isStart(String start, String word) {
        return word.toLowerCase(Locale.ROOT).startsWith(start.toLowerCase(Locale.ROOT));
    }

    /** A word with its bracket: closed if nothing stands in it, with a quote if a text does. */
    private static String typed(String word) {
        List<Class<?>[]> forms = Stream.of(Verbs.class.getMethods())
                .filter(method -> method.getName().equals(word))
                .map(Method::getParameterTypes)
                .toList();
        boolean alone = forms.stream().anyMatch(form -> form.length == 0);
        boolean text = forms.stream().anyMatch(form -> form.length > 0 && form[0] == String.class);
        return alone ? text ? word + "(" : word + "()" : text ? word + "(\"" : word + "(";
    }

    private static Offer ofJava(String word) {
        if (!word.endsWith("(") || !Calls.all().containsKey(word.substring(0, word.length() - 1))) {
            return new Offer(word, word, LINES.getOrDefault(word.replace("()", ""), ""));
        }
        String name = word.substring(0, word.length() - 1);
        return new Offer(word + "\"", Calls.shown(name), LINES.getOrDefault(name, ""));
    }

    private static int wordStart(String before) {
        int start = before.length();
        while (start > 0 && Character.isJavaIdentifierPart(before.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    /** What help says of each ending, such as {@code gyle}. */
    private static Map<String, String> lines() {
        Map<String, String> lines = new HashMap<>();
        for (Words.Word word : Words.all().values()) {
            for (Words.More more : word.more()) {
                Matcher endings = ENDING.matcher(more.ending());
                String last = "";
                while (endings.find()) {
                    last = endings.group(1);
                }
                lines.putIfAbsent(last, more.line().replaceAll("[;,] .*", ""));
            }
        }
        return lines;
    }
}
