package haftline.sheet;

import haftline.handle.Brief;
import haftline.handle.Fit;
import haftline.stock.Plastic;
import java.util.ArrayList;
import java.util.List;

/**
 * What goes with a finished piece to whoever buys it. It claims nothing about contact with food,
 * for nobody tested it.
 *
 * @param name name of the piece
 * @param identity what it is made of, its set and batch
 * @param lines what to do and what to leave
 */
public record CareCard(String name, String identity, List<String> lines) {
    /** Copies the list. */
    public CareCard {
        lines = List.copyOf(lines);
    }

    /**
     * The card of a piece.
     *
     * @param piece the piece
     * @return what it says
     */
    public static CareCard of(SheetPiece piece) {
        Brief brief = piece.brief();
        boolean plastic = brief.stock() instanceof Plastic;
        boolean pressed = piece.handle().fit().fit() == Fit.PRESSED;
        List<String> lines = new ArrayList<>();
        lines.add("Wash by hand soon after use, lukewarm, and dry at once.");
        lines.add("No dishwasher, no soaking, no oven, no boiling water.");
        lines.add(
                plastic
                        ? "Mild soap only: no scourer, spirit, acetone or other solvent. Keep it from"
                                + " heat and strong sun."
                        : "When the wood looks dull, rub in a thin coat of oil or wax and let it"
                                + " harden. Keep it from radiators and strong sun.");
        lines.add(
                (pressed
                                ? "The blade is pressed into the wood"
                                : "The blade is glued in (" + brief.adhesive().name() + ")")
                        + ": if it or a ring ever moves, stop using it and have it mended.");
        lines.add("Edges and points cut: store it covered, away from children.");
        if (brief.stock().isCautioned() && !plastic) {
            lines.add(
                    Cautions.capital(brief.stock().name())
                            + " troubles some skins: if yours, leave it be.");
        }
        lines.add("The handle is made for the hand. It has not been tested for contact with food.");
        return new CareCard(
                piece.name(),
                brief.stock().name() + " · " + piece.set() + " · batch " + piece.batch(),
                lines);
    }
}
