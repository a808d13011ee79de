package haftline.ui.model;

import haftline.adjust.takeoff.PictureExactness;
import haftline.curve.Point;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import java.util.List;

/** A photograph and what is traced over it, in plain words. */
public final class PhotoWords {
    /** A doubt under this share is told with more digits. */
    private static final double SMALL_SHARE = 0.01;

    private final LengthText lengths;

    /**
     * Words with lengths in a unit.
     *
     * @param units the unit
     */
    public PhotoWords(Units units) {
        lengths = new LengthText(units);
    }

    /**
     * Which picture.
     *
     * @param picture the picture
     * @return its name and size
     */
    public String picture(Picture picture) {
        String size = picture.width() + " × " + picture.height() + " pixels";
        boolean isReduced = picture.width() != picture.fullWidth();
        return picture.file().getFileName()
                + ", "
                + size
                + (isReduced
                        ? ", reduced from " + picture.fullWidth() + " × " + picture.fullHeight()
                        : "");
    }

    /**
     * How the photograph lies and how exact a trace over it can be.
     *
     * @param state the photograph
     * @return a few sentences; what is missing where it is not to scale
     */
    public String placing(PhotoState state) {
        if (state.exactness().isEmpty()) {
            return state.wrong().map(wrong -> wrong + ".").orElse("");
        }
        PictureExactness exact = state.exactness().get();
        double share = exact.scaleShare();
        return "To scale: a pixel is "
                + small(exact.mmPerPixel())
                + ", turned by "
                + NumberText.fixed(state.lying().turnDeg(), 1)
                + "°. Points marked to a pixel tell a diameter to ± "
                + small(exact.bothSidesMm())
                + " from both sides, ± "
                + small(exact.oneSideMm())
                + " from one, and all lengths to ± "
                + NumberText.fixed(100 * share, share < SMALL_SHARE ? 2 : 1)
                + " %.";
    }

    private String small(double mm) {
        return NumberText.fixed(
                        mm / lengths.units().millimetres(), lengths.units() == Units.MM ? 2 : 4)
                + " "
                + lengths.unit();
    }

    /**
     * What was traced so far.
     *
     * @param state the photograph
     * @return a sentence
     */
    public String trace(PhotoState state) {
        List<Point> points = state.traced();
        if (points.isEmpty()) {
            return "Nothing traced yet.";
        }
        long above = points.stream().filter(p -> p.r() >= 0).count();
        double from = points.stream().mapToDouble(Point::x).min().orElseThrow();
        double to = points.stream().mapToDouble(Point::x).max().orElseThrow();
        return points.size()
                + (points.size() == 1 ? " point" : " points")
                + ", "
                + above
                + " above the axis and "
                + (points.size() - above)
                + " below, from "
                + lengths.contour(from)
                + " to "
                + lengths.contour(to)
                + " "
                + lengths.unit()
                + ".";
    }

    /**
     * A place over the photograph.
     *
     * @param at mm from the shoulder and over the axis
     * @return where it is
     */
    public String place(Point at) {
        return lengths.contour(at.x())
                + " "
                + lengths.unit()
                + " from the shoulder, diameter "
                + lengths.contour(2 * Math.abs(at.r()))
                + " "
                + lengths.unit()
                + (at.r() < 0 ? ", below the axis" : "");
    }
}
