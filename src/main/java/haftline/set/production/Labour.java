package haftline.set.production;

import haftline.set.Rates;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Time for a batch by the maker's own minutes.
 *
 * @param steps the steps in their order
 * @param perPiece minutes for all of each piece, its share of the setting up included, by name
 */
public record Labour(List<StepTime> steps, Map<String, Double> perPiece) {
    /**
     * Time of one step.
     *
     * @param name the step
     * @param setupMinutes once
     * @param workMinutes for all pieces together
     */
    public record StepTime(String name, double setupMinutes, double workMinutes) {
        /**
         * All of it.
         *
         * @return minutes
         */
        public double minutes() {
            return setupMinutes + workMinutes;
        }
    }

    /** Copies. */
    public Labour {
        steps = List.copyOf(steps);
        perPiece = Map.copyOf(perPiece);
    }

    /** Setting up is shared out by the count of pieces. */
    static Labour of(List<Order> orders, List<Rates.WorkStep> steps) {
        int all = orders.stream().mapToInt(Order::quantity).sum();
        List<StepTime> times = new ArrayList<>();
        Map<String, Double> perPiece = new LinkedHashMap<>();
        for (Rates.WorkStep step : steps) {
            double work = 0;
            for (Order order : orders) {
                double own = order.quantity() * step.minutes(order.piece());
                work += own;
                double setup = step.setupMinutes() * order.quantity() / all;
                perPiece.merge(order.piece(), own + setup, Double::sum);
            }
            times.add(new StepTime(step.name(), step.setupMinutes(), work));
        }
        return new Labour(times, perPiece);
    }

    /**
     * Minutes for all of a piece.
     *
     * @param piece the piece's name
     * @return minutes, 0 where no step is known
     */
    public double minutes(String piece) {
        return perPiece.getOrDefault(piece, 0.0);
    }

    /**
     * Minutes for the whole batch.
     *
     * @return minutes
     */
    public double minutes() {
        return steps.stream().mapToDouble(StepTime::minutes).sum();
    }
}
