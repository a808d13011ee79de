package haftline.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The program itself; everything it does is done by its verbs. */
@Command(
        name = "haftline",
        versionProvider = Version.class,
        sortOptions = false,
        description = "Designs turned tool handles that fit measured metal parts.",
        synopsisHeading = "Usage: ",
        synopsisSubcommandLabel = "VERB ...",
        commandListHeading = "%nVerbs:%n",
        footer = {
            "",
            "haftline help VERB says more of a verb.",
            "",
            "Exit: 0 done, 1 done but something is not as it must be: a piece cannot be made",
            "      so, a demand is not met, a turned piece is off its design; 2 bad usage,",
            "      3 bad document, 4 cannot write, 70 a mistake in the program."
        })
final class Haftline {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this help.")
    private boolean help;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "Shows the version.")
    private boolean version;
}
