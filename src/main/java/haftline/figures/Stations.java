package haftline.figures;

import haftline.curve.Gap;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.handle.Bore;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Detail;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The stations of a handle: both ends, every node, every joint of the outline, every widest and
 * narrowest place, and the middle of each long slope between them.
 */
public final class Stations {
    /** Between two stations further apart than this the middle of the slope is one too, mm. */
    private static final double LONG_MM = 10;

    /** A slope that changes the diameter by less needs no station in its middle, mm. */
    private static final double LEVEL_MM = 0.2;

    /** Places nearer than this are one, mm. */
    private static final double SAME_MM = 1e-6;

    private final Handle handle;
    private final Outline outline;
    private final List<Place> places = new ArrayList<>();

    /** A named place; of several names of one place the first given stands. */
    private record Place(String name, double x) {}

    private Stations(Handle handle) {
        this.handle = handle;
        this.outline = handle.outline();
    }

    /**
     * The stations of a handle.
     *
     * @param handle the handle
     * @return the stations from the tenon's end to the butt
     */
    public static List<Station> of(Handle handle) {
        return new Stations(handle).stations();
    }

    private List<Station> stations() {
        add("tenon's end", outline.startX());
        for (PlacedNode node : handle.nodes()) {
            add(node.name(), node.x());
        }
        add("butt", outline.endX());
        for (Detail detail : handle.brief().shape().details()) {
            double centre = detail.place().x(handle.buttX());
            add(detail.kind(), centre);
            add(detail.kind() + " edge", centre - detail.widthMm() / 2);
            add(detail.kind() + " edge", centre + detail.widthMm() / 2);
        }
        for (Segment segment : outline.segments()) {
            add("joint", segment.startX());
            extreme(
                    "widest",
                    segment,
                    segment.greatestAbove(0, 0, segment.startX(), segment.endX()));
            extreme(
                    "narrowest",
                    segment,
                    segment.leastAbove(0, 0, segment.startX(), segment.endX()));
        }
        sort();
        middles();
        List<Station> stations = new ArrayList<>();
        for (Place place : places) {
            add(stations, place);
        }
        return List.copyOf(stations);
    }

    private void add(String name, double x) {
        for (Place place : places) {
            if (Math.abs(place.x() - x) < SAME_MM) {
                return;
            }
        }
        places.add(new Place(name, x));
    }

    private void extreme(String name, Segment segment, Gap gap) {
        if (gap.x() > segment.startX() && gap.x() < segment.endX()) {
            add(name, gap.x());
        }
    }

    private void sort() {
        places.sort(Comparator.comparingDouble(Place::x));
    }

    private void middles() {
        List<Place> ends = List.copyOf(places);
        for (int i = 1; i < ends.size(); i++) {
            double from = ends.get(i - 1).x();
            double to = ends.get(i).x();
            double change = 2 * Math.abs(outline.rBefore(to) - outline.rAfter(from));
            if (from >= 0 && to - from > LONG_MM && change > LEVEL_MM) {
                add("mid-slope", (from + to) / 2);
            }
        }
        sort();
    }

    private void add(List<Station> stations, Place place) {
        double x = place.x();
        int index = outline.indexAt(x);
        Segment behind = outline.segments().get(index);
        boolean atJoint = index > 0 && behind.startX() == x;
        Segment before = atJoint ? outline.segments().get(index - 1) : behind;
        boolean step = Math.abs(before.r(x) - behind.r(x)) > SAME_MM;
        if (step) {
            String face = before.endX() == 0 ? "tenon at the shoulder" : place.name() + ", before";
            stations.add(station(face, x, before));
        }
        stations.add(station(place.name(), x, behind));
    }

    private Station station(String name, double x, Segment segment) {
        double r = segment.r(x);
        boolean tenon = segment.endX() <= 0;
        double sanding = tenon ? 0 : handle.brief().rules().blanks().sandingMm();
        return new Station(
                name,
                x,
                2 * r,
                2 * r + sanding,
                wall(x, r),
                Math.toDegrees(Math.atan(segment.slope(x))));
    }

    private OptionalDouble wall(double x, double r) {
        double least = Double.POSITIVE_INFINITY;
        for (Bore bore : bores()) {
            double radius = bore.radiusAt(x);
            if (radius > 0) {
                least = Math.min(least, r - radius - handle.wander().at(bore.depthAt(x)));
            }
        }
        return least < Double.POSITIVE_INFINITY ? OptionalDouble.of(least) : OptionalDouble.empty();
    }

    private List<Bore> bores() {
        List<Bore> bores = new ArrayList<>(List.of(handle.tangBore()));
        handle.capBore().ifPresent(bores::add);
        return bores;
    }
}
