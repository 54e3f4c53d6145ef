package costrel.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A sheet as a reader without our code sees it: what its tags and keys hold. */
record Page(String html) {

    private static final Pattern KEYED =
            Pattern.compile("<(td|span|h1|li)(?: class=\"\\w+\")? data-key=\"([^\"]+)\">([^<]*)</\\1>");
    private static final Pattern TAG = Pattern.compile("<(/?)(\\w+)((?:\\s+[\\w:-]+=\"[^\"<]*\")*)\\s*(/?)>");

    /** What stands under each key; several under one key are kept in order. */
    Map<String, List<String>> figures() {
        Map<String, List<String>> found = new LinkedHashMap<>();
        Matcher keyed = KEYED.matcher(html);
        while (keyed.find()) {
            found.computeIfAbsent(keyed.group(2), key -> new ArrayList<>()).add(plain(keyed.group(3)));
        }
        return found;
    }

    String figure(String key) {
        List<String> found = figures().getOrDefault(key, List.of());
        assertEquals(1, found.size(), "figures with the key " + key);
        return found.get(0);
    }

    double number(String key) {
        return Double.parseDouble(figure(key));
    }

    int boxes() {
        return html.split("class=\"box\"", -1).length - 1;
    }

    /** Every tag is closed in turn, and every header of a table says what it heads. */
    void wellFormed() {
        assertTrue(html.startsWith("<!DOCTYPE html>\n"));
        assertTrue(html.contains(" lang=\"en-GB\""));
        String body = html.substring(html.indexOf('\n')).replaceAll("(?s)<style>.*?</style>", "");
        Deque<String> open = new ArrayDeque<>();
        Matcher tag = TAG.matcher(body);
        int tags = 0;
        while (tag.find()) {
            tags++;
            if (tag.group(1).equals("/")) {
                assertEquals(open.pop(), tag.group(2));
            } else if (tag.group(4).isEmpty()) {
                open.push(tag.group(2));
            }
            if (tag.group(2).equals("th") && tag.group(1).isEmpty()) {
                assertTrue(tag.group(3).contains(" scope=\""), tag.group());
            }
        }
        assertTrue(open.isEmpty(), "left open: " + open);
        assertEquals(tags, body.split("<", -1).length - 1, "a < that begins no tag");
    }

    private static String plain(String text) {
        return text.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }
}
