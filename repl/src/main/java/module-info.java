/** The console: Java expressions over an opened brewery folder. */
module costrel.repl {
    requires costrel;
    requires info.picocli;
    requires jdk.jshell;
    requires org.jline;
    requires static org.jspecify;
}
