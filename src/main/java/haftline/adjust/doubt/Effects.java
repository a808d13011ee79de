package haftline.adjust.doubt;

import java.util.SplittableRandom;

/**
 * How much of a figure's variance each of several independent inputs accounts for: its Shapley
 * effect (Owen, Sobol' indices and Shapley value, SIAM/ASA J. Uncertainty Quantification 2, 2014).
 * It lies between Sobol's first-order index, what the input does by itself, and his total index,
 * what is lost where it is held still; what inputs do together is dealt out evenly among them, so
 * that the effects of all inputs add up to the whole, as first-order indices do not.
 *
 * <p>Estimated by Goda's walk (A simple algorithm for global sensitivity analysis with Shapley
 * effects, Reliability Engineering and System Safety 213, 2021): of two independent handles one
 * turns into the other, input by input in an order drawn at random. The steps of one walk add up to
 * half of the square of what the two handles differ by, whatever the order, so that the estimates
 * too add up to the estimated variance. An effect that is nearly none may be estimated a little
 * under it; it is told as none and the others are scaled to add up to 1.
 */
final class Effects {
    /** What is made of figures. */
    @FunctionalInterface
    interface Model {
        /**
         * Works one out.
         *
         * @param figures one draw of all inputs
         * @param answers takes what is asked about
         */
        void at(double[] figures, double[] answers);
    }

    private final int[] inputOf;
    private final int[] walked;
    private final int inputs;
    private final int answers;

    /**
     * Effects of inputs.
     *
     * @param inputOf which input each figure belongs to
     * @param walked the inputs that do anything; the effect of any other is none
     * @param inputs how many inputs there are
     * @param answers how many answers the model gives
     */
    Effects(int[] inputOf, int[] walked, int inputs, int answers) {
        this.inputOf = inputOf.clone();
        this.walked = walked.clone();
        this.inputs = inputs;
        this.answers = answers;
    }

    /** Room for the sums of many walks. */
    double[] sums() {
        return new double[inputs * answers];
    }

    /** Walks from one draw to another and adds what each step does. */
    void walk(double[] from, double[] to, Model model, SplittableRandom random, double[] sums) {
        double[] at = from.clone();
        double[] first = new double[answers];
        double[] before = new double[answers];
        double[] here = new double[answers];
        model.at(at, first);
        System.arraycopy(first, 0, before, 0, answers);
        for (int input : order(random)) {
            for (int f = 0; f < at.length; f++) {
                at[f] = inputOf[f] == input ? to[f] : at[f];
            }
            model.at(at, here);
            for (int k = 0; k < answers; k++) {
                sums[input * answers + k] +=
                        (first[k] - (before[k] + here[k]) / 2) * (before[k] - here[k]);
                before[k] = here[k];
            }
        }
    }

    private int[] order(SplittableRandom random) {
        int[] order = walked.clone();
        for (int i = order.length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int kept = order[i];
            order[i] = order[j];
            order[j] = kept;
        }
        return order;
    }

    /** The effects on one answer, 0 or more, which add up to 1; all 0 where nothing moves it. */
    double[] shares(double[] sums, int answer) {
        double[] shares = new double[inputs];
        double all = 0;
        for (int i = 0; i < inputs; i++) {
            shares[i] = Math.max(0, sums[i * answers + answer]);
            all += shares[i];
        }
        for (int i = 0; i < inputs; i++) {
            shares[i] = all > 0 ? shares[i] / all : 0;
        }
        return shares;
    }
}
