package haftline.cli;

import haftline.adjust.solve.Adjust;
import haftline.adjust.solve.Adjustment;
import haftline.adjust.solve.Band;
import haftline.adjust.solve.Fairing;
import haftline.adjust.solve.Freedom;
import haftline.adjust.solve.Need;
import haftline.adjust.solve.Proposal;
import haftline.adjust.solve.Wish;
import haftline.set.HandleSet;
import haftline.stock.CatalogueException;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.write.OutputException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code haftline adjust}: the least change that meets the limits. */
@Command(
        name = "adjust",
        sortOptions = false,
        description =
                "Finds the least change of the nodes that meets the limits, and shows it; writes"
                        + " nothing without --write.",
        footer = {
            "",
            "Exit: 0 all demands are met, 1 not all can be met or a piece is still stopped,",
            "      2 bad usage, 3 bad document, 4 cannot write."
        })
final class AdjustCommand extends SetCommand implements Callable<Integer> {
    @Option(
            names = "--demand",
            paramLabel = "WORD",
            split = ",",
            converter = AdjustOptions.Demands.class,
            description =
                    "What is to be met, with commas between: walls, balance, grip, coves, swell,"
                            + " character; all by default, none with --fair to fair only.")
    private List<Optional<Need.Group>> demands;

    @Option(
            names = "--allow",
            paramLabel = "WORD",
            split = ",",
            converter = AdjustOptions.Allowed.class,
            description =
                    "What may move beside the nodes, with commas between: length, swell, depth;"
                            + " nothing by default.")
    private List<Freedom> allowed;

    @Option(
            names = "--balance",
            paramLabel = "FROM:TO",
            converter = AdjustOptions.BandMm.class,
            description =
                    "Where the pieces are to balance, behind the ferrule's front face, such as"
                            + " 0:15 (mm) or 0:1/2in; the rules' band by default.")
    private Band balance;

    @Option(
            names = "--grip",
            paramLabel = "FROM:TO",
            converter = AdjustOptions.BandMm.class,
            description =
                    "What the greatest diameter is to lie between, such as 20:26; the guidance for"
                            + " the piece's use by default.")
    private Band grip;

    @Option(
            names = "--reach",
            paramLabel = "LENGTH",
            converter = AdjustOptions.ReachMm.class,
            defaultValue = "8",
            description = "How far a diameter may move either way, 0.01 to 50 mm; 8 by default.")
    private double reach;

    @Option(
            names = "--each",
            description =
                    "Moves each piece's nodes alone, as its own choices in the set; by default"
                            + " what pieces share moves together.")
    private boolean each;

    @Option(
            names = "--fair",
            paramLabel = "LENGTH",
            converter = AdjustOptions.FairMm.class,
            description =
                    "Then moves diameters within this band, 0.01 to 5 mm, to where the curvature"
                            + " varies least, breaking no demand that is met.")
    private Double fair;

    @Option(
            names = "--write",
            description =
                    "Saves the change in the set's documents; the page says which files, and which"
                            + " pieces share them, before they are written.")
    private boolean write;

    @Option(
            names = "--nearest",
            description =
                    "With --write, saves what comes nearest where not every demand can be met;"
                            + " without it nothing is saved then.")
    private boolean nearest;

    @Option(
            names = "--json",
            description = "Answers in JSON for other programs, lengths in mm whatever the units.")
    private boolean json;

    AdjustCommand(Console console) {
        super(console);
    }

    @Override
    public Integer call() throws DocumentException, CatalogueException, OutputException {
        Wish wish = wish();
        LoadedSet loaded = load();
        Adjustment adjustment = Adjust.of(loaded.set(), loaded.materials(), wish);
        HandleSet adjusted = adjustment.in(loaded.set());
        Optional<Fairing> fairing =
                Optional.ofNullable(fair)
                        .map(mm -> Fairing.of(adjusted, loaded.materials(), wish, mm));
        HandleSet proposed = fairing.map(f -> f.in(adjusted)).orElse(adjusted);
        ExaminedSet before = examine(loaded);
        ExaminedSet after = examine(with(loaded, proposed));
        List<Proposal> proposals = new ArrayList<>(List.of(adjustment));
        fairing.ifPresent(proposals::add);
        AdjustFiles files = AdjustFiles.of(loaded, proposals);
        boolean writes = write && mayBeWritten(adjustment, files);
        if (json) {
            // The answer is one document, told once all is done.
            if (writes) {
                files.changes().forEach(change -> console.say("writing " + change.inWords()));
            }
            List<String> written = writes ? files.write() : List.of();
            console.print(
                    AdjustJson.of(
                            loaded.set().name(), adjustment, fairing, files.changes(), written));
        } else {
            AdjustPage page = new AdjustPage(units, console.ink());
            console.print(
                    page.of(
                            loaded.set().name(),
                            adjustment,
                            fairing,
                            before,
                            after,
                            files.changes(),
                            writes));
            if (writes) {
                console.print(AdjustPage.written(files.write(), console.ink()));
            }
        }
        return adjustment.isMet() ? exitCode(after) : ExitCode.STOPPED;
    }

    /** Whether there is something to write, and all is met or the maker takes the nearest. */
    private boolean mayBeWritten(Adjustment adjustment, AdjustFiles files) {
        if (files.changes().isEmpty()) {
            return false;
        }
        if (!adjustment.isMet() && !nearest) {
            console.say(
                    "nothing written: not every demand can be met; --nearest writes what comes"
                            + " nearest");
            return false;
        }
        return true;
    }

    private Wish wish() {
        Set<Need.Group> groups = EnumSet.allOf(Need.Group.class);
        if (demands != null) {
            groups.clear();
            demands.forEach(group -> group.ifPresent(groups::add));
            if (demands.contains(Optional.empty()) && !groups.isEmpty()) {
                throw usage("--demand none stands alone, or say what is demanded");
            }
            if (groups.isEmpty() && fair == null) {
                throw usage("--demand none leaves nothing to do: say --fair too");
            }
        }
        // What would be left out in silence would be missed.
        if (balance != null && !groups.contains(Need.Group.BALANCE)) {
            throw usage("--balance: balance is not among the demands; add it to --demand");
        }
        if (grip != null && !groups.contains(Need.Group.GRIP)) {
            throw usage("--grip: grip is not among the demands; add it to --demand");
        }
        Set<Need> needs = Need.of(groups);
        Set<Freedom> free = allowed == null ? Set.of() : EnumSet.copyOf(allowed);
        return new Wish(
                needs, free, each, Optional.ofNullable(balance), Optional.ofNullable(grip), reach);
    }

    private static LoadedSet with(LoadedSet loaded, HandleSet set) {
        return new LoadedSet(
                loaded.file(), set, loaded.references(), loaded.catalogues(), loaded.materials());
    }
}
