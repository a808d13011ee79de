package haftline.ui.sheet;

import haftline.cli.PiecePaper;
import haftline.ui.model.EditorModel;
import java.util.Optional;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.stage.Window;

/** Printing at full size: a millimetre of the page is a millimetre on paper. */
final class Printing {
    /** A point of the printing trade, in which printers count, mm. */
    private static final double POINT_MM = 25.4 / 72;

    /** Papers are cut no truer, mm. */
    private static final double PAPER_MM = 2;

    /** Nothing of a page comes nearer to the paper's edge, mm: half of the strip for its bars. */
    private static final double BARE_MM = 5;

    private Printing() {}

    /**
     * Prints.
     *
     * @param paper what is printed
     * @param editor what all views share
     * @param window the window that asks which printer
     * @return why it was not printed; empty where it was, or was called off
     */
    static Optional<String> of(PiecePaper paper, EditorModel editor, Window window) {
        Printer printer = Printer.getDefaultPrinter();
        PrinterJob job = printer == null ? null : PrinterJob.createPrinterJob(printer);
        if (job == null) {
            return Optional.of(
                    "No printer is set up on this machine. Save it as PDF and print that at 100 %");
        }
        boolean isWide = paper.widthMm() > paper.heightMm();
        PageOrientation turned = isWide ? PageOrientation.LANDSCAPE : PageOrientation.PORTRAIT;
        fitting(printer, paper)
                .ifPresent(
                        sheet ->
                                job.getJobSettings()
                                        .setPageLayout(
                                                printer.createPageLayout(
                                                        sheet,
                                                        turned,
                                                        Printer.MarginType.HARDWARE_MINIMUM)));
        if (!job.showPrintDialog(window)) {
            return Optional.empty();
        }
        Paper sheet = job.getJobSettings().getPageLayout().getPaper();
        if (!isOfSize(sheet, paper)) {
            return Optional.of(
                    "This page is "
                            + Math.round(paper.widthMm())
                            + " mm × "
                            + Math.round(paper.heightMm())
                            + " mm and would not come out at full size on "
                            + sheet.getName()
                            + ". Choose its paper, or save it as PDF, which is laid out over"
                            + " several sheets");
        }
        PageLayout layout =
                job.getPrinter()
                        .createPageLayout(sheet, turned, Printer.MarginType.HARDWARE_MINIMUM);
        double widest = Math.max(layout.getLeftMargin(), layout.getRightMargin());
        double highest = Math.max(layout.getTopMargin(), layout.getBottomMargin());
        if (Math.max(widest, highest) * POINT_MM > BARE_MM + PAPER_MM) {
            return Optional.of(
                    "This printer leaves "
                            + Math.round(Math.max(widest, highest) * POINT_MM)
                            + " mm of the paper bare and would cut the page. Save it as PDF");
        }
        for (int i = 0; i < paper.pages().size(); i++) {
            if (!job.printPage(layout, fullSize(paper, i, layout))) {
                return Optional.of("The printer did not take the page");
            }
        }
        return job.endJob() ? Optional.empty() : Optional.of("The printer did not take the page");
    }

    private static Optional<Paper> fitting(Printer printer, PiecePaper paper) {
        return printer.getPrinterAttributes().getSupportedPapers().stream()
                .filter(sheet -> isOfSize(sheet, paper))
                .findFirst();
    }

    private static boolean isOfSize(Paper sheet, PiecePaper paper) {
        double shortEdge = Math.min(paper.widthMm(), paper.heightMm());
        double longEdge = Math.max(paper.widthMm(), paper.heightMm());
        double w = Math.min(sheet.getWidth(), sheet.getHeight()) * POINT_MM;
        double h = Math.max(sheet.getWidth(), sheet.getHeight()) * POINT_MM;
        return Math.abs(w - shortEdge) <= PAPER_MM && Math.abs(h - longEdge) <= PAPER_MM;
    }

    /** A point of paper is a pixel of the node, which begins where the printer can print. */
    private static Node fullSize(PiecePaper paper, int index, PageLayout layout) {
        double scale = 1 / POINT_MM;
        Canvas page = new Canvas(layout.getPrintableWidth(), layout.getPrintableHeight());
        SheetPane.paint(
                page.getGraphicsContext2D(),
                paper,
                index,
                scale,
                -layout.getLeftMargin(),
                paper.heightMm() * scale - layout.getTopMargin());
        return page;
    }
}
