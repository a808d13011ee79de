package haftline.bench;

import haftline.edit.OpenDocument;
import haftline.store.SetFile;
import haftline.ui.app.BenchWindow;
import haftline.ui.board.BoardPane;
import haftline.ui.model.BoardModel;
import haftline.ui.model.EditorModel;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import javafx.stage.Stage;
import javafx.stage.StageStyle;

/**
 * What one frame of a drag costs on the software pipeline, in the real window at 1920 x 1080 with a
 * piece of six nodes. See docs/performance-editor.md.
 *
 * <p>First part: event and layout one after the other, without the screen. Second part: one drag
 * event a pulse, on the screen; the work of a frame is the processor time that the thread of the
 * window, the thread that paints and the threads of the pool have taken from one pulse to the next,
 * so that neither the wait for the pulse nor other programs count. Third part: pulses in which one
 * pixel of the window changes, for what the toolkit takes whatever is drawn: it copies the whole
 * window and hands it over.
 *
 * <p>"Event, engine, layout, paint" is the work of a frame without what the window's thread does
 * after event and pulse: it gives the painted frame to the display.
 */
public final class DragBench extends Application {
    /** Frames before those that count; more with {@code -Dwarm=}. */
    private static final int WARM = Integer.getInteger("warm", 900);

    private static final int FRAMES = 600;

    /** Frames of a drag of a second. */
    private static final int DRAG = 60;

    /** Frames in which one pixel changes, after some that let the board settle. */
    private static final int BARE = 300;

    private static final int SETTLING = 90;

    /** A pulse later than this after the one before was missed, ms (60 a second). */
    private static final double MISSED_MS = 1.5 * 1000 / 60;

    /** A copy that takes so many times the usual says that something else had the memory. */
    private static final double DISTURBED = 2;

