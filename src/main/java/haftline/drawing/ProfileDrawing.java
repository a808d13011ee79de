package haftline.drawing;

import haftline.curve.Outline;
import java.util.ArrayList;
import java.util.List;

/**
 * The plain half-profile of a turned piece: one closed loop along the axis and the outline, to be
 * taken into another program, and nothing else.
 */
public final class ProfileDrawing {
    /** Over the profile, where the mark of a stopped piece stands, mm. */
    private static final double MARK_GAP_MM = 4;

    private ProfileDrawing() {}

    /**
     * The profile of a piece.
     *
     * @param title what it is, any text
     * @param outline finished size of the turned wood
     * @param stopped whether the piece cannot be made so, which is then written over it
     * @return the drawing, x from the shoulder, y from the axis
     */
    public static Drawing of(String title, Outline outline, boolean stopped) {
        PathBuilder loop = Path.from(outline.startX(), 0);
        Path profile =
                OutlinePath.follow(loop, outline).lineTo(outline.endX(), 0).close(Layer.OUTLINE);
        List<Group> groups = new ArrayList<>(List.of(new Group("profile", List.of(profile))));
        if (stopped) {
            groups.add(
                    new Group(
                            "mark",
                            List.of(
                                    Text.level(
                                            Layer.TEXT,
                                            outline.startX(),
                                            outline.greatest().r() + MARK_GAP_MM,
                                            TitleBlock.MARK_HEIGHT_MM,
                                            Anchor.START,
                                            TitleBlock.MARK))));
        }
        return new Drawing(
                title,
                "Half-profile of the turned wood at full size, lengths in millimetres.",
                groups);
    }
}
