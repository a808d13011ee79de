package haftline.ui.model;

import haftline.edit.KitSize;
import haftline.edit.KitSizes;
import haftline.edit.Outcome;
import haftline.edit.PartsEdits;
import haftline.edit.PieceEdits;
import haftline.measure.Measured;
import haftline.measure.NumberText;
import haftline.parts.Batch;
import haftline.parts.Kit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The measured parts, in the order of measuring. */
final class PartsRows {
    private static final String GRAMS = "g";

    private final Inspected at;

    PartsRows(Inspected at) {
        this.at = at;
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(
                Row.choice(
                        "batch",
                        () -> at.set().parts().batches().stream().map(Batch::id).toList(),
                        () -> Row.State.of(at.set().batch(), "", Row.Source.SET),
                        id -> at.editor().run(PartsEdits.useBatch(id))));
        rows.add(
                Row.choice(
                        "kit",
                        () -> at.set().batchInUse().kits().stream().map(Kit::name).toList(),
                        () -> Row.State.of(at.piece().kit(), "", Row.Source.PIECE),
                        name -> at.editor().run(PieceEdits.kit(at.piece().name(), name))));
        rows.add(
                Row.choice(
                        "kind of tang",
                        () -> KitSizes.TANG_KINDS,
                        () -> Row.State.of(kit().tang().kind(), "", Row.Source.MEASURED),
                        kind -> at.editor().run(PartsEdits.tangKind(at.piece().kit(), kind))));
        KitSizes.of(kit()).forEach(size -> rows.add(size(size)));
        rows.add(
                Row.tick(
                        "tang weighed with the blade",
                        () -> kit().blade().includesTang(),
                        yes -> at.editor().run(PartsEdits.weighedWithTang(at.piece().kit(), yes))));
        rows.add(
                Row.tick(
                        "end cap",
                        () -> kit().cap().isPresent(),
                        yes -> at.editor().run(PartsEdits.cap(at.piece().kit(), yes))));
        return rows;
    }

    private Kit kit() {
        return at.brief().kit();
    }

    private Row size(KitSize size) {
        return Row.field(
                size.words(),
                size.kind() == KitSize.Kind.READINGS ? Row.Kind.READINGS : Row.Kind.NUMBER,
                () -> {
                    Optional<Measured> now = size.read().apply(kit());
                    return Row.State.of(
                            now.map(measured -> text(size, measured)).orElse(""),
                            now.map(this::doubt).orElse("not measured"),
                            Row.Source.MEASURED);
                },
                text -> enter(size, text));
    }

    private String text(KitSize size, Measured measured) {
        return size.kind() == KitSize.Kind.OPTIONAL_MASS
                ? NumberText.upTo(measured.mean(), 2) + " " + GRAMS
                : Entry.text(measured, at.units());
    }

    /** How far the mean may be off, where there is anything to be said of it. */
    private String doubt(Measured measured) {
        if (measured.doubt() == 0) {
            return "";
        }
        String doubt = "± " + at.shown().length(measured.doubt(), 2);
        return measured.count() == 1
                ? doubt
                : "mean "
                        + at.shown().length(measured.mean(), 2)
                        + " "
                        + doubt
                        + " from "
                        + measured.count()
                        + " readings that differ by "
                        + at.shown().length(measured.spread(), 2);
    }

    private Outcome enter(KitSize size, String text) {
        Optional<Measured> measured;
        if (text.isBlank()) {
            if (!size.isOptional()) {
                return new Outcome.Refused("Expected a size: a kit cannot do without it");
            }
            measured = Optional.empty();
        } else if (size.kind() == KitSize.Kind.OPTIONAL_MASS) {
            OptionalDouble grams = Entry.number(text, GRAMS);
            if (grams.isEmpty()) {
                return new Outcome.Refused("Expected a mass, such as 48.6 g, or nothing");
            }
            measured = grams.stream().mapToObj(Measured::exactly).findFirst();
        } else {
            double resolution = size.read().apply(kit()).map(Measured::resolution).orElse(0.0);
            measured = Entry.readings(text, at.units(), resolution);
            boolean isMany = measured.filter(m -> m.count() > 1).isPresent();
            if (size.kind() != KitSize.Kind.READINGS && (measured.isEmpty() || isMany)) {
                return new Outcome.Refused("Expected one length, such as 12.5 mm or 31/64 in");
            }
            if (measured.isEmpty()) {
                return new Outcome.Refused(
                        "Expected a length or several readings, such as 12.0 12.1 11.95 mm");
            }
        }
        return at.editor().run(PartsEdits.reading(at.piece().kit(), size, measured));
    }
}
