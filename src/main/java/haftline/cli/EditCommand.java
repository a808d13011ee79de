package haftline.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code haftline edit}: the editor. */
@Command(
        name = "edit",
        sortOptions = false,
        description = "Opens the drawing board on a set, or on the demonstration set.",
        footer = {
            "",
            "Exit: 0 closed, 2 bad usage, or there is no screen to open it on.",
            "What cannot be read is told in the window."
        })
final class EditCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "SET",
            arity = "0..1",
            converter = PathOption.class,
            description = "The set document.")
    private Path set;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this help.")
    private boolean help;

    private final Console console;

    EditCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        return open(Optional.ofNullable(set));
    }

    /** Opens the window on a set, or on the demonstration set, and waits until it is closed. */
    int open(Optional<Path> set) {
        Optional<Window> window = ServiceLoader.load(Window.class).findFirst();
        if (window.isEmpty()) {
            console.say("this build has no editor");
            return ExitCode.USAGE;
        }
        try {
            window.get().open(set);
        } catch (UnsupportedOperationException noDisplay) {
            console.say(
                    "the editor needs a screen and found none here; check, make and the other verbs"
                            + " do without");
            return ExitCode.USAGE;
        }
        return ExitCode.DONE;
    }
}
