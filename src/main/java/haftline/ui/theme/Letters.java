package haftline.ui.theme;

import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** Words that are painted, measured; they are cut rather than squeezed. */
public final class Letters {
    private static final Text RULE = new Text();

    private Letters() {}

    /**
     * How wide words are.
     *
     * @param words the words, on one line
     * @param font their letters
     * @return px, rounded up
     */
    public static double width(String words, Font font) {
        RULE.setFont(font);
        RULE.setText(words);
        return Math.ceil(RULE.getLayoutBounds().getWidth());
    }

    /**
     * As much of some words as there is room for.
     *
     * @param words the words, on one line
     * @param font their letters
     * @param room px
     * @return the words, or their beginning under an ellipsis
     */
    public static String cut(String words, Font font, double room) {
        if (width(words, font) <= room) {
            return words;
        }
        String shorter = words;
        while (!shorter.isEmpty() && width(shorter + "…", font) > room) {
            shorter = shorter.substring(0, shorter.length() - 1);
        }
        return shorter.strip() + "…";
    }
}
