package haftline.handle;

import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Flare;
import haftline.parts.FlatTang;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import haftline.shape.Butt;
import haftline.shape.Detail;
import haftline.shape.Place;
import haftline.stock.Drill;
import haftline.stock.Rack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * Handles of every kind that can be resolved: all tangs, stepped bores, all drill points, details,
 * butts and wander. Many could not be made; their figures must be true all the same.
 */
public final class RandomHandles {
    private static final double[] POINTS = {90, 118, 135, 180};

    private final SplittableRandom random;
    private final double thinnest;
    private final double deepest;

    private RandomHandles(long seed, double thinnest, double deepest) {
        random = new SplittableRandom(seed);
        this.thinnest = thinnest;
        this.deepest = deepest;
    }

    /** Handles as a turner might ask for. */
    public static RandomHandles of(long seed) {
        return new RandomHandles(seed, 11, 12);
    }

    /** Handles so thin, with bores so deep, that bores break out and meet. */
    public static RandomHandles reckless(long seed) {
        return new RandomHandles(seed, 4, 90);
    }

    /** The next handle that resolves. */
    public Handle next() {
        while (true) {
            if (Resolve.of(brief().brief()) instanceof Resolution.Resolved resolved) {
                return resolved.handle();
            }
        }
    }

    private TestBrief brief() {
        Tang tang = tang();
        double bore = Math.max(8, tang.envelopeMm(0) + between(2, 6));
        double outside = bore + between(1, 3);
        double length = between(6, 16);
        double lip = chance(0.4) ? between(0.5, 2) : 0;
        TestBrief brief =
                new TestBrief()
                        .tang(tang)
                        .ferrule(ferrule(bore, outside, length, lip))
                        .seatMm(chance(0.3) ? lip : 0)
                        .blade(blade())
                        .stock(
                                chance(0.5)
                                        ? SampleStock.cherry()
                                        : chance(0.5) ? SampleStock.maple() : SampleStock.acrylic())
                        .rack(rack())
                        .eccentricityMm(chance(0.3) ? between(0, 0.3) : 0)
                        .wander(between(0, 0.5), between(0, 0.05))
                        .fit(chance(0.5) ? Fit.PRESSED : Fit.BONDED)
                        .shadowLineMm(chance(0.2) ? between(-0.5, 0.5) : 0)
                        .choose(
                                Choices.builder()
                                        .buttMm(between(Math.max(8, thinnest), 20))
                                        .lengthRatio(between(0.9, 1.3))
                                        .tangDepthMm(
                                                tang.length().mean()
                                                        - (chance(0.2) ? 5 : 0)
                                                        + between(0, deepest)));
        boolean cap = chance(0.6);
        if (cap) {
            brief.cap(cap());
        } else if (chance(0.7)) {
            brief.butt(butt());
        }
        nodes(brief);
        details(brief);
        return brief;
    }

    private Tang tang() {
        Measured length = readings(between(20, 55));
        Optional<Flare> flare =
                chance(0.2)
                        ? Optional.of(new Flare(readings(between(7, 10)), readings(between(8, 16))))
                        : Optional.empty();
        OptionalDouble mass = chance(0.3) ? OptionalDouble.of(between(3, 15)) : none();
        return switch (random.nextInt(6)) {
            case 0 -> new RoundTang(readings(between(3, 8)), length, mass, flare);
            case 1 ->
                    new FlatTang(
                            readings(between(5, 8)),
                            readings(between(2, 4.5)),
                            length,
                            mass,
                            flare);
            case 2 -> new SquareTang(readings(between(3, 6)), length, mass, flare);
            case 3 ->
                    new TaperedTang(
                            readings(between(5, 9)),
                            readings(between(2, 4.8)),
                            length,
                            mass,
                            flare);
            case 4 ->
                    new BarbedTang(
                            readings(between(3, 6)),
                            readings(between(6.2, 8)),
                            length,
                            mass,
                            flare);
            default ->
                    new ThreadedTang(
                            readings(between(5, 7)),
                            4.8,
                            between(5, 8),
                            readings(between(0, 12)),
                            length,
                            mass,
                            flare);
        };
    }

    private Ferrule ferrule(double bore, double outside, double length, double lip) {
        return new Ferrule(
                readings(bore),
                P1.exactly(outside),
                P1.exactly(outside - between(0, 0.4)),
                P1.exactly(length),
                lip,
                lip > 0 ? OptionalDouble.of(bore / 2) : none(),
                0,
                "brass",
                chance(0.3) ? OptionalDouble.of(between(2, 8)) : none());
    }

    private Blade blade() {
        return new Blade(
                P1.exactly(between(85, 130)),
                between(6, 40),
                between(1, 3),
                chance(0.3) ? OptionalDouble.of(between(0, 25)) : none(),
                "stainless",
                chance(0.7) ? OptionalDouble.of(between(15, 60)) : none(),
                chance(0.5),
                chance(0.5) ? OptionalDouble.of(between(10, 60)) : none());
    }

    private EndCap cap() {
        double spigot = between(4, 7);
        return new EndCap(
                readings(spigot),
                readings(between(5, 12)),
                P1.exactly(Math.max(spigot + 1, between(10, 18))),
                P1.exactly(between(1, 6)),
                chance(0.5) ? EndCap.Form.FLAT : EndCap.Form.DOMED,
                "brass",
                chance(0.5) ? OptionalDouble.of(between(2, 20)) : none(),
                chance(0.3) ? OptionalDouble.of(between(0, 3)) : none());
    }

    private Rack rack() {
        double point = POINTS[random.nextInt(POINTS.length)];
        List<Drill> drills = new ArrayList<>();
        for (int tenth = 10; tenth < 200; tenth += 1 + random.nextInt(5)) {
            drills.add(Drill.of(tenth / 10.0, "drill").withPointAngleDeg(point));
        }
        return Rack.of(drills);
    }

    private Butt butt() {
        double length = between(1, 3.5);
        return chance(0.4)
                ? new Butt.Domed(between(2, 8))
                : chance(0.5) ? new Butt.Rounded(length) : new Butt.Chamfered(length);
    }

    private void nodes(TestBrief brief) {
        int count = random.nextInt(6);
        for (int i = 0; i < count; i++) {
            double share = (i + between(0.2, 0.8)) / count * 0.9;
            double diameter = between(thinnest, 28);
            if (chance(0.3)) {
                brief.crisp(share, diameter);
            } else {
                brief.smooth(share, diameter);
            }
        }
    }

    private void details(TestBrief brief) {
        int count = random.nextInt(4);
        for (int i = 0; i < count; i++) {
            Place place = new Place.Share(between(0.05, 0.9));
            double width = between(1, 8);
            brief.detail(
                    switch (random.nextInt(6)) {
                        case 0 -> new Detail.Bead(place, width, width * between(0.1, 0.5));
                        case 1 -> new Detail.Cove(place, width, width * between(0.1, 0.5));
                        case 2 -> new Detail.Vee(place, width, width * between(0.1, 0.6));
                        case 3 -> new Detail.Fillet(place, width, between(-1.5, 1.5));
                        case 4 -> new Detail.Flat(place, width);
                        default -> new Detail.BurntLine(place, between(0.3, 1), between(0.1, 0.6));
                    });
        }
    }

    /** One number, or three readings about it. */
    private Measured readings(double value) {
        return chance(0.5)
                ? P1.exactly(value)
                : Measured.of(List.of(value, value + 0.05, Math.max(0, value - 0.03)), 0.05);
    }

    private static OptionalDouble none() {
        return OptionalDouble.empty();
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
