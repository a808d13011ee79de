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
        description = "Opens the editor on a set, or on the demonstration set.")
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
        Optional<Window> window = ServiceLoader.load(Window.class).findFirst();
        if (window.isEmpty()) {
            console.say("this build has no editor");
            return ExitCode.USAGE;
        }
        try {
            window.get().open(Optional.ofNullable(set));
        } catch (UnsupportedOperationException noDisplay) {
            console.say("the editor needs a display: " + noDisplay.getMessage());
            return ExitCode.USAGE;
        }
        return ExitCode.DONE;
    }
}
