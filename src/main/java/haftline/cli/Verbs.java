package haftline.cli;

import picocli.CommandLine;
import picocli.CommandLine.Help;

/** All verbs, as the command line reads them. */
final class Verbs {
    private static final String HELP = "help";

    private Verbs() {}

    static int run(String[] args, Console console) {
        Failures failures = Failures.of(console);
        try {
            CommandLine line = commandLine(console, failures);
            return line.execute(asked(args, line));
        } catch (StackOverflowError | OutOfMemoryError e) {
            return failures.failed(e);
        }
    }

    /** {@code help} and {@code help VERB} ask for what {@code --help} shows. */
    private static String[] asked(String[] args, CommandLine line) {
        if (args.length == 0 || !args[0].equals(HELP)) {
            return args;
        }
        String word = args[args.length - 1];
        if (word.equals(HELP)) {
            return new String[] {"--help"};
        }
        // Beside --help a word that is no verb would be passed over.
        return line.getSubcommands().containsKey(word)
                ? new String[] {word, "--help"}
                : new String[] {word};
    }

    private static CommandLine commandLine(Console console, Failures failures) {
        CommandLine line =
                new CommandLine(new Haftline())
                        // In the order of the job, as the README tells it.
                        .addSubcommand(new CheckCommand(console))
                        .addSubcommand(new MakeCommand(console))
                        .addSubcommand(new EditCommand(console))
                        .addSubcommand(new CompareCommand(console))
                        .addSubcommand(new AdjustCommand(console))
                        .addSubcommand(new BatchCommand(console))
                        .addSubcommand(new CheckBackCommand(console))
                        .addSubcommand(new TakeoffCommand(console))
                        .setColorScheme(
                                Help.defaultColorScheme(
                                        console.ink() == Ink.ANSI ? Help.Ansi.ON : Help.Ansi.OFF))
                        .setOut(new java.io.PrintWriter(console.out(), true))
                        .setErr(new java.io.PrintWriter(console.err(), true))
                        // A file name may begin with @ or hold ${...}: it is a name, nothing else.
                        .setExpandAtFiles(false)
                        .setInterpolateVariables(false)
                        .setUsageHelpWidth(Paper.WIDTH)
                        .setParameterExceptionHandler((e, words) -> failures.usage(e))
                        .setExecutionExceptionHandler((e, command, parsed) -> failures.failed(e));
        NumberOption.readBy(line)
                .setExecutionStrategy(
                        parsed -> {
                            boolean asked = CommandLine.executeHelpRequest(parsed) != null;
                            if (!asked && !parsed.hasSubcommand()) {
                                line.usage(line.getErr());
                                return ExitCode.USAGE;
                            }
                            return asked
                                    ? ExitCode.DONE
                                    : new CommandLine.RunLast().execute(parsed);
                        });
        return line;
    }
}
