package haftline.ui.model;

import haftline.edit.KitEdits;
import haftline.edit.KitMakeUp;
import haftline.edit.KitNumber;
import haftline.edit.KitPart;
import haftline.edit.KitSize;
import haftline.edit.KitSizes;
import haftline.edit.Outcome;
import haftline.edit.PartsEdits;
import haftline.edit.PieceEdits;
import haftline.measure.Length;
import haftline.measure.Measured;
import haftline.measure.NumberText;
import haftline.parts.Batch;
import haftline.parts.EndCap;
import haftline.parts.Kit;
import haftline.stock.Metal;
import haftline.ui.model.InspectorModel.Group;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** The measured parts, in the order of measuring. */
final class PartsRows {
    private static final String GRAMS = "g";

    /** Chosen in the place of a kit, it makes one. */
    private static final String ANOTHER_KIT = "another, to be measured";

    private final Inspected at;

    PartsRows(Inspected at) {
        this.at = at;
    }

    List<Group> groups() {
        return List.of(
                Group.plain(List.of(batch(), kitRow(), kitName())),
                new Group(
                        "blade",
                        summary(
                                kit ->
                                        length(kit.blade().length().mean())
                                                + " long, "
                                                + length(kit.blade().widthMm())
                                                + " wide"),
                        blade()),
                new Group("tang", summary(this::tangInShort), tang()),
                new Group(
                        "ferrule",
                        summary(
                                kit ->
                                        "⌀ "
                                                + length(kit.ferrule().outside().mean())
                                                + ", bore "
                                                + length(kit.ferrule().bore().mean())),
                        ferrule()),
                new Group("end cap", summary(this::capInShort), cap()));
    }

    private Row summary(Function<Kit, String> text) {
        return Row.figure("", () -> Row.State.figure(text.apply(kit()), ""));
    }

    private String length(double mm) {
        return at.shown().length(mm);
    }

    private String tangInShort(Kit kit) {
        return kit.tang().kind()
                + ", "
                + length(kit.tang().envelopeMm(0))
                + " across, "
                + length(kit.tang().length().mean());
    }

    private String capInShort(Kit kit) {
        return kit.cap()
                .map(
                        cap ->
                                "⌀ "
                                        + length(cap.headDiameter().mean())
                                        + ", spigot "
                                        + length(cap.spigotDiameter().mean()))
                .orElse("none");
    }

    private Row batch() {
        return Row.choice(
                "batch in use",
                () -> at.set().parts().batches().stream().map(Batch::id).toList(),
                () -> Row.State.of(at.set().batch(), batchNote(), Row.Source.SET),
                id -> at.run(PartsEdits.useBatch(id)));
    }

    private String batchNote() {
        int count = at.set().parts().batches().size();
        String note = at.set().batchInUse().note();
        String all =
                count == 1
                        ? "the only one; for the whole set"
                        : "of " + count + "; for the whole set";
        return note.isBlank() ? all : all + ". " + note;
    }

    private Row kitRow() {
        return Row.choice(
                "kit",
                () ->
                        Stream.concat(
                                        at.set().batchInUse().kits().stream().map(Kit::name),
                                        Stream.of(ANOTHER_KIT))
                                .toList(),
                () -> Row.State.of(at.piece().kit(), "", Row.Source.PIECE),
                name ->
                        at.run(
                                name.equals(ANOTHER_KIT)
                                        ? KitEdits.another(at.piece().name())
                                        : PieceEdits.kit(at.piece().name(), name)));
    }

    private Row kitName() {
        return Row.field(
                "kit's name",
                Row.Kind.NAME,
                () ->
                        Row.State.of(
                                at.piece().kit(),
                                "other sets with these parts name it too",
                                Row.Source.MEASURED),
                name -> at.run(KitEdits.rename(at.piece().kit(), name)));
    }

    private List<Row> blade() {
        List<Row> rows = sizes(KitPart.BLADE);
        rows.add(metal("metal of blade and tang", KitPart.BLADE));
        rows.add(
                Row.tick(
                        "tang weighed with the blade",
                        () -> kit().blade().includesTang(),
                        yes -> at.run(PartsEdits.weighedWithTang(at.piece().kit(), yes))));
        return rows;
    }

