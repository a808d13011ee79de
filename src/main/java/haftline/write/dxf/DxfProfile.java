package haftline.write.dxf;

/** What a DXF file is for. A purpose, not a version number: the version is ours to choose. */
public enum DxfProfile {
    /**
     * Laser cutters, routers and drawing programs of this century: R2000, the first version that
     * carries its unit; lines, arcs, circles and polylines with bulges, no splines.
     */
    CUTTING("AC1015");

    private final String version;

    DxfProfile(String version) {
        this.version = version;
    }

    /** The value of $ACADVER. */
    String version() {
        return version;
    }
}
