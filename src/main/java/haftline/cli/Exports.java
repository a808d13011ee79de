package haftline.cli;

import haftline.curve.ArcFit;
import haftline.curve.Outline;
import haftline.drawing.Drawing;
import haftline.drawing.ProfileDrawing;
import haftline.drawing.SectionDrawing;
import haftline.drawing.TitleBlock;
import haftline.figures.Figures;
import haftline.write.FileName;
import haftline.write.OutputFile;
import haftline.write.dxf.DxfProfile;
import haftline.write.dxf.DxfWriter;
import haftline.write.svg.SvgOptions;
import haftline.write.svg.SvgWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/** The files that {@code make} writes for a set, in memory until all of them are ready. */
final class Exports {
    /** The frame of a section stands this far from the paper's edge, mm. */
    private static final double SHEET_MARGIN_MM = 10;

    private final List<OutputFile> files = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();
    private final ExaminedSet set;
    private final Set<Format> formats;

    private Exports(ExaminedSet set, Set<Format> formats) {
        this.set = set;
        this.formats = formats;
    }

    /** All files of a set in some formats. */
    static Exports of(ExaminedSet set, Set<Format> formats) {
        Exports exports = new Exports(set, formats);
        List<String> names =
                FileName.unique(set.pieces().stream().map(ExaminedPiece::name).toList());
        for (int i = 0; i < names.size(); i++) {
            ExaminedPiece piece = set.pieces().get(i);
            if (piece.figures().isPresent()) {
                exports.add(names.get(i), piece, piece.figures().get());
            } else {
                exports.lines.add(names.get(i) + ": nothing, for it cannot be drawn");
            }
        }
        return exports;
    }

    List<OutputFile> files() {
        return List.copyOf(files);
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
        List<String> written = new ArrayList<>();
        drawn(written, name + "-section");
        drawn(written, name + "-profile");
        if (formats.contains(Format.CSV)) {
            written.add(name + "-stations.csv");
        }
        lines.add(String.join(", ", written));
    }

    /** Such as {@code fork-section.svg .dxf}. */
    private void drawn(List<String> written, String name) {
        List<String> endings = new ArrayList<>();
        for (Format format : List.of(Format.SVG, Format.DXF)) {
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
        return paper.text();
    }
}
