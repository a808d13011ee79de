package haftline.write.dxf;

import haftline.drawing.Drawing;

/**
 * Writes a drawing as a DXF file in millimetres, ASCII, with all the tables that strict readers ask
 * for. docs/formats/dxf.md describes the file.
 *
 * <p>Each closed path of lines and arcs is one closed polyline, its arcs as bulges, and each of its
 * vertices is written once, so that no gap can open between two segments. Nothing is drawn twice on
 * a layer.
 */
public final class DxfWriter {
    /**
     * Cutters slow down and shake on shorter pieces. A shorter one is merged into its neighbour
     * where that moves the line by no more than {@link #MERGE_DEVIATION_MM}, else it is kept and
     * counted.
     */
    public static final double SHORTEST_SEGMENT_MM = 0.05;

    /**
     * A fifth of the usual tolerance of arc fitting (0.01 mm): merging may not be what spoils a
     * fit.
     */
    public static final double MERGE_DEVIATION_MM = 0.002;

    private final DxfProfile profile;

    /**
     * A writer for a purpose.
     *
     * @param profile the purpose
     */
    public DxfWriter(DxfProfile profile) {
        this.profile = profile;
    }

    /**
     * Writes a drawing.
     *
     * @param drawing a drawing; without cubics and ellipses unless the profile keeps curves: {@link
     *     Drawing#withArcs} replaces them
     * @return the file and what went into it
     * @throws IllegalArgumentException where a path holds a cubic or an ellipse that the profile
     *     does not keep
     */
    public DxfFile write(Drawing drawing) {
        if (profile == DxfProfile.OLD_CONTROLLER) {
            return R12File.of(drawing);
        }
        DxfGeometry geometry = DxfGeometry.of(drawing, profile.keepsCurves());
        DxfEntities entities = DxfEntities.of(geometry.elements());
        DxfFrame frame = new DxfFrame(profile, geometry.layers(), geometry.extents());
        DxfTags file =
                new DxfTags()
                        .add(frame.header(entities.nextHandle()))
                        .add(frame.classes())
                        .add(DxfTables.tables(frame))
                        .add(frame.blocks())
                        .add(entities.section())
                        .add(DxfObjects.objects())
                        .tag(0, "EOF");
        return new DxfFile(file.text(), geometry.report(entities.counts()));
    }
}
