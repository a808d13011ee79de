package haftline.ui.app;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.edit.WorkshopEdits;
import haftline.findings.Gravity;
import haftline.measure.Units;
import haftline.set.TemplateSettings;
import haftline.store.DocumentException;
import haftline.store.SetFile;
import haftline.store.Starter;
import haftline.support.BenchPhotograph;
import haftline.ui.model.EditorModel;
import haftline.ui.model.FilesModel;
import haftline.ui.model.PhotoHand;
import haftline.ui.model.Preferences;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.beans.Observable;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ListView;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import javafx.util.Duration;

/**
 * Takes the pictures in docs/screenshots of the real window; started by docs/screenshots/take.sh,
 * which gives it a virtual screen. Arguments: folder, suffix of the names, and where only some are
 * wanted a pattern of their names.
 */
public final class Screenshots extends Application {
    private record Shot(String name, Runnable state) {}

    private EditorModel editor;
    private Workbench workbench;
    private Path folder;
    private String suffix;
    private BenchPhotograph shown;
    private double buttMm;

    /** Entry point; no Application itself. */
    public static final class Take {
        private Take() {}

        public static void main(String[] args) {
            Application.launch(Screenshots.class, args);
        }
    }

    @Override
    public void start(Stage stage) throws Exception {
        folder = Path.of(getParameters().getRaw().get(0));
        suffix = getParameters().getRaw().get(1);
        editor =
                new EditorModel(
                        OpenDocument.of(SetFile.read(Path.of("profiles/sets/tidewater.yaml"))));
        Path kept = Files.createTempDirectory("shots");
        Preferences preferences = new Preferences(kept.resolve("editor.properties"));
        preferences.guideDismissed(true);
        // A folder that says nothing of the machine.
        preferences.exportFolder(Files.createDirectories(Path.of("/tmp/drawings")));
        workbench =
                new Workbench(
                        editor,
                        preferences,
                        new FilesModel(editor, preferences, kept.resolve("unsaved")),
                        new WindowDialogs(stage),
                        where -> {});
        stage.initStyle(StageStyle.UNDECORATED);
        stage.setX(0);
        stage.setY(0);
        var screen = javafx.stage.Screen.getPrimary().getBounds();
        stage.setScene(new Scene(workbench, screen.getWidth(), screen.getHeight()));
        stage.show();
        String wanted =
                getParameters().getRaw().size() > 2 ? getParameters().getRaw().get(2) : ".*";
        List<Shot> all =
                List.of(
                        new Shot("board", () -> board("butter spreader", Units.MM, false)),
                        new Shot(
                                "board-inch-slate", () -> board("citrus zester", Units.INCH, true)),
                        new Shot("finding", this::finding),
                        new Shot("line-up", () -> lineUp(false)),
                        new Shot("line-up-slate", () -> lineUp(true)),
                        new Shot("line-up-strays", this::strays),
                        new Shot("sheet", this::sheet),
                        new Shot("templates", this::templates),
                        new Shot("templates-slate", this::routedTemplates),
                        new Shot("lathe-sheet", () -> paper("lathe", true)),
                        new Shot("instructions", () -> paper("instructions", false)),
                        new Shot("new-batch", () -> newBatch(Units.MM, false)),
                        new Shot("new-batch-inch-slate", () -> newBatch(Units.INCH, true)),
                        new Shot("production", () -> production(Units.MM, false)),
                        new Shot("production-inch-slate", () -> production(Units.INCH, true)),
                        new Shot("export", this::export),
                        new Shot("ghost", () -> ghost(false)),
                        new Shot("ghost-slate", () -> ghost(true)),
                        new Shot("comb-and-doubt", () -> combAndDoubt(false)),
                        new Shot("comb-and-doubt-inch-slate", () -> combAndDoubt(true)),
                        new Shot("take-off", this::takeOff),
                        new Shot("photograph", () -> photograph(Units.MM, false)),
                        new Shot("photograph-inch-slate", () -> photograph(Units.INCH, true)),
                        new Shot("photograph-points", this::photographPoints),
                        new Shot("first-run", this::firstRun),
                        new Shot("progress", this::progress));
        take(all.stream().filter(shot -> shot.name().matches(wanted)).toList(), 0);
    }

    private void board(String piece, Units units, boolean dark) {
        while (editor.status().value().undoName().isPresent()) {
            editor.undo();
        }
        workbench.showBoard();
        workbench.units(units);
        workbench.dark(dark);
        editor.choose(piece);
    }

