package haftline.drawing;

import haftline.measure.NumberText;
import haftline.template.Card;
import haftline.template.SheetLayout;
import haftline.template.SheetSize;
import java.util.ArrayList;
import java.util.List;

/**
 * Sheets of cards as scenes. The sheet's own edge and the notes under it are no cut lines; under
 * the sheet stands a bar by which a print is checked.
 */
public final class SheetDrawing {
    private static final double NOTE_MM = 3;
    private static final double NOTE_GAP_MM = 3;
    private static final double CHECK_BAR_MM = 100;

    private SheetDrawing() {}

    /**
     * One scene a sheet.
     *
     * @param title what is drawn, such as the name of the set
     * @param layout the layout
     * @param cards how cards are drawn
     * @param note what cuts them, such as {@link haftline.template.CuttingTool#note()}
     * @return as many scenes as sheets
     */
    public static List<Drawing> of(
            String title, SheetLayout layout, CardDrawing cards, String note) {
        List<Drawing> drawings = new ArrayList<>();
        int count = layout.sheets().size();
        for (int i = 0; i < count; i++) {
            String name = title + ", sheet " + (i + 1) + " of " + count;
            List<Group> groups = new ArrayList<>();
            groups.add(frame(name, layout, note));
            for (Card card : layout.sheets().get(i).cards()) {
                groups.addAll(cards.groups(card));
            }
            drawings.add(
                    new Drawing(name, "Full size, in millimetres.", groups)
                            .withCheckBar(CHECK_BAR_MM));
        }
        return List.copyOf(drawings);
    }

    private static Group frame(String name, SheetLayout layout, String note) {
        SheetSize size = layout.size();
        Path edge =
                Path.from(0, 0)
                        .lineTo(size.widthMm(), 0)
                        .lineTo(size.widthMm(), size.heightMm())
                        .lineTo(0, size.heightMm())
                        .close(Layer.TEXT);
        String text =
                name
                        + " \u00b7 "
                        + NumberText.upTo(size.widthMm(), 1)
                        + " x "
                        + NumberText.upTo(size.heightMm(), 1)
                        + " mm \u00b7 "
                        + note
                        + " \u00b7 "
                        + NumberText.fixed(100 * layout.utilisation(), 0)
                        + " % of what is used up becomes cards";
        double room = size.widthMm();
        return new Group(
                "sheet",
                List.of(
                        edge,
                        Text.level(
                                Layer.TEXT,
                                0,
                                -NOTE_GAP_MM - NOTE_MM,
                                NOTE_MM,
                                Anchor.START,
                                Text.shortened(text, room, NOTE_MM))));
    }
}
