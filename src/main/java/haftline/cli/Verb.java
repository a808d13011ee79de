package haftline.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What all verbs have in common. */
abstract class Verb {
    final Console console;

    @Spec private CommandSpec spec;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this help.")
    private boolean help;

    Verb(Console console) {
        this.console = console;
    }

    /** A command line that makes no sense. */
    ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    /** Whether an option was said, be it with its default. */
    boolean isSaid(String option) {
        return spec.commandLine().getParseResult().hasMatchedOption(option);
    }
}
