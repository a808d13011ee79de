package haftline.drawing;

import haftline.findings.Gravity;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.template.Card;
import haftline.template.SheetLayout;
import haftline.template.SheetSize;
import haftline.template.TemplateFinding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Sheets of cards as scenes. The sheet's own edge and the notes under it are no cut lines; under
 * the sheet stand a bar by which a print is checked, and what is wrong with the cards on it.
 */
public final class SheetDrawing {
    private static final double NOTE_MM = 2.2;

    /** From one line of the notes to the next, in heights of a capital. */
    private static final double LINES_APART = 1.7;

    private static final double BELOW_MM = 3;
    private static final double CHECK_BAR_MM = 100;
    private static final double CHECK_BAR_INCHES = 4;

    /** Between the bar and the notes beside it, mm. */
    private static final double BESIDE_MM = 8;

    /** Notes in less room than this stand under the bar, mm. */
    private static final double LEAST_BESIDE_MM = 80;

    /** Height of the bar with its text, mm. */
    private static final double BAR_ROOM_MM = 6;

    private SheetDrawing() {}

    /**
     * One scene a sheet.
     *
     * @param title what is drawn, such as the name of the set
     * @param layout the layout
     * @param cards how cards are drawn
     * @param note what cuts them, such as {@link haftline.template.CuttingTool#note()}
     * @param units unit of the lengths in what is told of the cards
     * @return as many scenes as sheets
     */
    public static List<Drawing> of(
            String title, SheetLayout layout, CardDrawing cards, String note, Units units) {
        List<Drawing> drawings = new ArrayList<>();
        int count = layout.sheets().size();
        for (int i = 0; i < count; i++) {
            String name = title + ", sheet " + (i + 1) + " of " + count;
            List<String> notes = new ArrayList<>();
            notes.add(head(name, layout, note, units));
            if (i == 0) {
                layout.findings().forEach(finding -> tell(finding, units, notes));
            }
            for (Card card : layout.sheets().get(i).cards()) {
                card.findings().forEach(finding -> tell(finding, units, notes));
            }
            List<Group> groups = new ArrayList<>();
            groups.add(frame(layout.size(), notes));
            for (Card card : layout.sheets().get(i).cards()) {
                groups.addAll(cards.groups(card));
            }
            groups.add(
                    units == Units.MM
                            ? CheckBar.of(new Vertex(0, -BELOW_MM), CHECK_BAR_MM)
                            : CheckBar.of(new Vertex(0, -BELOW_MM), CHECK_BAR_INCHES, units));
            drawings.add(new Drawing(name, "Full size, in millimetres.", groups));
        }
        return List.copyOf(drawings);
    }

    private static String head(String name, SheetLayout layout, String note, Units units) {
        SheetSize size = layout.size();
        LengthText lengths = new LengthText(units);
        return name
                + " \u00b7 "
                + lengths.dimension(size.widthMm(), 1)
                + " "
                + units.symbol()
                + " × "
                + lengths.dimension(size.heightMm(), 1)
                + " "
                + units.symbol()
                + " \u00b7 "
                + note
                + " \u00b7 "
                + NumberText.fixed(100 * layout.utilisation(), 0)
                + " % of what is used up becomes cards";
    }

    /** What keeps a card from being made, or warns; what is merely noted stays on the page. */
    private static void tell(TemplateFinding finding, Units units, List<String> notes) {
        if (finding.gravity() != Gravity.NOTE) {
            notes.add(
                    finding.gravity().name().toUpperCase(Locale.ROOT)
                            + " "
                            + finding.subject()
                            + ": "
                            + finding.brief(units));
        }
    }

    private static Group frame(SheetSize size, List<String> notes) {
        List<Element> elements = new ArrayList<>();
        elements.add(
                Path.from(0, 0)
                        .lineTo(size.widthMm(), 0)
                        .lineTo(size.widthMm(), size.heightMm())
                        .lineTo(0, size.heightMm())
                        .close(Layer.TEXT));
        double left = CHECK_BAR_MM + BESIDE_MM;
        double y = -BELOW_MM - NOTE_MM;
        if (size.widthMm() - left < LEAST_BESIDE_MM) {
            left = 0;
            y -= BAR_ROOM_MM;
        }
        double room = Math.max(size.widthMm(), CHECK_BAR_MM) - left;
        for (String note : notes) {
            for (String line : Text.wrapped(note, room, NOTE_MM)) {
                elements.add(Text.level(Layer.TEXT, left, y, NOTE_MM, Anchor.START, line));
                y -= LINES_APART * NOTE_MM;
            }
        }
        return new Group("sheet", elements);
    }
}
