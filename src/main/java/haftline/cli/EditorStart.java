package haftline.cli;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * How {@code edit} starts from the runnable jar: in a virtual machine of its own, whose classes
 * come out of an archive that was made after the first time. This one only waits for it. Nothing
 * here touches a class that is not needed, for all of it is before the window.
 *
 * <p>Where anything is unusual - an option or an environment variable for the virtual machine,
 * another machine than HotSpot, a class path of folders, a system that does not tell what was typed
 * - the editor opens in this virtual machine, as every other verb does.
 */
final class EditorStart {
    private static final String EDIT = "edit";
    private static final String JAR = "-jar";

    /** Set in the editor's own virtual machine. */
    private static final String WITHIN = "haftline.within";

    /** What a virtual machine answers that could not start; the editor has no such exit code. */
    private static final int NOT_STARTED = 1;

    /** What it answers that broke down (128 and SIGABRT or SIGSEGV), which an archive may cause. */
    private static final List<Integer> BROKEN = List.of(134, 139);

    /**
     * What is compiled twice as it starts is compiled for nothing: the second compiler waits until
     * a method has been run ten times as often as it usually would. What a drag runs comes to that
     * within seconds.
     */
    private static final String[] OPTIONS = {
        "-XX:+IgnoreUnrecognizedVMOptions",
        "-Xlog:disable",
        "-Xlog:all=error:stderr",
        "-XX:-UsePerfData",
        "-XX:+UseSerialGC",
        "-XX:Tier4InvocationThreshold=50000",
        "-XX:Tier4MinInvocationThreshold=6000",
        "-XX:Tier4CompileThreshold=150000",
        "-XX:Tier4BackEdgeThreshold=400000",
    };

    private static final String[] OPTION_VARIABLES = {
        "JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS", "_JAVA_OPTIONS"
    };

    private EditorStart() {}

    /** Whether no more was typed than the verb, or the verb and a file. */
    static boolean isPlain(String[] args) {
        return args.length >= 1
                && args.length <= 2
                && args[0].equals(EDIT)
                && (args.length == 1 || !args[1].isEmpty() && args[1].charAt(0) != '-');
    }

    /**
     * Opens the editor in a virtual machine of its own and waits until it is closed.
     *
     * @param args the words typed after the program's name
     * @return its exit code, or empty where it is to be opened in this one
     */
    static OptionalInt elsewhere(String[] args) {
        if (!isPlain(args)) {
            return OptionalInt.empty();
        }
        if (System.getProperty(WITHIN) != null) {
            endWithStarter();
            return OptionalInt.empty();
        }
        List<String> usual = usualCommand(args);
        if (usual.isEmpty()) {
            return OptionalInt.empty();
        }
        ClassArchive archive = ClassArchive.of(new File(usual.get(usual.indexOf(JAR) + 1)));
        try {
            int code = run(usual, archive);
            if (code == NOT_STARTED) {
                archive.forget();
                return OptionalInt.empty();
            }
            if (BROKEN.contains(code)) {
                archive.forget();
            }
            if (code == ExitCode.DONE) {
                archive.makeFromList(usual.get(0));
            }
            return OptionalInt.of(code);
        } catch (IOException notStarted) {
            return OptionalInt.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return OptionalInt.of(ExitCode.DONE);
        }
    }

    /** The command as it was typed, its jar in full; empty where anything about it is unusual. */
    private static List<String> usualCommand(String[] args) {
        for (String variable : OPTION_VARIABLES) {
            if (System.getenv(variable) != null) {
                return List.of();
            }
        }
        ProcessHandle.Info self = ProcessHandle.current().info();
        if (self.command().isEmpty()
                || self.arguments().isEmpty()
                || !System.getProperty("java.vm.name", "").contains("64-Bit Server VM")) {
            return List.of();
        }
        String[] typed = self.arguments().get();
        List<String> usual = new ArrayList<>();
        usual.add(self.command().get());
        int at = 0;
        while (at < typed.length && typed[at].startsWith("-D")) {
            usual.add(typed[at++]);
        }
        // What follows the jar must be what came in: the system may have cut it short.
        if (typed.length != at + 2 + args.length || !typed[at].equals(JAR)) {
            return List.of();
        }
        File jar = new File(typed[at + 1]).getAbsoluteFile();
        for (int i = 0; i < args.length; i++) {
            if (!typed[at + 2 + i].equals(args[i])) {
                return List.of();
            }
        }
        usual.add(JAR);
        usual.add(jar.getPath());
        for (String arg : args) {
            usual.add(arg);
        }
        return jar.isFile() ? usual : List.of();
    }

    private static int run(List<String> usual, ClassArchive archive)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(usual.get(0));
        for (String option : OPTIONS) {
            command.add(option);
        }
        command.addAll(archive.options());
        command.add("-D" + WITHIN + "=true");
        command.addAll(usual.subList(1, usual.size()));
        Process editor =
                new ProcessBuilder(command)
                        .inheritIO()
                        .redirectInput(ProcessBuilder.Redirect.PIPE)
                        .start();
        Thread ending = new Thread(new Ending(editor), "ending");
        Runtime.getRuntime().addShutdownHook(ending);
        return editor.waitFor();
    }

    /** Who ends the command ends the window; it is given the time to keep what is not saved. */
    private static final class Ending implements Runnable {
        private final Process editor;

        Ending(Process editor) {
            this.editor = editor;
        }

        @Override
        public void run() {
            editor.destroy();
            try {
                editor.waitFor();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** A window whose command was killed outright goes too: its input ends then. */
    private static void endWithStarter() {
        Thread watch = new Thread(new Watch(System.in), "starter");
        watch.setDaemon(true);
        watch.start();
    }

    private static final class Watch implements Runnable {
        private final InputStream starter;

        Watch(InputStream starter) {
            this.starter = starter;
        }

        @Override
        public void run() {
            try {
                while (starter.read() >= 0) {
                    // Nobody writes.
                }
            } catch (IOException gone) {
                // As good as its end.
            }
            System.exit(ExitCode.BUG);
        }
    }
}
