package haftline.ui.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.paint.Color;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Contrasts of WCAG 2.1: relative luminance and ratio as its definitions have them. */
class PaletteTest {
    static List<Palette> themes() {
        return List.of(Palette.PAPER, Palette.SLATE);
    }

    private static double channel(double c) {
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static double luminance(Color colour) {
        return 0.2126 * channel(colour.getRed())
                + 0.7152 * channel(colour.getGreen())
                + 0.0722 * channel(colour.getBlue());
    }

    private static double contrast(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    @ParameterizedTest
    @MethodSource("themes")
    void textCanBeReadOnPaperPanelAndRuler(Palette theme) {
        for (Color ground : List.of(theme.paper(), theme.panel(), theme.margin())) {
            for (Color text :
                    List.of(
                            theme.ink(),
                            theme.soft(),
                            theme.accent(),
                            theme.good(),
                            theme.near(),
                            theme.stop())) {
                assertThat(contrast(text, ground))
                        .as("%s: %s on %s", theme.name(), text, ground)
                        .isGreaterThanOrEqualTo(4.5);
            }
        }
    }
}
