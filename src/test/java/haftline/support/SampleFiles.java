package haftline.support;

import haftline.drawing.Drawing;
import haftline.handle.P1;
import haftline.write.OutputException;
import haftline.write.OutputFile;
import haftline.write.OutputFolder;
import haftline.write.dxf.DxfFile;
import haftline.write.dxf.DxfProfile;
import haftline.write.dxf.DxfWriter;
import haftline.write.pdf.Paper;
import haftline.write.pdf.PdfOptions;
import haftline.write.pdf.PdfWriter;
import haftline.write.pdf.PrinterCorrection;
import haftline.write.stl.MeshResult;
import haftline.write.stl.StlWriter;
import haftline.write.stl.TurnedMesh;
import haftline.write.svg.SvgOptions;
import haftline.write.svg.SvgWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes the sample drawings into a folder, to be looked at and checked by other programs. */
public final class SampleFiles {
    private static final double FIT_TOLERANCE_MM = 0.01;
    private static final double CHECK_BAR_MM = 50;
    private static final double STL_TOLERANCE_MM = 0.02;

    private SampleFiles() {}

    /** The drawings, by file name. */
    public static Map<String, Drawing> drawings() {
        Map<String, Drawing> drawings = new LinkedHashMap<>();
        drawings.put(
                "half-section",
                SampleDrawings.halfSection("Handle P1, black cherry").withCheckBar(CHECK_BAR_MM));
        drawings.put("half-profile", SampleDrawings.halfProfile());
        drawings.put("card", SampleDrawings.card("Oyster knife").withCheckBar(CHECK_BAR_MM));
        drawings.put("hostile", SampleDrawings.card(SampleDrawings.HOSTILE));
        drawings.put("long-name", SampleDrawings.card("\u05E9\uD83E\uDDAA<".repeat(167)));
        return drawings;
    }

    /** A sample as DXF. */
    public static DxfFile dxf(Drawing drawing) {
        return new DxfWriter(DxfProfile.CUTTING)
                .write(drawing.withArcs(new Biarcs(FIT_TOLERANCE_MM)));
    }

    /** A sample as DXF for another purpose. */
    public static DxfFile dxf(Drawing drawing, DxfProfile profile) {
        return new DxfWriter(profile)
                .write(
                        profile.keepsCurves()
                                ? drawing
                                : drawing.withArcs(new Biarcs(FIT_TOLERANCE_MM)));
    }

    /** A sample as SVG. */
    public static String svg(Drawing drawing) {
        return new SvgWriter(SvgOptions.standard()).write(drawing);
    }

    /**
     * Writes them.
     *
     * @param args the folder
     */
    public static void main(String[] args) throws OutputException {
        List<OutputFile> files = new ArrayList<>();
        drawings()
                .forEach(
                        (name, drawing) -> {
                            files.add(OutputFile.text(name + ".svg", svg(drawing)));
                            for (DxfProfile profile : DxfProfile.values()) {
                                files.add(
                                        OutputFile.text(
                                                name + profile.suffix() + ".dxf",
                                                dxf(drawing, profile).text()));
                            }
                        });
        files.add(
                new OutputFile(
                        "half-section-a4.pdf",
                        new PdfWriter(PdfOptions.on(Paper.A4))
                                .write(drawings().get("half-section"))
                                .content()));
        files.add(
                new OutputFile(
                        "tiled-letter.pdf",
                        new PdfWriter(
                                        PdfOptions.on(Paper.LETTER)
                                                .withCorrection(
                                                        PrinterCorrection.measured(99.7, 100.4)))
                                .write(SampleDrawings.large())
                                .content()));
        files.add(
                new OutputFile(
                        "names-a3.pdf",
                        new PdfWriter(PdfOptions.on(Paper.A3))
                                .write(
                                        "Names",
                                        List.of(
                                                drawings().get("hostile"),
                                                drawings().get("long-name"),
                                                drawings().get("card")))
                                .content()));
        TurnedMesh mesh =
                ((MeshResult.Made) TurnedMesh.of(P1.handle(P1.brief()), STL_TOLERANCE_MM)).mesh();
        files.add(new OutputFile("p1-binary.stl", StlWriter.binary(mesh)));
        files.add(OutputFile.text("p1-text.stl", StlWriter.text(mesh, "P1")));
        OutputFolder.at(Path.of(args[0])).write(files);
    }
}
