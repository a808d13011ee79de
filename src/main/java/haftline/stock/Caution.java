package haftline.stock;

import haftline.measure.Checks;

/**
 * A caution in plain words. It is no medical advice and does not take the place of a safety data
 * sheet.
 *
 * @param text one or two sentences
 * @param source whose caution it is
 */
public record Caution(String text, Source source) {
    public Caution {
        Checks.named("caution", text);
        if (source == null) {
            throw new IllegalArgumentException("source: a caution needs a source");
        }
    }
}
