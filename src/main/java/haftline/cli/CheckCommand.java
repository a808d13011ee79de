package haftline.cli;

import haftline.stock.CatalogueException;
import haftline.store.DocumentException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code haftline check}: figures and findings, no file written. */
@Command(
        name = "check",
        sortOptions = false,
        description = "Shows the figures and findings of a set; writes no file.")
final class CheckCommand extends SetCommand implements Callable<Integer> {
    @Option(
            names = "--json",
            description = "Answers in JSON for other programs, lengths in mm whatever the units.")
    private boolean json;

    CheckCommand(Console console) {
        super(console);
    }

    @Override
    public Integer call() throws DocumentException, CatalogueException {
        ExaminedSet set = examine(load());
        if (json) {
            console.print(CheckJson.of(set));
        } else {
            console.page(set, units);
        }
        return exitCode(set);
    }
}
