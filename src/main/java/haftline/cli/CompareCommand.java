package haftline.cli;

import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import haftline.template.StillServes;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code haftline compare}: what a new batch of parts changes. */
@Command(
        name = "compare",
        sortOptions = false,
        description = {
            "Shows what a new batch of parts changes.",
            "In the work, and which gauges and templates still serve; writes no file."
        })
final class CompareCommand extends PageVerb implements Callable<Integer> {
    @Parameters(
            index = "0",
            paramLabel = "PARTS-A",
            converter = PathOption.class,
            description = "The parts document of the batch before.")
    private Path first;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PARTS-B",
            converter = PathOption.class,
            description = "The parts document of the new batch; PARTS-A if not said.")
    private Path second;

    @Option(
            names = "--set",
            required = true,
            paramLabel = "SET",
            converter = PathOption.class,
            description = "The set document whose pieces are worked out with either batch.")
    private Path set;

    @Option(
            names = "--batch-a",
            paramLabel = "ID",
            description =
                    "The batch before; if not said, the one in use in the set's own parts document,"
                            + " the last of another.")
    private String firstBatch;

    @Option(
            names = "--batch-b",
            paramLabel = "ID",
            description = "The new batch; if not said, likewise; within one document the last.")
    private String secondBatch;

    @Option(
            names = "--tolerance",
            paramLabel = "LENGTH",
            converter = ToleranceOption.class,
            description =
                    "How far an outline or a diameter may be off its gauge: mm, or with its unit;"
                            + " 0.2 mm by default (common practice).")
    private Double tolerance;

    @Option(
            names = "--json",
            description = "Answers in JSON for other programs, lengths in mm whatever the units.")
    private boolean json;

    CompareCommand(Console console) {
        super(console);
    }

    @Override
    public Integer call() throws DocumentException {
        LoadedSet loaded = SetFile.read(set);
        ChosenBatch.Pair chosen;
        try {
            chosen =
                    ChosenBatch.pair(
                            loaded,
                            first,
                            Optional.ofNullable(second),
                            Optional.ofNullable(firstBatch),
                            Optional.ofNullable(secondBatch));
        } catch (ChosenBatch.UnknownException e) {
            throw usage(e.getMessage());
        }
        double within = tolerance == null ? StillServes.USUAL_TOLERANCE_MM : tolerance;
        Comparison comparison = Comparison.of(loaded, chosen, within);
        console.print(
                json ? CompareJson.of(comparison, units) : comparison.page(units, console.ink()));
        return comparison.isStopped() ? ExitCode.STOPPED : ExitCode.DONE;
    }

    /** How far something may be off. */
    static final class ToleranceOption extends LengthOption {
        ToleranceOption() {
            super(0.001, 5);
        }
    }
}
