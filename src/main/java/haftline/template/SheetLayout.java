package haftline.template;

import haftline.findings.Gravity;
import java.util.ArrayList;
import java.util.List;

/**
 * Cards laid on as few sheets as may be, tightly, by their true shapes.
 *
 * @param size the sheet
 * @param sheets what lies on each, in the order in which it is cut
 * @param findings cards that are larger than the sheet, which lie on none
 */
public record SheetLayout(SheetSize size, List<Sheet> sheets, List<TemplateFinding> findings) {
    /**
     * One sheet.
     *
     * @param cards the cards where they lie, in the order in which they are cut: from the bottom
     *     up, from left to right
     * @param used least rectangle that holds them
     */
    public record Sheet(List<Card> cards, Box used) {
        /** Copies the list. */
        public Sheet {
            cards = List.copyOf(cards);
        }

        /**
         * Material of the cards on it, openings not taken off.
         *
         * @return mm2
         */
        public double cardsArea() {
            return cards.stream().mapToDouble(card -> card.outline().area()).sum();
        }
    }

    /** Copies the lists. */
    public SheetLayout {
        sheets = List.copyOf(sheets);
        findings = List.copyOf(findings);
    }

    /**
     * Lays cards out. The same cards always lie the same way.
     *
     * @param cards what is to be cut
     * @param size the sheet
     * @return the layout
     */
    public static SheetLayout of(List<Card> cards, SheetSize size) {
        return of(cards, size, () -> {});
    }

    /**
     * Lays cards out where somebody may no longer want it: the search takes a second or more.
     *
     * @param cards what is to be cut
     * @param size the sheet
     * @param step run before each step of the search; what it throws breaks the search off
     * @return the layout
     */
    public static SheetLayout of(List<Card> cards, SheetSize size, Runnable step) {
        List<Silhouette> shapes = new ArrayList<>();
        List<TemplateFinding> findings = new ArrayList<>();
        for (Card card : cards) {
            Silhouette shape = Silhouette.of(card, size.gapMm());
            if (Packing.fits(shape, size)) {
                shapes.add(shape);
            } else {
                findings.add(tooLarge(card, size));
            }
        }
        List<Sheet> sheets =
                shapes.isEmpty() ? List.of() : new PackingSearch(shapes, size, step).best();
        return new SheetLayout(size, sheets, findings);
    }

    private static TemplateFinding tooLarge(Card card, SheetSize size) {
        Box box = card.box();
        double overWidth = box.width() - (size.widthMm() - 2 * size.marginMm());
        double overHeight = box.height() - (size.heightMm() - 2 * size.marginMm());
        boolean wide = overWidth >= overHeight;
        return new TemplateFinding(
                TemplateFinding.Kind.LARGER_THAN_SHEET,
                Gravity.STOP,
                card.name(),
                0,
                0,
                0,
                Math.max(0, Math.max(overWidth, overHeight)),
                wide ? box.width() : box.height(),
                (wide ? size.widthMm() : size.heightMm()) - 2 * size.marginMm());
    }

    /**
     * How much of the sheet that is used up becomes cards. A sheet is used up as far as the least
     * rectangle round its cards; what is left of it is an offcut.
     *
     * @return 0 to 1; 0 where nothing is laid out
     */
    public double utilisation() {
        double used = sheets.stream().mapToDouble(s -> s.used().width() * s.used().height()).sum();
        return used == 0 ? 0 : sheets.stream().mapToDouble(Sheet::cardsArea).sum() / used;
    }

    /**
     * The utilisation that no layout can pass: cards and half the gap round each filling the
     * rectangle without a hole, the outermost gaps aside.
     *
     * @return 0 to 1
     */
    double areaBound() {
        double cards = 0;
        double grown = 0;
        for (Sheet sheet : sheets) {
            for (Card card : sheet.cards()) {
                cards += card.outline().area();
                grown += Silhouette.grownArea(card, size.gapMm());
            }
        }
        return grown == 0 ? 0 : cards / grown;
    }
}
