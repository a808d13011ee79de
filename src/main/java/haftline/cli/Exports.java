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
import haftline.sheet.page.Field;
import haftline.write.FileName;
import haftline.write.OutputFile;
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
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    private final Set<Format> formats;
    private final Units units;
    private final Field field;

    private Exports(ExaminedSet set, Set<Format> formats, Units units, Field field) {
        this.set = set;
        this.formats = formats;
        this.units = units;
        this.field = field;
    }

    /** All files of a set in some formats. */
    static Exports of(ExaminedSet set, Set<Format> formats, Units units) {
        return of(set, formats, units, new Field(haftline.write.pdf.Paper.A4));
    }

    /** The same, sheets for people on a paper of the maker's. */
    static Exports of(ExaminedSet set, Set<Format> formats, Units units, Field field) {
        Exports exports = new Exports(set, formats, units, field);
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
        if (formats.contains(Format.PNG)) {
            exports.addSetPicture();
        }
        exports.addTemplates(units);
        return exports;
    }

    List<OutputFile> files() {
        return List.copyOf(files);
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
                            ".png",
                            "-lathe.pdf",
                            "-lathe.html",
                            "-instructions.pdf",
                            "-instructions.html",
                            "-care.pdf",
                            "-care.html",
                            "-care.txt")) {
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
        if (formats.contains(Format.SVG)) {
            Drawing section = SectionDrawing.of(figures, title, UnaryOperator.identity());
            SvgOptions sheet =
                    new SvgOptions(SHEET_MARGIN_MM, SvgOptions.standard().toolPathWidthMm());
            text(name + "-section.svg", new SvgWriter(sheet).write(section));
            Drawing plain = ProfileDrawing.of(profile, outline, piece.isStopped());
            text(name + "-profile.svg", new SvgWriter(SvgOptions.standard()).write(plain));
        }
        if (formats.contains(Format.DXF)) {
            DxfWriter writer = new DxfWriter(DxfProfile.CUTTING);
            Drawing section = SectionDrawing.of(figures, title, Exports::inArcs);
            text(name + "-section.dxf", writer.write(section).text());
            Drawing plain = ProfileDrawing.of(profile, inArcs(outline), piece.isStopped());
            text(name + "-profile.dxf", writer.write(plain).text());
        }
        if (formats.contains(Format.CSV)) {
            text(name + "-stations.csv", StationCsv.of(figures.handle(), piece.isStopped()));
        }
        if (formats.contains(Format.PDF)) {
            Drawing section = SectionDrawing.of(figures, title, UnaryOperator.identity());
            files.add(new OutputFile(name + "-section.pdf", pdf(section)));
        }
        List<String> written = new ArrayList<>();
        drawn(written, name + "-section", List.of(Format.SVG, Format.DXF, Format.PDF));
        drawn(written, name + "-profile", List.of(Format.SVG, Format.DXF));
        drawn(written, name + "-stations", List.of(Format.CSV));
        // Neither can bear the words "not to be made", so a stopped piece gets none.
        if (formats.contains(Format.STL) && !piece.isStopped()) {
            written.add(solid(name, figures));
        }
        if (formats.contains(Format.PNG) && !piece.isStopped()) {
            files.add(
                    new OutputFile(
                            name + ".png",
                            HandlePictures.one(figures.handle(), PIECE_PICTURE_PX).content()));
            written.add(name + ".png");
        }
        for (OutputFile sheet : Sheets.of(name, set, piece, formats, units, field)) {
            files.add(sheet);
            written.add(sheet.name());
        }
        lines.add(String.join(", ", written));
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
        List<Format> kinds = List.of(Format.SVG, Format.DXF, Format.PDF);
        if (kinds.stream().noneMatch(formats::contains)) {
            return;
        }
        Templates.Sheets sheets = Templates.of(set, units);
        List<String> written = new ArrayList<>();
        for (int i = 0; i < sheets.drawings().size(); i++) {
            Drawing sheet = sheets.drawings().get(i);
            String name = FileName.from(set.name()) + "-templates-" + (i + 1);
            if (formats.contains(Format.SVG)) {
                text(name + ".svg", new SvgWriter(SvgOptions.standard()).write(sheet));
            }
            if (formats.contains(Format.DXF)) {
                text(name + ".dxf", new DxfWriter(DxfProfile.CUTTING).write(sheet).text());
            }
            if (formats.contains(Format.PDF)) {
                files.add(new OutputFile(name + ".pdf", pdf(sheet)));
            }
            drawn(written, name, kinds);
        }
        if (!written.isEmpty()) {
            lines.add(String.join(", ", written));
        }
        remarks.addAll(sheets.remarks());
    }

    private static byte[] pdf(Drawing drawing) {
        return new PdfWriter(PdfOptions.on(haftline.write.pdf.Paper.A4)).write(drawing).content();
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
