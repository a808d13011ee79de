package haftline.cli;

import haftline.edit.OpenProgress;
import haftline.edit.Outcome;
import haftline.edit.ProgressEdits;
import haftline.edit.SaveResult;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.set.production.Production;
import haftline.set.production.Progress;
import haftline.set.production.Quantities;
import haftline.stock.CatalogueException;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.ProgressFile;
import haftline.write.OutputException;
import haftline.write.OutputFile;
import haftline.write.OutputFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code haftline batch}: what a number of pieces takes and costs, and how far they are. */
@Command(
        name = "batch",
        sortOptions = false,
        description = {
            "Shows what a batch takes and costs; keeps how far it is.",
            "Blanks and cuts, drills, adhesive, parts, time, cost and price."
        })
final class BatchCommand extends SetCommand implements Callable<Integer> {
    private static final Set<Format> KINDS = EnumSet.of(Format.CSV, Format.PDF);

    @Option(
            names = "--quantity",
            paramLabel = "N|PIECE=N",
            description = {
                "How many of every piece, such as 6, or of some pieces, such as",
                "\"shucker=6, seafood fork=4\"; that of the batch under way by default."
            })
    private List<String> quantity;

    @Option(
            names = "--with-stopped",
            description = "Counts pieces that a finding stops, too; they are left out by default.")
    private boolean withStopped;

    @Option(names = "--start", description = "Begins the batch: keeps its progress beside the set.")
    private boolean start;

    @Option(
            names = "--again",
            description = "With --start: in place of a batch of which something is done.")
    private boolean again;

    @Option(
            names = "--done",
            paramLabel = "PIECE: STEP N",
            description = {
                "Ticks off how many of a piece have gone through a step, such as",
                "\"shucker: bore 4\"; without a number all of them; \"all: saw\" for all pieces."
            })
    private List<String> done;

    @Option(
            names = "--to",
            paramLabel = "DIR",
            converter = PathOption.class,
            description = "Writes the tables as CSV and PDF into this folder, too.")
    private Path folder;

    @Option(
            names = "--only",
            paramLabel = "FORMAT",
            split = ",",
            description = "With --to: csv or pdf alone.")
    private List<String> only;

    @Option(
            names = "--json",
            description = "Answers in JSON for other programs, lengths in mm whatever the units.")
    private boolean json;

    BatchCommand(Console console) {
        super(console);
    }

    @Override
    public Integer call() throws DocumentException, CatalogueException, OutputException {
        Set<Format> formats = formats();
        LoadedSet loaded = load();
        HandleSet set = loaded.set();
        Path file = ProgressFile.beside(loaded.file());
        Optional<OpenProgress> underWay =
                Files.exists(file) ? Optional.of(OpenProgress.read(file)) : Optional.empty();
        List<String> names = set.pieces().stream().map(Piece::name).toList();
        if (quantity == null && underWay.isPresent()) {
            ProgressFile.refuseStrangers(file, names);
        }
        Quantities quantities = quantities(names, underWay);
        Production production =
                Production.of(
                        set,
                        loaded.materials(),
                        quantities,
                        new Production.Terms(set.workshop().stockLengths(), set.workshop().rates()),
                        withStopped);
        Optional<OpenProgress> progress =
                start ? Optional.of(begun(file, underWay, production)) : underWay;
        Optional<Progress> before = progress.map(OpenProgress::progress);
        tick(progress);
        boolean isKeeping = progress.isPresent() && progress.get().isModified();
        if (isKeeping && !isKept(progress.get())) {
            return ExitCode.CANNOT_WRITE;
        }
        before.ifPresent(was -> sayOutOfOrder(was, progress.get().progress()));
        Optional<Progress> shown =
                progress.map(OpenProgress::progress)
                        .filter(under -> under.quantities().equals(quantities));
        if (progress.isPresent() && shown.isEmpty()) {
            console.say("a batch of other quantities is under way: " + file);
        }
        shown.filter(under -> !under.batch().equals(production.batch()))
                .ifPresent(
                        under ->
                                console.say(
                                        "the batch under way was begun with parts "
                                                + under.batch()
                                                + ", the set now uses "
                                                + production.batch()));
        Batch batch = new Batch(production, shown, set.workshop().files().paper());
        List<OutputFile> files = folder == null ? List.of() : batch.files(formats, units);
        if (folder != null) {
            OutputFolder.at(folder).write(files);
        }
        if (json) {
            console.print(BatchJson.of(batch));
        } else {
            console.print(BatchPage.of(batch, units, console.ink()));
            Optional<Path> kept = isKeeping ? Optional.of(file) : Optional.empty();
            console.print(Batch.written(Optional.ofNullable(folder), files, kept, console.ink()));
        }
        return production.isStopped() ? ExitCode.STOPPED : ExitCode.DONE;
    }

