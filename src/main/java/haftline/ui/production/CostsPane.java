package haftline.ui.production;

import haftline.ui.inspector.Fold;
import haftline.ui.inspector.RowView;
import haftline.ui.model.EditorModel;
import haftline.ui.model.KitPrices;
import haftline.ui.model.Preferences;
import haftline.ui.model.RackModel;
import haftline.ui.model.Row;
import haftline.ui.model.Setting;
import haftline.ui.model.WorkshopModel;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The saw, the sticks on the rack, and what time and goods cost. */
final class CostsPane extends ScrollPane {
    private final WorkshopModel model;
    private final List<Runnable> followers = new ArrayList<>();

    CostsPane(EditorModel editor, Preferences preferences) {
        model = WorkshopModel.ofCosts(editor);
        getStyleClass().add("inspector");
        setId("costs");
        VBox folds = new VBox();
        folds.getStyleClass().add("folds");
        folds.getChildren().add(words("costs-file", model::savedIn));
        for (WorkshopModel.Chapter chapter : model.chapters()) {
            List<Node> rows = new ArrayList<>();
            chapter.settings().forEach(setting -> rows.add(view(setting)));
            if (chapter.title().equals(WorkshopModel.SAW)) {
                rows.add(new RackTable(new RackModel(editor)));
            }
            folds.getChildren().add(new Fold(chapter.title(), true, preferences, () -> rows));
        }
        folds.getChildren()
                .addAll(
                        kits(new KitPrices(editor), preferences),
                        words("costs-rest", model::restIn));
        setContent(folds);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        model.workshop().watch(workshop -> follow());
        editor.opened().watch(opened -> follow());
        editor.status().watch(status -> follow());
        follow();
    }

    private Label words(String id, Supplier<String> sentence) {
        Label label = new Label();
        label.getStyleClass().addAll("small", "aside");
        label.setWrapText(true);
        label.setId(id);
        followers.add(() -> label.setText(sentence.get()));
        return label;
    }

    private RowView view(Setting setting) {
        RowView row = new RowView(setting.row());
        followers.add(
                () -> {
                    boolean applies = setting.applies().getAsBoolean();
                    row.setVisible(applies);
                    row.setManaged(applies);
                });
        return row;
    }

    private static Fold kits(KitPrices prices, Preferences preferences) {
        VBox rows = new VBox();
        rows.getStyleClass().add("fold-body");
        prices.rows().follow(now -> fill(rows, now));
        Fold fold = new Fold("Kits", true, preferences, () -> List.of(rows));
        prices.rows()
                .follow(
                        now -> {
                            fold.setVisible(!now.isEmpty());
                            fold.setManaged(!now.isEmpty());
                        });
        return fold;
    }

    private static void fill(VBox rows, List<Row> now) {
        rows.getChildren().setAll(now.stream().map(RowView::new).toList());
    }

    private void follow() {
        followers.forEach(Runnable::run);
    }
}
