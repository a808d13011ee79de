package haftline.cli;

import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.measure.Units;
import haftline.set.TemplateSettings;
import haftline.set.Workshop;
import haftline.write.FileName;
import haftline.write.OutputFile;
import haftline.write.PlannedFile;
import haftline.write.csv.FilledTables;
import haftline.write.dxf.DxfProfile;
import haftline.write.png.HandlePictures;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * The files that {@code make} writes for a set. Which there are is known at once, but for the
 * templates, which are laid out on their sheets first; what stands in them is worked out when it is
 * asked for.
 */
final class Exports {
    private static final int SET_PICTURE_PX = 1600;

    private final List<FileGroup> pieces = new ArrayList<>();
    private final List<String> undrawn = new ArrayList<>();
    private final ExaminedSet set;
    private final Wanted wanted;
    private final Units units;
    private final DrawingFiles writers;
    private final String templateName;
    private final Supplier<Templates.Sheets> sheets;
    private final Supplier<List<FileGroup>> templates = new Once<>(this::templateGroups);
    private final Supplier<List<OutputFile>> made = new Once<>(this::make);

    private Exports(
            ExaminedSet set,
            Workshop workshop,
            Wanted wanted,
            Units units,
            Supplier<Templates.Sheets> sheets) {
        this.set = set;
        this.units = units;
        this.wanted = wanted;
        this.writers = new DrawingFiles(workshop.files());
        this.templateName =
                FileName.from(set.name())
                        + "-"
                        + TemplateFiles.what(wanted.over(workshop.templates()))
                        + "-";
        this.sheets = sheets;
    }

    /** All files of a set that are wanted, for a workshop. */
    static Exports of(ExaminedSet set, Workshop workshop, Wanted wanted, Units units) {
        TemplateSettings settings = wanted.over(workshop.templates());
        return of(
                set, workshop, wanted, units, new Once<>(() -> Templates.of(set, settings, units)));
    }

    /** The same, the templates laid out elsewhere. */
    static Exports of(
            ExaminedSet set,
            Workshop workshop,
            Wanted wanted,
            Units units,
            Supplier<Templates.Sheets> sheets) {
        Exports exports = new Exports(set, workshop, wanted, units, sheets);
        List<String> names =
                FileName.unique(set.pieces().stream().map(ExaminedPiece::name).toList());
        for (int i = 0; i < names.size(); i++) {
            exports.add(names.get(i), set.pieces().get(i));
        }
        if (wanted.has(Part.PICTURES, Format.PNG)) {
            exports.addSetPicture();
        }
        exports.pieces.add(LineUpFiles.of(set, wanted, exports.writers, units));
        return exports;
    }

    private void add(String name, ExaminedPiece piece) {
        piece.figures()
                .ifPresentOrElse(
                        figures ->
                                pieces.add(
                                        PieceFiles.of(
                                                set, piece, figures, name, wanted, writers, units)),
                        () -> undrawn.add(name));
    }

    /** All pieces that can be made, at one scale: no picture bears "not to be made". */
    private void addSetPicture() {
        List<Handle> handles =
                set.pieces().stream()
                        .filter(piece -> !piece.isStopped())
                        .flatMap(piece -> piece.figures().stream())
                        .map(Figures::handle)
                        .toList();
        if (!handles.isEmpty()) {
            FileGroup group = new FileGroup();
            group.add(
                    PlannedFile.of(
                            FileName.from(set.name()) + "-set.png",
                            () ->
                                    HandlePictures.set(set.name(), handles, SET_PICTURE_PX, units)
                                            .content()),
                    this::leftOut);
            pieces.add(group);
        }
    }

    private String leftOut() {
        List<String> stopped =
                set.pieces().stream()
                        .filter(ExaminedPiece::isStopped)
                        .map(ExaminedPiece::name)
                        .toList();
        return stopped.isEmpty() ? "" : "without " + String.join(", ", stopped);
    }