    private List<Row> tang() {
        List<Row> rows = new ArrayList<>();
        rows.add(
                Row.choice(
                        "kind of tang",
                        () -> KitSizes.TANG_KINDS,
                        () -> Row.State.of(kit().tang().kind(), "", Row.Source.MEASURED),
                        kind -> at.run(PartsEdits.tangKind(at.piece().kit(), kind))));
        rows.addAll(sizes(KitPart.TANG));
        rows.add(
                Row.tick(
                        "flare at the root",
                        () -> kit().tang().flare().isPresent(),
                        yes -> at.run(PartsEdits.flare(at.piece().kit(), yes))));
        return rows;
    }

    private List<Row> ferrule() {
        List<Row> rows = sizes(KitPart.FERRULE);
        rows.add(metal("ferrule's metal", KitPart.FERRULE));
        return rows;
    }

    private List<Row> cap() {
        List<Row> rows = new ArrayList<>();
        rows.add(
                Row.tick(
                        "end cap",
                        () -> kit().cap().isPresent(),
                        yes -> at.run(PartsEdits.cap(at.piece().kit(), yes))));
        if (kit().cap().isPresent()) {
            rows.addAll(sizes(KitPart.CAP));
            rows.add(
                    Row.choice(
                            "cap's head",
                            () -> List.of(word(EndCap.Form.FLAT), word(EndCap.Form.DOMED)),
                            () -> Row.State.of(head(), "", Row.Source.MEASURED),
                            word -> at.run(PartsEdits.head(at.piece().kit(), form(word)))));
            rows.add(metal("cap's metal", KitPart.CAP));
        }
        return rows;
    }

    private String head() {
        return kit().cap().map(cap -> word(cap.form())).orElse("");
    }

    private static String word(EndCap.Form form) {
        return form.name().toLowerCase(Locale.ROOT);
    }

    private static EndCap.Form form(String word) {
        return EndCap.Form.valueOf(word.toUpperCase(Locale.ROOT));
    }

    private Row metal(String label, KitPart part) {
        List<Metal> all = at.editor().document().loaded().materials().metals().entries();
        return Row.choice(
                label,
                () -> all.stream().map(Metal::name).toList(),
                () ->
                        Row.State.of(
                                KitMakeUp.metal(kit(), part)
                                        .flatMap(key -> name(all, key))
                                        .orElse(""),
                                "",
                                Row.Source.MEASURED),
                name ->
                        all.stream()
                                .filter(metal -> metal.name().equals(name))
                                .findFirst()
                                .map(
                                        metal ->
                                                at.run(
                                                        PartsEdits.metal(
                                                                at.piece().kit(),
                                                                part,
                                                                metal.key())))
                                .orElseGet(
                                        () ->
                                                new Outcome.Refused(
                                                        "\""
                                                                + name
                                                                + "\" is not in the catalogue")));
    }

    private static Optional<String> name(List<Metal> metals, String key) {
        return metals.stream()
                .filter(metal -> metal.key().equals(key))
                .findFirst()
                .map(Metal::name);
    }

    private List<Row> sizes(KitPart part) {
        List<Row> rows = new ArrayList<>();
        KitSizes.of(kit(), part).forEach(size -> rows.add(size(size)));
        KitNumber.of(kit(), part).forEach(number -> rows.add(number(number)));
        return rows;
    }

    private Row number(KitNumber number) {
        return Row.field(
                number.words(),
                Row.Kind.NUMBER,
                () -> {
                    OptionalDouble now = number.read().apply(kit());
                    return Row.State.of(
                            now.isPresent() ? Entry.text(now.getAsDouble(), at.units()) : "",
                            now.isPresent() ? "" : number.ifOpen(),
                            Row.Source.MEASURED);
                },
                text -> {
                    OptionalDouble mm = Length.parse(text, at.units());
                    return text.isBlank() || mm.isPresent()
                            ? at.run(PartsEdits.number(at.piece().kit(), number, mm))
                            : new Outcome.Refused(
                                    "Expected one length, such as 12.5 mm or -3 mm, or nothing");
                });
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
        return inTurn(size, at.run(PartsEdits.reading(at.piece().kit(), size, measured)));
    }

    /** A size that is good but for another one, which is still the old part's. */
    private static Outcome inTurn(KitSize size, Outcome outcome) {
        return outcome.refusal()
                .filter(why -> !why.startsWith(size.words()))
                .map(why -> (Outcome) new Outcome.Refused(why + "; type that one first"))
                .orElse(outcome);
    }
}
