package haftline.store;

/** Keys of a measured figure that says its own resolution. */
final class MeasuredKeys {
    static final Key READINGS = Key.several("readings", "a length or a list of readings").must();
    static final Key RESOLUTION =
            Key.length("resolution", 0, 10, "least step that tool and hand can tell apart, in mm");
    static final Keys MEASURED = Keys.of("measured figure", READINGS, RESOLUTION);

    private MeasuredKeys() {}
}
