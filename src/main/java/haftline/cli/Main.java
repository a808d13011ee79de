package haftline.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;

/** Entry point of the program. */
public final class Main {
    private Main() {}

    /**
     * Runs the command line and ends the virtual machine where the exit code is not 0.
     *
     * @param args the words typed after the program's name
     */
    public static void main(String[] args) {
        OptionalInt elsewhere = EditorStart.elsewhere(args);
        if (elsewhere.isPresent()) {
            if (elsewhere.getAsInt() != ExitCode.DONE) {
                System.exit(elsewhere.getAsInt());
            }
            return;
        }
        PlainOutput written = new PlainOutput(new FileOutputStream(FileDescriptor.out));
        PrintStream out = new PrintStream(written, false, StandardCharsets.UTF_8);
        PrintStream err =
                new PrintStream(
                        new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        Console console = new Console(out, err, Ink.ofTerminal());
        int code = EditorStart.isPlain(args) ? edit(args, console) : Verbs.run(args, console);
        out.flush();
        if (written.failure().isPresent()) {
            console.say("cannot write the answer: " + written.failure().get().getMessage());
            code = ExitCode.CANNOT_WRITE;
        }
        if (code != ExitCode.DONE) {
            System.exit(code);
        }
    }

    /**
     * Runs the command line.
     *
     * @param args the words typed after the program's name
     * @param out where data go
     * @param err where messages go
     * @return the exit code
     */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        return Verbs.run(args, new Console(out, err, Ink.PLAIN));
    }

    /** The editor opens sooner where no verb has to be looked for. */
    private static int edit(String[] args, Console console) {
        EditCommand command = new EditCommand(console);
        try {
            return args.length == 1
                    ? command.open(Optional.empty())
                    : command.open(Optional.of(Path.of(args[1])));
        } catch (InvalidPathException e) {
            return Verbs.run(args, console);
        } catch (Exception | StackOverflowError | OutOfMemoryError e) {
            return Failures.of(console).failed(e);
        }
    }
}
