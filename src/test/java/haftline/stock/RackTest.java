package haftline.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RackTest {
    private static final Rack RACK =
            Rack.of(List.of(drill(6.5), drill(5.5), drill(6.0), drill(8.0)));

    private static Drill drill(double diameter) {
        return Drill.of(diameter, Double.toString(diameter));
    }

    @Test
    void drills_standByRisingDiameter_twinsOnce() {
        Rack rack = Rack.of(List.of(drill(7), Drill.of(6, "6.0"), Drill.of(6, "6"), drill(5)));
        assertThat(rack.drills()).extracting(Drill::name).containsExactly("5.0", "6.0", "7.0");
    }

    @Test
    void drills_ofOneDiameterWithDifferentPoints_areBothKept() {
        Drill flat = drill(6).withPointAngleDeg(180);
        assertThat(Rack.of(List.of(drill(6), flat)).drills()).hasSize(2);
    }

    @Test
    void smallestAtLeast_isTheNextUpOrExact() {
        assertThat(RACK.smallestAtLeast(6.0).orElseThrow().diameterMm()).isEqualTo(6.0);
        assertThat(RACK.smallestAtLeast(6.01).orElseThrow().diameterMm()).isEqualTo(6.5);
        assertThat(RACK.smallestAtLeast(8.01)).isEmpty();
    }

    @Test
    void largestAtMost_isTheNextDownOrExact() {
        assertThat(RACK.largestAtMost(6.0).orElseThrow().diameterMm()).isEqualTo(6.0);
        assertThat(RACK.largestAtMost(5.99).orElseThrow().diameterMm()).isEqualTo(5.5);
        assertThat(RACK.largestAtMost(5.49)).isEmpty();
        assertThat(RACK.largestAtMost(50).orElseThrow().diameterMm()).isEqualTo(8.0);
    }

    @Test
    void nearest_ofTwoEquallyNear_isTheSmaller() {
        assertThat(RACK.nearest(6.25).orElseThrow().diameterMm()).isEqualTo(6.0);
        assertThat(RACK.nearest(6.26).orElseThrow().diameterMm()).isEqualTo(6.5);
        assertThat(RACK.nearest(1).orElseThrow().diameterMm()).isEqualTo(5.5);
        assertThat(RACK.nearest(20).orElseThrow().diameterMm()).isEqualTo(8.0);
    }

    @Test
    void holds_withinTheTolerance() {
        assertThat(RACK.holds(6.05, 0.05 + 1e-12)).isTrue();
        assertThat(RACK.holds(6.05, 0.04)).isFalse();
        assertThat(RACK.holds(8, 0)).isTrue();
    }

    @Test
    void emptyRack_givesNothing() {
        Rack empty = Rack.of(List.of());
        assertThat(empty.smallestAtLeast(6)).isEmpty();
        assertThat(empty.largestAtMost(6)).isEmpty();
        assertThat(empty.nearest(6)).isEmpty();
        assertThat(empty.holds(6, 100)).isFalse();
    }

    @Test
    void wish_thatIsNoNumber_isRefused() {
        assertThatThrownBy(() -> RACK.nearest(Double.NaN)).hasMessageContaining("diameterMm NaN");
    }

    @Test
    void lookups_agreeWithALookThroughAll() {
        long seed = 20260101;
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 200; round++) {
            List<Drill> drills = new ArrayList<>();
            for (int i = random.nextInt(12); i >= 0; i--) {
                drills.add(drill(random.nextInt(10, 130) / 10.0));
            }
            Rack rack = Rack.of(drills);
            double wish = random.nextInt(5, 140) / 10.0 + random.nextInt(2) * 0.05;
            Optional<Double> up = diameters(drills).filter(d -> d >= wish).findFirst();
            Optional<Double> down = diameters(drills).filter(d -> d <= wish).reduce((a, b) -> b);
            double near =
                    diameters(drills)
                            .min(Comparator.comparingDouble(d -> Math.abs(d - wish)))
                            .orElseThrow();
            assertThat(rack.smallestAtLeast(wish).map(Drill::diameterMm))
                    .as("seed %d", seed)
                    .isEqualTo(up);
            assertThat(rack.largestAtMost(wish).map(Drill::diameterMm))
                    .as("seed %d", seed)
                    .isEqualTo(down);
            assertThat(Math.abs(rack.nearest(wish).orElseThrow().diameterMm() - wish))
                    .as("seed %d", seed)
                    .isEqualTo(Math.abs(near - wish), within(1e-12));
        }
    }

    private static java.util.stream.Stream<Double> diameters(List<Drill> drills) {
        return drills.stream().map(Drill::diameterMm).sorted();
    }
}
