package haftline.store;

/** What may stand behind a key. */
enum Form {
    /** A text on one line. */
    TEXT,
    /** A text that may run over several lines. */
    NOTE,
    /** One of a few words. */
    WORD,
    /** True or false. */
    YES_NO,
    /** A plain number. */
    NUMBER,
    /** A whole number. */
    WHOLE,
    /** A number in mm, or a text with a unit. */
    LENGTH,
    /** A length, a list of readings of it, or such a list with its resolution. */
    MEASURED,
    /** A map of the keys in {@link Key#child}. */
    MAP,
    /** A list of maps of the keys in {@link Key#child}. */
    MAPS,
    /** A map from names to maps of the keys in {@link Key#child}. */
    NAMED_MAPS,
    /** A list of texts. */
    TEXTS,
    /** One of several forms; its reader knows them and {@link Key#says} lists them. */
    SEVERAL
}
