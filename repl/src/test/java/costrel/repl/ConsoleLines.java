package costrel.repl;

import java.util.stream.Stream;

/** Lines as they are typed at the console, good and bad: what a search for harder ones begins with. */
final class ConsoleLines {

    private ConsoleLines() {}

    static Stream<String> all() {
        return Stream.concat(
                Words.all().values().stream().flatMap(word -> Stream.of(word.name(), word.example())),
                Stream.of(
                        "help brew",
                        "save monday.jsh",
                        "pale = brew(\"Trimwick Pale\").on(\"Main\").length(\"30 brl\").day(\"2026-11-25\")",
                        "pale.pricing().margin(\"55 %\")",
                        "brew(\"Wickgate Bitter\").on(\"Main\").cost()",
                        "brew(\"Wickgate Biter\").on(\"Mian\").length(\"30\")",
                        "brew(Wickgate Bitter).on(\"Main).length(30 brl)",
                        "racking(brew(\"Tallow Mild\").on(\"Main\")).at(\"1.0115\")",
                        "convert(\"2 oz/brl\", \"g/hL\")",
                        "convert(2 oz/brl)",
                        "recipe(\"Tallow Mild\").lines()",
                        "int twice(int a) {\n  return a * 2; // twice\n}\ntwice(21)",
                        "var x = List.of(1, 2.5, \"a\")\nx.get(0)",
                        "record Cask(int gallons) {}",
                        "/* a remark */ 1 +\n2",
                        "\"\"\"\n  a text block\n  \"\"\".length()",
                        "x = {1, 2}",
                        "cost bitter;",
                        "£12.50",
                        "1,5 + 'ab' + “x”",
                        "beers().size() /",
                        "x == 1 ? \"a\" : \"b\"",
                        "if (true) 1; else 2",
                        "(((((((((1",
                        "\tbrew(\"\\u0041\u202e\u001b[2J\")",
                        "exit"));
    }
}