    private void finding() {
        board("butter spreader", Units.MM, false);
        ListView<?> findings = (ListView<?>) part("#findings");
        var all = editor.worked().value().findings();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).gravity() != Gravity.NOTE && all.get(i).knownX().isPresent()) {
                findings.getSelectionModel().select(i);
                return;
            }
        }
    }

    private void lineUp(boolean dark) {
        board("shucker", Units.MM, dark);
        workbench.showLineUp();
        press("#show-differences", true);
    }

    private void strays() {
        lineUp(false);
        press("#show-strays", true);
    }

    private void sheet() {
        board("butter spreader", Units.MM, false);
        workbench.showSheet();
    }

    private void paper(String kind, boolean large) {
        board("shucker", Units.MM, false);
        workbench.showSheet();
        press("#paper-" + kind, true);
        press("#sheet-large", large);
    }

    /** A page is made when it is first asked for, and its parts when it is laid out. */
    private Node part(String id) {
        workbench.applyCss();
        workbench.layout();
        return workbench.lookup(id);
    }

    private void press(String id, boolean wanted) {
        ToggleButton button = (ToggleButton) part(id);
        if (button.isSelected() != wanted) {
            button.fire();
        }
    }

    private void newBatch(Units units, boolean dark) {
        board("butter spreader", units, dark);
        workbench.showBatch();
    }

    private void production(Units units, boolean dark) {
        board("butter spreader", units, dark);
        workbench.showProduction();
        TextField every = (TextField) part("#production-every");
        later(
                () -> {
                    every.setText("12");
                    every.fireEvent(new ActionEvent());
                });
    }

    /** On a copy, for the progress is kept beside the set. */
    private void progress() {
        try {
            editor.show(
                    OpenDocument.of(
                            DemoSet.read(DemoSet.copyTo(Files.createTempDirectory("shots")))));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        production(Units.MM, false);
        press("#production-progress", true);
        PauseTransition begin = new PauseTransition(Duration.millis(1300));
        begin.setOnFinished(
                e -> {
                    ((Button) part("#production-begin")).fire();
                    later(this::tick);
                });
        begin.play();
    }

    private void tick() {
        workbench.applyCss();
        workbench.layout();
        List<Button> heads =
                workbench.lookupAll(".progress-head .button").stream()
                        .map(Button.class::cast)
                        .toList();
        heads.get(0).fire();
        List<Button> ticks = workbench.lookupAll(".tick").stream().map(Button.class::cast).toList();
        for (int i = 0; i < 9; i++) {
            ticks.get(1).fire();
            ticks.get(i < 4 ? 2 : 8).fire();
        }
    }

    private static void later(Runnable what) {
        PauseTransition pause = new PauseTransition(Duration.millis(500));
        pause.setOnFinished(e -> what.run());
        pause.play();
    }

    private void templates() {
        board("butter spreader", Units.MM, false);
        workbench.showTemplates();
    }

    /** All on one large sheet, the first of the findings chosen. */
    private void routedTemplates() {
        board("butter spreader", Units.MM, true);
        editor.run(
                WorkshopEdits.templates(
                        "cut with router",
                        t ->
                                t.withCutting(
                                                new TemplateSettings.Cutting(
                                                        TemplateSettings.Tool.ROUTER,
                                                        0.15,
                                                        3.175,
                                                        false))
                                        .withSheet(new TemplateSettings.Sheet(600, 400, 6, 3, 3))));
        workbench.showTemplates();
        ListView<?> findings = (ListView<?>) part("#template-findings");
        findings.getItems()
                .addListener(
                        (Observable changed) ->
                                Platform.runLater(() -> findings.getSelectionModel().select(0)));
    }

    private void export() {
        board("butter spreader", Units.MM, false);
        workbench.showExport();
    }

    private void firstRun() {
        try {
            editor.show(OpenDocument.unsaved(SetFile.read(Starter.set())));
        } catch (DocumentException wrong) {
            throw new IllegalStateException(wrong);
        }
        workbench.aids().photographs().model().remove();
        workbench.aids().photographs().close();
        board("shucker", Units.MM, false);
        closeAdjust();
        workbench.showGuide();
    }

    /** Adjusted to be a little thicker in the hand and to balance further back. */
    private void ghost(boolean dark) {
        closeAdjust();
        board("butter spreader", Units.MM, dark);
        press("_Work out", "_Adjust and fair…");
        // What scrolls is found once it is laid out.
        workbench.applyCss();
        workbench.layout();
        ((TextField) part("#demand-grip-band")).setText("24 to 26 mm");
        ((Button) part("#adjust-work")).fire();
    }

    private void closeAdjust() {
        if (part("#adjust-close") instanceof Button close) {
            close.fire();
        }
    }

    private void combAndDoubt(boolean dark) {
        closeAdjust();
        board(dark ? "citrus zester" : "seafood fork", dark ? Units.INCH : Units.MM, dark);
        if (workbench.aids().overlay().value().comb().isEmpty()) {
            press("_Work out", "_Curvature comb");
            press("_Work out", "_Doubt");
        }
    }

    /** Readings of a handle of the set itself, as invented callipers with one slip would give. */
    private void takeOff() {
        press("_Work out", "_Curvature comb");
        press("_Work out", "_Doubt");
        board("citrus zester", Units.MM, false);
        var handle = editor.worked().value().figures().orElseThrow().handle();
        StringBuilder text = new StringBuilder("x (mm),diameter (mm)\n");
        SplittableRandom random = new SplittableRandom(7);
        for (double x = 0; x <= handle.buttX(); x++) {
            double slip = x == 30 ? -0.9 : 0;
            double read = 2 * handle.outline().rAfter(x) + 0.03 * random.nextGaussian() + slip;
            text.append(String.format(Locale.ROOT, "%.1f,%.2f%n", x, read));
        }
        try {
            workbench.aids().takeOff(Files.writeString(readings(), text.toString()));
        } catch (IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        }
    }

    /** An invented handle on a bench, drawn; traced above the axis, and below it to the swell. */
    private void photograph(Units units, boolean dark) {
        var hand = workbench.aids().photographs().model().hand();
        layPhotograph(
                units,
                dark,
                0.7,
                () -> {
                    setPoints();
                    hand.use(PhotoHand.Tool.TRACE);
                    trace(1, 0.4, buttMm - 0.4);
                    trace(-1, 0.4, 46);
                    part("#trace").requestFocus();
                });
    }

    private void photographPoints() {
        layPhotograph(
                Units.MM,
                false,
                0.9,
                () -> {
                    setPoints();
                    workbench.aids().photographs().model().hand().use(PhotoHand.Tool.POINTS);
                });
    }

    private void layPhotograph(Units units, boolean dark, double share, Runnable then) {
        closeAdjust();
        board("shucker", units, dark);
        var photographs = workbench.aids().photographs();
        photographs.model().share(share);
        var whole = editor.worked().value().figures().orElseThrow().handle().outline();
        board("butter spreader", units, dark);
        buttMm = whole.endX();
        shown = new BenchPhotograph(whole.part(0, buttMm), 16.5, 0.06, 5);
        workbench.zoom(false);
        Runnable[] watch = new Runnable[1];
        watch[0] =
                photographs
                        .model()
                        .isReading()
                        .watch(
                                isReading -> {
                                    if (!isReading) {
                                        watch[0].run();
                                        Platform.runLater(then);
                                    }
                                });
        try {
            Path folder = Files.createDirectories(Path.of("/tmp/drawings"));
            photographs.open(shown.write(folder.resolve("grandfathers-shucker.jpg")));
        } catch (IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        }
    }

    private void setPoints() {
        var photo = workbench.aids().photographs().model();
        for (double x : new double[] {0, buttMm}) {
            photo.hand().press(photo.state().value().lying().at(shown.spot(x, 0)), 0, false);
            photo.hand().release();
        }
        photo.apart(Double.toString(buttMm) + " mm");
    }

    private void trace(int side, double from, double to) {
        var photo = workbench.aids().photographs().model();
        for (double x = from; x <= to; x += 3.5) {
            photo.hand().press(photo.state().value().lying().at(shown.edge(x, side)), 0, false);
            photo.hand().release();
        }
    }

    private static Path readings() throws IOException {
        return Files.createDirectories(Path.of("/tmp/drawings")).resolve("old-zester.csv");
    }

    private void press(String menu, String entry) {
        MenuBar bar = (MenuBar) part(".menu-bar");
        for (Menu each : bar.getMenus()) {
            for (MenuItem item : each.getItems()) {
                if (each.getText().equals(menu) && entry.equals(item.getText())) {
                    if (item instanceof CheckMenuItem check) {
                        check.setSelected(!check.isSelected());
                    }
                    item.fire();
                }
            }
        }
    }

    private void take(List<Shot> shots, int at) {
        if (at == shots.size()) {
            Platform.exit();
            return;
        }
        shots.get(at).state().run();
        PauseTransition settle = new PauseTransition(Duration.millis(waitMs(shots.get(at).name())));
        settle.setOnFinished(
                e -> {
                    Path file = folder.resolve(shots.get(at).name() + suffix + ".png");
                    Optional<String> failure = picture(file);
                    failure.ifPresent(why -> System.err.println(file + ": " + why));
                    take(shots, at + 1);
                });
        settle.play();
    }

    /** Export and templates lay sheets out first, doubt makes many handles: the longest waits. */
    private static double waitMs(String shot) {
        boolean isWorkedOut = shot.matches("ghost.*|take-off|progress");
        boolean isLong = shot.matches("export|templates.*|photograph.*|comb.*");
        return isLong ? 12_000 : isWorkedOut ? 6000 : 2200;
    }

    private static Optional<String> picture(Path file) {
        try {
            Process process =
                    new ProcessBuilder("import", "-window", "root", file.toString())
                            .inheritIO()
                            .start();
            return process.waitFor() == 0 ? Optional.empty() : Optional.of("import failed");
        } catch (IOException failed) {
            return Optional.of(failed.getMessage());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.of("stopped");
        }
    }
}
