package haftline.adjust.takeoff;

import haftline.shape.Butt;
import java.util.List;

/** Figures as a maker writes them: hundredths of a millimetre. */
final class Rounded {
    private static final double PER_MM = 100;

    private Rounded() {}

    static Draft of(Draft draft) {
        Butt butt = draft.butt();
        if (butt.lengthMm() > 0) {
            butt = DraftFit.butt(butt, mm(butt.lengthMm()));
        }
        List<LaidDetail> details =
                draft.details().stream()
                        .map(
                                one ->
                                        one.with(
                                                edge(one.left(), one.from()),
                                                edge(one.right(), one.to()),
                                                mm(one.heightMm())))
                        .toList();
        return new Draft(
                draft.woodMm(),
                mm(draft.shoulderMm()),
                mm(draft.seatMm()),
                draft.nodes().stream()
                        .map(node -> new DraftNode(node.x(), mm(node.diameterMm()), node.crisp()))
                        .toList(),
                draft.first(),
                draft.last(),
                details,
                butt);
    }

    /** An edge at a reading stays there, whatever its decimals; two details may share it. */
    private static double edge(Cut cut, double x) {
        return cut.x() == x ? x : mm(x);
    }

    static double mm(double value) {
        return Math.round(value * PER_MM) / PER_MM;
    }
}
