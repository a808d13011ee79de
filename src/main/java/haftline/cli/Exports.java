package haftline.cli;

import haftline.curve.ArcFit;
import haftline.curve.Outline;
import haftline.drawing.Drawing;
import haftline.drawing.ProfileDrawing;
import haftline.drawing.SectionDrawing;
import haftline.drawing.TitleBlock;
import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.measure.Units;
import haftline.write.FileName;
import haftline.write.OutputFile;
import haftline.write.PlannedFile;
import haftline.write.dxf.DxfProfile;
import haftline.write.dxf.DxfWriter;
import haftline.write.pdf.PdfOptions;
import haftline.write.pdf.PdfWriter;
import haftline.write.png.HandlePictures;
import haftline.write.stl.MeshResult;
import haftline.write.stl.StlWriter;
import haftline.write.stl.TurnedMesh;
import haftline.write.svg.SvgOptions;
import haftline.write.svg.SvgWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * The files that {@code make} writes for a set. Which there are is known at once, but for the
 * templates, which are laid out on their sheets first; what stands in them is worked out when it is
 * asked for.
 */
final class Exports {
    /** The frame of a section stands this far from the paper's edge, mm. */
    private static final double SHEET_MARGIN_MM = 10;

    /**
     * How far the solid's facets may stand off the wood, mm: less than turning and sanding leave.
     */
    private static final double SOLID_TOLERANCE_MM = 0.05;

    private static final int PIECE_PICTURE_PX = 1200;
    private static final int SET_PICTURE_PX = 1600;

    private static final List<Format> TEMPLATE_FORMATS =
            List.of(Format.SVG, Format.DXF, Format.PDF);

    private final List<PlannedFile> planned = new ArrayList<>();
    private final List<Supplier<String>> lines = new ArrayList<>();
    private final List<String> undrawn = new ArrayList<>();
    private final ExaminedSet set;
    private final Set<Format> formats;
    private final Supplier<Templates.Sheets> sheets;
    private final Supplier<List<OutputFile>> made = new Once<>(this::make);

    private Exports(ExaminedSet set, Set<Format> formats, Supplier<Templates.Sheets> sheets) {
        this.set = set;
        this.formats = formats;
        this.sheets = sheets;
    }

    /** All files of a set in some formats. */
    static Exports of(ExaminedSet set, Set<Format> formats, Units units) {
        return of(set, formats, new Once<>(() -> Templates.of(set, units)));
    }

    /** All files of a set in some formats, its templates laid out elsewhere. */
    static Exports of(ExaminedSet set, Set<Format> formats, Supplier<Templates.Sheets> sheets) {
        Exports exports = new Exports(set, formats, sheets);
        List<String> names =
                FileName.unique(set.pieces().stream().map(ExaminedPiece::name).toList());
        for (int i = 0; i < names.size(); i++) {
            ExaminedPiece piece = set.pieces().get(i);
            if (piece.figures().isPresent()) {
                exports.add(names.get(i), piece, piece.figures().get());
            } else {
                exports.undrawn.add(names.get(i));
                String nothing = names.get(i) + ": nothing, for it cannot be drawn";
                exports.lines.add(() -> nothing);
            }
        }
        if (formats.contains(Format.PNG)) {
            exports.addSetPicture();
        }
        return exports;
    }

    /** What is known at once: everything but the templates. */
    List<PlannedFile> ofPieces() {
        return List.copyOf(planned);
    }

    /** All files, made. */
    List<OutputFile> files() {
        return made.get();
    }

    private List<OutputFile> make() {
        List<PlannedFile> all = new ArrayList<>(planned);
        all.addAll(ofTemplates());
        return all.stream().flatMap(file -> file.made().stream()).toList();
    }

