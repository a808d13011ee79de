package haftline.ui.model;

import haftline.edit.Outcome;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A list of the workshop's document, every figure of it open to the keyboard. Each entry is one
 * step that can be undone; a wrong one leaves the last good value.
 *
 * @param <C> the columns, from the left
 * @param <L> a line
 */
public abstract class TypedLines<C extends Enum<C>, L extends TypedLines.Line<C>> {
    private final EditorModel editor;
    private final WorkshopFields fields;
    private final Watched<List<L>> lines = new Watched<>(List.of());

    /**
     * What stands in one line.
     *
     * @param <C> the columns
     */
    public interface Line<C> {
        /**
         * What the line is of.
         *
         * @return its name
         */
        String title();

        /**
         * Whether a cell is there.
         *
         * @param column the column
         * @return false where nothing can be typed
         */
        default boolean has(C column) {
            return true;
        }

        /**
         * What a cell shows.
         *
         * @param column the column
         * @return its text, fit to be typed again
         */
        String text(C column);
    }

    TypedLines(EditorModel editor) {
        this.editor = editor;
        fields = new WorkshopFields(editor);
    }

    /** Reads the lines from now on; called once all that they are read by is there. */
    final void follow() {
        editor.draft().follow(draft -> lines.set(read()));
        editor.units().watch(units -> lines.set(read()));
    }

    final EditorModel editor() {
        return editor;
    }

    final WorkshopFields fields() {
        return fields;
    }

    /**
     * The lines in the order of the file.
     *
     * @return watched
     */
    public final Watched<List<L>> lines() {
        return lines;
    }

    /**
     * Whether the workshop says what the list goes by, so that something can stand in it.
     *
     * @return true where it does
     */
    public abstract boolean isThere();

    /**
     * Strikes a line off the list.
     *
     * @param index its place in the list
     * @return done, or why not
     */
    public abstract Outcome remove(int index);

    /**
     * Takes what was typed into a cell. What stands there already changes nothing.
     *
     * @param index the line's place in the list
     * @param column the column
     * @param text what was typed
     * @return done, or what was expected
     */
    public final Outcome enter(int index, C column, String text) {
        String entry = text.strip();
        return index >= lines.value().size() || entry.equals(lines.value().get(index).text(column))
                ? Outcome.DONE
                : take(index, column, entry);
    }

    abstract List<L> read();

    abstract Outcome take(int index, C column, String entry);

    /**
     * Why a name cannot be given, or nothing.
     *
     * @param entry the name
     * @param kind what it is of
     * @param example a name that could be
     * @param others the names that are given already
     * @return what was expected, or done
     */
    static Outcome named(String entry, String kind, String example, Stream<String> others) {
        if (entry.isBlank()) {
            return new Outcome.Refused("Expected a name, such as " + example);
        }
        String plain = entry.strip().toLowerCase(Locale.ROOT);
        return others.filter(other -> other.toLowerCase(Locale.ROOT).equals(plain))
                .findFirst()
                .<Outcome>map(
                        other ->
                                new Outcome.Refused(
                                        "Expected a name of its own: there is a "
                                                + kind
                                                + " "
                                                + other
                                                + " already"))
                .orElse(Outcome.DONE);
    }
}
