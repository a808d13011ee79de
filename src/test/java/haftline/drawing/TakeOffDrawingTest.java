package haftline.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.adjust.takeoff.Ends;
import haftline.adjust.takeoff.Reading;
import haftline.adjust.takeoff.TakeOff;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.shape.Node;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TakeOffDrawingTest {
    /**
     * Two millimetres off on a scale of a few tenths: an arrow points out of it, with the figure.
     */
    @Test
    void aStrayBeyondTheScaleIsToldByAnArrowAndItsFigure() {
        List<Reading> readings = new ArrayList<>();
        for (int x = 0; x <= 80; x += 4) {
            double off = x == 24 ? 2 : x == 60 ? -1.5 : 0;
            readings.add(new Reading(x, 20 - 0.002 * (x - 40) * (x - 40) + off, 0));
        }
        TakeOff taken = TakeOff.of(readings, 0.1, "barrel", Ends.UNKNOWN).orElseThrow();
        assertThat(taken.strays()).hasSize(2);
        List<Element> drawn =
                TakeOffDrawing.of(taken, 0.1, Units.MM).groups().stream()
                        .flatMap(group -> group.elements().stream())
                        .toList();
        List<Arrowhead> arrows =
                drawn.stream()
                        .filter(Arrowhead.class::isInstance)
                        .map(Arrowhead.class::cast)
                        .toList();
        assertThat(arrows).extracting(arrow -> arrow.tip().xMm()).containsExactly(24.0, 60.0);
        assertThat(arrows).extracting(Arrowhead::pointsDeg).containsExactly(90.0, -90.0);
        assertThat(drawn)
                .filteredOn(Text.class::isInstance)
                .extracting(text -> ((Text) text).string())
                .contains("+" + NumberText.fixed(taken.strays().get(0).mm(), 2))
                .contains(NumberText.said(NumberText.fixed(taken.strays().get(1).mm(), 2)))
                .anyMatch(text -> text.contains("beyond the scale"));
    }

    /** A step is two nodes half a millimetre apart, whose names would lie on one another. */
    @Test
    void keepsTheNamesOfNodesApart() {
        List<Reading> readings = new ArrayList<>();
        for (int x = 0; x <= 60; x += 2) {
            if (x == 20) {
                readings.add(new Reading(x, 14, 0));
            }
            readings.add(new Reading(x, x < 20 ? 14 : 18, 0));
        }
        TakeOff taken = TakeOff.of(readings, 0.1, "step", Ends.UNKNOWN).orElseThrow();
        List<String> names = taken.shape().nodes().stream().map(Node::name).toList();
        List<Bounds> places =
                TakeOffDrawing.of(taken, 0.1, Units.MM).groups().stream()
                        .flatMap(group -> group.elements().stream())
                        .filter(one -> one instanceof Text text && names.contains(text.string()))
                        .map(Element::bounds)
                        .toList();
        assertThat(names).hasSize(2);
        assertThat(places).hasSize(2);
        assertThat(places.get(0).touches(places.get(1))).isFalse();
    }
}
