package haftline.cli;

import haftline.curve.ArcFit;
import haftline.drawing.CardDrawing;
import haftline.drawing.Drawing;
import haftline.drawing.LetteringStyle;
import haftline.drawing.SheetDrawing;
import haftline.handle.Handle;
import haftline.measure.Units;
import haftline.template.Card;
import haftline.template.Copier;
import haftline.template.CopyingCard;
import haftline.template.CopyingTemplate;
import haftline.template.CuttingTool;
import haftline.template.GaugeCard;
import haftline.template.GaugeRules;
import haftline.template.HandSaw;
import haftline.template.SheetLayout;
import haftline.template.SheetSize;
import haftline.template.TemplateFinding;
import haftline.template.Workpiece;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;

/**
 * Gauges and copying templates of a set, laid out on sheets that print on A4 and are glued to
 * hardboard or plywood: plain lines to saw and file to.
 */
final class Templates {
    /**
     * What an A4 sheet on its side leaves beside note and check bars; glued on, it is the sheet
     * that is sawn.
     */
    private static final SheetSize SHEET = new SheetSize(277, 168, 2, 3);

    /**
     * Straight run before the shoulder and behind the seat, mm; 10 to 15 is common practice, no
     * source.
     */
    private static final double RUN_MM = 12;

    private final List<Card> cards = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final Units units;
    private final CuttingTool tool = new HandSaw();

    private Templates(Units units) {
        this.units = units;
    }

    /** The sheets, and what is to be said of them. */
    record Sheets(List<Drawing> drawings, List<String> remarks) {}

    static Sheets of(ExaminedSet set, Units units) {
        Templates templates = new Templates(units);
        for (ExaminedPiece piece : set.pieces()) {
            piece.figures()
                    .ifPresent(
                            figures ->
                                    templates.add(
                                            figures.handle(), set.batch(), piece.isStopped()));
        }
        return templates.laidOut(set.name());
    }

    private void add(Handle handle, String batch, boolean stopped) {
        Workpiece work = Workpiece.of(handle, batch, stopped);
        // Two cards: all gauges on one would be longer than the sheet for a long handle.
        add(
                GaugeCard.of(
                        work,
                        EnumSet.of(GaugeCard.Gauge.PROFILE, GaugeCard.Gauge.STORY_ROD),
                        GaugeRules.COMMON_PRACTICE));
        add(GaugeCard.of(work, EnumSet.of(GaugeCard.Gauge.SLOTS), GaugeRules.COMMON_PRACTICE));
        CopyingTemplate template =
                CopyingTemplate.of(
                        work,
                        Copier.of(handle.brief().rules().copying()),
                        RUN_MM,
                        ArcFit.USUAL_TOLERANCE_MM);
        // The card repeats what the template found.
        add(CopyingCard.COMMON_PRACTICE.card(template));
    }

    private void add(Card card) {
        Card ready = tool.prepare(card);
        cards.add(ready);
        remark(ready.findings());
    }

    private void remark(List<TemplateFinding> findings) {
        for (TemplateFinding finding : findings) {
            remarks.add(
                    Verdict.mark(finding.gravity())
                            + " "
                            + Verdict.word(finding.gravity())
                            + "  "
                            + finding.subject()
                            + ": "
                            + finding.message(units));
        }
    }

    private Sheets laidOut(String title) {
        if (cards.isEmpty()) {
            return new Sheets(List.of(), List.of());
        }
        SheetLayout layout = SheetLayout.of(cards, SHEET);
        remark(layout.findings());
        List<Drawing> drawings =
                SheetDrawing.of(
                        title + ", templates",
                        layout,
                        new CardDrawing(LetteringStyle.STROKES),
                        tool.note());
        return new Sheets(drawings, List.copyOf(remarks));
    }
}
