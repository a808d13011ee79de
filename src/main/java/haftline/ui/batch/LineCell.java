package haftline.ui.batch;

import haftline.ui.model.BatchRows;
import haftline.ui.model.BatchRows.Line;
import haftline.ui.theme.WideCell;
import haftline.ui.words.Shown;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** One line of what changes: what it is, as it was, as it becomes, and the difference. */
final class LineCell extends WideCell<Line> {
    private static final double FIGURE_WIDTH = 78;
    private static final double GAP = 10;

    /** What a line is about gives way to what it says, px. */
    private static final double WHAT_WIDTH = 176;

    private static final double LEAST_WHAT = 100;
    private static final double LEAST_WORDS = 116;

    private final Label what = new Label();
    private final Label before = figure();
    private final Label after = figure();
    private final Label words = new Label();
    private final HBox row = new HBox(GAP);

    LineCell(ListView<Line> lines) {
        super(lines);
        row.setFillHeight(false);
        what.setWrapText(true);
        words.setWrapText(true);
        words.setMinWidth(0);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        row.setAlignment(Pos.TOP_LEFT);
    }

    private static Label figure() {
        Label label = new Label();
        label.setMinWidth(FIGURE_WIDTH);
        label.setPrefWidth(FIGURE_WIDTH);
        label.setAlignment(Pos.TOP_RIGHT);
        return label;
    }

    @Override
    protected void updateItem(Line line, boolean empty) {
        super.updateItem(line, empty);
        if (empty || line == null) {
            setText(null);
            setGraphic(null);
            return;
        }
        boolean isHeading = line.tone() == BatchRows.Tone.HEADING;
        what.setText(line.what());
        what.getStyleClass().setAll("label", isHeading ? "line-heading" : "line-what");
        boolean isAlone = isHeading && line.isSentence();
        double spare = width() - 2 * FIGURE_WIDTH - 3 * GAP - LEAST_WORDS;
        double whatWidth = Math.max(LEAST_WHAT, Math.min(WHAT_WIDTH, spare));
        what.setMinWidth(isAlone ? 0 : whatWidth);
        what.setPrefWidth(isAlone ? Region.USE_COMPUTED_SIZE : whatWidth);
        before.setText(line.before());
        after.setText(line.after());
        words.setText(Shown.unbroken(line.difference()));
        String tone = "tone-" + line.tone().name().toLowerCase(Locale.ROOT);
        for (Label label : List.of(after, words)) {
            label.getStyleClass().setAll("label", tone);
        }
        before.getStyleClass().setAll("label", isHeading ? tone : "tone-same");
        if (isAlone) {
            row.getChildren().setAll(what);
        } else if (line.isSentence()) {
            row.getChildren().setAll(what, words);
        } else {
            row.getChildren().setAll(what, before, after, words);
        }
        setAccessibleText(
                (line.what()
                                + (line.isSentence()
                                        ? ": "
                                        : ": " + line.before() + ", then " + line.after() + " ")
                                + line.difference())
                        .strip());
        show(row);
    }
}
