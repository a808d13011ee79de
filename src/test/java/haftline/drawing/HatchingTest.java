package haftline.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class HatchingTest {
    private static final GeometryFactory JTS = new GeometryFactory();

    private static final Path OUTER =
            Path.from(0, 0)
                    .lineTo(60, 0)
                    .arcTo(60, 30, 0.7)
                    .cubicTo(45, 10, 20, 45, 0, 30)
                    .close(Layer.OUTLINE);
    private static final Path HOLE =
            Path.from(20, 10).arcTo(30, 10, 1).arcTo(20, 10, 1).close(Layer.OUTLINE);

    @ParameterizedTest
    @ValueSource(doubles = {45, -45, 30, 0, 90})
    void lines_lieInsideAndCoverTheFaceEvenly(double angleDeg) {
        double spacing = 0.5;
        List<Element> lines = new Hatching(angleDeg, spacing).over(List.of(OUTER, HOLE));
        Geometry face = polygon(OUTER).difference(polygon(HOLE));
        double length = 0;
        for (Element element : lines) {
            Line line = (Line) ((Path) element).segments().get(0);
            length += line.start().distanceMm(line.end());
            assertThat(element.layer()).isEqualTo(Layer.HATCH);
            assertThat(face.buffer(0.03).covers(jts(line))).isTrue();
        }
        // Cavalieri: the lines times their distance fill the face.
        assertThat(length * spacing).isCloseTo(face.getArea(), within(0.01 * face.getArea()));
    }

    @Test
    void rows_throughCornersCountOnce() {
        Path square = Path.from(0, 0).lineTo(10, 0).lineTo(10, 10).lineTo(0, 10).close(Layer.CUT);
        List<Element> lines = new Hatching(0, 5).over(List.of(square));
        // Rows at 0, 5 and 10 meet the square; of the two that run along an edge one counts.
        assertThat(lines).hasSize(2);
        Path diamond = Path.from(0, -5).lineTo(5, 0).lineTo(0, 5).lineTo(-5, 0).close(Layer.CUT);
        assertThat(new Hatching(0, 5).over(List.of(diamond)))
                .containsExactly(Path.line(Layer.HATCH, new Vertex(-5, 0), new Vertex(5, 0)));
    }

    @Test
    void hatching_refusesOpenPathsAndTooClosePitch() {
        Path open = Path.from(0, 0).lineTo(10, 0).open(Layer.CUT);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Hatching.standard().over(List.of(open)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Hatching(45, 0.4));
    }

    private static Geometry polygon(Path loop) {
        List<Coordinate> ring = new ArrayList<>();
        Vertex first = loop.segments().get(0).start();
        ring.add(new Coordinate(first.xMm(), first.yMm()));
        for (Segment segment : loop.segments()) {
            for (Vertex vertex : segment.chords(0.001)) {
                ring.add(new Coordinate(vertex.xMm(), vertex.yMm()));
            }
        }
        return JTS.createPolygon(ring.toArray(new Coordinate[0]));
    }

    private static Geometry jts(Line line) {
        return JTS.createLineString(
                new Coordinate[] {
                    new Coordinate(line.start().xMm(), line.start().yMm()),
                    new Coordinate(line.end().xMm(), line.end().yMm())
                });
    }
}
