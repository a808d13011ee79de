package haftline.cli;

import haftline.measure.Units;
import haftline.stock.CatalogueException;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the verbs that work on a set have in common. */
abstract class SetCommand {
    final Console console;

    @Parameters(
            index = "0",
            paramLabel = "SET",
            converter = PathOption.class,
            description = "The set document.")
    private Path set;

    @Option(
            names = "--units",
            paramLabel = "mm|in",
            converter = UnitsOption.class,
            defaultValue = "mm",
            description = "Unit of the lengths on the page: mm (the default) or in.")
    Units units;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this help.")
    private boolean help;

    SetCommand(Console console) {
        this.console = console;
    }

    LoadedSet load() throws DocumentException {
        return SetFile.read(set);
    }

    ExaminedSet examine(LoadedSet loaded) throws CatalogueException {
        return Examination.of(loaded, units);
    }

    static int exitCode(ExaminedSet set) {
        return set.isStopped() ? ExitCode.STOPPED : ExitCode.DONE;
    }
}
