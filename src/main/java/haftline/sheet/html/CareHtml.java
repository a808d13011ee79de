package haftline.sheet.html;

import haftline.sheet.CareCard;
import haftline.sheet.page.Field;

/** The care card for a browser, and as plain text to go into a letter or a listing. */
public final class CareHtml {
    private CareHtml() {}

    /**
     * The document of a card.
     *
     * @param card what it says
     * @param field the paper's field that it is printed on
     * @return the document, to be stored as UTF-8
     */
    public static String of(CareCard card, Field field) {
        Page page = Page.titled(card.name() + ", care card", field, "");
        page.element("h1", card.name()).element("p", card.identity());
        Parts.list(page, "ul", "", card.lines());
        return page.end();
    }

    /**
     * The card as text.
     *
     * @param card what it says
     * @return name, identity and a line each
     */
    public static String text(CareCard card) {
        StringBuilder text = new StringBuilder();
        text.append(card.name()).append('\n').append(card.identity()).append("\n\n");
        card.lines().forEach(line -> text.append("- ").append(line).append('\n'));
        return text.toString();
    }
}
