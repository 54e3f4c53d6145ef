package costrel;

import java.util.List;

/** A rule of the layout and the body of a class that breaks it. */
record ArchitectureBreach(String rule, String where, String body) {

    private static final String FORMATTED = "String a(double x) { return ";

    /** At least one for every rule but those of the order, which are tried pair by pair. */
    static final List<ArchitectureBreach> ALL = List.of(
            breach("every class lives in a package of the layout", "common", ""),
            breach("every class lives in a package of the layout", "wort.formulas", ""),
            breach("plant does not know recipes by name", "plant", "costrel.recipe.Recipe it;"),
            breach("plant does not know recipes by name", "plant", "costrel.recipe.Catalogue it;"),
            breach("stock does not know scaling", "stock", "costrel.scaling.Gyle it;"),
            breach("cost does not know scaling", "cost", "costrel.scaling.Gyle it;"),
            breach("buying does not know scaling", "buying", "costrel.scaling.Gyle it;"),
            breach("packaging does not know scaling", "packaging", "costrel.scaling.Gyle it;"),
            breach("duty knows neither scaling nor price lists", "duty", "costrel.scaling.Gyle it;"),
            breach("duty knows neither scaling nor price lists", "duty", "costrel.buying.PriceList it;"),
            breach(
                    "pricing knows cost sheets and not what they were made from",
                    "pricing",
                    "costrel.recipe.Recipe it;"),
            breach("pricing knows cost sheets and not what they were made from", "pricing", "costrel.scaling.Gyle it;"),
            breach("money is known from harvest upwards only", "scaling", "org.joda.money.Money it;"),
            breach("only measure knows Indriya", "wort", "tech.units.indriya.AbstractUnit<?> it;"),
            breach("only harvest and pricing know Hipparchus", "cost", "org.hipparchus.special.Erf it;"),
            breach("only report knows Jackson", "brewery", "tools.jackson.core.JsonGenerator it;"),
            breach("only tables knows Commons CSV", "brewery", "org.apache.commons.csv.CSVFormat it;"),
            breach(
                    "only tables, brewery and report know the file system",
                    "recipe",
                    "boolean a(java.nio.file.Path at) { return java.nio.file.Files.exists(at); }"),
            breach("only tables, brewery and report know the file system", "cost", "java.io.File it;"),
            breach(
                    "only tables, brewery and report know the file system",
                    "cost",
                    "Object a() throws Exception { return new java.io.FileReader(\"a\"); }"),
            breach("nobody knows the console", "report", "Object a(java.io.Console it) { return it.reader(); }"),
            breach("nobody prints", "report", "void a() { System.out.println(); }"),
            breach("nobody prints", "report", "void a() { System.err.println(); }"),
            breach("nobody prints", "tables", "void a(java.io.IOException e) { e.printStackTrace(); }"),
            breach("nobody logs", "tables", "java.util.logging.Logger it;"),
            breach("nobody logs", "tables", "System.Logger it;"),
            breach("nobody keeps preferences", "brewery", "java.util.prefs.Preferences it;"),
            breach("nobody reads the clock", "cost", "Object a() { return java.time.LocalDate.now(); }"),
            breach("nobody reads the clock", "cost", "Object a() { return java.time.Instant.now(); }"),
            breach("nobody reads the clock", "cost", "java.util.function.Supplier<?> a = java.time.LocalDate::now;"),
            breach("nobody reads the clock", "cost", "long a() { return System.currentTimeMillis(); }"),
            breach("nobody reads the clock", "cost", "java.time.Clock it;"),
            breach("nobody reads the clock", "cost", "Object a() { return new java.util.Date(); }"),
            breach("nobody takes the locale of the machine", "report", "Object a = java.util.Locale.getDefault();"),
            breach("nobody takes the locale of the machine", "report", FORMATTED + "String.format(\"%.1f\", x); }"),
            breach("nobody takes the locale of the machine", "report", FORMATTED + "\"%.1f\".formatted(x); }"),
            breach(
                    "nobody takes the locale of the machine",
                    "tables",
                    "String a(String x) { return x.toLowerCase(); }"),
            breach(
                    "nobody takes the locale of the machine",
                    "tables",
                    "Object a() { return java.time.format.DateTimeFormatter.ofPattern(\"d MMMM\"); }"),
            breach("nobody looks at the machine around it", "brewery", "String a = System.getProperty(\"user.home\");"),
            breach("nobody looks at the machine around it", "brewery", "String a = System.getenv(\"HOME\");"),
            breach("nobody throws dice without a seed", "cost", "Object it = new java.util.Random();"),
            breach("nobody throws dice without a seed", "cost", "double it = Math.random();"),
            breach("no static field changes", "wort", "static int it;"),
            breach("no static field changes", "wort", "private static volatile Object it;"),
            breach("no static field holds what changes", "wort", "static final java.util.HashMap<?, ?> MAP = null;"),
            breach("no static field holds what changes", "report", "static final java.text.DecimalFormat F = null;"),
            breach("no static array is handed out", "wort", "static final double[] COEFFICIENTS = {1.0};"),
            breach(
                    "units are neither parsed nor printed by Indriya",
                    "measure",
                    "Object a() { return tech.units.indriya.AbstractUnit.parse(\"kg\"); }"),
            breach(
                    "units are neither parsed nor printed by Indriya",
                    "measure",
                    "Object a() { return tech.units.indriya.quantity.Quantities.getQuantity(\"1.5 l\"); }"),
            breach(
                    "units are neither parsed nor printed by Indriya",
                    "measure",
                    "tech.units.indriya.format.SimpleUnitFormat it;"),
            breach(
                    "the shared state of Indriya is left alone",
                    "measure",
                    "Object a() { return tech.units.indriya.function.Calculus.getNumberSystem(\"a\"); }"),
            breach(
                    "the shared state of Indriya is left alone",
                    "measure",
                    "Object a(tech.units.indriya.AbstractUnit<javax.measure.quantity.Mass> unit) {"
                            + " return unit.getConverterTo(unit, javax.measure.Quantity.Scale.RELATIVE); }"));

    private static ArchitectureBreach breach(String rule, String where, String body) {
        return new ArchitectureBreach(rule, where, body);
    }

    /** A name that no other breach's class has, nor begins with. */
    String className() {
        return "costrel.%s.%s".formatted(where, simpleName());
    }

    String source() {
        return "package costrel.%s; class %s { %s }".formatted(where, simpleName(), body);
    }

    private String simpleName() {
        return "Breach%02d".formatted(ALL.indexOf(this));
    }

    @Override
    public String toString() {
        return rule + ": " + where + ": " + body;
    }
}
