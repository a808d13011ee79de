package haftline.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class StrokeFontTest {
    private static final String ALPHABET =
            "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789"
                    + ".,:;-+=/\\()[]'\"!?#%&*_<>|\u2300\u00b5\u00b0\u00d7\u00b1\u00b7\u2013\u2190\u2192\u2026";

    @Test
    void drawsEveryLetterFigureAndSignDifferently() {
        List<String> drawn = ALPHABET.codePoints().mapToObj(StrokeGlyphs::of).toList();
        assertThat(drawn)
                .doesNotContainNull()
                .doesNotHaveDuplicates()
                .doesNotContain(StrokeGlyphs.UNKNOWN);
    }

    @Test
    void letsNoTwoNeighboursTouch() {
        for (int code : ALPHABET.codePoints().toArray()) {
            String twice = new String(Character.toChars(code)).repeat(2);
            Lettering lettering = Lettering.level(0, 0, 6, Lettering.Align.START, twice);
            List<List<List<Stroke>>> glyphs = StrokeFont.glyphs(lettering);
            double left =
                    glyphs.get(0).stream()
                            .flatMap(List::stream)
                            .mapToDouble(s -> s.box().maxX())
                            .max()
                            .orElse(0);
            double right =
                    glyphs.get(1).stream()
                            .flatMap(List::stream)
                            .mapToDouble(s -> s.box().minX())
                            .min()
                            .orElse(0);
            assertThat(right - left).as(twice).isGreaterThan(0.8);
        }
    }

    @Test
    void outlinesAreTheStrokesWithARoundPen() {
        double pen = 0.8;
        for (int code : ALPHABET.codePoints().toArray()) {
            String text = new String(Character.toChars(code));
            Lettering lettering = Lettering.level(0, 0, 6, Lettering.Align.START, text);
            List<Stroke> strokes = lettering.strokes().stream().flatMap(List::stream).toList();
            List<Loop> outlines = lettering.outlines(pen);
            OffsetCheck check = OffsetCheck.of(outlines, strokes, pen / 2, 0.011);
            assertThat(check.holds()).as("%s: %s", text, check).isTrue();
            double ink = outlines.stream().mapToDouble(Loop::area).sum();
            double length = strokes.stream().mapToDouble(Stroke::length).sum();
            // Not more than all strokes laid end to end, not less than half of that.
            assertThat(ink)
                    .as(text)
                    .isBetween(0.5 * pen * length, pen * length + strokes.size() * pen * pen);
        }
    }

    @Test
    void writesAccentsAndReplacesWhatItLacks() {
        assertThat(strokes("\u00e9")).isEqualTo(strokes("e") + 1);
        assertThat(strokes("\u00dc")).isEqualTo(strokes("U") + 2);
        assertThat(StrokeFont.widthMm("\u6f22", 6)).isCloseTo(3.2, within(1e-12));
        assertThat(StrokeFont.widthMm("a b", 6)).isGreaterThan(StrokeFont.widthMm("ab", 6));
    }

    private static int strokes(String text) {
        return Lettering.level(0, 0, 6, Lettering.Align.START, text).strokes().stream()
                .mapToInt(List::size)
                .sum();
    }
}
