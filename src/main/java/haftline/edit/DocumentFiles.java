package haftline.edit;

import haftline.handle.Rules;
import haftline.parts.PartsList;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.set.Workshop;
import haftline.shape.Shape;
import haftline.store.LoadedSet;
import haftline.store.PartsFile;
import haftline.store.References;
import haftline.store.RulesFile;
import haftline.store.SaveException;
import haftline.store.SetFile;
import haftline.store.ShapeFile;
import haftline.store.WorkshopFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The files of an open document: which they are, what they last said, how they are saved. */
final class DocumentFiles {
    private final LoadedSet opened;
    private final Whereabouts where;
    private final KnownFiles known;
    private final Renames renames;
    private Optional<Path> own;

    private DocumentFiles(LoadedSet opened, Optional<Path> own) {
        this.opened = opened;
        this.own = own.map(Whereabouts::normal);
        renames = new Renames(opened.set().pieces());
        where = new Whereabouts(opened.file());
        this.own.ifPresent(where::settle);
        known = new KnownFiles(opened.materials().metals().keys());
    }

    /** The files of a set that was just read from them. */
    static DocumentFiles of(LoadedSet read) {
        DocumentFiles files = new DocumentFiles(read, Optional.of(read.file()));
        files.know(read.set(), read.references());
        return files;
    }

    /** The files of a set that was not read from them: unsaved or recovered. */
    static DocumentFiles unread(LoadedSet set, Optional<Path> own) {
        DocumentFiles files = new DocumentFiles(set, own);
        files.watch(set.references());
        return files;
    }

    private void watch(References references) {
        own.ifPresent(known::watch);
        where.all(references).forEach(known::watch);
    }

    private void know(HandleSet set, References references) {
        watch(references);
        where.resolve(references.parts()).ifPresent(path -> known.know(path, set.parts()));
        where.resolve(references.shape()).ifPresent(path -> known.know(path, set.shape()));
        references.rules().flatMap(where::resolve).ifPresent(path -> known.know(path, set.rules()));
        references
                .workshop()
                .flatMap(where::resolve)
                .ifPresent(path -> known.know(path, set.workshop()));
        for (Piece piece : set.pieces()) {
            Optional.ofNullable(references.pieceShapes().get(piece.name()))
                    .flatMap(where::resolve)
                    .ifPresent(path -> piece.shape().ifPresent(s -> known.know(path, s)));
        }
    }

    /** The set's own file, or empty where it was never saved. */
    Optional<Path> own() {
        return own;
    }

    /** The content with its catalogues; its references are seen from where it was opened. */
    LoadedSet loaded(Draft draft) {
        return new LoadedSet(
                opened.file(),
                draft.set(),
                where.current(draft.references()),
                opened.catalogues(),
                opened.materials());
    }

    /** Names that pieces were given since the last save. */
    Renames renames() {
        return renames;
    }

    List<Path> toSave(Draft draft) {
        return own.map(path -> SavePlan.of(draft, path, where, known).files()).orElse(List.of());
    }

    List<Path> changed() {
        return known.changed();
    }

    void acceptChanges() {
        known.acceptChanges();
    }

    /** Saves in the set's own file. */
    SaveResult save(Draft draft) {
        if (own.isEmpty()) {
            return new SaveResult.NeedsName();
        }
        List<Path> changed = known.changed();
        return changed.isEmpty() ? write(draft, own.get()) : new SaveResult.ChangedOnDisk(changed);
    }

    /** Saves in another file, which is the set's own from then on. */
    SaveResult saveAs(Draft draft, Path to) {
        boolean isOwn = own.filter(Whereabouts.normal(to)::equals).isPresent();
        return isOwn ? save(draft) : write(draft, to);
    }

    /** The files that a set names first, so that its own never names one that is not there. */
    private SaveResult write(Draft draft, Path to) {
        SavePlan plan = SavePlan.of(draft, to, where, known);
        List<Path> written = new ArrayList<>();
        try {
            for (Map.Entry<Path, PartsList> each : plan.parts().entrySet()) {
                PartsFile.save(each.getKey(), each.getValue());
                known.know(each.getKey(), each.getValue());
                written.add(each.getKey());
            }
            for (Map.Entry<Path, Shape> each : plan.shapes().entrySet()) {
                ShapeFile.save(each.getKey(), each.getValue());
                known.know(each.getKey(), each.getValue());
                written.add(each.getKey());
            }
            for (Map.Entry<Path, Rules> each : plan.rules().entrySet()) {
                RulesFile.save(each.getKey(), each.getValue());
                known.know(each.getKey(), each.getValue());
                written.add(each.getKey());
            }
            for (Map.Entry<Path, Workshop> each : plan.workshops().entrySet()) {
                WorkshopFile.save(each.getKey(), each.getValue());
                known.know(each.getKey(), each.getValue());
                written.add(each.getKey());
            }
            SetFile.save(
                    plan.file(),
                    new LoadedSet(
                            plan.file(),
                            draft.set(),
                            plan.references(),
                            opened.catalogues(),
                            opened.materials()));
            written.add(plan.file());
        } catch (SaveException failed) {
            return SaveResult.Failed.of(failed, List.copyOf(written));
        }
        plan.moves().forEach(where::move);
        where.settle(plan.file());
        boolean isOwn = own.equals(Optional.of(Whereabouts.normal(plan.file())));
        own = Optional.of(plan.file());
        known.watch(plan.file());
        if (isOwn) {
            return renames.settle(plan.file(), List.copyOf(written));
        }
        // Elsewhere no batch of it was begun.
        renames.forget();
        return new SaveResult.Saved(List.copyOf(written));
    }
}
