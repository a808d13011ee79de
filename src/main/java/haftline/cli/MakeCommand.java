package haftline.cli;

import haftline.sheet.page.Field;
import haftline.stock.CatalogueException;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.write.OutputException;
import haftline.write.OutputFolder;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code haftline make}: figures, findings, and the files to work from. */
@Command(
        name = "make",
        sortOptions = false,
        description = "Shows the figures and findings of a set and writes its drawings and tables.")
final class MakeCommand extends SetCommand implements Callable<Integer> {
    @Option(
            names = "--to",
            paramLabel = "DIR",
            converter = PathOption.class,
            defaultValue = "exports",
            description = "Folder to write into, made if it is not there; exports by default.")
    private Path folder;

    @Option(
            names = "--only",
            paramLabel = "FORMAT",
            split = ",",
            converter = Format.Option.class,
            description =
                    "Formats to write, with commas between: svg, dxf, pdf, stl, csv, png, sheet,"
                            + " instructions, care; all by default.")
    private List<Format> only;

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            converter = PaperOption.class,
            defaultValue = "a4",
            description =
                    "Paper of sheets, instructions and care cards: a4 (the default) or letter.")
    private haftline.write.pdf.Paper paper;

    MakeCommand(Console console) {
        super(console);
    }

    @Override
    public Integer call() throws DocumentException, CatalogueException, OutputException {
        LoadedSet loaded = load();
        ExaminedSet set = examine(loaded);
        Set<Format> formats = only == null ? EnumSet.allOf(Format.class) : EnumSet.copyOf(only);
        Exports exports = Exports.of(set, formats, units, new Field(paper));
        OutputFolder.at(folder).write(exports.files());
        console.page(set, units);
        console.print(exports.page(folder, console.ink()));
        exports.outOfDate(folder)
                .forEach(
                        file ->
                                console.say(
                                        file + " is out of date: this piece cannot be drawn now"));
        return exitCode(set);
    }
}