    /** Files from before, of pieces that cannot be drawn now: whoever turns by them is misled. */
    List<Path> outOfDate(Path folder) {
        List<Path> old = new ArrayList<>();
        for (String name : undrawn) {
            for (String ending :
                    List.of(
                            "-section.svg",
                            "-section.dxf",
                            "-profile.svg",
                            "-profile.dxf",
                            "-section.pdf",
                            ".stl",
                            "-stations.csv",
                            ".png")) {
                Path file = folder.resolve(name + ending);
                if (Files.exists(file)) {
                    old.add(file);
                }
            }
        }
        return old;
    }

    private void add(String name, ExaminedPiece piece, Figures figures) {
        TitleBlock title = DrawingWords.of(set, piece, figures);
        String profile = piece.name() + ", half-profile";
        Outline outline = figures.handle().outline();
        Supplier<Drawing> section =
                () -> SectionDrawing.of(figures, title, UnaryOperator.identity());
        Supplier<Drawing> plain = () -> ProfileDrawing.of(profile, outline, piece.isStopped());
        if (formats.contains(Format.SVG)) {
            SvgOptions sheet =
                    new SvgOptions(SHEET_MARGIN_MM, SvgOptions.standard().toolPathWidthMm());
            plan(name + "-section.svg", section, drawing -> svg(drawing, sheet));
            plan(name + "-profile.svg", plain, drawing -> svg(drawing, SvgOptions.standard()));
        }
        if (formats.contains(Format.DXF)) {
            plan(
                    name + "-section.dxf",
                    () -> SectionDrawing.of(figures, title, Exports::inArcs),
                    Exports::dxf);
            plan(
                    name + "-profile.dxf",
                    () -> ProfileDrawing.of(profile, inArcs(outline), piece.isStopped()),
                    Exports::dxf);
        }
        if (formats.contains(Format.CSV)) {
            planned.add(
                    PlannedFile.of(
                            name + "-stations.csv",
                            () -> bytes(StationCsv.of(figures.handle(), piece.isStopped()))));
        }
        if (formats.contains(Format.PDF)) {
            plan(name + "-section.pdf", section, Exports::pdf);
        }
        List<String> written = new ArrayList<>();
        drawn(written, name + "-section", List.of(Format.SVG, Format.DXF, Format.PDF));
        drawn(written, name + "-profile", List.of(Format.SVG, Format.DXF));
        drawn(written, name + "-stations", List.of(Format.CSV));
        // Neither can bear the words "not to be made", so a stopped piece gets none.
        boolean solid = formats.contains(Format.STL) && !piece.isStopped();
        boolean picture = formats.contains(Format.PNG) && !piece.isStopped();
        Supplier<MeshResult> mesh =
                new Once<>(() -> TurnedMesh.of(figures.handle(), SOLID_TOLERANCE_MM));
        if (solid) {
            planned.add(
                    new PlannedFile(name + ".stl", Optional.of(plain), () -> solid(mesh.get())));
        }
        if (picture) {
            planned.add(
                    PlannedFile.of(
                            name + ".png",
                            () ->
                                    HandlePictures.one(figures.handle(), PIECE_PICTURE_PX)
                                            .content()));
        }
        lines.add(
                () -> {
                    List<String> all = new ArrayList<>(written);
                    if (solid) {
                        all.add(told(name, mesh.get()));
                    }
                    if (picture) {
                        all.add(name + ".png");
                    }
                    return String.join(", ", all);
                });
    }

    private static Optional<byte[]> solid(MeshResult result) {
        return result instanceof MeshResult.Made made
                ? Optional.of(StlWriter.binary(made.mesh()))
                : Optional.empty();
    }

    /** What was written of a solid, or why there is none. */
    private static String told(String name, MeshResult result) {
        return result instanceof MeshResult.Refused refused
                ? "no " + name + ".stl: " + refused.reason()
                : name + ".stl";
    }

