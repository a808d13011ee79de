package haftline.cli;

import haftline.stock.CatalogueException;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** What the verbs that work on a set have in common. */
abstract class SetCommand extends PageVerb {
    @Parameters(
            index = "0",
            paramLabel = "SET",
            converter = PathOption.class,
            description = "The set document.")
    private Path set;

    SetCommand(Console console) {
        super(console);
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
