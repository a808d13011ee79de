package haftline.ui.model;

import haftline.drawing.CardDrawing;
import haftline.drawing.Drawing;
import haftline.drawing.LetteringStyle;
import haftline.edit.Worked;
import haftline.findings.Gravity;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.measure.Units;
import haftline.set.TemplateSettings;
import haftline.template.Card;
import haftline.template.SheetLayout;
import haftline.template.SheetSize;
import haftline.template.TemplateFinding;
import haftline.template.WorkCards;
import haftline.template.Workpiece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Gauges and templates of a set on their sheets, as an export writes them: lettered in mm.
 *
 * @param asked what they follow from
 * @param sheets the cards of each sheet, each with its drawing
 * @param layout where they lie
 * @param remarks what is wrong with cards or worth knowing, gravest first
 * @param undrawn names of pieces that cannot be drawn, and so have none
 */
public record LaidOut(
        Asked asked,
        List<List<Placed>> sheets,
        SheetLayout layout,
        List<Remark> remarks,
        List<String> undrawn) {
    /**
     * All that the sheets follow from.
     *
     * @param set name of the set
     * @param batch id of the batch
     * @param briefs one a piece
     * @param settings the workshop's
     * @param units unit of the lettering
     */
    public record Asked(
            String set, String batch, List<Brief> briefs, TemplateSettings settings, Units units) {
        /** Copies the list. */
        public Asked {
            briefs = List.copyOf(briefs);
        }
    }

    /**
     * A card where it lies.
     *
     * @param card the card
     * @param drawing what is cut, scored and written, in the sheet's coordinates
     */
    public record Placed(Card card, Drawing drawing) {}

    /**
     * What was found, and on which card.
     *
     * @param finding what
     * @param sheet number of the sheet, from 0; -1 where the card lies on none
     * @param card the card, where it lies on a sheet
     */
    public record Remark(TemplateFinding finding, int sheet, Optional<Card> card) {}

    /** Copies the lists. */
    public LaidOut {
        sheets = sheets.stream().map(List::copyOf).toList();
        remarks = List.copyOf(remarks);
        undrawn = List.copyOf(undrawn);
    }

    /**
     * Makes the cards and lays them out; a second or more.
     *
     * @param asked what they follow from
     * @param step run before each step; what it throws breaks the work off
     * @return the sheets
     */
    static LaidOut of(Asked asked, Runnable step) {
        List<Card> cards = new ArrayList<>();
        List<String> undrawn = new ArrayList<>();
        for (Brief brief : asked.briefs()) {
            step.run();
            Worked worked = Worked.of(brief);
            if (worked.figures().isEmpty()) {
                undrawn.add(brief.name());
                continue;
            }
            Handle handle = worked.figures().get().handle();
            boolean stopped = worked.findings().stream().anyMatch(f -> f.gravity() == Gravity.STOP);
            Workpiece work = Workpiece.of(handle, asked.batch(), stopped);
            cards.addAll(
                    WorkCards.of(work, brief.rules().copying(), asked.settings(), asked.units()));
        }
        SheetLayout layout = SheetLayout.of(cards, SheetSize.of(asked.settings().sheet()), step);
        CardDrawing drawing = new CardDrawing(LetteringStyle.of(asked.settings().lettering()));
        List<List<Placed>> sheets = new ArrayList<>();
        List<Remark> remarks = new ArrayList<>();
        for (SheetLayout.Sheet sheet : layout.sheets()) {
            int number = sheets.size();
            List<Placed> placed = new ArrayList<>();
            for (Card card : sheet.cards()) {
                placed.add(new Placed(card, drawing.of(card)));
                card.findings().forEach(f -> remarks.add(new Remark(f, number, Optional.of(card))));
            }
            sheets.add(placed);
        }
        layout.findings().forEach(f -> remarks.add(new Remark(f, -1, Optional.empty())));
        remarks.sort(Comparator.comparing(remark -> remark.finding().gravity()));
        return new LaidOut(asked, sheets, layout, remarks, undrawn);
    }

    /**
     * How many cards lie on the sheets.
     *
     * @return the count
     */
    public int cards() {
        return sheets.stream().mapToInt(List::size).sum();
    }
}
