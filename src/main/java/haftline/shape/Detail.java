package haftline.shape;

import haftline.measure.Checks;

/**
 * A small form laid over the body, in turner's terms. Its width runs along the axis and is centred
 * on its place; heights and depths are measured from the chord between its two edges on the body:
 * of a bead and a cove square to that chord, of a vee, a burnt line and a fillet square to the
 * axis.
 */
public sealed interface Detail {
    /** Least and greatest width along the axis, mm. */
    double NARROWEST = 0.2;

    /** Greatest width along the axis, mm. */
    double WIDEST = 80;

    /**
     * Its centre.
     *
     * @return where along the wood
     */
    Place place();

    /**
     * Width along the axis.
     *
     * @return mm
     */
    double widthMm();

    /**
     * The word for this kind of detail, as it is written in documents.
     *
     * @return the trade's word, lower case
     */
    String kind();

    /**
     * The same detail elsewhere.
     *
     * @param newPlace its centre
     * @return the changed copy
     */
    Detail at(Place newPlace);

    /**
     * How far it stands above the chord between its edges.
     *
     * @return mm; negative for one that is cut into the body, 0 for a flat
     */
    double proudMm();

    /**
     * The same detail in another size.
     *
     * @param newWidthMm width along the axis, mm
     * @param newProudMm how far it stands proud, mm, negative where it is cut in; of no account for
     *     a flat
     * @return the changed copy
     * @throws IllegalArgumentException where it cannot be of that size; {@link DetailLimits} tells
     *     which it can be of
     */
    Detail sized(double newWidthMm, double newProudMm);

    /**
     * A convex round: an arc that stands above the body.
     *
     * @param place its centre
     * @param widthMm width, mm
     * @param heightMm how far it stands proud, mm, over 0 to half of the width (half a circle)
     */
    record Bead(Place place, double widthMm, double heightMm) implements Detail {
        /** Checks the ranges. */
        public Bead {
            Checks.withinMm("bead width", widthMm, NARROWEST, WIDEST);
            Checks.withinMm("bead height", heightMm, 0.05, widthMm / 2);
        }

        @Override
        public String kind() {
            return "bead";
        }

        @Override
        public Bead at(Place newPlace) {
            return new Bead(newPlace, widthMm, heightMm);
        }

        @Override
        public double proudMm() {
            return heightMm;
        }

        @Override
        public Bead sized(double newWidthMm, double newProudMm) {
            return new Bead(place, newWidthMm, newProudMm);
        }
    }

    /**
     * A concave round: an arc cut into the body.
     *
     * @param place its centre
     * @param widthMm width, mm
     * @param depthMm depth, mm, over 0 to half of the width (half a circle)
     */
    record Cove(Place place, double widthMm, double depthMm) implements Detail {
        /** Checks the ranges. */
        public Cove {
            Checks.withinMm("cove width", widthMm, NARROWEST, WIDEST);
            Checks.withinMm("cove depth", depthMm, 0.05, widthMm / 2);
        }

        @Override
        public String kind() {
            return "cove";
        }

        @Override
        public Cove at(Place newPlace) {
            return new Cove(newPlace, widthMm, depthMm);
        }

        @Override
        public double proudMm() {
            return -depthMm;
        }

        @Override
        public Cove sized(double newWidthMm, double newProudMm) {
            return new Cove(place, newWidthMm, -newProudMm);
        }
    }

    /**
     * A groove with straight sides that meet at the bottom.
     *
     * @param place its centre
     * @param widthMm width at the surface, mm
     * @param depthMm depth, mm, over 0 to twice the width
     */
    record Vee(Place place, double widthMm, double depthMm) implements Detail {
        /** Checks the ranges. */
        public Vee {
            Checks.withinMm("vee width", widthMm, NARROWEST, WIDEST);
            Checks.withinMm("vee depth", depthMm, 0.05, 2 * widthMm);
        }

        @Override
        public String kind() {
            return "vee";
        }

        @Override
        public Vee at(Place newPlace) {
            return new Vee(newPlace, widthMm, depthMm);
        }

        @Override
        public double proudMm() {
            return -depthMm;
        }

        @Override
        public Vee sized(double newWidthMm, double newProudMm) {
            return new Vee(place, newWidthMm, -newProudMm);
        }
    }

    /**
     * A narrow level band with crisp edges, raised above the body or, with a negative height, sunk
     * into it (a quirk).
     *
     * @param place its centre
     * @param widthMm width, mm
     * @param heightMm above the body at its centre, mm, -10 to 10, not 0
     */
    record Fillet(Place place, double widthMm, double heightMm) implements Detail {
        /** Checks the ranges. */
        public Fillet {
            Checks.withinMm("fillet width", widthMm, NARROWEST, WIDEST);
            Checks.withinMm("fillet height", heightMm, -10, 10);
            if (heightMm == 0) {
                throw new IllegalArgumentException(
                        "fillet height 0.0: a fillet is raised or sunk; a flat is neither");
            }
        }

        @Override
        public String kind() {
            return "fillet";
        }

        @Override
        public Fillet at(Place newPlace) {
            return new Fillet(newPlace, widthMm, heightMm);
        }

        @Override
        public double proudMm() {
            return heightMm;
        }

        @Override
        public Fillet sized(double newWidthMm, double newProudMm) {
            return new Fillet(place, newWidthMm, newProudMm);
        }
    }

    /**
     * A straight run between two points of the body.
     *
     * @param place its centre
     * @param widthMm width, mm
     */
    record Flat(Place place, double widthMm) implements Detail {
        /** Checks the range. */
        public Flat {
            Checks.withinMm("flat width", widthMm, NARROWEST, WIDEST);
        }

        @Override
        public String kind() {
            return "flat";
        }

        @Override
        public Flat at(Place newPlace) {
            return new Flat(newPlace, widthMm);
        }

        @Override
        public double proudMm() {
            return 0;
        }

        @Override
        public Flat sized(double newWidthMm, double newProudMm) {
            return new Flat(place, newWidthMm);
        }
    }

    /**
     * A line burnt in with a wire, in a fine groove.
     *
     * @param place its centre
     * @param widthMm width at the surface, mm, 0.2 to 3
     * @param depthMm depth, mm, 0.05 to 2
     */
    record BurntLine(Place place, double widthMm, double depthMm) implements Detail {
        /** Checks the ranges. */
        public BurntLine {
            Checks.withinMm("burnt line width", widthMm, NARROWEST, 3);
            Checks.withinMm("burnt line depth", depthMm, 0.05, 2);
        }

        @Override
        public String kind() {
            return "burnt line";
        }

        @Override
        public BurntLine at(Place newPlace) {
            return new BurntLine(newPlace, widthMm, depthMm);
        }

        @Override
        public double proudMm() {
            return -depthMm;
        }

        @Override
        public BurntLine sized(double newWidthMm, double newProudMm) {
            return new BurntLine(place, newWidthMm, -newProudMm);
        }
    }
}
