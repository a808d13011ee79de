package haftline.cli;

import haftline.measure.NearestWord;
import haftline.stock.CatalogueException;
import haftline.store.DocumentException;
import haftline.store.Problem;
import haftline.write.OutputException;
import java.io.PrintWriter;
import java.util.Collection;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The one place where what went wrong becomes a message and an exit code. */
final class Failures {
    private static final String TRACE = "HAFTLINE_TRACE";

    private final Console console;
    private final boolean traced;

    /**
     * For a console.
     *
     * @param traced whether a mistake in the program shows where it happened
     */
    Failures(Console console, boolean traced) {
        this.console = console;
        this.traced = traced;
    }

    /** For a console, traced where the environment asks for it. */
    static Failures of(Console console) {
        return new Failures(console, System.getenv(TRACE) != null);
    }

    /** A command line that makes no sense. */
    int usage(ParameterException e) {
        CommandLine command = e.getCommandLine();
        console.say(message(e, command));
        console.say("try " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.USAGE;
    }

    private static String message(ParameterException e, CommandLine command) {
        if (e instanceof UnmatchedArgumentException unmatched) {
            return unknown(unmatched.getUnmatched().get(0), command);
        }
        if (e instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
            return missing(missing.getMissing().get(0));
        }
        return e.getMessage();
    }

    /** A word that means nothing here: a verb, an option or a name too many. */
    private static String unknown(String word, CommandLine command) {
        boolean isOption = word.startsWith("-");
        boolean isVerb = !isOption && command.getParent() == null;
        if (!isOption && !isVerb) {
            return "\"" + word + "\": nothing more is expected here";
        }
        Collection<String> known =
                isVerb
                        ? command.getSubcommands().keySet()
                        : command.getCommandSpec().optionsMap().keySet();
        String name = word.contains("=") ? word.substring(0, word.indexOf('=')) : word;
        return "there is no "
                + (isVerb ? "verb \"" + word + "\"; there are " : "option " + name)
                + (isVerb ? String.join(", ", known) : "")
                + NearestWord.to(known, name)
                        .map(near -> "; did you mean " + near + "?")
                        .orElse("");
    }

    private static String missing(ArgSpec missing) {
        String name =
                missing instanceof OptionSpec option
                        ? option.longestName() + " " + missing.paramLabel()
                        : missing.paramLabel();
        return name + " is missing: " + String.join(" ", missing.description());
    }

    /** What a command could not do. */
    int failed(Throwable e) {
        if (e instanceof DocumentException document) {
            for (Problem problem : document.problems()) {
                console.err().print(Paper.harmless(problem.text()) + "\n");
            }
            return ExitCode.DOCUMENT;
        }
        if (e instanceof CatalogueException || e instanceof ReadingsException) {
            for (String line : e.getMessage().split("\n")) {
                console.err().print(Paper.harmless(line) + "\n");
            }
            return ExitCode.DOCUMENT;
        }
        if (e instanceof OutputException) {
            console.say(e.getMessage());
            return ExitCode.CANNOT_WRITE;
        }
        return mistake(e);
    }

    private int mistake(Throwable e) {
        String what = e.getMessage() == null ? "" : ": " + e.getMessage();
        console.say("a mistake in the program, " + e.getClass().getSimpleName() + what);
        if (traced) {
            PrintWriter trace = new PrintWriter(console.err());
            e.printStackTrace(trace);
            trace.flush();
        } else {
            console.say("please report it with the set that shows it; HAFTLINE_TRACE=1 says where");
        }
        return ExitCode.BUG;
    }
}
