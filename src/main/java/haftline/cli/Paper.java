package haftline.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * Text on a page eighty columns wide: rows of a word in the margin, a label, a figure whose decimal
 * points stand under each other, and a remark that wraps under itself.
 */
final class Paper {
    static final int WIDTH = 80;

    private static final int MARGIN = 10;
    private static final int LABEL = 15;
    private static final int CELL = 7;
    private static final int GAP = 2;

    /** Digits before the point: three hold every length and mass of a handle. */
    private static final int FIGURE_BEFORE = 3;

    private static final int FIRST_WIDE = 0x1100;
    private static final int FIRST_PICTURE = 0x1F300;
    private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
    private static final int ZERO_WIDTH_JOINER = 0x200D;

    private final StringBuilder text = new StringBuilder();
    private final Ink ink;
    private final int figureWidth;
    private final int decimals;
    private String written = "";

    /**
     * A page.
     *
     * @param figureWidth columns for a figure with its unit
     * @param decimals most digits after a figure's decimal point
     */
    Paper(Ink ink, int figureWidth, int decimals) {
        this.ink = ink;
        this.figureWidth = figureWidth;
        this.decimals = decimals;
    }

    Ink ink() {
        return ink;
    }

    String text() {
        return text.toString();
    }

    Paper line(String line) {
        // Trailing blanks would only show in a diff.
        text.append(line.stripTrailing()).append('\n');
        return this;
    }

    Paper blank() {
        return line("");
    }

    /** A line with one text at each end, over and under rules. */
    void heading(String left, String right, String rightInInk) {
        int room = WIDTH - right.length() - GAP;
        String cut = cut(harmless(left), room);
        line(ink.faint("─".repeat(WIDTH)));
        line(ink.strong(cut) + " ".repeat(WIDTH - width(cut) - width(right)) + rightInInk);
        line(ink.faint("─".repeat(WIDTH)));
        written = "";
    }

    /** A row without a figure. */
    void row(String margin, String label, String remark) {
        row(margin, label, "", "", remark);
    }

    /**
     * A row; a margin that stands already over it is not repeated.
     *
     * @param figure a number, its decimal point brought under the others'
     * @param unit what follows the number
     */
    void row(String margin, String label, String figure, String unit, String remark) {
        String head = pad(margin.equals(written) ? "" : margin, MARGIN);
        String shown = figure.isEmpty() && unit.isEmpty() ? "" : aligned(figure) + " " + unit;
        String name = pad(cut(harmless(label), LABEL - 1), LABEL);
        boolean wordsOnly = shown.isEmpty();
        int indent = MARGIN + (wordsOnly ? LABEL : LABEL + figureWidth + GAP);
        List<String> lines = wrapped(harmless(remark), WIDTH - indent);
        String figures = wordsOnly ? "" : pad(shown, figureWidth + GAP);
        line(ink.strong(head) + name + figures + (lines.isEmpty() ? "" : lines.get(0)));
        for (int i = 1; i < lines.size(); i++) {
            line(" ".repeat(indent) + lines.get(i));
        }
        written = margin;
    }

    /** A row of a table: short cells under each other, and a remark. */
    void cells(String margin, String label, List<String> cells, String remark) {
        StringBuilder left = new StringBuilder();
        for (String cell : cells) {
            left.append(padLeft(cell, CELL));
        }
        left.append(" ".repeat(GAP));
        int indent = MARGIN + LABEL + width(left.toString());
        List<String> lines = wrapped(harmless(remark), WIDTH - indent);
        String head = pad(margin.equals(written) ? "" : margin, MARGIN);
        String name = pad(cut(harmless(label), LABEL - 1), LABEL);
        line(ink.strong(head) + name + left + (lines.isEmpty() ? "" : lines.get(0)));
        for (int i = 1; i < lines.size(); i++) {
            line(" ".repeat(indent) + lines.get(i));
        }
        written = margin;
    }

    /** A row whose words begin right after the margin. */
    void words(String margin, String words) {
        String head = pad(margin.equals(written) ? "" : margin, MARGIN);
        List<String> lines = wrapped(harmless(words), WIDTH - MARGIN);
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? ink.strong(head) : " ".repeat(MARGIN)) + lines.get(i));
        }
        written = margin;
    }

    /** A paragraph after a mark, wrapped under itself. */
    void marked(String mark, String markInInk, String paragraph) {
        int indent = width(mark);
        List<String> lines = wrapped(harmless(paragraph), WIDTH - indent);
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? markInInk : " ".repeat(indent)) + lines.get(i));
        }
        written = "";
    }

    /** Digits before the point right-aligned, those after it filled up with blanks. */
    private String aligned(String figure) {
        int point = figure.indexOf('.');
        int after = point < 0 ? 0 : figure.length() - point;
        int wanted = decimals == 0 ? 0 : decimals + 1;
        String filled = figure + " ".repeat(Math.max(0, wanted - after));
        int before = FIGURE_BEFORE + wanted;
        return " ".repeat(Math.max(0, before - width(filled))) + filled;
    }

    static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - width(text)));
    }

    static String padLeft(String text, int width) {
        return " ".repeat(Math.max(0, width - width(text))) + text;
    }

    /** Columns of a text: marks that stand on another letter take none, wide scripts two. */
    static int width(String text) {
        return text.codePoints().map(Paper::columns).sum();
    }

    private static int columns(int c) {
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK
                || type == Character.ENCLOSING_MARK
                || type == Character.FORMAT) {
            return 0;
        }
        boolean wide = c >= FIRST_WIDE && Character.isIdeographic(c) || c >= FIRST_PICTURE;
        return wide || isWideBlock(c) ? 2 : 1;
    }

    private static boolean isWideBlock(int c) {
        Character.UnicodeBlock block = Character.UnicodeBlock.of(c);
        return block == Character.UnicodeBlock.HANGUL_SYLLABLES
                || block == Character.UnicodeBlock.HIRAGANA
                || block == Character.UnicodeBlock.KATAKANA
                || block == Character.UnicodeBlock.HALFWIDTH_AND_FULLWIDTH_FORMS;
    }

    /** A text cut to a width, with an ellipsis where something is lost. */
    static String cut(String text, int width) {
        return width(text) <= width ? text : start(text, width - 1) + "…";
    }

    private static String start(String text, int width) {
        int end = 0;
        int columns = 0;
        while (end < text.length()) {
            int c = text.codePointAt(end);
            columns += columns(c);
            if (columns > width) {
                break;
            }
            end += Character.charCount(c);
        }
        return text.substring(0, end);
    }

    /** Lines of a paragraph, broken between words; a word that is too long is broken too. */
    static List<String> wrapped(String paragraph, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : paragraph.split(" +")) {
            String rest = word;
            if (line.length() > 0 && width(line.toString()) + 1 + width(rest) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (width(rest) > width) {
                String fits = start(rest, width);
                lines.add(fits);
                rest = rest.substring(fits.length());
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return lines;
    }

    /**
     * A user's text as one harmless line: what a terminal would take for an order, and marks that
     * turn the direction of writing, become blanks.
     */
    static String harmless(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints()
                .forEach(
                        c -> {
                            int type = Character.getType(c);
                            boolean joins = c == ZERO_WIDTH_JOINER || c == ZERO_WIDTH_NON_JOINER;
                            boolean order =
                                    type == Character.CONTROL
                                            || type == Character.FORMAT && !joins
                                            || type == Character.SURROGATE
                                            || type == Character.LINE_SEPARATOR
                                            || type == Character.PARAGRAPH_SEPARATOR;
                            out.appendCodePoint(order ? ' ' : c);
                        });
        return out.toString().strip();
    }
}
