package haftline.cli;

import haftline.stock.CatalogueException;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.write.OutputException;
import haftline.write.OutputFolder;
import haftline.write.csv.FilledTables;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code haftline make}: figures, findings, and the files to work from. */
@Command(
        name = "make",
        sortOptions = false,
        description = {
            "Writes a set's drawings, tables, templates and sheets.",
            "Shows its figures and findings, too, as check does.",
            "Page, drawings, sheets, pictures, gauges and templates follow --units; tables and solids are in mm, as a table's heading says."
        })
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
            paramLabel = "WHAT",
            split = ",",
            converter = Only.Option.class,
            description = {
                "What to make, with commas between; everything by default.",
                "Kinds of file: svg, dxf, pdf, stl, csv, png, html, txt.",
                "Parts of the work: drawings, tables, solids, pictures, sheet, instructions, care, gauges (profile-gauge, slots,"
                        + " story-rod), copying, templates (gauges and copying).",
                "A part comes in the kinds that are named with it, or in all."
            })
    private List<Only> only;

    @Mixin private WorkshopOptions workshop;

    MakeCommand(Console console) {
        super(console);
    }

    @Override
    public Integer call() throws DocumentException, CatalogueException, OutputException {
        LoadedSet loaded = load();
        ExaminedSet set = examine(loaded);
        Exports exports =
                Exports.of(
                        set,
                        workshop.over(loaded.set().workshop()),
                        only == null ? Wanted.everything() : Wanted.of(only),
                        units);
        Map<String, Path> kept = FilledTables.keep(folder, exports.files());
        OutputFolder.at(folder).write(exports.files());
        console.page(set, units);
        console.print(exports.page(folder, console.ink()));
        kept.forEach(
                (name, copy) ->
                        console.say(name + " held measured diameters; they are kept as " + copy));
        exports.outOfDate(folder)
                .forEach((file, why) -> console.say(file + " is out of date: " + why));
        return exports.isStopped() ? ExitCode.STOPPED : exitCode(set);
    }
}
