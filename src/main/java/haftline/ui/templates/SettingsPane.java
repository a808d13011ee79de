package haftline.ui.templates;

import haftline.ui.inspector.Fold;
import haftline.ui.inspector.RowView;
import haftline.ui.model.EditorModel;
import haftline.ui.model.Preferences;
import haftline.ui.model.Setting;
import haftline.ui.model.Watched;
import haftline.ui.model.WorkshopModel;
import haftline.ui.theme.Palette;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The settings by which gauges and templates are made, each with a picture of what it means. */
final class SettingsPane extends ScrollPane {
    /** What is seldom changed twice. */
    private static final Set<String> FOLDED_AT_FIRST = Set.of("Lettering", "Files and paper");

    private static final double WIDTH = 280;

    private final WorkshopModel model;
    private final EditorModel editor;
    private final Watched<Palette> palette;
    private final List<Runnable> followers = new ArrayList<>();

    SettingsPane(
            WorkshopModel model,
            EditorModel editor,
            Preferences preferences,
            Watched<Palette> palette) {
        this.model = model;
        this.editor = editor;
        this.palette = palette;
        getStyleClass().add("inspector");
        setId("template-settings");
        VBox folds = new VBox();
        folds.getStyleClass().add("folds");
        Label saved = new Label();
        saved.getStyleClass().addAll("small", "aside");
        saved.setWrapText(true);
        saved.setId("workshop-file");
        folds.getChildren().add(saved);
        followers.add(() -> saved.setText(model.savedIn()));
        for (WorkshopModel.Chapter chapter : model.chapters()) {
            List<Node> rows = new ArrayList<>();
            for (Setting setting : chapter.settings()) {
                add(rows, setting);
            }
            folds.getChildren()
                    .add(
                            new Fold(
                                    chapter.title(),
                                    !FOLDED_AT_FIRST.contains(chapter.title()),
                                    preferences,
                                    () -> rows));
        }
        setContent(folds);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        model.workshop().watch(workshop -> follow());
        editor.opened().watch(opened -> follow());
        editor.units().watch(units -> follow());
        palette.watch(theme -> follow());
        follow();
    }

    private void add(List<Node> rows, Setting setting) {
        RowView row = new RowView(setting.row());
        rows.add(row);
        followers.add(() -> show(row, setting.applies().getAsBoolean()));
        setting.picture()
                .ifPresent(
                        picture -> {
                            Canvas canvas = new Canvas(WIDTH, Sketches.HEIGHT);
                            canvas.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
                            canvas.setId(
                                    "picture-" + picture.name().toLowerCase(java.util.Locale.ROOT));
                            // What a whole chapter means is seen before its first figure.
                            rows.add(
                                    picture == Setting.Picture.SHEET
                                            ? rows.indexOf(row)
                                            : rows.size(),
                                    canvas);
                            followers.add(
                                    () -> {
                                        show(canvas, setting.applies().getAsBoolean());
                                        paint(canvas, picture);
                                    });
                        });
    }

    private void paint(Canvas canvas, Setting.Picture picture) {
        Sketches.paint(
                canvas.getGraphicsContext2D(),
                WIDTH,
                picture,
                model.workshop().value(),
                palette.value(),
                editor.units().value());
    }

    private static void show(Node node, boolean applies) {
        node.setVisible(applies);
        node.setManaged(applies);
    }

    private void follow() {
        followers.forEach(Runnable::run);
    }
}
