package haftline.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.adjust.takeoff.Ends;
import haftline.adjust.takeoff.Reading;
import haftline.adjust.takeoff.TakeOff;
import haftline.shape.Node;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TakeOffDrawingTest {
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
                TakeOffDrawing.of(taken, 0.1).groups().stream()
                        .flatMap(group -> group.elements().stream())
                        .filter(one -> one instanceof Text text && names.contains(text.string()))
                        .map(Element::bounds)
                        .toList();
        assertThat(names).hasSize(2);
        assertThat(places).hasSize(2);
        assertThat(places.get(0).touches(places.get(1))).isFalse();
    }
}
