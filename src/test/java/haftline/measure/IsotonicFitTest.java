package haftline.measure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class IsotonicFitTest {
    @Test
    void valuesInOrderStayAsTheyAre() {
        double[] values = {-1, 0, 0, 2.5, 7};
        assertArrayEquals(values, IsotonicFit.of(values));
        assertEquals(0, IsotonicFit.of(new double[0]).length);
    }

    @Test
    void neighboursOutOfOrderMeetAtTheirMean() {
        double[] values = {1, 3, 2, 4, 3.5, 3.5, 6};
        double[] given = values.clone();
        double pooled = (4 + 3.5 + 3.5) / 3;
        assertArrayEquals(
                new double[] {1, 2.5, 2.5, pooled, pooled, pooled, 6},
                IsotonicFit.of(values),
                1e-12);
        assertArrayEquals(given, values, "the values are not touched");
    }

    /**
     * The closed form of the same fit, from memory: each value is the greatest, over the stretches
     * that begin at or before it, of the least mean of such a stretch to an end at or after it.
     */
    @Test
    void agreesWithTheClosedForm() {
        Random random = new Random(7);
        for (int round = 0; round < 300; round++) {
            double[] values =
                    random.doubles(1 + random.nextInt(12), -50, 50).map(Math::rint).toArray();
            double[] fit = IsotonicFit.of(values);
            for (int i = 0; i < values.length; i++) {
                double greatest = Double.NEGATIVE_INFINITY;
                for (int from = 0; from <= i; from++) {
                    double least = Double.POSITIVE_INFINITY;
                    for (int to = i; to < values.length; to++) {
                        double mean = Arrays.stream(values, from, to + 1).average().orElseThrow();
                        least = Math.min(least, mean);
                    }
                    greatest = Math.max(greatest, least);
                }
                assertEquals(greatest, fit[i], 1e-9, Arrays.toString(values));
            }
        }
    }
}
