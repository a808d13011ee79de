package haftline.ui.model;

import haftline.edit.Choice;
import haftline.edit.Outcome;
import haftline.handle.ChoicesBuilder;
import haftline.measure.Length;
import haftline.shape.Butt;
import haftline.shape.Reference;
import haftline.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The shape apart from its nodes, which have a table of their own. */
final class ShapeRows {
    private static final List<String> BUTTS = List.of("square", "chamfered", "rounded", "domed");

    /** A form of the butt to begin with, mm; common practice, no source. */
    private static final double USUAL_BUTT_MM = 2;

    private final Inspected at;

    ShapeRows(Inspected at) {
        this.at = at;
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(
                Row.figure(
                        "shape",
                        () ->
                                Row.State.of(
                                        shape().name(),
                                        at.piece().shape().isPresent()
                                                ? "this piece's own"
                                                : "shared by the set",
                                        at.piece().shape().isPresent()
                                                ? Row.Source.PIECE
                                                : Row.Source.SET)));
        rows.add(reference("swell", Choice.SWELL, Reference.SWELL, ChoicesBuilder::swellMm));
        if (at.brief().kit().cap().isEmpty()) {
            rows.add(
                    reference(
                            "butt's diameter",
                            Choice.BUTT,
                            Reference.SEAT,
                            ChoicesBuilder::buttMm));
        }
        rows.add(
                Row.choice(
                        "form of the butt",
                        () -> BUTTS,
                        () -> Row.State.of(word(butt()), "", shapeSource()),
                        word ->
                                at.runIfDrawable(
                                        at.shapeEdits().butt(butt(word, lengthToBegin())))));
        if (butt().lengthMm() > 0) {
            rows.add(
                    length(
                            "butt form's length",
                            () -> butt().lengthMm(),
                            mm -> at.shapeEdits().butt(butt(word(butt()), mm))));
        }
        rows.add(
                length(
                        "shadow line at the ferrule",
                        () -> shape().shadowLineMm(),
                        mm -> at.shapeEdits().shadowLine(mm)));
        return rows;
    }

    private Shape shape() {
        return at.brief().shape();
    }

    private Row.Source shapeSource() {
        return at.piece().shape().isPresent() ? Row.Source.PIECE : Row.Source.SET;
    }

    private Butt butt() {
        return shape().butt();
    }

    private double lengthToBegin() {
        return butt().lengthMm() > 0 ? butt().lengthMm() : USUAL_BUTT_MM;
    }

    private static String word(Butt butt) {
        if (butt instanceof Butt.Chamfered) {
            return "chamfered";
        }
        if (butt instanceof Butt.Rounded) {
            return "rounded";
        }
        return butt instanceof Butt.Domed ? "domed" : "square";
    }

    private static Butt butt(String word, double lengthMm) {
        return switch (word) {
            case "chamfered" -> new Butt.Chamfered(lengthMm);
            case "rounded" -> new Butt.Rounded(lengthMm);
            case "domed" -> new Butt.Domed(lengthMm);
            default -> new Butt.Square();
        };
    }

    /** A diameter that nodes are multiples of: the greatest may stand elsewhere. */
    private Row reference(
            String label,
            Choice choice,
            Reference reference,
            java.util.function.BiFunction<ChoicesBuilder, Double, ChoicesBuilder> set) {
        return at.length(
                label,
                choice,
                () ->
                        Row.State.of(
                                Entry.text(at.brief().referenceMm(reference), at.units()),
                                "",
                                at.source(choice)),
                set);
    }

    private interface Edit {
        haftline.edit.Command to(double mm);
    }

    private Row length(String label, java.util.function.DoubleSupplier now, Edit edit) {
        return Row.field(
                label,
                Row.Kind.NUMBER,
                () -> Row.State.of(Entry.text(now.getAsDouble(), at.units()), "", shapeSource()),
                text -> {
                    OptionalDouble mm = Length.parse(text, at.units());
                    if (mm.isEmpty()) {
                        return Inspected.expectedLength();
                    }
                    try {
                        return at.runIfDrawable(edit.to(mm.getAsDouble()));
                    } catch (IllegalArgumentException outOfRange) {
                        return Outcome.Refused.by(outOfRange).in(at.units());
                    }
                });
    }
}
