package haftline.cli;

import haftline.adjust.Watch;
import haftline.adjust.doubt.DoubtRun;
import haftline.adjust.doubt.TwoWays;
import haftline.figures.Figures;
import haftline.stock.CatalogueException;
import haftline.store.DocumentException;
import java.util.List;
import java.util.Optional;
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

    @Option(
            names = "--doubt",
            description =
                    "Adds what chance makes of each piece: how many in 100 would break a wall's"
                            + " rule, and what matters most.")
    private boolean doubt;

    @Option(
            names = "--handles",
            paramLabel = "N",
            defaultValue = "20000",
            description =
                    "With --doubt: how many handles of each piece are made in figures, 100 to"
                            + " 2000000; 20000 unless said.")
    private int handles;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "With --doubt: any whole number; the same gives the same answer.")
    private long seed;

    CheckCommand(Console console) {
        super(console);
    }

    @Override
    public Integer call() throws DocumentException, CatalogueException {
        if (handles < DoubtRun.FEWEST || handles > DoubtRun.MOST) {
            throw usage(
                    "--handles "
                            + handles
                            + ": expected a whole number from "
                            + DoubtRun.FEWEST
                            + " to "
                            + DoubtRun.MOST);
        }
        for (String option : List.of("--handles", "--seed")) {
            if (!doubt && isSaid(option)) {
                throw usage(option + " goes with --doubt: say that too");
            }
        }
        ExaminedSet set = examine(load());
        if (json) {
            console.print(CheckJson.of(set, this::doubt));
        } else {
            console.print(SetPage.of(set, units, console.ink(), this::doubt));
        }
        return exitCode(set);
    }

    private Optional<TwoWays> doubt(ExaminedPiece piece) {
        return doubt ? piece.figures().flatMap(this::doubt) : Optional.empty();
    }

    private Optional<TwoWays> doubt(Figures figures) {
        int threads = Runtime.getRuntime().availableProcessors();
        return TwoWays.of(figures.handle(), seed, handles, threads, Watch.NOBODY);
    }
}
