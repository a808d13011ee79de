package haftline.support;

import haftline.drawing.Drawing;
import haftline.write.OutputException;
import haftline.write.OutputFile;
import haftline.write.OutputFolder;
import haftline.write.dxf.DxfFile;
import haftline.write.dxf.DxfProfile;
import haftline.write.dxf.DxfWriter;
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
                            files.add(OutputFile.text(name + ".dxf", dxf(drawing).text()));
                        });
        OutputFolder.at(Path.of(args[0])).write(files);
    }
}
