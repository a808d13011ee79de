package haftline.cli;

import haftline.measure.Units;
import picocli.CommandLine.Option;

/** What the verbs that answer with a page have in common. */
abstract class PageVerb extends Verb {
    @Option(
            names = "--units",
            paramLabel = "mm|in",
            converter = UnitsOption.class,
            defaultValue = "mm",
            description = "Unit of the lengths on the page: mm (the default) or in.")
    Units units;

    PageVerb(Console console) {
        super(console);
    }
}
