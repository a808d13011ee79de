package haftline.bench;

import haftline.cli.Main;
import java.io.BufferedReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Window;

/**
 * How long the editor takes from the command to the window with the demonstration set in it. Starts
 * it anew several times; what it is given goes to the virtual machine. See
 * docs/performance-editor.md.
 */
public final class ColdStart {
    private static final int TIMES = 9;

    private ColdStart() {}

    /**
     * Measures and prints.
     *
     * @param args options of the virtual machine, such as {@code -XX:SharedArchiveFile=}
     * @throws Exception where a process cannot be started
     */
    public static void main(String[] args) throws Exception {
        double[] wall = new double[TIMES];
        double[] busy = new double[TIMES];
        Path home = Files.createTempDirectory("cold");
        for (int i = 0; i < TIMES; i++) {
            List<String> command = new ArrayList<>();
            command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
            command.addAll(List.of(args));
            command.add("-Dprism.order=sw");
            command.add("-Duser.home=" + home);
            command.addAll(
                    List.of("-cp", System.getProperty("java.class.path"), Child.class.getName()));
            ProcessBuilder builder =
                    new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD);
            builder.environment().put("XDG_CONFIG_HOME", home.toString());
            long start = System.nanoTime();
            Process child = builder.start();
            try (BufferedReader said = child.inputReader()) {
                busy[i] = Double.parseDouble(said.readLine());
                wall[i] = (System.nanoTime() - start) / 1e9;
            } finally {
                child.destroyForcibly().waitFor();
            }
        }
        Arrays.sort(wall);
        Arrays.sort(busy);
        System.out.printf(
                Locale.ROOT,
                "command to window: least %.2f s, median %.2f s; processor time %.2f s%n",
                wall[0],
                wall[TIMES / 2],
                busy[TIMES / 2]);
    }

    /** The editor, which says when its first frames were painted. */
    public static final class Child {
        private Child() {}

        /**
         * Opens the editor.
         *
         * @param args none
         */
        public static void main(String[] args) {
            Thread watch = new Thread(Child::watch, "watch");
            watch.setDaemon(true);
            watch.start();
            Main.main(new String[] {"edit"});
        }

        private static void watch() {
            while (true) {
                try {
                    Thread.sleep(10);
                    Platform.runLater(Child::look);
                } catch (IllegalStateException notYet) {
                    // The toolkit is on its way.
                } catch (InterruptedException stopped) {
                    return;
                }
            }
        }

        private static boolean seen;

        private static void look() {
            if (seen || Window.getWindows().isEmpty() || !Window.getWindows().get(0).isShowing()) {
                return;
            }
            seen = true;
            new AnimationTimer() {
                private int pulses;

                @Override
                public void handle(long now) {
                    // The first pulse paints; the second waits for it, so that it is over by now.
                    if (++pulses == 3) {
                        stop();
                        System.out.println(
                                ProcessHandle.current()
                                                .info()
                                                .totalCpuDuration()
                                                .orElseThrow()
                                                .toMillis()
                                        / 1e3);
                    }
                }
            }.start();
        }
    }
}
