package haftline.write.png;

/** How a material looks at a place of its surface. */
interface Finish {
    /**
     * The light that comes from a place.
     *
     * @param x along the axis, mm
     * @param y up, mm from the axis
     * @param z towards the eye, mm from the axis
     * @param nx outward normal
     * @param ny outward normal
     * @param nz outward normal, towards the eye
     * @param open how much of the room the place sees, 0 in a deep groove to 1
     */
    Rgb light(double x, double y, double z, double nx, double ny, double nz, double open);
}
