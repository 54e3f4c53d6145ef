/** Scales recipes between brew lengths and plants, puts hop lots into them, and costs every pint. */
module costrel {
    requires transitive java.measure;
    requires transitive org.joda.money;
    requires org.apache.commons.csv;
    requires tech.units.indriya;
    requires static org.jspecify;
}
