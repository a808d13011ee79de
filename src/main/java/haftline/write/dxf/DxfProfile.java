package haftline.write.dxf;

import haftline.set.FileSettings;

/** What a DXF file is for. A purpose, not a version number: the version is ours to choose. */
public enum DxfProfile {
    /**
     * Laser cutters, routers and drawing programs of this century: R2000, the first version that
     * carries its unit; lines, arcs, circles and polylines with bulges, no splines.
     */
    CUTTING("AC1015", ""),

    /**
     * Drawing programs, to go on drawing: R2000, cubics as splines and domes as ellipses, exactly
     * as they are designed. Many cutters leave splines out, so that no cutter is sent this.
     */
    DRAWING("AC1015", "-curves"),

    /**
     * Old controllers and programs that reject everything newer: R12, polylines of the old kind
     * with bulges. R12 has no unit: the layers' names end in MM, and a bar of 50 mm stands under
     * the drawing.
     */
    OLD_CONTROLLER("AC1009", "-r12-mm");

    private final String version;
    private final String suffix;

    DxfProfile(String version, String suffix) {
        this.version = version;
        this.suffix = suffix;
    }

    /**
     * The profile of a workshop.
     *
     * @param purpose what the maker's DXF files are for
     * @return the profile
     */
    public static DxfProfile of(FileSettings.Dxf purpose) {
        return switch (purpose) {
            case CUTTING -> CUTTING;
            case DRAWING -> DRAWING;
            case OLD_CONTROLLER -> OLD_CONTROLLER;
        };
    }

    /**
     * What tells the file from its siblings: to stand between a piece's file name and the ending.
     *
     * @return such as {@code -r12-mm}, empty for the usual profile
     */
    public String suffix() {
        return suffix;
    }

    /**
     * Whether cubics and ellipses are written as they are; if not, {@link
     * haftline.drawing.Drawing#withArcs} must have replaced them.
     *
     * @return true for {@link #DRAWING}
     */
    public boolean keepsCurves() {
        return this == DRAWING;
    }

    /** The value of $ACADVER. */
    String version() {
        return version;
    }
}
