package haftline.cli;

import haftline.adjust.doubt.Doubt;
import haftline.adjust.doubt.DoubtRun;
import haftline.adjust.doubt.Scatter;
import haftline.adjust.doubt.Watch;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.handle.Wander;
import java.util.Optional;

/**
 * What chance makes of one piece, drilled as stated and in another way.
 *
 * @param stated drilled as the set says
 * @param otherWay another way to drill, one of the presets
 * @param other the same handles drilled in that way
 */
record PieceDoubt(Doubt stated, String otherWay, Doubt other) {
    static final String CENTRED = "lathe, centre drill first";
    static final String UNCENTRED = "lathe";

    /** Runs both ways with one seed; empty for a piece that cannot be drawn. */
    static Optional<PieceDoubt> of(ExaminedPiece piece, long seed, int handles) {
        if (piece.figures().isEmpty()) {
            return Optional.empty();
        }
        Handle handle = piece.figures().get().handle();
        boolean centred = handle.wander().slope() <= Wander.PRESETS.get(CENTRED).slope();
        String way = centred ? UNCENTRED : CENTRED;
        Brief brief = piece.brief();
        Resolution otherwise =
                Resolve.of(
                        brief.withChoices(
                                brief.choices().toBuilder()
                                        .wander(Wander.PRESETS.get(way))
                                        .build()));
        // Wander moves no outline, so what could be drawn can be drawn again.
        Handle other = ((Resolution.Resolved) otherwise).handle();
        return Optional.of(
                new PieceDoubt(run(handle, seed, handles), way, run(other, seed, handles)));
    }

    private static Doubt run(Handle handle, long seed, int handles) {
        Scatter scatter = Scatter.usual(handle.brief().stock());
        int threads = Runtime.getRuntime().availableProcessors();
        return DoubtRun.of(handle, scatter, seed, handles, threads, Watch.NOBODY).orElseThrow();
    }
}
