package haftline.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is to be written, before it has a layout. */
sealed interface Tree {
    /** A text on one line. */
    record Text(String text) implements Tree {}

    /** A text that may be long or have several lines. */
    record Note(String text) implements Tree {}

    /** A number, in mm where it is a length. */
    record Number(double value) implements Tree {}

    /** A word that needs no quotation marks. */
    record Word(String word) implements Tree {}

    /**
     * A list.
     *
     * @param items the items
     * @param isTall whether every item begins a line of its own even where all fit on one
     */
    record Rows(List<Tree> items, boolean isTall) implements Tree {
        static Rows tall(List<? extends Tree> items) {
            return new Rows(List.copyOf(items), true);
        }

        static Rows flat(List<? extends Tree> items) {
            return new Rows(List.copyOf(items), false);
        }
    }

    /** A map; fields may be marked as usual, which are written only where the old file has them. */
    final class Fields implements Tree {
        /** Fields by which an item of a list is known, the first of them that it has. */
        static final List<String> NAMING = List.of("name", "batch", "step", "kit", "piece");

        private final Map<String, Tree> fields = new LinkedHashMap<>();
        private final List<String> usual = new ArrayList<>();
        private final boolean isTall;

        private Fields(boolean isTall) {
            this.isTall = isTall;
        }

        /** A map of which every field begins a line of its own. */
        static Fields tall() {
            return new Fields(true);
        }

        /** A map that is written on one line where it fits. */
        static Fields flat() {
            return new Fields(false);
        }

        boolean isTall() {
            return isTall;
        }

        Map<String, Tree> all() {
            return fields;
        }

        /** The name by which this map is known in a list. */
        Optional<String> name() {
            return NAMING.stream()
                    .map(fields::get)
                    .filter(Text.class::isInstance)
                    .map(text -> ((Text) text).text())
                    .findFirst();
        }

        boolean isUsual(String name) {
            return usual.contains(name);
        }

        Fields put(Key key, Tree value) {
            return put(key.name(), value);
        }

        Fields put(String name, Tree value) {
            fields.put(name, value);
            return this;
        }

        Fields text(Key key, String text) {
            return put(key, new Text(text));
        }

        Fields number(Key key, double value) {
            return put(key, new Number(value));
        }

        Fields word(Key key, Enum<?> constant) {
            return put(key, new Word(MapReader.written(constant)));
        }

        /** A note; left out where it is empty. */
        Fields note(Key key, String text) {
            return text.isEmpty() ? this : put(key, new Note(text));
        }

        /** A number that need not be said where it is the usual one. */
        Fields number(Key key, double value, double usualValue) {
            return unless(value == usualValue, key, new Number(value));
        }

        /** True or false, which need not be said where it is the usual answer. */
        Fields yesNo(Key key, boolean value, boolean usualValue) {
            return unless(value == usualValue, key, new Word(Boolean.toString(value)));
        }

        /** A map or list that is left out where there is nothing in it. */
        Fields some(Key key, Tree value) {
            boolean empty =
                    value instanceof Fields map && map.all().isEmpty()
                            || value instanceof Rows rows && rows.items().isEmpty();
            return empty ? this : put(key, value);
        }

        Fields unless(boolean isUsual, Key key, Tree value) {
            if (isUsual) {
                usual.add(key.name());
            }
            return put(key, value);
        }
    }
}
