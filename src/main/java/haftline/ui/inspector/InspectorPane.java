package haftline.ui.inspector;

import haftline.ui.model.BoardModel;
import haftline.ui.model.InspectorModel;
import haftline.ui.model.InspectorModel.Section;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The piece at hand in figures: parts, stock and fit, length and balance, shape, bores. */
public final class InspectorPane extends ScrollPane {
    private final InspectorModel model;
    private final BoardModel board;
    private final VBox folds = new VBox();
    private final List<Runnable> stops = new ArrayList<>();

    /**
     * The inspector.
     *
     * @param model what it shows
     * @param board where a node is selected
     */
    public InspectorPane(InspectorModel model, BoardModel board) {
        this.model = model;
        this.board = board;
        getStyleClass().add("inspector");
        folds.getStyleClass().add("folds");
        setContent(folds);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        model.sections().follow(this::build);
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
        for (Section section : sections) {
            List<Node> rows = new ArrayList<>();
            for (var row : section.rows()) {
                RowView view = new RowView(row);
                stops.add(view::forget);
                rows.add(view);
            }
            if (section.step() == InspectorModel.Step.SHAPE) {
                NodeTable table = new NodeTable(model.nodes(), board);
                stops.add(table::forget);
                rows.add(table);
            }
            folds.getChildren().add(new Fold(section.step().words(), rows));
        }
    }
}
