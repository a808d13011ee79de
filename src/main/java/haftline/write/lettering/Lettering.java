package haftline.write.lettering;

import java.awt.BasicStroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The font of papers and pictures: Liberation Sans (SIL Open Font License 1.1), which travels in
 * the PDF library's jar, so that a file is the same on a machine that has no font at all.
 *
 * <p>Sizes are in ems: multiply by the font size. The diameter sign, which the font lacks, is drawn
 * here; any other character that it lacks becomes a small box, so that nothing vanishes in silence.
 */
public final class Lettering {
    /**
     * How much wide lettering is stroked over its outline, em: stems come out half as thick again
     * while the widths of the letters, by which lines are laid out, stay.
     */
    public static final double WIDE_STROKE_EM = 0.036;

    private static final String FONT =
            "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private static final int DIAMETER = 0x2300;

    /** Stroke of the signs drawn here; the font's own stems are 0.09 em. */
    private static final float STROKE_EM = 0.075f;

    private static final double DIAMETER_ADVANCE_EM = 0.72;
    private static final double DIAMETER_RADIUS_EM = 0.27;

    /** How far the slash reaches from the middle, at 60 degrees as drawing offices draw it. */
    private static final double SLASH_EM = 0.42;

    private static final double BOX_ADVANCE_EM = 0.6;

    /** Latin, Greek, Cyrillic and Hebrew, and the signs behind them, lie below. */
    private static final int KNOWN_ADVANCES = 0x2600;

    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double capitalPerEm;
    private final double[] advances = new double[KNOWN_ADVANCES];

    /**
     * A character at its place in a line.
     *
     * @param codePoint the character
     * @param xEm where its box begins, em from the line's start
     * @param isInFont whether the font has it; else its outline is drawn
     */
    public record Placed(int codePoint, double xEm, boolean isInFont) {}

    private static final class Loaded {
        static final Lettering FONT = new Lettering();
    }

    private Lettering() {
        try (InputStream file = open()) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            glyphs = font.getUnicodeCmapLookup();
            capitalPerEm = font.getOS2Windows().getCapHeight() / (double) font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own font cannot be read", e);
        }
    }

    /**
     * The font, read once.
     *
     * @return the font
     */
    public static Lettering font() {
        return Loaded.FONT;
    }

    /**
     * The font's file, to be embedded.
     *
     * @return a new stream
     */
    public static InputStream open() {
        return Lettering.class.getResourceAsStream(FONT);
    }

    /**
     * Height of a capital.
     *
     * @return in parts of the font size
     */
    public double capitalPerEm() {
        return capitalPerEm;
    }

    /**
     * Lays out one line: control characters and joiners go, line breaks become spaces, scripts that
     * run from right to left are turned.
     *
     * @param line any text
     * @return its characters from left to right
     */
    public synchronized List<Placed> laid(String line) {
        List<Placed> placed = new ArrayList<>(line.length());
        double x = 0;
        for (int character : leftToRight(line).codePoints().toArray()) {
            int shown = Character.isWhitespace(character) ? ' ' : character;
            if (isShown(shown)) {
                placed.add(new Placed(shown, x, has(shown)));
                x += advanceEm(shown);
            }
        }
        return placed;
    }

    /**
     * Width of one line.
     *
     * @param line any text
     * @return in parts of the font size
     */
    public synchronized double widthEm(String line) {
        // The order of writing does not change the width.
        double width = 0;
        for (int i = 0; i < line.length(); i += Character.charCount(line.codePointAt(i))) {
            int character = line.codePointAt(i);
            int shown = Character.isWhitespace(character) ? ' ' : character;
            if (isShown(shown)) {
                width += knownAdvanceEm(shown);
            }
        }
        return width;
    }

    /** Setting a page measures the same letters again and again. */
    private double knownAdvanceEm(int codePoint) {
        if (codePoint >= advances.length) {
            return advanceEm(codePoint);
        }
        if (advances[codePoint] == 0) {
            advances[codePoint] = advanceEm(codePoint);
        }
        return advances[codePoint];
    }

    /**
     * The outline of a character, y up, to be filled by the non-zero rule.
     *
     * @param codePoint a character
     * @return its outline in ems from its place on the baseline
     */
    public synchronized Path2D outline(int codePoint) {
        if (!has(codePoint)) {
            return drawn(codePoint);
        }
        try {
            GlyphData glyph = font.getGlyph().getGlyph(glyphs.getGlyphId(codePoint));
            Path2D path = new Path2D.Double();
            if (glyph != null) {
                double scale = 1.0 / font.getUnitsPerEm();
                path.append(
                        glyph.getPath()
                                .getPathIterator(AffineTransform.getScaleInstance(scale, scale)),
                        false);
            }
            return path;
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own font cannot be read", e);
        }
    }

    private boolean has(int codePoint) {
        return codePoint == ' ' || glyphs.getGlyphId(codePoint) > 0;
    }

    private double advanceEm(int codePoint) {
        if (!has(codePoint)) {
            return codePoint == DIAMETER ? DIAMETER_ADVANCE_EM : BOX_ADVANCE_EM;
        }
        try {
            return font.getAdvanceWidth(glyphs.getGlyphId(codePoint))
                    / (double) font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own font cannot be read", e);
        }
    }

    private Path2D drawn(int codePoint) {
        Path2D line = new Path2D.Double();
        if (codePoint == DIAMETER) {
            double middleX = DIAMETER_ADVANCE_EM / 2;
            double middleY = capitalPerEm / 2;
            double radius = DIAMETER_RADIUS_EM;
            line.append(
                    new Ellipse2D.Double(
                            middleX - radius, middleY - radius, 2 * radius, 2 * radius),
                    false);
            double dx = SLASH_EM / 2;
            double dy = SLASH_EM * Math.sqrt(3) / 2;
            line.moveTo(middleX - dx, middleY - dy);
            line.lineTo(middleX + dx, middleY + dy);
        } else {
            line.append(
                    new Rectangle2D.Double(
                            STROKE_EM, 0, BOX_ADVANCE_EM - 2 * STROKE_EM, capitalPerEm),
                    false);
        }
        return new Path2D.Double(
                new BasicStroke(STROKE_EM, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER)
                        .createStrokedShape(line));
    }

    private static boolean isShown(int character) {
        int type = Character.getType(character);
        return !Character.isISOControl(character)
                && type != Character.FORMAT
                && type != Character.SURROGATE
                && type != Character.NON_SPACING_MARK;
    }

    /** The order in which the characters stand on paper (Unicode bidirectional algorithm). */
    private static String leftToRight(String line) {
        char[] text = line.toCharArray();
        if (!Bidi.requiresBidi(text, 0, text.length)) {
            return line;
        }
        Bidi bidi = new Bidi(line, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        String[] parts = new String[runs];
        for (int i = 0; i < runs; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String part = line.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            parts[i] = levels[i] % 2 == 0 ? part : new StringBuilder(part).reverse().toString();
        }
        Bidi.reorderVisually(levels, 0, parts, 0, runs);
        return String.join("", parts);
    }
}
