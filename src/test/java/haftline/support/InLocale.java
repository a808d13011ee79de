package haftline.support;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** Runs something under another default locale. */
public final class InLocale {
    /** Decimal comma; Arabic and Devanagari digits; a capital I that has a dotless small one. */
    public static final List<String> TAGS =
            List.of("de-DE", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva", "tr-TR");

    private InLocale() {}

    /** What a supplier gives under a locale. */
    public static <T> T get(String tag, Supplier<T> supplier) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            return supplier.get();
        } finally {
            Locale.setDefault(before);
        }
    }
}
