package haftline.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DimensionTest {
    private static final DimensionStyle STYLE = DimensionStyle.standard();

    @Test
    void horizontal_pointsOutwardBetweenItsEndsWithTheFigureAbove() {
        List<Element> drawn =
                Dimension.horizontal(STYLE, new Vertex(50, 3), new Vertex(10, 5), -10, "40");
        List<Arrowhead> arrows = all(drawn, Arrowhead.class).toList();
        assertThat(arrows)
                .extracting(Arrowhead::tip)
                .containsExactly(new Vertex(10, -10), new Vertex(50, -10));
        // Each arrowhead's body lies between the tips.
        assertThat(arrows.get(0).bounds().maxXMm()).isCloseTo(12.5, within(1e-12));
        assertThat(arrows.get(1).bounds().minXMm()).isCloseTo(47.5, within(1e-12));
        Text text = all(drawn, Text.class).findFirst().orElseThrow();
        assertThat(text.position().xMm()).isEqualTo(30);
        assertThat(text.position().yMm()).isGreaterThan(-10);
        assertThat(text.rotationDeg()).isZero();
    }

    @Test
    void extensionLines_startClearOfTheObjectAndRunPastTheLine() {
        List<Element> drawn =
                Dimension.horizontal(STYLE, new Vertex(10, 5), new Vertex(50, 3), -10, "40");
        Bounds left =
                all(drawn, Path.class)
                        .map(Path::bounds)
                        .filter(bounds -> bounds.widthMm() < 1e-9 && bounds.minXMm() < 30)
                        .findFirst()
                        .orElseThrow();
        assertThat(left.maxYMm()).isCloseTo(5 - STYLE.gapMm(), within(1e-12));
        assertThat(left.minYMm()).isCloseTo(-10 - STYLE.overshootMm(), within(1e-12));
    }

    @Test
    void vertical_isReadFromTheRight() {
        List<Element> drawn =
                Dimension.vertical(
                        STYLE, new Vertex(0, -7), new Vertex(0, 7), -10, Dimension.DIAMETER + "14");
        Text text = all(drawn, Text.class).findFirst().orElseThrow();
        assertThat(text.string()).isEqualTo("\u230014");
        assertThat(text.rotationDeg()).isEqualTo(90);
        assertThat(text.position().xMm()).isLessThan(-10);
        assertThat(text.position().yMm()).isZero();
    }

    @Test
    void narrowLength_hasItsArrowsAndAWideFigureOutside() {
        List<Element> drawn =
                Dimension.horizontal(STYLE, new Vertex(0, 0), new Vertex(4, 0), -10, "4.25");
        List<Arrowhead> arrows = all(drawn, Arrowhead.class).toList();
        assertThat(arrows.get(0).bounds().minXMm()).isLessThan(0);
        assertThat(arrows.get(1).bounds().maxXMm()).isGreaterThan(4);
        Text text = all(drawn, Text.class).findFirst().orElseThrow();
        assertThat(text.bounds().minXMm()).isGreaterThan(4);
    }

    @Test
    void rows_shareOneExtensionLinePerPlace() {
        Vertex a = new Vertex(0, -6);
        Vertex b = new Vertex(30, -7);
        Vertex c = new Vertex(90, -8);
        List<Element> drawn =
                DimensionRows.below(STYLE, -20)
                        .add(0, a, b, "30")
                        .add(0, b, c, "60")
                        .add(1, c, a, "90")
                        .elements();
        List<Bounds> upright =
                all(drawn, Path.class)
                        .map(Path::bounds)
                        .filter(bounds -> bounds.widthMm() < 1e-9)
                        .toList();
        assertThat(upright).extracting(Bounds::minXMm).containsExactly(0.0, 30.0, 90.0);
        double deepest = -20 - STYLE.rowMm() - STYLE.overshootMm();
        assertThat(upright.get(0).minYMm()).isCloseTo(deepest, within(1e-12));
        assertThat(upright.get(1).minYMm()).isCloseTo(-20 - STYLE.overshootMm(), within(1e-12));
        assertThat(upright.get(2).minYMm()).isCloseTo(deepest, within(1e-12));
    }

    @Test
    void shortened_keepsWholeCharacters() {
        String name = "\uD83E\uDDAA".repeat(20);
        String cut = Text.shortened(name, 10 * 2.5 * 0.82, 2.5);
        assertThat(cut.codePointCount(0, cut.length())).isEqualTo(10);
        assertThat(cut).endsWith("\u2026").startsWith("\uD83E\uDDAA");
        assertThat(Text.shortened("short", 100, 2.5)).isEqualTo("short");
    }

    private static <T extends Element> Stream<T> all(List<Element> drawn, Class<T> kind) {
        return drawn.stream().filter(kind::isInstance).map(kind::cast);
    }
}