    private List<FileGroup> templateGroups() {
        Set<Format> kinds = wanted.templateFormats();
        return kinds.isEmpty()
                ? List.of()
                : TemplateFiles.of(templateName, sheets.get(), kinds, writers);
    }

    /** What is known at once: everything but the templates. */
    List<PlannedFile> ofPieces() {
        return pieces.stream().flatMap(group -> group.files().stream()).toList();
    }

    /** Gauges and copying templates of all pieces, sheet by sheet; they are laid out first. */
    List<PlannedFile> ofTemplates() {
        return templates.get().stream().flatMap(group -> group.files().stream()).toList();
    }

    /** All files, made. */
    List<OutputFile> files() {
        return made.get();
    }

    private List<OutputFile> make() {
        List<PlannedFile> all = new ArrayList<>(ofPieces());
        all.addAll(ofTemplates());
        return all.stream().flatMap(file -> file.made().stream()).toList();
    }

    /** Whether some gauge or template is not to be made so. */
    boolean isStopped() {
        return !wanted.templateFormats().isEmpty() && sheets.get().isStopped();
    }

    /**
     * Files from before that whoever works by them is misled by, each with why: of pieces that
     * cannot be drawn now, and of sheets that are no longer needed.
     */
    Map<Path, String> outOfDate(Path folder) {
        Map<Path, String> old = new LinkedHashMap<>();
        for (String name : undrawn) {
            for (String ending : pieceEndings()) {
                Path file = folder.resolve(name + ending);
                if (Files.exists(file)) {
                    old.put(file, "this piece cannot be drawn now");
                }
            }
        }
        if (!wanted.templateFormats().isEmpty()) {
            for (Format format : Part.COPYING.formats()) {
                addSpareSheets(old, folder, writers.ending(format));
            }
        }
        return old;
    }

    private void addSpareSheets(Map<Path, String> old, Path folder, String ending) {
        int number = sheets.get().drawings().size() + 1;
        Path file = folder.resolve(templateName + number + ending);
        while (Files.exists(file)) {
            old.put(file, "there are fewer sheets now");
            number++;
            file = folder.resolve(templateName + number + ending);
        }
    }

    private static List<String> pieceEndings() {
        List<String> endings =
                new ArrayList<>(
                        List.of(
                                "-section.svg",
                                "-profile.svg",
                                "-section.pdf",
                                ".stl",
                                FilledTables.STATIONS,
                                ".png",
                                "-lathe.pdf",
                                "-lathe.html",
                                "-instructions.pdf",
                                "-instructions.html",
                                "-care.pdf",
                                "-care.html",
                                "-care.txt"));
        for (DxfProfile profile : DxfProfile.values()) {
            endings.add("-section" + profile.suffix() + ".dxf");
            endings.add("-profile" + profile.suffix() + ".dxf");
        }
        return endings;
    }

    /** What was written where, for the end of the page. */
    String page(Path folder, Ink ink) {
        Set<String> names =
                files().stream().map(OutputFile::name).collect(Collectors.toUnmodifiableSet());
        Paper paper = new Paper(ink, 0, 0);
        paper.blank();
        String count = names.size() + (names.size() == 1 ? " file" : " files");
        paper.words("Written", count + " into " + folder);
        List<FileGroup> groups = new ArrayList<>(pieces);
        groups.addAll(templates.get());
        groups.stream()
                .map(group -> group.line(names))
                .filter(line -> !line.isEmpty())
                .forEach(line -> paper.words("Written", line));
        undrawn.forEach(name -> paper.words("Written", name + ": nothing, for it cannot be drawn"));
        // Also where no sheet came of them: each card may be larger than the sheet.
        if (!wanted.templateFormats().isEmpty()) {
            sheets.get().remarks().forEach(remark -> paper.words("Templates", remark));
        }
        return paper.text();
    }
}
