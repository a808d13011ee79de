package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.cli.RandomHandles;
import haftline.curve.Outline;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Stations of random handles against their outline, nodes and walls. */
class StationsTest {
    private static final List<Handle> HANDLES = RandomHandles.of(11, 60);

    @Test
    void stations_standInOrderOnTheOutline() {
        for (Handle handle : HANDLES) {
            Outline outline = handle.outline();
            double before = outline.startX();
            List<Station> stations = Stations.of(handle);
            for (Station station : stations) {
                assertThat(station.x()).isGreaterThanOrEqualTo(before);
                assertThat(station.diameterMm() / 2)
                        .isIn(outline.rBefore(station.x()), outline.rAfter(station.x()));
                before = station.x();
            }
            assertThat(stations.get(0).x()).isEqualTo(outline.startX());
            assertThat(before).isEqualTo(outline.endX());
        }
    }

    @Test
    void everyNodeStepAndWidestPlace_isAStation() {
        for (Handle handle : HANDLES) {
            List<Station> stations = Stations.of(handle);
            for (PlacedNode node : handle.nodes()) {
                assertThat(stations).anyMatch(station -> Math.abs(station.x() - node.x()) < 1e-6);
            }
            handle.outline()
                    .joints()
                    .forEach(
                            joint ->
                                    assertThat(stations)
                                            .filteredOn(s -> Math.abs(s.x() - joint.x()) < 1e-6)
                                            .hasSize(Math.abs(joint.step()) > 1e-6 ? 2 : 1));
            double widest = stations.stream().mapToDouble(Station::diameterMm).max().orElse(0);
            assertThat(widest).isCloseTo(2 * handle.outline().greatest().r(), within(1e-9));
        }
    }

    @Test
    void walls_areNeverUnderTheLeastOfTheirZone() {
        for (Handle handle : HANDLES) {
            double least = Walls.of(handle).stream().mapToDouble(Wall::worstMm).min().orElseThrow();
            assertThat(Stations.of(handle))
                    .extracting(Station::wallMm)
                    .filteredOn(OptionalDouble::isPresent)
                    .isNotEmpty()
                    .allMatch(wall -> wall.getAsDouble() >= least - 1e-9);
        }
    }
}
