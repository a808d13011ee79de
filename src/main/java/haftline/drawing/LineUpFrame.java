package haftline.drawing;

import haftline.measure.NumberText;
import java.util.ArrayList;
import java.util.List;

/**
 * The frame of a line-up with what stands in its foot.
 *
 * @param format paper and unit
 * @param frame its size, its lower left corner the origin
 * @param scale drawn size of the pieces over their true size
 * @param batch the measured batch of their parts
 */
record LineUpFrame(SheetFormat format, SheetFormat.Frame frame, double scale, String batch) {
    static final double PAD_MM = 4;

    /** Room for what stands in the foot, mm. */
    static final double FOOT_MM = 16;

    private static final double TITLE_MM = 5;
    private static final double TEXT_MM = 2.5;

    /** Room for a check bar, mm. */
    private static final double BAR_ROOM_MM = 50;

    /** Room for the words of a reduced sheet, mm. */
    private static final double REDUCED_ROOM_MM = 62;

    /** How much higher than the foot a check bar's room begins, mm, so that it stands amid it. */
    private static final double BAR_TOP_MM = 5;

    /** Its lines and words. */
    List<Element> of(String title) {
        double width = frame.widthMm();
        double height = frame.heightMm();
        List<Element> out = new ArrayList<>();
        out.add(
                Path.from(0, 0)
                        .lineTo(width, 0)
                        .lineTo(width, height)
                        .lineTo(0, height)
                        .close(Layer.OUTLINE));
        out.add(Path.line(Layer.TEXT, new Vertex(0, FOOT_MM - 1), new Vertex(width, FOOT_MM - 1)));
        out.add(words(PAD_MM, FOOT_MM - 9, TITLE_MM, title, width / 2));
        String at =
                "batch "
                        + batch
                        + " · pieces at 1:"
                        + NumberText.upTo(1 / scale, 0)
                        + " · "
                        + format.units().heading()
                        + " · in brackets: beside the set's middle figure · blades as sketched";
        double room = width - (scale == 1 ? BAR_ROOM_MM : REDUCED_ROOM_MM) - 3 * PAD_MM;
        out.add(words(PAD_MM, 2.5, Text.fittingMm(at, room, TEXT_MM), at, room));
        if (scale == 1) {
            double bar = width - PAD_MM - BAR_ROOM_MM;
            out.addAll(format.checkBar(new Vertex(bar, (FOOT_MM + BAR_TOP_MM) / 2)).elements());
        } else {
            out.add(right(width, 7, "reduced: take no measure from it"));
            out.add(right(width, 2.5, "sections and templates are at full size"));
        }
        return out;
    }

    private static Text right(double width, double y, String words) {
        return Text.level(Layer.TEXT, width - PAD_MM, y, TEXT_MM, Anchor.END, words);
    }

    private static Text words(double x, double y, double size, String words, double room) {
        String shown = Text.shortened(words, room, size);
        return Text.level(Layer.TEXT, x, y, size, Anchor.START, shown);
    }
}
