package haftline.bench;

import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * How long a command takes from its start to the window with the set in it, or, where it opens
 * none, to its end. Several commands are started in turn, again and again, so that a machine that
 * is slow for a while is slow for all of them. What is on the screen is looked at from outside; no
 * command knows that it is measured. See docs/performance-editor.md.
 */
public final class ColdStart {
    private static final int TIMES = 9;

    /** An empty screen has one colour, a window without its content a few. */
    private static final int COLOURS = 25;

    private static final int[] ROWS = {300, 330, 420, 500, 540};

    private final Robot robot;
    private final List<String> words;
    private final Path home;
    private final double[] wall = new double[TIMES];
    private final double[] busy = new double[TIMES];

    private ColdStart(Robot robot, String command) throws IOException {
        this.robot = robot;
        words = List.of(command.split(" "));
        home = Files.createTempDirectory("cold");
    }

    /**
     * Measures and prints.
     *
     * @param args commands, each what follows the word java, such as {@code "-jar
     *     target/haftline.jar edit"}
     * @throws Exception where a process cannot be started
     */
    public static void main(String[] args) throws Exception {
        Robot robot = new Robot();
        List<ColdStart> all = new ArrayList<>();
        for (String command : args) {
            ColdStart one = new ColdStart(robot, command);
            one.first();
            all.add(one);
        }
        for (int i = 0; i < TIMES; i++) {
            for (ColdStart one : all) {
                one.measure(i);
            }
        }
        all.forEach(ColdStart::print);
        System.exit(0);
    }

    private Process start() throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-Duser.home=" + home);
        command.addAll(words);
        ProcessBuilder builder =
                new ProcessBuilder(command)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("XDG_CONFIG_HOME", home.resolve("config").toString());
        builder.environment().put("XDG_CACHE_HOME", home.resolve("cache").toString());
        return builder.start();
    }

    /** Brings the files into memory, closes the window by its key, and waits for what follows. */
    private void first() throws Exception {
        Process process = start();
        awaitWindow(process);
        Thread.sleep(1000);
        if (process.isAlive()) {
            robot.keyPress(KeyEvent.VK_CONTROL);
            robot.keyPress(KeyEvent.VK_Q);
            robot.keyRelease(KeyEvent.VK_Q);
            robot.keyRelease(KeyEvent.VK_CONTROL);
        }
        if (!process.waitFor(30, TimeUnit.SECONDS)) {
            throw new IllegalStateException("did not close: " + words);
        }
        Path kept = home.resolve("cache").resolve("haftline");
        while (isMaking(kept)) {
            Thread.sleep(200);
        }
        awaitEmptyScreen();
    }

    private static boolean isMaking(Path kept) throws IOException {
        if (!Files.isDirectory(kept)) {
            return false;
        }
        try (Stream<Path> files = Files.list(kept)) {
            return files.anyMatch(file -> file.toString().matches(".*\\.(list|part)"));
        }
    }

    private void measure(int round) throws Exception {
        long start = System.nanoTime();
        Process process = start();
        busy[round] = awaitWindow(process);
        wall[round] = (System.nanoTime() - start) / 1e9;
        process.destroy();
        process.waitFor();
        awaitEmptyScreen();
    }

    /** Processor time used until the window was there or the command at its end, s. */
    private double awaitWindow(Process process) throws InterruptedException {
        double used = 0;
        while (process.isAlive() && colours() < COLOURS) {
            used = Math.max(used, used(process));
            Thread.sleep(10);
        }
        return Math.max(used, used(process));
    }

    private static double used(Process process) {
        return Stream.concat(Stream.of(process.toHandle()), process.descendants())
                .mapToDouble(
                        each ->
                                each.info().totalCpuDuration().orElse(Duration.ZERO).toMillis()
                                        / 1e3)
                .sum();
    }

    private void awaitEmptyScreen() throws InterruptedException {
        while (colours() > 1) {
            Thread.sleep(50);
        }
    }

    private int colours() {
        Set<Integer> seen = new HashSet<>();
        for (int row : ROWS) {
            BufferedImage line = robot.createScreenCapture(new Rectangle(200, row, 1000, 1));
            for (int x = 0; x < line.getWidth(); x += 7) {
                seen.add(line.getRGB(x, 0));
            }
            if (seen.size() == 1) {
                break;
            }
        }
        return seen.size();
    }

    private void print() {
        Arrays.sort(wall);
        Arrays.sort(busy);
        System.out.printf(
                Locale.ROOT,
                "least %.2f s, median %.2f s; processor time %.2f s: java %s%n",
                wall[0],
                wall[TIMES / 2],
                busy[TIMES / 2],
                String.join(" ", words));
    }
}
