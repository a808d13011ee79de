package haftline.ui.model;

import haftline.measure.Length;
import haftline.measure.Measured;
import haftline.measure.NumberText;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** What is typed into a field, read; and what stands in a field before anything is typed. */
final class Entry {
    /** More readings of one thing than this are a slip of the clipboard. */
    private static final int MOST_READINGS = 100;

    private static final Pattern SEPARATOR = Pattern.compile("\\s*;\\s*|,\\s+");
    private static final Pattern UNIT = Pattern.compile("mm|in|inch|inches|\"|\u2033|''");
    private static final Pattern WHOLE = Pattern.compile("[+\u2212-]?[0-9]+");
    private static final Pattern FRACTION = Pattern.compile("[0-9]+/[0-9]+\\S*");

    private Entry() {}

    /**
     * Readings of one thing: lengths with blanks, semicolons or commas and blanks between them. A
     * unit behind the last is that of all, where no other names one.
     */
    static Optional<Measured> readings(String text, Units units, double resolution) {
        List<String> parts = new ArrayList<>();
        for (String part : SEPARATOR.split(text.strip())) {
            if (Length.parse(part, units).isPresent()) {
                parts.add(part);
            } else {
                parts.addAll(words(part));
            }
        }
        Units common = commonUnit(parts).orElse(units);
        List<Double> readings = new ArrayList<>();
        for (String part : parts) {
            OptionalDouble mm = Length.parse(part, common);
            if (mm.isEmpty() || mm.getAsDouble() < 0 || readings.size() == MOST_READINGS) {
                return Optional.empty();
            }
            readings.add(mm.getAsDouble());
        }
        return readings.isEmpty()
                ? Optional.empty()
                : Optional.of(Measured.of(readings, resolution));
    }

    /** The lengths in a text with blanks between them; a unit or fraction stays with its number. */
    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.strip().split("\\s+")) {
            int last = words.size() - 1;
            boolean isUnit = UNIT.matcher(word.toLowerCase(Locale.ROOT)).matches();
            boolean belongs =
                    last >= 0
                            && (isUnit
                                    || FRACTION.matcher(word).matches()
                                            && WHOLE.matcher(words.get(last)).matches());
            if (belongs) {
                words.set(last, words.get(last) + " " + word);
            } else {
                words.add(word);
            }
        }
        return words;
    }

    private static Optional<Units> commonUnit(List<String> parts) {
        int last = parts.size() - 1;
        for (int i = 0; i < last; i++) {
            if (unit(parts.get(i)).isPresent()) {
                return Optional.empty();
            }
        }
        return last < 0 ? Optional.empty() : unit(parts.get(last));
    }

    private static Optional<Units> unit(String part) {
        String plain = part.strip().toLowerCase(Locale.ROOT);
        if (plain.endsWith("mm")) {
            return Optional.of(Units.MM);
        }
        return plain.matches(".*(in|inch|inches|\"|\u2033|'')$")
                ? Optional.of(Units.INCH)
                : Optional.empty();
    }

    /**
     * A plain number, with decimal point or comma; a unit or sign of the field may stand behind.
     */
    static OptionalDouble number(String text, String unit) {
        String plain = text.strip().replace('\u2212', '-');
        if (!unit.isEmpty() && plain.endsWith(unit)) {
            plain = plain.substring(0, plain.length() - unit.length()).strip();
        }
        return plain.matches("[+-]?([0-9]{1,7}([.,][0-9]{0,9})?|[.,][0-9]{1,9})")
                ? OptionalDouble.of(Double.parseDouble(plain.replace(',', '.')))
                : OptionalDouble.empty();
    }

    /** Readings as they would be typed. */
    static String text(Measured measured, Units units) {
        StringBuilder text = new StringBuilder();
        for (double mm : measured.readings()) {
            text.append(text.isEmpty() ? "" : "; ").append(plain(mm, units));
        }
        return text + " " + units.symbol();
    }

    /** A length as it would be typed. */
    static String text(double mm, Units units) {
        return plain(mm, units) + " " + units.symbol();
    }

    /** A length to a thousandth of a millimetre: bits and kerfs come in such. */
    static String fine(double mm, Units units) {
        return NumberText.upTo(mm / units.millimetres(), units == Units.MM ? 3 : 4)
                + " "
                + units.symbol();
    }

    private static String plain(double mm, Units units) {
        // A hundredth of a millimetre is four places of an inch.
        return NumberText.said(
                NumberText.upTo(mm / units.millimetres(), units == Units.MM ? 2 : 4));
    }
}
