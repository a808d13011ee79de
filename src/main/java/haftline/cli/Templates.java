package haftline.cli;

import haftline.drawing.CardDrawing;
import haftline.drawing.Drawing;
import haftline.drawing.LetteringStyle;
import haftline.drawing.SheetDrawing;
import haftline.findings.Gravity;
import haftline.handle.Handle;
import haftline.measure.Units;
import haftline.set.TemplateSettings;
import haftline.template.Card;
import haftline.template.CuttingTool;
import haftline.template.SheetLayout;
import haftline.template.SheetSize;
import haftline.template.TemplateFinding;
import haftline.template.WorkCards;
import haftline.template.Workpiece;
import java.util.ArrayList;
import java.util.List;

/** Gauges and copying templates of a set, laid out on the maker's sheets. */
final class Templates {
    private final List<Card> cards = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final TemplateSettings settings;
    private final Units units;
    private boolean stopped;

    private Templates(TemplateSettings settings, Units units) {
        this.settings = settings;
        this.units = units;
    }

    /**
     * The sheets, what is to be said of them, and whether some card is not to be made so.
     *
     * @param drawings one a sheet
     * @param remarks what was found, one a line
     * @param isStopped whether any of it is a stop
     */
    record Sheets(List<Drawing> drawings, List<String> remarks, boolean isStopped) {}

    static Sheets of(ExaminedSet set, TemplateSettings settings, Units units) {
        Templates templates = new Templates(settings, units);
        for (ExaminedPiece piece : set.pieces()) {
            piece.figures()
                    .ifPresent(
                            figures ->
                                    templates.add(
                                            figures.handle(), set.batch(), piece.isStopped()));
        }
        return templates.laidOut(set.name());
    }

    private void add(Handle handle, String batch, boolean notToBeMade) {
        Workpiece work = Workpiece.of(handle, batch, notToBeMade);
        for (Card card : WorkCards.of(work, handle.brief().rules().copying(), settings, units)) {
            cards.add(card);
            remark(card.findings());
        }
    }

    private void remark(List<TemplateFinding> findings) {
        for (TemplateFinding finding : findings) {
            stopped |= finding.gravity() == Gravity.STOP;
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
            return new Sheets(List.of(), List.of(), false);
        }
        SheetLayout layout = SheetLayout.of(cards, SheetSize.of(settings.sheet()));
        remark(layout.findings());
        List<Drawing> drawings =
                SheetDrawing.of(
                        title + ", templates",
                        layout,
                        new CardDrawing(LetteringStyle.of(settings.lettering())),
                        CuttingTool.of(settings.cutting()).note(),
                        units);
        return new Sheets(drawings, List.copyOf(remarks), stopped);
    }
}
