/**
 * Costrel: recipes of cask beer moved between brew lengths and plants, adapted to new hop lots, and costed to the pint.
 */
module costrel {
    requires transitive java.measure;
    requires transitive org.joda.money;
    requires org.apache.commons.csv;
    requires hipparchus.core;
    requires hipparchus.stat;
    requires ojalgo;
    requires tech.units.indriya;
    requires tools.jackson.core;
    requires static transitive org.jspecify;

    exports costrel.measure;
    exports costrel.explain;
    exports costrel.wort;
    exports costrel.hops;
    exports costrel.recipe;
    exports costrel.plant;
    exports costrel.scaling;
    exports costrel.harvest;
    exports costrel.stock;
    exports costrel.packaging;
    exports costrel.buying;
    exports costrel.duty;
    exports costrel.cost;
    exports costrel.pricing;
    exports costrel.tables;
    exports costrel.brewery;
    exports costrel.report;
}
