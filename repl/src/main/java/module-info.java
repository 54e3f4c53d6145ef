/** The console: Java expressions over an opened brewery folder. */
module costrel.repl {
    requires transitive costrel;
    requires info.picocli;
    requires java.compiler;
    requires java.logging;
    requires jdk.jshell;
    requires org.jline;
    requires static org.jspecify;

    exports costrel.repl;

    opens costrel.repl to
            info.picocli;
}
