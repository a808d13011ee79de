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
import haftline.set.TemplateSettings;
import haftline.set.Workshop;
import haftline.write.FileName;
import haftline.write.OutputFile;
import haftline.write.dxf.DxfFile;
import haftline.write.dxf.DxfProfile;
import haftline.write.dxf.DxfWriter;
import haftline.write.pdf.PdfFile;
import haftline.write.pdf.PdfOptions;
import haftline.write.pdf.PdfWriter;
import haftline.write.png.HandlePictures;
import haftline.write.stl.MeshResult;
import haftline.write.stl.StlWriter;
import haftline.write.stl.TurnedMesh;
import haftline.write.svg.SvgOptions;
import haftline.write.svg.SvgWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** The files that {@code make} writes for a set, in memory until all of them are ready. */
final class Exports {
    /** The frame of a section stands this far from the paper's edge, mm. */
    private static final double SHEET_MARGIN_MM = 10;

    /**
     * How far the solid's facets may stand off the wood, mm: less than turning and sanding leave.
     */
    private static final double SOLID_TOLERANCE_MM = 0.05;

    private static final int PIECE_PICTURE_PX = 1200;
    private static final int SET_PICTURE_PX = 1600;

    private final List<OutputFile> files = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();
    private final List<String> undrawn = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final ExaminedSet set;
    private final Workshop workshop;
    private final DxfProfile dxf;
    private final Wanted wanted;

    /** Beginning of the names of template sheets, and how many there are. */
    private Optional<String> sheetName = Optional.empty();

    private int sheetCount;
    private boolean templatesStopped;

    private Exports(ExaminedSet set, Workshop workshop, Wanted wanted) {
        this.set = set;
        this.workshop = workshop;
        this.dxf = DxfProfile.of(workshop.files().dxf());
        this.wanted = wanted;
    }

    /** All files of a set that are wanted, for a workshop. */
    static Exports of(ExaminedSet set, Workshop workshop, Wanted wanted, Units units) {
        Exports exports = new Exports(set, workshop, wanted);
        List<String> names =
                FileName.unique(set.pieces().stream().map(ExaminedPiece::name).toList());
        for (int i = 0; i < names.size(); i++) {
            ExaminedPiece piece = set.pieces().get(i);
            if (piece.figures().isPresent()) {
                exports.add(names.get(i), piece, piece.figures().get());
            } else {
                exports.undrawn.add(names.get(i));
                exports.lines.add(names.get(i) + ": nothing, for it cannot be drawn");
            }
        }
        if (wanted.has(Part.PICTURES, Format.PNG)) {
            exports.addSetPicture();
        }
        exports.addTemplates(units);
        return exports;
    }

    List<OutputFile> files() {
        return List.copyOf(files);
    }

    /** Whether some gauge or template is not to be made so. */
    boolean isStopped() {
        return templatesStopped;
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
        for (Format format : Part.COPYING.formats()) {
            sheetName.ifPresent(name -> addSpareSheets(old, folder, name, ending(format)));
        }
        return old;
    }

