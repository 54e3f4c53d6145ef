/** The console: Java expressions over an opened brewery folder. */
module costrel.repl {
    requires transitive costrel;
    requires org.apache.xmlgraphics.batik.svggen;
    requires info.picocli;
    requires java.compiler;
    requires java.desktop;
    requires java.logging;
    requires java.xml;
    requires jdk.jshell;
    requires openhtmltopdf.core;
    requires openhtmltopdf.pdfbox;
    requires org.apache.pdfbox;
    requires org.jline;
    requires org.objectweb.asm;
    requires static org.jspecify;
    requires xchart;

    exports costrel.repl;

    opens costrel.repl to
            info.picocli;
}
