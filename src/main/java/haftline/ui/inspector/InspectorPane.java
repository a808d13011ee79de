package haftline.ui.inspector;

import haftline.ui.model.BoardModel;
import haftline.ui.model.InspectorModel;
import haftline.ui.model.InspectorModel.Group;
import haftline.ui.model.InspectorModel.Section;
import haftline.ui.model.Preferences;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The piece at hand in figures: parts, stock and fit, length and balance, shape, bores. */
public final class InspectorPane extends ScrollPane {
    /** Tang and ferrule decide bore and tenon; blade and cap are seldom looked at again. */
    private static final Set<String> OPEN_AT_FIRST = Set.of("tang", "ferrule");

    private final InspectorModel model;
    private final BoardModel board;
    private final Preferences preferences;
    private final VBox folds = new VBox();
    private final List<Runnable> stops = new ArrayList<>();
    private List<Section> waiting = List.of();
    private boolean isFramed;

    /**
     * The inspector.
     *
     * @param model what it shows
     * @param board where a node is selected
     * @param preferences what is folded away
     */
    public InspectorPane(InspectorModel model, BoardModel board, Preferences preferences) {
        this.model = model;
        this.board = board;
        this.preferences = preferences;
        getStyleClass().add("inspector");
        folds.getStyleClass().add("folds");
        setContent(folds);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        model.sections().follow(this::build);
        new FirstFrame(this::addWaiting).start();
    }

    /** Its size never goes by what it holds: the window is not laid out anew for a figure. */
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
    }

    private void build(List<Section> sections) {
        stops.forEach(Runnable::run);
        stops.clear();
        folds.getChildren().clear();
        int first = isFramed ? sections.size() : Math.min(1, sections.size());
        sections.subList(0, first).forEach(this::add);
        waiting = sections.subList(first, sections.size());
    }

    /** What lies below the first section is out of sight while the window opens. */
    private void addWaiting() {
        isFramed = true;
        waiting.forEach(this::add);
        waiting = List.of();
    }

    private void add(Section section) {
        folds.getChildren()
                .add(new Fold(section.step().words(), true, preferences, () -> rows(section)));
    }

    private List<Node> rows(Section section) {
        List<Node> rows = new ArrayList<>();
        for (Group group : section.groups()) {
            if (group.title().isEmpty()) {
                rows.addAll(rows(group));
            } else {
                Fold fold =
                        new Fold(
                                        group.title(),
                                        OPEN_AT_FIRST.contains(group.title()),
                                        preferences,
                                        () -> rows(group))
                                .saying(group.summary());
                stops.add(fold::forget);
                rows.add(fold);
            }
        }
        if (section.step() == InspectorModel.Step.SHAPE) {
            NodeTable nodes = new NodeTable(model.nodes(), board);
            DetailTable details = new DetailTable(model.details(), board);
            stops.add(nodes::forget);
            stops.add(details::forget);
            rows.add(nodes);
            rows.add(details);
        }
        return rows;
    }

    private List<Node> rows(Group group) {
        List<Node> rows = new ArrayList<>();
        for (var row : group.rows()) {
            RowView view = new RowView(row, group.labelOf(row));
            stops.add(view::forget);
            rows.add(view);
        }
        return rows;
    }
}
