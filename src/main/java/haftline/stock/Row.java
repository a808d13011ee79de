package haftline.stock;

import haftline.measure.NearestWord;
import haftline.measure.Quote;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * One row of a catalogue file. A cell that is wrong adds a problem and gives a harmless stand-in,
 * so that one reading of the file finds everything; {@link #isSound} then says whether the row may
 * be used.
 */
final class Row {
    private static final Pattern KEY = Pattern.compile("[a-z0-9]+([.-][a-z0-9]+)*");
    private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");

    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+");

    /** A maker may ask for the estimate by this word where he has no figure. */
    private static final String ESTIMATE = "estimate";

    private static final Source STAND_IN = new Source("none", "none", Basis.INVENTED);

    private final String file;
    private final int line;
    private final Map<String, Integer> columns;
    private final List<String> cells;
    private final List<CatalogueProblem> problems;
    private boolean sound = true;

    Row(
            String file,
            int line,
            Map<String, Integer> columns,
            List<String> cells,
            List<CatalogueProblem> problems) {
        this.file = file;
        this.line = line;
        this.columns = columns;
        this.cells = cells;
        this.problems = problems;
    }

    String place() {
        return file + ", line " + line;
    }

    /** The rows of one reading of a file share the list of what is wrong with it. */
    boolean isOfSameFile(Row other) {
        return problems == other.problems;
    }

    boolean isSound() {
        return sound;
    }

    void problem(String field, String message) {
        problems.add(new CatalogueProblem(file, line, field, message));
        sound = false;
    }

    /** The cell, blank where the column is not there. */
    String cell(String column) {
        Integer index = columns.get(column);
        return index == null ? "" : cells.get(index);
    }

    boolean has(String column) {
        return !cell(column).isEmpty();
    }

    String text(String column) {
        String text = cell(column);
        if (text.isEmpty()) {
            problem(column, "is empty; expected a text");
            return "-";
        }
        if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
            text = text.replaceAll("\\s*\\R\\s*", " ");
        }
        for (int i = 0; i < text.length(); i++) {
            // A terminal would obey them, and no drawing can hold them.
            if (Character.isISOControl(text.charAt(i))) {
                problem(column, Quote.of(text) + ": expected a text that can be read");
                return "-";
            }
        }
        return text;
    }

    String key(String column) {
        String key = cell(column);
        if (!KEY.matcher(key).matches()) {
            problem(
                    column,
                    Quote.of(key) + ": expected small letters and digits joined by hyphens");
            return "-";
        }
        return key;
    }

    <T extends Enum<T>> T word(String column, Class<T> type) {
        String word = cell(column);
        for (T constant : type.getEnumConstants()) {
            if (wordOf(constant).equals(word)) {
                return constant;
            }
        }
        List<String> allowed = Arrays.stream(type.getEnumConstants()).map(Row::wordOf).toList();
        problem(column, Quote.of(word) + ": expected one of " + String.join(", ", allowed));
        return type.getEnumConstants()[0];
    }

    private static String wordOf(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    double number(String column, double low, double high) {
        String text = cell(column);
        double value = plainNumber(text);
        if (value >= low && value <= high) {
            return value;
        }
        String hint = DECIMAL_COMMA.matcher(text).matches() ? "; write a decimal point" : "";
        String shown = Double.isNaN(value) ? Quote.of(text) : Quote.plain(text);
        problem(column, shown + ": expected a number from " + range(low, high) + hint);
        return low;
    }

    /**
     * A number written with digits, a decimal point or none, an exponent or none, else NaN: what
     * Java would read besides (hexadecimal, a trailing d) is no number to a turner. By hand, for
     * there are thousands at every start and a pattern costs a good part of a start.
     */
    private static double plainNumber(String text) {
        for (int i = 0; i < text.length(); i++) {
            if ("0123456789+-.eE".indexOf(text.charAt(i)) < 0) {
                return Double.NaN;
            }
        }
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    private static String range(double low, double high) {
        return plain(low) + " to " + plain(high);
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    int colour(String column) {
        String text = cell(column);
        if (!COLOUR.matcher(text).matches()) {
            problem(column, Quote.of(text) + ": expected a colour such as #8a4b2f");
            return 0;
        }
        return Integer.parseInt(text.substring(1), 16);
    }

    Source source(String column, Catalogue<Source> sources) {
        String key = cell(column);
        if (key.isEmpty()) {
            problem(column, "is empty; a figure needs the key of its source");
            return STAND_IN;
        }
        Optional<Source> source = sources.find(key);
        if (source.isEmpty()) {
            problem(column, sources.missing(key));
            return STAND_IN;
        }
        return source.get();
    }

    /** A figure that must be there. */
    Figure figure(
            String column,
            String sourceColumn,
            double low,
            double high,
            Catalogue<Source> sources) {
        return Figure.of(number(column, low, high), source(sourceColumn, sources));
    }

    /** A figure that may be missing: an empty cell is "no figure". */
    Optional<Figure> maybe(
            String column,
            String sourceColumn,
            double low,
            double high,
            Catalogue<Source> sources) {
        return has(column)
                ? Optional.of(figure(column, sourceColumn, low, high, sources))
                : Optional.empty();
    }

    /** A figure that may be missing, or be asked for by the word {@code estimate}. */
    Optional<Figure> maybe(
            String column,
            String sourceColumn,
            double low,
            double high,
            Catalogue<Source> sources,
            double estimate) {
        if (!cell(column).equals(ESTIMATE)) {
            return maybe(column, sourceColumn, low, high, sources);
        }
        Source source = source(sourceColumn, sources);
        if (source.basis() != Basis.ESTIMATE && source != STAND_IN) {
            problem(sourceColumn, "\"" + source.key() + "\": expected a source of kind estimate");
        }
        return Optional.of(Figure.of(estimate, source));
    }

    /** The codes of a cell, parted by blanks; each must be one of those allowed. */
    List<String> codes(String column, Collection<String> allowed) {
        String cell = cell(column);
        if (cell.isEmpty()) {
            return List.of();
        }
        List<String> codes = List.of(cell.split("\\s+"));
        for (String code : codes) {
            if (!allowed.contains(code)) {
                String nearest =
                        NearestWord.to(allowed, code)
                                .map(near -> "; did you mean \"" + near + "\"?")
                                .orElse("");
                problem(column, Quote.of(code) + " is not known" + nearest);
            }
        }
        return codes;
    }
}
