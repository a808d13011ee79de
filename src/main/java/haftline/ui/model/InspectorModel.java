package haftline.ui.model;

import haftline.handle.Brief;
import java.util.List;
import java.util.Optional;

/**
 * The piece at hand in figures, in the order of the job: parts, stock and fit, length and balance,
 * shape, bores. Rows stay the same while their piece has the same make-up, so that a field that is
 * being typed in keeps the keyboard.
 */
public final class InspectorModel {
    private final Inspected at;
    private final NodeTableModel nodes;
    private final DetailTableModel details;
    private final Watched<List<Section>> sections;
    private MakeUp makeUp;

    /** A step of the job. */
    public enum Step {
        /** The measured parts. */
        PARTS("Parts, as measured"),
        /** Stock and fit. */
        STOCK_AND_FIT("Stock and fit"),
        /** Length and balance. */
        LENGTH_AND_BALANCE("Length and balance"),
        /** The shape. */
        SHAPE("Shape"),
        /** The bores. */
        BORES("Bores");

        private final String words;

        Step(String words) {
            this.words = words;
        }

        /**
         * What stands over the section.
         *
         * @return the title
         */
        public String words() {
            return words;
        }
    }

    /**
     * Rows that fold away together.
     *
     * @param title what stands over them; empty for rows that stand directly in their section
     * @param summary says in short what is folded away; a figure without a label
     * @param rows the rows
     */
    public record Group(String title, Row summary, List<Row> rows) {
        /** Copies the list. */
        public Group {
            rows = List.copyOf(rows);
        }

        static Group plain(List<Row> rows) {
            return new Group("", Row.figure("", () -> Row.State.figure("", "")), rows);
        }

        /**
         * What a row is called under the title: "ferrule bore" is the bore of the ferrule.
         *
         * @param row one of its rows
         * @return its label without the part that the title names
         */
        public String labelOf(Row row) {
            String part = title.substring(title.lastIndexOf(' ') + 1);
            String own = row.label().replaceFirst("^" + part + "('s)? ", "");
            return title.isEmpty() ? row.label() : own;
        }

        void refresh() {
            summary.refresh();
            rows.forEach(Row::refresh);
        }
    }

    /**
     * One step.
     *
     * @param step the step
     * @param groups its rows, in groups
     */
    public record Section(Step step, List<Group> groups) {
        /** Copies the list. */
        public Section {
            groups = List.copyOf(groups);
        }

        private static Section plain(Step step, List<Row> rows) {
            return new Section(step, List.of(Group.plain(rows)));
        }

        /**
         * All its rows.
         *
         * @return the rows of all groups
         */
        public List<Row> rows() {
            return groups.stream().flatMap(group -> group.rows().stream()).toList();
        }

        /**
         * Finds a row.
         *
         * @param label what it is of
         * @return the row, or empty
         */
        public Optional<Row> row(String label) {
            return rows().stream().filter(row -> row.label().equals(label)).findFirst();
        }
    }

    /** What decides which rows there are. */
    private record MakeUp(
            String piece, String tang, boolean hasFlare, boolean hasCap, boolean hasButtForm) {
        static MakeUp of(Brief brief) {
            return new MakeUp(
                    brief.name(),
                    brief.kit().tang().kind(),
                    brief.kit().tang().flare().isPresent(),
                    brief.kit().cap().isPresent(),
                    brief.shape().butt().lengthMm() > 0);
        }
    }

    /**
     * The inspector of an editor.
     *
     * @param editor the editor
     */
    public InspectorModel(EditorModel editor) {
        at = new Inspected(editor);
        nodes = new NodeTableModel(editor);
        details = new DetailTableModel(editor);
        makeUp = MakeUp.of(at.brief());
        sections = new Watched<>(made());
        editor.draft().watch(draft -> follow());
        editor.worked().watch(worked -> follow());
        editor.units().watch(units -> follow());
    }

    private List<Section> made() {
        return List.of(
                new Section(Step.PARTS, new PartsRows(at).groups()),
                Section.plain(Step.STOCK_AND_FIT, new StockRows(at).rows()),
                Section.plain(Step.LENGTH_AND_BALANCE, new LengthRows(at).rows()),
                Section.plain(Step.SHAPE, new ShapeRows(at).rows()),
                Section.plain(Step.BORES, new BoreRows(at).rows()));
    }

    private void follow() {
        MakeUp now = MakeUp.of(at.brief());
        if (now.equals(makeUp)) {
            sections.value().forEach(section -> section.groups().forEach(Group::refresh));
        } else {
            makeUp = now;
            sections.set(made());
        }
    }

    /**
     * The sections in the order of the job.
     *
     * @return watched; told only where there are other rows
     */
    public Watched<List<Section>> sections() {
        return sections;
    }

    /**
     * A section.
     *
     * @param step the step of the job
     * @return its rows
     */
    public Section section(Step step) {
        return sections.value().get(step.ordinal());
    }

    /**
     * The nodes by number.
     *
     * @return their table
     */
    public NodeTableModel nodes() {
        return nodes;
    }

    /**
     * The details by number.
     *
     * @return their table
     */
    public DetailTableModel details() {
        return details;
    }
}
