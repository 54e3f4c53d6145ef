package costrel.repl;

/** The console's entry point. */
public final class Console {

    private Console() {}

    /**
     * Prints the console's version.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        System.out.println("Costrel " + Version.read());
    }
}
