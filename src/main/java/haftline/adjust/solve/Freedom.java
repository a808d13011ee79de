package haftline.adjust.solve;

/** What may move beside the diameters of the nodes. */
public enum Freedom {
    /** The length of each handle, as the piece's own ratio to its blade. */
    LENGTH,
    /** The common greatest diameter. */
    SWELL,
    /** Depths of the bores, up to where tang and spigot still go in. */
    DEPTH;

    /**
     * The word by which it is allowed.
     *
     * @return lower case
     */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
