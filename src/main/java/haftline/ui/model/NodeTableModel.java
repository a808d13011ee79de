package haftline.ui.model;

import haftline.edit.Difference;
import haftline.edit.Differences;
import haftline.edit.NodeEdits;
import haftline.edit.Outcome;
import haftline.edit.Worked;
import haftline.figures.Figures;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.Length;
import haftline.measure.NumberText;
import haftline.shape.Join;
import haftline.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The nodes by number, from shoulder to seat, every cell of them open to the keyboard. */
public final class NodeTableModel {
    private static final String DEGREES = "°";
    private static final String FREE_SLOPE = "free";

    private final EditorModel editor;
    private final Watched<List<Line>> lines;

    /** A column of the table. */
    public enum Column {
        /** The node's name. */
        NAME,
        /** Where it stands, from the shoulder. */
        PLACE,
        /** Its diameter. */
        DIAMETER,
        /** Smooth or crisp. */
        JOIN,
        /** The slope that is asked for there, or free. */
        SLOPE
    }

    /**
     * One node.
     *
     * @param name its name
     * @param place from the shoulder, fit to be typed again
     * @param diameter fit to be typed again
     * @param join smooth or crisp
     * @param slope degrees, or {@code free}
     * @param fixedBy why place and diameter do not move; empty for a free node
     * @param isPlaceOwn whether the piece has a place of its own for it
     * @param isDiameterOwn whether the piece has a diameter of its own for it
     */
    public record Line(
            String name,
            String place,
            String diameter,
            String join,
            String slope,
            String fixedBy,
            boolean isPlaceOwn,
            boolean isDiameterOwn) {
        /**
         * What a cell shows.
         *
         * @param column the column
         * @return its text
         */
        public String text(Column column) {
            return switch (column) {
                case NAME -> name;
                case PLACE -> place;
                case DIAMETER -> diameter;
                case JOIN -> join;
                case SLOPE -> slope;
            };
        }
    }

    /**
     * The nodes of an editor's piece.
     *
     * @param editor the editor
     */
    public NodeTableModel(EditorModel editor) {
        this.editor = editor;
        lines = new Watched<>(read());
        editor.draft().watch(draft -> lines.set(read()));
        editor.told().watch(drawn -> lines.set(read()));
        editor.units().watch(units -> lines.set(read()));
    }

    /**
     * The nodes, both ends included.
     *
     * @return watched; empty where no handle can be drawn
     */
    public Watched<List<Line>> lines() {
        return lines;
    }

    private Optional<Handle> handle() {
        return editor.drawn().value().flatMap(Worked::figures).map(Figures::handle);
    }

    private List<Line> read() {
        return handle().map(this::read).orElse(List.of());
    }

    private List<Line> read(Handle handle) {
        Choices own = editor.document().draft().piece(editor.piece().value()).choices();
        List<Line> read = new ArrayList<>();
        for (PlacedNode node : handle.nodes()) {
            read.add(
                    new Line(
                            node.name(),
                            Entry.text(node.x(), editor.units().value()),
                            Entry.text(2 * node.radiusMm(), editor.units().value()),
                            node.join().name().toLowerCase(Locale.ROOT),
                            slope(handle.brief().shape(), node.name()),
                            node.fixedBy(),
                            own.nodePlaces().containsKey(node.name()),
                            own.nodeDiametersMm().containsKey(node.name())));
        }
        return read;
    }

    private static String slope(Shape shape, String name) {
        OptionalDouble asked = NodeSlope.asked(shape, name);
        return asked.isPresent()
                ? NumberText.said(NumberText.upTo(asked.getAsDouble(), 2)) + DEGREES
                : FREE_SLOPE;
    }

    /**
     * Takes what was typed into a cell. What stands there already changes nothing; a wrong entry
     * leaves the last good value.
     *
     * @param node the node's name
     * @param column the column
     * @param text what was typed
     * @return done, or what was expected
     */
    public Outcome enter(String node, Column column, String text) {
        Optional<Line> line =
                lines.value().stream().filter(each -> each.name().equals(node)).findFirst();
        if (line.isEmpty()) {
            return new Outcome.Refused("no node \"" + node + "\" in the shape");
        }
        if (text.strip().equals(line.get().text(column))) {
            return Outcome.DONE;
        }
        if (!line.get().fixedBy().isEmpty() && column != Column.SLOPE) {
            return new Outcome.Refused("The " + node + " does not change: " + line.get().fixedBy());
        }
        Outcome outcome =
                enter(
                        node,
                        column,
                        text,
                        new NodeEdits(handle().orElseThrow(), editor.scope().value()));
        // The table says it where it was typed.
        editor.notice().set(Optional.empty());
        return outcome;
    }

    private Outcome enter(String node, Column column, String text, NodeEdits edits) {
        return switch (column) {
            case NAME -> editor.run(edits.rename(node, text.strip()));
            case PLACE -> length(text, mm -> edits.move(node, mm, OptionalDouble.empty()));
            case DIAMETER -> length(text, mm -> edits.move(node, OptionalDouble.empty(), mm));
            case JOIN -> join(edits, node, text);
            case SLOPE -> slope(edits, node, text);
        };
    }

    private interface Move {
        haftline.edit.Command by(OptionalDouble mm);
    }

    private Outcome length(String text, Move move) {
        OptionalDouble mm = Length.parse(text, editor.units().value());
        return mm.isEmpty() ? Inspected.expectedLength() : editor.runIfDrawable(move.by(mm));
    }

    private Outcome join(NodeEdits edits, String node, String text) {
        for (Join join : Join.values()) {
            if (join.name().equalsIgnoreCase(text.strip())) {
                return editor.runIfDrawable(edits.join(node, join));
            }
        }
        return new Outcome.Refused("Expected smooth or crisp");
    }

    private Outcome slope(NodeEdits edits, String node, String text) {
        boolean isFree = text.isBlank() || text.strip().equalsIgnoreCase(FREE_SLOPE);
        OptionalDouble degrees = isFree ? OptionalDouble.empty() : Entry.number(text, DEGREES);
        return isFree || degrees.isPresent()
                ? editor.runIfDrawable(edits.slope(node, degrees))
                : new Outcome.Refused("Expected degrees from the axis, such as 4.5, or free");
    }

    /**
     * Gives up what the piece has of its own for a node, place and diameter, as one step.
     *
     * @param node the node's name
     * @return done, or why not
     */
    public Outcome release(String node) {
        String piece = editor.piece().value();
        return editor.run(
                Differences.release(piece, Difference.placeOf(node))
                        .then(Differences.release(piece, Difference.diameterOf(node))));
    }
}
