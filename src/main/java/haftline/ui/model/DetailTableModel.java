package haftline.ui.model;

import haftline.edit.NodeEdits;
import haftline.edit.Outcome;
import haftline.edit.Worked;
import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.measure.Length;
import haftline.shape.Detail;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The details by number, every figure of them open to the keyboard. */
public final class DetailTableModel {
    private final EditorModel editor;
    private final Watched<List<Line>> lines;

    /** A column of the table. */
    public enum Column {
        /** Its middle, from the shoulder. */
        PLACE,
        /** Its width along the axis. */
        WIDTH,
        /** How high it stands or how deep it is cut; no column of a flat's. */
        TALL
    }

    /**
     * One detail.
     *
     * @param kind the trade's word for it
     * @param place from the shoulder, fit to be typed again
     * @param width fit to be typed again
     * @param tall height or depth, negative for a sunk fillet; empty for a flat
     */
    public record Line(String kind, String place, String width, String tall) {
        /**
         * What a cell shows.
         *
         * @param column the column
         * @return its text
         */
        public String text(Column column) {
            return switch (column) {
                case PLACE -> place;
                case WIDTH -> width;
                case TALL -> tall;
            };
        }
    }

    DetailTableModel(EditorModel editor) {
        this.editor = editor;
        lines = new Watched<>(read());
        editor.told().watch(drawn -> lines.set(read()));
        editor.units().watch(units -> lines.set(read()));
    }

    /**
     * The details in the order in which they are laid over the body.
     *
     * @return watched
     */
    public Watched<List<Line>> lines() {
        return lines;
    }

    private List<Line> read() {
        List<Line> read = new ArrayList<>();
        editor.drawn()
                .value()
                .flatMap(Worked::figures)
                .map(Figures::handle)
                .ifPresent(
                        handle ->
                                handle.brief()
                                        .shape()
                                        .details()
                                        .forEach(detail -> read.add(line(handle, detail))));
        return read;
    }

    private Line line(Handle handle, Detail detail) {
        return new Line(
                detail.kind(),
                text(detail.place().x(handle.lengths().visibleWoodMm())),
                text(detail.widthMm()),
                tall(detail));
    }

    /** A fillet is raised or sunk; of the others everybody knows which way they go. */
    private String tall(Detail detail) {
        if (detail instanceof Detail.Flat) {
            return "";
        }
        return text(
                detail instanceof Detail.Fillet ? detail.proudMm() : Math.abs(detail.proudMm()));
    }

    private String text(double mm) {
        return Entry.text(mm, editor.units().value());
    }

    /**
     * Takes what was typed into a cell. What stands there already changes nothing; a wrong entry
     * leaves the last good value.
     *
     * @param index the detail's place in the list
     * @param column the column
     * @param text what was typed
     * @return done, or what was expected
     */
    public Outcome enter(int index, Column column, String text) {
        if (index >= lines.value().size()
                || text.strip().equals(lines.value().get(index).text(column))) {
            return Outcome.DONE;
        }
        OptionalDouble mm = Length.parse(text, editor.units().value());
        if (mm.isEmpty()) {
            return Inspected.expectedLength();
        }
        Handle handle =
                editor.drawn().value().flatMap(Worked::figures).map(Figures::handle).orElseThrow();
        HeldDetail held = HeldDetail.of(new NodeEdits(handle, editor.scope().value()), index);
        try {
            Outcome outcome =
                    editor.runIfDrawable(held.replace(changed(held, column, mm.getAsDouble())));
            // The table says it where it was typed.
            editor.notice().set(Optional.empty());
            return outcome;
        } catch (IllegalArgumentException outOfRange) {
            return Outcome.Refused.by(outOfRange).in(editor.units().value());
        }
    }

    private static Detail changed(HeldDetail held, Column column, double mm) {
        Detail was = held.detail();
        return switch (column) {
            case PLACE -> was.at(held.edits().like(was.place(), mm));
            case WIDTH -> was.sized(mm, was.proudMm());
            // What is cut in has a depth; nobody types its sign.
            case TALL ->
                    was.sized(
                            was.widthMm(),
                            was instanceof Detail.Fillet || was instanceof Detail.Bead
                                    ? mm
                                    : -Math.abs(mm));
        };
    }
}