    private void addSpareSheets(Map<Path, String> old, Path folder, String name, String ending) {
        int number = sheetCount + 1;
        Path file = folder.resolve(name + number + ending);
        while (Files.exists(file)) {
            old.put(file, "there are fewer sheets now");
            number++;
            file = folder.resolve(name + number + ending);
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
                                "-stations.csv",
                                ".png"));
        for (DxfProfile profile : DxfProfile.values()) {
            endings.add("-section" + profile.suffix() + ".dxf");
            endings.add("-profile" + profile.suffix() + ".dxf");
        }
        return endings;
    }

    private void add(String name, ExaminedPiece piece, Figures figures) {
        TitleBlock title = DrawingWords.of(set, piece, figures);
        String profile = piece.name() + ", half-profile";
        Outline outline = figures.handle().outline();
        if (wanted.has(Part.DRAWINGS, Format.SVG)) {
            Drawing section = SectionDrawing.of(figures, title, UnaryOperator.identity());
            SvgOptions sheet =
                    new SvgOptions(SHEET_MARGIN_MM, SvgOptions.standard().toolPathWidthMm());
            text(name + "-section.svg", new SvgWriter(sheet).write(section));
            Drawing plain = ProfileDrawing.of(profile, outline, piece.isStopped());
            text(name + "-profile.svg", new SvgWriter(toolPaths()).write(plain));
        }
        if (wanted.has(Part.DRAWINGS, Format.DXF)) {
            DxfWriter writer = new DxfWriter(dxf);
            UnaryOperator<Outline> curves =
                    dxf.keepsCurves() ? UnaryOperator.identity() : Exports::inArcs;
            Drawing section = SectionDrawing.of(figures, title, curves);
            text(name + "-section" + ending(Format.DXF), writer.write(section).text());
            Drawing plain = ProfileDrawing.of(profile, curves.apply(outline), piece.isStopped());
            text(name + "-profile" + ending(Format.DXF), writer.write(plain).text());
        }
        if (wanted.has(Part.TABLES, Format.CSV)) {
            text(name + "-stations.csv", StationCsv.of(figures.handle(), piece.isStopped()));
        }
        if (wanted.has(Part.DRAWINGS, Format.PDF)) {
            Drawing section = SectionDrawing.of(figures, title, UnaryOperator.identity());
            files.add(new OutputFile(name + "-section.pdf", pdf(section).content()));
        }
        List<String> written = new ArrayList<>();
        drawn(
                written,
                Part.DRAWINGS,
                name + "-section",
                List.of(Format.SVG, Format.DXF, Format.PDF));
        drawn(written, Part.DRAWINGS, name + "-profile", List.of(Format.SVG, Format.DXF));
        drawn(written, Part.TABLES, name + "-stations", List.of(Format.CSV));
        // Neither can bear the words "not to be made", so a stopped piece gets none.
        if (wanted.has(Part.SOLIDS, Format.STL) && !piece.isStopped()) {
            written.add(solid(name, figures));
        }
        if (wanted.has(Part.PICTURES, Format.PNG) && !piece.isStopped()) {
            files.add(
                    new OutputFile(
                            name + ".png",
                            HandlePictures.one(figures.handle(), PIECE_PICTURE_PX).content()));
            written.add(name + ".png");
        }
        if (!written.isEmpty()) {
            lines.add(String.join(", ", written));
        }
    }

    /** The solid; what was written, or why there is none. */
    private String solid(String name, Figures figures) {
        MeshResult result = TurnedMesh.of(figures.handle(), SOLID_TOLERANCE_MM);
        if (result instanceof MeshResult.Made made) {
            files.add(new OutputFile(name + ".stl", StlWriter.binary(made.mesh())));
            return name + ".stl";
        }
        return "no " + name + ".stl: " + ((MeshResult.Refused) result).reason();
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
            files.add(
                    new OutputFile(
                            name,
                            HandlePictures.set(set.name(), handles, SET_PICTURE_PX).content()));
            lines.add(name);
        }
    }

    /**
     * Gauges and copying templates of all pieces, sheet by sheet, and what is to be said of them.
     */
    private void addTemplates(Units units) {
        Set<Format> kinds = wanted.templateFormats();
        if (kinds.isEmpty()) {
            return;
        }
        TemplateSettings settings = wanted.over(workshop.templates());
        Templates.Sheets sheets = Templates.of(set, settings, units);
        String begin = FileName.from(set.name()) + "-" + what(settings) + "-";
        sheetName = Optional.of(begin);
        sheetCount = sheets.drawings().size();
        templatesStopped = sheets.isStopped();
        for (int i = 0; i < sheetCount; i++) {
            addSheet(begin + (i + 1), sheets.drawings().get(i), kinds);
        }
        remarks.addAll(sheets.remarks());
    }

    private void addSheet(String name, Drawing sheet, Set<Format> kinds) {
        List<String> endings = new ArrayList<>();
        if (kinds.contains(Format.SVG)) {
            text(name + ending(Format.SVG), new SvgWriter(toolPaths()).write(sheet));
            endings.add(ending(Format.SVG));
        }
        if (kinds.contains(Format.DXF)) {
            DxfFile file = new DxfWriter(dxf).write(sheet);
            text(name + ending(Format.DXF), file.text());
            int count = file.report().entities().values().stream().mapToInt(n -> n).sum();
            endings.add(ending(Format.DXF) + " (" + count + " entities)");
        }
        if (kinds.contains(Format.PDF)) {
            PdfFile file = pdf(sheet);
            files.add(new OutputFile(name + ending(Format.PDF), file.content()));
            endings.add(
                    ending(Format.PDF)
                            + (file.sheets() == 1 ? "" : " (" + file.sheets() + " pages)"));
        }
        lines.add(name + String.join(" ", endings));
    }

    /** What is on the sheets, so that a part of it does not take the place of all. */
    private static String what(TemplateSettings settings) {
        TemplateSettings.Gauges gauges = settings.gauges();
        List<String> made = new ArrayList<>();
        if (gauges.profile()) {
            made.add("profile-gauges");
        }
        if (gauges.slots()) {
            made.add("slots");
        }
        if (gauges.storyRod()) {
            made.add("story-rods");
        }
        if (settings.copying().made()) {
            return made.isEmpty() ? "copying-templates" : "templates";
        }
        return made.size() == 1 ? made.get(0) : "gauges";
    }

    private PdfFile pdf(Drawing drawing) {
        return new PdfWriter(PdfOptions.of(workshop.files())).write(drawing);
    }

    /** SVG for what is cut. */
    private SvgOptions toolPaths() {
        SvgOptions usual = SvgOptions.standard();
        return workshop.files().hairlines() ? usual.withHairlines() : usual;
    }

    private String ending(Format format) {
        return (format == Format.DXF ? dxf.suffix() : "") + "." + format.id();
    }

    /** Such as {@code fork-section.svg .dxf}. */
    private void drawn(List<String> written, Part part, String name, List<Format> kinds) {
        List<String> endings = new ArrayList<>();
        for (Format format : kinds) {
            if (wanted.has(part, format)) {
                endings.add(ending(format));
            }
        }
        if (!endings.isEmpty()) {
            written.add(name + String.join(" ", endings));
        }
    }

    private static Outline inArcs(Outline outline) {
        return ArcFit.of(outline, ArcFit.USUAL_TOLERANCE_MM).outline();
    }

    private void text(String name, String text) {
        files.add(OutputFile.text(name, text));
    }

    /** What was written where, for the end of the page. */
    String page(Path folder, Ink ink) {
        Paper paper = new Paper(ink, 0, 0);
        paper.blank();
        String count = files.size() + (files.size() == 1 ? " file" : " files");
        paper.words("Written", count + " into " + folder);
        lines.forEach(line -> paper.words("Written", line));
        remarks.forEach(remark -> paper.words("Templates", remark));
        return paper.text();
    }
}
