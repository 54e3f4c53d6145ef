package org.example.pintcost;

/** Prints where the library that this program was built against came from. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        var tables = Main.class.getClassLoader().getResource("costrel/ingredient-tables/SOURCES.md");
        if (tables == null) {
            throw new IllegalStateException("ingredient tables: expected them on the class path, found none");
        }
        System.out.println("ingredient tables read from the library on the class path");
    }
}
