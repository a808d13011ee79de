package haftline.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import haftline.support.Biarcs;
import haftline.support.SampleDrawings;
import java.util.List;
import org.junit.jupiter.api.Test;

class PathTest {
    /** Two half circles of radius 5 and the sides between them, 20 long. */
    private static Path stadium() {
        return Path.from(0, -5)
                .lineTo(20, -5)
                .arcTo(20, 5, 1)
                .lineTo(0, 5)
                .arcTo(0, -5, 1)
                .close(Layer.CUT);
    }

    @Test
    void area_andBoundsOfAStadium() {
        assertThat(stadium().signedAreaMm2()).isCloseTo(200 + 25 * Math.PI, within(1e-12));
        assertThat(stadium().reversed().signedAreaMm2())
                .isCloseTo(-200 - 25 * Math.PI, within(1e-12));
        Bounds bounds = stadium().bounds();
        assertThat(bounds.minXMm()).isCloseTo(-5, within(1e-12));
        assertThat(bounds.maxXMm()).isCloseTo(25, within(1e-12));
        assertThat(bounds.heightMm()).isCloseTo(10, within(1e-12));
    }

    @Test
    void builder_sharesVerticesAndSkipsStepsOfNoHeight() {
        Path path =
                Path.from(0, 0)
                        .lineTo(0, 0)
                        .lineTo(1, 0)
                        .arcTo(1, 0, 0.5)
                        .lineTo(1, 1)
                        .open(Layer.SCORE);
        assertThat(path.segments()).hasSize(2);
        assertThat(path.segments().get(1).start()).isSameAs(path.segments().get(0).end());
    }

    @Test
    void chain_withAGapIsRefused() {
        List<Segment> apart =
                List.of(
                        new Line(new Vertex(0, 0), new Vertex(1, 0)),
                        new Line(new Vertex(1, 1e-12), new Vertex(2, 0)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Path(Layer.CUT, apart, false))
                .withMessageContaining("segment 1 starts at");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Path(Layer.CUT, apart.subList(0, 1), true))
                .withMessageContaining("closed path");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Path(Layer.CUT, List.of(), false));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Path.from(0, 0).lineTo(1, 0).open(Layer.CUT).signedAreaMm2());
    }

    @Test
    void withArcs_keepsSharedVerticesAndArea() {
        Path loop = (Path) SampleDrawings.halfProfile().elements().findFirst().orElseThrow();
        Path fitted = loop.withArcs(new Biarcs(0.01));
        assertThat(fitted.segments()).allMatch(s -> s instanceof Line || s instanceof Arc);
        assertThat(fitted.closed()).isTrue();
        assertThat(fitted.signedAreaMm2()).isCloseTo(loop.signedAreaMm2(), within(0.01 * 130));
        assertThat(fitted.segments().stream().map(Segment::start))
                .containsAll(loop.segments().stream().map(Segment::start).toList());
    }

    @Test
    void withArcs_refusesAFittingThatMovesAnEnd() {
        Path curve = Path.from(0, 0).cubicTo(1, 1, 2, 1, 3, 0).open(Layer.OUTLINE);
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                curve.withArcs(
                                        c -> List.of(new Line(c.start(), new Vertex(3, 1e-9)))))
                .withMessageStartingWith("arc fitting: expected a chain");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> curve.withArcs(List::of))
                .withMessageStartingWith("arc fitting: gave a Cubic");
    }

    @Test
    void mirrored_turnsTheLoopOver() {
        Path loop = (Path) SampleDrawings.halfProfile().elements().findFirst().orElseThrow();
        assertThat(loop.mirrored().signedAreaMm2()).isCloseTo(-loop.signedAreaMm2(), within(1e-9));
        assertThat(loop.mirrored().bounds().minYMm()).isEqualTo(-loop.bounds().maxYMm());
    }

    @Test
    void drawing_needsAnElementAndATitle() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Drawing("a", "", List.of(new Group("g", List.of()))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Drawing(" ", "", SampleDrawings.halfProfile().groups()));
    }
}
