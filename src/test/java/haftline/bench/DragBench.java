package haftline.bench;

import haftline.edit.OpenDocument;
import haftline.store.SetFile;
import haftline.ui.app.BenchWindow;
import haftline.ui.board.BoardPane;
import haftline.ui.model.BoardModel;
import haftline.ui.model.EditorModel;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import javafx.stage.StageStyle;

/**
 * What one frame of a drag costs on the software pipeline, in the real window at 1920 x 1080 with a
 * piece of six nodes. See docs/performance-editor.md.
 *
 * <p>First part: event, engine, layout and paint one after the other, the paint by a synchronous
 * snapshot of the board (more than a frame needs, since all of it is drawn). Second part: one drag
 * event a pulse, and how far apart the pulses come.
 */
public final class DragBench extends Application {
    private static final int WARM = 300;
    private static final int FRAMES = 600;

    /** A pulse later than this after the one before was missed, ms (60 a second). */
    private static final double MISSED_MS = 1.5 * 1000 / 60;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private BoardPane board;
    private Point2D node;

    /** Entry point; no Application itself. */
    public static final class Go {
        private Go() {}

        /**
         * Measures and prints.
         *
         * @param args none
         */
        public static void main(String[] args) {
            Application.launch(DragBench.class, args);
        }
    }

    @Override
    public void start(Stage stage) throws Exception {
        EditorModel editor =
                new EditorModel(
                        OpenDocument.of(SetFile.read(Path.of("profiles/sets/tidewater.yaml"))));
        BoardModel nodes = new BoardModel(editor);
        for (double x : new double[] {26, 40, 74, 80}) {
            nodes.addNodeAt(x);
        }
        var window = BenchWindow.of(editor);
        stage.initStyle(StageStyle.UNDECORATED);
        stage.setX(0);
        stage.setY(0);
        stage.setScene(new Scene(window, 1920, 1080));
        stage.show();
        board = (BoardPane) window.lookup("#board");
        Platform.runLater(this::work);
    }

    private void work() {
        node = board.pixelOf("swell").orElseThrow();
        fire(MouseEvent.MOUSE_PRESSED, 0);
        double[] handling = new double[FRAMES];
        double[] busy = new double[FRAMES];
        double[] painting = new double[FRAMES];
        WritableImage into = new WritableImage((int) board.getWidth(), (int) board.getHeight());
        SnapshotParameters plain = new SnapshotParameters();
        for (int i = -WARM; i < FRAMES; i++) {
            long startCpu = THREADS.getCurrentThreadCpuTime();
            long start = System.nanoTime();
            fire(MouseEvent.MOUSE_DRAGGED, i);
            board.getScene().getRoot().applyCss();
            board.getScene().getRoot().layout();
            long handled = System.nanoTime();
            long cpu = THREADS.getCurrentThreadCpuTime();
            board.snapshot(plain, into);
            long painted = System.nanoTime();
            if (i >= 0) {
                handling[i] = (handled - start) / 1e6;
                busy[i] = (cpu - startCpu) / 1e6;
                painting[i] = (painted - start) / 1e6;
            }
        }
        fire(MouseEvent.MOUSE_RELEASED, 0);
        print("event, engine, layout", handling);
        print("the same, processor time", busy);
        print("the same and paint", painting);
        pulses();
    }

    private void pulses() {
        double[] apart = new double[FRAMES];
        double[] eventToFrame = new double[FRAMES];
        fire(MouseEvent.MOUSE_PRESSED, 0);
        new AnimationTimer() {
            private int at = -WARM;
            private long before;
            private long fired;

            @Override
            public void handle(long now) {
                long clock = System.nanoTime();
                if (at >= 0 && at < FRAMES) {
                    apart[at] = (clock - before) / 1e6;
                    eventToFrame[at] = (clock - fired) / 1e6;
                }
                before = clock;
                if (++at == FRAMES) {
                    stop();
                    fire(MouseEvent.MOUSE_RELEASED, 0);
                    print("pulse to pulse", apart);
                    print("event to the next frame", eventToFrame);
                    long missed = Arrays.stream(apart).filter(ms -> ms > MISSED_MS).count();
                    System.out.printf(Locale.ROOT, "missed %d of %d pulses%n", missed, FRAMES);
                    Platform.exit();
                    return;
                }
                // The event comes between two pulses, as from a hand.
                Platform.runLater(
                        () -> {
                            fired = System.nanoTime();
                            fire(MouseEvent.MOUSE_DRAGGED, at);
                        });
            }
        }.start();
    }

    private void fire(javafx.event.EventType<MouseEvent> type, int i) {
        double dx = i == 0 ? 0 : 12 * Math.sin(i * 0.05);
        double dy = i == 0 ? 0 : 30 * Math.sin(i * 0.083);
        boolean down = type != MouseEvent.MOUSE_RELEASED;
        Point2D screen = board.localToScreen(node.getX() + dx, node.getY() + dy);
        Point2D scene = board.localToScene(node.getX() + dx, node.getY() + dy);
        board.fireEvent(
                new MouseEvent(
                        type,
                        scene.getX(),
                        scene.getY(),
                        screen.getX(),
                        screen.getY(),
                        MouseButton.PRIMARY,
                        1,
                        false,
                        false,
                        false,
                        true,
                        down,
                        false,
                        false,
                        true,
                        false,
                        false,
                        null));
    }

    private static void print(String what, double[] ms) {
        double[] sorted = ms.clone();
        Arrays.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%-26s median %5.2f ms, 95 %% %5.2f ms, 99 %% %5.2f ms%n",
                what,
                sorted[sorted.length / 2],
                sorted[sorted.length * 95 / 100],
                sorted[sorted.length * 99 / 100]);
    }
}