    private static final int[] FROM = new int[1 << 18];
    private static final int[] TO = new int[FROM.length];

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Rectangle pixel = new Rectangle(1, 1);
    private BoardPane board;
    private Point2D node;
    private long inEvent;
    private long beforeLayout;
    private long inLayout;
    private long inPulse;

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
        pixel.setManaged(false);
        window.getChildren().add(pixel);
        Platform.runLater(this::work);
    }

    /** Processor time until now, ns. */
    private static final class Spent {
        private final long windowId = Thread.currentThread().getId();
        private long[] known = {};
        private long painterId;
        private long[] poolIds = {};
        private long window;
        private long painter;
        private long pool;

        /** Its own thread first: it pays for the rest, which is no work of a frame. */
        void read() {
            window = THREADS.getThreadCpuTime(windowId);
            long[] ids = THREADS.getAllThreadIds();
            if (ids.length != known.length) {
                know(ids);
            }
            painter = spent(painterId);
            pool = 0;
            for (long id : poolIds) {
                pool += spent(id);
            }
        }

        /** Leaves out what the window's thread has spent since it read. */
        void skip() {
            window = THREADS.getThreadCpuTime(windowId);
        }

        /** A thread that has ended has spent no more. */
        private static long spent(long id) {
            return Math.max(0, THREADS.getThreadCpuTime(id));
        }

        private void know(long[] ids) {
            known = ids;
            List<Long> workers = new ArrayList<>();
            for (ThreadInfo thread : THREADS.getThreadInfo(ids)) {
                if (thread != null && thread.getThreadName().startsWith("QuantumRenderer")) {
                    painterId = thread.getThreadId();
                } else if (thread != null && thread.getThreadName().startsWith("ForkJoinPool")) {
                    workers.add(thread.getThreadId());
                }
            }
            poolIds = workers.stream().mapToLong(Long::longValue).toArray();
        }
    }

    private void work() {
        double[] apart = new double[FRAMES];
        double[] eventToFrame = new double[FRAMES];
        double[] event = new double[FRAMES];
        double[] layout = new double[FRAMES];
        double[] window = new double[FRAMES];
        double[] painter = new double[FRAMES];
        double[] pool = new double[FRAMES];
        double[] all = new double[FRAMES];
        double[] made = new double[FRAMES];
        double[] copy = new double[FRAMES];
        node = board.pixelOf("swell").orElseThrow();
        fire(MouseEvent.MOUSE_PRESSED, 0);
        Spent spent = new Spent();
        spent.read();
        board.getScene()
                .addPreLayoutPulseListener(() -> beforeLayout = THREADS.getCurrentThreadCpuTime());
        board.getScene()
                .addPostLayoutPulseListener(
                        () -> inLayout = THREADS.getCurrentThreadCpuTime() - beforeLayout);
        new AnimationTimer() {
            private int at = -WARM;
            private long before;
            private long fired;

            @Override
            public void handle(long now) {
                long clock = System.nanoTime();
                long w = spent.window;
                long p = spent.painter;
                long f = spent.pool;
                spent.read();
                double copied = copied();
                if (at >= 0 && at < FRAMES) {
                    apart[at] = (clock - before) / 1e6;
                    eventToFrame[at] = (clock - fired) / 1e6;
                    event[at] = inEvent / 1e6;
                    layout[at] = inLayout / 1e6;
                    window[at] = (spent.window - w) / 1e6;
                    painter[at] = (spent.painter - p) / 1e6;
                    copy[at] = copied;
                    pool[at] = (spent.pool - f) / 1e6;
                    all[at] = window[at] + painter[at] + pool[at];
                    made[at] = (inPulse + inEvent) / 1e6 + painter[at] + pool[at];
                }
                before = clock;
                // The copy, and reading what was spent, are no work of a frame.
                spent.skip();
                if (++at == FRAMES) {
                    stop();
                    fire(MouseEvent.MOUSE_RELEASED, 0);
                    print("event and engine", event);
                    print("style, layout, picture", layout);
                    print("window's thread", window);
                    print("painting thread", painter);
                    print("pool", pool);
                    print("work of a frame", all);
                    print("event, engine, layout, paint", made);
                    printUndisturbed(all, copy);
                    print("pulse to pulse", apart);
                    print("event to the next frame", eventToFrame);
                    printMissed(apart);
                    bare(spent, all);
                    return;
                }
                // The event comes between two pulses, as from a hand.
                Platform.runLater(
                        () -> {
                            fired = System.nanoTime();
                            long start = THREADS.getCurrentThreadCpuTime();
                            // All of the pulse came before this, nothing of the handing over.
                            inPulse = start - spent.window;
                            fire(MouseEvent.MOUSE_DRAGGED, at);
                            inEvent = THREADS.getCurrentThreadCpuTime() - start;
                        });
            }
        }.start();
    }

    /** What a frame costs in which one pixel changes, and what one of a drag takes beyond that. */
    private void bare(Spent spent, double[] drag) {
        double[] all = new double[BARE];
        new AnimationTimer() {
            private int at = -SETTLING;

            @Override
            public void handle(long now) {
                long before = spent.window + spent.painter + spent.pool;
                spent.read();
                if (at >= 0) {
                    all[at] = (spent.window + spent.painter + spent.pool - before) / 1e6;
                }
                spent.skip();
                pixel.setFill(at % 2 == 0 ? Color.BLACK : Color.GRAY);
                if (++at == BARE) {
                    stop();
                    print("only one pixel changes", all);
                    Arrays.sort(all);
                    print(
                            "a drag beyond its median",
                            Arrays.stream(drag).map(ms -> ms - all[BARE / 2]).toArray());
                    Platform.exit();
                }
            }
        }.start();
    }

    private void fire(EventType<MouseEvent> type, int i) {
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
                        // Without the snap, so that every event changes the piece.
                        true,
                        false,
                        down,
                        false,
                        false,
                        true,
                        false,
                        false,
                        null));
    }

    /** How long a copy of 1 MB takes now, ms. */
    private static double copied() {
        long start = System.nanoTime();
        System.arraycopy(FROM, 0, TO, 0, FROM.length);
        return (System.nanoTime() - start) / 1e6;
    }

    /** The frames before and after which the memory was as quick as usual. */
    private static void printUndisturbed(double[] work, double[] copy) {
        double[] sorted = copy.clone();
        Arrays.sort(sorted);
        double most = DISTURBED * sorted[FRAMES / 2];
        double[] left =
                IntStream.range(1, FRAMES)
                        .filter(i -> copy[i - 1] < most && copy[i] < most)
                        .mapToDouble(i -> work[i])
                        .toArray();
        print("copy of 1 MB", copy);
        print("work of " + left.length + " undisturbed", left);
    }

    private static void printMissed(double[] apart) {
        long missed = Arrays.stream(apart).filter(ms -> ms > MISSED_MS).count();
        long whole =
                IntStream.range(0, FRAMES / DRAG)
                        .filter(
                                drag ->
                                        Arrays.stream(apart, drag * DRAG, (drag + 1) * DRAG)
                                                .noneMatch(ms -> ms > MISSED_MS))
                        .count();
        System.out.printf(Locale.ROOT, "missed %d of %d pulses%n", missed, FRAMES);
        System.out.printf(
                Locale.ROOT,
                "drags of a second without a missed pulse: %d of %d%n",
                whole,
                FRAMES / DRAG);
    }

    private static void print(String what, double[] ms) {
        double[] sorted = ms.clone();
        Arrays.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%-28s median %5.2f ms, 95 %% %5.2f ms, 99 %% %5.2f ms%n",
                what,
                sorted[sorted.length / 2],
                sorted[sorted.length * 95 / 100],
                sorted[sorted.length * 99 / 100]);
    }
}
