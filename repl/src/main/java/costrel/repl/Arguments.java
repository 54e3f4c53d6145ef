package costrel.repl;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What stands on the command line. */
@Command(
        name = "costrel",
        sortOptions = false,
        usageHelpWidth = 80,
        customSynopsis = "java -jar costrel.jar [OPTIONS] [FOLDER] [SCRIPT.jsh]...",
        description = {
            "",
            "Opens a brewery folder for work at a prompt. With scripts or -e, evaluates",
            "those and leaves.",
            ""
        },
        footer = {
            "",
            "At the prompt, any Java expression is answered; x = ... keeps a result as x.",
            "An input goes on over several lines until it is whole. Tab completes. Ctrl-C",
            "stops what runs, or clears the line. Ctrl-D leaves.",
            "",
            "With its input from a pipe, or with --plain, or at a terminal of type dumb, it",
            "reads line by line and prints nothing but answers; faults go to the error",
            "stream. Pipes and scripts are UTF-8.",
            "",
            "--json, --csv and --html give the answers of scripts, -e and pipes to other",
            "programs; samples/FORMS.md tells what stands in them.",
            "",
            "Ends with 0: done; 1: done, but with findings that need a person; 2: wrong",
            "input; 3: failure.",
            "",
            "What you type, and any script you name, is Java and can do whatever you can do",
            "on this computer: nothing fences it in. Run no script that you wouldn't run as",
            "a program. Recipes, price lists and other tables are data and are never",
            "executed.",
            "",
            "The history of inputs is kept in the file 'history' in the folder named by",
            "COSTREL_STATE, or in $XDG_STATE_HOME/costrel, or ~/.local/state/costrel; on",
            "Windows in %%LOCALAPPDATA%%\\costrel. NO_COLOR turns colour off."
        })
final class Arguments {

    @Parameters(
            arity = "0..*",
            paramLabel = "FOLDER|SCRIPT.jsh",
            description = "The brewery folder (this one if none is named), and scripts, known by "
                    + "their ending .jsh, which run in the order given.")
    private List<String> places = new ArrayList<>();

    @Option(
            names = {"-e", "--evaluate"},
            paramLabel = "EXPRESSION",
            description = "Evaluate this and print the answer. May be given again; runs after the scripts.")
    private List<String> expressions = new ArrayList<>();

    @Option(names = "--json", description = "Give each answer as a JSON object.")
    private boolean json;

    @Option(names = "--csv", description = "Give each answer as CSV, a section a table.")
    private boolean csv;

    @Option(names = "--html", description = "Give each answer as a page of HTML.")
    private boolean html;

    @Option(names = "--plain", description = "No prompt, no colour, no line editing.")
    private boolean plain;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Print this and leave.")
    private boolean help;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "Print the version and leave.")
    private boolean version;

    List<String> expressions() {
        return List.copyOf(expressions);
    }

    /** The forms that were asked for; more than one is a fault. */
    List<Form> forms() {
        List<Form> forms = new ArrayList<>();
        if (json) {
            forms.add(Form.JSON);
        }
        if (csv) {
            forms.add(Form.CSV);
        }
        if (html) {
            forms.add(Form.HTML);
        }
        return forms;
    }

    boolean plain() {
        return plain;
    }

    boolean help() {
        return help;
    }

    boolean version() {
        return version;
    }

    List<String> scripts() {
        return places.stream().filter(Arguments::isScript).toList();
    }

    List<String> folders() {
        return places.stream().filter(place -> !isScript(place)).toList();
    }

    private static boolean isScript(String place) {
        return place.endsWith(".jsh");
    }
}
