package haftline.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class LoopOffsetTest {
    private static final long SEED = 4_09_02;

    @Test
    void keepsItsDistanceAndTheAreaOfAnIndependentOffset_randomCards() {
        SplittableRandom random = new SplittableRandom(SEED);
        BufferParameters fine = new BufferParameters(64);
        fine.setSimplifyFactor(1e-6);
        double worst = 0;
        double worstArea = 0;
        int several = 0;
        int gone = 0;
        for (int i = 0; i < 700; i++) {
            Loop card = RandomLoops.card(random);
            double d =
                    random.nextInt(3) == 0
                            ? random.nextDouble(0.03, 0.2)
                            : random.nextDouble(0.2, 9);
            double signed = random.nextBoolean() ? d : -d;
            String what = "seed " + SEED + ", card " + i + ", offset " + signed;
            LoopOffset moved = card.offset(signed);
            OffsetCheck check = moved.check(1e-6);
            worst = Math.max(worst, check.deviationMm());
            assertThat(check.holds()).as("%s: %s", what, check).isTrue();
            Polygon flat = Flattened.polygon(card, 1e-4);
            assertThat(flat.isValid()).as(what).isTrue();
            double expected = new BufferOp(flat, fine).getResultGeometry(signed).getArea();
            double area = moved.loops().stream().mapToDouble(Loop::area).sum();
            // Chords of the independent offset: rise of a 64th of a quarter turn, all round.
            double room = 1e-3 * card.length() + d * d * 1e-3 * 30;
            worstArea = Math.max(worstArea, Math.abs(area - expected) / room);
            assertThat(area).as(what).isCloseTo(expected, within(room));
            several += moved.loops().size() > 1 ? 1 : 0;
            gone += moved.isVanished() ? 1 : 0;
        }
        assertThat(several).isGreaterThan(20);
        assertThat(gone).isGreaterThan(2);
    }

    @Test
    void growsAndShrinksARectangleExactly() {
        Loop rectangle = rectangle(0, 0, 40, 20);
        Loop grown = rectangle.offset(3).single();
        assertThat(grown.area()).isCloseTo(40 * 20 + 2 * 3 * 60 + Math.PI * 9, within(1e-9));
        assertThat(grown.strokes()).hasSize(12);
        Loop shrunk = rectangle.offset(-3).single();
        assertThat(shrunk.area()).isCloseTo(34 * 14, within(1e-9));
        assertThat(shrunk.strokes()).hasSize(4);
    }

    @Test
    void comesApartWhereItsNeckIsTooNarrow() {
        Loop dumbbell =
                loop(
                        0, 0, 20, 0, 20, 8, 40, 8, 40, 0, 60, 0, 60, 20, 40, 20, 40, 12, 20, 12, 20,
                        20, 0, 20);
        LoopOffset parts = dumbbell.offset(-3);
        // A square, and beside it what two discs of 3 about corners 4 apart leave between them.
        double between = 2 * (6 - Math.sqrt(5) - 4.5 * Math.asin(2 / 3.0));
        assertThat(parts.loops())
                .hasSize(2)
                .allSatisfy(
                        part -> assertThat(part.area()).isCloseTo(14 * 14 + between, within(1e-9)));
        assertThat(parts.check(1e-9).holds()).isTrue();
    }

    @Test
    void closesAPocketOffAsAnOpening() {
        Loop pocket =
                loop(
                        0, 0, 40, 0, 40, 40, 22, 40, 22, 30, 30, 30, 30, 10, 10, 10, 10, 30, 18, 30,
                        18, 40, 0, 40);
        LoopOffset grown = pocket.offset(3);
        assertThat(grown.loops()).hasSize(2);
        assertThat(grown.loops().stream().filter(loop -> loop.area() < 0)).hasSize(1);
    }

    @Test
    void vanishesWithoutComplaint() {
        assertThat(rectangle(0, 0, 40, 5).offset(-3).isVanished()).isTrue();
        assertThat(rectangle(0, 0, 40, 6).offset(-3).isVanished()).isTrue();
        assertThat(Loop.circle(new Spot(0, 0), 5).offset(-3).isVanished()).isTrue();
    }

    @Test
    void keepsAnArcAnArc() {
        Loop circle = Loop.circle(new Spot(3, 4), 10).offset(-1.5).single();
        assertThat(circle.strokes())
                .hasSize(2)
                .allSatisfy(s -> assertThat(s.radius()).isCloseTo(3.5, within(1e-12)));
    }

    static Loop rectangle(double x0, double y0, double x1, double y1) {
        return loop(x0, y0, x1, y0, x1, y1, x0, y1);
    }

    static Loop loop(double... xy) {
        Spot[] spots = new Spot[xy.length / 2];
        for (int i = 0; i < spots.length; i++) {
            spots[i] = new Spot(xy[2 * i], xy[2 * i + 1]);
        }
        List<Stroke> strokes = new java.util.ArrayList<>();
        for (int i = 0; i < spots.length; i++) {
            strokes.add(Stroke.line(spots[i], spots[(i + 1) % spots.length]));
        }
        return new Loop(strokes);
    }
}
