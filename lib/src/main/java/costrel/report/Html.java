package costrel.report;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;

/** Builds one page of HTML that is well-formed XML too. Every word passes {@link #escaped}; nothing else writes text. */
final class Html {

    private final StringBuilder page = new StringBuilder(32_768);
    private final Deque<String> open = new ArrayDeque<>();

    /** A page with its title and style, open for its body. */
    static Html page(String title, String style) {
        Html html = new Html();
        html.page.append("<!DOCTYPE html>\n");
        html.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en-GB");
        html.open("head");
        html.page
                .append("<meta charset=\"utf-8\"/>\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n")
                // No picture for the tab: without this line a browser asks a server for one.
                .append("<link rel=\"icon\" href=\"data:,\"/>\n");
        html.leaf("title", title);
        html.page.append("<style>\n").append(style).append("</style>\n");
        html.close("head").open("body");
        return html;
    }

    /** The page, closed. */
    String finished() {
        close("body").close("html");
        return page.toString();
    }

    Html open(String tag, String... attributes) {
        start(tag, attributes).append(">");
        open.push(tag);
        return this;
    }

    /** Closes the element that was opened last; its name is said again so that a slip shows. */
    Html close(String tag) {
        String last = open.isEmpty() ? "nothing" : open.pop();
        if (!last.equals(tag)) {
            throw new IllegalStateException("sheet: expected to close " + last + ", found " + tag);
        }
        page.append("</").append(tag).append(">\n");
        return this;
    }

    /** An element with nothing but words in it. */
    Html leaf(String tag, String words, String... attributes) {
        start(tag, attributes)
                .append(">")
                .append(escaped(words))
                .append("</")
                .append(tag)
                .append(">\n");
        return this;
    }

    /** A cell whose figure a program can find again. */
    Html figure(String key, String figure) {
        return leaf("td", figure, "class", "n", "data-key", key);
    }

    /** A cell of words whose text a program can find again. */
    Html words(String key, String words) {
        return leaf("td", words, "data-key", key);
    }

    /** A cell of words. */
    Html cell(String words) {
        return leaf("td", words);
    }

    /** An empty cell to write in, with what it is for as its name. */
    Html box(String what) {
        start("td", "class", "box", "aria-label", what + ", to be written in").append("></td>\n");
        return this;
    }

    /** The head of a table; a column whose header starts with # holds figures. */
    Html table(String caption, String... headers) {
        open("table").leaf("caption", caption).open("thead").open("tr");
        for (String header : headers) {
            if (header.startsWith("#")) {
                leaf("th", header.substring(1), "scope", "col", "class", "n");
            } else {
                leaf("th", header, "scope", "col");
            }
        }
        return close("tr").close("thead").open("tbody");
    }

    Html endTable() {
        return close("tbody").close("table");
    }

    /** A picture with its words beside it. */
    Html picture(Picture picture) {
        open("figure", "data-key", "picture." + picture.key());
        if (picture.svg()) {
            page.append(picture.image()).append('\n');
        } else {
            start("img", "alt", picture.description(), "src", "data:image/png;base64," + picture.image())
                    .append("/>\n");
        }
        return leaf("figcaption", picture.title()).close("figure");
    }

    /** The part of a key that stands for a choice. */
    static String key(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }

    private StringBuilder start(String tag, String... attributes) {
        page.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            page.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(escaped(attributes[i + 1]))
                    .append('"');
        }
        return page;
    }

    /**
     * Words as they may stand in HTML and XML, in text and in attributes. Signs that no page may hold, and those that turn the
     * direction of writing so that a cell could read otherwise than it is, become one sign for something unreadable.
     */
    static String escaped(String words) {
        StringBuilder text = new StringBuilder(words.length() + 16);
        words.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> text.append("&amp;");
                case '<' -> text.append("&lt;");
                case '>' -> text.append("&gt;");
                case '"' -> text.append("&quot;");
                case '\'' -> text.append("&#39;");
                default -> text.appendCodePoint(shows(c) ? c : 0xFFFD);
            }
        });
        return text.toString();
    }

    private static boolean shows(int c) {
        boolean turnsDirection = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
        boolean noCharacter = (c >= 0xD800 && c <= 0xDFFF) || (c & 0xFFFE) == 0xFFFE;
        return c == '\n' || c == '\t' || !(Character.isISOControl(c) || turnsDirection || noCharacter);
    }
}