    /** All pieces that can be drawn, at one scale. */
    private void addSetPicture() {
        List<Handle> handles =
                set.pieces().stream()
                        .flatMap(piece -> piece.figures().stream())
                        .map(Figures::handle)
                        .toList();
        if (!handles.isEmpty()) {
            String name = FileName.from(set.name()) + "-set.png";
            planned.add(
                    PlannedFile.of(
                            name,
                            () ->
                                    HandlePictures.set(set.name(), handles, SET_PICTURE_PX)
                                            .content()));
            lines.add(() -> name);
        }
    }

    /** Gauges and copying templates of all pieces, sheet by sheet; they are laid out first. */
    List<PlannedFile> ofTemplates() {
        List<PlannedFile> templates = new ArrayList<>();
        for (int i = 0; i < drawings().size(); i++) {
            Drawing sheet = drawings().get(i);
            String name = templateName(i);
            if (formats.contains(Format.SVG)) {
                templates.add(
                        PlannedFile.of(
                                name + ".svg",
                                () -> sheet,
                                () -> svg(sheet, SvgOptions.standard())));
            }
            if (formats.contains(Format.DXF)) {
                templates.add(PlannedFile.of(name + ".dxf", () -> sheet, () -> dxf(sheet)));
            }
            if (formats.contains(Format.PDF)) {
                templates.add(PlannedFile.of(name + ".pdf", () -> sheet, () -> pdf(sheet)));
            }
        }
        return templates;
    }

    private boolean hasTemplates() {
        return TEMPLATE_FORMATS.stream().anyMatch(formats::contains);
    }

    private List<Drawing> drawings() {
        return hasTemplates() ? sheets.get().drawings() : List.of();
    }

    private String templateName(int i) {
        return FileName.from(set.name()) + "-templates-" + (i + 1);
    }

    private void plan(String name, Supplier<Drawing> drawing, Function<Drawing, byte[]> content) {
        planned.add(PlannedFile.of(name, drawing, () -> content.apply(drawing.get())));
    }

    private static byte[] svg(Drawing drawing, SvgOptions options) {
        return bytes(new SvgWriter(options).write(drawing));
    }

    private static byte[] dxf(Drawing drawing) {
        return bytes(new DxfWriter(DxfProfile.CUTTING).write(drawing).text());
    }

    private static byte[] pdf(Drawing drawing) {
        return new PdfWriter(PdfOptions.on(haftline.write.pdf.Paper.A4)).write(drawing).content();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Such as {@code fork-section.svg .dxf}. */
    private void drawn(List<String> written, String name, List<Format> kinds) {
        List<String> endings = new ArrayList<>();
        for (Format format : kinds) {
            if (formats.contains(format)) {
                endings.add("." + format.id());
            }
        }
        if (!endings.isEmpty()) {
            written.add(name + String.join(" ", endings));
        }
    }

    /** A value that is worked out once, when it is first asked for. */
    static final class Once<T> implements Supplier<T> {
        private final Supplier<T> make;
        private T made;

        Once(Supplier<T> make) {
            this.make = make;
        }

        @Override
        public synchronized T get() {
            if (made == null) {
                made = make.get();
            }
            return made;
        }
    }

    private static Outline inArcs(Outline outline) {
        return ArcFit.of(outline, ArcFit.USUAL_TOLERANCE_MM).outline();
    }

    /** What was written where, for the end of the page. */
    String page(Path folder, Ink ink) {
        Paper paper = new Paper(ink, 0, 0);
        paper.blank();
        int size = files().size();
        paper.words("Written", size + (size == 1 ? " file" : " files") + " into " + folder);
        lines.forEach(line -> paper.words("Written", line.get()));
        List<String> written = new ArrayList<>();
        for (int i = 0; i < drawings().size(); i++) {
            drawn(written, templateName(i), TEMPLATE_FORMATS);
        }
        if (!written.isEmpty()) {
            paper.words("Written", String.join(", ", written));
        }
        if (hasTemplates()) {
            sheets.get().remarks().forEach(remark -> paper.words("Templates", remark));
        }
        return paper.text();
    }
}
