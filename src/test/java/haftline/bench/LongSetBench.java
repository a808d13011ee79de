package haftline.bench;

import haftline.edit.DemoSet;
import haftline.edit.OpenDocument;
import haftline.ui.app.BenchWindow;
import haftline.ui.app.Workbench;
import haftline.ui.model.BoardModel;
import haftline.ui.model.EditorModel;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntConsumer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.event.ActionEvent;
import javafx.scene.Scene;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.stage.Stage;

/**
 * What a set of 500 pieces costs in the real window: opening, switching, scrolling, typing a
 * reading, dragging. Processor time of the window's thread, layout included, without the painting,
 * which does not depend on the set. See docs/performance-editor.md.
 */
public final class LongSetBench extends Application {
    private static final int PIECES = 500;
    private static final int WARM = 60;
    private static final int TIMES = 240;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private EditorModel editor;
    private Workbench window;

    /** Entry point; no Application itself. */
    public static final class Go {
        private Go() {}

        /**
         * Measures and prints.
         *
         * @param args none
         */
        public static void main(String[] args) {
            Application.launch(LongSetBench.class, args);
        }
    }

    @Override
    public void start(Stage stage) throws Exception {
        Path set = DemoSet.longCopyTo(Files.createTempDirectory("long"), PIECES);
        long start = THREADS.getCurrentThreadCpuTime();
        editor = new EditorModel(OpenDocument.of(DemoSet.read(set)));
        long read = THREADS.getCurrentThreadCpuTime();
        window = BenchWindow.of(editor);
        stage.setScene(new Scene(window, 1920, 1080));
        stage.show();
        lay();
        long shown = THREADS.getCurrentThreadCpuTime();
        System.out.printf(
                Locale.ROOT,
                "opening, cold: set %.0f ms, window %.0f ms%n",
                (read - start) / 1e6,
                (shown - read) / 1e6);
        Platform.runLater(this::work);
    }

    private void lay() {
        window.layout();
    }

    private void work() {
        measure("switch to the next piece", i -> window.nextPiece(1));
        measure("leap to another piece", i -> editor.choose("piece " + (100 + i * 37 % 300)));
        ListView<?> pieces = (ListView<?>) window.lookup("#pieces");
        measure("scroll by a screen", i -> pieces.scrollTo(i * 9 % PIECES));
        measure("type a reading", this::type);
        measure("undo and redo in turn", this::step);
        BoardModel board = new BoardModel(editor);
        board.viewpoint().resize(new haftline.ui.model.View.Area(0, 0, 1400, 500));
        measure("drag a node", i -> drag(board, i));
        board.release();
        window.showLineUp();
        measure("type a reading, line-up", this::type);
        Platform.exit();
    }

    private void type(int i) {
        TextField length = (TextField) window.lookup("#row-tang-length");
        length.setText((i % 2 == 0 ? "42" : "43") + " mm");
        length.fireEvent(new ActionEvent());
    }

    private void step(int i) {
        if (i % 2 == 0) {
            editor.undo();
        } else {
            editor.redo();
        }
    }

    private void drag(BoardModel board, int i) {
        var view = board.viewpoint().view().value();
        var swell = board.node("swell").orElseThrow();
        if (!board.isDragging()) {
            board.press(view.px(swell.x()), view.py(swell.radiusMm()), 20);
        }
        board.dragTo(view.px(swell.x()), view.py(swell.radiusMm() + 0.2 * Math.sin(i)), true);
    }

    private void measure(String what, IntConsumer once) {
        double[] ms = new double[TIMES];
        for (int i = -WARM; i < TIMES; i++) {
            long start = THREADS.getCurrentThreadCpuTime();
            once.accept(i + WARM);
            lay();
            if (i >= 0) {
                ms[i] = (THREADS.getCurrentThreadCpuTime() - start) / 1e6;
            }
        }
        Arrays.sort(ms);
        System.out.printf(
                Locale.ROOT,
                "%-26s median %5.2f ms, 95 %% %5.2f ms, most %5.2f ms%n",
                what,
                ms[TIMES / 2],
                ms[TIMES * 95 / 100],
                ms[TIMES - 1]);
    }
}