    private Set<Format> formats() {
        if (only == null) {
            return KINDS;
        }
        if (folder == null) {
            throw usage("--only says what --to writes: give --to DIR as well");
        }
        Set<Format> formats = EnumSet.noneOf(Format.class);
        for (String word : only) {
            formats.add(
                    KINDS.stream()
                            .filter(kind -> kind.id().equals(word.strip()))
                            .findFirst()
                            .orElseThrow(
                                    () ->
                                            usage(
                                                    "--only \""
                                                            + Paper.harmless(word)
                                                            + "\": expected csv or pdf")));
        }
        return formats;
    }

    private Quantities quantities(List<String> names, Optional<OpenProgress> kept) {
        if (done != null && kept.isEmpty() && !start) {
            throw usage("--done: no batch was begun; --start begins one");
        }
        if (quantity == null) {
            return kept.map(open -> open.progress().quantities())
                    .orElseThrow(() -> usage("say how many, such as --quantity 6"));
        }
        try {
            return Quantities.parse(quantity, names);
        } catch (IllegalArgumentException e) {
            throw usage("--quantity: " + e.getMessage());
        }
    }

    private OpenProgress begun(Path file, Optional<OpenProgress> kept, Production production) {
        if (kept.isPresent() && kept.get().progress().ticks() > 0 && !again) {
            throw usage(
                    file
                            + " keeps a batch of which something is done; --again begins anew and"
                            + " leaves that one under its name with a tilde behind");
        }
        if (production.orders().isEmpty()) {
            throw usage("--start: there is no piece to be made");
        }
        return OpenProgress.begun(file, Progress.of(production));
    }

    private void tick(Optional<OpenProgress> progress) {
        if (done == null) {
            return;
        }
        for (String text : done) {
            Outcome outcome;
            try {
                outcome =
                        progress.get().apply(ProgressEdits.parse(text, progress.get().progress()));
            } catch (IllegalArgumentException e) {
                outcome = new Outcome.Refused(e.getMessage());
            }
            outcome.refusal()
                    .ifPresent(
                            why -> {
                                throw usage("--done: " + why);
                            });
        }
    }

    /** Makers do work out of order; a slip of the finger looks the same. */
    private void sayOutOfOrder(Progress before, Progress after) {
        for (Progress.PieceProgress far : after.pieces()) {
            for (String step : after.steps()) {
                int count = after.done(far.piece(), step);
                List<String> behind = after.behind(far.piece(), step);
                if (count > before.done(far.piece(), step) && !behind.isEmpty()) {
                    console.say(
                            far.piece()
                                    + ": "
                                    + step
                                    + " is "
                                    + count
                                    + ", but before it "
                                    + behind.stream()
                                            .map(b -> b + " " + after.done(far.piece(), b))
                                            .collect(Collectors.joining(", "))
                                    + "; kept as said");
                }
            }
        }
    }

    private boolean isKept(OpenProgress progress) {
        SaveResult result = progress.save();
        if (result instanceof SaveResult.Failed failed) {
            console.say(failed.why());
        } else if (!result.isSaved()) {
            console.say(progress.file() + ": another program has just changed it; nothing is kept");
        }
        return result.isSaved();
    }
}
