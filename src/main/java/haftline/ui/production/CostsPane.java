package haftline.ui.production;

import haftline.ui.inspector.Fold;
import haftline.ui.inspector.RowView;
import haftline.ui.model.ConsumablesModel;
import haftline.ui.model.EditorModel;
import haftline.ui.model.KitPrices;
import haftline.ui.model.Preferences;
import haftline.ui.model.RackModel;
import haftline.ui.model.Row;
import haftline.ui.model.Setting;
import haftline.ui.model.StepsModel;
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
    private final Preferences preferences;
    private final List<Runnable> followers = new ArrayList<>();

    CostsPane(EditorModel editor, Preferences preferences) {
        this.preferences = preferences;
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
                        kits(new KitPrices(editor)),
                        list("Steps of the work", new StepsTable(new StepsModel(editor))),
                        list("Used up", new ConsumablesTable(new ConsumablesModel(editor))));
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

    /** A list that has no settings over it is gone with all that it stands under. */
    private Fold list(String title, Node table) {
        Fold fold = new Fold(title, true, preferences, () -> List.of(table));
        fold.visibleProperty().bind(table.visibleProperty());
        fold.managedProperty().bind(table.managedProperty());
        return fold;
    }

    private Fold kits(KitPrices prices) {
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
