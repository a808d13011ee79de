package haftline.handle;

import haftline.measure.Measured;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import haftline.parts.RoundTang;
import haftline.parts.Tang;
import haftline.shape.Butt;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Shape;
import haftline.shape.Size;
import haftline.stock.Stock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The worked handle "P1", reckoned by hand beforehand. Straight tapers through x:diameter 0:14,
 * 20:13, 65:23, 95:18, 105:14; tenon 11.9 x 11.5; round tang 6.0 x 45 seated on the ferrule's front
 * face; brass ferrule 14/12 x 12; tang drill 6.2, 47 mm full; cap drill 6.1 x 10; blade 38 g
 * without its tang, centre at x = -54; cap 5 g at x = 107. The example counts no adhesive at the
 * cap, so that its spigot here fills its bore, point and all.
 */
public final class P1 {
    /** The cap's head; the example gives none, and no figure of it depends on this. */
    private static final double HEAD = 3;

    private static final double CAP_DRILL = 6.1;

    /** As long as makes up for the cone of the drill's point: a third of its height. */
    private static final double SPIGOT = 10 + CAP_DRILL / (2 * Math.tan(Math.toRadians(59))) / 3;

    private P1() {}

    /** The brief in maple, no wander. */
    public static Brief brief() {
        return brief(SampleStock.maple(), new Wander(0, 0));
    }

    /** The brief in a stock, at a wander. */
    public static Brief brief(Stock stock, Wander wander) {
        return new Brief(
                "P1",
                kit(5),
                SampleStock.metals(),
                stock,
                SampleStock.epoxy(),
                shape(),
                Rules.COMMON_PRACTICE,
                SampleStock.tenths(),
                Choices.builder()
                        .fit(Fit.BONDED)
                        .tangDrillMm(6.2)
                        .tangDepthMm(47)
                        .capDrillMm(CAP_DRILL)
                        .capDepthMm(10)
                        .tenonDiameterMm(11.9)
                        .tenonLengthMm(11.5)
                        .wander(wander)
                        .build());
    }

    /** The kit with a cap of some mass. */
    public static Kit kit(double capG) {
        return new Kit(
                "P1",
                blade(),
                round(6, 45),
                0,
                ferrule(),
                Optional.of(
                        new EndCap(
                                exactly(CAP_DRILL),
                                exactly(SPIGOT),
                                exactly(14),
                                exactly(HEAD),
                                EndCap.Form.FLAT,
                                "brass",
                                OptionalDouble.of(capG),
                                OptionalDouble.of(2))));
    }

    /** Its blade: as long as the handle, of half-depth 12. */
    public static Blade blade() {
        return new Blade(
                exactly(12 + 105 + HEAD),
                24,
                2,
                OptionalDouble.empty(),
                "stainless",
                OptionalDouble.of(38),
                false,
                OptionalDouble.of(42));
    }

    /** Its ferrule. */
    public static Ferrule ferrule() {
        return new Ferrule(
                exactly(12),
                exactly(14),
                exactly(14),
                exactly(12),
                0,
                OptionalDouble.empty(),
                0,
                "brass",
                OptionalDouble.empty());
    }

    /** A round tang. */
    public static Tang round(double diameter, double length) {
        return new RoundTang(
                exactly(diameter), exactly(length), OptionalDouble.empty(), Optional.empty());
    }

    /** Its outline: crisp nodes, so that straight tapers join them. */
    public static Shape shape() {
        return new Shape(
                "Straight tapers",
                "",
                OptionalDouble.empty(),
                List.of(crisp("waist", 20, 13), crisp("swell", 65, 23), crisp("tail", 95, 18)),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                new Butt.Square(),
                0);
    }

    private static Node crisp(String name, double x, double diameter) {
        return new Node(
                name,
                new Place.FromShoulder(x),
                new Size.Plain(diameter),
                Join.CRISP,
                OptionalDouble.empty(),
                false);
    }

    /** The handle, which must resolve. */
    public static Handle handle(Brief brief) {
        Resolution resolution = Resolve.of(brief);
        if (resolution instanceof Resolution.Resolved resolved) {
            return resolved.handle();
        }
        throw new AssertionError("expected a handle, got " + resolution);
    }

    /** The same brief with other parts. */
    public static Brief withKit(Brief brief, Kit kit) {
        return new Brief(
                brief.name(),
                kit,
                brief.metals(),
                brief.stock(),
                brief.adhesive(),
                brief.shape(),
                brief.rules(),
                brief.rack(),
                brief.choices());
    }

    /** A measure without doubt. */
    public static Measured exactly(double value) {
        return Measured.exactly(value);
    }
}
