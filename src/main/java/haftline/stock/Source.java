package haftline.stock;

import haftline.measure.Checks;

/**
 * Where a figure comes from.
 *
 * @param key short name by which a catalogue cites it
 * @param title publication, table and edition, or the rule in words
 * @param basis how figures cited from it are known
 */
public record Source(String key, String title, Basis basis) implements Keyed {
    public Source {
        Checks.named("key", key);
        Checks.named("title", title);
        if (basis == null) {
            throw new IllegalArgumentException("kind: expected one of " + Basis.allowedWords());
        }
    }

    /**
     * The source as it is cited beside a figure: the title, and the mark of anything less than
     * published, measured or computed.
     *
     * @return one line
     */
    public String citation() {
        return basis.compareTo(Basis.COMPUTED) <= 0 ? title : title + " (" + basis.words() + ")";
    }
}
